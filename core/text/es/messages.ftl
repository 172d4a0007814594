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
error-store-cannot-open = No se puede abrir la base de datos. Compruebe que su carpeta existe y que se puede escribir en ella. ({ $detail })
error-store-newer = La base de datos la escribió un programa más nuevo: es de la versión { $found } y este programa conoce hasta la { $newest }. Actualice el programa; no se cambió nada.
error-store-migration = No se pudo poner al día la base de datos; no se cambió nada. Libere espacio en el disco, cierre otros programas que la tengan ocupada y empiece de nuevo. ({ $detail })
error-store-disk-full = El disco está lleno y esto no se guardó. Libere espacio e introdúzcalo de nuevo.
error-store-read-only = No se puede escribir en la carpeta y esto no se guardó. Elija otra carpeta o permita la escritura.
error-store-busy = Otro programa tiene ocupada la base de datos y esto no se guardó. Ciérrelo e inténtelo de nuevo.
error-store-damaged = Lo guardado está dañado. Restaure una copia de seguridad. ({ $detail })
error-store-failed = La base de datos falló y esto no se guardó. Introdúzcalo de nuevo; si vuelve a fallar, cierre el programa y ábralo otra vez. ({ $detail })
error-store-file = No se pudo leer o escribir un archivo. Compruebe que está ahí y que se puede escribir. ({ $detail })
error-clock-behind = El reloj de este dispositivo marca { $now }, pero la última anotación se hizo el { $last }. Ponga el reloj en hora antes de seguir: las fechas, los temporizadores y los informes dependen de él. No se perdió nada de lo anotado.
error-no-such-backup = Ya no existe la copia de seguridad número { $number }. Elija otra de la lista.
error-bad-learned-file = Este no es un archivo de recuentos aprendidos, o lo hizo otra versión. Elija otro archivo. ({ $detail })
error-own-learned-file = Estos recuentos se hicieron aquí y ya cuentan.
error-not-exported = La evidencia no se puede escribir como red. ({ $detail })
error-not-found = Este registro ya no existe. Vuelva a la lista.
error-no-such-field = No existe el campo "{ $field }".
error-no-such-finding = No existe el hallazgo "{ $finding }".
error-no-such-answer = "{ $found }" no es una respuesta a "{ $finding }".
error-no-such-name = { $field }: no existe "{ $found }".
error-not-accepted = { $field }: "{ $found }" no se acepta. Escriba uno de estos: { $accepted }.
error-out-of-range = { $field }: { $found } no puede ser. Debe ser { $accepted }.
error-bad-accuracy = { $field }: una exactitud de { $found } no puede ser. Debe ser { $accepted }.
error-text-too-long = { $field }: es demasiado largo. Escriba como máximo { $most } caracteres.
error-gate-not-met = El paso { $step } aún no está hecho. { $wanting } { $back } Para darlo por hecho de todos modos, anote por qué.
error-timer-not-run = El paso { $step } aún no está hecho. { $wanting } Para darlo por hecho de todos modos, anote por qué.
error-gate-not-read = El paso { $step } aún no está hecho. { $wanting } Para darlo por hecho de todos modos, anote por qué.
error-earlier-step-open = El paso { $step } aún no está hecho. Se apoya en algo que está por hacer: { $earlier } Hágalo antes u omítalo con un motivo. Para dar el paso { $step } por hecho de todos modos, anote por qué.
error-caution-not-acknowledged = El paso { $step } aún no está hecho. Confirme antes en él que ha leído esto: { $caution }
error-not-proven = La visita aún no está terminada. Para decir que está corregido y comprobado falta esto: { $open } Hágalo, elija otro resultado o elija este de todos modos; el informe dice entonces lo que falta.
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
error-report-not-written = El informe no se escribió. Elija otro nombre u otra carpeta; no quedó nada a medias. ({ $detail })
error-report-failed = No se pudo hacer el informe. ({ $detail })
error-report-not-opened = No se pudo abrir el informe. Ábralo desde su carpeta. ({ $detail })

# Photos and signatures.
photo-before = Como se encontró
photo-after = Como quedó
photo-other = Otra
signature-technician = Técnico
signature-customer = Cliente
signature-before-change = Dada antes de que se cambiara la visita. Si importa, que se firme de nuevo.
visit-is-signed = Firmado el { $signed }. Sitio y sistema quedan como se firmaron.
error-photo-format = Esto no es una imagen JPEG ni PNG. Elija otro archivo.
error-photo-too-large = La imagen es demasiado grande ({ $size }). Una foto tiene como máximo { $megabytes } MB y { $megapixels } millones de píxeles. Hágala de nuevo con menor resolución.
error-photo-damaged = No se puede leer la imagen. Hágala de nuevo. ({ $detail })
error-too-many-photos = La foto no se guardó: una visita tiene como máximo { $most } fotos. Quite antes una.
error-caption-too-long = El texto de la foto es demasiado largo. Escriba como máximo { $most } caracteres.
error-name-too-long = El nombre es demasiado largo. Escriba como máximo { $most } caracteres.
error-signature-no-name = Escriba el nombre en letra de imprenta junto a la firma.
error-signature-empty = No se dibujó nada. Firme en el recuadro.
error-signature-too-much = Hay demasiados trazos. Borre el recuadro y firme de nuevo.
error-signature-damaged = No se pudo leer la firma. Borre el recuadro y firme de nuevo.
error-visit-signed = Esta visita se firmó el { $signed }, así que su sitio y su sistema quedan como se firmaron. Quite antes las firmas o empiece otra visita en este sitio.
error-report-no-room = El informe no se escribió: no queda espacio en { $folder }. Libere espacio o elija otro lugar; no quedó nada a medias.
error-report-read-only = El informe no se escribió: no se puede escribir en la carpeta { $folder }. Elija otra carpeta; no quedó nada a medias.
