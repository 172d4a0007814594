# Texts of the interface. Findings, causes and plans come from the engine.

app-name = Returnline

## Everywhere

back-to-visits = Volver a las visitas
answer-yes = Sí
answer-no = No
answer-unknown = ?
answer-unknown-long = No lo sé
notice-note = Nota
notice-caution = Precaución
notice-doubt = ¿Es correcto?
notice-wrong = Problema
notice-good = Bien
failure-unknown = Ocurrió un error que la aplicación no conoce. No se ha borrado nada de lo que introdujo.
working = Calculando…
measure-unit = Unidad de { $label }
measure-sign = Cambiar el signo de { $label }

## Visits

visits-title = Visitas
visits-new = Nueva visita
visits-search = Buscar una visita
visits-found =
    { $count ->
        [one] Una visita
       *[other] { $count } visitas
    }
visits-none-found = Ninguna visita contiene estas palabras.
visits-open = pendiente
visits-again = Nueva visita aquí
visits-again-at = en { $site }
visits-empty = Aún no hay visitas. Empiece una con lo que le dijo el cliente; todo lo demás puede venir después.

## Steps of a visit

steps-label = Pasos de esta visita
step-call = Aviso
step-system = Sistema
step-readings = Lecturas
step-causes = Causas
step-plan = Plan
step-report = Informe
step-begun = tiene entradas
undo = Deshacer: { $what }

title-call = ¿Qué pasa?
title-system = ¿Qué sabemos?
title-readings = ¿Qué medimos?
title-causes = ¿Cuál es la causa?
title-plan = Qué hacer
title-report = Informe
onward-readings = Ir a las lecturas
onward-causes = Ver las causas
onward-plan = Ver el plan de trabajo
onward-report = Ir al informe

## The call

call-symptoms = Lo que notó el cliente
call-more = Dirección, contacto, día, técnico, notas
questions-answered =
    { $count ->
        [one] 1 respondida
       *[other] { $count } respondidas
    }
similar-site = Ya se conoce un lugar parecido a este: { $site }, visitado por última vez { $date }.
similar-no-date = en un día desconocido
similar-same = Es el mismo
similar-other = Es otro

## The system

system-optional = Nada de esto es necesario para empezar. Cada dato que añada afina la respuesta.
system-more = Todo lo demás
system-known =
    { $known ->
        [0] aún no se sabe nada
       *[other] { $known } de { $all } conocidos
    }
system-back = Volver al sistema
system-take = Partir de un sistema habitual o de una visita anterior
system-take-hint = Esto sustituye lo que aquí se sabe del sistema. Se puede deshacer.
system-taken = Tomado: { $what }
system-templates = Sistemas habituales (ejemplos inventados)
system-earlier = De una visita anterior

## Readings

readings-taken = Tomadas
readings-others = Todos los puntos
readings-observed = Visto, oído y palpado
readings-marked = Revise este valor
readings-back = Volver a las lecturas
readings-drawing = Dibujo de este sistema
schematic-title = Este sistema
schematic-hint = Toque un punto para introducir una lectura o ver la que se tomó ahí.
schematic-unread = aún sin leer
schematic-suspected = Sospechas, según sus letras en el dibujo
reading-value = Lo que muestra el instrumento
reading-instrument = Leído con
reading-mode = Estado del sistema
reading-of-circuit = circuito { $circuit }
reading-circuit = Circuito, contado desde el inicio del colector
reading-more = Exactitud, antes o después
reading-accuracy = Exactitud, más o menos
reading-accuracy-hint = Déjelo vacío para usar la habitual del instrumento.
reading-phase = Leído
phase-found = como se encontró
phase-left = como quedó
reading-before = Leído en este punto
reading-earlier = En visitas anteriores
reading-change = Cambiar
reading-remove = Quitar { $reading }
reading-save = Guardar esta lectura
reading-save-change = Guardar el cambio
reading-done = Terminado aquí

## Checks

check-next = Siguiente comprobación
check-enter = Introducir: { $point }
check-outcomes = ¿Qué revelaría?

## Causes

causes-others =
    { $count ->
        [one] Una causa menos probable
       *[other] { $count } causas menos probables
    }
causes-checks =
    { $count ->
        [one] Otra comprobación que merece el tiempo
       *[other] Otras { $count } comprobaciones que merecen el tiempo
    }
causes-pictures = Dibujos: el camino de la causa al hallazgo, antes y después
pictures-title = Dibujos
pictures-back = Volver a las causas
pictures-none = Todavía no hay nada que dibujar. Las lecturas traen los dibujos.
causes-unexplained = Aún sin explicar
causes-unused = Lecturas no usadas
causes-assumed = Supuesto por falta de registro
cause-why = ¿Por qué?
cause-for = A favor
cause-against = En contra
cause-path = Cómo lleva hasta ahí
cause-figures = Los números
cause-no-reasons = Solo la frecuencia con que ocurre: nada de lo hallado hasta ahora habla a favor ni en contra.
cause-context = Lo que se sabe de este sistema
cause-turns = ¿Qué cambiaría esto?
why = ¿Por qué?
figures-measured = Medido:
figures-expected = Esperado aquí:

