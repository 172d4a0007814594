# Texts of the rule graph: circulators, their size, speed, number and direction, and check valves


## Causes

cause-circulator-too-small = Circulador demasiado pequeño para el lazo
    .homeowner = La bomba de circulación es demasiado pequeña para la longitud de tubería que tiene que servir.
context-circulator-too-small--first-year = Una bomba demasiado pequeña lo es desde el primer día.
context-circulator-too-small--since-start-up = Una bomba demasiado pequeña nunca mueve bastante.
context-circulator-too-small--older-than-five-years = Una bomba demasiado pequeña lo es desde la primera temporada.
cause-circulator-wrong-speed = Circulador ajustado a una velocidad incorrecta
    .homeowner = La bomba de circulación está ajustada para ir demasiado despacio.
cause-one-circulator-dead = Uno de los dos circuladores no funciona
    .homeowner = Una de las dos bombas de circulación se ha parado.
context-one-circulator-dead--two-circulators = Hay dos, y cualquiera puede pararse.
context-one-circulator-dead--older-than-five-years = Los rotores y los condensadores eléctricos envejecen.
context-one-circulator-dead--came-on-suddenly = Una bomba se para de una hora a otra.
context-one-circulator-dead--since-start-up = Una bomba que muere casi siempre funcionó antes.
context-one-circulator-dead--more-rise-than-one-gives = Un solo circulador no puede dar esta elevación.
cause-circulator-worn = Circulador gastado, rayado o agarrotándose
    .homeowner = La bomba de circulación está gastada y ya no mueve suficiente fluido.
context-circulator-worn--older-than-five-years = Cojinetes e impulsores se gastan con los años.
context-circulator-worn--circulators-not-bled = Los cojinetes que giraron en seco en la puesta en marcha se gastan pronto.
context-circulator-worn--no-filter = La arenilla que no se filtró pasa por los cojinetes.
context-circulator-worn--first-month = Una bomba nueva rara vez está gastada.
context-circulator-worn--came-on-slowly = El desgaste lleva su tiempo.
context-circulator-worn--since-start-up = Una bomba que nunca fue bien aún no está gastada.
context-circulator-worn--first-year = Los cojinetes duran más de un año si no trabajaron en seco.
cause-circulators-opposed = Los circuladores bombean uno contra otro
    .homeowner = Dos bombas de circulación empujan una contra otra.
context-circulators-opposed--first-month = Las bombas montadas al revés se descubren enseguida o tras una reparación.
context-circulators-opposed--first-year = Es un error de instalación.
context-circulators-opposed--since-start-up = Bombas montadas así nunca funcionan bien.
context-circulators-opposed--two-circulators = Hay dos, así que pueden trabajar una contra otra.
context-circulators-opposed--after-work = Una bomba que se cambió se montó al revés.
cause-check-valve-stuck-shut = Válvula de retención pegada o atascada
    .homeowner = Una válvula que debería abrirse con el paso del fluido está atascada.
context-check-valve-stuck-shut--has-check-valves = Solo donde hay una puede atascarse.
context-check-valve-stuck-shut--no-filter = Una viruta la atasca.
context-check-valve-stuck-shut--came-on-suddenly = Una viruta la atasca en un momento.
context-check-valve-stuck-shut--since-start-up = Una válvula se atasca después de haber funcionado.
cause-check-valve-missing = Válvula de retención ausente o pegada en abierto
    .homeowner = Una válvula que debería impedir que el fluido vuelva atrás falta o está atascada.
context-check-valve-missing--has-check-valves = Una válvula que nunca se montó no puede retener.
context-check-valve-missing--two-circulators = La bomba parada deja volver el caudal de la otra.
context-circulator-wrong-speed--after-work = La bomba nueva se deja a otra velocidad.

## Mechanisms

mechanism-weak-pumping = El circulador da menos que su curva
    .homeowner = La bomba de circulación da menos de lo que debería.
mechanism-low-flow = Muy poco caudal a través de la unidad
    .homeowner = Pasa muy poco fluido por la bomba de calor.
mechanism-back-flow = El fluido va hacia atrás o circula en reposo
    .homeowner = El fluido va en sentido contrario cuando la bomba de circulación está parada.

## Findings

finding-low-flow-lockout = La unidad se bloquea por bajo caudal
    .homeowner = La bomba de calor se paró porque pasaba muy poco fluido.
finding-loop-flow = Caudal frente al que necesita la unidad
    .homeowner = Cuánto fluido pasa por la bomba de calor.
