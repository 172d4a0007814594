# Texts of the rule graph: leaks indoors and in the ground


## Causes

cause-leak-indoors = Fuga en el interior
    .homeowner = El fluido se escapa poco a poco por una unión dentro de la casa.
context-leak-indoors--complaint-recurs = Reponer no cierra una fuga.
context-leak-indoors--came-on-slowly = Un goteo tarda meses en notarse en el manómetro.
context-leak-indoors--since-start-up = Las fugas presentes en la puesta en marcha se hallaron casi siempre en la prueba.
cause-leak-in-ground = Fuga en el terreno
    .homeowner = El fluido se escapa de la tubería enterrada.
context-leak-in-ground--complaint-recurs = Reponer no cierra una fuga.
context-leak-in-ground--horizontal-loop = La tubería en zanja sufre daños por excavaciones.
context-leak-in-ground--first-year = Una mala fusión se nota pronto.
context-leak-in-ground--came-on-slowly = Una unión que rezuma tarda meses en notarse en el manómetro.
context-leak-in-ground--since-start-up = Las fugas presentes en la puesta en marcha se hallaron casi siempre en la prueba.

## Mechanisms

mechanism-fluid-loss = Se pierde fluido
    .homeowner = Se está perdiendo fluido.

## Findings

finding-fluid-lost = El fluido añadido supera lo que puede admitir la relajación
    .homeowner = Se añadió más fluido del que pudo admitir la tubería.
finding-topped-up-often = Se ha repuesto una y otra vez
    .homeowner = Se ha repuesto fluido varias veces.
finding-wet-or-crusted-fittings = Unión, brida de bomba o suelo mojados o con costra
    .homeowner = Una unión está mojada o tiene costra.
finding-loss-with-building-isolated = El lado enterrado, por sí solo, pierde presión de forma constante
    .homeowner = La tubería enterrada, por sí sola, pierde presión.
finding-loss-indoors-alone = El lado interior, por sí solo, pierde presión de forma constante
    .homeowner = La parte que está dentro de la casa, por sí sola, pierde presión.
finding-ground-wet-over-loop = Zona húmeda o hundida sobre el cabezal o la zanja
    .homeowner = El suelo sobre la tubería está mojado.
finding-one-circuit-loses = Un circuito pierde presión, los demás la mantienen
    .homeowner = Uno de los circuitos enterrados pierde presión.

## Links

link-leak-indoors--fluid-loss = Lo que gotea se pierde.
link-leak-indoors--wet-or-crusted-fittings = La mayoría de las fugas interiores dejan una gota o una costra.
link-leak-indoors--loss-indoors-alone = Aislado del terreno, el lado interior sigue cayendo.
link-leak-in-ground--fluid-loss = Lo que se filtra al terreno se pierde.
link-leak-in-ground--loss-with-building-isolated = Aislado del edificio, el lado enterrado sigue cayendo.
link-leak-in-ground--one-circuit-loses = Probados uno a uno, un circuito cae.
link-leak-in-ground--ground-wet-over-loop = Una fuga grande cerca de la superficie se ve.
link-fluid-loss--static-pressure-trend = Una fuga quita lo mismo cada día; la relajación, menos cada día.
link-fluid-loss--pressure-unexplained = Se ha ido más de lo que explican la tubería y la temporada.
link-fluid-loss--low-static-pressure = La presión se va con el fluido.
link-fluid-loss--fluid-lost = Lo que se añadió se suma.
link-fluid-loss--topped-up-often = Alguien lo repone una y otra vez.
link-fluid-loss--reservoir-level = En un depósito venteado, el nivel es el manómetro.
link-fluid-loss--air-in-fluid = Lo que se pierde lo sustituye el aire en los puntos altos cuando ya no hay presión.
link-fluid-loss--pressure-gone = Un lazo que pierde fluido acaba en nada, se cargase a lo que se cargase.
link-fluid-loss--gauge-lower-than-before = El fluido que se fue se lleva su presión.
link-fluid-loss--air-drawn-at-reservoir = Un nivel que ha bajado deja que la salida aspire aire.

## Checks

check-look-for-leaks = Buscar uniones mojadas o con costra
    .how = Linterna y papel seco en cada unión, brida de bomba, vástago de válvula y manguera, y en el suelo debajo.
check-isolate-and-watch = Aislar el edificio y observar ambos lados
    .how = Unidad parada. Aislar el lado enterrado del edificio y poner un manómetro en cada uno. Una tubería recién cargada se relaja un día o más: solo cuenta una caída constante.
check-top-up-record = Preguntar qué se ha añadido desde entonces
    .how = Preguntar al propietario y a la oficina cuánto se añadió y cuándo. El programa lo compara con lo que pudo admitir la tubería.
check-walk-the-loop = Recorrer el cabezal y las zanjas
    .how = Buscar suelo mojado, hundido o más verde, y excavaciones recientes.
check-test-each-circuit = Prueba de presión circuito por circuito
    .how = Con agua o con el fluido del lazo, nunca con aire. Acondicionar primero la tubería; luego mantener cada circuito a presión y comparar. Mantenerse apartado de tapas y tapones.
