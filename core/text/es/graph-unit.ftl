# Texts of the rule graph: what is not the loop: refrigerant, air side, sensors and controls


## Causes

cause-refrigerant-undercharge = Carga de refrigerante baja
    .homeowner = A la propia bomba de calor le falta refrigerante.
context-refrigerant-undercharge--older-than-five-years = Las uniones pierden con los años.
context-refrigerant-undercharge--came-on-slowly = Pierde despacio.
context-refrigerant-undercharge--since-start-up = Una fuga lenta lleva tiempo.
cause-expansion-device-fault = Fallo del dispositivo de expansión
    .homeowner = Una pieza dentro de la bomba de calor no dosifica bien.
cause-compressor-or-reversing-valve-weak = Compresor o válvula inversora débil
    .homeowner = Una pieza dentro de la bomba de calor está gastada.
context-compressor-or-reversing-valve-weak--older-than-five-years = Las válvulas y los compresores se gastan.
context-compressor-or-reversing-valve-weak--first-year = Uno nuevo rara vez está gastado.
cause-air-filter-or-coil-dirty = Filtro de aire o serpentín sucio
    .homeowner = El filtro de aire o el serpentín de aire está sucio.
context-air-filter-or-coil-dirty--first-month = Un filtro tarda unos meses en cargarse.
context-air-filter-or-coil-dirty--came-on-slowly = La suciedad se acumula.
context-air-filter-or-coil-dirty--since-start-up = Un filtro está limpio cuando la casa es nueva.
context-air-filter-or-coil-dirty--older-than-five-years = El polvo ha tenido años para asentarse en la batería.
cause-flow-switch-or-sensor-fault = Fallo del interruptor de caudal o de un sensor
    .homeowner = Un sensor avisa de una avería que no existe.
context-flow-switch-or-sensor-fault--older-than-five-years = Los interruptores se pegan con los años.
context-flow-switch-or-sensor-fault--came-on-suddenly = Los interruptores fallan de un día para otro.
context-flow-switch-or-sensor-fault--since-start-up = Un interruptor que falla casi siempre funcionó antes.
cause-control-fault = Fallo del control o ajuste incorrecto
    .homeowner = El control no maneja el sistema como debería.
context-control-fault--first-month = Los ajustes están mal desde el principio.
context-control-fault--after-work = Los ajustes se cambian durante otro trabajo.
context-control-fault--came-on-suddenly = La electrónica falla de un día para otro.
context-expansion-device-fault--came-on-suddenly = Una válvula que se atasca lo hace de un día para otro.

## Mechanisms

mechanism-refrigerant-side-weak = El lado del refrigerante transporta muy poco calor
    .homeowner = El lado del refrigerante transporta muy poco calor.
mechanism-load-side-starved = El lado del aire transporta muy poco calor
    .homeowner = Pasa muy poco aire por la bomba de calor.
mechanism-false-trip = La protección se dispara sin causa
    .homeowner = Un dispositivo de seguridad para el sistema sin motivo.

## Findings

finding-high-pressure-trip = La unidad se dispara por alta presión de refrigerante
    .homeowner = La bomba de calor se paró porque su presión era demasiado alta.
finding-weak-airflow = Poco caudal de aire en las rejillas
    .homeowner = Sale poco aire por las rejillas.
finding-air-filter-dirty = Filtro de aire o serpentín visiblemente sucio
    .homeowner = El filtro de aire estaba sucio.
finding-lockout-though-flow-proven = Bloqueo aunque caudal y temperaturas están comprobados como correctos
    .homeowner = La bomba de calor se paró aunque todo estaba bien.
finding-display-disagrees = La pantalla de temperatura o caudal de la unidad no coincide con la lectura
    .homeowner = El sensor de la propia bomba de calor marca mal.
finding-controls-out-of-step = Bomba, etapa o calefacción auxiliar se activan en el momento incorrecto
    .homeowner = El control conecta las cosas en el momento equivocado.
finding-oil-stain = Mancha de aceite en una unión de refrigerante
    .homeowner = Hay una mancha de aceite en una unión de la bomba de calor.
finding-superheat = Recalentamiento frente a los datos de la unidad
    .homeowner = Una lectura del refrigerante.
finding-subcooling = Subenfriamiento frente a los datos de la unidad
    .homeowner = Una lectura del refrigerante.
finding-unit-power = Consumo eléctrico de la unidad frente a su valor nominal
    .homeowner = Cuánta electricidad consume la bomba de calor.
finding-unit-capacity = Capacidad frente al valor nominal a estas temperaturas
    .homeowner = Cuánto calor entrega la bomba de calor.
finding-air-temperature-change = Cambio de temperatura del aire a través de la unidad
    .homeowner = Cuánto se calienta o se enfría el aire.
finding-hot-gas-both-ways = Válvula inversora caliente en todas las líneas, o el compresor no hace presión
    .homeowner = Una pieza dentro de la bomba de calor deja pasar calor de un lado a otro.
finding-settings-wrong = Un ajuste del termostato, de etapa o de calefacción auxiliar no es como debe
    .homeowner = Un ajuste no era correcto.
finding-switch-sticks = El interruptor de caudal o un sensor se pega, vibra o tiene un cable suelto
    .homeowner = Un sensor o su cable está averiado.

## Links

