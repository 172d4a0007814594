# Texts of the rule graph: the call itself


## Mechanisms

mechanism-noticed-air-and-leaks = Air or a leak is noticed
    .homeowner = Air or lost fluid makes itself noticed.
mechanism-noticed-pressure = A wrong pressure is noticed
    .homeowner = A wrong pressure makes itself noticed.
mechanism-noticed-pumping = Weak pumping is noticed
    .homeowner = Weak pumps make themselves noticed.
mechanism-noticed-valves-and-circuits = A closed or wrong way is noticed
    .homeowner = A closed or wrong way for the fluid makes itself noticed.
mechanism-noticed-dirt = Dirt or deposits are noticed
    .homeowner = Dirt or deposits make themselves noticed.
mechanism-noticed-fluid-and-ground = The wrong fluid or too little ground is noticed
    .homeowner = The wrong fluid or too little ground makes itself noticed.
mechanism-noticed-unit = Trouble of the unit is noticed
    .homeowner = Trouble of the unit makes itself noticed.
mechanism-noticed-without-fault = Something ordinary, or a false reading, worries somebody
    .homeowner = Something ordinary, or a false reading, caused worry.


## Findings

finding-call-made = Somebody called
    .homeowner = You called.


## Links

link-air-left-in-circuit--noticed-air-and-leaks = It is heard, and the heat falls short.
link-flush-too-weak--noticed-air-and-leaks = It is heard, and the heat falls short.
link-circulators-not-bled--noticed-air-and-leaks = It is heard, and the heat falls short.
link-leak-indoors--noticed-air-and-leaks = The gauge sinks or something drips.
link-leak-in-ground--noticed-air-and-leaks = The gauge sinks or something drips.
link-charge-left-too-low--noticed-pressure = The gauge, a humming pump or a weeping valve shows it.
link-pipe-never-relaxed--noticed-pressure = The gauge, a humming pump or a weeping valve shows it.
link-charged-cold-without-allowance--noticed-pressure = The gauge, a humming pump or a weeping valve shows it.
link-over-pressurised--noticed-pressure = The gauge, a humming pump or a weeping valve shows it.
link-expansion-tank-waterlogged--noticed-pressure = The gauge swings or the level falls.
link-expansion-tank-pre-charge-wrong--noticed-pressure = The gauge swings or the level falls.
link-reservoir-low--noticed-pressure = The gauge swings or the level falls.
link-reservoir-draws-air--noticed-pressure = The gauge swings or the level falls.
link-circulator-too-small--noticed-pumping = The unit stops or heats too little.
link-circulator-wrong-speed--noticed-pumping = The unit stops or heats too little.
link-one-circulator-dead--noticed-pumping = The unit stops or heats too little.
link-circulator-worn--noticed-pumping = The unit stops or heats too little.
link-circulators-opposed--noticed-pumping = The unit stops or heats too little.
link-check-valve-stuck-shut--noticed-pumping = The unit stops or heats too little.
link-check-valve-missing--noticed-pumping = The unit stops or heats too little.
link-three-way-valve-mis-set--noticed-valves-and-circuits = With the way closed or wrong the unit stops or heats too little.
link-isolation-valve-part-closed--noticed-valves-and-circuits = With the way closed or wrong the unit stops or heats too little.
link-supply-return-crossed--noticed-valves-and-circuits = With the way closed or wrong the unit stops or heats too little.
link-circuit-valved-off--noticed-valves-and-circuits = With part of the loop out of use the water runs too cold or too warm.
link-circuit-kinked--noticed-valves-and-circuits = With part of the loop out of use the water runs too cold or too warm.
link-circuit-air-locked--noticed-valves-and-circuits = With part of the loop out of use the water runs too cold or too warm.
link-circuits-unbalanced--noticed-valves-and-circuits = With part of the loop out of use the water runs too cold or too warm.
link-debris-left-in-loop--noticed-dirt = Flow falls until the unit stops.
link-strainer-loaded--noticed-dirt = Flow falls until the unit stops.
link-exchanger-loaded--noticed-dirt = Flow falls until the unit stops.
link-unit-not-isolated-in-flush--noticed-dirt = Flow falls until the unit stops.
link-scaling-fill-water--noticed-dirt = The unit gives less and costs more, year by year.
link-iron-fill-water--noticed-dirt = The unit gives less and costs more, year by year.
link-corrosion--noticed-dirt = The unit gives less and costs more, year by year.
link-biological-fouling--noticed-dirt = The unit gives less and costs more, year by year.
link-antifreeze-too-weak--noticed-fluid-and-ground = In the cold the unit trips or heats too little.
link-antifreeze-too-strong--noticed-fluid-and-ground = In the cold the unit trips or heats too little.
link-antifreeze-unmixed--noticed-fluid-and-ground = In the cold the unit trips or heats too little.
link-antifreeze-wrong-kind--noticed-fluid-and-ground = In the cold the unit trips or heats too little.
link-antifreeze-degraded--noticed-fluid-and-ground = In the cold the unit trips or heats too little.
link-loop-too-short--noticed-fluid-and-ground = Late in the season the house stays cold or the auxiliary heat runs.
link-ground-conducts-poorly--noticed-fluid-and-ground = Late in the season the house stays cold or the auxiliary heat runs.
link-refrigerant-undercharge--noticed-unit = The unit stops or the rooms stay cold.
link-expansion-device-fault--noticed-unit = The unit stops or the rooms stay cold.
link-compressor-or-reversing-valve-weak--noticed-unit = The unit stops or the rooms stay cold.
link-air-filter-or-coil-dirty--noticed-unit = The unit stops or the rooms stay cold.
link-flow-switch-or-sensor-fault--noticed-unit = The unit stops or the rooms stay cold.
link-control-fault--noticed-unit = The unit stops or the rooms stay cold.
link-ordinary-relaxation--noticed-without-fault = Whoever does not know that it is ordinary may call about it.
link-seasonal-swing--noticed-without-fault = Whoever does not know that it is ordinary may call about it.
link-dial-gauge-lies--noticed-without-fault = Whoever reads it at home believes it and may call.
link-unit-display-lies--noticed-without-fault = Whoever reads it at home believes it and may call.
link-noticed-air-and-leaks--call-made = Noise, a sinking gauge or a wet floor makes people call.
link-noticed-pressure--call-made = A gauge that looks wrong or a noisy pump makes people call.
link-noticed-pumping--call-made = A unit that stops makes people call.
link-noticed-valves-and-circuits--call-made = A unit that stops or heats too little makes people call.
link-noticed-dirt--call-made = A unit that gives less and less makes people call.
link-noticed-fluid-and-ground--call-made = Trips and a cold house make people call.
link-noticed-unit--call-made = A house that is not kept warm makes people call.
link-noticed-without-fault--call-made = A worry is a reason to call too.
