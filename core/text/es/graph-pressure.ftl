# Texts of the rule graph: static pressure, charge, relaxation and the seasons


## Causes

cause-charge-left-too-low = Lazo que se dejó con presión demasiado baja
    .homeowner = La última vez que se llenó su tubería se dejó con muy poca presión.
context-charge-left-too-low--charged-low = El propio registro dice qué presión se dejó.
context-charge-left-too-low--no-flush-record = Donde no se anotó el lavado, rara vez se anotó la carga.
context-charge-left-too-low--first-year = Una carga demasiado baja se nota en el primer año.
context-charge-left-too-low--since-start-up = Una carga que se dejó baja lo es desde el primer día.
context-charge-left-too-low--older-than-five-years = Se habría notado hace años.
context-charge-left-too-low--non-pressurised = Solo un lazo a presión puede cargarse con presión de menos.
context-charge-left-too-low--after-work = El lazo se vuelve a cerrar sin su presión.
cause-pipe-never-relaxed = Cargado antes de que la tubería se relajara
    .homeowner = La tubería de plástico siguió estirándose después del llenado, y la presión bajó con ella.
context-pipe-never-relaxed--pipe-not-relaxed = Si no se mantiene a presión antes de la última carga, la tubería se estira después.
context-pipe-never-relaxed--first-month = La mayor parte del estirado ocurre en los primeros días y semanas.
context-pipe-never-relaxed--first-year = Cada vez que el tiempo se multiplica por diez se lleva lo mismo, así que es un fallo temprano.
context-pipe-never-relaxed--older-than-five-years = Tras cinco años, la tubería ya cedió lo que tenía que ceder.
context-pipe-never-relaxed--non-pressurised = Solo se estira una tubería a presión.
context-pipe-never-relaxed--sealed-with-tank = Un vaso compensa lo que toma la tubería.
cause-charged-cold-without-allowance = Cargado en frío sin margen para el verano
    .homeowner = Su tubería se llenó cuando el terreno estaba frío. En verano la tubería de plástico, caliente, se ensancha y la presión baja.
context-charged-cold-without-allowance--charged-in-winter = Solo una carga hecha en frío necesita el margen.
context-charged-cold-without-allowance--cooling-season = Se nota cuando el lazo está caliente.
context-charged-cold-without-allowance--heating-season = Con el frío, la presión está en su punto más alto.
context-charged-cold-without-allowance--sealed-with-tank = Un vaso absorbe el cambio de temporada.
context-charged-cold-without-allowance--since-start-up = Llega con el primer verano.
context-charged-cold-without-allowance--non-pressurised = Un depósito abierto sube y baja con la temporada sin daño.
cause-over-pressurised = Lazo con presión excesiva
    .homeowner = En su tubería hay más presión de la que necesita.
context-over-pressurised--charged-high = El propio registro dice qué presión se dejó.
context-over-pressurised--heating-season = Un lazo frío está en su presión más alta.
context-over-pressurised--non-pressurised = Solo un lazo cerrado puede retener demasiada presión.
context-over-pressurised--older-than-five-years = La tubería se ha relajado desde entonces, y la presión con ella.
cause-ordinary-relaxation = Relajación normal de la tubería plástica
    .homeowner = La tubería de plástico nueva cede un poco en sus primeros meses y la presión se asienta. Es normal.
context-ordinary-relaxation--first-month = Las primeras semanas muestran la mayor parte.
context-ordinary-relaxation--first-year = Sigue el logaritmo del tiempo: rápido al principio, luego apenas se ve.
context-ordinary-relaxation--older-than-five-years = Tras cinco años, otro día no quita nada que un manómetro pueda mostrar.
context-ordinary-relaxation--sealed-with-tank = Un vaso la oculta.
context-ordinary-relaxation--since-start-up = Llega con los meses.
cause-seasonal-swing = Variación normal a lo largo de las temporadas
    .homeowner = La tubería de plástico se ensancha con el calor, así que la presión es más baja en verano y más alta en invierno. Es normal.
