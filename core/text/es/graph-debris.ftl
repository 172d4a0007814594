# Texts of the rule graph: debris, strainer, and what blocks the exchanger


## Causes

cause-debris-left-in-loop = Residuos que quedaron en el lazo
    .homeowner = Al montar sus tuberías quedaron dentro virutas de plástico o arena.
context-debris-left-in-loop--no-filter = Sin filtro, el lavado hace circular los residuos y los deja dentro.
context-debris-left-in-loop--never-flushed = Nada sacó las virutas.
context-debris-left-in-loop--flush-too-slow = El agua lenta deja la arenilla en el fondo de la perforación.
context-debris-left-in-loop--first-year = Las virutas se sueltan en el primer año.
context-debris-left-in-loop--came-on-suddenly = Un trozo se suelta y se atasca.
context-debris-left-in-loop--older-than-five-years = Lo que quedó de la obra hace tiempo que fue retenido.
cause-strainer-loaded = Filtro de malla cargado
    .homeowner = La malla que protege su sistema está llena y hay que limpiarla.
context-strainer-loaded--no-filter = Lo que no retuvo el filtro de lavado lo retiene el filtro de malla.
context-strainer-loaded--came-on-slowly = Una malla se llena a lo largo de meses.
context-strainer-loaded--since-start-up = Una malla tarda en llenarse.
cause-exchanger-loaded = Residuos atascados en el intercambiador de la unidad
    .homeowner = Se ha atascado suciedad dentro del intercambiador de calor de la bomba de calor.
context-exchanger-loaded--has-strainer = Un filtro de malla retiene la mayor parte.
context-exchanger-loaded--no-filter = Lo que no se filtró acaba en el lugar más estrecho.
context-exchanger-loaded--came-on-slowly = Se acumula a lo largo de meses.
context-exchanger-loaded--since-start-up = Se acumula con el tiempo.
cause-unit-not-isolated-in-flush = Residuos lavados hacia la unidad, que no estaba aislada
    .homeowner = Al lavar las tuberías, entró suciedad en la bomba de calor.
context-unit-not-isolated-in-flush--heat-pump-not-isolated-in-flush = El propio registro dice si la unidad se aisló.
context-unit-not-isolated-in-flush--no-filter = El agua de lavado sin filtrar lleva virutas.
context-unit-not-isolated-in-flush--older-than-five-years = Se nota poco después de la puesta en marcha.
context-unit-not-isolated-in-flush--since-start-up = Lo que un lavado mete está ahí antes del primer arranque.

## Mechanisms

mechanism-loose-solids = Sólidos sueltos viajan en el fluido
    .homeowner = Pequeños trozos circulan con el fluido.
mechanism-strainer-restriction = El filtro de malla frena el caudal
    .homeowner = La malla frena el paso del fluido.
mechanism-exchanger-blocked = Pasos del intercambiador obstruidos en parte
    .homeowner = Una parte del intercambiador de calor está obstruida.

## Findings

finding-strainer-drop = Caída de presión en el filtro de malla
    .homeowner = Cuánto frena la malla el paso del fluido.
finding-strainer-screen-dirty = La malla del filtro está sucia
    .homeowner = La malla estaba sucia.
finding-strainer-loads-again = El filtro de malla se carga de nuevo poco después de limpiarlo
    .homeowner = La malla vuelve a taparse poco después de limpiarla.
finding-sample-has-grit = La muestra tiene virutas, arena o escamas de incrustación
    .homeowner = El fluido lleva pequeños trozos sólidos.
finding-exchanger-drop-for-flow = Caída de presión del intercambiador frente a su curva a un caudal conocido
    .homeowner = Cuánto frena el intercambiador de calor el paso del fluido.
finding-better-after-backflush = El caudal vuelve tras lavar el intercambiador en sentido inverso
    .homeowner = El fluido volvió a pasar bien después de lavar al revés el intercambiador de calor.
finding-chips-at-exchanger = Virutas o lodo en la entrada del intercambiador
    .homeowner = Se encontró suciedad en el intercambiador de calor.
finding-exchanger-takes-the-head = El intercambiador consume casi todo lo que dan los circuladores
    .homeowner = Casi todo lo que hace la bomba se pierde dentro de la bomba de calor.

## Links

