# Texts of the rule graph: air left in the loop, weak flushing, air-bound circulators


## Causes

cause-air-left-in-circuit = Aire que quedó en el lazo al llenarlo
    .homeowner = Al llenar su tubería enterrada quedó dentro una bolsa de aire. Hace ruido y frena el paso del fluido hasta que se saca con un lavado.
context-air-left-in-circuit--no-flush-record = Los lazos sin registro de lavado a menudo no se lavaron bien.
context-air-left-in-circuit--dead-head-failed-at-start-up = El nivel bajó demasiado en la puesta en marcha: el aire estaba ahí desde el primer día.
context-air-left-in-circuit--dead-head-passed-at-start-up = Una prueba con retorno cerrado superada deja poco margen para aire del llenado.
context-air-left-in-circuit--circuits-flushed-singly = Los circuitos lavados uno a uno recibieron todo el caudal del carro.
context-air-left-in-circuit--large-headers = El aire en cabezales anchos no se mueve a la velocidad de lavado habitual.
context-air-left-in-circuit--first-year = El aire del llenado se nota en el primer año; después ya se ha disuelto o venteado.
context-air-left-in-circuit--since-start-up = El aire del llenado se oye desde las primeras semanas.
cause-flush-too-weak = Lavado demasiado lento o demasiado breve
    .homeowner = El primer lavado fue demasiado lento o corto para sacar todo el aire y la suciedad de su tubería enterrada.
context-flush-too-weak--flush-too-slow = Por debajo de la velocidad de arrastre, el flujo deja el aire y las virutas donde están.
context-flush-too-weak--flush-too-short = Un lavado corto limpia la tubería cercana y no el extremo lejano.
context-flush-too-weak--cart-too-small = El carro no puede llevar todas las tuberías de este lazo a la velocidad de arrastre.
context-flush-too-weak--never-flushed = No lavar nada es el lavado más débil.
context-flush-too-weak--no-flush-record = Sin registro, nadie sabe qué velocidad se alcanzó.
context-flush-too-weak--circuits-flushed-singly = Con un circuito cada vez, hasta un carro pequeño es lo bastante rápido.
context-flush-too-weak--dead-head-passed-at-start-up = Una prueba con retorno cerrado superada habla de un buen lavado.
context-flush-too-weak--first-year = Un lavado débil se nota en el primer año.
context-flush-too-weak--since-start-up = Lo que el lavado dejó atrás está ahí desde el primer día.
context-flush-too-weak--older-than-five-years = Lo que deja un lavado débil se nota en los primeros años.
cause-circulators-not-bled = Circuladores nunca purgados
    .homeowner = Al arrancar el sistema quedó aire dentro de la bomba de circulación, y por eso no puede funcionar bien.
context-circulators-not-bled--circulators-not-bled = El propio registro dice si se purgaron.
context-circulators-not-bled--first-month = Una bomba que nunca se purgó se queja desde el primer día.
context-circulators-not-bled--first-year = Tras años de marcha, el aire del rotor ha desaparecido, o el cojinete.
context-circulators-not-bled--since-start-up = Ese aire está ahí antes del primer arranque.
context-circulators-not-bled--after-work = Una bomba que se abrió vuelve a tener aire.
context-circulators-not-bled--older-than-five-years = Un arranque en seco se nota en semanas, no tras años.

## Mechanisms

mechanism-air-in-fluid = Bolsas de gas en el fluido del lazo
    .homeowner = Hay aire en el fluido de su tubería.
mechanism-air-in-circulator = Circulador bloqueado por aire
    .homeowner = Dentro de la bomba de circulación hay aire donde debería haber fluido.

## Findings

finding-gurgling = Gorgoteo o ruido de agua que corre en las tuberías
    .homeowner = Se oye un gorgoteo en las tuberías.
finding-air-at-vent = Un venteo o una toma escupe aire
    .homeowner = Salió aire cuando abrimos un venteo.
finding-springy-gauge = El manómetro es elástico: una pequeña inyección de fluido apenas lo mueve
    .homeowner = La presión se comporta como si hubiera un colchón de aire en la tubería.
finding-dead-head-air = Prueba con retorno cerrado: más aire del que admite este lazo
    .homeowner = Una prueba mostró que hay aire atrapado en la tubería.
finding-flow-unsteady = La aguja del caudal o de la caída de presión oscila
    .homeowner = El fluido no pasa de manera uniforme.
finding-came-back-after-purge = El ruido o el problema volvió días después de una purga
    .homeowner = El problema volvió pocos días después de haberlo tratado.
finding-circulator-vent-gives-air = Sale aire por el tornillo de purga del circulador
    .homeowner = Salió aire de la bomba de circulación.
finding-circulator-body-hot = Cuerpo del circulador mucho más caliente que el fluido
    .homeowner = La bomba de circulación está mucho más caliente de lo que debería.
finding-sample-milky = La muestra recién tomada es lechosa y se aclara desde abajo
    .homeowner = El fluido está lleno de burbujas diminutas.

## Links

