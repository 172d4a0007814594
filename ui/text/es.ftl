# Texts of the interface. Findings, causes and plans come from the engine.

app-name = Returnline

## Everywhere

back-to-visits = Volver a las visitas
back-to-report = Volver al informe
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
draft-left = Escrito, aún sin guardar
draft-keep = Guardarlo
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
visits-invented = inventada
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
kept = Guardado: { $what }

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

last-visit = La visita anterior, { $date }
last-found = Hallado: { $causes }
last-found-none = No se confirmó ninguna causa.
last-ended = Terminó: { $outcome }
last-open = No se dijo cómo terminó.
last-pressure = Manómetro del lazo en reposo, última lectura: { $pressure }

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
system-take-what = Rellena lo que allí se sabe; usted cambia lo que difiera.
system-take-hint = Esto sustituye lo que aquí se sabe del sistema. Se puede deshacer.
system-taken = Tomado: { $what }
system-templates = Sistemas habituales (ejemplos inventados)
system-earlier = De una visita anterior

## Readings

readings-taken = Tomadas
readings-first = Lo primero que se mide
readings-others = Todos los puntos
readings-observed = Visto, oído y palpado
readings-marked = Revise este valor
readings-more = { $count ->
    [one] y una más
   *[other] y { $count } más
}
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

## Checks

check-next = Siguiente comprobación
check-enter = Introducir: { $point }
check-outcomes = ¿Qué revelaría?

## Causes

causes-doubted =
    { $count ->
        [one] Compruébelo con otro antes de fiarse de lo que marca:
       *[other] Compruébelos con otros antes de fiarse de lo que marcan:
    }
causes-each = Cada causa tiene su propia probabilidad. Puede haber varias a la vez, así que juntas pueden sumar más de 100 %.
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
causes-sound = Hallado como debe ser
causes-unexplained = Aún sin explicar
causes-unused = Lecturas no usadas
causes-records = Lo que el registro aún no permite
causes-assumed = Supuesto por falta de registro
cause-why = ¿Por qué?
why-number = ¿Por qué este número?
cause-by-itself = «9 a 1» significa: se encuentra 9 veces más fácilmente con esta causa que sin ella. Cada cosa por sí sola; las que dicen lo mismo cuentan menos juntas.
cause-for = A favor
cause-against = En contra
cause-more-reasons =
    { $count ->
        [one] Una razón más
       *[other] { $count } razones más
    }
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
plan-back = Volver al plan
plan-bring = Qué llevar
plan-tools = Herramientas
plan-materials = Materiales
plan-none = Aún no hay trabajo previsto: ninguna causa es lo bastante probable. Haga primero la siguiente comprobación.
plan-step = Paso { $number }
plan-gate = Antes de continuar
plan-otherwise = Si no cumple:

plan-proof = Comprobar el resultado
proof-expected = Debe leerse { $value }
proof-before = Como se encontró: { $value }
proof-after = Como quedó: { $value }
proof-later = Leído más adelante: { $value }
proof-not-read = sin leer

## The report

report-what = Qué contienen los informes
report-holds = El informe de servicio es un PDF de esta visita:
report-part-system = el sistema, hasta donde se conoce
report-part-readings = cada lectura con su incertidumbre
report-part-causes = las causas con sus razones
report-part-plan = el plan de trabajo con sus cantidades, hecho y por hacer
report-part-cautions = las precauciones propias del trabajo
report-unknown = Lo que no se sabe se omite o se indica como desconocido.

report-saving = Guardando…
report-saved = Guardado como { $place }
report-closed = La visita está cerrada: { $outcome }.
report-still-open = La visita sigue abierta en la lista hasta que diga cómo terminó.
report-to-outcome = Decir cómo terminó
outcome-missing = Para decir que está corregido y comprobado falta esto:
outcome-all-the-same = Elegirlo de todos modos
outcome-another = Elegir otro resultado
outcome-told = El informe dice lo que falta.
outcome-stands = Se eligió corregido y comprobado, aunque falta esto:
report-nameless = Falta la empresa o el teléfono: los informes salen sin ello y el propietario no lee ningún número al que llamar.
report-name-it = Poner empresa y teléfono
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
criterion-met = Cumple
criterion-worked-out = Se calcula cuando estén ambas muestras
criterion-missed = No cumple
gate-open = Todo debe cumplir.
gate-passed = Cumple. Siga.
gate-failed = No cumple. No siga.
gate-go-back = Volver a ese paso
timer-least = al menos { $time }
timer-start = Empezar
timer-stop = Parar
timer-over = cumplido hace { $time }
timer-done = { $timer }: el tiempo se ha cumplido.
timer-runs = En marcha: { $timer }
timer-ran = duró { $time }: bastante
timer-short = duró { $time }: demasiado poco
caution-read = Leído y entendido
caution-again = Leído antes; también vale aquí
caution-held = Este paso está hecho. Para quitar una marca, elija antes «No está hecho».
caution-rest = Entero
step-done = hecho
step-skipped = omitido
step-is-done = Hecho
step-not-done = No está hecho
step-take-up = Hacerlo después de todo
step-skip = Omitirlo
step-skip-now = Omitirlo
step-reason = ¿Por qué se omite?
step-unmet = hecho sin cumplir
step-excused = hecho de todos modos
step-without = Hecho de todos modos
step-without-now = Hecho de todos modos
step-without-reason = ¿Por qué se da por hecho de todos modos?
step-gone-on = Hecho de todos modos:
step-left-out = Omitido:
step-earlier = Antes viene esto:
step-earlier-more =
    { $count ->
        [one] y un paso más
       *[other] y { $count } pasos más
    }
