# Texts of the rule graph: circulators, their size, speed, number and direction, and check valves


## Causes

cause-circulator-too-small = Circulator too small for the loop
    .homeowner = The pump is too small for the length of pipe it has to serve.
context-circulator-too-small--first-year = A pump that is too small is so from the first day.
context-circulator-too-small--since-start-up = A pump that is too small never moves enough.
context-circulator-too-small--older-than-five-years = A pump that is too small is so from the first season on.
cause-circulator-wrong-speed = Circulator set to the wrong speed
    .homeowner = The pump is set to run too slowly.
cause-one-circulator-dead = One of two circulators does not run
    .homeowner = One of the two pumps has stopped.
context-one-circulator-dead--two-circulators = There are two, and either can stop.
context-one-circulator-dead--older-than-five-years = Rotors and capacitors age.
context-one-circulator-dead--came-on-suddenly = A pump stops from one hour to the next.
context-one-circulator-dead--since-start-up = A pump that dies has mostly run before.
context-one-circulator-dead--more-rise-than-one-gives = One pump alone cannot give this rise.
cause-circulator-worn = Circulator worn, scored or seizing
    .homeowner = The pump is worn and no longer moves enough fluid.
context-circulator-worn--older-than-five-years = Bearings and impellers wear with the years.
context-circulator-worn--circulators-not-bled = Bearings that ran dry at start-up wear early.
context-circulator-worn--no-filter = Grit that was not filtered out goes through the bearings.
context-circulator-worn--first-month = A new pump is seldom worn.
context-circulator-worn--came-on-slowly = Wear takes its time.
context-circulator-worn--since-start-up = A pump that was never right is not worn yet.
context-circulator-worn--first-year = Bearings last longer than a year unless they ran dry.
cause-circulators-opposed = Circulators pump against each other
    .homeowner = Two pumps push against each other.
context-circulators-opposed--first-month = Pumps the wrong way round are found at once or after a repair.
context-circulators-opposed--first-year = It is a mistake of installation.
context-circulators-opposed--since-start-up = Pumps put in so never work.
context-circulators-opposed--two-circulators = There are two, so they can work against each other.
context-circulators-opposed--after-work = A pump that was replaced is put in the wrong way.
cause-check-valve-stuck-shut = Check valve stuck or jammed
    .homeowner = A valve that should open with the flow is stuck.
context-check-valve-stuck-shut--has-check-valves = Only where there is one can it stick.
context-check-valve-stuck-shut--no-filter = A chip jams it.
context-check-valve-stuck-shut--came-on-suddenly = A chip jams it at one moment.
context-check-valve-stuck-shut--since-start-up = A valve sticks after it has worked.
cause-check-valve-missing = Check valve missing or stuck open
    .homeowner = A valve that should stop the fluid from running backwards is missing or stuck.
context-check-valve-missing--has-check-valves = A valve that was never fitted cannot hold.
context-check-valve-missing--two-circulators = The idle pump lets the other one's flow go back.
context-circulator-wrong-speed--after-work = The new pump is left at another speed.

## Mechanisms

mechanism-weak-pumping = Circulator gives less than its curve
    .homeowner = The pump gives less than it should.
mechanism-low-flow = Too little flow through the unit
    .homeowner = Too little fluid flows through the heat pump.
mechanism-back-flow = Fluid runs backwards or circulates when idle
    .homeowner = Fluid runs the wrong way when the pump is off.

## Findings

finding-low-flow-lockout = Unit locks out on low flow
    .homeowner = The heat pump stopped because too little fluid was flowing.
finding-loop-flow = Flow against what the unit needs
    .homeowner = How much fluid flows through the heat pump.
finding-circulator-rise = Pressure rise across the circulators against their curve
    .homeowner = What pressure the pump makes.
finding-shut-off-rise = Shut-off rise against the curve at zero flow
    .homeowner = What pressure the pump can make at most.
finding-circulator-power = Electric input of the circulators against the nameplate
    .homeowner = How much electricity the pump takes.
finding-computed-flow-short = Pump curve and computed loop resistance meet below the needed flow
    .homeowner = By calculation the pump cannot move enough fluid through this loop.
finding-speed-set-low = Speed switch or setting below what was designed
    .homeowner = The pump is set to a low speed.
finding-circulator-not-turning = One circulator does not turn
    .homeowner = One pump stands still.
finding-circulator-arrows-disagree = Flow arrows of circulators or hoses disagree
    .homeowner = The pumps point in different directions.
finding-more-flow-with-one-off = Flow rises when one circulator is switched off
    .homeowner = The flow is better with one pump off.
finding-circulator-sounds-rough = Bearings sound rough through a stethoscope
    .homeowner = The pump's bearings sound rough.
finding-shaft-stiff = Shaft is stiff or gritty by hand
    .homeowner = The pump's shaft is hard to turn.
finding-flow-when-idle = Flow or warm pipe through an idle pump or unit
    .homeowner = Fluid moves although the pump is off.
finding-valve-slams = Knock when the pump stops
    .homeowner = You hear a knock when the pump stops.
finding-check-valve-hot-spot = Large pressure drop across the check valve
    .homeowner = A valve holds the flow back.
finding-no-check-valve-found = No check valve in pump body or pipe
    .homeowner = There is no valve that stops the fluid from running back.
finding-head-unaccounted = Rise across the circulators that no part on record takes
    .homeowner = The pump works against more than the pipes should hold up.

## Links

