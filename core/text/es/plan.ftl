# The work plan: procedures, steps, cautions, tools, materials, quantities.
# Steps are read with wet hands: short, one action after the other.


# --- steps ----------------------------------------------------------------

plan-step-keep-unit-off = El fluido puede congelarse donde sale el agua y reventar el intercambiador. No hacer funcionar la bomba de calor, tampoco esta noche, hasta que se haya superado el control de muestras de este plan. Poner la casa con su calor de apoyo y decírselo al propietario. Si hoy no se puede añadir el anticongelante, dejar el equipo bloqueado y etiquetado.
plan-step-lock-power-off = Apagar la bomba de calor y los circuladores. Bloquear y etiquetar el interruptor. Comprobar que no hay tensión en los bornes.
plan-step-protect-people = Ponerse gafas y guantes. Colocar la bandeja de goteo. Mantener el suelo seco y a la gente alejada.
plan-step-look-up-fluid-rules = Consultar lo que la lista local permite en un lazo y adónde puede ir el fluido viejo. Leer la ficha de datos de seguridad. Tener listos recipientes cerrados y etiquetados.
plan-step-guard-drinking-water = Llenar a través de un depósito intermedio con separación de aire, o del dispositivo antirretorno que pida la normativa local. No dejar nunca una manguera unida al agua potable.
plan-step-find-lowest-rating = Leer las presiones nominales de la bomba de calor, los circuladores, el vaso, la válvula de alivio, el carro y las mangueras. La más baja es el límite para todo el trabajo de hoy.
plan-step-enter-vault = Si las válvulas o el colector están en una cámara o un foso: analizar el aire, que alguien se quede fuera, seguir las reglas del lugar para espacios confinados. Si no, continuar.
plan-step-check-display = Antes de apagar nada: con la bomba de calor en marcha estable, leer la pantalla y termómetros propios en las mismas tomas. Anotar ambas lecturas.
plan-step-read-rise-with-valves-open = Antes de culpar al circulador: abrir del todo cada válvula de aislamiento, con los circuladores en marcha. Leer de nuevo la elevación, la caída en el intercambiador y la potencia. Si ahora el caudal es correcto, el circulador se queda donde está.
plan-step-test-circulator-supply = Si se le pide marcha y no funciona: hacer medir la tensión en sus bornes. Sin tensión: el fallo está en el relé, el fusible o el control, y el circulador se queda donde está.
plan-step-bleed-below-rating = Si un manómetro marca cerca de la presión nominal más baja o por encima: apartarse, poner una manguera en un drenaje y abrirlo apenas hasta que el manómetro quede bien por debajo. Solo entonces tocar tapas, tomas o manómetros.

plan-step-mark-wet-joints = Secar con un paño cada unión interior. Buscar costras y goteos. Envolver en papel las sospechosas y marcarlas.
plan-step-compare-loop-and-indoor = Cerrar las válvulas del lazo. Anotar el manómetro del lazo y el de la parte interior, ahora y al acabar el temporizador. El lado que baja tiene la fuga; la relajación propia de la tubería se va frenando. La parte interior es pequeña y rígida: una fuga allí se ve en minutos, y su manómetro sube según la calienta el local. Observarla un cuarto de hora, no dejarla nunca cerrada, llena y sin nadie, mantenerla por debajo de la presión nominal más baja. Si el manómetro marca demasiado poco, esperar con esto hasta que el lazo esté cargado.
plan-step-test-each-circuit = Abrir el lazo al carro, con la bomba de calor aislada. Un circuito tras otro en el colector, con los demás cerrados: subirlo a la presión de trabajo con el carro, cerrarlo y anotar las dos lecturas. Una caída que no se frena es una fuga. Tras una carga la tubería se relaja por sí sola: comparar los circuitos entre sí, y esperar un día antes de juzgar una diferencia pequeña.
plan-step-measure-each-circuit = Antes de apagar nada, con los circuladores en marcha: anotar la temperatura de retorno y, si se puede, el caudal de cada circuito. El que se aparta es el sospechoso.
plan-step-read-flow-arrows = Leer la flecha de cada circulador y válvula de retención y seguir las tuberías. Dibujar el sentido real del flujo.
plan-step-read-valve-positions = Anotar la posición de cada válvula y toma de tres vías antes de tocarla.
plan-step-test-circulator-electrics = Sin tensión y bloqueado: descargar el condensador y después medir condensador, contactos del relé y bobinado, o que lo haga un electricista donde la ley pida licencia. Cambiar lo que falló y probar de nuevo antes de desmontar el circulador.
plan-step-sample-as-found = Tomar una muestra por una toma en un frasco limpio. Medir punto de congelación, pH y temperatura con el instrumento correcto para este fluido. Oler y mirar.
plan-step-test-fill-water = Analizar el agua con que se va a llenar: dureza, cloruros, hierro, pH. Traer otra agua si no cumple.
plan-step-compare-gauges = Salvo que ya se haya hecho hoy: poner un segundo manómetro en la misma toma y anotar ambas lecturas. Un manómetro diferencial: sus dos mangueras en una misma toma, debe marcar cero.
plan-step-check-thermometer = Remover hielo picado y agua. Sumergir el termómetro sospechoso y un segundo: ambos deben marcar el punto de congelación del agua. Termómetro de contacto: después, sobre tubo limpio y desnudo bajo aislamiento, junto a un termómetro de toma.
plan-step-check-flow-meter = Con los circuladores apagados debe marcar cero. Comprobar su sentido, el tramo recto anterior y el fluido para el que está ajustado. Etiquetarlo: ninguna comprobación se apoya en él hasta que coincida.
plan-step-check-refractometer = Limpiar el prisma. El agua destilada a temperatura ambiente debe marcar el punto de congelación del agua. Comprobar que la escala es la de este fluido. Para metanol y etanol usar un densímetro.
plan-step-check-hydrometer = Limpiarlo. El agua destilada a su temperatura de calibración debe marcar uno; corregir para cualquier otra temperatura. Buscar grietas y una escala de papel corrida. Leer en el borde inferior del menisco.
plan-step-check-power-meter = Sin nada en marcha debe marcar cero. Un solo conductor en la pinza, mordazas cerradas, rango correcto.
plan-step-check-test-kit = Leer la fecha de caducidad. Probar con una solución tampón para el pH y con agua destilada para dureza, cloruros y hierro: no debe mostrar nada.
plan-step-read-gauge-at-rest = Parados los circuladores, y antes de abrir nada: leer el manómetro del lazo en reposo y la temperatura del lazo, e introducir ambas. El plan cambia con ellas: una presión que ha servido vuelve a dejarse.
plan-step-read-run-hours = Leer las horas de marcha y el registro de agua de entrada de la temporada.