context-seasonal-swing--cooling-season = Un lazo caliente marca menos.
context-seasonal-swing--heating-season = Un lazo frío marca más, lo que rara vez alarma a alguien.
context-seasonal-swing--first-year = La primera vuelta completa de las temporadas sorprende a la gente.
context-seasonal-swing--sealed-with-tank = Un vaso absorbe la mayor parte.
context-seasonal-swing--since-start-up = Llega con las temporadas.

## Mechanisms

mechanism-low-static-pressure = Presión del lazo demasiado baja para la temporada
    .homeowner = La tubería tiene muy poca presión.
mechanism-starved-suction = Succión del circulador desabastecida
    .homeowner = A la bomba de circulación no le llega suficiente fluido por su entrada.
mechanism-over-pressure = Presión del lazo demasiado alta
    .homeowner = La tubería tiene demasiada presión.
mechanism-pipe-gives-way = La tubería cede con el logaritmo del tiempo
    .homeowner = La tubería de plástico se está asentando.

## Findings

finding-gauge-reads-low = El manómetro del lazo parece bajo
    .homeowner = El manómetro de la tubería marca bajo.
finding-gauge-lower-than-before = Manómetro más bajo que en primavera o en la puesta en marcha
    .homeowner = El manómetro marca menos que antes.
finding-gauge-reads-high = El manómetro del lazo parece alto
    .homeowner = El manómetro de la tubería marca alto.
finding-static-pressure = Presión estática frente a la que hoy debe mostrar este lazo
    .homeowner = La presión de la tubería en reposo.
finding-pressure-unexplained = Presión por debajo de lo que explican juntas la carga, la relajación y la temporada
    .homeowner = La tubería ha perdido más presión de la que explican el tiempo y la temporada.
finding-static-pressure-trend = La presión cae la misma cantidad cada día
    .homeowner = La presión sigue bajando día tras día.
finding-fall-shrinks-each-day = La caída es grande al principio y cada día menor
    .homeowner = La presión bajó rápido al principio y ahora se está asentando.
finding-pressure-follows-temperature = El manómetro sube cuando el lazo se enfría y baja cuando se calienta, y vuelve
    .homeowner = La presión sube y baja con la temperatura, y vuelve a su valor.
finding-suction-pressure = Presión de succión, en marcha, frente a la que necesita el circulador
    .homeowner = La presión en la entrada de la bomba de circulación.
finding-noise-worse-in-summer = El ruido aparece o crece en verano
    .homeowner = El ruido es peor en verano.
finding-relief-valve-weeps = La válvula de alivio o una manguera rezuma
    .homeowner = Una válvula de seguridad ha estado goteando.
finding-circulator-hums = El circulador zumba o silba
    .homeowner = La bomba de circulación zumba.
finding-circulator-rattles = El circulador traquetea o golpea
    .homeowner = La bomba de circulación traquetea.
finding-pressure-gone = Sin presión en un lazo frío
    .homeowner = En la tubería enterrada ya no queda presión.

## Links

