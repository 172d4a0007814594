# Texts of the rule graph: air left in the loop, weak flushing, air-bound circulators


## Causes

cause-air-left-in-circuit = Air left in the loop at filling
    .homeowner = A pocket of air stayed in your ground pipe when it was filled. It makes noise and slows the flow until it is flushed out.
context-air-left-in-circuit--no-flush-record = Loops without a flush record were often not flushed properly.
context-air-left-in-circuit--dead-head-failed-at-start-up = The level dropped too far at start-up: the air was in there on the first day.
context-air-left-in-circuit--dead-head-passed-at-start-up = A passed dead-head test leaves little room for air from filling.
context-air-left-in-circuit--circuits-flushed-singly = Circuits flushed one by one got the whole flow of the cart.
context-air-left-in-circuit--large-headers = Air in wide headers does not move at the usual flush velocity.
context-air-left-in-circuit--first-year = Air from filling shows in the first year; later it has dissolved or been vented.
context-air-left-in-circuit--since-start-up = Air from filling is heard from the first weeks.
context-air-left-in-circuit--flush-too-slow = Where the flush itself was too slow, that is the root and this its trace; after a fast flush only pockets are left.
context-air-left-in-circuit--flush-too-short = Where the flush was too short, that is the root; after a long one only pockets are left.
context-air-left-in-circuit--cart-too-small = Where the cart was too small, that is the root; a strong one leaves only pockets.
context-air-left-in-circuit--after-work = Whoever opens the loop lets air in.
context-air-left-in-circuit--older-than-five-years = Air from filling has long dissolved, been vented or made somebody call.
cause-flush-too-weak = Flushed too slowly or too briefly
    .homeowner = The first flushing was too slow or too short to carry all air and dirt out of your ground pipe.
context-flush-too-weak--flush-too-slow = Below the transport velocity the flow leaves air and chips where they are.
context-flush-too-weak--flush-too-short = A short flush clears the near pipe and not the far end.
context-flush-too-weak--cart-too-small = The cart cannot bring every pipe of this loop to the transport velocity.
context-flush-too-weak--never-flushed = Not flushed at all is the weakest flush.
context-flush-too-weak--no-flush-record = Without a record nobody knows what velocity was reached.
context-flush-too-weak--circuits-flushed-singly = One circuit at a time, even a small cart is fast enough.
context-flush-too-weak--dead-head-passed-at-start-up = A passed dead-head test speaks for a good flush.
context-flush-too-weak--first-year = A weak flush shows in the first year.
context-flush-too-weak--since-start-up = What the flush left behind is there from the first day.
context-flush-too-weak--older-than-five-years = What a weak flush leaves behind shows in the first years.
cause-circulators-not-bled = Circulators never bled
    .homeowner = Air was left inside the pump when the system was started, so the pump cannot run properly.
context-circulators-not-bled--circulators-not-bled = The record itself says whether they were bled.
context-circulators-not-bled--first-month = A pump that was never bled complains from the first day.
context-circulators-not-bled--first-year = After years of running the air in the rotor has gone, or the bearing has.
context-circulators-not-bled--since-start-up = Such air is there before the first start.
context-circulators-not-bled--after-work = A pump that was opened holds air again.
context-circulators-not-bled--older-than-five-years = A dry start shows within weeks, not after years.

## Mechanisms

mechanism-air-in-fluid = Gas pockets in the loop fluid
    .homeowner = There is air in the loop fluid.
mechanism-air-in-circulator = Circulator air-bound
    .homeowner = Air sits inside the pump where fluid should be.

## Findings

finding-gurgling = Gurgling or rushing in the pipes
    .homeowner = You can hear gurgling in the pipes.
finding-air-at-vent = Air spits from a vent or port
    .homeowner = Air came out when we opened a vent.
finding-springy-gauge = Gauge is springy: a small shot of fluid hardly moves it
    .homeowner = The pressure behaves as if there were a cushion of air in the pipe.
finding-dead-head-air = Dead-head test: more air than this loop allows
    .homeowner = A test showed that air is trapped in the loop.
finding-flow-unsteady = Flow or pressure-drop needle hunts
    .homeowner = The flow is unsteady.
finding-came-back-after-purge = Noise or trouble came back days after a purge or bleed
    .homeowner = The trouble came back a few days after it was last treated.
finding-circulator-vent-gives-air = Air comes out of the circulator's bleed screw
    .homeowner = Air came out of the pump.
finding-circulator-body-hot = Circulator body far hotter than the fluid
    .homeowner = The pump is much hotter than it should be.
finding-sample-milky = Fresh sample is milky and clears from below
    .homeowner = The fluid is full of tiny bubbles.