plan-step-valve-off-unit = Cerrar las válvulas hacia la bomba de calor, para que nada de lo que salga del lazo pase por ella. Si se va a abrir, ya se alivió antes: comprobar su cero una vez más.
plan-step-valve-off-loop = Cerrar las válvulas del lazo, para que solo se abra la parte interior.
plan-step-take-circuit-out = Cerrar ambas válvulas del circuito dañado y etiquetarlas. Volver a abrir los demás, y la bomba de calor. Si no tiene válvulas, no cortar: continuar sin ello y planificar la excavación.
plan-step-open-dead-circuit = Abrir ambas válvulas del circuito muerto y etiquetarlas. Si ya estaban abiertas, lo retiene el aire o un doblez: lo dirá la purga por separado.
plan-step-bleed-ports = Con las válvulas de las tomas cerradas, aflojar un poco las tapas sobre la bandeja: sale lo que hay detrás y después nada más. Si no para, una válvula pierde: apretar las tapas y aliviar antes el lazo.
plan-step-relieve-indoor = Dejar abiertas las válvulas propias de la bomba de calor, para que el intercambiador también baje. Vaciar la parte interior por una manguera al recipiente y medir lo que sale. Esperar hasta que el manómetro marque cero y se quede ahí con el drenaje abierto.

plan-step-connect-cart = Conectar las mangueras de ida y retorno a las tomas de lavado y al carro (para solo reponer basta una bomba de carga). Llenar las mangueras y llevar su aire al depósito del carro.
plan-step-open-strainer = Comprobar el cero una vez más. Abrir el filtro de malla sobre la bandeja.
plan-step-open-circulator = Comprobar una vez más el cero y la ausencia de tensión. Soltar el circulador sobre la bandeja.
plan-step-open-indoor-joint = Comprobar el cero una vez más. Abrir la unión sobre la bandeja.
plan-step-connect-descaler = Comprobar el cero una vez más. Conectar la bomba de desincrustar solo a través del intercambiador. Los circuladores siguen aislados.
plan-step-connect-back-flush = Comprobar el cero una vez más, también en el intercambiador. Conectar el segundo par de mangueras, con sus tes y válvulas, del carro solo a través del intercambiador, en contra de su flujo normal. Las mangueras de las tomas de lavado siguen puestas, cerradas. Los circuladores siguen aislados.
plan-step-swap-instrument = Cerrar la llave del manómetro o comprobar que la toma está a cero. Cambiar el manómetro, o etiquetarlo con su error.

plan-step-change-circulator = Girar el eje a mano y buscar arenilla y desgaste. Reparar o sustituir. Atender a la flecha y, en rotor húmedo, a que el eje quede horizontal.
plan-step-turn-piping-round = Conectar las tuberías como piden las flechas y las instrucciones de la unidad. Rotular ida y retorno.
plan-step-put-check-valve-in = Montar la válvula de retención con su flecha en el sentido del flujo, una por circulador si están en paralelo.
plan-step-mend-joint = Reparar la unión como pide su fabricante. Dejarla enfriar y curar antes de dar presión.
plan-step-set-tank-air = Vaciar el lado del fluido del vaso. Agua en la válvula de aire: sustituir el vaso. Si no, ajustar la presión de aire.
plan-step-wash-strainer = Lavar la malla. Guardar en una bolsa lo que se encuentre: indica de dónde vino.

plan-step-refit-strainer = Limpiar el asiento, poner una junta nueva, cerrar el filtro de malla.
plan-step-refit-circulator = Poner juntas nuevas, apretar en cruz, cerrar la caja de bornes.
plan-step-close-indoor-joint = Cerrar la unión. Comprobar que está cerrado todo lo que se abrió hoy.

plan-step-circulate-loop-cleaner = Abrir el lazo hacia el carro, con la bomba de calor aislada. Circular el limpiador solo por el lazo, con la concentración, la temperatura y el tiempo que diga su ficha.
plan-step-displace-old-fluid = Abrir el lazo hacia el carro, con la bomba de calor aislada. Desplazar el fluido viejo con agua aprobada hacia recipientes etiquetados hasta que el retorno sea agua limpia.
plan-step-flush-loop = Abrir el lazo hacia el carro, con la bomba de calor aislada. Lavar el lazo. Primero bolsa gruesa; cuando se mantenga limpia, bolsa fina. Si se da más de un grupo: un grupo de circuitos cada vez, todos los demás cerrados. Mantener un solo sentido mientras siga saliendo suciedad.
plan-step-check-return-clear = Poner una bolsa limpia y observar: el retorno sigue claro y la bolsa sigue limpia.
plan-step-circulate-descaler = Circular el desincrustante solo por el intercambiador, en contra del flujo normal si su ficha lo permite. Ni más fuerte ni más tiempo de lo que dicen las instrucciones de la unidad.
plan-step-check-descaled = Observar la caída de presión a caudal constante hasta que deje de bajar.
plan-step-neutralise-cleaner = Neutralizar el limpiador en el balde y en el intercambiador. Vaciarlo en su recipiente.
plan-step-rinse-exchanger = Enjuagar con agua aprobada. Medir el pH de lo que sale.
plan-step-let-descaler-down = Parar la bomba de desincrustar. Desenchufarla. Aliviar las mangueras hasta cero y vaciar el intercambiador: el agua de enjuague que quede en él diluye el lazo.
plan-step-disconnect-descaler = Quitar las mangueras sobre la bandeja. Tapar las tomas.
plan-step-back-flush-exchanger = Empujar agua en sentido inverso por el intercambiador hacia una bolsa gruesa, sin pasar del caudal de la unidad. Lo que sale no vuelve a entrar.
plan-step-check-exchanger-clear = Poner una bolsa limpia y observar: el agua sigue clara y la bolsa sigue limpia.
plan-step-let-back-flush-down = Parar el carro. Aliviar hasta cero el segundo par de mangueras y vaciar el intercambiador: el agua que quede en él diluye el lazo.
plan-step-disconnect-back-flush = Quitar del intercambiador el segundo par de mangueras sobre la bandeja. Tapar sus tomas. Las mangueras de las tomas de lavado siguen puestas para la purga.
plan-step-flush-unit = Cerrar el lazo, abrir despacio la bomba de calor. Lavar la parte interior a través de la bolsa fina con el fluido que ahora tiene el lazo, sin pasar del caudal de la unidad.

plan-step-purge-loop-side = Abrir el lazo hacia el carro, con la bomba de calor aislada. Purgar el lazo con el fluido que ahora tiene; reponer con fluido de la misma concentración. Si se da más de un grupo: un grupo de circuitos tras otro, todos los demás cerrados. Ventear los puntos altos.
plan-step-purge-dead-circuit = Cerrar todos los demás circuitos en el colector. Purgar este solo, al caudal dado para un circuito, hasta que corra libre y no salga ninguna burbuja. Si sigue muerto, está doblado u obstruido: planear la excavación. Volver a abrir los demás; no se abrieron y no necesitan purga.
plan-step-check-no-bubbles = Mirar el retorno bajo el nivel del fluido: sin burbujas.
plan-step-fill-indoor = Dejar cerradas las válvulas del lazo. Bomba de calor abierta. Llenar despacio desde el carro la parte interior vaciada con fluido de la misma concentración, con los puntos altos abiertos, hasta que salga por ellos fluido limpio. Toma tanto como se vació.
plan-step-purge-unit-side = Cerrar el lazo, abrir despacio la bomba de calor. Purgar la parte interior con el mismo fluido al caudal de la unidad hasta que no vuelva ninguna burbuja. Ventear sus puntos altos.
plan-step-vent-indoor = Abrir despacio una válvula del lazo y dejar que la parte interior se llene desde el depósito. Reponer el depósito todo el tiempo con fluido de la misma concentración: no dejar nunca que se vacíe. Ventear los puntos altos interiores hasta que salga fluido limpio; luego abrir la otra válvula.
plan-step-valve-off-tank = Cerrar la válvula del vaso de expansión: su aire cede como el aire del lazo, y la prueba no se superaría nunca. Sin válvula: tapar su conexión para la prueba; si no, la prueba no dice nada. Poner un manómetro donde bombea el carro: el vaso ya no amortigua un golpe.
plan-step-valve-off-reservoir = Aislar el depósito: está abierto al local y no aguanta presión. No bombear nunca hacia él con la tapa cerrada.
plan-step-dead-head-test = Abrir el lazo y la bomba de calor. Marcar el nivel del depósito del carro. Cerrar despacio la válvula de retorno y dejar que la presión suba hasta la de prueba. Leer cuánto baja el nivel. Abrir la válvula.