link-refrigerant-undercharge--refrigerant-side-weak = Menos refrigerante mueve menos calor, sobre todo en calefacción.
link-refrigerant-undercharge--superheat = El evaporador se queda seco antes de su final.
link-refrigerant-undercharge--subcooling = No queda líquido en el condensador.
link-refrigerant-undercharge--oil-stain = El aceite sale con el refrigerante.
link-refrigerant-undercharge--unit-power = El gas poco denso consume menos potencia.
link-refrigerant-undercharge--approach = La temperatura de evaporación se aleja de la del fluido.
link-expansion-device-fault--refrigerant-side-weak = El evaporador queda desabastecido o inundado.
link-expansion-device-fault--superheat = Pegado en abierto inunda; pegado en cerrado desabastece.
link-expansion-device-fault--subcooling = Lo que no pasa queda en el condensador.
link-expansion-device-fault--approach = Un evaporador desabastecido se aleja del fluido.
link-compressor-or-reversing-valve-weak--refrigerant-side-weak = El gas retrocede por dentro.
link-compressor-or-reversing-valve-weak--hot-gas-both-ways = El gas que se escapa calienta la línea que no debe.
link-compressor-or-reversing-valve-weak--unit-power = Comprime poco.
link-compressor-or-reversing-valve-weak--approach = Poco calor necesita poca diferencia de temperatura.
link-air-filter-or-coil-dirty--load-side-starved = La suciedad frena el aire.
link-air-filter-or-coil-dirty--air-filter-dirty = Se ve.
link-flow-switch-or-sensor-fault--false-trip = Indica lo que no es.
link-flow-switch-or-sensor-fault--display-disagrees = La pantalla muestra el error del sensor.
link-flow-switch-or-sensor-fault--switch-sticks = Mirado de cerca, se nota.
link-control-fault--controls-out-of-step = Observar un arranque lo muestra.
link-control-fault--capacity-short = Funciona la etapa incorrecta o la resistencia eléctrica.
link-control-fault--auxiliary-heat-often = El apoyo se activa demasiado pronto.
link-control-fault--false-trip = Una bomba activada demasiado tarde dispara la protección.
link-control-fault--settings-wrong = Leídos uno a uno, aparece el ajuste incorrecto.
link-refrigerant-side-weak--temperature-split = Menos calor del mismo caudal.
link-refrigerant-side-weak--capacity-short = Se transporta menos calor.
link-refrigerant-side-weak--air-temperature-change = Menos calor en el mismo aire.
link-refrigerant-side-weak--freeze-guard-trip = La temperatura de evaporación cae y se dispara la protección de la línea de refrigerante.
link-load-side-starved--air-temperature-change = Menos aire toma el mismo calor.
link-load-side-starved--weak-airflow = Sale poco aire.
link-load-side-starved--high-pressure-trip = En calefacción, el condensador no puede dar su calor al aire.
link-load-side-starved--unit-power = Una presión de condensación mayor consume más potencia.
link-load-side-starved--subcooling = El líquido queda en el condensador.
link-load-side-starved--superheat = En refrigeración, un serpentín sin aire suficiente se inunda.
link-load-side-starved--temperature-split = Se mueve menos calor.
link-load-side-starved--capacity-short = El calor no llega a la casa.
link-false-trip--low-flow-lockout = La unidad indica bajo caudal.
link-false-trip--freeze-guard-trip = La unidad indica congelación.
link-false-trip--high-pressure-trip = La unidad indica alta presión.
link-false-trip--lockout-though-flow-proven = Todo lo medido está bien y aun así se dispara.

## Checks

check-look-at-air-side = Mirar el filtro de aire y el serpentín
    .how = Unidad apagada y bloqueada. Mirar filtro y serpentín con una linterna.
check-prove-the-trip = Comprobar caudal y temperatura mientras se dispara
    .how = Leer uno mismo caudal y temperaturas mientras la unidad va hacia su disparo y comparar con su pantalla. Nunca puentear una protección para mantenerla en marcha.
check-watch-a-start = Observar la unidad durante un arranque
    .how = Desde la demanda hasta la marcha plena: primero la bomba, luego el compresor, la calefacción auxiliar al final.
check-read-settings = Leer los ajustes
    .how = Termostato, etapas, punto de equilibrio de la calefacción auxiliar, retardo de la bomba: comparar con las instrucciones de la unidad.
check-look-at-switch = Mirar el interruptor de caudal y los sensores
    .how = Corriente cortada y bloqueada. Mirar la paleta o la membrana, los cables y el conector; palpar si hay juego.
check-look-for-oil = Buscar aceite en las uniones de refrigerante
    .how = Solo tapas que no necesitan herramienta. El aceite señala una fuga.
check-air-temperatures = Cambio de temperatura del aire a través de la unidad
    .how = Aire de retorno e impulsión, fuera de la vista directa del serpentín, tras diez minutos de marcha.
check-unit-power-and-capacity = Consumo eléctrico y capacidad de la unidad
    .how = Potencia de toda la unidad en marcha estable, y su capacidad si la muestra.
check-superheat-subcooling = Recalentamiento, subenfriamiento y aproximación
    .how = Solo cuando el caudal está comprobado como correcto. Leer las líneas de succión y de líquido, y comparar con los datos de la unidad y con el fluido de salida.
