# What the engine thinks of a call.

verdict-cause = Lo más probable: { $cause } ({ $probability }).
verdict-pair = Lo más probable, dos cosas a la vez: { $cause } ({ $probability }).
verdict-normal = Nada que corregir: lo leído y lo visto está como debe ({ $probability } de que no haya ninguna avería).
verdict-normal-because = Nada que corregir; esto lo explica: { $cause } ({ $probability } de que no haya ninguna avería).
verdict-normal-so-far = De momento no se ha encontrado nada que corregir: lo leído y lo visto está como debe ({ $probability } de que no haya ninguna avería). Lo que no se ha mirado aún puede esconder una avería.
verdict-normal-because-so-far = De momento no se ha encontrado nada que corregir; esto lo explica: { $cause } ({ $probability } de que no haya ninguna avería). Lo que no se ha mirado aún puede esconder una avería.
verdict-not-the-loop = No es el lazo: derivar a un técnico con licencia. En primer lugar: { $cause } ({ $probability } de que el lazo esté bien).
verdict-instrument-first = Primero, el instrumento: { $cause } ({ $probability }).
verdict-tied = Todavía no se pueden distinguir: { $cause }. Tratarlas en este orden o hacer una de las comprobaciones.
verdict-undecided = Aún sin decidir. De momento, en primer lugar: { $cause }.
verdict-contradiction = Las entradas se contradicen tanto que no se puede concluir nada. Revise las lecturas.

pair-better = Dos causas juntas lo explican mejor: { $causes }
doubted = { $instrument } ({ $probability })
stop-found = Ya se sabe lo suficiente: { $cause }. Pase al plan.
stop-nothing-worthwhile = Ninguna otra comprobación compensa el tiempo que lleva.

found-present = { $finding }: sí
found-absent = { $finding }: no
found-low = { $finding }: valor bajo
found-normal = { $finding }: valor normal
found-high = { $finding }: valor alto
found-at-edge = { $found }, en el límite

path-against = En contra. De ser así, se esperaría esto:
path-instrument = Se leyó con este instrumento.
path-rival = Apunta a otra causa: { $rival }.
path-rival-any = También lo explican otras causas.
path-rival-less = Habla en contra de otra causa: { $rival }.
path-rival-less-any = Habla en contra de otras causas.
found-itself = Se encontró en esta visita.
ruled-out-itself = Se buscó en esta visita y no está.
call-line = Alguien llamó: probablemente algo va mal.
learned-line = De { $callbacks } de sus propias rellamadas: confirmada en { $confirmed }, y eso mueve su punto de partida.
learned-from = Aprendido de { $own } de sus propias rellamadas y de { $elsewhere } contadas en otro lugar; las probabilidades de partida valen { $weight } rellamadas.
context-line = { $fact }: sí. { $why }
context-line-not-so = { $fact }: no. De haber sido así: { $why }

figure-measured = medido { $value }
figure-expected = esperado { $value }
figure-at-least = { $value } o más
figure-at-most = { $value } o menos
figure-other = { $value }, según la otra lectura
figure-by-instrument = { $value } ({ $instrument })

check-tells-much = { $minutes } min; dice mucho sobre: { $causes }
check-tells-some = { $minutes } min; dice algo sobre: { $causes }
check-tells-little = { $minutes } min; dice poco, sobre: { $causes }
weight-for = { $odds } a 1 a favor
weight-against = { $odds } a 1 en contra
weight-none = nada en ningún sentido
check-outcome = entonces { $cause }: { $probability }
licence-refrigerant = certificado para trabajar con refrigerantes
licence-electrical = con licencia para trabajos eléctricos

unused-line = { $what }: no se usa. { $why }

# The plan around its steps.
plan-treats = { $procedure } (por: { $causes })
plan-note-excluded = Se omite porque lo otro lo deshace: { $dropped } Se mantiene: { $kept }
plan-note-not-here = { $procedure }: nada que hacer en este tipo de sistema.
plan-gate-pass = { $what }: { $rule } { $limit }.
plan-gate-back = Volver al paso { $number }: { $step }
plan-gate-unread = Falta leer: { $list }.
plan-step-in-short = Paso { $number }: { $step }
plan-earlier-more = { $count ->
    [one] Un paso más va antes.
   *[other] { $count } pasos más van antes.
}
plan-want-earlier = No se hizo antes: { $step }
plan-want-earlier-steps = No se hicieron antes: pasos { $numbers }.
plan-want-earlier-gone = No se hizo un paso anterior.
plan-want-gate-empty = { $label }: sin leer; debe ser { $rule }.
plan-want-gate-failed = { $label }: { $found }; debe ser { $rule }.
plan-want-timer-not-started = { $label }: sin empezar; debe durar al menos { $time }.
plan-want-timer-short = { $label }: han pasado { $ran } de al menos { $time }.
plan-want-timer-end-unknown = { $label }: empezado, pero no consta cuánto duró; debe durar al menos { $time }.
plan-count-done = { $count ->
    [one] { $count } de { $all } pasos hecho
   *[other] { $count } de { $all } pasos hechos
}
plan-count-left-out = { $count ->
    [one] { $count } omitido con motivo
   *[other] { $count } omitidos con motivo
}
plan-count-excused = { $count ->
    [one] { $count } hecho de todos modos, con motivo
   *[other] { $count } hechos de todos modos, con motivo
}
plan-count-unmet = { $count ->
    [one] { $count } hecho sin cumplir
   *[other] { $count } hechos sin cumplir
}
plan-count-open = { $count } por hacer
plan-unproved-open-step = El paso { $number } está por hacer: { $step }
plan-unproved-open-steps = Estos pasos están por hacer: { $numbers }.
plan-unproved-left-out = Paso { $number }, omitido: { $wanting } Motivo: { $reason }
plan-unproved-excused = Paso { $number }, hecho de todos modos: { $wanting } Motivo: { $reason }
plan-unproved-unmet = Paso { $number }, hecho sin cumplir: { $wanting } No se anotó ningún motivo.
plan-unproved-missed = { $label }: { $after }, no como debe ({ $expected }).
plan-unproved-unread = { $label }: sin leer; debe ser { $expected }.
plan-unproved-not-read = { $label }: sin leer.
plan-proof-label = { $point } ({ $when })
plan-proof-met = como debe
plan-proof-missed = no como debe
plan-proof-unread = sin leer
plan-proof-later = se lee más adelante
plan-proof-open = sin valor con que compararla
why-plan-fixed = Igual para todos los sistemas.