plan-step-drain-before-dose = Sacar esta cantidad del lazo a un recipiente etiquetado, para hacer sitio a lo que se añade. En un lazo lleno no entra nada.
plan-step-dose-antifreeze = Bombear el anticongelante por debajo del nivel del fluido del depósito del carro, despacio, con el carro circulando por el lazo. Glicol: bombear, no verter. Alcohol: solo premezclado.
plan-step-drain-and-dilute = Vaciar esta cantidad en un recipiente etiquetado y reponerla con agua aprobada, despacio, con el carro circulando.
plan-step-dose-inhibitor = Añadir el inhibidor, la cantidad que pida su ficha para este volumen de lazo y este fluido.
plan-step-mix-loop = Abrir el lazo hacia el carro, con la bomba de calor aislada. Circular hasta que acabe el temporizador.
plan-step-mix-unit = Abrir la bomba de calor y circular por todo el sistema.
plan-step-sample-two = Tomar una muestra en la ida y, cuando acabe el temporizador, otra en el retorno. Medir ambas, corregidas por temperatura. Débil o fuerte: corregir la dosis y mezclar de nuevo. Desiguales: seguir mezclando.
plan-step-sample-after-work = Tomar una muestra en el retorno. Medir su punto de congelación, corregido por temperatura. Más débil de lo necesario: dosificar antes de que funcione la bomba de calor.
plan-step-open-tank-again = Volver a abrir la válvula del vaso de expansión y dejarla abierta. Quitar lo que se tapó.
plan-step-open-reservoir-again = Aliviar la presión de la prueba y después volver a abrir el depósito.

plan-step-stretch-pipe = Llevar el lazo con el carro a la presión de estirado y mantenerla con la válvula de ida abierta.
plan-step-charge-to-pressure = Ajustar la presión que se dejará. Cerrar ida y retorno. Anotar cuánto entró.
plan-step-let-pressure-down = Abrir apenas un drenaje, por una manguera a la jarra. Parar en la presión que se dejará. Anotar el volumen.
plan-step-set-reservoir-level = Llenar el depósito hasta su marca con fluido de la misma concentración. Cerrar la tapa y revisar su junta.
plan-step-watch-indoor-part = Cerrar las válvulas del lazo durante un cuarto de hora y quedarse junto al manómetro interior. La parte interior es pequeña y rígida: una fuga demasiado lenta para mover todo el lazo hace caer aquí su manómetro en minutos. Si sube, la calienta el local: mantenerlo por debajo de la presión nominal más baja. Volver a abrir las válvulas del lazo.
plan-step-hold-test = No tocar nada. Anotar manómetro y hora al principio, a la mitad y al final. Si baja más de lo permitido: buscar la fuga antes de ajustar de nuevo la presión.

plan-step-set-valves-to-run = Poner cada válvula y toma de tres vías en posición de marcha. Quitar las manijas o atarlas. Etiquetar.
plan-step-bleed-hoses = Desenchufar el carro. Aliviar las mangueras a su depósito hasta que el manómetro de la toma marque cero.
plan-step-disconnect-cart = Quitar las mangueras sobre la bandeja. Tapar las tomas. Retirar del agua potable toda manguera de llenado.

plan-step-bleed-circulators = Corriente todavía bloqueada. Aflojar una vuelta el tapón de venteo, rodeado con un paño, hasta que salga fluido sin burbujas. Cerrarlo. Girar el eje a mano.
plan-step-restore-power = Tapas puestas, herramientas y personas apartadas. Quitar bloqueo y etiqueta. Dar corriente.
plan-step-start-circulators = Hacer funcionar solo los circuladores. Escuchar. Leer succión y elevación.
plan-step-bleed-circulators-again = Tras los primeros minutos de marcha: apagar, bloquear, comprobar la ausencia de tensión. Aflojar otra vez el tapón de venteo hasta que no salga ninguna burbuja. Cerrarlo. Tapas puestas, quitar el bloqueo, volver a arrancar.
plan-step-set-circulator-speed = Ajustar la velocidad que da el caudal que necesita la bomba de calor, no más.
plan-step-throttle-circuits = Estrangular los circuitos que retornan demasiado cerca de la ida. Empezar con todas las válvulas abiertas. Dejar que se estabilice.
plan-step-check-balance = Leer el retorno de cada circuito. Comparar el mayor con el menor.
plan-step-replace-thermometer = Ajustarlo, cambiarlo o etiquetarlo con su error. Probarlo otra vez en agua con hielo, descontando su error.
plan-step-replace-flow-meter = Con los circuladores en marcha: calcular el caudal con la caída en el intercambiador y la corrección del fluido, y comparar. Ajustar el caudalímetro o dejarle la etiqueta: cambiarlo obliga a abrir la tubería.
plan-step-replace-refractometer = Ajustar su cero con agua destilada, o cambiarlo. Leer otra vez agua destilada y después la muestra.
plan-step-replace-hydrometer = Etiquetarlo con su error, o cambiarlo. Leer otra vez agua destilada, descontando su error, y después la muestra.
plan-step-replace-power-meter = Con los circuladores en marcha: compararlo con un segundo vatímetro en el mismo conductor. Cambiarlo, o etiquetarlo con su error.
plan-step-replace-test-kit = Abrir un kit nuevo. Probar otra vez la solución tampón y después el agua o el fluido.
plan-step-tag-display = Etiquetar la pantalla con su error y usar termómetros propios para toda lectura. Hacer que recoloque o cambie su sensor quien tenga licencia para ello.

plan-step-prove-flow = Leer el caudal, o la caída en el intercambiador con la corrección del fluido.
plan-step-prove-temperatures = Hacer funcionar la bomba de calor. Cuando esté estable, leer agua de entrada y de salida.
plan-step-compare-new-gauge = Comparar el manómetro nuevo, o el etiquetado descontando su error, con el segundo en la misma toma.
plan-step-repeat-readings = Repetir las lecturas de hoy que se basaron en este instrumento. Volver a hacer el diagnóstico con ellas.

