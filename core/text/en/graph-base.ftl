# Texts of the rule graph: families, facts, tools, hazards, cautions and sources that the other files refer to


## Families

family-air = Air and flushing
family-pressure = Static pressure and charge
family-leaks = Leaks
family-tanks = Expansion tank and reservoir
family-pumps = Circulators
family-valves = Valves and piping
family-circuits = Circuits of the ground loop
family-debris = Debris and strainer
family-fluid = Antifreeze
family-water = Water quality, scale and corrosion
family-ground = Ground and loop size
family-unit = Heat pump, air side and controls
family-instruments = Instruments
family-ordinary = Ordinary behaviour

## Facts

fact-no-flush-record = No flush record exists
fact-never-flushed = The loop was never flushed
fact-flush-too-slow = Flush velocity stayed below the transport velocity
fact-flush-too-short = Flushing was shorter than the trade minimum
fact-cart-too-small = The cart could not reach the transport velocity in this loop
fact-circuits-flushed-singly = Each circuit was flushed by itself
fact-dead-head-failed-at-start-up = The dead-head drop at start-up was above the limit
fact-dead-head-passed-at-start-up = The dead-head drop at start-up was within the limit
fact-large-headers = Headers of nominal 3 in or larger
fact-heat-pump-not-isolated-in-flush = The heat pump was not valved off while the loop was flushed
fact-no-filter = No filter was used while flushing
fact-circulators-not-bled = Circulators were not bled before first start
fact-water-not-tested = The fill water was never tested
fact-well-water = Filled with well water
fact-surface-water = Filled with open water
fact-concentration-not-checked = Freeze point was not checked after mixing
fact-mixed-too-short = The charge was mixed for less than the trade minimum
fact-pipe-not-relaxed = Pipe was not held under pressure before the last charge
fact-charged-in-winter = The last charge was made with cold fluid
fact-charged-low = The pressure left at start-up was below the start-up band
fact-charged-high = The pressure left at start-up was above the start-up band
fact-first-month = Started less than a month ago
fact-first-year = Started less than a year ago
fact-older-than-five-years = Started more than five years ago
fact-heating-season = The visit is in the heating season
fact-cooling-season = The visit is in the cooling season
fact-sealed-flow-centre = Sealed flow centre without expansion tank
fact-sealed-with-tank = Sealed flow centre with expansion tank
fact-non-pressurised = Non-pressurised flow centre
fact-has-strainer = A strainer stands in the loop
fact-has-check-valves = Each circulator has a check valve
fact-glycol-fluid = The fluid is a glycol mix
fact-alcohol-fluid = The fluid is an alcohol mix
fact-water-only = The fluid is plain water
fact-two-circulators = Two or more circulators
fact-several-circuits = Two or more circuits
fact-horizontal-loop = The loop lies in trenches
fact-vertical-loop = The loop lies in bores
fact-since-start-up = Told: it has been so since start-up
fact-came-on-slowly = Told: it came on over months
fact-came-on-suddenly = Told: it came on from one day to the next
fact-complaint-recurs = The same complaint came back after an earlier visit
fact-after-work = Told: it began after somebody worked on it
fact-warm-loop = All water that was read is warm
fact-more-rise-than-one-gives = More rise was read than one circulator alone can give

## Tools

tool-dial-gauge = Gauge with port adapter
tool-differential-gauge = Differential gauge, or one gauge moved between two ports
tool-port-thermometer = Thermometer for the pressure/temperature ports
tool-clamp-thermometer = Clamp or strap-on thermometer
tool-flow-meter = Flow meter
tool-refractometer = Refractometer with the right scale
tool-hydrometer = Hydrometer and sample jar
tool-power-meter = Power meter or clamp ammeter
tool-refrigerant-gauges = Refrigerant gauges
tool-test-kit = Water test strips or drop kit
tool-laboratory = Sample bottle for a laboratory
tool-ruler = Ruler or tape
tool-flush-cart = Flush cart
tool-hand-tools = Hand tools
tool-sample-jar = Clear sample jar
tool-white-filter = White filter patch and funnel
tool-tyre-gauge = Air pressure gauge for the tank valve
tool-ice-bath = Cup of crushed ice and water
tool-second-instrument = A second instrument of the same kind
tool-calibration-liquid = Clean water or test liquid of known reading
tool-torch = Torch
tool-stethoscope = Stethoscope or screwdriver held to the ear
tool-bucket-and-watch = Bucket with marks and a watch

## Hazards

hazard-pressure = Fluid under pressure
hazard-electricity = Electric power
hazard-hot-surface = Hot surface
hazard-moving-parts = Fan or shaft that can start
hazard-loop-fluid = Antifreeze that is poisonous or flammable
hazard-refrigerant = Refrigerant under pressure
hazard-dead-ended-pump = Circulator running against a shut valve
hazard-wet-floor = Wet floor near electric parts

## Cautions

caution-port-under-pressure = Read the gauge first, stand to one side, wear goggles, and open the port slowly. Never loosen a plug or cap under pressure.
caution-relieve-before-opening = Close the valves on both sides and let the pressure down to zero through a hose before anything is opened.
caution-lock-out = Switch off, lock and tag the supply, and prove it dead before a cover comes off. Put the covers back before power returns.
caution-covers-on = Measure with covers on and insulated clamps. Beyond isolation this is work for a licensed electrician.
caution-hot-body = A circulator that runs dry can burn skin. Hold a thermometer to it before a hand.
caution-catch-the-sample = Gloves and goggles. Catch the sample, keep flames and switches away from alcohol mixes, and never pour it on the ground or into a drain.
caution-certified-only = Only certified hands open the refrigerant side, and only after flow has been proven. Some refrigerants burn: ventilate, no flame, rated tools.
caution-seconds-only = Keep the valve shut for seconds only; the pump heats the fluid it cannot move.
caution-dry-the-floor = Dry the floor and use a protected outlet before plugging anything in.
