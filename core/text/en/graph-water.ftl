# Texts of the rule graph: water quality, scale, iron, corrosion and growth


## Causes

cause-scaling-fill-water = Fill water leaves scale
    .homeowner = The water used for filling leaves lime in the heat pump.
context-scaling-fill-water--water-not-tested = Only a test shows how hard the water is.
context-scaling-fill-water--well-water = Well water is often hard.
context-scaling-fill-water--older-than-five-years = Scale takes years.
context-scaling-fill-water--first-year = In a closed loop a fill of water holds little lime.
context-scaling-fill-water--came-on-slowly = It grows over months and years.
context-scaling-fill-water--since-start-up = Scale takes years.
cause-iron-fill-water = Fill water carries iron
    .homeowner = The water used for filling carries iron that settles as rust-coloured mud.
context-iron-fill-water--well-water = Iron comes with well water.
context-iron-fill-water--water-not-tested = Only a test shows the iron.
context-iron-fill-water--came-on-slowly = It settles over months.
context-iron-fill-water--since-start-up = Iron takes months to come out and settle.
cause-corrosion = Corrosion in the loop
    .homeowner = Metal parts of your system are rusting from the inside.
context-corrosion--older-than-five-years = It takes years.
context-corrosion--first-year = It seldom shows in the first year.
context-corrosion--alcohol-fluid = Alcohol mixes without inhibitor attack iron.
context-corrosion--water-only = Plain water has no inhibitor.
context-corrosion--water-not-tested = Salts in the water speed it up.
context-corrosion--came-on-slowly = It takes years.
context-corrosion--since-start-up = Rust takes years.
cause-biological-fouling = Biological growth in the loop
    .homeowner = Bacteria grow in the loop fluid and leave slime.
context-biological-fouling--surface-water = Open water brings life with it.
context-biological-fouling--well-water = Iron bacteria come with well water.
context-biological-fouling--older-than-five-years = Growth takes time.
context-biological-fouling--water-not-tested = Nobody looked for it.
context-biological-fouling--glycol-fluid = Weak glycol feeds bacteria.
context-biological-fouling--came-on-slowly = It grows.
context-biological-fouling--since-start-up = Growth takes time.
context-biological-fouling--first-year = Growth takes more than a season to be felt.

## Mechanisms

mechanism-exchanger-fouled = Film or scale on the exchanger's surface
    .homeowner = A layer on the heat exchanger keeps the heat out.
mechanism-aggressive-fluid = Fluid attacks metal
    .homeowner = The fluid attacks metal parts.

## Findings

finding-scaling-water = Fill water tends to leave scale
    .homeowner = The fill water is hard.
finding-corrosive-water = Fill water is corrosive or salty
    .homeowner = The fill water attacks metal.
finding-iron-in-water = Iron or manganese in the loop or fill water
    .homeowner = There is iron in the water.
finding-fluid-ph = pH of the loop fluid
    .homeowner = Whether the fluid has turned acid.
finding-scale-on-parts = White crust inside ports and fittings
    .homeowner = Lime sits inside the fittings.
finding-orange-mud = Orange mud or slime in sample or strainer
    .homeowner = Rust-coloured mud was found.
finding-slime-on-screen = Slime on the screen or in the jar
    .homeowner = Slime was found in the loop.
finding-lime-in-house = Lime on taps and kettle
    .homeowner = Water leaves lime in the house.
finding-orange-stains-in-house = Orange stains in sinks and laundry
    .homeowner = Water leaves orange stains in the house.
finding-black-magnetic-dust = Black dust that a magnet pulls
    .homeowner = Black dust from rusting metal was found.
finding-bacteria-test-positive = Bacteria test positive
    .homeowner = The fluid contains bacteria.
finding-better-after-acid-wash = Approach is normal after an acid wash
    .homeowner = The heat exchanger works again after cleaning.
finding-approach = Approach between fluid and refrigerant
    .homeowner = How well heat passes between fluid and heat pump.

## Links

link-scaling-fill-water--exchanger-fouled = Carbonate settles on the warm wall.
link-scaling-fill-water--scaling-water = The saturation index of the water shows it.
link-scaling-fill-water--scale-on-parts = What settles on the wall settles in the ports too.
link-scaling-fill-water--lime-in-house = The same water runs in the house.
link-scaling-fill-water--better-after-acid-wash = Acid dissolves carbonate.
link-iron-fill-water--exchanger-fouled = Iron falls out where air or heat reaches it.
link-iron-fill-water--iron-in-water = The test strip shows it.
link-iron-fill-water--orange-mud = Iron that has met air is orange.
link-iron-fill-water--orange-stains-in-house = The same water runs in the house.
link-iron-fill-water--strainer-restriction = The mud fills the screen.
link-iron-fill-water--exchanger-blocked = The mud fills narrow passages.
link-corrosion--aggressive-fluid = Metal rusts because the fluid lets it.
link-corrosion--black-magnetic-dust = Rusting without air makes black magnetite.
link-corrosion--corrosive-water = Salty or soft water attacks.
link-corrosion--loose-solids = Flakes and dust travel.
link-corrosion--exchanger-fouled = Dust settles on the wall.
link-biological-fouling--exchanger-fouled = A thin slime insulates well.
link-biological-fouling--slime-on-screen = Slime sits where the flow is slow and on the screen.
link-biological-fouling--sample-smells = Growth smells of rot or rotten eggs.
link-biological-fouling--strainer-restriction = Slime closes a screen.
link-biological-fouling--bacteria-test-positive = A culture or a quick test shows it.
link-biological-fouling--fluid-ph = Bacteria turn glycol into acid.
link-biological-fouling--sample-discoloured = Growth clouds and darkens the fluid.
link-biological-fouling--strainer-loads-again = Slime grows back on a clean screen.
link-aggressive-fluid--fluid-ph = An acid fluid has lost its inhibitor.
link-aggressive-fluid--sample-discoloured = Dissolved metal browns the fluid.
link-aggressive-fluid--iron-in-water = Iron of the loop's own parts is in it.
link-exchanger-fouled--approach = A layer on the wall needs more temperature difference.
link-exchanger-fouled--capacity-short = The refrigerant works at a poorer temperature.
link-exchanger-fouled--exchanger-drop-for-flow = A thick layer narrows the passage.
link-exchanger-fouled--high-pressure-trip = In cooling the condenser cannot give its heat away.
link-exchanger-fouled--freeze-guard-trip = In heating the refrigerant gets colder than the fluid warrants.
link-exchanger-fouled--exchanger-takes-the-head = A thick layer narrows the channels.

## Checks

check-test-fill-water = Test the fill water
    .how = Strips or drop kit on the water that filled the loop: pH, hardness, alkalinity, dissolved solids, chloride, iron.
check-test-loop-fluid = pH and iron of the loop fluid
    .how = Draw a sample and read pH and iron at once.
check-look-inside-ports = Look inside a port
    .how = Power off and locked, section let down. Open a port and look for crust, mud and slime.
check-magnet-in-sample = Magnet and white filter
    .how = Filter a sample and hold a magnet to what stays.
check-bacteria-test = Bacteria test
    .how = Fill a sterile bottle for the laboratory or use a quick test.
check-acid-wash-trial = Wash the exchanger and read the approach again
    .how = Unit valved off from the loop. Circulate the descaler that the unit's instructions allow through the exchanger alone, rinse, and read again. Gloves, goggles, ventilation.