plan-step-record-as-left = Anotar presión, nivel, caudal, punto de congelación y posiciones de válvulas como quedan, y lo que se añadió y se retiró.
plan-step-tell-owner = Explicar al propietario qué estaba mal, qué se hizo, qué vigilar, cuándo llamar.
plan-step-check-circulator-choice = Velocidad máxima y caudal aún insuficiente: calcular el circulador para este lazo y este fluido, y ofrecer cambiarlo.
plan-step-log-rechecks = Acordar lecturas al cabo de un día, una semana y un mes. El volumen añadido debe ir disminuyendo; si cada vez hace falta lo mismo, hay una fuga.
plan-step-plan-excavation = Pedir la señalización de los servicios enterrados antes de excavar. La excavación y la fusión son para quienes tienen formación y seguro para ello.
plan-step-stop-before-refrigerant = Caudal comprobado: parar aquí. No conectar manómetros de refrigerante. Entregar caudal, temperaturas del agua y este registro a un técnico certificado en refrigerantes.
plan-step-hand-on-refrigerant-gauges = No apoyar ningún hallazgo en estos manómetros. Hacer que un técnico certificado en refrigerantes compruebe su cero y los compare en reposo con la presión de saturación a la temperatura del local.
plan-step-stop-before-electrical = Parar en el seccionador. Entregar los hallazgos de sensores, interruptores y control a un técnico electricista con licencia.
plan-step-hand-on-air-side = Hacer revisar filtro, serpentín, ventilador y conductos. No abrir el gabinete más allá de la puerta del filtro.
plan-step-advise-on-loop-length = Si ahora el caudal y el fluido están como deben: registrar el agua de entrada frente a las horas de marcha; dárselo al proyectista: menos carga, más lazo o una segunda fuente.

# --- cautions -------------------------------------------------------------

plan-caution-lock-and-prove-dead = Una descarga eléctrica mata. Bloquear, etiquetar y comprobar la ausencia de tensión con un comprobador que se acaba de probar en un punto con tensión. El trabajo más allá del aislamiento es para electricistas con licencia; decide la normativa local.
plan-caution-live-tests-by-electrician = La descarga y el arco eléctricos matan. Medir en bornes con tensión es para electricistas con licencia donde lo diga la ley. Medidor y puntas de la categoría adecuada, guantes secos, suelo seco, nunca a solas; volver a poner las tapas enseguida.
plan-caution-covers-before-power = Una descarga eléctrica mata. Todas las tapas puestas y secas antes de que vuelva la corriente.
plan-caution-cart-on-tested-socket = Suelo mojado y red eléctrica: el carro solo en una toma con protección diferencial (GFCI) probada, con el enchufe en alto y seco. El carro no es a prueba de explosión.
plan-caution-bleed-to-zero-first = Fluido a presión. Cero en el manómetro y un drenaje abierto antes de aflojar nada. Un manómetro obstruido también marca cero.
plan-caution-never-above-lowest-rating = Nunca por encima de la presión nominal más baja del sistema, incluidos mangueras y carro. Las instrucciones y placas de la unidad prevalecen sobre este plan.
plan-caution-stand-clear-of-plugs = Apartarse de tapas, tapones, mangueras y mirillas a presión. Pruebas solo con agua, nunca con aire.
plan-caution-turn-valves-slowly = Girar despacio. Poner las tapas antes de mover una toma de tres vías: puede salir un chorro.
plan-caution-loosen-never-remove = A presión: aflojar el tapón de venteo, no sacarlo nunca.
plan-caution-gas-stores-energy = El gas comprimido almacena energía. Lado del fluido a cero y abierto; nunca por encima de lo que marca la placa del vaso.
plan-caution-no-spark-near-alcohol = El vapor de alcohol arde, y una mezcla fuerte también. Al aire libre o con buena ventilación, recipientes con conexión equipotencial, sin llama, sin chispa, sin motor de carro junto a un bidón abierto. Decide la normativa local contra incendios.
plan-caution-gloves-goggles-sheet = Algunos fluidos envenenan por la boca, la piel o la respiración. Guantes, gafas, aire fresco, ficha de datos de seguridad a mano. Nunca sifonar con la boca.
plan-caution-acid-and-biocide = Ácidos, limpiadores y biocidas queman la piel y los ojos. Guantes, gafas, delantal, lavaojos. Nunca mezclar dos productos. Añadir el ácido al agua.
plan-caution-catch-every-drop = Nada al terreno, al drenaje pluvial ni a la fosa séptica; al alcantarillado solo con permiso. Recogerlo, cerrarlo, etiquetarlo. Notificar lo que se escape.
plan-caution-dry-floor = Los suelos mojados y las mangueras hacen caer. Secar, ordenar las mangueras, ninguna escalera sobre suelo mojado.
plan-caution-lift-with-two = Bidones, carros y bombas pesan mucho (un bidón lleno de 55 galones pesa unas 450 lb, 200 kg). Dos personas o un polipasto.
plan-caution-vault-rules = Cámaras, fosos y zanjas matan por aire viciado y derrumbe. Permiso, análisis del aire y alguien fuera, como pidan las reglas locales. En caso de duda, quedarse fuera.
plan-caution-air-gap-to-drinking-water = El fluido del lazo nunca debe llegar al agua potable: separación de aire o el dispositivo antirretorno que pida la normativa local. Quitar la manguera tras el llenado.
plan-caution-let-it-cool = Los circuladores y las tuberías pueden estar calientes, o bajo cero. Acercar primero la mano sin tocar; dejar que lleguen a temperatura ambiente.
plan-caution-certified-refrigerant-only = El trabajo con refrigerante es solo para personas certificadas, por ley. Algunos refrigerantes arden; todos desplazan el aire.

# --- tools ----------------------------------------------------------------

plan-tool-lock-and-tag = Candado y etiqueta de bloqueo
plan-tool-voltage-tester = Comprobador de tensión
plan-tool-goggles-and-gloves = Gafas y guantes resistentes a productos químicos
plan-tool-drip-tray = Bandeja de goteo
plan-tool-flush-cart = Carro de lavado con portafiltro
plan-tool-hoses = Mangueras de lavado con adaptadores de toma
plan-tool-second-hoses = Segundo par de mangueras con tes y válvulas
plan-tool-valve-key = Llave de válvulas
plan-tool-pressure-gauge = Manómetro
plan-tool-second-gauge = Segundo manómetro, de exactitud comprobada
plan-tool-bucket-and-hose = Balde y manguera de drenaje
plan-tool-wrenches = Llaves
plan-tool-vent-screwdriver = Destornillador para el tapón de venteo, paño
plan-tool-port-thermometers = Termómetros de toma
plan-tool-clamp-thermometers = Termómetros de contacto
plan-tool-ruler = Regla
plan-tool-watch = Reloj
plan-tool-power-meter = Vatímetro
plan-tool-flow-or-difference-gauge = Caudalímetro, o un mismo manómetro para ambas tomas
plan-tool-cart-level-ruler = Regla en el depósito del carro
plan-tool-clean-white-cloth = Paño blanco
plan-tool-refractometer-or-hydrometer = Refractómetro (glicol) o densímetro (metanol), con la escala correcta
plan-tool-sample-bottles = Frascos limpios para muestras
plan-tool-transfer-pump = Bomba de trasiego
plan-tool-descaling-pump = Bomba de desincrustar con balde
plan-tool-ph-strips = Tiras de pH
plan-tool-water-test-kit = Kit de análisis de agua
plan-tool-measuring-jug = Jarra graduada o báscula para bidones
plan-tool-charging-pump = Bomba de carga
plan-tool-paper-towels = Toallas de papel y marcador
plan-tool-tank-gauge-and-pump = Manómetro de aire de baja presión y bomba de mano
plan-tool-run-hour-log = Registro de horas de marcha de la unidad
plan-tool-multimeter = Multímetro que mide capacidad
plan-tool-buffer-solution = Solución tampón de pH
plan-tool-second-power-meter = Segundo vatímetro, de exactitud comprobada
plan-tool-distilled-water = Agua destilada
plan-tool-ice-water = Hielo picado y agua, removidos