## The plan

plan-treats = Trabajos
plan-done = { $done } de { $all } pasos hechos
plan-bring = Qué llevar
plan-tools = Herramientas
plan-materials = Materiales
plan-none = Aún no hay trabajo previsto: ninguna causa es lo bastante probable. Haga primero la siguiente comprobación.
plan-step = Paso { $number }
plan-gate = Antes de continuar
plan-otherwise = Si no:

plan-proof = Comprobar el resultado
proof-expected = Debe leerse { $value }
proof-before = Como se encontró: { $value }
proof-after = Como quedó: { $value }
proof-not-read = sin leer

## The report

report-holds = El informe de servicio es un PDF de esta visita:
report-part-system = el sistema, hasta donde se conoce
report-part-readings = cada lectura con su incertidumbre
report-part-causes = las causas con sus razones
report-part-plan = el plan de trabajo con sus cantidades, hecho y por hacer
report-part-cautions = las precauciones propias del trabajo
report-unknown = Lo que no se sabe se omite o se indica como desconocido.

report-saving = Guardando…
report-saved = Guardado como { $place }
report-open = Abrir el informe
report-not-saved = No se guardó: no se eligió ningún lugar.

## Settings

settings-title = Ajustes
settings-theme = Colores

settings-about = Acerca de
about-version = Versión { $version }
about-data = Sus visitas se guardan en este dispositivo, en { $folder }
about-bounds = Returnline orienta a una persona formada. Las instrucciones de la unidad, la normativa local y la práctica autorizada van primero.

## Call, sites and systems met before

## Drawing, history, pictures

## The work, step by step

plan-remarks = A tener en cuenta
criterion-met = Esto cumple.
criterion-missed = Esto no cumple.
gate-open = Anote lo que encuentra. Todo debe cumplir.
gate-passed = Cumple. Siga.
gate-failed = No cumple. No siga.
gate-go-back = Volver a ese paso
timer-least = al menos { $time }
timer-start = Empezar
timer-stop = Parar
timer-over = cumplido hace { $time }
timer-done = { $timer }: el tiempo se ha cumplido.
timer-runs = En marcha: { $timer }
caution-read = Leído y entendido
step-done = hecho
step-skipped = omitido
step-is-done = Hecho
step-not-done = No está hecho
step-take-up = Hacerlo después de todo
step-skip = Omitirlo
step-skip-now = Omitirlo
step-reason = ¿Por qué se omite?
step-left-out = Omitido:
step-waits =
    { $count ->
        [one] Una advertencia espera confirmación.
       *[other] { $count } advertencias esperan confirmación.
    }
step-used = Minutos y piezas usadas
step-minutes = Minutos que llevó
step-parts = Piezas y materiales usados

## Photos, signatures, reports

photos-title = Fotos
photo-add = Tomar o elegir una foto
photo-hint = Se le quitan el lugar y el dispositivo. Caben { $left } más.
photo-phase = Muestra el sistema
photo-caption = Lo que muestra
photo-remove = Quitar
photo-enlarge = Más grande o más pequeña: { $photo }
photo-untold = Foto de { $time }
signatures-title = Firmas
signature-name = Nombre en letra de imprenta
signature-keep = Guardar esta firma
signature-again = Dibujar de nuevo
signature-typed = Firmar con el nombre
signature-of = Firma de { $name }
signature-clear = Firmar de nuevo
report-homeowner-holds = La hoja para el propietario dice en palabras sencillas qué fallaba, qué se hizo y qué vigilar.
report-next-visit = Próxima visita, si se acordó
save-technician = Guardar el informe
save-homeowner = Guardar la hoja del propietario

## Settings

settings-wording = Unidades, idioma, colores
settings-units = Unidades
settings-language = Idioma
settings-reports = En los informes
settings-company = Empresa
settings-phone = Número al que llamar
settings-phone-hint = Figura en la hoja del propietario.
settings-logo = Logotipo
settings-logo-alt = El logotipo de la empresa
settings-logo-hint = Una imagen PNG o JPEG. Se guarda pequeña.
settings-logo-remove = Quitar el logotipo
settings-technician = Técnico
settings-paper = Papel
settings-instruments = Instrumentos en la furgoneta
settings-instruments-hint = Marque lo que lleva. Si conoce su exactitud, anótela: las lecturas se creen hasta ahí.
settings-accuracy = Exactitud: { $instrument }, más o menos
settings-data = Dónde están los datos
