# The manager's board, the exchange of records, and what became of fixes.

fleet-headline = { $callbacks ->
    [one] Una rellamada
   *[other] { $callbacks } rellamadas
} entre { $visits ->
    [one] una visita
   *[other] { $visits } visitas
} en { $systems ->
    [one] un sistema
   *[other] { $systems } sistemas
}: { $hours } h de trabajo, costo { $cost }.
fleet-note-unexplained = { $count ->
    [one] Una rellamada no tiene
   *[other] { $count } rellamadas no tienen
} causa confirmada.
fleet-note-unpriced = { $count ->
    [one] Una rellamada no tiene
   *[other] { $count } rellamadas no tienen
} costo registrado, así que el costo real es mayor.
fleet-note-undated = { $count ->
    [one] Un sistema no tiene día de puesta en servicio y queda
   *[other] { $count } sistemas no tienen día de puesta en servicio y quedan
} fuera donde cuenta el tiempo.
fleet-note-demo = { $visits ->
    [one] Una visita de estas cifras es inventada: pertenece a la empresa de ejemplo, que se quita en los ajustes.
   *[other] { $visits } visitas de estas cifras son inventadas: pertenecen a la empresa de ejemplo, que se quita en los ajustes.
}
fleet-note-only-troubled = Todos los sistemas registrados tuvieron una rellamada. Faltan los sistemas sin problemas, así que las tasas y los tiempos de espera parecen peores de lo que son.
fleet-unknown = desconocido
fleet-share = { $share } % ({ $low } a { $high } %), { $count } de { $of }
fleet-rate = { $rate } ({ $low } a { $high }) al año por cada 100 sistemas

fleet-by-crew = Equipo
fleet-by-year = Año de puesta en servicio
fleet-by-season = Temporada de la carga
fleet-by-fluid = Fluido
fleet-by-centre = Centro de bombeo
fleet-by-pipe = Tubería de los circuitos
fleet-by-cause = Causa
fleet-by-velocity-reached = Velocidad de lavado
fleet-by-flushed-long-enough = Tiempo de lavado
fleet-by-filtered = Bolsa filtrante
fleet-by-two-filter-stages = Etapas de filtro
fleet-by-unit-isolated = Bomba de calor durante el lavado
fleet-by-water-tested = Agua de llenado
fleet-by-pipe-relaxed = Tubería antes de la última carga
fleet-by-circulators-bled = Circuladores
fleet-by-charge-in-band = Presión de carga
fleet-by-freeze-point-checked = Punto de congelación

fleet-season-winter = cargados de diciembre a febrero
fleet-season-spring = cargados de marzo a mayo
fleet-season-summer = cargados de junio a agosto
fleet-season-autumn = cargados de septiembre a noviembre

habit-velocity-reached = velocidad de lavado alcanzada
    .not = velocidad de lavado no alcanzada
habit-flushed-long-enough = lavado lo bastante largo
    .not = lavado demasiado corto
habit-filtered = bolsa filtrante usada
    .not = sin bolsa filtrante
habit-two-filter-stages = dos etapas de filtro o más
    .not = menos de dos etapas de filtro
habit-unit-isolated = bomba de calor aislada durante el lavado
    .not = bomba de calor no aislada durante el lavado
habit-water-tested = agua de llenado analizada
    .not = agua de llenado no analizada
habit-pipe-relaxed = tubería relajada antes de la última carga
    .not = tubería no relajada antes de la última carga
habit-circulators-bled = circuladores purgados
    .not = circuladores no purgados
habit-charge-in-band = presión de carga dejada dentro del margen habitual
    .not = presión de carga dejada fuera del margen habitual
habit-freeze-point-checked = punto de congelación comprobado tras la mezcla
    .not = punto de congelación no comprobado tras la mezcla

fleet-waiting-none = Ningún sistema tiene aquí día de puesta en servicio, así que los tiempos de espera se desconocen.
fleet-waiting = En el año siguiente a la puesta en servicio, el { $share } % ({ $low } a { $high } %) de { $systems } sistemas tuvo su primera rellamada. Hasta ahora la ha tenido menos de la mitad.
fleet-waiting-median = En el año siguiente a la puesta en servicio, el { $share } % ({ $low } a { $high } %) de { $systems } sistemas tuvo su primera rellamada; el día { $days } ya era la mitad.

