# Texts of the rule graph: valves, flush ports and piping


## Causes

cause-three-way-valve-mis-set = Válvula de tres vías o toma de lavado dejada en posición incorrecta
    .homeowner = Una válvula que se usó para el lavado no se devolvió del todo a su posición, y parte del fluido toma un atajo.
context-three-way-valve-mis-set--first-month = Las válvulas quedan mal tras trabajar en el lazo.
context-three-way-valve-mis-set--complaint-recurs = Tras una visita anterior, la toma de lavado pudo quedar entre posiciones.
context-three-way-valve-mis-set--older-than-five-years = Una válvula mal puesta en la puesta en marcha rara vez pasa inadvertida durante años.
context-three-way-valve-mis-set--since-start-up = La deja así quien lava.
context-three-way-valve-mis-set--after-work = Las vías que se giran para un trabajo no siempre se devuelven.
cause-isolation-valve-part-closed = Válvula de aislamiento cerrada en parte
    .homeowner = Una llave de paso no está del todo abierta y frena el fluido.
context-isolation-valve-part-closed--first-month = Las válvulas quedan cerradas en parte tras un trabajo.
context-isolation-valve-part-closed--complaint-recurs = Tras una visita anterior, quizá no se volvió a abrir una válvula.
context-isolation-valve-part-closed--since-start-up = Se queda así al terminar el trabajo.
context-isolation-valve-part-closed--came-on-suddenly = Alguien la gira, y desde ese día es así.
context-isolation-valve-part-closed--after-work = Se olvida una válvula que se cerró para el trabajo.
cause-supply-return-crossed = Ida y retorno cruzados en la unidad
    .homeowner = Las dos tuberías que van a la bomba de calor están cambiadas.
context-supply-return-crossed--first-year = Es un error de instalación.
context-supply-return-crossed--first-month = Se descubre en las primeras lecturas.
context-supply-return-crossed--since-start-up = Los tubos casi siempre se cruzan al conectarlos por primera vez.
context-supply-return-crossed--after-work = Los tubos que se soltaron se volvieron a montar cambiados.

## Mechanisms

mechanism-restriction = Algo frena el caudal
    .homeowner = Algo estrecha el camino del fluido.
mechanism-fluid-bypasses = Parte del fluido toma un atajo
    .homeowner = Parte del fluido toma un atajo y no trabaja.
mechanism-reversed-through-unit = El fluido pasa por el intercambiador en sentido contrario
    .homeowner = El fluido pasa por la bomba de calor en el sentido equivocado.

## Findings

finding-valve-not-in-run-position = Válvula de tres vías o toma de lavado fuera de la posición de marcha
    .homeowner = Una válvula no estaba en su posición de trabajo.
finding-port-temperatures-disagree = Las temperaturas de tubería a ambos lados de la toma de lavado no coinciden
    .homeowner = El fluido frío y el caliente se mezclan donde no deben.
finding-isolation-valve-not-open = Válvula de aislamiento no abierta del todo
    .homeowner = Una llave de paso no estaba del todo abierta.
finding-drop-across-open-valve = Gran caída de presión en una válvula que parece abierta
    .homeowner = Una válvula que parece abierta frena el paso del fluido.
finding-split-sign-reversed = La toma marcada "in" (entrada) marca lo que debería marcar la salida
    .homeowner = Las dos tuberías están intercambiadas.
finding-crossed-at-unit = Las tuberías, seguidas desde la pared, llegan a las tomas equivocadas
    .homeowner = Las dos tuberías de la bomba de calor están cambiadas.

## Links

link-three-way-valve-mis-set--fluid-bypasses = Entre posiciones las tres vías están abiertas, y el fluido va por la más corta.
link-three-way-valve-mis-set--restriction = Entre posiciones cada vía queda estrechada.
link-three-way-valve-mis-set--valve-not-in-run-position = La manija o la ranura lo muestra.
link-three-way-valve-mis-set--head-unaccounted = Una vía a medio paso consume carga que nada registrado consume.
link-isolation-valve-part-closed--restriction = Una bola o compuerta a medio cerrar consume la altura de la bomba.
link-isolation-valve-part-closed--isolation-valve-not-open = La manija lo muestra.
link-isolation-valve-part-closed--drop-across-open-valve = La caída está en la válvula.
link-isolation-valve-part-closed--head-unaccounted = Lo que la bomba da y ni la tubería ni el intercambiador consumen se pierde en la válvula.
link-supply-return-crossed--reversed-through-unit = El fluido entra por donde debería salir.
link-supply-return-crossed--crossed-at-unit = Seguir las tuberías lo muestra.
link-reversed-through-unit--approach = Sin contracorriente, el intercambiador pierde diferencia de temperatura.
link-reversed-through-unit--split-sign-reversed = En calefacción, la toma marcada "in" (entrada) es la más fría.
link-reversed-through-unit--capacity-short = La unidad trabaja a una temperatura peor.
link-fluid-bypasses--port-temperatures-disagree = La mezcla se ve como un escalón en la temperatura de la tubería junto a la toma.
link-fluid-bypasses--temperature-split = Lo que no ha ido al terreno vuelve casi como salió.
link-fluid-bypasses--ground-side-weak = Llega menos fluido al terreno, así que la unidad recibe agua más fría en calefacción.
link-fluid-bypasses--low-flow = Parte del caudal pasa de largo de la unidad.
link-restriction--low-flow = Más resistencia, menos caudal.
link-restriction--circulator-rise = Con menos caudal, la bomba sube por su curva hacia la descarga cerrada.
link-restriction--circulator-power = Una bomba pequeña de rotor húmedo consume menos potencia con menos caudal.

## Checks

check-look-at-flush-ports = Mirar las válvulas de tres vías y las tomas de lavado
    .how = Comparar cada ranura y manija con la posición de marcha señalada en el cuerpo. La ranura, no la manija, dice la verdad.
check-compare-port-temperatures = Temperaturas de tubería a ambos lados de la toma de lavado
    .how = Unidad en marcha durante diez minutos. Sujetar el mismo termómetro antes y después de cada válvula de tres vías; un escalón significa mezcla.
check-look-at-valves = Mirar todas las válvulas
    .how = Revisar cada válvula de aislamiento y cada válvula de circuito en el colector. Si es de compuerta: contar las vueltas.
check-valve-drop = Caída de presión en una válvula sospechosa
    .how = El mismo manómetro antes y después de la válvula, en marcha. Una válvula de bola abierta no consume casi nada.
check-trace-pipes = Seguir ida y retorno hasta la unidad
    .how = Seguir ambas tuberías desde la pared hasta las tomas. En marcha en calefacción, el fluido debe entrar más caliente de lo que sale.