link-circulator-too-small--low-flow = The curve of the pump meets the loop below the flow that the unit needs.
link-circulator-too-small--computed-flow-short = The calculation shows it before any gauge does.
link-circulator-too-small--worse-when-cold = Cold fluid is thicker and takes the last reserve.
link-circulator-wrong-speed--low-flow = Flow falls with speed and head with its square.
link-circulator-wrong-speed--speed-set-low = The switch shows it.
link-circulator-wrong-speed--shut-off-rise = Shut-off head falls with the square of the speed.
link-circulator-wrong-speed--circulator-power = Power falls with the cube of the speed.
link-circulator-wrong-speed--circulator-rise = Head falls with the square of the speed.
link-one-circulator-dead--weak-pumping = Half of the head or flow is gone, and the dead pump is in the way.
link-one-circulator-dead--circulator-not-turning = It stands still.
link-one-circulator-dead--circulator-power = Only one takes power.
link-one-circulator-dead--circulator-hums = A locked rotor hums.
link-circulator-worn--weak-pumping = A worn impeller slips and a rough bearing brakes.
link-circulator-worn--circulator-sounds-rough = Worn bearings are heard.
link-circulator-worn--shaft-stiff = Grit or magnetite in the gap is felt.
link-circulator-worn--circulator-rattles = Play in the bearing rattles.
link-circulator-worn--circulator-hums = A tight rotor hums.
link-circulator-worn--circulator-power = Friction takes power; a slipping impeller takes less.
link-circulator-worn--circulator-body-hot = Friction heats the body.
link-circulators-opposed--weak-pumping = The heads are taken from each other instead of added.
link-circulators-opposed--circulator-arrows-disagree = The arrows on the bodies show it.
link-circulators-opposed--more-flow-with-one-off = Without its opponent the other pump moves more.
link-circulators-opposed--valve-slams = A check valve between opposed pumps slams.
link-circulators-opposed--low-flow = Two that push against each other move next to nothing.
link-check-valve-stuck-shut--restriction = The flow has to force the disc.
link-check-valve-stuck-shut--check-valve-hot-spot = The drop stands across the valve.
link-check-valve-stuck-shut--head-unaccounted = A check valve that does not open takes what nothing on record takes.
link-check-valve-missing--back-flow = Nothing stops the fluid from running back or rising warm.
link-check-valve-missing--low-flow = Part of the flow of one pump goes back through the other.
link-check-valve-missing--no-check-valve-found = Where none was fitted, none is found.
link-back-flow--flow-when-idle = The idle pump spins or its pipe is warm.
link-back-flow--valve-slams = Flow that turns round slams what is loose.
link-back-flow--circulator-rise = Flow back through the idle pump takes head from the running one.
link-back-flow--ewt-creeps-when-idle = Warm fluid rises through an idle loop.
link-weak-pumping--low-flow = Less head, less flow.
link-weak-pumping--circulator-rise = The rise stands below the curve at that flow.
link-weak-pumping--shut-off-rise = At zero flow it does not reach its curve.
link-low-flow--loop-flow = Less than the unit needs passes through it.
link-low-flow--temperature-split = The same heat from less fluid needs a larger temperature change.
link-low-flow--low-flow-lockout = The flow switch opens.
link-low-flow--freeze-guard-trip = Fluid that passes slowly leaves too cold.
link-low-flow--high-pressure-trip = In cooling the heat is not carried away.
link-low-flow--capacity-short = The exchanger works at a poorer mean temperature.
link-low-flow--superheat = Too little heat at the evaporator leaves liquid in the suction gas.
link-low-flow--cold-film = Fluid that passes slowly passes the pipe wall in layers.

## Checks

check-exchanger-flow = Flow from the exchanger's pressure drop
    .how = Read both pressure ports of the exchanger with the same gauge, pumps running, and the fluid temperature. The program reads the flow off the unit's own curve, corrected for the fluid.
check-metered-flow = Flow by meter
    .how = Read the meter in the pipe, or clamp one on a straight run of ten diameters.
check-pump-rise = Pressure rise across the circulators
    .how = Read before and after the circulators with the same gauge, running.
check-one-circulator-off = Switch one circulator off at a time
    .how = Read the flow with both on, then with each one off at its switch.
check-shut-off-test = Shut-off test
    .how = Read the rise with the discharge valve shut, for seconds only, and open it again.
check-pump-power = Electric input of the circulators
    .how = Measure power or current of the loop circulators alone and compare with the nameplate at the set speed.
check-compute-operating-point = Compute the operating point
    .how = From pipe, fluid, temperature and pump curve the program computes the flow that this loop must settle at.
check-look-at-circulators = Look at the circulators
    .how = Speed setting, direction arrows, and whether each one turns: feel for vibration, use a magnetic shaft indicator or the screw in the rotor cap.
check-feel-the-shaft = Turn the shaft by hand
    .how = Power off and locked, pump valved off and pressure let down. Turn the shaft with a screwdriver through the rotor cap.
check-listen-to-bearings = Listen to the bearings
    .how = Stethoscope on the rotor housing: a smooth hum, or grinding and knocking at shaft speed.
check-idle-flow-check = Look for flow when idle
    .how = Pumps off, or one of two off. Feel the pipes, watch the shaft of the idle pump and follow the temperature for five minutes. Listen when the pump stops.
check-check-valve-drop = Pressure drop across the check valve
    .how = Same gauge before and after the check valve, running. A good one takes a fraction of a psi.