fleet-differences-too-few = Hay muy pocos sistemas registrados para comparar prácticas y equipos.
fleet-differences-none = Nada destaca: { $tests } comparaciones de { $systems } sistemas en sus primeros { $months } meses no hallaron ninguna diferencia que el azar no pudiera producir o que sea lo bastante grande para importar.
fleet-differences = De { $tests } comparaciones de { $systems } sistemas en sus primeros { $months } meses. Solo se indica lo que es al menos { $least } veces más frecuente, con todo el intervalo por encima; de lo que se indica, uno de cada veinte casos puede aun así ser azar. Van juntos; no tiene por qué ser la razón.
fleet-difference-habit = { $cause }: donde consta “{ $group }”, la tuvo el { $here } % de los sistemas ({ $with } de { $all }); donde se hizo lo contrario, el { $others } % ({ $other-with } de { $other-all }). Es { $times } veces más frecuente ({ $low } a { $high }).
fleet-difference-crew = { $cause }: la tuvo el { $here } % de los sistemas puestos en servicio por { $group } ({ $with } de { $all }); de todos los demás, el { $others } % ({ $other-with } de { $other-all }). Es { $times } veces más frecuente ({ $low } a { $high }).
fleet-difference-season = { $cause }: la tuvo el { $here } % de los sistemas { $group } ({ $with } de { $all }); de todos los demás, el { $others } % ({ $other-with } de { $other-all }). Es { $times } veces más frecuente ({ $low } a { $high }).
fleet-difference-fluid = { $cause }: la tuvo el { $here } % de los sistemas con { $group } ({ $with } de { $all }); de todos los demás, el { $others } % ({ $other-with } de { $other-all }). Es { $times } veces más frecuente ({ $low } a { $high }).
fleet-difference-centre = { $cause }: la tuvo el { $here } % de los sistemas con un centro de bombeo “{ $group }” ({ $with } de { $all }); de todos los demás, el { $others } % ({ $other-with } de { $other-all }). Es { $times } veces más frecuente ({ $low } a { $high }).
fleet-difference-pipe = { $cause }: la tuvo el { $here } % de los sistemas con circuitos de { $group } ({ $with } de { $all }); de todos los demás, el { $others } % ({ $other-with } de { $other-all }). Es { $times } veces más frecuente ({ $low } a { $high }).
fleet-difference-only-habit = { $cause }: solo la tuvieron sistemas donde consta “{ $group }”, el { $here } % de ellos ({ $with } de { $all }); de { $other-all } donde se hizo lo contrario, ninguno.
fleet-difference-only-crew = { $cause }: solo la tuvieron sistemas puestos en servicio por { $group }, el { $here } % de ellos ({ $with } de { $all }); de los otros { $other-all }, ninguno.
fleet-difference-only-season = { $cause }: solo la tuvieron sistemas { $group }, el { $here } % de ellos ({ $with } de { $all }); de los otros { $other-all }, ninguno.
fleet-difference-only-fluid = { $cause }: solo la tuvieron sistemas con { $group }, el { $here } % de ellos ({ $with } de { $all }); de los otros { $other-all }, ninguno.
fleet-difference-only-centre = { $cause }: solo la tuvieron sistemas con un centro de bombeo “{ $group }”, el { $here } % de ellos ({ $with } de { $all }); de los otros { $other-all }, ninguno.
fleet-difference-only-pipe = { $cause }: solo la tuvieron sistemas con circuitos de { $group }, el { $here } % de ellos ({ $with } de { $all }); de los otros { $other-all }, ninguno.

