# Texts of the rule graph: water quality, scale, iron, corrosion and growth


## Causes

cause-scaling-fill-water = El agua de llenado deja incrustación
    .homeowner = El agua que se usó para el llenado deja cal en la bomba de calor.
context-scaling-fill-water--water-not-tested = Solo un análisis muestra lo dura que es el agua.
context-scaling-fill-water--well-water = El agua de pozo suele ser dura.
context-scaling-fill-water--older-than-five-years = La incrustación lleva años.
context-scaling-fill-water--first-year = En un lazo cerrado, un llenado de agua contiene poca cal.
context-scaling-fill-water--came-on-slowly = Crece a lo largo de meses y años.
context-scaling-fill-water--since-start-up = La incrustación lleva años.
cause-iron-fill-water = El agua de llenado lleva hierro
    .homeowner = El agua que se usó para el llenado lleva hierro, que se deposita como lodo de color óxido.
context-iron-fill-water--well-water = El hierro viene con el agua de pozo.
context-iron-fill-water--water-not-tested = Solo un análisis muestra el hierro.
context-iron-fill-water--came-on-slowly = Se deposita a lo largo de meses.
context-iron-fill-water--since-start-up = El hierro tarda meses en precipitar y depositarse.
cause-corrosion = Corrosión en el lazo
    .homeowner = Las partes de metal de su sistema se están oxidando por dentro.
context-corrosion--older-than-five-years = Lleva años.
context-corrosion--first-year = Rara vez se nota en el primer año.
context-corrosion--alcohol-fluid = Las mezclas de alcohol sin inhibidor atacan el hierro.
context-corrosion--water-only = El agua sola no tiene inhibidor.
context-corrosion--water-not-tested = Las sales del agua la aceleran.
context-corrosion--came-on-slowly = Lleva años.
context-corrosion--since-start-up = El óxido lleva años.
cause-biological-fouling = Crecimiento biológico en el lazo
    .homeowner = En el fluido de su tubería crecen bacterias que dejan una baba.
context-biological-fouling--surface-water = El agua superficial trae vida consigo.
context-biological-fouling--well-water = Las ferrobacterias vienen con el agua de pozo.
context-biological-fouling--older-than-five-years = El crecimiento lleva tiempo.
context-biological-fouling--water-not-tested = Nadie lo buscó.
context-biological-fouling--glycol-fluid = El glicol débil alimenta a las bacterias.
context-biological-fouling--came-on-slowly = Va creciendo.
context-biological-fouling--since-start-up = El crecimiento lleva tiempo.
context-biological-fouling--first-year = Los organismos tardan más de una temporada en notarse.

## Mechanisms

mechanism-exchanger-fouled = Película o incrustación en la superficie del intercambiador
    .homeowner = Una capa sobre el intercambiador de calor impide el paso del calor.
mechanism-aggressive-fluid = El fluido ataca el metal
    .homeowner = El fluido ataca las partes de metal.

## Findings

finding-scaling-water = El agua de llenado tiende a dejar incrustación
    .homeowner = El agua de llenado es dura.
finding-corrosive-water = El agua de llenado es corrosiva o salina
    .homeowner = El agua de llenado ataca el metal.
finding-iron-in-water = Hierro o manganeso en el agua del lazo o de llenado
    .homeowner = Hay hierro en el agua.
finding-fluid-ph = pH del fluido del lazo
    .homeowner = Si el fluido se ha vuelto ácido.
finding-scale-on-parts = Costra blanca dentro de tomas y accesorios
    .homeowner = Hay cal dentro de las piezas de unión.
finding-orange-mud = Lodo o limo anaranjado en la muestra o en el filtro de malla
    .homeowner = Se encontró lodo de color óxido.
finding-slime-on-screen = Limo en la malla o en el frasco
    .homeowner = Se encontró una baba en la tubería.
finding-lime-in-house = Cal en grifos y hervidor
    .homeowner = El agua deja cal en la casa.
finding-orange-stains-in-house = Manchas anaranjadas en lavabos y ropa
    .homeowner = El agua deja manchas anaranjadas en la casa.
finding-black-magnetic-dust = Polvo negro que atrae un imán
    .homeowner = Se encontró polvo negro de metal oxidado.
finding-bacteria-test-positive = Prueba de bacterias positiva
    .homeowner = El fluido contiene bacterias.
