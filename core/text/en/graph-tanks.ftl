# Texts of the rule graph: expansion tank and vented reservoir


## Causes

cause-expansion-tank-waterlogged = Expansion tank waterlogged
    .homeowner = The tank that evens out the pressure has lost its air.
context-expansion-tank-waterlogged--sealed-with-tank = There is a tank, so it can fail.
context-expansion-tank-waterlogged--older-than-five-years = Diaphragms leak with the years.
context-expansion-tank-waterlogged--came-on-slowly = Air leaves a tank over months.
context-expansion-tank-waterlogged--since-start-up = Air leaves a tank over months.
cause-expansion-tank-pre-charge-wrong = Expansion tank pre-charge wrong
    .homeowner = The tank that evens out the pressure was set wrong.
context-expansion-tank-pre-charge-wrong--sealed-with-tank = There is a tank, so it can fail.
context-expansion-tank-pre-charge-wrong--first-year = It was never set to this loop.
context-expansion-tank-pre-charge-wrong--since-start-up = A pre-charge that nobody sets is wrong from the first day.
context-expansion-tank-pre-charge-wrong--after-work = A new tank comes with the pre-charge of the factory.
cause-reservoir-low = Vented reservoir low
    .homeowner = The reservoir of your loop needs fluid.
context-reservoir-low--non-pressurised = There is a reservoir, so it can run low or draw air.
cause-reservoir-draws-air = Reservoir draws air into the loop
    .homeowner = The reservoir lets air get into the loop.
context-reservoir-draws-air--non-pressurised = There is a reservoir, so it can run low or draw air.
context-reservoir-draws-air--complaint-recurs = Air that is drawn in comes back after every purge.

## Mechanisms

mechanism-no-cushion = Expansion tank gives no cushion
    .homeowner = The pressure has nothing to cushion it.

## Findings

finding-tank-pre-charge = Tank pre-charge with the fluid side at zero
    .homeowner = The air pressure in the tank.
finding-tank-rings-full = Tank rings full when tapped all over
    .homeowner = The tank is full of fluid.
finding-tank-valve-gives-fluid = Fluid comes from the tank's air valve
    .homeowner = Fluid came from the tank's air valve.
finding-gauge-swings-widely = Gauge swings widely between start and stop or day and night
    .homeowner = The pressure jumps up and down.
finding-reservoir-level = Reservoir level against the start-up mark
    .homeowner = The fluid level in the reservoir.
finding-air-drawn-at-reservoir = Bubbles or a vortex in the reservoir while running
    .homeowner = Air is drawn in at the reservoir.

## Links

link-expansion-tank-waterlogged--no-cushion = Without air there is nothing to give way.
link-expansion-tank-waterlogged--tank-rings-full = Full of fluid it sounds dull all over.
link-expansion-tank-waterlogged--tank-valve-gives-fluid = Fluid behind the diaphragm comes out of the air valve.
link-expansion-tank-waterlogged--tank-pre-charge = The air has gone.
link-expansion-tank-pre-charge-wrong--no-cushion = Set too high or too low, the tank takes part in nothing.
link-expansion-tank-pre-charge-wrong--tank-pre-charge = The gauge on the air valve shows it.
link-expansion-tank-pre-charge-wrong--tank-rings-full = With too little gas behind it the tank fills.
link-no-cushion--gauge-swings-widely = Every change of volume becomes a jump of pressure.
link-no-cushion--over-pressure = Warming or cooling drives the pressure up with nothing to take it.
link-no-cushion--low-static-pressure = And down again after the relief valve has opened.
link-no-cushion--relief-valve-weeps = At the peak the relief valve lets go.
link-reservoir-low--reservoir-level = The level stands below the mark.
link-reservoir-low--starved-suction = The level is all the suction the pump has.
link-reservoir-low--air-in-fluid = A low level draws a vortex.
link-reservoir-low--air-drawn-at-reservoir = At a low level the return draws a funnel of air.
link-reservoir-draws-air--air-in-fluid = Every minute of running brings more.
link-reservoir-draws-air--air-drawn-at-reservoir = It is seen through the wall or the cap.
link-reservoir-draws-air--came-back-after-purge = A purge takes the air out and leaves the way in.
link-reservoir-draws-air--starved-suction = Air in the inlet pipe takes the suction away.

## Checks

check-tank-pre-charge-check = Pre-charge with the fluid side at zero
    .how = Valve the tank off, let its fluid side down to zero and read the air valve. Air or fluid from the valve tells the rest.
check-tap-the-tank = Tap the tank from top to bottom
    .how = The air end rings hollow, the fluid end dull.
check-watch-start-and-stop = Watch the gauge at start and stop
    .how = Follow the gauge through a start, a run and a stop.
check-read-reservoir-level = Read the reservoir level
    .how = Pumps off. Measure the level against the start-up mark.
check-watch-reservoir = Watch the reservoir while running
    .how = Pumps on. Look for bubbles returning and for a vortex at the outlet.