# --- materials ------------------------------------------------------------

plan-material-coarse-bag = Bolsas filtrantes gruesas
plan-material-fine-bag = Bolsas filtrantes finas
plan-material-approved-water = Agua de llenado aprobada
plan-material-same-fluid = Fluido de lazo del mismo tipo y concentración
plan-material-valve-tags = Etiquetas para válvulas
plan-material-port-caps-and-seals = Tapas y juntas de las tomas
plan-material-waste-container = Recipientes de residuos cerrados y etiquetados
plan-material-strainer-gasket = Junta del filtro de malla
plan-material-circulator-and-seals = Circulador, juntas
plan-material-pipe-fittings = Tubería y accesorios
plan-material-check-valve = Válvula de retención
plan-material-arrow-labels = Rótulos de sentido de flujo
plan-material-antifreeze-or-premix = Anticongelante del tipo que hay en el lazo, o premezcla
plan-material-inhibitor = Inhibidor adecuado al fluido
plan-material-loop-cleaner = Limpiador de lazos con su ficha de datos
plan-material-descaler = Desincrustante que permitan las instrucciones de la unidad
plan-material-neutraliser = Neutralizador
plan-material-joint-materials = Juntas, accesorios, sellador
plan-material-expansion-tank = Vaso de expansión

# --- stages, sides, hazards -----------------------------------------------

plan-stage-make-safe = Asegurar
plan-stage-inspect = Mirar y medir
plan-stage-isolate = Aislar
plan-stage-relieve = Aliviar la presión
plan-stage-open = Abrir
plan-stage-repair = Reparar
plan-stage-clean = Limpiar
plan-stage-refit = Volver a cerrar
plan-stage-flush = Lavar
plan-stage-purge = Purgar
plan-stage-dead-head = Control con retorno cerrado
plan-stage-dose = Dosificar
plan-stage-mix = Mezclar
plan-stage-sample = Control de muestras
plan-stage-charge = Cargar
plan-stage-hold = Control de estanqueidad
plan-stage-close = Desconectar y poner en posición de marcha
plan-stage-restart = Volver a arrancar
plan-stage-adjust = Ajustar
plan-stage-prove = Comprobar
plan-stage-hand-over = Entregar

plan-side-any = todo
plan-side-loop = lazo
plan-side-unit = parte interior
plan-side-whole = todo el sistema

plan-section-loop = el lazo
plan-section-unit = la parte interior
plan-section-exchanger = el intercambiador
plan-section-ports = tomas y mangueras

plan-hazard-pressure = Presión
plan-hazard-electric = Electricidad
plan-hazard-flammable = Fuego
plan-hazard-toxic = Veneno
plan-hazard-corrosive = Quemaduras químicas
plan-hazard-refrigerant = Refrigerante
plan-hazard-lifting = Carga pesada
plan-hazard-confined = Espacio confinado
plan-hazard-potable = Agua potable
plan-hazard-slip = Resbalones
plan-hazard-hot = Calor y frío
plan-hazard-spill = Derrame

plan-observation-bubble-free-time = Tiempo sin burbujas
plan-observation-clear-return-time = Tiempo con retorno claro y bolsa limpia
plan-observation-sample-difference = Diferencia entre las dos muestras
plan-observation-pressure-fall = Caída del manómetro
plan-observation-return-spread = Dispersión de los retornos de los circuitos
plan-observation-instrument-disagreement = Discrepancia con el segundo manómetro
plan-observation-thermometer-error = Error en agua con hielo
plan-observation-flow-disagreement = Discrepancia con el caudal según la caída en el intercambiador
plan-observation-water-freeze-point-error = Error del punto de congelación del agua destilada
plan-observation-water-gravity-error = Error de la densidad relativa del agua destilada
plan-observation-power-disagreement = Discrepancia con el segundo vatímetro
plan-observation-buffer-error = Error del pH de la solución tampón
plan-observation-steady-drop-time = Tiempo con caída de presión constante

plan-timer-flush = Lavar
plan-timer-purge = Purgar
plan-timer-mix = Mezclar
plan-timer-sample = Esperar entre muestras
plan-timer-stretch = Mantener estirado
plan-timer-hold = Mantener
plan-timer-clean = Dejar actuar el limpiador
plan-timer-settle = Dejar que se estabilice

plan-rule-at-most = como máximo
plan-rule-at-least = como mínimo

plan-proof-time-now = antes de irse
plan-proof-time-rechecks = al cabo de un día, una semana, un mes
plan-proof-time-after-day = al cabo de un día
plan-proof-time-after-week = al cabo de una semana
plan-proof-time-after-month = al cabo de un mes

plan-flow-centre-sealed = centro de bombeo cerrado
plan-flow-centre-sealed-with-tank = centro de bombeo con vaso de expansión
plan-flow-centre-non-pressurised = depósito venteado

# --- quantities -----------------------------------------------------------

