# Texts of the rule graph: the ground itself and the size of the loop


## Causes

cause-loop-too-short = Lazo demasiado corto para la carga
    .homeowner = Hay muy poca tubería enterrada para el calor que necesita su casa.
context-loop-too-short--first-month = Tarda una temporada en notarse.
context-loop-too-short--since-start-up = Un lazo corto lo es desde la primera temporada.
cause-ground-conducts-poorly = Lechada deficiente o terreno seco
    .homeowner = El terreno alrededor de sus tuberías no deja pasar bien el calor.
context-ground-conducts-poorly--vertical-loop = Las perforaciones dependen de su lechada.
context-ground-conducts-poorly--horizontal-loop = El terreno poco profundo se seca.
context-ground-conducts-poorly--since-start-up = La lechada es así desde el primer año.

## Mechanisms

mechanism-ground-side-weak = El lado del terreno da o toma muy poco calor
    .homeowner = El lado del terreno da muy poco calor.
mechanism-capacity-short = El sistema entrega menos de lo que debe
    .homeowner = El sistema entrega menos de lo que debería.

## Findings

finding-entering-water = Agua de entrada fuera del margen de la temporada
    .homeowner = El fluido llega demasiado frío en invierno o demasiado caliente en verano.
finding-water-colder-than-it-should = La unidad muestra el agua del lazo más fría que otros años, o más caliente en verano
    .homeowner = La tubería enterrada trabaja más fría que antes.
finding-ewt-drifts-through-season = El agua de entrada se desvía más cada semana de la temporada
    .homeowner = La tubería enterrada se enfría más semana a semana.
finding-ewt-recovers-after-rest = El agua de entrada se recupera claramente tras horas de reposo
    .homeowner = La tubería enterrada se recupera cuando la bomba de calor descansa.
finding-ewt-falls-fast = El agua de entrada cae a los pocos minutos de arrancar y sube igual de rápido después
    .homeowner = La tubería enterrada se enfría a los pocos minutos de arrancar.
finding-ewt-creeps-when-idle = La tubería junto a la unidad se calienta o enfría de forma extraña en reposo
    .homeowner = La tubería se calienta cuando debería estar en reposo.
finding-loop-length-short = La longitud del lazo para esta carga está por debajo del margen habitual
    .homeowner = Según el cálculo, hay poca tubería para lo que se le pide.
finding-temperature-split = Cambio de temperatura del fluido a través de la unidad frente al que da el caudal completo
    .homeowner = Cuánto se enfría el fluido en la bomba de calor.
finding-low-heat = La casa no se calienta, o no se enfría
    .homeowner = La casa no se calienta lo suficiente.
finding-high-bill = La factura eléctrica es alta
    .homeowner = La factura de la luz es alta.
finding-auxiliary-heat-often = La calefacción auxiliar funciona a menudo
    .homeowner = La calefacción de apoyo funciona a menudo.

## Links

link-loop-too-short--ground-side-weak = Cada tramo de tubería debe tomar más calor del que da el terreno.
link-loop-too-short--ewt-drifts-through-season = El terreno se agota más cada semana.
link-loop-too-short--ewt-recovers-after-rest = El terreno en reposo se recupera.
link-loop-too-short--loop-length-short = La longitud frente a la carga lo muestra.
link-loop-too-short--ewt-falls-fast = Poca tubería para el calor que se extrae se enfría deprisa.
link-ground-conducts-poorly--ground-side-weak = El calor no llega a la tubería lo bastante rápido.
link-ground-conducts-poorly--ewt-falls-fast = La propia perforación se agota en minutos y se repone igual de rápido.
link-ground-conducts-poorly--ewt-recovers-after-rest = Se recupera cuando reposa.
link-ground-conducts-poorly--ewt-drifts-through-season = El terreno seco se agota a lo largo de la temporada.
link-ground-side-weak--entering-water = El fluido vuelve demasiado frío en calefacción, demasiado caliente en refrigeración.
link-ground-side-weak--water-colder-than-it-should = La pantalla de la unidad lo muestra.
link-ground-side-weak--freeze-guard-trip = Frío al entrar, más frío al salir.
link-ground-side-weak--high-pressure-trip = Caliente al entrar, más caliente al salir.
link-ground-side-weak--capacity-short = La capacidad cae con la temperatura de la fuente.
link-ground-side-weak--cold-film = El fluido más frío es más viscoso y el flujo se vuelve laminar.
link-ground-side-weak--worse-when-cold = El tiempo más frío es cuando más se pide al terreno.
link-ground-side-weak--low-flow-lockout = El fluido frío y viscoso circula menos, hasta el interruptor.
link-capacity-short--low-heat = Lo que no se entrega se echa en falta.
link-capacity-short--high-bill = Funciona más tiempo para el mismo calor.
link-capacity-short--auxiliary-heat-often = El apoyo compensa lo que falta.
link-capacity-short--unit-capacity = Medido en el lado de la carga, falta calor.
link-capacity-short--air-temperature-change = Menos calor en el mismo aire.

## Checks

check-read-entering-leaving = Temperatura de entrada y de salida
    .how = Unidad en marcha al menos diez minutos. Leer ambas tomas con el mismo termómetro, y otra vez la de entrada.
check-entering-water-log = Leer el registro de agua de entrada de la propia unidad
    .how = Recorrer la temporada: ¿se desvía semana a semana?, ¿se recupera tras días de reposo?
check-watch-first-minutes = Observar el agua de entrada durante un arranque
    .how = Desde el reposo, anotar la temperatura de entrada cada minuto durante un cuarto de hora; luego parar y observar cómo se recupera.
check-compute-loop-length = Comparar la longitud del lazo con la carga
    .how = A partir de longitud, tipo de lazo y capacidad, el programa compara con el margen habitual.