link-air-left-in-circuit--air-in-fluid = El aire que no se arrastró fuera queda en bolsas en los puntos altos y las ramas descendentes.
link-air-left-in-circuit--came-back-after-purge = Una purga que no alcanza la bolsa solo alivia hasta que esta vuelve a moverse.
link-air-left-in-circuit--idle-circuit = Una bolsa en una rama descendente consume tanta altura como ella mide y frena ese circuito.
link-air-left-in-circuit--circuit-return-stands = Una bolsa rara vez detiene un circuito del todo.
link-flush-too-weak--air-in-fluid = Por debajo de { AMOUNT("2 ft/s") } en cualquier tubería, el flujo no arrastra el aire hacia abajo y hacia fuera.
link-flush-too-weak--loose-solids = Lo que no mueve el aire tampoco mueve las virutas.
link-flush-too-weak--idle-circuit = Las ramas que nunca se barrieron siguen lentas o muertas.
link-flush-too-weak--came-back-after-purge = Repetir la misma purga débil da el mismo resultado pocos días después.
link-flush-too-weak--circuit-return-stands = Un circuito que nunca se llenó queda parado.
link-circulators-not-bled--air-in-circulator = Un rotor húmedo que no se venteó conserva aire alrededor del eje.
link-air-in-fluid--air-in-circulator = Las burbujas que circulan se acumulan en el rotor.
link-air-in-fluid--gurgling = Gas y fluido que se cruzan gorgotean.
link-air-in-fluid--air-at-vent = Un venteo en un punto alto deja salir lo que se acumula allí.
link-air-in-fluid--springy-gauge = El gas cede donde el fluido no cede, así que una inyección de fluido apenas sube el manómetro.
link-air-in-fluid--dead-head-air = A presión el gas se encoge, y el nivel del depósito baja más de lo que se estira la tubería.
link-air-in-fluid--flow-unsteady = Tapones de gas pasan uno tras otro por la bomba y el intercambiador.
link-air-in-fluid--sample-milky = Burbujas finas enturbian una muestra fresca y suben hasta salir de ella.
link-air-in-fluid--low-flow = Una bolsa cuesta más o menos tanta altura como ella mide.
link-air-in-fluid--pressure-unexplained = El fluido frío a presión disuelve gas, y la presión se va con él.
link-air-in-fluid--noise-worse-in-summer = El fluido caliente a baja presión vuelve a soltar el gas disuelto.
link-air-in-fluid--circulator-hums = El gas que atraviesa el impulsor cambia su sonido.
link-air-in-fluid--circulator-rattles = Las burbujas que atraviesan el impulsor traquetean.
link-air-in-fluid--low-flow-lockout = Un tapón que pasa hace caer un momento el interruptor de caudal.
link-air-in-fluid--pressure-gone = Mucho aire que se disuelve se lleva mucha presión.
link-air-in-circulator--weak-pumping = Un impulsor en aire mueve poco fluido.
link-air-in-circulator--circulator-vent-gives-air = El aire sale por el tornillo de purga.
link-air-in-circulator--circulator-body-hot = Sin fluido alrededor, el rotor no se enfría.
link-air-in-circulator--circulator-rattles = Los cojinetes sin película de fluido golpean y traquetean.
link-air-in-circulator--circulator-hums = Un rotor bloqueado por aire zumba y no mueve nada.
link-air-in-circulator--circulator-power = Mover aire en lugar de fluido consume poca potencia.
link-air-in-circulator--flow-unsteady = Una bomba que toma y pierde fluido hace oscilar la aguja.
link-air-in-circulator--gurgling = El aire que da vueltas en el cuerpo de la bomba gorgotea.

## Checks

check-listen-to-pipes = Escuchar el circulador y las tuberías
    .how = Con las bombas en marcha, apoyar un estetoscopio en el cuerpo de la bomba, el intercambiador y la tubería más alta. El gorgoteo se desplaza por la tubería; la cavitación silba o zumba en la succión; los cojinetes golpean al ritmo del eje.
check-open-vent = Abrir un poco el venteo o la toma más alta
    .how = Con las bombas paradas, abrir un poco el venteo o la toma más alta y mirar qué sale: fluido continuo, o aire y salpicaduras.
check-watch-needle = Observar la aguja durante dos minutos
    .how = Bombas en marcha, manómetro en las tomas del intercambiador. Observar dos minutos: una aguja quieta, o una que oscila.
check-shot-of-fluid = Añadir una pequeña inyección medida de fluido
    .how = Bombas paradas. Añadir una pequeña inyección medida y observar el manómetro. Una tubería estanca y sin aire responde al instante; una elástica apenas se mueve.
check-dead-head-test = Prueba con retorno cerrado con el carro
    .how = Carro conectado y en marcha, con fluido limpio en el depósito y la unidad aislada. Marcar el nivel, cerrar el retorno, subir la presión, nunca por encima de la presión nominal más baja de todas las piezas, y leer la bajada y ambas presiones.
check-bleed-screw = Abrir el tornillo de purga del circulador
    .how = Corriente cortada y bloqueada. Aflojar una vuelta el tornillo de purga y ver si sale aire o fluido. Cerrarlo cuando el fluido salga limpio.
check-circulator-temperature = Temperatura del cuerpo del circulador
    .how = Sujetar un termómetro al cuerpo tras diez minutos de marcha y comparar con el fluido.
check-fresh-sample = Mirar una muestra recién tomada
    .how = Tomar una muestra en un frasco transparente. Mirarla enseguida al trasluz: burbujas, color, sólidos, espuma. Olerla a distancia. Dejarla reposar cinco minutos y volver a mirar.
context-air-left-in-circuit--flush-too-slow = Si el propio lavado fue demasiado lento, esa es la raíz y esto su huella; tras un lavado rápido solo quedan bolsas.
context-air-left-in-circuit--flush-too-short = Si el lavado fue demasiado corto, esa es la raíz; tras uno largo solo quedan bolsas.
context-air-left-in-circuit--cart-too-small = Si el carro era demasiado pequeño, esa es la raíz; uno potente solo deja bolsas.
context-air-left-in-circuit--after-work = Quien abre el lazo deja entrar aire.
context-air-left-in-circuit--older-than-five-years = El aire del llenado hace tiempo que se disolvió, se venteó o provocó una llamada.