finding-better-after-acid-wash = La aproximación es normal tras un lavado ácido
    .homeowner = El intercambiador de calor vuelve a trabajar bien tras la limpieza.
finding-approach = Aproximación entre fluido y refrigerante
    .homeowner = Cómo de bien pasa el calor entre el fluido y la bomba de calor.

## Links

link-scaling-fill-water--exchanger-fouled = El carbonato se deposita en la pared caliente.
link-scaling-fill-water--scaling-water = El índice de saturación del agua lo muestra.
link-scaling-fill-water--scale-on-parts = Lo que se deposita en la pared se deposita también en las tomas.
link-scaling-fill-water--lime-in-house = La misma agua corre en la casa.
link-scaling-fill-water--better-after-acid-wash = El ácido disuelve el carbonato.
link-iron-fill-water--exchanger-fouled = El hierro precipita donde le llega aire o calor.
link-iron-fill-water--iron-in-water = La tira reactiva lo muestra.
link-iron-fill-water--orange-mud = El hierro que ha tocado el aire es anaranjado.
link-iron-fill-water--orange-stains-in-house = La misma agua corre en la casa.
link-iron-fill-water--strainer-restriction = El lodo llena la malla.
link-iron-fill-water--exchanger-blocked = El lodo llena los pasos estrechos.
link-corrosion--aggressive-fluid = El metal se oxida porque el fluido lo permite.
link-corrosion--black-magnetic-dust = La oxidación sin aire forma magnetita negra.
link-corrosion--corrosive-water = El agua salina o blanda ataca.
link-corrosion--loose-solids = Las escamas y el polvo viajan.
link-corrosion--exchanger-fouled = El polvo se deposita en la pared.
link-biological-fouling--exchanger-fouled = Un limo fino aísla bien.
link-biological-fouling--slime-on-screen = El limo se asienta donde el flujo es lento y en la malla.
link-biological-fouling--sample-smells = El crecimiento huele a podrido o a huevos podridos.
link-biological-fouling--strainer-restriction = El limo cierra una malla.
link-biological-fouling--bacteria-test-positive = Un cultivo o una prueba rápida lo muestra.
link-biological-fouling--fluid-ph = Las bacterias convierten el glicol en ácido.
link-biological-fouling--sample-discoloured = El crecimiento enturbia y oscurece el fluido.
link-biological-fouling--strainer-loads-again = El limo vuelve a crecer en una malla limpia.
link-aggressive-fluid--fluid-ph = Un fluido ácido ha perdido su inhibidor.
link-aggressive-fluid--sample-discoloured = El metal disuelto vuelve marrón el fluido.
link-aggressive-fluid--iron-in-water = Contiene hierro de las propias piezas del lazo.
link-exchanger-fouled--approach = Una capa en la pared necesita más diferencia de temperatura.
link-exchanger-fouled--capacity-short = El refrigerante trabaja a una temperatura peor.
link-exchanger-fouled--exchanger-drop-for-flow = Una capa gruesa estrecha el paso.
link-exchanger-fouled--high-pressure-trip = En refrigeración, el condensador no puede ceder su calor.
link-exchanger-fouled--freeze-guard-trip = En calefacción, el refrigerante se enfría más de lo que corresponde al fluido.
link-exchanger-fouled--exchanger-takes-the-head = Una capa gruesa estrecha los canales.

## Checks

check-test-fill-water = Analizar el agua de llenado
    .how = Tiras o kit de gotas con el agua con que se llenó el lazo: pH, dureza, alcalinidad, sólidos disueltos, cloruros, hierro.
check-test-loop-fluid = pH y hierro del fluido del lazo
    .how = Tomar una muestra y leer enseguida pH y hierro.
check-look-inside-ports = Mirar dentro de una toma
    .how = Corriente cortada y bloqueada, tramo sin presión. Abrir una toma y buscar costra, lodo y limo.
check-magnet-in-sample = Imán y filtro blanco
    .how = Filtrar una muestra y acercar un imán a lo que queda.
check-bacteria-test = Prueba de bacterias
    .how = Llenar un frasco estéril para el laboratorio o usar una prueba rápida.
check-acid-wash-trial = Lavar el intercambiador y leer de nuevo la aproximación
    .how = Unidad aislada del lazo. Circular solo por el intercambiador el desincrustante que permitan las instrucciones de la unidad, enjuagar y leer de nuevo. Guantes, gafas, ventilación.