link-debris-left-in-loop--loose-solids = Las virutas y la arena se sueltan y viajan.
link-debris-left-in-loop--strainer-loads-again = Mientras haya residuos, una malla limpia vuelve a llenarse.
link-debris-left-in-loop--strainer-restriction = El filtro de malla está para retenerlos, y se llena.
link-strainer-loaded--strainer-restriction = Una malla llena deja pasar poco.
link-exchanger-loaded--exchanger-blocked = Sus pasos son el lugar más estrecho del lazo.
link-exchanger-loaded--better-after-backflush = Lo que se atascó desde un lado sale por ese mismo lado.
link-exchanger-loaded--loose-solids = Lo que lo llenó vino con el fluido, y algo sigue en camino.
link-unit-not-isolated-in-flush--exchanger-blocked = La unidad se aísla primero para que el lavado no pase por ella.
link-unit-not-isolated-in-flush--loose-solids = Parte de lo que entró vuelve a salir.
link-unit-not-isolated-in-flush--better-after-backflush = Lo que entró con el lavado puede salir con un lavado inverso.
link-loose-solids--sample-has-grit = Una muestra o un filtro blanco lo muestra.
link-loose-solids--strainer-restriction = El filtro de malla los retiene hasta que se llena.
link-loose-solids--exchanger-blocked = Lo que pasa el filtro de malla se atasca en el lugar más estrecho.
link-loose-solids--circulator-rattles = La arenilla en el cojinete traquetea.
link-loose-solids--circulator-sounds-rough = La arenilla raya el cojinete.
link-loose-solids--circulator-power = Un rotor con arenilla gira con esfuerzo.
link-strainer-restriction--strainer-drop = La caída está en la malla.
link-strainer-restriction--strainer-screen-dirty = Lo que frena el caudal se ve en la malla.
link-strainer-restriction--restriction = Todo el caudal tiene que pasar por ella.
link-strainer-restriction--suction-pressure = Un filtro de malla antes de la bomba le quita la succión.
link-strainer-restriction--head-unaccounted = Un filtro de malla cargado consume más que el limpio con que se cuenta.
link-exchanger-blocked--exchanger-drop-for-flow = Menos pasos, más caída al mismo caudal.
link-exchanger-blocked--chips-at-exchanger = Lo que no puede entrar queda en la entrada.
link-exchanger-blocked--restriction = Todo el caudal tiene que pasar por él.
link-exchanger-blocked--approach = Los pasos obstruidos no intercambian calor.
link-exchanger-blocked--loop-flow = Leído por su propia caída de presión, un intercambiador obstruido parece dejar pasar más de lo que pasa.
link-exchanger-blocked--exchanger-takes-the-head = Lo que frena el caudal se lleva la altura.

## Checks

check-strainer-pressure-drop = Caída de presión en el filtro de malla
    .how = El mismo manómetro antes y después del filtro de malla, en marcha.
check-open-strainer = Abrir el filtro de malla
    .how = Corriente cortada y bloqueada, filtro de malla aislado y sin presión. Mirar qué hay en la malla: virutas, arena, óxido, limo.
check-filter-a-sample = Filtrar una muestra por tela blanca
    .how = Tomar un litro y verterlo por un filtro blanco. Las virutas son residuos, el polvo negro que atrae un imán es corrosión, lo anaranjado es hierro.
check-exchanger-drop-known-flow = Caída del intercambiador a un caudal conocido
    .how = Leer a la vez la caída de presión del intercambiador y el caudal con caudalímetro, y comparar con la curva de la unidad, corregida por el fluido.
check-backflush-exchanger = Lavar el intercambiador en sentido inverso y volver a leer el caudal
    .how = Corriente cortada y bloqueada, unidad aislada del lazo. Hacer pasar el carro en sentido inverso solo por el intercambiador hacia una bolsa filtrante; luego dejarlo como estaba y leer de nuevo el caudal.
check-open-exchanger-inlet = Mirar dentro de la entrada del intercambiador
    .how = Corriente cortada y bloqueada, unidad aislada y sin presión. Abrir la conexión de entrada y mirar con una linterna.
context-exchanger-loaded--heat-pump-not-isolated-in-flush = Lo que el lavado empujó dentro está ahí desde el primer día y tiene otra raíz.