finding-circulator-rise = Elevación de presión en los circuladores frente a su curva
    .homeowner = Qué presión da la bomba de circulación.
finding-shut-off-rise = Elevación con descarga cerrada frente a la curva a caudal cero
    .homeowner = Qué presión puede dar como máximo la bomba de circulación.
finding-circulator-power = Consumo eléctrico de los circuladores frente a la placa
    .homeowner = Cuánta electricidad consume la bomba de circulación.
finding-computed-flow-short = La curva de la bomba y la resistencia calculada del lazo se cruzan por debajo del caudal necesario
    .homeowner = Según el cálculo, la bomba de circulación no puede mover suficiente fluido por esta tubería.
finding-speed-set-low = Selector o ajuste de velocidad por debajo de lo proyectado
    .homeowner = La bomba de circulación está ajustada a una velocidad baja.
finding-circulator-not-turning = Un circulador no gira
    .homeowner = Una bomba de circulación está parada.
finding-circulator-arrows-disagree = Las flechas de flujo de los circuladores o las mangueras no concuerdan
    .homeowner = Las bombas de circulación apuntan en sentidos distintos.
finding-more-flow-with-one-off = El caudal sube al apagar un circulador
    .homeowner = El fluido pasa mejor con una bomba de circulación apagada.
finding-circulator-sounds-rough = Los cojinetes suenan ásperos con el estetoscopio
    .homeowner = La bomba de circulación suena áspera por dentro.
finding-shaft-stiff = El eje va duro o con arenilla al girarlo a mano
    .homeowner = El eje de la bomba de circulación cuesta de girar.
finding-flow-when-idle = Caudal o tubería caliente a través de una bomba o unidad parada
    .homeowner = El fluido se mueve aunque la bomba de circulación está apagada.
finding-valve-slams = Golpe cuando la bomba se para
    .homeowner = Se oye un golpe cuando la bomba de circulación se para.
finding-check-valve-hot-spot = Gran caída de presión en la válvula de retención
    .homeowner = Una válvula frena el paso del fluido.
finding-no-check-valve-found = No hay válvula de retención ni en el cuerpo de la bomba ni en la tubería
    .homeowner = No hay ninguna válvula que impida que el fluido vuelva atrás.
finding-head-unaccounted = Elevación de los circuladores que ninguna parte registrada consume
    .homeowner = La bomba de circulación trabaja contra más de lo que deberían frenar las tuberías.

## Links

