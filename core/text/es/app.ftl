# What the app shows around a call: settings, groups of questions, templates.

language-own-name = Español

units-us = Unidades de EE. UU. (psi, gpm, °F, gal, ft)
units-si = SI (bar, L/s, °C, L, m)
paper-letter = Carta (US Letter)
paper-a4 = A4
theme-system = Como el dispositivo
theme-light = Claro
theme-dark = Oscuro
theme-sun = Pleno sol (máximo contraste)
instrument-usual = Habitualmente ± { $accuracy } o una parte del valor, lo que sea mayor.

questions-symptom-heard = Lo que se oye
questions-symptom-stops = La unidad se para
questions-symptom-gauge = En el manómetro, y reposiciones
questions-symptom-comfort = Calor en la casa y factura
questions-symptom-history = Cómo empezó
questions-symptom-house-water = Agua en la casa
questions-symptom-other = Otros
questions-observation-air-and-flow = Aire y caudal
questions-observation-circulator = En el circulador
questions-observation-valves-and-circuits = Válvulas y circuitos
questions-observation-fluid-and-dirt = Fluido y suciedad
questions-observation-leaks-and-tank = Fugas, vaso y presión
questions-observation-loop-temperature = Temperatura del lazo
questions-observation-unit = En la unidad
questions-observation-instruments = Prueba de los instrumentos
questions-observation-other = Otros

template-vertical-sealed = Perforaciones, cerrado, 3 toneladas de refrigeración
    .note = 3 circuitos de 3/4 in SDR 11, { AMOUNT("400 ft") } cada uno, propilenglicol 20 %.
template-horizontal-sealed = Zanjas, cerrado, 4 toneladas de refrigeración
    .note = 4 circuitos de 3/4 in SDR 11, { AMOUNT("600 ft") } cada uno, metanol 15 %.
template-vertical-vented = Perforaciones, depósito venteado, 4 toneladas de refrigeración
    .note = 4 circuitos de 3/4 in SDR 11, { AMOUNT("400 ft") } cada uno, propilenglicol 20 %.
template-pond-sealed = Estanque, cerrado, 5 toneladas de refrigeración
    .note = 5 circuitos de 3/4 in SDR 11, { AMOUNT("300 ft") } cada uno, metanol 20 %.

undo-system = Sistema
step-without-reason = ¿Por qué se da por hecho de todos modos?
step-minutes = Minutos que llevó

reading-formula = Se toma que una lectura queda dentro de su exactitud en 19 de cada 20 casos.
reading-accuracy-stated = Exactitud declarada para
reading-accuracy-usual = Exactitud habitual de
reading-by-statement = Declarado por el técnico
reading-by-practice = Práctica común, sin fuente

error-nothing-to-undo = Aquí no queda nada que deshacer.
error-not-a-circuit = "{ $found }" no es el número de un circuito. Escriba un número entero de { $first } a { $last }, o déjelo vacío.
error-logo-too-large = El archivo es demasiado grande para un logotipo. Elija una imagen de menos de 8 MB.
error-logo-unreadable = No se tomó el logotipo. Elija una imagen PNG o JPEG. ({ $detail })

turn-rests-on = Se apoya sobre todo en esto: { $found }. Si eso estuviera mal, esta causa sería la que más perdería.
turn-down = { $check }: si muestra { $seen }, esta baja.
turn-up = { $check }: si muestra { $seen }, esta sube.

schematic-description = Dibujo de este sistema: centro de bombeo y bomba de calor en el interior, los circuitos en el terreno y los puntos donde se puede leer algo.
schematic-flow-centre = Centro de bombeo
schematic-heat-pump = Bomba de calor
schematic-tank = Vaso de expansión
schematic-reservoir = Depósito
schematic-indoors = interior
schematic-ground-vertical = { $count ->
    [0] ? perforaciones con sonda en U
    [one] Una perforación con sonda en U
   *[other] { $count } perforaciones con sonda en U
}
schematic-ground-horizontal = { $count ->
    [0] ? circuitos en zanjas
    [one] Un circuito en zanja
   *[other] { $count } circuitos en zanjas
}
schematic-ground-pond = { $count ->
    [0] ? rollos en el estanque
    [one] Un rollo en el estanque
   *[other] { $count } rollos en el estanque
}
schematic-ground-unknown = { $count ->
    [0] ? circuitos en el terreno
    [one] Un circuito en el terreno
   *[other] { $count } circuitos en el terreno
}

spot-circulator_rise = Elevación
spot-entering_water = EWT
spot-exchanger_drop = Caída
spot-static_pressure = Manómetro
spot-suction_pressure = Succión
spot-leaving_water = LWT
spot-flow = Caudal
spot-freeze_point_supply = Muestra
spot-circuit_return = Circuito
spot-loop_temperature = Lazo
spot-strainer_drop = Filtro
spot-tank_pre_charge = Aire vaso
spot-reservoir_level_change = Nivel

sign-air = ¿aire?
sign-valve = ¿válvula?
sign-blocked = ¿obstruido?
sign-leak = ¿fuga?
sign-gauge = ¿presión?