fleet-held-30 = Aguantó 30 días
fleet-held-90 = Aguantó 90 días
fleet-held-183 = Aguantó hasta la otra temporada
fleet-before = Antes
fleet-after = Después
fleet-practice-too-few = A un lado u otro del { $date } se pusieron en servicio muy pocos sistemas para compararlos durante { $months } meses.
fleet-practice-same = De { $before-all } sistemas puestos en servicio antes del { $date }, el { $before } % tuvo una rellamada en { $months } meses; de { $after-all } después, el { $after } %. El azar por sí solo puede producir tal diferencia.
fleet-practice-better = De { $before-all } sistemas puestos en servicio antes del { $date }, el { $before } % tuvo una rellamada en { $months } meses; de { $after-all } después, solo el { $after } %. El azar por sí solo difícilmente produce tal diferencia; también cuenta qué más cambió en ese tiempo.
fleet-practice-worse = De { $before-all } sistemas puestos en servicio antes del { $date }, el { $before } % tuvo una rellamada en { $months } meses; de { $after-all } después, el { $after } %. Ha empeorado, y el azar por sí solo difícilmente produce tal diferencia.

fleet-fix-question = El { $date } se corrigió aquí esto: { $cause }. ¿Aguantó?
fleet-fix-held = Seguía bien el { $date }.
fleet-fix-failed = Ya no aguantaba el { $date }.

fleet-picture-count = Rellamadas por causa confirmada
fleet-picture-hours = Horas de trabajo por causa confirmada
fleet-picture-cost = Coste por causa confirmada
fleet-picture-waiting = Tiempo hasta la primera rellamada
fleet-picture-days = días desde la puesta en servicio
fleet-picture-rates = Rellamadas al año por cada 100 sistemas; la línea que cruza una barra es su intervalo del 95 %.

fleet-column-cause = causa
fleet-column-count = número
fleet-column-share = parte
fleet-column-low = mínimo
fleet-column-high = máximo
fleet-column-hours = horas
fleet-column-cost = costo
fleet-column-of = de
fleet-column-days = días
fleet-column-at-risk = aún en espera
fleet-column-by = por
fleet-column-group = grupo
fleet-column-systems = sistemas
fleet-column-years = años
fleet-column-callbacks = rellamadas
fleet-column-rate = tasa por 100 sistemas y año
fleet-column-words = palabras
fleet-column-with = con
fleet-column-other-with = otros con
fleet-column-other-of = de otros
fleet-column-times = veces más frecuente
fleet-column-p = p
fleet-column-adjusted = p ajustada
fleet-column-held = aguantó
fleet-column-known = conocido
fleet-column-unasked = no preguntado
fleet-column-too-early = demasiado pronto

exchange-written = { $visits ->
    [one] Una visita
   *[other] { $visits } visitas
} en { $records } registros, en { $path }.
exchange-taken = { $records ->
    [one] Un registro leído
   *[other] { $records } registros leídos
}: { $new } nuevos, { $changed } cambiados, { $decide } por decidir.
exchange-kind-site = Lugar
exchange-kind-household = Nombre y dirección de un lugar
exchange-kind-system = Sistema
exchange-kind-commissioning = Puesta en servicio
exchange-kind-visit = Visita
exchange-kind-words = Queja y notas de una visita
exchange-kind-follow_up = Si aguantó una reparación
exchange-kind-photo = Foto
exchange-kind-signatures = Firmas
exchange-nothing-to-decide = Nada que decidir.
exchange-record-at = { $kind }: { $place }
exchange-noted-here = Anotado el { $when } en este dispositivo
exchange-noted-elsewhere = Anotado el { $when } en otro dispositivo ({ $device })
exchange-not-noted = sin anotar
exchange-as-written = Tal como está escrito
exchange-confirmed = Confirmada
exchange-ruled-out = Descartada
exchange-circuit = circuito { $circuit }
exchange-work = Trabajo
exchange-done = hecho
exchange-not-done = sin hacer
exchange-left-out = omitido
exchange-photo-there = La foto está
exchange-photo-phase = Muestra el sistema
exchange-photo-caption = Qué muestra
exchange-photo-time = Tomada
exchange-photo-picture = Imagen
exchange-part-curve = puntos de la curva
exchange-part-curve_temperature = temperatura de la curva
exchange-part-clean_conductance = conductancia en limpio
exchange-part-volume = volumen que contiene
exchange-part-volume_fraction = concentración en volumen
exchange-part-tank_volume = volumen del vaso
exchange-part-pre_charge = precarga del vaso
exchange-part-reservoir_diameter = diámetro del depósito
exchange-part-minimum_suction = presión mínima de succión
exchange-part-maximum_pressure = presión máxima
exchange-part-dead_head_drop = descenso en la prueba con retorno cerrado
exchange-part-label = nombre
exchange-part-headers = cabezales
exchange-part-indoor = tubería interior
exchange-part-hose = mangueras
exchange-part-circuits = circuitos
exchange-part-circulators = circuladores
exchange-part-instruments = instrumentos
exchange-part-other = otros

