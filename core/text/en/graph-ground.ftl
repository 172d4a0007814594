# Texts of the rule graph: the ground itself and the size of the loop


## Causes

cause-loop-too-short = Loop too short for the load
    .homeowner = There is too little pipe in the ground for the heat your home needs.
context-loop-too-short--first-month = It takes a season to show.
context-loop-too-short--since-start-up = A short loop is short from the first season on.
cause-ground-conducts-poorly = Poor grout or dry ground
    .homeowner = The ground around your pipes does not pass heat well.
context-ground-conducts-poorly--vertical-loop = Bores depend on their grout.
context-ground-conducts-poorly--horizontal-loop = Shallow ground dries out.
context-ground-conducts-poorly--since-start-up = Grout is so from the first year on.

## Mechanisms

mechanism-ground-side-weak = Ground side gives or takes too little heat
    .homeowner = The ground side gives too little heat.
mechanism-capacity-short = System delivers less than it should
    .homeowner = The system delivers less than it should.

## Findings

finding-entering-water = Entering water outside the range for the season
    .homeowner = The fluid arrives too cold in winter or too warm in summer.
finding-water-colder-than-it-should = Unit shows loop water colder than in other years, or hotter in summer
    .homeowner = The loop runs colder than it used to.
finding-ewt-drifts-through-season = Entering water drifts further every week of the season
    .homeowner = The loop gets colder week by week.
finding-ewt-recovers-after-rest = Entering water recovers clearly after hours of rest
    .homeowner = The loop recovers when the heat pump rests.
finding-ewt-falls-fast = Entering water falls within minutes of starting and rises as fast after
    .homeowner = The loop gets cold within minutes of starting.
finding-ewt-creeps-when-idle = Pipe at the unit warms or cools oddly when idle
    .homeowner = The pipe warms up when it should rest.
finding-loop-length-short = Loop length for this load is below the usual range
    .homeowner = By calculation there is little pipe for this load.
finding-temperature-split = Temperature change of the fluid across the unit against what full flow gives
    .homeowner = How much the fluid cools in the heat pump.
finding-low-heat = House does not get warm, or not cool
    .homeowner = The house does not get warm enough.
finding-high-bill = Electric bill is high
    .homeowner = The electric bill is high.
finding-auxiliary-heat-often = Auxiliary heat runs often
    .homeowner = The back-up heater runs often.

## Links

link-loop-too-short--ground-side-weak = Each length of pipe must take more heat than the ground gives.
link-loop-too-short--ewt-drifts-through-season = The ground is drawn down further every week.
link-loop-too-short--ewt-recovers-after-rest = Rested ground comes back.
link-loop-too-short--loop-length-short = Length against load shows it.
link-loop-too-short--ewt-falls-fast = Too little pipe for the heat that is drawn cools quickly.
link-ground-conducts-poorly--ground-side-weak = Heat does not reach the pipe fast enough.
link-ground-conducts-poorly--ewt-falls-fast = The bore itself is drawn down within minutes and fills again as fast.
link-ground-conducts-poorly--ewt-recovers-after-rest = It comes back when it rests.
link-ground-conducts-poorly--ewt-drifts-through-season = Dry ground is drawn down over the season.
link-ground-side-weak--entering-water = The fluid comes back too cold in heating, too warm in cooling.
link-ground-side-weak--water-colder-than-it-should = The unit's display shows it.
link-ground-side-weak--freeze-guard-trip = Cold in, colder out.
link-ground-side-weak--high-pressure-trip = Warm in, warmer out.
link-ground-side-weak--capacity-short = Capacity falls with the source temperature.
link-ground-side-weak--cold-film = Colder fluid is thicker, and the flow turns laminar.
link-ground-side-weak--worse-when-cold = The coldest weather asks most of the ground.
link-ground-side-weak--low-flow-lockout = Cold, thick fluid moves less, down to the switch.
link-capacity-short--low-heat = What is not delivered is missed.
link-capacity-short--high-bill = It runs longer for the same heat.
link-capacity-short--auxiliary-heat-often = The back-up makes up for it.
link-capacity-short--unit-capacity = Measured on the load side, the heat is short.
link-capacity-short--air-temperature-change = Less heat in the same air.

## Checks

check-read-entering-leaving = Entering and leaving temperature
    .how = Unit running for ten minutes at least. Read both ports with the same thermometer, and the entering one again.
check-entering-water-log = Read the unit's own log of entering water
    .how = Look through the season: does it drift week by week, and does it come back after days of rest?
check-watch-first-minutes = Watch entering water through a start
    .how = From rest, note the entering temperature each minute for a quarter of an hour, then stop and watch it come back.
check-compute-loop-length = Compare loop length with load
    .how = From length, kind of loop and capacity the program compares with the usual range.