picture-path = De la causa al hallazgo: { $cause }
picture-path-words = { $cause } lleva a lo que se encontró: { $found }.
picture-cause = Causa
picture-mechanism = Qué provoca
picture-finding = Hallado
picture-pair = Antes y después: { $point }
picture-pair-words = Como se encontró y como se dejó, en una misma unidad.
picture-velocity-words = Velocidad del agua en cada parte frente a la que arrastra el aire.
picture-pump-words = La curva del lazo pasa por el caudal leído, según la ley de los cuadrados; fluido y temperatura la cambian.
picture-season-words = Lo que debería marcar el manómetro en reposo durante el próximo año, si el lazo es estanco. Las temperaturas del lazo son { $basis }. La franja parte de una presión y se ensancha con el tiempo y la temperatura; nueve de cada diez lecturas deberían quedar dentro.
picture-season-winter = En las semanas más frías, lazo a { $temperature }
picture-season-summer = En las semanas más cálidas, lazo a { $temperature }
why-season-band = La presión de la que parte, movida por lo que fluido y tubería ocupan a la temperatura de esas semanas y por la relajación de la tubería hasta entonces. Nueve de cada diez lecturas deberían quedar entre los extremos.
input-season-start = Presión de la que parte

demo-none = No hay nada inventado cargado.
demo-there = Hay cargadas { $visits } visitas inventadas en { $systems } sistemas inventados.{ $own ->
    [0] {""}
    [one] {" "}Usted hizo una visita propia en uno de estos sistemas; se quedaría.
   *[other] {" "}Usted hizo { $own } visitas propias en estos sistemas; se quedarían.
}

## De dónde vienen los números de una respuesta

why-probability = Con qué frecuencia está la causa antes de encontrar nada, movida por lo que se sabe del sistema y después por todo lo hallado. Cada hallazgo cuenta por lo que añade al resto: los que dicen lo mismo valen menos juntos. Sumado exactamente sobre todas las combinaciones de causas; cada causa tiene una probabilidad propia.
why-expected = Se espera en las rellamadas antes de saber nada
why-learned = Lo mismo tras sus propias rellamadas
why-before-findings = Con lo que se sabe del sistema
why-call = Que alguien haya llamado
why-altogether = Con todo lo hallado
why-bits = «9 a 1 a favor»: esto se encuentra 9 veces más fácilmente con la causa que sin ella; «9 a 1 en contra», al revés. La lista muestra lo que dice por sí solo. Junto a todo lo demás hallado puede añadir menos, hasta nada, donde otros hallazgos ya dicen lo mismo. En bits: log2 de ese número; un bit duplica la razón de posibilidades, tres la hacen ocho veces mayor, por debajo de cero habla en contra.
why-alone = Por sí solo, como en la lista
why-odds = Por sí solo cambia la razón de posibilidades en
why-beside = Añadido a todo lo demás hallado
why-alone-bits = Por sí solo, en bits
why-beside-bits = Añadido al resto, en bits
why-added = { $found } (añadido al resto)
why-check = Cuánto menos abiertas se espera que queden las causas tras esta comprobación, sobre todo lo que puede mostrar. Un sí o no claro a una pregunta del todo abierta vale 1; la misma pregunta, ya medio resuelta, vale menos. Las comprobaciones se ordenan por lo que dicen por minuto. En cifras: la caída esperada de la entropía de cada causa, en bits, sumada sobre las causas.
why-check-bits = Se espera que diga
why-check-minutes = Minutos que lleva
why-check-rate = Por cada minuto
why-check-about = De ellos, sobre: { $cause }
why-check-source = Minutos: { $source }. Bits: calculados para esta llamada.
why-outcome = Cuán probable es que la comprobación muestre esto tras todo lo hallado hasta ahora, sumado exactamente sobre todas las combinaciones de causas. Si lo muestra, las causas se mueven según el teorema de Bayes: después = ahora × probabilidad con la causa ÷ probabilidad de esto.
why-outcome-chance = Probabilidad de esto
why-outcome-with = Probabilidad de esto con: { $cause }
why-outcome-without = Probabilidad de esto sin: { $cause }
why-outcome-moves = Ahora y después: { $cause }
why-pair = Cuán probable es que estén las dos, sea lo que sea lo demás. Se dice porque las dos y nada más es más probable que cualquier causa sola y nada más.
why-pair-together = Las dos, sea lo que sea lo demás
why-pair-alone = Solo esto: { $cause }
why-worked-out = Calculado para esta llamada con el grafo de reglas; cada vínculo nombra su fuente en las razones de su causa.
why-learned-prior = (proporción de partida × su peso + confirmadas) ÷ (peso + rellamadas): la media de una distribución beta tras contar. Tras ± está su desviación típica.
why-learned-weight = Eso vale
why-learned-worth = { $weight } rellamadas
why-learned-own = Confirmada aquí
why-learned-elsewhere = Confirmada en otro lugar
why-learned-of = { $confirmed } de { $callbacks }
why-learned-after = Se espera ahora en las rellamadas
why-learned-source = Cuenta: Gelman et al., Bayesian Data Analysis, sección 2.4 (de memoria). Proporción de partida: { $source }. Su peso: estimación propia.
