# Texts of the rule graph: families, facts, tools, hazards, cautions and sources that the other files refer to


## Families

family-air = Aire y lavado
family-pressure = Presión estática y carga
family-leaks = Fugas
family-tanks = Vaso de expansión y depósito
family-pumps = Circuladores
family-valves = Válvulas y tuberías
family-circuits = Circuitos del lazo geotérmico
family-debris = Residuos y filtro de malla
family-fluid = Anticongelante
family-water = Calidad del agua, incrustación y corrosión
family-ground = Terreno y tamaño del lazo
family-unit = Bomba de calor, lado del aire y controles
family-instruments = Instrumentos
family-ordinary = Comportamiento normal

## Facts

fact-no-flush-record = No existe registro del lavado
fact-never-flushed = El lazo nunca se lavó
fact-flush-too-slow = La velocidad de lavado no llegó a la velocidad de arrastre
fact-flush-too-short = El lavado duró menos que el mínimo del oficio
fact-cart-too-small = El carro no podía alcanzar la velocidad de arrastre en este lazo
fact-circuits-flushed-singly = Cada circuito se lavó por separado
fact-dead-head-failed-at-start-up = La bajada con retorno cerrado en la puesta en marcha superó el límite
fact-dead-head-passed-at-start-up = La bajada con retorno cerrado en la puesta en marcha quedó dentro del límite
fact-large-headers = Cabezales de 3 in nominales o mayores
fact-heat-pump-not-isolated-in-flush = La bomba de calor no estaba aislada mientras se lavaba el lazo
fact-no-filter = No se usó filtro durante el lavado
fact-circulators-not-bled = Los circuladores no se purgaron antes del primer arranque
fact-water-not-tested = El agua de llenado nunca se analizó
fact-well-water = Llenado con agua de pozo
fact-surface-water = Llenado con agua superficial
fact-concentration-not-checked = No se comprobó el punto de congelación tras la mezcla
fact-mixed-too-short = La carga se mezcló menos tiempo que el mínimo del oficio
fact-pipe-not-relaxed = La tubería no se mantuvo a presión antes de la última carga
fact-charged-in-winter = La última carga se hizo con el fluido frío
fact-charged-low = La presión que se dejó en la puesta en marcha estaba por debajo del margen de puesta en marcha
fact-charged-high = La presión que se dejó en la puesta en marcha estaba por encima del margen de puesta en marcha
fact-first-month = Puesta en marcha hace menos de un mes
fact-first-year = Puesta en marcha hace menos de un año
fact-older-than-five-years = Puesta en marcha hace más de cinco años
fact-heating-season = La visita es en temporada de calefacción
fact-cooling-season = La visita es en temporada de refrigeración
fact-sealed-flow-centre = Centro de bombeo cerrado sin vaso de expansión
fact-sealed-with-tank = Centro de bombeo cerrado con vaso de expansión
fact-non-pressurised = Centro de bombeo sin presión
fact-has-strainer = Hay un filtro de malla en el lazo
fact-has-check-valves = Cada circulador tiene una válvula de retención
fact-glycol-fluid = El fluido es una mezcla de glicol
fact-alcohol-fluid = El fluido es una mezcla de alcohol
fact-water-only = El fluido es agua sola
fact-two-circulators = Dos o más circuladores
fact-several-circuits = Dos o más circuitos
fact-horizontal-loop = El lazo está en zanjas
fact-vertical-loop = El lazo está en perforaciones
fact-since-start-up = Según el cliente: es así desde la puesta en marcha
fact-came-on-slowly = Según el cliente: apareció a lo largo de meses
fact-came-on-suddenly = Según el cliente: apareció de un día para otro
fact-complaint-recurs = La misma queja volvió tras una visita anterior
fact-after-work = Según el cliente: empezó después de que alguien trabajara en la instalación
fact-warm-loop = Toda el agua que se leyó está templada
fact-more-rise-than-one-gives = Se leyó más elevación de la que da un solo circulador

## Tools

tool-dial-gauge = Manómetro con adaptador de toma
tool-differential-gauge = Manómetro diferencial, o uno solo que se cambia entre dos tomas
tool-port-thermometer = Termómetro para las tomas de presión/temperatura
tool-clamp-thermometer = Termómetro de contacto con abrazadera o cinta
tool-flow-meter = Caudalímetro
tool-refractometer = Refractómetro con la escala correcta
tool-hydrometer = Densímetro y probeta
tool-power-meter = Vatímetro o pinza amperimétrica
tool-refrigerant-gauges = Manómetros de refrigerante
tool-test-kit = Tiras reactivas o kit de gotas para agua
tool-laboratory = Frasco de muestra para un laboratorio
tool-ruler = Regla o cinta métrica
tool-flush-cart = Carro de lavado
tool-hand-tools = Herramientas de mano
tool-sample-jar = Frasco de muestra transparente
tool-white-filter = Filtro blanco y embudo
tool-tyre-gauge = Manómetro de aire para la válvula del vaso
tool-ice-bath = Taza con hielo picado y agua
tool-second-instrument = Un segundo instrumento del mismo tipo
tool-calibration-liquid = Agua limpia o líquido de prueba de valor conocido
tool-torch = Linterna
tool-stethoscope = Estetoscopio, o destornillador apoyado en el oído
tool-bucket-and-watch = Balde graduado y reloj

## Hazards

hazard-pressure = Fluido a presión
hazard-electricity = Corriente eléctrica
hazard-hot-surface = Superficie caliente
hazard-moving-parts = Ventilador o eje que puede arrancar
hazard-loop-fluid = Anticongelante venenoso o inflamable
hazard-refrigerant = Refrigerante a presión
hazard-dead-ended-pump = Circulador funcionando contra una válvula cerrada
hazard-wet-floor = Suelo mojado cerca de partes eléctricas

## Cautions

caution-port-under-pressure = Leer primero el manómetro, ponerse a un lado, usar gafas y abrir la toma despacio. Nunca aflojar un tapón o una tapa a presión.
caution-relieve-before-opening = Cerrar las válvulas a ambos lados y aliviar la presión hasta cero por una manguera antes de abrir nada.
caution-lock-out = Desconectar, bloquear y etiquetar la alimentación, y comprobar la ausencia de tensión antes de quitar una tapa. Volver a poner las tapas antes de que vuelva la corriente.
caution-covers-on = Medir con las tapas puestas y con pinzas aisladas. Más allá del aislamiento, este trabajo es para un electricista con licencia.
caution-hot-body = Un circulador que funciona en seco puede quemar la piel. Acercar un termómetro antes que la mano.
caution-catch-the-sample = Guantes y gafas. Recoger la muestra, mantener llamas e interruptores lejos de las mezclas de alcohol, y no verterla nunca al suelo ni a un desagüe.
caution-certified-only = Solo personal certificado abre el lado del refrigerante, y solo después de haber comprobado el caudal. Algunos refrigerantes arden: ventilar, sin llama, herramientas homologadas para ello.
caution-seconds-only = Mantener la válvula cerrada solo unos segundos; la bomba calienta el fluido que no puede mover.
caution-dry-the-floor = Secar el suelo y usar una toma con protección diferencial antes de enchufar nada.
