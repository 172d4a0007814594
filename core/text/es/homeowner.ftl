# The homeowner's page. Plain words: no jargon, short sentences, spoken to the
# person who lives in the house. What was wrong comes from the causes'
# own sentences (cause-<id>.homeowner).

homeowner-report = Su sistema de calefacción y refrigeración
homeowner-title = Para el propietario, { $site }
homeowner-subject = Visita del { $date }
homeowner-subject-by = Visita del { $date } por { $technician }
homeowner-told = Usted nos dijo: “{ $text }”

homeowner-wrong = Qué pasaba
homeowner-done = Qué hicimos
homeowner-open = Qué falta por hacer
homeowner-call = Cuándo llamar
homeowner-notice = Lo que puede notar
homeowner-watch = Qué vigilar
homeowner-next = Próxima visita:
homeowner-safety = por su seguridad
homeowner-readings = Qué medimos
homeowner-what = Qué
homeowner-before = Antes
homeowner-after = Después
homeowner-should = Debería ser
homeowner-is-it = ¿Es así?

# How it ended, in one sentence.
homeowner-short-fixed = Su sistema está arreglado y comprobamos que funciona como debe.
homeowner-short-fixed-unproved = Su técnico ha arreglado su sistema. Aún no se ha comprobado todo lo que lo demuestra.
homeowner-short-partly = Su sistema funciona mejor, pero el trabajo no está terminado. Volveremos.
homeowner-short-nothing_wrong = Su sistema está en orden. Lo que usted notó es normal.
homeowner-short-nothing-so-far = En lo que se revisó no se encontró nada que haya que corregir. Si lo que usted notó sigue o vuelve, avísenos.
homeowner-short-handed_over = La causa no está en la tubería enterrada. Otro especialista tiene que terminar la reparación.
homeowner-short-open = Aún no hemos terminado. Abajo está lo que sabemos hasta ahora.
homeowner-short-found = Sabemos qué es lo que más probablemente falla. La reparación todavía está por hacer.
homeowner-short-unknown = Todavía no conocemos la causa. Antes hay que medir más.
homeowner-short-done = El trabajo está hecho, y lo que medimos después está como debe.
homeowner-short-done-unread = El trabajo está hecho. Aún no se ha medido todo lo que lo demuestra.
homeowner-short-done-missed = El trabajo está hecho, pero no todo lo que medimos después está todavía como debe.
homeowner-short-done-excused = El trabajo está hecho, pero no se cumplieron todos los controles intermedios. Su técnico anotó por qué.
homeowner-short-begun = El trabajo está empezado, pero no terminado.

# How sure it is.
homeowner-sure-checked = Lo confirmamos con una prueba en su sistema.
homeowner-sure-likely = Es la razón más probable según lo que medimos: { $probability }.
homeowner-sure-tied = Puede ser una de estas. Con lo que medimos no pudimos distinguirlas, así que tratamos ambas.
homeowner-wrong-nothing = No hay nada averiado.
homeowner-wrong-nothing-so-far = Hasta ahora no se ha encontrado nada averiado.
homeowner-wrong-other = La razón no es la tubería enterrada. Hay que revisar la propia bomba de calor, su lado del aire o su control.
homeowner-wrong-unknown = La razón todavía no está clara.
homeowner-wrong-so-far = Todavía no es seguro. Lo más probable hasta ahora: { $cause }
homeowner-begun = { $work } (empezado)
homeowner-done-in-part = { $work } (una parte se omitió con motivo)

