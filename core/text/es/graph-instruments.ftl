# Texts of the rule graph: instruments that lie, and the quick trial that settles it


## Causes

cause-dial-gauge-lies = El manómetro de aguja miente
    .homeowner = Un manómetro marca mal.
cause-digital-gauge-lies = El manómetro digital miente
    .homeowner = Un manómetro marca mal.
cause-differential-gauge-lies = El manómetro diferencial miente
    .homeowner = Un manómetro marca mal.
cause-port-thermometer-lies = El termómetro de toma miente
    .homeowner = Un termómetro marca mal.
cause-clamp-thermometer-lies = El termómetro de contacto miente
    .homeowner = Un termómetro marca mal.
cause-flow-meter-lies = El caudalímetro miente
    .homeowner = Un medidor del paso de fluido marca mal.
cause-refractometer-lies = El refractómetro miente o tiene la escala incorrecta
    .homeowner = El aparato que mide el anticongelante marca mal.
cause-hydrometer-lies = El densímetro miente
    .homeowner = El aparato que mide el anticongelante marca mal.
cause-power-meter-lies = El vatímetro o la pinza amperimétrica miente
    .homeowner = Un medidor de electricidad marca mal.
cause-refrigerant-gauges-lie = Los manómetros de refrigerante mienten
    .homeowner = Un manómetro de refrigerante marca mal.
cause-test-kit-lies = Las tiras o el kit de análisis mienten
    .homeowner = Una prueba de agua da un resultado equivocado.
cause-unit-display-lies = La pantalla de la propia unidad miente
    .homeowner = La pantalla de la propia bomba de calor marca mal.

## Findings

finding-second-gauge-disagrees = Un segundo manómetro en la misma toma no coincide
    .homeowner = Dos manómetros en el mismo punto no coinciden.
finding-digital-gauge-not-zero = El manómetro digital no marca cero al aire libre
    .homeowner = El manómetro no marca cero cuando debería.
finding-differential-gauge-not-zero = El manómetro diferencial no marca cero en una misma toma
    .homeowner = El manómetro no marca cero cuando debería.
finding-port-thermometer-ice-wrong = El termómetro de toma no marca 32 °F (0 °C) en agua con hielo
    .homeowner = El termómetro marca mal en agua con hielo.
finding-clamp-thermometer-ice-wrong = El termómetro de contacto no coincide con un termómetro de toma en el mismo lugar
    .homeowner = Dos termómetros no coinciden.
finding-meter-disagrees-with-bucket = El caudalímetro no coincide con un volumen cronometrado o con un segundo caudalímetro
    .homeowner = El medidor del paso de fluido no coincide con un volumen medido.
finding-refractometer-water-wrong = El refractómetro no lee el agua como agua, o la escala es de otro fluido
    .homeowner = El aparato no mide bien el agua sola.
finding-hydrometer-water-wrong = El densímetro no lee el agua como agua
    .homeowner = El aparato no mide bien el agua sola.
finding-power-meter-disagrees = Un segundo vatímetro no coincide
    .homeowner = Dos medidores de electricidad no coinciden.
finding-refrigerant-gauges-not-zero = Los manómetros de refrigerante no marcan cero al aire libre
    .homeowner = El manómetro no marca cero cuando debería.
finding-test-kit-control-fails = El kit de análisis falla con agua de composición conocida, o está caducado
    .homeowner = La prueba de agua falla con un agua conocida.
finding-display-thermometer-disagree = La pantalla de la unidad no coincide con un termómetro comprobado
    .homeowner = La pantalla de la bomba de calor no coincide con un buen termómetro.

## Links

link-dial-gauge-lies--second-gauge-disagrees = Dos manómetros en una misma toma deben coincidir.
link-digital-gauge-lies--digital-gauge-not-zero = Al aire libre debe marcar cero.
link-digital-gauge-lies--second-gauge-disagrees = Dos manómetros difieren sea cual sea el que falla.
link-differential-gauge-lies--differential-gauge-not-zero = Con ambos lados en una toma, debe marcar cero.
link-port-thermometer-lies--port-thermometer-ice-wrong = El hielo picado con agua está siempre en su punto de congelación.
link-port-thermometer-lies--display-thermometer-disagree = Los dos difieren sea cual sea el que falla.
link-port-thermometer-lies--clamp-thermometer-ice-wrong = Los dos difieren sea cual sea el que falla.
link-clamp-thermometer-lies--clamp-thermometer-ice-wrong = En el mismo lugar ambos deben coincidir.
link-flow-meter-lies--meter-disagrees-with-bucket = Un volumen cronometrado no puede mentir.
link-flow-meter-lies--head-unaccounted = Con un caudal equivocado la cuenta no cierra.
link-flow-meter-lies--exchanger-drop-for-flow = La caída es correcta para el caudal real, no para el que muestra el caudalímetro.
link-refractometer-lies--refractometer-water-wrong = El agua sola debe leerse como agua.
link-hydrometer-lies--hydrometer-water-wrong = El agua sola debe leerse como agua.
link-power-meter-lies--power-meter-disagrees = Dos vatímetros deben coincidir.
link-refrigerant-gauges-lie--refrigerant-gauges-not-zero = Al aire libre deben marcar cero.
link-test-kit-lies--test-kit-control-fails = Un agua conocida debe dar lo conocido.
link-unit-display-lies--display-thermometer-disagree = La pantalla es solo tan buena como su sensor.
link-unit-display-lies--display-disagrees = La pantalla es solo tan buena como su sensor.

## Checks

check-second-gauge = Un segundo manómetro en la misma toma
    .how = Poner otro manómetro en la misma toma y comparar.
check-zero-digital-gauge = Cero del manómetro digital
    .how = Leerlo abierto al aire.
check-zero-differential-gauge = Cero del manómetro diferencial
    .how = Ambas mangueras en una toma, o el mismo manómetro dos veces en una toma.
check-ice-bath = Termómetro en agua con hielo
    .how = Hielo picado apenas cubierto de agua, remover, esperar un minuto, leer.
check-compare-thermometers = Comparar termómetros en un mismo lugar
    .how = De contacto, de toma y pantalla en el mismo punto, en marcha estable.
check-timed-bucket = Caudalímetro frente a un volumen cronometrado
    .how = Con el carro: cronometrar un volumen conocido hacia el depósito y comparar.
check-refractometer-on-water = Refractómetro con agua limpia
    .how = Una gota de agua limpia debe leerse como agua; comprobar que la escala es la de este fluido.
check-hydrometer-on-water = Densímetro en agua limpia
    .how = En agua limpia a la temperatura marcada debe leer 1.000.
check-second-power-meter = Un segundo vatímetro
    .how = Colocar otra pinza en el mismo conductor y comparar.
check-zero-refrigerant-gauges = Cero de los manómetros de refrigerante
    .how = Abiertos al aire, antes de conectarlos.
check-control-for-test-kit = Kit de análisis con agua conocida
    .how = Comprobar la fecha y analizar un agua de composición conocida.