plan-quantity-loop-volume = Volumen del lazo
plan-quantity-indoor-volume = Contenido de la parte interior y el intercambiador
plan-quantity-needed-flow = Caudal que necesita la bomba de calor
plan-quantity-lowest-rating = Nunca por encima de
plan-quantity-least-flow = Caudal, no menos de
plan-quantity-purge-flow = Caudal de purga
plan-quantity-circuit-purge-flow = Caudal para un solo circuito
plan-quantity-circuit-volume = Un circuito contiene
plan-quantity-purge-loss = Presión en el carro para ese caudal
plan-quantity-cart-velocity = Velocidad que alcanza el carro
plan-quantity-purge-groups = Grupos que se purgan uno tras otro
plan-quantity-turnover-time = Una renovación del volumen
plan-quantity-flush-time = Lavar al menos
plan-quantity-purge-time = Purgar cada grupo al menos
plan-quantity-unit-flush-time = Parte interior al menos
plan-quantity-coarse-filter = Bolsa gruesa
plan-quantity-fine-filter = Bolsa fina
plan-quantity-dead-head-pressure = Subir hasta
plan-quantity-dead-head-limit = El nivel puede bajar como máximo
plan-quantity-dead-head-air = Aire restante con esa bajada
plan-quantity-target-freeze-point = Punto de congelación que alcanzar
plan-quantity-freeze-point-floor = Punto de congelación, no más bajo que
plan-quantity-antifreeze-dose = Anticongelante que añadir
plan-quantity-drain-volume = Vaciar primero
plan-quantity-dilution-volume = Reponer con agua
plan-quantity-mix-time = Mezclar al menos
plan-quantity-stretch-pressure = Estirar a
plan-quantity-leave-pressure = Presión que se dejará
plan-quantity-leave-pressure-low = Dejar no menos de
plan-quantity-leave-pressure-high = Dejar no más de
plan-quantity-recheck-day-low = Al cabo de un día, no por debajo de
plan-quantity-recheck-day-high = Al cabo de un día, no por encima de
plan-quantity-recheck-week-low = Al cabo de una semana, no por debajo de
plan-quantity-recheck-week-high = Al cabo de una semana, no por encima de
plan-quantity-recheck-month-low = Al cabo de un mes, no por debajo de
plan-quantity-recheck-month-high = Al cabo de un mes, no por encima de
plan-quantity-season-low = La más baja a lo largo de las temporadas, solo según el modelo
plan-quantity-season-high = La más alta a lo largo de las temporadas, ya relajada la tubería, solo según el modelo
plan-quantity-missing-volume = Fluido que falta
plan-quantity-release-volume = Fluido que dejar salir
plan-quantity-hold-time = Mantener durante
plan-quantity-hold-fall-limit = El manómetro puede caer como máximo
plan-quantity-standing-hold-time = Observarlo durante
plan-quantity-standing-fall-limit = En ese tiempo, un lazo estanco cae como máximo
plan-quantity-tank-pre-charge = Presión de aire del vaso
plan-quantity-suction-floor = Succión, no menos de
plan-quantity-temperature-change-low = Cambio de temperatura del agua, no menos de
plan-quantity-temperature-change-high = Cambio de temperatura del agua, no más de
plan-quantity-exchanger-drop-low = Caída en el intercambiador, no menos de
plan-quantity-circulator-power-low = Potencia eléctrica de todos los circuladores a plena velocidad, no menos de
plan-quantity-exchanger-drop-high = Caída en el intercambiador, no más de
plan-quantity-lowest-leaving-water = Agua de salida más fría con la que se cuenta
plan-quantity-leaving-water-limit = Agua de salida en calefacción, no por debajo de
plan-quantity-reservoir-fill = Fluido para llenar el depósito

# --- parts of the system that a quantity is of -----------------------------

plan-part-whole = todo el lazo
plan-part-circuits = circuitos del tipo { $number }
plan-part-supply-header = cabezal de ida
plan-part-return-header = cabezal de retorno
plan-part-all-open = todos los circuitos abiertos
plan-part-group = grupo { $number }

# --- why a quantity is missing ----------------------------------------------

# Lo desconocido es una cláusula que va en una de estas dos frases.
plan-not-worked-out = No se puede calcular: { $why }.
plan-hardly-known = { $value }: apenas se conoce y no sirve de base. Consultarlo o medirlo primero.
plan-without-gauge = Leer antes el manómetro en reposo e introducirlo; esta cifra se calcula sin él: { $value }
plan-usual-figure = { $figure }, la cifra habitual, porque { $why }.
plan-lack-circuits = los circuitos no constan
plan-lack-indoor-pipe = la tubería interior no está registrada
plan-lack-fluid-kind = no se conoce el tipo de fluido (haga analizar una muestra)
plan-lack-freeze-point-sample = no se leyó el punto de congelación con un instrumento apto para este fluido (analice antes una muestra; alcohol: con densímetro)
plan-lack-cart-curve = la curva de la bomba del carro no consta
plan-lack-cart-tank = el diámetro del depósito del carro no consta
plan-lack-exchanger-curve = la curva del intercambiador no consta
plan-lack-unit-rating = no constan la capacidad ni el caudal nominales de la bomba de calor
plan-lack-nameplates = las placas de los circuladores no constan
plan-lack-static-reading = no se leyó la presión en reposo
plan-lack-gauge-too-low = el manómetro marca tan poco que una fuga apenas lo movería (cargar primero, observar después)
plan-lack-too-little-known = se sabe demasiado poco de la tubería, del terreno y de las temperaturas de las temporadas; registrar manómetro y temperatura del agua durante el año
plan-lack-tank-data = el volumen y la precarga del vaso de expansión no constan
plan-lack-reservoir-size = el diámetro del depósito no consta
plan-lack-reservoir-level = no se leyó el nivel del depósito
plan-lack-cooling = No tiene sentido en refrigeración.
plan-lack-flow-centre = No tiene sentido para este centro de bombeo.
plan-lack-nothing-to-do = Nada que hacer: ya está como debe.
plan-lack-outside-model = los valores quedan fuera de lo que cubre el modelo

# --- remarks ---------------------------------------------------------------