step-waits =
    { $count ->
        [one] Una precaución espera confirmación.
       *[other] { $count } precauciones esperan confirmación.
    }
step-note = Nota en este paso
step-note-hint = Lo que el paso pide anotar. Figura junto al paso en el informe.
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
signature-by-name = Firmado con el nombre
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
settings-logo = Elegir un logotipo
settings-logo-other = Elegir otro logotipo
settings-logo-alt = El logotipo de la empresa
settings-logo-hint = Una imagen PNG o JPEG. Se guarda pequeña.
settings-logo-remove = Quitar el logotipo
settings-technician = Técnico
settings-paper = Papel
settings-instruments = Instrumentos en la furgoneta
settings-instruments-hint = Marque lo que lleva. Si conoce su exactitud, anótela: las lecturas se creen hasta ahí.
settings-accuracy = Exactitud: { $instrument }, más o menos
demo-title = Empresa de ejemplo
demo-what = Lugares inventados con llamadas inventadas, para mirar y probar. No existe ninguna de esas personas, empresas ni lugares; no enseñan nada al orden de las causas y nunca salen de este dispositivo.
demo-load = Cargar la empresa de ejemplo
demo-remove = Quitar la empresa de ejemplo
demo-remove-hint = Lo que anotó en sus visitas se va con ella. Sus propias visitas no se tocan.
settings-data = Dónde están los datos

## All visits together

visits-across = Todas las visitas juntas
visits-board = Tablero
visits-exchange = Llevar o traer
back-to-board = Volver al tablero
board-title = Lo que vuelve una y otra vez
board-filters = Elegir lo que cuenta
board-filters-set =
    { $count ->
        [one] Elegir lo que cuenta: un límite puesto
       *[other] Elegir lo que cuenta: { $count } límites puestos
    }
board-no-filters = Contar todo de nuevo
board-day-from = Visitas desde
board-day-to = Visitas hasta
board-day-started-from = Puesta en servicio desde
board-day-started-to = Puesta en servicio hasta
board-span-repeat = Cuenta como repetido dentro de
board-span-watch = Sistemas comparados durante sus primeros
board-days = { $days } días
board-any = Todos
board-all = Mostrar los { $count }
board-fewer = Mostrar menos
board-more = { $count } más
board-report = Guardar esto como informe (PDF)
board-save = Guardar como tabla (CSV)
board-causes = Causas
board-no-causes = Aún no hay ninguna causa confirmada. Confirme una en las causas de una visita.
board-by = Causas por
board-cause = Causa
board-count = Rellamadas
board-share = Parte
board-hours = Horas
board-cost = Coste
board-waiting = Tiempo hasta la primera rellamada
board-band = La banda en torno a la curva contiene la curva verdadera en 19 de 20 casos. Los sistemas sin rellamada cuentan hasta hoy.
board-first = Las primeras rellamadas
board-differences = Qué difiere
board-repeats = Volvió en el mismo sistema
board-again = Volvió
board-no-repeats = No volvió nada.
board-fixes = ¿Aguantaron las reparaciones?
board-after = Después
board-held = Aguantó
board-unasked = Sin preguntar
board-early = Demasiado pronto
board-fixes-hint = Una fila abre las reparaciones que no aguantaron. Lo pregunta una visita posterior al mismo sistema.
board-practice = Antes y después de un cambio
board-changed = Día en que cambió su práctica
board-practice-hint = Introduzca el día y se comparan los sistemas puestos en servicio antes y después.
board-when = Puesta en servicio
board-called = Con rellamada
board-before = Antes de ese día
board-since = Desde ese día
board-count-of = { $count } de { $all }
board-range = { $value } ({ $low } a { $high })
board-rates = Por grupo
board-rates-hint = Rellamadas al año por cada 100 sistemas. La línea que cruza una barra contiene la tasa verdadera en 19 de 20 casos.
board-systems = Sistemas
board-callbacks = Rellamadas
board-rate = Tasa

## What was learned

