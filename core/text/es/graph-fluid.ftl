# Texts of the rule graph: antifreeze: strength, kind, mixing, age


## Causes

cause-antifreeze-too-weak = Anticongelante demasiado débil
    .homeowner = En su tubería hay muy poco anticongelante para los días más fríos.
context-antifreeze-too-weak--concentration-not-checked = Donde nadie lee el punto de congelación, la mezcla es una suposición.
context-antifreeze-too-weak--heating-season = Se nota cuando el lazo trabaja frío.
context-antifreeze-too-weak--cooling-season = En verano no se congela nada.
context-antifreeze-too-weak--after-work = Un lazo que se abrió se rellena con agua.
context-antifreeze-too-weak--warm-loop = El agua templada no se hiela en ningún sitio; nadie llama por eso.
context-antifreeze-too-weak--water-only = Debía llevar agua sola.
cause-antifreeze-too-strong = Anticongelante demasiado fuerte
    .homeowner = En su tubería hay más anticongelante del que necesita, y eso vuelve espeso el fluido.
context-antifreeze-too-strong--concentration-not-checked = Donde nadie lee el punto de congelación, la mezcla es una suposición.
context-antifreeze-too-strong--heating-season = Las mezclas fuertes son más espesas con el frío.
context-antifreeze-too-strong--warm-loop = El fluido templado circula bien con cualquier concentración.
context-antifreeze-too-strong--older-than-five-years = Una dosis demasiado fuerte se nota en los primeros inviernos.
context-antifreeze-too-strong--cooling-season = El fluido caliente es poco viscoso, fuerte o no.
context-antifreeze-too-strong--alcohol-fluid = Los alcoholes siguen fluidos donde los glicoles se espesan.
cause-antifreeze-unmixed = Anticongelante sin mezclar
    .homeowner = El anticongelante todavía no se ha repartido por igual en su tubería.
context-antifreeze-unmixed--mixed-too-short = El carro no dio suficientes vueltas al volumen del lazo.
context-antifreeze-unmixed--first-month = Una carga reciente viaja en tapones.
context-antifreeze-unmixed--first-year = Meses de marcha mezclan cualquier lazo por el que pase caudal.
context-antifreeze-unmixed--older-than-five-years = Años de marcha lo han mezclado.
context-antifreeze-unmixed--cooling-season = Un tapón débil no hace daño en agua caliente.
context-antifreeze-unmixed--concentration-not-checked = Quien la mezcló bien había tomado dos muestras.
cause-antifreeze-wrong-kind = Tipo de anticongelante incorrecto, o dos tipos mezclados
    .homeowner = El fluido de su tubería no es del tipo correcto.
context-antifreeze-wrong-kind--complaint-recurs = Reponer con lo que hubiera en la camioneta mezcla tipos.
cause-antifreeze-degraded = Anticongelante degradado
    .homeowner = El anticongelante ha envejecido y ya no protege las partes de metal.
context-antifreeze-degraded--older-than-five-years = El inhibidor se gasta con los años.
context-antifreeze-degraded--first-year = Una carga reciente rara vez está gastada.
context-antifreeze-degraded--alcohol-fluid = Son los glicoles los que se acidifican.
context-antifreeze-degraded--water-not-tested = El agua dura o salina gasta el inhibidor.
context-antifreeze-degraded--came-on-slowly = Lleva años.
context-antifreeze-degraded--since-start-up = Un anticongelante recién puesto no está gastado.

## Mechanisms

mechanism-weak-freeze-protection = Punto de congelación demasiado cerca del fluido más frío
    .homeowner = El fluido podría congelarse en los días más fríos.
mechanism-ice-in-exchanger = Se forma hielo pastoso en el intercambiador
    .homeowner = Dentro de la bomba de calor se forma hielo pastoso.
mechanism-thick-fluid = Fluido demasiado espeso en frío
    .homeowner = El fluido se vuelve espeso con el frío.

## Findings

finding-freeze-protection = Punto de congelación frente a la temperatura de salida más baja
    .homeowner = Hasta qué punto está el fluido protegido contra la congelación.
