# What is said when something cannot be taken as it was given.
# path: where; found: the value there; accepted: what would be taken.

fault-too-large = El archivo es demasiado grande ({ $found }). Un archivo de visita tiene como máximo { $accepted }.
fault-empty = El archivo está vacío.
fault-truncated = El archivo termina en mitad del documento ({ $found }). Quedó cortado; cópielo de nuevo.
fault-not-json = El archivo no es un documento JSON; la lectura se detuvo en { $found }.
fault-not-a-visit-file = Esto no es un archivo de visita: "format" debe ser "{ $accepted }".
fault-newer-version = El archivo es de la versión { $found }; este programa lee hasta la versión { $accepted }. Actualice el programa.
fault-missing = { $path }: este campo es obligatorio.
fault-unknown = { $path }: no existe ningún campo con este nombre.
fault-wrong-type = { $path }: "{ $found }" es de un tipo incorrecto; escriba un valor de tipo { $accepted }.
fault-not-accepted = { $path }: "{ $found }" no se acepta. Escriba uno de estos: { $accepted }.
fault-not-accepted-alone = { $path }: "{ $found }" no se acepta, y no existe nada con un nombre parecido.
fault-out-of-range = { $path }: { $found } no puede ser; debe ser { $accepted }.
fault-malformed = { $path }: "{ $found }" no está bien escrito ({ $accepted }).
fault-internal = El programa falló con este archivo: { $found }. Le rogamos que lo notifique.

# Errors at the boundary.
error-store-cannot-open = No se puede abrir la base de datos. { $detail }. Compruebe que la carpeta existe y que se puede escribir en ella.
error-store-newer = { $detail }. Actualice el programa; no se cambió nada.
error-store-migration = { $detail }. No se cambió nada.
error-store-disk-full = El disco está lleno y esto no se guardó. Libere espacio e introdúzcalo de nuevo.
error-store-read-only = No se puede escribir en la carpeta y esto no se guardó. Elija otra carpeta o permita la escritura.
error-store-busy = Otro programa tiene ocupada la base de datos y esto no se guardó. Ciérrelo e inténtelo de nuevo.
error-store-damaged = Un registro guardado está dañado. { $detail }. Restaure una copia de seguridad.
error-store-failed = La base de datos falló y esto no se guardó. { $detail }
error-store-file = No se pudo leer o escribir un archivo. { $detail }. Compruebe que está ahí y que se puede escribir.
error-no-such-backup = Ya no existe la copia de seguridad número { $number }. Elija otra de la lista.
error-bad-learned-file = Este no es un archivo de recuentos aprendidos, o lo hizo otra versión: { $detail }
error-own-learned-file = Estos recuentos se hicieron aquí y ya cuentan.
error-not-exported = La evidencia no se puede escribir como red: { $detail }
error-not-found = Este registro ya no existe. { $detail }
error-no-such-field = No existe el campo "{ $field }".
error-no-such-finding = No existe el hallazgo "{ $finding }".
error-no-such-answer = "{ $found }" no es una respuesta a "{ $finding }".
error-no-such-name = { $field }: no existe "{ $found }".
error-not-accepted = { $field }: "{ $found }" no se acepta. Escriba uno de estos: { $accepted }.
error-out-of-range = { $field }: { $found } no puede ser. Debe ser { $accepted }.
error-bad-accuracy = { $field }: una exactitud de { $found } no puede ser. Debe ser { $accepted }.
error-no-value = { $field }: no se escribió nada.
error-not-a-number = { $field }: "{ $found }" no empieza por un número. Escriba por ejemplo 12.5.
error-ambiguous-number = { $field }: "{ $found }" se puede leer de dos maneras. Escríbalo sin la coma.
error-no-reading = { $field }: "{ $found }" no es un número que se pueda leer aquí.
error-no-unit = { $field }: "{ $found }" no tiene unidad. Escriba una de estas: { $accepted }.
error-wrong-unit = { $field }: "{ $found }" no es una unidad de esto. Escriba una de estas: { $accepted }.

unlikely-value = { $value } no es habitual aquí. ¿Es correcto? Se guarda como se escribió.
site-without-name = Lugar sin nombre
answer-yes = sí
answer-no = no
answer-low = bajo
answer-normal = normal
answer-high = alto
count = { $count }
error-report-not-written = El informe no se escribió. { $detail }
error-report-failed = No se pudo hacer el informe. { $detail }
error-report-not-opened = No se pudo abrir el informe. { $detail }

# Photos and signatures.
photo-before = Como se encontró
photo-after = Como quedó
photo-other = Otra
signature-technician = Técnico
signature-customer = Cliente
error-photo-format = Esto no es una imagen JPEG ni PNG. Elija otro archivo.
error-photo-too-large = La imagen es demasiado grande ({ $detail }). Una foto tiene como máximo { $megabytes } MB y { $megapixels } millones de píxeles. Hágala de nuevo con menor resolución.
error-photo-damaged = No se puede leer la imagen. { $detail }. Hágala de nuevo.
error-too-many-photos = La foto no se guardó: { $detail }. Quite antes una.
error-caption-too-long = El texto de la foto es demasiado largo. Escriba como máximo { $most } caracteres.
error-name-too-long = El nombre es demasiado largo. Escriba como máximo { $most } caracteres.
error-signature-no-name = Escriba el nombre en letra de imprenta junto a la firma.
error-signature-empty = No se dibujó nada. Firme en el recuadro.
error-signature-too-much = Hay demasiados trazos. Borre el recuadro y firme de nuevo.
error-signature-damaged = No se pudo leer la firma. Borre el recuadro y firme de nuevo.
error-report-no-room = El informe no se escribió: { $detail }. Libere espacio o elija otro lugar; no quedó nada a medias.
error-report-read-only = El informe no se escribió: { $detail }. Elija otra carpeta; no quedó nada a medias.
