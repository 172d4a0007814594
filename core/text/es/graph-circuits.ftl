# Texts of the rule graph: circuits of the ground loop: closed, kinked, air-locked, uneven


## Causes

cause-circuit-valved-off = Un circuito cerrado con su válvula
    .homeowner = Uno de sus circuitos enterrados se quedó cerrado.
context-circuit-valved-off--first-month = Se quedó cerrado tras el lavado.
context-circuit-valved-off--circuits-flushed-singly = Lavar uno a uno implica cerrar y abrir cada uno.
context-circuit-valved-off--after-work = Un circuito que se cerró para el trabajo sigue cerrado.
cause-circuit-kinked = Un circuito doblado o aplastado
    .homeowner = Una de sus tuberías enterradas está aplastada o doblada.
context-circuit-kinked--horizontal-loop = La tubería en zanja se dobla en las esquinas y la aplasta el relleno.
context-circuit-kinked--first-year = Ocurre mientras se tiende la tubería.
context-circuit-kinked--since-start-up = Una tubería se aplasta al tenderla.
context-circuit-kinked--older-than-five-years = Un estrangulamiento de la zanja se nota desde la primera temporada.
cause-circuit-air-locked = Un circuito bloqueado por aire
    .homeowner = El aire bloquea uno de sus circuitos enterrados.
context-circuit-air-locked--cart-too-small = Un carro que no puede llenar todos los circuitos a velocidad deja uno lleno de aire.
context-circuit-air-locked--flush-too-slow = Un lavado demasiado lento deja aire parado en una rama descendente.
context-circuit-air-locked--circuits-flushed-singly = Lavado por separado, un circuito no puede esconderse tras los demás.
context-circuit-air-locked--dead-head-passed-at-start-up = Un circuito bloqueado por aire no habría superado la prueba con retorno cerrado.
context-circuit-air-locked--since-start-up = Ese aire está ahí desde el llenado.
context-circuit-air-locked--older-than-five-years = Una bolsa del llenado se nota desde la primera temporada.
cause-circuits-unbalanced = Circuitos desequilibrados
    .homeowner = El fluido no se reparte por igual entre sus circuitos enterrados.
context-circuits-unbalanced--first-year = Un trazado es así desde el principio.
context-circuits-unbalanced--since-start-up = Un trazado es así desde el principio.
context-circuits-unbalanced--cooling-season = Los circuitos desiguales se notan primero en el pico de calefacción.

## Mechanisms

mechanism-idle-circuit = Uno o más circuitos reciben muy poco caudal
    .homeowner = Una parte de su tubería enterrada trabaja poco.

## Findings

finding-circuit-returns-differ = Las temperaturas de retorno de los circuitos difieren
    .homeowner = El fluido vuelve de los circuitos enterrados a temperaturas distintas.
finding-circuit-valve-found-shut = Válvula de un circuito hallada cerrada en el colector
    .homeowner = La válvula de un circuito estaba cerrada.
finding-circuit-slow-both-ways = Un circuito igual de lento en el otro sentido, y tras la purga
    .homeowner = Un circuito es lento en cualquier sentido en que se lave.
finding-circuit-wakes-when-purged = Un circuito muerto suelta aire y revive al purgarlo solo
    .homeowner = Un circuito volvió a funcionar después de lavarlo por separado.
finding-computed-circuits-uneven = Los caudales calculados de los circuitos son desiguales
    .homeowner = Según el cálculo, el fluido se reparte de forma desigual entre los circuitos.
finding-circuit-flow-low = El caudal de un circuito es bajo según su caudalímetro o válvula de equilibrado
    .homeowner = Un circuito enterrado recibe muy poco fluido.
finding-circuit-return-stands = El retorno de un circuito está a otra temperatura por completo
    .homeowner = En uno de sus circuitos no corre fluido.

## Links

link-circuit-valved-off--idle-circuit = Por una válvula cerrada no pasa caudal.
link-circuit-valved-off--circuit-valve-found-shut = La manija lo muestra.
link-circuit-valved-off--restriction = Menos circuitos en paralelo ofrecen más resistencia.
link-circuit-valved-off--circuit-return-stands = Nada corre tras una válvula cerrada, y la tubería toma la temperatura de lo que la rodea.
link-circuit-kinked--idle-circuit = Un aplastamiento consume la altura que los demás no necesitan.
link-circuit-kinked--circuit-slow-both-ways = Un aplastamiento es igual en ambos sentidos y no se va con la purga.
link-circuit-kinked--restriction = Los demás llevan su parte con más pérdida.
link-circuit-kinked--circuit-return-stands = Casi nada corre por un estrangulamiento.
link-circuit-air-locked--idle-circuit = La columna de aire en la rama descendente consume la altura de ese circuito.
link-circuit-air-locked--circuit-wakes-when-purged = Solo con el carro, recibe caudal suficiente para empujar el aire fuera.
link-circuit-air-locked--air-in-fluid = Parte de ese aire se suelta y circula.
link-circuit-air-locked--dead-head-air = Una columna de aire se encoge a presión como cualquier otra.
link-circuit-air-locked--circuit-return-stands = Un circuito bloqueado por aire queda parado.
link-circuits-unbalanced--idle-circuit = El circuito más largo recibe menos.
link-circuits-unbalanced--computed-circuits-uneven = El cálculo de la red lo muestra.
link-circuits-unbalanced--circuit-return-stands = Un circuito desigual corre despacio; rara vez se para.
link-idle-circuit--circuit-returns-differ = Un circuito lento vuelve más cerca de la temperatura del terreno que sus vecinos.
link-idle-circuit--ground-side-weak = Menos tubería hace el trabajo.
link-idle-circuit--circuit-flow-low = Medido por separado, recibe menos de su parte.
link-idle-circuit--ewt-drifts-through-season = Con una parte de la tubería sin uso, el resto se agota como un lazo corto.
link-idle-circuit--ewt-recovers-after-rest = El reposo deja que la parte agotada del campo se recupere.
link-idle-circuit--head-unaccounted = Los circuitos vecinos llevan su caudal y consumen más de lo que el registro hace esperar.

## Checks

check-compare-circuit-returns = Comparar los retornos de los circuitos
    .how = Unidad en marcha durante un cuarto de hora. Sujetar el mismo termómetro en cada retorno del colector, uno tras otro, y repetir el primero.
check-flush-circuit-both-ways = Lavar solo el circuito lento
    .how = Bombas y unidad aisladas, filtro limpio. Conectar el carro solo al circuito lento, leer caudal y presión, vigilar si sale aire; solo después, con el filtro limpio y sin válvula de retención en el camino, probar el otro sentido.
check-compute-circuit-flows = Calcular el caudal de cada circuito
    .how = A partir de longitudes y diámetros, el programa calcula cómo se reparte el caudal entre los circuitos.
check-measure-circuit-flows = Medir el caudal de cada circuito
    .how = Leer los caudalímetros o las válvulas de equilibrado de los circuitos en el colector, o colocar un caudalímetro externo en cada circuito por turno.