# The picture.
homeowner-picture = Su sistema
homeowner-picture-words = Las bombas de circulación mueven el fluido una y otra vez por la tubería enterrada: lleva el calor a la casa en invierno y de vuelta en verano.
homeowner-picture-words-pond = Las bombas de circulación mueven el fluido una y otra vez por la tubería sumergida: lleva el calor a la casa en invierno y de vuelta en verano.
homeowner-picture-mark = { $letter } marca dónde está o estaba el fallo: { $what }.
plain-sign-air = aire
plain-sign-valve = una válvula
plain-sign-blocked = algo que estorba el paso
plain-sign-leak = una fuga
plain-sign-gauge = la presión
plain-part-flow-centre = Bombas de circulación
plain-part-heat-pump = Bomba de calor
plain-part-tank = Vaso de expansión
plain-part-reservoir = Depósito con el nivel del fluido
plain-part-gauge = Manómetro
plain-part-indoors = en la casa
plain-part-ground-vertical = { $count ->
    [0] Tubería en pozos perforados
    [one] Un circuito de tubería en un pozo perforado
   *[other] { $count } circuitos de tubería en pozos perforados
}
plain-part-ground-horizontal = { $count ->
    [0] Tubería enterrada
    [one] Un circuito de tubería enterrada
   *[other] { $count } circuitos de tubería enterrada
}
plain-part-ground-pond = { $count ->
    [0] Rollos de tubería en el agua
    [one] Un rollo de tubería en el agua
   *[other] { $count } rollos de tubería en el agua
}
plain-part-ground-unknown = { $count ->
    [0] Tubería enterrada
    [one] Un circuito de tubería enterrada
   *[other] { $count } circuitos de tubería enterrada
}

# Readings in plain words.
homeowner-reading-static_pressure = Presión en la tubería enterrada, con las bombas de circulación paradas
homeowner-reading-flow = Paso de fluido por la bomba de calor
homeowner-reading-freeze_point_supply = Protegido contra las heladas hasta

# What is normal.
homeowner-notice-band = El manómetro marca menos en verano y más en invierno, porque la tubería de plástico se ensancha con el calor. Con las bombas de circulación paradas, espere unos { $cold } en las semanas más frías (es normal { $winter }) y unos { $warm } en las más cálidas (es normal { $summer }).
homeowner-notice-band-even = El manómetro se mueve un poco con las estaciones. Con las bombas de circulación paradas, espere unos { $cold } en las semanas más frías (es normal { $winter }) y unos { $warm } en las más cálidas (es normal { $summer }).
homeowner-notice-season = El manómetro marca menos en verano y más en invierno, porque la tubería de plástico se ensancha con el calor. Es normal.
homeowner-notice-recheck = Durante el primer mes la tubería se asienta: entonces es normal una lectura de { $low } a { $high }.
homeowner-notice-level = El nivel del depósito sube y baja un poco con la temperatura. Es normal.
homeowner-notice-bubbles = Los primeros días puede oír algunas burbujas. Deberían desaparecer y no volver.
homeowner-season = El manómetro a lo largo del año
homeowner-season-band = normal
homeowner-season-start-left = como se dejó
homeowner-season-start-planned = tras el llenado
homeowner-season-start-found = como se encontró
homeowner-season-from-left = como lo dejamos
homeowner-season-from-planned = una vez llenado
homeowner-season-from-found = como lo encontramos
homeowner-season-words = Dónde debería estar el manómetro durante el año que viene con las bombas de circulación paradas, a partir de { $left } ({ $start }). Cualquier valor dentro de la franja sombreada es normal, mientras no se pierda fluido.

# What to watch.
homeowner-watch-gauge = Mire el manómetro una vez al mes con las bombas de circulación paradas y anote el número.
homeowner-watch-level = Mire el nivel del depósito una vez al mes. Debería mantenerse cerca de la marca.
homeowner-watch-sound = Escuche: las bombas de circulación deberían funcionar en silencio, sin traqueteo ni gorgoteo.
homeowner-watch-leak = Busque manchas de humedad, costras o goteos en las tuberías y las bombas de circulación.
homeowner-watch-filter = Cambie o limpie el filtro de aire como digan las instrucciones de la bomba de calor.