## Links

link-air-left-in-circuit--air-in-fluid = Air that was not carried out stays as pockets in high points and down-legs.
link-air-left-in-circuit--came-back-after-purge = A purge that misses the pocket brings relief only until it moves again.
link-air-left-in-circuit--idle-circuit = A pocket in a down-leg takes as much head as it is tall and slows that circuit.
link-air-left-in-circuit--circuit-return-stands = A pocket seldom stops a circuit altogether.
link-flush-too-weak--air-in-fluid = Below { AMOUNT("2 ft/s") } in any pipe the flow does not carry the air down and out.
link-flush-too-weak--loose-solids = What moves no air moves no chips either.
link-flush-too-weak--idle-circuit = Branches that were never swept stay slow or dead.
link-flush-too-weak--came-back-after-purge = Repeating the same weak purge gives the same result a few days later.
link-flush-too-weak--circuit-return-stands = A circuit that never filled stands still.
link-circulators-not-bled--air-in-circulator = A wet rotor that was not vented keeps air around its shaft.
link-air-in-fluid--air-in-circulator = Bubbles carried round collect in the rotor.
link-air-in-fluid--gurgling = Gas and fluid passing each other gurgle.
link-air-in-fluid--air-at-vent = A vent at a high point lets out what collects there.
link-air-in-fluid--springy-gauge = Gas gives way where fluid does not, so a shot of fluid hardly raises the gauge.
link-air-in-fluid--dead-head-air = Under pressure gas shrinks and the reservoir level drops by more than the pipe stretches.
link-air-in-fluid--flow-unsteady = Slugs of gas pass pump and exchanger one after another.
link-air-in-fluid--sample-milky = Fine bubbles cloud a fresh sample and rise out of it.
link-air-in-fluid--low-flow = A pocket costs about as much head as it is tall.
link-air-in-fluid--pressure-unexplained = Cold fluid under pressure dissolves gas, and the pressure goes with it.
link-air-in-fluid--noise-worse-in-summer = Warm fluid at low pressure lets dissolved gas out again.
link-air-in-fluid--circulator-hums = Gas through the impeller changes its sound.
link-air-in-fluid--circulator-rattles = Bubbles through the impeller rattle.
link-air-in-fluid--low-flow-lockout = A passing slug drops the flow switch for a moment.
link-air-in-fluid--pressure-gone = Much air that dissolves takes much pressure.
link-air-in-circulator--weak-pumping = An impeller in air moves little fluid.
link-air-in-circulator--circulator-vent-gives-air = The air leaves by the bleed screw.
link-air-in-circulator--circulator-body-hot = Without fluid around it the rotor is not cooled.
link-air-in-circulator--circulator-rattles = Bearings without fluid film knock and rattle.
link-air-in-circulator--circulator-hums = An air-bound rotor hums and moves nothing.
link-air-in-circulator--circulator-power = Moving air instead of fluid takes little power.
link-air-in-circulator--flow-unsteady = A pump that catches and loses its fluid makes the needle hunt.
link-air-in-circulator--gurgling = Air turned over in the pump body gurgles.

## Checks

check-listen-to-pipes = Listen at circulator and pipes
    .how = Put a stethoscope on the pump body, the exchanger and the highest pipe, pumps running. Gurgling moves along the pipe; cavitation hisses or hums at the suction; bearings knock at shaft speed.
check-open-vent = Crack the highest vent or port
    .how = With the pumps off, open the highest vent or port a little and watch what comes: steady fluid, or air and spitting.
check-watch-needle = Watch the needle for two minutes
    .how = Pumps on, gauge on the exchanger ports. Watch for two minutes: a still needle, or one that hunts.
check-shot-of-fluid = Add a small measured shot of fluid
    .how = Pumps off. Add a small measured shot and watch the gauge. A tight, air-free pipe answers at once; a springy one hardly moves.
check-dead-head-test = Dead-head test with the cart
    .how = Cart connected and running with clear fluid in the reservoir, unit valved off. Mark the level, shut the return, bring the pressure up, never above the lowest-rated part, and read the drop and both pressures.
check-bleed-screw = Open the circulator's bleed screw
    .how = Power off and locked. Loosen the bleed screw a turn and see whether air or fluid comes. Close it when fluid runs clear.
check-circulator-temperature = Temperature of the circulator body
    .how = Clamp a thermometer to the body after ten minutes of running and compare with the fluid.
check-fresh-sample = Look at a fresh sample
    .how = Draw a sample into a clear jar. Hold it to the light at once: bubbles, colour, solids, foam. Smell it from a distance. Let it stand five minutes and look again.