finding-freeze-samples-differ = Los puntos de congelación de dos muestras difieren
    .homeowner = Dos muestras del fluido no eran iguales.
finding-gravity-and-freeze-point-disagree = La densidad relativa y el refractómetro apuntan a mezclas distintas
    .homeowner = Dos pruebas del fluido no concuerdan.
finding-cold-film = El flujo calculado en la tubería enterrada es laminar con este fluido y esta temperatura
    .homeowner = Según el cálculo, el fluido se desliza despacio junto a la pared de la tubería y toma poco calor.
finding-improves-when-warm = El caudal sube claramente con el fluido caliente
    .homeowner = El fluido pasa mejor cuando está caliente.
finding-worse-when-cold = Peor en los días más fríos
    .homeowner = Empeora cuando hace frío.
finding-flow-recovers-after-rest = El caudal cae en marcha y vuelve tras un reposo
    .homeowner = El fluido vuelve a pasar bien después de que la bomba de calor descansa.
finding-freeze-guard-trip = La unidad se dispara por su protección contra congelación
    .homeowner = La bomba de calor se paró porque el fluido se enfrió demasiado.
finding-trips-early-then-settles = Se disparó en los primeros días tras el llenado y luego se estabilizó
    .homeowner = Al principio se paraba y luego se normalizó.
finding-sample-foams = La muestra agitada hace espuma y la conserva
    .homeowner = El fluido hace espuma.
finding-sample-smells = La muestra huele agria, dulce o a disolvente
    .homeowner = El fluido huele.
finding-label-disagrees = La etiqueta o los bidones vacíos indican otro fluido que el registro
    .homeowner = La etiqueta y el registro no coinciden.
finding-other-fluid-added = Se repuso con un fluido distinto del que hay en el lazo
    .homeowner = Se añadió otro fluido.
finding-sample-discoloured = La muestra es marrón o negra
    .homeowner = El fluido ha cambiado de color.

## Links

link-antifreeze-too-weak--weak-freeze-protection = Menos anticongelante, punto de congelación más alto.
link-antifreeze-too-strong--freeze-protection = Más anticongelante, punto de congelación mucho más bajo de lo necesario.
link-antifreeze-too-strong--thick-fluid = La viscosidad sube más deprisa de lo que baja el punto de congelación.
link-antifreeze-unmixed--freeze-samples-differ = Un tapón de fluido fuerte pasa por una toma y luego por la otra.
link-antifreeze-unmixed--weak-freeze-protection = El fluido débil se congela como si no hubiera anticongelante.
link-antifreeze-unmixed--thick-fluid = Los tapones fuertes son espesos.
link-antifreeze-unmixed--trips-early-then-settles = La marcha mezcla lo que el carro no mezcló.
link-antifreeze-unmixed--freeze-guard-trip = Cada tapón débil que pasa por el intercambiador puede disparar su protección.
link-antifreeze-wrong-kind--gravity-and-freeze-point-disagree = Cada tipo une densidad y punto de congelación con su propia curva.
link-antifreeze-wrong-kind--weak-freeze-protection = Con la escala incorrecta, la concentración se ajustó mal.
link-antifreeze-wrong-kind--thick-fluid = Otro tipo puede ser más espeso con el mismo punto de congelación.
link-antifreeze-wrong-kind--sample-foams = Los líquidos de limpiaparabrisas y de motor hacen espuma.
link-antifreeze-wrong-kind--label-disagrees = El bidón dice lo que se vertió.
link-antifreeze-wrong-kind--other-fluid-added = Dos tipos se juntan cuando alguien repone con lo que tiene a mano.
link-antifreeze-wrong-kind--sample-smells = Huele a lo que es.
link-antifreeze-wrong-kind--wet-or-crusted-fittings = Algunos tipos se filtran por roscas que retienen otros.
link-antifreeze-wrong-kind--aggressive-fluid = Los inhibidores de dos tipos pueden estropearse entre sí.
link-antifreeze-degraded--aggressive-fluid = El glicol viejo se acidifica y su inhibidor está gastado.
link-antifreeze-degraded--sample-smells = Los productos de degradación huelen dulces o agrios.
link-antifreeze-degraded--sample-foams = El inhibidor gastado y los sólidos finos mantienen la espuma.
link-antifreeze-degraded--black-magnetic-dust = Sin su inhibidor el fluido ataca el acero, y lo atacado se deposita como polvo negro.
link-weak-freeze-protection--freeze-protection = La muestra se congela demasiado cerca de la temperatura de salida más baja.
link-weak-freeze-protection--ice-in-exchanger = El lugar más frío del lazo es la pared del intercambiador.
link-ice-in-exchanger--low-flow = El hielo pastoso estrecha los pasos mientras dura.
link-ice-in-exchanger--flow-recovers-after-rest = El hielo pastoso se derrite cuando la unidad reposa.
link-ice-in-exchanger--freeze-guard-trip = El fluido más lento y más frío dispara la protección.
link-ice-in-exchanger--worse-when-cold = Ocurre cuando el lazo está más frío.
link-ice-in-exchanger--exchanger-drop-for-flow = El hielo pastoso estrecha los pasos, así que pierden más presión al mismo caudal.
link-ice-in-exchanger--exchanger-takes-the-head = El hielo estrecha el intercambiador como la suciedad.
link-thick-fluid--low-flow = Con la misma bomba, un fluido más espeso circula menos.
link-thick-fluid--cold-film = Por debajo del cambio de régimen, la película junto a la pared aísla.
link-thick-fluid--ground-side-weak = Un lazo laminar parece un lazo corto.
link-thick-fluid--improves-when-warm = La viscosidad baja rápido con la temperatura; una restricción permanece.
link-thick-fluid--worse-when-cold = El frío lo espesa.
link-thick-fluid--computed-flow-short = Calculada con el fluido de la muestra, la misma bomba mueve menos.
link-ground-side-weak--freeze-protection = Un lazo que trabaja más frío necesita un punto de congelación más bajo que el previsto para su fluido.

