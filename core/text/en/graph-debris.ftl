# Texts of the rule graph: debris, strainer, and what blocks the exchanger


## Causes

cause-debris-left-in-loop = Debris left in the loop
    .homeowner = Plastic shavings or sand stayed in your pipes when they were put together.
context-debris-left-in-loop--no-filter = Without a filter the flush carries debris round and leaves it.
context-debris-left-in-loop--never-flushed = Nothing took the shavings out.
context-debris-left-in-loop--flush-too-slow = Slow water leaves grit at the bottom of the bore.
context-debris-left-in-loop--first-year = Shavings come loose in the first year.
context-debris-left-in-loop--came-on-suddenly = A lump lets go and lodges.
context-debris-left-in-loop--older-than-five-years = What was left from building has long been caught.
cause-strainer-loaded = Strainer loaded
    .homeowner = The screen that protects your system is full and needs cleaning.
context-strainer-loaded--no-filter = What the flush filter did not catch the strainer does.
context-strainer-loaded--came-on-slowly = A screen fills over months.
context-strainer-loaded--since-start-up = A screen takes time to fill.
cause-exchanger-loaded = Debris lodged in the unit's exchanger
    .homeowner = Dirt has lodged inside the heat pump's heat exchanger.
context-exchanger-loaded--has-strainer = A strainer keeps most of it out.
context-exchanger-loaded--no-filter = What was not filtered ends in the narrowest place.
context-exchanger-loaded--came-on-slowly = It gathers over months.
context-exchanger-loaded--since-start-up = It gathers over time.
context-exchanger-loaded--heat-pump-not-isolated-in-flush = What the flush drove in is there from the first day and has another root.
cause-unit-not-isolated-in-flush = Debris flushed through the unit, which was not valved off
    .homeowner = When the pipes were flushed, dirt was washed into the heat pump.
context-unit-not-isolated-in-flush--heat-pump-not-isolated-in-flush = The record itself says whether the unit was valved off.
context-unit-not-isolated-in-flush--no-filter = Unfiltered flush water carries chips.
context-unit-not-isolated-in-flush--older-than-five-years = It shows soon after start-up.
context-unit-not-isolated-in-flush--since-start-up = What a flush drives in is there before the first start.

## Mechanisms

mechanism-loose-solids = Loose solids travel in the fluid
    .homeowner = Small pieces travel round with the fluid.
mechanism-strainer-restriction = Strainer holds the flow back
    .homeowner = The screen holds the flow back.
mechanism-exchanger-blocked = Exchanger's passages partly blocked
    .homeowner = Part of the heat exchanger is blocked.

## Findings

finding-strainer-drop = Pressure drop across the strainer
    .homeowner = How much the screen holds the flow back.
finding-strainer-screen-dirty = Strainer screen is dirty
    .homeowner = The screen was dirty.
finding-strainer-loads-again = Strainer loads again soon after cleaning
    .homeowner = The screen clogs again soon after it was cleaned.
finding-sample-has-grit = Sample has chips, sand or scale flakes
    .homeowner = The fluid carries small solid pieces.
finding-exchanger-drop-for-flow = Exchanger's pressure drop against its curve at a known flow
    .homeowner = How much the heat exchanger holds the flow back.
finding-better-after-backflush = Flow comes back after back-flushing the exchanger
    .homeowner = The flow recovered after the heat exchanger was flushed backwards.
finding-chips-at-exchanger = Chips or mud at the exchanger's inlet
    .homeowner = Dirt was found at the heat exchanger.
finding-exchanger-takes-the-head = The exchanger takes nearly all that the circulators give
    .homeowner = Nearly all that the pump does is lost inside the heat pump.

## Links

link-debris-left-in-loop--loose-solids = Shavings and sand come loose and travel.
link-debris-left-in-loop--strainer-loads-again = As long as there is debris, a clean screen fills again.
link-debris-left-in-loop--strainer-restriction = The strainer is there to catch it, and fills.
link-strainer-loaded--strainer-restriction = A full screen passes little.
link-exchanger-loaded--exchanger-blocked = The passages are the narrowest place of the loop.
link-exchanger-loaded--better-after-backflush = What lodged from one side leaves by the same side.
link-exchanger-loaded--loose-solids = What filled it came with the fluid, and some is still on its way.
link-unit-not-isolated-in-flush--exchanger-blocked = The unit is valved off first so that the flush does not run through it.
link-unit-not-isolated-in-flush--loose-solids = Part of what went in comes out again.
link-unit-not-isolated-in-flush--better-after-backflush = What was flushed in can be flushed back out.
link-loose-solids--sample-has-grit = A sample or a white filter shows it.
link-loose-solids--strainer-restriction = The strainer catches them until it is full.
link-loose-solids--exchanger-blocked = What passes the strainer lodges in the narrowest place.
link-loose-solids--circulator-rattles = Grit in the bearing rattles.
link-loose-solids--circulator-sounds-rough = Grit scores the bearing.
link-loose-solids--circulator-power = A gritty rotor turns hard.
link-strainer-restriction--strainer-drop = The drop stands across the screen.
link-strainer-restriction--strainer-screen-dirty = What holds the flow back is seen on the screen.
link-strainer-restriction--restriction = The whole flow must pass it.
link-strainer-restriction--suction-pressure = A strainer before the pump takes its suction away.
link-strainer-restriction--head-unaccounted = A loaded strainer takes more than the clean one that is reckoned with.
link-exchanger-blocked--exchanger-drop-for-flow = Fewer passages, more drop at the same flow.
link-exchanger-blocked--chips-at-exchanger = What cannot enter lies at the inlet.
link-exchanger-blocked--restriction = The whole flow must pass it.
link-exchanger-blocked--approach = Blocked passages exchange no heat.
link-exchanger-blocked--loop-flow = Read from its own pressure drop, a blocked exchanger seems to pass more than it does.
link-exchanger-blocked--exchanger-takes-the-head = What holds the flow up takes the head.

## Checks

check-strainer-pressure-drop = Pressure drop across the strainer
    .how = Same gauge before and after the strainer, running.
check-open-strainer = Open the strainer
    .how = Power off and locked, strainer valved off and let down. Look at what is on the screen: chips, sand, rust, slime.
check-filter-a-sample = Filter a sample through white cloth
    .how = Draw a litre and pour it through a white filter. Chips are debris, black dust that a magnet pulls is corrosion, orange is iron.
check-exchanger-drop-known-flow = Exchanger's drop at a known flow
    .how = Read the exchanger's pressure drop and the flow by meter at the same time and compare with the unit's curve, corrected for the fluid.
check-backflush-exchanger = Back-flush the exchanger and read the flow again
    .how = Power off and locked, unit valved off from the loop. Run the cart backwards through the exchanger alone into a filter bag, then put it back and read the flow.
check-open-exchanger-inlet = Look into the exchanger's inlet
    .how = Power off and locked, unit valved off and let down. Open the inlet connection and look with a torch.
