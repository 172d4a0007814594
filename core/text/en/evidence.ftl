# How readings were judged, and what could not be used.

why-working-band = The gauge at rest is compared with the least pressure that a closed loop should keep in every season.
why-tight-loop-band = A tight loop charged as recorded would show this today: the pipe relaxes with time and grows with warmth.
why-suction-reserve = The circulator needs this much at its suction; altitude and the vapour of warm fluid are counted in.
why-flow-by-meter = Flow by the meter, compared with the flow that the unit needs.
why-flow-by-drop = Flow from the exchanger's pressure drop on its own curve, corrected for the fluid, compared with the flow that the unit needs.
why-flow-by-curve = Flow at which the circulators give the measured rise, their curve set by the shut-off test, compared with the flow that the unit needs.
why-flow-by-heat = Flow that carries the measured heat at the measured change of the water, compared with the flow that the unit needs.
why-rated-split = At rated heat and needed flow the water would change by this much.
why-rise-by-curve = The rise is compared with what the published curves give at the needed flow: a restriction lifts it, weak circulators lower it.
why-shut-off-by-curve = With the discharge shut the rise should match the start of the published curve; circulators in series add.
why-power-by-plate = The electric input is compared with that on the nameplates.
why-body-over-fluid = A wet-rotor circulator is cooled by its fluid and stays within some tens of degrees of it.
why-wanted-freeze-point = The freeze point is compared with the one that is asked for.
why-freeze-margin = The fluid should freeze well below the coldest water that leaves the unit.
why-two-samples = Samples of a mixed loop freeze at the same temperature.
why-gravity-of-kind = The recorded fluid with this freeze point would have this specific gravity.

input-least-pressure = Least pressure
input-charge-pressure = Pressure at the charge
input-charge-temperature = Temperature at the charge
input-time-since-charge = Time since the charge
input-loop-temperature = Mean temperature of the loop
input-atmosphere = Air pressure at the site
input-exchanger-drop = Pressure drop across the exchanger
input-fluid-temperature = Temperature of the fluid
input-antifreeze-by-volume = Antifreeze by volume
input-heat-moved = Heat between unit and loop
input-water-change = Change of the water across the unit
input-needed-flow = Flow the unit needs
input-entering-water = Entering water
input-leaving-water = Leaving water
input-circulators = Circulators
input-circulator-rise = Rise across the circulators
input-shut-off-rise = Rise with the discharge shut
input-lowest-leaving-water = Lowest leaving water to expect
input-freeze-margin = Margin
input-freeze-point = Freeze point

unused-as-left = It shows the system as it was left, not as it was found.
unused-wrong-mode = It was taken in a state in which it says nothing.
unused-instrument-cannot-tell = This instrument cannot tell the strength of this fluid.
unused-needs-companion = Another reading or a record is needed beside it.
unused-not-asked = Nothing in the rules looks at it.
unused-unknown = The rules do not know what it refers to.

season-by-mode = The unit was heating or cooling when it was read.
season-by-entering-water = The entering water is that of one season only.
season-by-northern-date = By the date, the site taken to lie on the northern hemisphere.