## Checks

check-freeze-point-sample = Punto de congelación con refractómetro
    .how = Tomar una muestra, dejarla llegar a temperatura ambiente, leerla en la escala de este fluido. Válido solo para glicoles.
check-specific-gravity-sample = Concentración con densímetro
    .how = Tomar una probeta llena, leer juntas la densidad y la temperatura. Es el método para mezclas de alcohol.
check-two-samples = Dos muestras con un cuarto de hora entre ambas
    .how = Bombas en marcha. Tomar muestra en la ida, esperar quince minutos, tomar muestra en el retorno. Iguales significa mezclado.
check-two-samples-by-gravity = Dos muestras con densímetro, con un cuarto de hora entre ambas
    .how = Bombas en marcha. Leer densidad y temperatura de una muestra de ida, esperar quince minutos y hacer lo mismo en el retorno. Iguales significa mezclado.
check-gravity-and-refraction = Densidad y refracción de la misma muestra
    .how = Leer la misma muestra de ambas maneras. Si indican concentraciones distintas, no es el fluido que dice la etiqueta.
check-compute-film = Calcular el régimen de flujo en la tubería enterrada
    .how = A partir de fluido, temperatura, caudal y tubería, el programa calcula si el flujo es laminar.
check-read-fluid-label = Leer la etiqueta del fluido y preguntar qué se añadió
    .how = Leer la etiqueta en la unidad y cualquier bidón que haya quedado, y preguntar con qué se repuso.
check-warm-against-cold = Comparar el caudal en caliente y en frío
    .how = Leer caudal y temperatura del fluido ahora y otra vez cuando el lazo se haya calentado { AMOUNT("10 °F") } o más, por reposo o por marcha en refrigeración. O comparar con una lectura de la otra temporada.
check-flow-after-rest = Leer el caudal, reposar, leer de nuevo
    .how = Leer el caudal mientras la unidad calienta, pararla media hora con las bombas en marcha y leer de nuevo. El hielo se derrite, los residuos se quedan.
