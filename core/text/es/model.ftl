# What the model assumes for want of a record, and how figures are vouched for.

assumption-sea-level = Se supone el lugar al nivel del mar.
assumption-capacity-unknown = No se conoce el tamaño de la bomba de calor; se suponen 4 toneladas de refrigeración, con mucha holgura.
assumption-efficiency-usual = No se conoce el rendimiento nominal; se supone uno habitual.
assumption-flow-by-capacity = No se conoce el caudal que pide la unidad; se suponen { AMOUNT("3 gpm") } por tonelada de refrigeración.
assumption-circuits-unknown = No se conocen los circuitos en el terreno.
assumption-volume-by-capacity = El volumen del lazo se estima a partir de la capacidad, con holgura.
assumption-headers-unknown = No se conocen los cabezales ni la tubería interior; se añade una parte de los circuitos.
assumption-pipe-ratio-usual = No se conoce la pared de la tubería; se supone SDR 11.
assumption-fluid-unknown = No se conoce el fluido.
assumption-strength-unknown = No se conoce la concentración del anticongelante; se supone alrededor del 20 % en volumen, con holgura.
assumption-flow-centre-unknown = No se conoce el tipo de centro de bombeo.
assumption-flow-centre-closed = El centro de bombeo no está registrado. La presión en reposo muestra que es cerrado.

authority-from-memory = { $source } (de memoria)
authority-common-practice = práctica común, sin fuente
authority-judgement = estimación propia
authority-memory-only = de memoria
