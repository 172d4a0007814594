# Texts of the rule graph: expansion tank and vented reservoir


## Causes

cause-expansion-tank-waterlogged = Vaso de expansión inundado
    .homeowner = El vaso que estabiliza la presión ha perdido su aire.
context-expansion-tank-waterlogged--sealed-with-tank = Hay un vaso, así que puede fallar.
context-expansion-tank-waterlogged--older-than-five-years = Las membranas pierden con los años.
context-expansion-tank-waterlogged--came-on-slowly = El aire sale de un vaso a lo largo de meses.
context-expansion-tank-waterlogged--since-start-up = El aire sale de un vaso a lo largo de meses.
cause-expansion-tank-pre-charge-wrong = Precarga del vaso de expansión incorrecta
    .homeowner = El vaso que estabiliza la presión se ajustó mal.
context-expansion-tank-pre-charge-wrong--sealed-with-tank = Hay un vaso, así que puede fallar.
context-expansion-tank-pre-charge-wrong--first-year = Nunca se ajustó a este lazo.
context-expansion-tank-pre-charge-wrong--since-start-up = Una precarga que nadie ajusta está mal desde el primer día.
context-expansion-tank-pre-charge-wrong--after-work = Un vaso nuevo viene con la precarga de fábrica.
cause-reservoir-low = Depósito venteado bajo
    .homeowner = Al depósito de su sistema le falta fluido.
context-reservoir-low--non-pressurised = Hay un depósito, así que puede quedarse bajo o aspirar aire.
cause-reservoir-draws-air = El depósito aspira aire hacia el lazo
    .homeowner = El depósito deja entrar aire en la tubería.
context-reservoir-draws-air--non-pressurised = Hay un depósito, así que puede quedarse bajo o aspirar aire.
context-reservoir-draws-air--complaint-recurs = El aire que se aspira vuelve tras cada purga.

## Mechanisms

mechanism-no-cushion = El vaso de expansión no amortigua
    .homeowner = La presión no tiene nada que la amortigüe.

## Findings

finding-tank-pre-charge = Precarga del vaso con el lado del fluido a cero
    .homeowner = La presión de aire en el vaso.
finding-tank-rings-full = El vaso suena lleno al golpearlo por todas partes
    .homeowner = El vaso está lleno de fluido.
finding-tank-valve-gives-fluid = Sale fluido por la válvula de aire del vaso
    .homeowner = Salió fluido por la válvula de aire del vaso.
finding-gauge-swings-widely = El manómetro varía mucho entre arranque y parada o entre día y noche
    .homeowner = La presión da saltos hacia arriba y hacia abajo.
finding-reservoir-level = Nivel del depósito respecto a la marca de puesta en marcha
    .homeowner = El nivel de fluido en el depósito.
finding-air-drawn-at-reservoir = Burbujas o un remolino en el depósito en marcha
    .homeowner = Entra aire por el depósito.

## Links

link-expansion-tank-waterlogged--no-cushion = Sin aire no hay nada que ceda.
link-expansion-tank-waterlogged--tank-rings-full = Lleno de fluido, suena sordo por todas partes.
link-expansion-tank-waterlogged--tank-valve-gives-fluid = El fluido que está tras la membrana sale por la válvula de aire.
link-expansion-tank-waterlogged--tank-pre-charge = El aire se ha ido.
link-expansion-tank-pre-charge-wrong--no-cushion = Ajustado demasiado alto o demasiado bajo, el vaso no interviene en nada.
link-expansion-tank-pre-charge-wrong--tank-pre-charge = El manómetro en la válvula de aire lo muestra.
link-expansion-tank-pre-charge-wrong--tank-rings-full = Con poco gas detrás, el vaso se llena.
link-no-cushion--gauge-swings-widely = Cada cambio de volumen se convierte en un salto de presión.
link-no-cushion--over-pressure = El calentamiento o el enfriamiento sube la presión sin nada que la absorba.
link-no-cushion--low-static-pressure = Y de nuevo hacia abajo cuando la válvula de alivio se ha abierto.
link-no-cushion--relief-valve-weeps = En el pico cede la válvula de alivio.
link-reservoir-low--reservoir-level = El nivel está por debajo de la marca.
link-reservoir-low--starved-suction = El nivel es toda la succión que tiene la bomba.
link-reservoir-low--air-in-fluid = Un nivel bajo forma un remolino.
link-reservoir-low--air-drawn-at-reservoir = Con el nivel bajo el retorno forma un embudo de aire.
link-reservoir-draws-air--air-in-fluid = Cada minuto de marcha trae más.
link-reservoir-draws-air--air-drawn-at-reservoir = Se ve a través de la pared o por la tapa.
link-reservoir-draws-air--came-back-after-purge = Una purga saca el aire y deja el camino por el que entra.
link-reservoir-draws-air--starved-suction = El aire en la tubería de entrada quita la succión.

## Checks

check-tank-pre-charge-check = Precarga con el lado del fluido a cero
    .how = Aislar el vaso, aliviar su lado del fluido hasta cero y leer la válvula de aire. Que salga aire o fluido por la válvula dice el resto.
check-tap-the-tank = Golpear el vaso de arriba abajo
    .how = El extremo con aire suena hueco, el extremo con fluido suena sordo.
check-watch-start-and-stop = Observar el manómetro en el arranque y la parada
    .how = Seguir el manómetro durante un arranque, una marcha y una parada.
check-read-reservoir-level = Leer el nivel del depósito
    .how = Bombas paradas. Medir el nivel respecto a la marca de puesta en marcha.
check-watch-reservoir = Observar el depósito en marcha
    .how = Bombas en marcha. Buscar burbujas que vuelven y un remolino en la salida.