# When to call.
homeowner-phone = Llámenos al
homeowner-no-phone = Llame a su empresa de servicio:
homeowner-call-gauge = si el manómetro marca menos de { $low } o más de { $high } con las bombas de circulación paradas, o se sale de la franja sombreada de su estación
homeowner-call-pressure = si el manómetro sigue bajando de un mes a otro, o está cerca de cero
homeowner-call-level = si el nivel del depósito baja por debajo de su marca
homeowner-call-noise = si las bombas de circulación vuelven a zumbar, traquetear o gorgotear
homeowner-call-stops = si la bomba de calor se para sola o muestra una avería
homeowner-call-leak = de inmediato si se escapa fluido: primero apague la bomba de calor en su interruptor, y mantenga alejadas a las personas y las mascotas
homeowner-call-open = si no tiene noticias nuestras sobre el trabajo que falta por hacer

homeowner-next-date = Volveremos el { $date }.
homeowner-next-open = Todavía tenemos que acordar un día para el trabajo que no está hecho.
homeowner-next-none = No hay ninguna visita prevista. Haga revisar presión, paso de fluido y anticongelante una vez al año.

# Antifreeze and safety.
homeowner-fluid-water = Su tubería enterrada contiene agua sola. No debe congelarse: avísenos si el sistema va a estar parado en invierno.
homeowner-fluid-propylene_glycol = Su tubería enterrada contiene agua con propilenglicol, un anticongelante. Es de baja toxicidad, pero no lo beba, y mantenga a los niños y las mascotas lejos de las fugas.
homeowner-fluid-ethylene_glycol = Su tubería enterrada contiene agua con etilenglicol, un anticongelante. Es venenoso, y su sabor dulce atrae a los niños y a las mascotas. Si alguien traga algo, llame de inmediato al centro de toxicología o al número de emergencias.
homeowner-fluid-methanol = Su tubería enterrada contiene agua con metanol, un anticongelante. Es venenoso al beberlo, al respirarlo y sobre la piel, y su vapor arde. Si hay una fuga: nada de llamas, abra las ventanas, salga, llámenos. Si alguien traga algo, llame de inmediato al centro de toxicología o al número de emergencias.
homeowner-fluid-ethanol = Su tubería enterrada contiene agua con etanol desnaturalizado (no apto para beber), un anticongelante. Su vapor arde. Si hay una fuga: nada de llamas, abra las ventanas, llámenos. No lo beba.
homeowner-fluid-unknown = No sabemos qué anticongelante hay en su tubería enterrada. Trátelo como venenoso, y mantenga a los niños y las mascotas lejos de las fugas.
homeowner-safety-hands-off = Por favor, no reponga, vacíe ni abra nada en las bombas de circulación: la tubería está a presión, y lo que se añade debe corresponder a lo que hay dentro.
homeowner-safety-drain = El fluido de la tubería no debe ir a un desagüe, a un pozo ni al terreno. Déjelo en nuestras manos; las normas locales dicen adónde puede ir.
homeowner-safety-inside = Nunca quite las tapas de la bomba de calor. Dentro hay partes con tensión y refrigerante a presión: es trabajo solo para personas con licencia.