error-exchange-not-ours = Esto no es un archivo de intercambio. No se cambió nada.
error-exchange-newer = Este archivo de intercambio procede de un programa más nuevo: es de la versión { $found } y este programa lee hasta la { $newest }. Actualice este; no se cambió nada.
error-exchange-cut = Este archivo de intercambio quedó cortado. Cópielo de nuevo; no se cambió nada.
error-exchange-altered = Este archivo de intercambio se alteró por el camino. Cópielo de nuevo; no se cambió nada. ({ $detail })
error-exchange-malformed = Este archivo de intercambio contiene en la línea { $line } algo que no se puede aceptar. Haga que lo escriban de nuevo; no se cambió nada. ({ $detail })
error-exchange-too-large = Este archivo de intercambio es mayor que los que se leen. Exporte menos visitas a la vez; no se cambió nada. ({ $detail })
error-exchange-io = No se pudo leer o escribir el archivo de intercambio. Cópielo antes a este dispositivo; no se cambió nada. ({ $detail })
error-exchange-not-written = El archivo de intercambio no se escribió. Elija otro nombre u otra carpeta. ({ $detail })

# Cómo se cuenta cada parte del tablero y por qué método.
fleet-why-causes = Rellamadas en las que se confirmó la causa, de todas las rellamadas. Una visita con varias causas cuenta para cada una; sus horas y su coste se reparten por igual. Entre paréntesis, el intervalo del 95 % de la parte.
    .source = Wilson, J. Am. Stat. Assoc. 22 (1927) 209-212
fleet-why-waiting = De la puesta en marcha a la primera rellamada; un sistema sin ninguna ha esperado hasta el último día registrado. La curva es la de Kaplan y Meier, con su banda del 95 % en la escala ln(-ln S).
    .source = Kaplan y Meier, J. Am. Stat. Assoc. 53 (1958); Greenwood (1926) según Kalbfleisch y Prentice (de memoria)
fleet-why-differences = Cada grupo se compara con todos los demás de su clase para cada causa, sobre los mismos días desde la puesta en marcha. Se dice lo que muestran al menos 10 sistemas de cada lado, 5 de ellos con la causa, cuando la prueba exacta se sostiene tras la corrección por todas las comparaciones (0.05 como mucho) y todo el intervalo del 95 % de la razón queda por encima de 1.2.
    .source = Fisher, J. R. Stat. Soc. 98 (1935); Benjamini y Yekutieli, Ann. Stat. 29 (2001); Katz et al., Biometrics 34 (1978)
fleet-why-repeats = La misma causa confirmada de nuevo en el mismo sistema dentro del plazo, de todas las visitas cuyo plazo terminó o en las que volvió. Entre paréntesis, el intervalo del 95 %.
    .source = Wilson, J. Am. Stat. Assoc. 22 (1927) 209-212
fleet-why-fixes = Un arreglo aguantó tantos días cuando se vio aguantar entonces o después, o solo falló más tarde. Uno por el que nadie preguntó no cuenta como aguantado. Entre paréntesis, el intervalo del 95 %.
    .source = Wilson, J. Am. Stat. Assoc. 22 (1927) 209-212
fleet-why-practice = Sistemas puestos en marcha antes y después de ese día, cada uno sobre los mismos días desde entonces: los que tuvieron una rellamada, de todos. La diferencia se prueba de forma exacta.
    .source = Fisher, J. R. Stat. Soc. 98 (1935); Wilson, J. Am. Stat. Assoc. 22 (1927)
fleet-why-rates = Rellamadas divididas por los años en servicio de todos los sistemas del grupo, con el intervalo exacto del 95 %. Las rellamadas de un sistema se toman como independientes; donde no lo son, el intervalo es demasiado estrecho.
    .source = Garwood, Biometrika 28 (1936) 437-442