link-circulator-too-small--low-flow = La curva de la bomba cruza la del lazo por debajo del caudal que necesita la unidad.
link-circulator-too-small--computed-flow-short = El cálculo lo muestra antes que ningún manómetro.
link-circulator-too-small--worse-when-cold = El fluido frío es más espeso y se lleva la última reserva.
link-circulator-wrong-speed--low-flow = El caudal baja con la velocidad, y la altura con su cuadrado.
link-circulator-wrong-speed--speed-set-low = El selector lo muestra.
link-circulator-wrong-speed--shut-off-rise = La altura con descarga cerrada baja con el cuadrado de la velocidad.
link-circulator-wrong-speed--circulator-power = La potencia baja con el cubo de la velocidad.
link-circulator-wrong-speed--circulator-rise = La altura baja con el cuadrado de la velocidad.
link-one-circulator-dead--weak-pumping = Falta la mitad de la altura o del caudal, y la bomba muerta estorba.
link-one-circulator-dead--circulator-not-turning = Está parado.
link-one-circulator-dead--circulator-power = Solo uno consume potencia.
link-one-circulator-dead--circulator-hums = Un rotor bloqueado zumba.
link-circulator-worn--weak-pumping = Un impulsor gastado resbala y un cojinete áspero frena.
link-circulator-worn--circulator-sounds-rough = Los cojinetes gastados se oyen.
link-circulator-worn--shaft-stiff = La arenilla o la magnetita en la holgura se nota.
link-circulator-worn--circulator-rattles = El juego en el cojinete traquetea.
link-circulator-worn--circulator-hums = Un rotor apretado zumba.
link-circulator-worn--circulator-power = El rozamiento consume potencia; un impulsor que resbala consume menos.
link-circulator-worn--circulator-body-hot = El rozamiento calienta el cuerpo.
link-circulators-opposed--weak-pumping = Las alturas se restan en lugar de sumarse.
link-circulators-opposed--circulator-arrows-disagree = Las flechas de los cuerpos lo muestran.
link-circulators-opposed--more-flow-with-one-off = Sin su oponente, la otra bomba mueve más.
link-circulators-opposed--valve-slams = Una válvula de retención entre bombas opuestas golpea.
link-circulators-opposed--low-flow = Dos que empujan una contra otra apenas mueven caudal.
link-check-valve-stuck-shut--restriction = El flujo tiene que forzar el disco.
link-check-valve-stuck-shut--check-valve-hot-spot = La caída está en la válvula.
link-check-valve-stuck-shut--head-unaccounted = Una válvula de retención que no abre consume lo que nada registrado consume.
link-check-valve-missing--back-flow = Nada impide que el fluido vuelva atrás o que suba caliente.
link-check-valve-missing--low-flow = Parte del caudal de una bomba vuelve por la otra.
link-check-valve-missing--no-check-valve-found = Donde no se montó ninguna, no se encuentra ninguna.
link-back-flow--flow-when-idle = La bomba parada gira o su tubería está caliente.
link-back-flow--valve-slams = El flujo que se invierte hace golpear lo que está suelto.
link-back-flow--circulator-rise = El caudal que vuelve por la bomba parada quita altura a la que funciona.
link-back-flow--ewt-creeps-when-idle = El fluido caliente sube por un lazo en reposo.
link-weak-pumping--low-flow = Menos altura, menos caudal.
link-weak-pumping--circulator-rise = La elevación está por debajo de la curva a ese caudal.
link-weak-pumping--shut-off-rise = A caudal cero no alcanza su curva.
link-low-flow--loop-flow = Pasa menos de lo que necesita la unidad.
link-low-flow--temperature-split = El mismo calor de menos fluido necesita un cambio de temperatura mayor.
link-low-flow--low-flow-lockout = El interruptor de caudal se abre.
link-low-flow--freeze-guard-trip = El fluido que pasa despacio sale demasiado frío.
link-low-flow--high-pressure-trip = En refrigeración no se evacua el calor.
link-low-flow--capacity-short = El intercambiador trabaja a una temperatura media peor.
link-low-flow--superheat = Con muy poco calor en el evaporador queda líquido en el gas de succión.
link-low-flow--cold-film = El fluido que pasa despacio pasa en capas junto a la pared de la tubería.

## Checks

check-exchanger-flow = Caudal por la caída de presión del intercambiador
    .how = Leer ambas tomas de presión del intercambiador con el mismo manómetro, bombas en marcha, y la temperatura del fluido. El programa lee el caudal en la propia curva de la unidad, corregida por el fluido.
check-metered-flow = Caudal con caudalímetro
    .how = Leer el caudalímetro de la tubería, o colocar uno externo en un tramo recto de diez diámetros.
check-pump-rise = Elevación de presión en los circuladores
    .how = Leer antes y después de los circuladores con el mismo manómetro, en marcha.
check-one-circulator-off = Apagar un circulador cada vez
    .how = Leer el caudal con ambos encendidos, luego con cada uno apagado en su interruptor.
check-shut-off-test = Prueba con descarga cerrada
    .how = Leer la elevación con la válvula de descarga cerrada, solo unos segundos, y volver a abrirla.
check-pump-power = Consumo eléctrico de los circuladores
    .how = Medir potencia o corriente solo de los circuladores del lazo y comparar con la placa a la velocidad ajustada.
check-compute-operating-point = Calcular el punto de funcionamiento
    .how = A partir de tubería, fluido, temperatura y curva de la bomba, el programa calcula el caudal al que debe quedar este lazo.
check-look-at-circulators = Mirar los circuladores
    .how = Ajuste de velocidad, flechas de sentido y si cada uno gira: palpar la vibración, usar un indicador magnético de giro o el tornillo de la tapa del rotor.
check-feel-the-shaft = Girar el eje a mano
    .how = Corriente cortada y bloqueada, bomba aislada y presión aliviada. Girar el eje con un destornillador a través de la tapa del rotor.
check-listen-to-bearings = Escuchar los cojinetes
    .how = Estetoscopio en la carcasa del rotor: un zumbido suave, o roce y golpes al ritmo del eje.
check-idle-flow-check = Buscar caudal en reposo
    .how = Bombas paradas, o una de dos parada. Palpar las tuberías, mirar el eje de la bomba parada y seguir la temperatura durante cinco minutos. Escuchar cuando la bomba se para.
check-check-valve-drop = Caída de presión en la válvula de retención
    .how = El mismo manómetro antes y después de la válvula de retención, en marcha. Una buena consume una fracción de psi.