# Corrections, in words that fit under “What we did” and under “What still has
# to be done”.
homeowner-work-purge-loop = Lavar la tubería enterrada para sacar el aire atrapado y la suciedad, y llenarla a la presión correcta.
homeowner-work-bleed-circulators = Sacar el aire atrapado en las bombas de circulación.
homeowner-work-clean-strainer = Limpiar el filtro de malla, el colador que retiene la suciedad, y averiguar de dónde vino la suciedad.
homeowner-work-flush-debris = Sacar la suciedad de la tubería enterrada con agua, con la bomba de calor cerrada para que no le entre nada.
homeowner-work-clear-exchanger = Lavar la parte de la bomba de calor por donde pasa el fluido de la tubería.
homeowner-work-read-gauge-first = Leer la presión de la tubería enterrada antes de abrir nada.
homeowner-work-strengthen-first = Dejar el fluido seguro contra la congelación antes de que la bomba de calor vuelva a funcionar; hasta entonces la casa se calienta con su apoyo.
homeowner-work-wait-for-fluid = Dejar apagada la bomba de calor hasta que esté el fluido nuevo.
homeowner-work-correct-freeze-point-dose = Añadir anticongelante hasta que el fluido esté seguro con sus temperaturas de invierno.
homeowner-work-dilute = Devolver el anticongelante a la concentración correcta con agua limpia.
homeowner-work-mix-charge = Mezclar el fluido para que el anticongelante sea igual en toda la tubería.
homeowner-work-replace-fluid = Vaciar el fluido viejo, lavar la tubería y llenarla con el fluido correcto.
homeowner-work-recharge-pressure = Llenar la tubería enterrada a la presión correcta para esta temporada.
homeowner-work-stretch-and-recharge = Dejar que la tubería de plástico se asiente a presión y llenarla luego a la presión correcta.
homeowner-work-relieve-pressure = Dejar salir algo de presión de la tubería enterrada, hasta el margen correcto.
homeowner-work-set-valves = Poner las válvulas como corresponde y rotularlas.
homeowner-work-find-indoor-leak = Encontrar la fuga dentro de la casa y repararla.
homeowner-work-test-circuits-for-leak = Probar una a una las tuberías enterradas y cerrar la que tiene la fuga.
homeowner-work-balance-circuits = Ajustar las tuberías enterradas para que cada una reciba su parte del fluido.
homeowner-work-restore-circuit = Hacer que el fluido vuelva a pasar por la tubería enterrada que estaba detenida.
homeowner-work-repair-circulator = Reparar o sustituir la bomba de circulación.
homeowner-work-resize-circulator = Adecuar la bomba de circulación a su tubería enterrada.
homeowner-work-correct-piping = Corregir las tuberías para que el fluido pase en el sentido correcto.
homeowner-work-fit-check-valve = Montar una nueva válvula de un solo sentido.
homeowner-work-service-expansion-tank = Ajustar o sustituir el vaso de expansión, que estabiliza la presión.
homeowner-work-refill-reservoir = Rellenar el depósito junto a la bomba de circulación e impedir que aspire aire.
homeowner-work-treat-water = Tratar o sustituir el agua de la tubería enterrada.
homeowner-work-descale-exchanger = Quitar la cal de la parte de la bomba de calor por donde pasa el fluido de la tubería.
homeowner-work-clean-loop-chemically = Limpiar la tubería enterrada y llenarla de nuevo con un aditivo protector.
homeowner-work-correct-gauge = Sustituir un manómetro que marcaba mal y volver a medir.
homeowner-work-correct-thermometer = Comprobar un termómetro que marcaba mal y volver a medir.
homeowner-work-correct-flow-meter = Comprobar un medidor de caudal que marcaba mal y volver a medir.
homeowner-work-correct-refractometer = Comprobar el instrumento que analiza el anticongelante y volver a analizar.
homeowner-work-correct-hydrometer = Comprobar el instrumento que analiza el anticongelante y volver a analizar.
homeowner-work-correct-power-meter = Comprobar un medidor de potencia que marcaba mal y volver a medir.
homeowner-work-correct-test-kit = Comprobar un kit de análisis de agua que marcaba mal y volver a analizar.
homeowner-work-hand-over-refrigerant-gauges = Hacer que un técnico certificado en refrigerantes compruebe los manómetros de refrigerante.
homeowner-work-correct-display = Rotular la pantalla de la bomba de calor porque marca mal y medir con otros termómetros.
homeowner-work-explain-and-record = Anotar las lecturas de hoy. No hay que reparar nada.
homeowner-work-assess-loop-length = Calcular si la tubería enterrada es lo bastante larga para su casa.
homeowner-work-hand-over-refrigerant = Hacer que un técnico certificado en refrigerantes revise la propia bomba de calor.
homeowner-work-hand-over-electrical = Hacer que un electricista con licencia revise el cableado o el control.
homeowner-work-hand-over-air-side = Hacer que se corrijan el filtro de aire, el serpentín o los conductos.