learned-title = Lo que enseñaron sus propias rellamadas
learned-what = Cada causa que una comprobación confirmó, y cada rellamada en la que no había avería, hace el próximo orden un poco más suyo. Las reglas quedan como están; solo se mueve cuántas veces se espera cada causa.
learned-since = Contado desde { $since }.
learned-cause =
    { $count ->
        [0] sin confirmar aún; esperada en { $before } de las llamadas, ahora
        [one] confirmada una vez; esperada en { $before } de las llamadas, ahora
       *[other] confirmada { $count } veces; esperada en { $before } de las llamadas, ahora
    }
learned-others =
    { $count ->
        [one] Una causa más
       *[other] { $count } causas más
    }
learned-save = Guardar estas cuentas
learned-take = Incorporar cuentas de otro dispositivo
learned-taken = Incorporado.
learned-anew = Empezar de nuevo
learned-anew-hint = Las rellamadas hasta ahora dejan de contar, y también lo que vino de fuera. Sus visitas quedan como están.
learned-anew-now = Empezar de nuevo ahora
learned-begun = Empezado de nuevo.

## A cause found true or false

verdict-ask = ¿Lo averiguó? Diga si era esto
verdict-question = ¿Estaba ahí?
verdict-yes = Estaba ahí
verdict-no = Descartada
verdict-confirmed = Confirmada
verdict-ruled-out = Descartada
verdict-check = La decidió esta comprobación
verdict-hint = Lo confirmado cuenta en el tablero y enseña a los próximos órdenes. No cambia este.
fix-held = Aguantó
fix-failed = No aguantó

## To and from other devices

exchange-title = Llevar o traer
exchange-what = Los registros viajan en un solo archivo, por cable, tarjeta o como usted envíe archivos. Incorporar otra vez el mismo archivo no cambia nada.
exchange-out = Desde este dispositivo
exchange-write = Guardar todos los registros
exchange-write-some =
    { $count ->
        [one] Guardar una visita
       *[other] Guardar { $count } visitas
    }
exchange-some =
    { $count ->
        [0] Elegir visitas sueltas
        [one] Una visita elegida
       *[other] { $count } visitas elegidas
    }
exchange-whole = Con todas las visitas de los mismos sistemas
exchange-without = Sin los datos del propietario
exchange-without-hint = Sin nombres, direcciones, quejas, notas, fotos ni firmas.
exchange-in = Desde otro dispositivo
exchange-take = Incorporar un archivo
exchange-take-hint = Todo o nada. Lo que cambiaron ambos dispositivos se guarda dos veces hasta que usted decida.
exchange-not-taken = No se incorporó nada: no se eligió ningún archivo.
exchange-decide =
    { $count ->
        [one] Un registro por decidir
       *[other] { $count } registros por decidir
    }
exchange-decide-hint = Dos dispositivos dicen cosas distintas. Elija lo que vale; lo otro ya no se muestra.
exchange-side = Versión { $number }
exchange-stands = Vale ahora
exchange-keep = Que valga la versión { $number }
exchange-settled = Decidido: { $what }

## Backups

recovery-title = No se pueden abrir los registros
recovery-what = Aún no se ha perdido nada. Restaure abajo la copia completa más reciente. Lo que hay ahora se guarda al lado, para poder examinarlo.
backup-title = Copias de seguridad
backup-undated = Día desconocido
backup-visits =
    { $count ->
        [one] una visita
       *[other] { $count } visitas
    }
backup-broken = No está completa: { $trouble }
backup-none = Aún no hay copia automática. La primera se hace cuando la aplicación se abre con una visita guardada.
backup-older =
    { $count ->
        [one] Una copia más antigua
       *[other] { $count } copias más antiguas
    }
backup-newest =
    { $count ->
        [one] La copia más reciente es de { $made } y contiene una visita.
       *[other] La copia más reciente es de { $made } y contiene { $count } visitas.
    }
backup-failed =
    { $code ->
        [store-disk-full] Falló la copia automática: el disco está lleno. Lo que introdujo hasta ahora está guardado. Libere espacio y guarde una copia en un archivo desde los ajustes.
       *[other] Falló la copia automática. { $trouble } Lo que introdujo está guardado de todos modos; guarde una copia en un archivo desde los ajustes.
    }
backup-save = Guardar una copia en un archivo
backup-back = Volver a una copia
backup-restore = Restaurar esta
backup-from-file = Restaurar desde un archivo
backup-choose = Elija una copia
backup-confirm = La copia ocupa el lugar de todos los registros de este dispositivo. Lo que hay ahora se guarda al lado con un nombre que termina en “aside” y ya no se muestra.
backup-restore-now = Restaurar ahora
backup-leave = Dejarlo como está
backup-restored = Restaurado. Las visitas son las de la copia.
backup-folder = Las copias están en { $folder }