plan-remark-rating-unknown = No consta la presión nominal de la bomba de calor. Se usa el límite conservador; lea la placa antes de acercarse a él.
plan-remark-cart-too-small = Este carro no alcanza la velocidad en todas partes, ni siquiera con un circuito cada vez. Traiga uno mayor, o mangueras más cortas o más anchas.
plan-remark-loss-above-rating = Todos los circuitos a la vez pedirían { $loss } en el carro, y { $rating } es el límite: purgarlos por grupos o uno tras otro, cada uno con su propio caudal de purga.
plan-remark-large-header = Un cabezal tan grande solo se libra del aire a { $velocity }: ventear sus puntos altos.
plan-remark-hoses-assumed = Las mangueras no constan: se suponen dos de { AMOUNT("1 in") }, de { AMOUNT("10 ft") } cada una.
plan-remark-product-assumed = Se toma el glicol como concentrado puro y el alcohol como premezcla a partes iguales en volumen. Lea la etiqueta y corrija la dosis según lo que diga.
plan-remark-no-pressure-serves = Ninguna presión mantiene con seguridad este lazo dentro de sus límites en todas las temporadas. La que se da es la mejor: se mantiene dentro con una probabilidad de { $inside }. En los extremos de su margen marca { $short } demasiado baja o { $over } demasiado alta. { $narrow } Vuelva a verlo antes del cambio de temporada.
plan-remark-limited-by-rating = Las temporadas piden más de lo que se puede dejar hoy en el lazo: en el extremo de su margen, la presión queda { $short } demasiado baja. Se mantiene dentro de sus límites con una probabilidad de { $inside }. Vuelva a verlo antes del cambio de temporada.
plan-remark-bare-least = Ninguna presión mantiene con seguridad este lazo dentro de sus dos límites en todas las temporadas: se queda en ellos con una probabilidad de { $inside }. La que se da conserva al menos lo que necesitan los circuladores y queda por debajo de la presión nominal más baja. Volver a leer el manómetro antes del cambio de temporada.
plan-remark-pressure-kept = Nada habla en contra de la presión que tenía el lazo al llegar: volver a dejarlo en ella. Según la tubería y las temporadas por sí solas, se mantiene dentro de sus límites con una probabilidad de { $inside }; { $stood } Volver a leer el manómetro antes del cambio de temporada.
plan-remark-pressure-kept-unsure = Nada habla en contra de la presión que tenía el lazo al llegar: volver a dejarlo en ella. Lo que se sabe de la tubería y de las temporadas no basta para prever si se mantiene dentro de sus límites; { $stood } Volver a leer el manómetro en la semana más fría y en la más cálida, junto con la temperatura del agua.
plan-stood-every-season = ha pasado por todas las temporadas con la carga del { $day }, hasta donde consta.
plan-stood-since = lleva así con la carga del { $day }, sin haber pasado aún por todas las temporadas.
plan-stood-unknown = no consta desde cuándo está así.
plan-remark-seasons-unsure = Incluso en una misma semana el cálculo deja { $width } sin determinar: es lo que no se sabe de este lazo, no lo que va a variar. { $narrow } Anotar juntos el manómetro y la temperatura del agua en la temporada fría y en la cálida: ese par de lecturas dice cuánto se mueve este lazo.
plan-remark-may-pass-rating = En el extremo superior de su margen el lazo puede llegar a { $high }, por encima de la presión nominal más baja, de { $rating }. Ninguna presión que sirva hoy lo descarta. Comprobar que haya en el lazo una válvula de alivio ajustada a no más de esa presión nominal, y leer el manómetro antes de la temporada fría.
plan-remark-read-gauge-first = No se leyó la presión en reposo. Leerla antes de abrir nada: si está dentro de los límites y el lazo funcionaba bien con ella, volver a dejarlo en esa presión.
plan-remark-freezes-where-it-leaves = El fluido se congela a { $freezes }, y el agua sale a { $leaving } o hay que contar con ella: reforzar va primero, sea cual sea la causa. La bomba de calor queda apagada hasta que esté hecho.
plan-remark-lowest-entering-assumed = Nadie registró el agua de entrada más baja de la temporada: se toma { $entering }, como en lazos de tamaño usual. Registrarla en las semanas más frías; así la dosis se puede ajustar.
plan-remark-comes-back = Lo que se deja salir vuelve en parte, porque la tubería sigue encogiendo: al cabo de un mes el manómetro marca unos { $after } a la misma temperatura. No bajarlo más hoy; leerlo en los controles posteriores y volver a bajarlo donde quede por encima de su margen.
plan-remark-hold-shows = La hora tras una carga solo muestra una fuga que se lleve { $shows } al día o más, porque la tubería también se relaja. Una más lenta se ve tras una noche en reposo y en los controles posteriores.
plan-remark-hold-cannot-show = El manómetro cayó { $leak } al día. La hora tras una carga solo muestra { $shows } al día o más, porque la tubería también se relaja: una espera superada no prueba que sea estanco. Dejarlo una noche en reposo, observarlo de nuevo y que decidan los controles posteriores.
plan-narrow-modulus = Lo que más ayudaría es registrar la tubería y su pared, y una segunda lectura algunos días después de la carga.
plan-narrow-pipe-expansion = Lo que más ayudaría es registrar la tubería, y una segunda lectura algunos días después de la carga.
plan-narrow-restraint = Lo que más ayudaría son lecturas posteriores, que muestran con qué firmeza sujeta el terreno la tubería.
plan-narrow-fluid-expansion = Lo que más ayudaría es analizar una muestra: qué fluido, qué concentración.
plan-narrow-charge-pressure = Lo que más ayudaría es un manómetro mejor para la carga.
plan-narrow-charge-temperature = Lo que más ayudaría es medir a qué temperatura está hoy el lazo: agua de entrada y de salida.
plan-narrow-trapped-air = Lo que más ayudaría es purgar hasta que no quede aire.
plan-narrow-temperature = Lo que más ayudaría es anotar las temperaturas del agua en cada temporada.
plan-narrow-model = Lo que más ayudaría son lecturas en las próximas semanas.
plan-narrow-none = Sus propias lecturas estrechan el margen.

# --- formulas in words -----------------------------------------------------