link-charge-left-too-low--low-static-pressure = Un lazo que arranca por debajo de su margen no tiene nada que ceder a la relajación y al verano.
link-charge-left-too-low--pressure-gone = Una carga de casi nada no deja nada.
link-pipe-never-relaxed--low-static-pressure = El módulo del polietileno cae a la mitad en un año de carga, y la presión con él.
link-pipe-never-relaxed--pipe-gives-way = Una tubería cargada de una vez se estira después.
link-pipe-never-relaxed--pressure-gone = La tubería se lleva una parte de la carga y nunca toda.
link-ordinary-relaxation--pipe-gives-way = Toda tubería de polietileno se relaja bajo carga, casi todo al principio.
link-ordinary-relaxation--gauge-lower-than-before = El manómetro se asienta por debajo de lo que marcaba en la puesta en marcha.
link-seasonal-swing--gauge-lower-than-before = En verano la tubería crece más que el fluido y el manómetro baja.
link-seasonal-swing--pressure-follows-temperature = La presión va con la temperatura y vuelve con ella.
link-seasonal-swing--noise-worse-in-summer = La menor presión en verano hace un poco más fuerte cualquier zumbido.
link-seasonal-swing--gauge-reads-high = En un lazo frío el manómetro de toda tubería plástica está más alto.
link-charged-cold-without-allowance--low-static-pressure = Una carga correcta en frío es demasiado baja cuando la tubería y el fluido están calientes.
link-charged-cold-without-allowance--pressure-follows-temperature = Es la temporada la que quita la presión, y vuelve en invierno.
link-charged-cold-without-allowance--noise-worse-in-summer = La presión es más baja cuando el lazo está más caliente.
link-charged-cold-without-allowance--gauge-lower-than-before = Cargado en frío, solo puede bajar cuando el lazo se calienta.
link-over-pressurised--over-pressure = Se bombeó más de lo que pide la temporada.
link-low-static-pressure--static-pressure = El manómetro está por debajo del margen para este lazo y este día.
link-low-static-pressure--gauge-reads-low = Cualquiera que mire ve un manómetro bajo.
link-low-static-pressure--gauge-lower-than-before = Antes marcaba más.
link-low-static-pressure--starved-suction = La presión estática es lo único que sostiene la succión.
link-low-static-pressure--air-in-fluid = A baja presión sale el gas disuelto y en los puntos altos se hace vacío.
link-low-static-pressure--noise-worse-in-summer = Un lazo caliente marca lo más bajo.
link-pipe-gives-way--fall-shrinks-each-day = La relajación quita lo mismo cada vez que el tiempo se multiplica por diez, así que cada día quita menos que el anterior.
link-pipe-gives-way--gauge-lower-than-before = El manómetro se asienta a medida que la tubería cede.
link-starved-suction--suction-pressure = La entrada queda cerca de cero o por debajo cuando la bomba funciona.
link-starved-suction--circulator-hums = El vapor y el gas en la entrada zumban y silban.
link-starved-suction--circulator-rattles = Las burbujas que se colapsan traquetean en el impulsor.
link-starved-suction--flow-unsteady = Una bomba que cavita bombea a tirones.
link-starved-suction--weak-pumping = Una bomba que cavita pierde altura.
link-starved-suction--air-in-circulator = El gas que sale en la entrada se acumula en el rotor.
link-over-pressure--static-pressure = El manómetro está por encima del margen.
link-over-pressure--suction-pressure = Si todo el lazo está demasiado alto, la succión también.
link-over-pressure--gauge-reads-high = Cualquiera que mire ve un manómetro alto.
link-over-pressure--relief-valve-weeps = Cede la válvula de alivio o la unión más débil.
link-over-pressure--fluid-loss = Lo que rezuma se pierde.
link-over-pressure--wet-or-crusted-fittings = Las mangueras y los racores rezuman con demasiada presión.

## Checks

check-read-static = Leer la presión estática
    .how = Todo apagado durante cinco minutos. Leer el manómetro en una toma y anotar la temperatura del lazo; hacen falta ambas para juzgarla.
check-pressure-log = Leer el registro de presión de los últimos días
    .how = Usar el registro si alguien lo llevó, o pedir al propietario una lectura a la misma hora durante unos días. La misma pérdida cada día es una fuga; una pérdida que disminuye es la tubería.
check-warm-and-cold-pressure = Comparar la presión con la temperatura del lazo
    .how = Comparar lecturas anteriores con la temperatura del lazo de ese día, o hacer funcionar la unidad y observar cómo se mueven ambas. En un lazo de plástico, el calentamiento baja la presión.
check-read-suction = Leer la presión de succión, con las bombas en marcha
    .how = Manómetro en la toma antes del circulador. Leer en reposo y luego en marcha.
check-look-at-relief = Mirar la válvula de alivio y las mangueras
    .how = Buscar gotas y rastros secos en la salida de la válvula de alivio y a lo largo de las mangueras.
context-pipe-never-relaxed--charged-low = Una carga baja desde el principio no necesita relajación para agotarse.
context-pipe-never-relaxed--heating-season = La tubería fría está tensa y la presión perdida apenas se nota.
context-pipe-never-relaxed--cooling-season = La tubería caliente cede más.
context-charged-cold-without-allowance--charged-low = Una carga baja desde el principio no necesita un verano para agotarse.
context-charged-cold-without-allowance--first-month = Desde la carga el lazo apenas ha pasado por otra estación.
context-charged-cold-without-allowance--warm-loop = La presión puesta en frío falta cuando el lazo está caliente.
