# Texts of the rule graph: leaks indoors and in the ground


## Causes

cause-leak-indoors = Leak indoors
    .homeowner = Fluid is escaping slowly at a joint indoors.
context-leak-indoors--complaint-recurs = Topping up does not close a leak.
context-leak-indoors--came-on-slowly = A drip takes months to show on the gauge.
context-leak-indoors--since-start-up = Leaks that were there at start-up were mostly found at the test.
cause-leak-in-ground = Leak in the ground
    .homeowner = Fluid is escaping from the buried pipe.
context-leak-in-ground--complaint-recurs = Topping up does not close a leak.
context-leak-in-ground--horizontal-loop = Trench pipe is dug into.
context-leak-in-ground--first-year = A poor fusion joint shows early.
context-leak-in-ground--came-on-slowly = A seeping joint takes months to show on the gauge.
context-leak-in-ground--since-start-up = Leaks that were there at start-up were mostly found at the test.

## Mechanisms

mechanism-fluid-loss = Fluid is being lost
    .homeowner = Fluid is being lost.

## Findings

finding-fluid-lost = Fluid added is more than relaxation can take
    .homeowner = More fluid was added than the pipe can have taken up.
finding-topped-up-often = Has been topped up again and again
    .homeowner = The loop has been topped up several times.
finding-wet-or-crusted-fittings = Wet or crusted joint, pump flange or floor
    .homeowner = A joint is wet or crusted.
finding-loss-with-building-isolated = Buried side alone loses pressure steadily
    .homeowner = The buried pipe loses pressure by itself.
finding-loss-indoors-alone = Indoor side alone loses pressure steadily
    .homeowner = The indoor part loses pressure by itself.
finding-ground-wet-over-loop = Wet or sunken spot over header or trench
    .homeowner = The ground above the pipe is wet.
finding-one-circuit-loses = One circuit loses pressure, the others hold
    .homeowner = One of the ground circuits loses pressure.

## Links

link-leak-indoors--fluid-loss = What drips is gone.
link-leak-indoors--wet-or-crusted-fittings = Most indoor leaks leave a drop or a crust.
link-leak-indoors--loss-indoors-alone = Valved off from the ground, the indoor side still falls.
link-leak-in-ground--fluid-loss = What seeps into the ground is gone.
link-leak-in-ground--loss-with-building-isolated = Valved off from the building, the buried side still falls.
link-leak-in-ground--one-circuit-loses = Tested one by one, one circuit falls.
link-leak-in-ground--ground-wet-over-loop = A large leak near the surface shows.
link-fluid-loss--static-pressure-trend = A leak takes the same each day, relaxation less each day.
link-fluid-loss--pressure-unexplained = More is gone than pipe and season can account for.
link-fluid-loss--low-static-pressure = The pressure goes with the fluid.
link-fluid-loss--fluid-lost = What was added adds up.
link-fluid-loss--topped-up-often = Someone keeps bringing it back.
link-fluid-loss--reservoir-level = In a vented reservoir the level is the gauge.
link-fluid-loss--air-in-fluid = What is lost is replaced by air at the high points once the pressure is gone.
link-fluid-loss--pressure-gone = A loop that loses fluid ends at nothing, whatever it was charged to.
link-fluid-loss--gauge-lower-than-before = Fluid that is gone takes its pressure with it.
link-fluid-loss--air-drawn-at-reservoir = A level that has sunk lets the outlet draw air.

## Checks

check-look-for-leaks = Look for wet or crusted joints
    .how = Torch and dry tissue on every joint, pump flange, valve stem and hose, and the floor below.
check-isolate-and-watch = Valve the building off and watch both sides
    .how = Unit off. Valve the buried side off from the building and put a gauge on each. A freshly charged pipe relaxes for a day or more: only a steady fall counts.
check-top-up-record = Ask what has been added since
    .how = Ask owner and office how much was added and when. The program compares it with what the pipe can have taken.
check-walk-the-loop = Walk over header and trenches
    .how = Look for wet, sunken or greener ground and for recent digging.
check-test-each-circuit = Pressure-test circuit by circuit
    .how = With water or the loop fluid, never with air. Condition the pipe first, then hold each circuit and compare. Keep clear of caps and plugs.