why-plan-lowest-rating = La más baja de las presiones nominales conocidas de la bomba de calor y del carro, y nunca por encima de { AMOUNT("100 psi") }; con vaso de expansión, nunca por encima de su válvula de alivio habitual de { AMOUNT("3 bar") }.
why-plan-volume-by-capacity = Unos { AMOUNT("21 gal") } de lazo por tonelada de refrigeración, con holgura, por falta de registro.
why-plan-volume-by-pipe = Diámetro interior y longitud de cada tubería registrada, el intercambiador y una parte por lo que no consta; las secciones interiores reales son de un 2 a un 3 % menores que lo que resulta de la pared mínima publicada.
why-plan-indoor-volume = Diámetro interior y longitud de la tubería interior registrada, y el intercambiador: según registro, o { AMOUNT("0.5 gal") } por tonelada.
why-plan-flow-rated = El caudal que piden las instrucciones de la unidad; dentro de un 10 % es bueno.
why-plan-flow-by-capacity = { AMOUNT("3 gpm") } por tonelada de refrigeración, y no menos de { AMOUNT("2.25 gpm") }.
why-plan-suction-floor = Lo que piden los circuladores, y al menos { AMOUNT("3 psi") }.
why-plan-suction-floor-vented = Lo que piden los circuladores, y sin vacío. Sobre un depósito venteado solo está su propio nivel, alrededor de { AMOUNT("1 psi") } por { AMOUNT("2.3 ft") }; un vacío en la entrada aspira aire.
why-plan-reservoir-fill = Área del depósito por lo que el nivel queda debajo de su marca.
why-plan-leaving-water-limit = El agua de salida más fría con la que cuenta la dosis. Lo que esa temperatura pueda desviarse lo cubre el margen entre ella y el punto de congelación.
why-plan-purge-flow = Sección interior por la velocidad que arrastra el aire, en cada tramo; el tramo que más necesita decide por el conjunto.
why-plan-header-velocity = 0.9 por la raíz cuadrada de gravedad por diámetro interior: con ese número de Froude el flujo arrastra el aire hacia abajo.
why-plan-purge-loss = Rozamiento y accesorios del lazo y las mangueras al caudal de purga, con el fluido a su temperatura.
why-plan-cart-velocity = Donde la propia curva del carro se cruza con la pérdida de los circuitos abiertos; cuenta el circuito abierto más lento.
why-plan-purge-groups = El menor número de grupos de circuitos en que cada circuito abierto alcanza la velocidad.
why-plan-turnover = Volumen de la parte abierta entre el caudal del carro; cuenta el grupo más lento.
why-plan-flush-time = Dos horas en total, 15 minutos por grupo o diez renovaciones del volumen, lo que sea más largo.
why-plan-purge-time = 15 minutos a la velocidad o diez renovaciones del volumen, lo que sea más largo.
why-plan-mix-time = Tres horas, o tres renovaciones del volumen de cada grupo, lo que sea más largo.
why-plan-filter-stages = 100 micras hasta que no se vean más burbujas, luego 1 micra.
why-plan-unit-flush-time = La parte interior por separado después del lazo, de 5 a 10 minutos.
why-plan-dead-head-pressure = { AMOUNT("50 psi") }, o la presión nominal más baja si es menor.
why-plan-dead-head-air = Puede quedar un 0.2 % del volumen del lazo: el fluido en marcha absorbe más o menos eso.
why-plan-dead-head-limit = Estirado de la tubería y compresión del líquido (tubo de pared gruesa), más el aire que puede quedar, comprimido según la ley de Boyle con presiones absolutas, entre el área del depósito. Se muestra junto a { AMOUNT("1 in", digits: 2) } a { AMOUNT("2 in", digits: 2) } del oficio, que no corresponden a ningún lazo en particular.
why-plan-lowest-leaving = Agua de entrada más fría menos el cambio a través de la unidad con la potencia térmica nominal y el caudal necesario.
why-plan-lowest-leaving-known = El agua de salida más fría que las lecturas de este aviso permiten esperar.
why-plan-target-freeze-point = Los { AMOUNT("10 °F") } del oficio por debajo del agua de salida más fría.
why-plan-freeze-point-asked = Como piden la empresa o las instrucciones de la unidad.
why-plan-freeze-point-floor = { AMOUNT("10 °F") } más fuerte de lo necesario: a partir de ahí la concentración solo cuesta caudal.
why-plan-dose = Las masas cuadran y el lazo sigue lleno: lo que entra repone lo que se vació; se cuenta la contracción al mezclar.
why-plan-drain = Las masas cuadran y el lazo sigue lleno: vaciar primero esta cantidad del fluido mezclado.
why-plan-dilution = Las masas cuadran y el lazo sigue lleno: reponer con agua esta cantidad del fluido.
why-plan-tank-pre-charge = Como consta, o algo por debajo de la presión mínima del lazo.
why-plan-leave-pressure = Los volúmenes de fluido y tubería cuadran en ambas temporadas, pronto y a los cinco años, con lo que se desconoce de la tubería y del terreno; de las presiones que se mantienen entre los límites, la que menos cambia lo que hay en el lazo; si ninguna lo asegura, una que conserve lo que necesitan los circuladores y quede por debajo de la presión nominal. La tubería conserva la mayor parte de lo que ha soportado: solo lo que hoy se cambia se relaja de nuevo. Se toma que ha estado así desde la carga registrada, un mes si no la hay, un día tras un relleno.
why-plan-stretch-pressure = { AMOUNT("10 psi") } por encima de la presión que se deja, y por debajo de la presión nominal más baja en lo que un manómetro de esfera pueda desviarse.
why-plan-season-band = Los volúmenes de fluido y tubería cuadran en ambas temporadas, pronto y a los cinco años, con lo que se desconoce de la tubería y del terreno. La tubería se relaja en ese tiempo: la más alta puede quedar por debajo de lo que se deja hoy. Si las lecturas propias del lazo a dos temperaturas dicen cuánto se mueve, se tienen en cuenta.
why-plan-circuit-volume = Diámetro interior y longitud de un circuito.
why-plan-recheck-band = Lo que muestra un lazo estanco en ese momento: la tubería sigue relajándose con el logaritmo del tiempo, y el aire que queda se disuelve y se lleva presión. Por eso el máximo de las temporadas puede quedar por debajo de lo que se deja hoy. Nunca por debajo de lo que necesitan los circuladores.
why-plan-hold-time = Una hora de observación, como en la prueba publicada; en ella la tubería se estira antes durante cuatro horas.
why-plan-standing-hold-time = El tiempo más corto en que la caída vista se nota por encima de lo que explica un lazo estanco; una noche si no se vio ninguna caída por día.
why-plan-hold-fall-limit = Lo más probable por la relajación de la propia tubería en ese tiempo, más lo que su dispersión, un pequeño cambio de temperatura y leer dos veces el mismo manómetro pueden añadir en 95 de 100 lazos estancos.
why-plan-missing-volume = Estirado de la tubería y compresión del fluido entre la lectura y la presión que se dejará.
why-plan-change-heating = Calor tomado del lazo entre caudal, densidad y calor específico.
why-plan-change-cooling = Calor cedido al lazo entre caudal, densidad y calor específico.
why-plan-circulator-power = La suma de las placas; los circuladores que giran toman tres cuartos de ella o más, y uno de dos que está parado deja la mitad.
why-plan-exchanger-drop = La propia curva del intercambiador al caudal necesario, corregida por el fluido, y un 20 % más.
why-plan-usual = La cifra habitual, la misma para todos los sistemas. Podría calcularse para este, pero { $why }.

# --- names of inputs -------------------------------------------------------

input-plan-conservative-limit = Límite sin presión nominal
input-plan-unit-rating = Presión nominal de la bomba de calor
input-plan-cart-rating = Presión nominal del carro
input-plan-usual-relief = Válvula de alivio habitual con vaso
input-plan-capacity = Capacidad de la bomba de calor
input-plan-plastic-volume = Volumen de la tubería plástica
input-plan-rated-flow = Caudal en la placa
input-plan-transport-velocity = Velocidad que arrastra el aire
input-plan-bore = Diámetro interior
input-plan-purge-flow = Caudal de purga
input-plan-density = Densidad
input-plan-viscosity = Viscosidad
input-plan-cart-flow = Caudal del carro
input-plan-cart-head = Altura del carro
input-plan-turnover = Una renovación del volumen
input-plan-turnovers = Renovaciones del volumen
input-plan-lowest-rating = Presión nominal más baja
input-plan-loop-volume = Volumen del lazo
input-plan-pressure-before = Presión antes
input-plan-pressure-after = Presión con el retorno cerrado
input-plan-tank-diameter = Diámetro del depósito
input-plan-drop-without-air = Bajada sin nada de aire
input-plan-air-allowed = Aire que puede quedar
input-plan-target-freeze-point = Punto de congelación que alcanzar
input-plan-freeze-point-now = Punto de congelación antes de la dosis
input-plan-strength-after = Concentración después, en volumen
input-plan-product-strength = Concentración del producto, en volumen
input-plan-lowest-entering = Agua de entrada más fría
input-plan-water-change = Cambio del agua a través de la unidad
input-plan-lowest-leaving-water = Agua de salida más fría
input-plan-freeze-margin = Margen
input-plan-heat-moved = Calor entre la unidad y el lazo
input-plan-nameplates = Placas en conjunto
input-plan-needed-flow = Caudal necesario
input-plan-loop-temperature = Temperatura del lazo
input-plan-drop-expected = Caída esperada
input-plan-least-pressure = Presión mínima a lo largo de las temporadas
input-plan-most-pressure = Presión máxima una vez dejado
input-plan-leave-pressure = Presión que se dejará
input-plan-fall-by-relaxing = Caída por relajación, lo más probable
input-plan-pressure-at-start = Presión al empezar
input-plan-reservoir-level = Nivel respecto a la marca
input-plan-reservoir-diameter = Diámetro del depósito
input-plan-fall-unsure = Lo que puede añadirse en un lazo estanco
input-plan-hold-shows = Caída diaria a partir de la cual se nota una fuga
input-plan-leak-seen = Caída diaria que se vio
input-plan-static-pressure = Presión en reposo ahora

input-plan-too-low = Demasiado baja en, al final de su franja
input-plan-too-high = Demasiado alta en, al final de su franja
input-plan-header-velocity = Velocidad que lo libra
input-plan-inside-limits = Probabilidad de mantenerse dentro en todas las temporadas
