# Texts of the rule graph: static pressure, charge, relaxation and the seasons


## Causes

cause-charge-left-too-low = Loop left at too low a pressure
    .homeowner = The loop was left with too little pressure when it was last filled.
context-charge-left-too-low--charged-low = The record itself says what was left on the gauge.
context-charge-left-too-low--no-flush-record = Where flushing was not written down, the charge seldom was.
context-charge-left-too-low--first-year = A charge that was too low shows in the first year.
context-charge-left-too-low--since-start-up = A charge left too low is low from the first day.
context-charge-left-too-low--older-than-five-years = It would have shown years ago.
context-charge-left-too-low--non-pressurised = Only a loop under pressure can be charged too low.
context-charge-left-too-low--after-work = The loop is closed again without its pressure.
cause-pipe-never-relaxed = Charged before the pipe had relaxed
    .homeowner = The plastic pipe kept stretching after it was filled, and the pressure went with it.
context-pipe-never-relaxed--pipe-not-relaxed = Not held under pressure before the last charge, the pipe does its stretching afterwards.
context-pipe-never-relaxed--first-month = Most of the stretching happens in the first days and weeks.
context-pipe-never-relaxed--first-year = Each tenfold of time takes the same again, so it is an early fault.
context-pipe-never-relaxed--older-than-five-years = After five years the pipe has long taken what it takes.
context-pipe-never-relaxed--non-pressurised = Only a pipe under pressure stretches.
context-pipe-never-relaxed--sealed-with-tank = A tank makes up what the pipe takes.
context-pipe-never-relaxed--charged-low = A charge that was low from the start needs no relaxation to run out.
context-pipe-never-relaxed--heating-season = Cold pipe is tight, and the lost pressure hardly shows.
context-pipe-never-relaxed--cooling-season = Warm pipe gives way further.
cause-charged-cold-without-allowance = Charged cold with no allowance for summer
    .homeowner = The loop was filled when the ground was cold. In summer the warm plastic pipe is wider and the pressure falls.
context-charged-cold-without-allowance--charged-in-winter = Only a charge made cold needs the allowance.
context-charged-cold-without-allowance--cooling-season = It shows when the loop is warm.
context-charged-cold-without-allowance--heating-season = In the cold the pressure stands at its highest.
context-charged-cold-without-allowance--sealed-with-tank = A tank takes up the season.
context-charged-cold-without-allowance--since-start-up = It comes with the first summer.
context-charged-cold-without-allowance--non-pressurised = An open reservoir rises and falls with the season without harm.
context-charged-cold-without-allowance--charged-low = A charge that was low from the start needs no summer to run out.
context-charged-cold-without-allowance--first-month = The loop has hardly been through another season since it was charged.
context-charged-cold-without-allowance--warm-loop = The pressure put on cold is missed when the loop is warm.
cause-over-pressurised = Loop over-pressurised
    .homeowner = There is more pressure in the loop than it needs.
context-over-pressurised--charged-high = The record itself says what was left on the gauge.
context-over-pressurised--heating-season = A cold loop stands at its highest pressure.
context-over-pressurised--non-pressurised = Only a closed loop can hold too much pressure.
context-over-pressurised--older-than-five-years = The pipe has relaxed since, and pressure with it.
cause-ordinary-relaxation = Ordinary relaxation of the plastic pipe
    .homeowner = New plastic pipe gives way a little in its first months, and the pressure settles. This is normal.
context-ordinary-relaxation--first-month = The first weeks show the largest part of it.
context-ordinary-relaxation--first-year = It goes with the logarithm of time: quick at first, then hardly seen.
context-ordinary-relaxation--older-than-five-years = After five years another day takes nothing that a gauge can show.
context-ordinary-relaxation--sealed-with-tank = A tank hides it.
context-ordinary-relaxation--since-start-up = It comes with the months.
cause-seasonal-swing = Ordinary swing over the seasons
    .homeowner = Plastic pipe widens when warm, so the pressure is lower in summer and higher in winter. This is normal.
context-seasonal-swing--cooling-season = A warm loop reads lower.
context-seasonal-swing--heating-season = A cold loop reads higher, which seldom alarms anyone.
context-seasonal-swing--first-year = The first full turn of the seasons surprises people.
context-seasonal-swing--sealed-with-tank = A tank takes up most of it.
context-seasonal-swing--since-start-up = It comes with the seasons.

## Mechanisms

mechanism-low-static-pressure = Loop pressure too low for the season
    .homeowner = The loop has too little pressure.
mechanism-starved-suction = Circulator suction starved
    .homeowner = The pump does not get enough fluid on its inlet side.
mechanism-over-pressure = Loop pressure too high
    .homeowner = The loop has too much pressure.
mechanism-pipe-gives-way = Pipe gives way with the logarithm of time
    .homeowner = The plastic pipe is settling.

## Findings

finding-gauge-reads-low = Loop gauge seems low
    .homeowner = The loop gauge reads low.
finding-gauge-lower-than-before = Gauge lower than in spring or at start-up
    .homeowner = The gauge reads lower than it used to.
finding-gauge-reads-high = Loop gauge seems high
    .homeowner = The loop gauge reads high.
finding-static-pressure = Static pressure against what this loop should show today
    .homeowner = The loop pressure at rest.
finding-pressure-unexplained = Pressure below what charge, relaxation and season together explain
    .homeowner = The loop has lost more pressure than time and season can explain.
finding-static-pressure-trend = Pressure falls by the same amount each day
    .homeowner = The pressure keeps falling day after day.
finding-fall-shrinks-each-day = Fall is large at first and shrinks each day
    .homeowner = The pressure fell quickly at first and is now settling.
finding-pressure-follows-temperature = Gauge rises when the loop cools and falls when it warms, and comes back
    .homeowner = The pressure goes up and down with the temperature and comes back.
finding-suction-pressure = Suction pressure, running, against what the circulator needs
    .homeowner = The pressure at the pump's inlet.
finding-noise-worse-in-summer = Noise comes or grows in summer
    .homeowner = The noise is worse in summer.
finding-relief-valve-weeps = Relief valve or hose weeps
    .homeowner = A safety valve has been dripping.
finding-circulator-hums = Circulator hums or whines
    .homeowner = The pump hums.
finding-circulator-rattles = Circulator rattles or knocks
    .homeowner = The pump rattles.
finding-pressure-gone = No pressure left in a cool loop
    .homeowner = There is no pressure left in your loop.

## Links

link-charge-left-too-low--low-static-pressure = A loop started below its band has nothing to lose to relaxation and summer.
link-charge-left-too-low--pressure-gone = A charge of next to nothing leaves nothing.
link-pipe-never-relaxed--low-static-pressure = The modulus of polyethylene falls by half within a year of load, and the charge with it.
link-pipe-never-relaxed--pipe-gives-way = A pipe charged at once does its stretching afterwards.
link-pipe-never-relaxed--pressure-gone = The pipe takes a share of the charge and never all of it.
link-ordinary-relaxation--pipe-gives-way = Every polyethylene pipe relaxes under load, most of it early.
link-ordinary-relaxation--gauge-lower-than-before = The gauge settles below what it read at start-up.
link-seasonal-swing--gauge-lower-than-before = In summer the pipe outgrows the fluid and the gauge falls.
link-seasonal-swing--pressure-follows-temperature = Pressure goes with temperature and comes back with it.
link-seasonal-swing--noise-worse-in-summer = Lower pressure in summer makes any hum a little louder.
link-seasonal-swing--gauge-reads-high = In a cold loop the gauge of every plastic pipe stands higher.
link-charged-cold-without-allowance--low-static-pressure = A charge that was right in the cold is too low when pipe and fluid are warm.
link-charged-cold-without-allowance--pressure-follows-temperature = It is the season that takes the pressure, and it comes back in winter.
link-charged-cold-without-allowance--noise-worse-in-summer = Pressure is lowest when the loop is warmest.
link-charged-cold-without-allowance--gauge-lower-than-before = Charged cold, it can only sink when the loop warms.
link-over-pressurised--over-pressure = More was pumped in than the season needs.
link-low-static-pressure--static-pressure = The gauge stands below the band for this loop and day.
link-low-static-pressure--gauge-reads-low = Anyone who looks sees a low gauge.
link-low-static-pressure--gauge-lower-than-before = It used to read higher.
link-low-static-pressure--starved-suction = The static pressure is all that holds the suction up.
link-low-static-pressure--air-in-fluid = At low pressure dissolved gas comes out and high points pull a vacuum.
link-low-static-pressure--noise-worse-in-summer = A warm loop reads lowest.
link-pipe-gives-way--fall-shrinks-each-day = Relaxation takes the same per tenfold of time, so each day takes less than the one before.
link-pipe-gives-way--gauge-lower-than-before = The gauge settles as the pipe gives way.
link-starved-suction--suction-pressure = The inlet stands near or below zero when the pump runs.
link-starved-suction--circulator-hums = Vapour and gas at the inlet hum and hiss.
link-starved-suction--circulator-rattles = Collapsing bubbles rattle in the impeller.
link-starved-suction--flow-unsteady = A cavitating pump surges.
link-starved-suction--weak-pumping = A pump that cavitates loses head.
link-starved-suction--air-in-circulator = Gas that comes out at the inlet collects in the rotor.
link-over-pressure--static-pressure = The gauge stands above the band.
link-over-pressure--suction-pressure = With the whole loop too high the suction is too.
link-over-pressure--gauge-reads-high = Anyone who looks sees a high gauge.
link-over-pressure--relief-valve-weeps = The relief valve or the weakest joint lets go.
link-over-pressure--fluid-loss = What weeps out is lost.
link-over-pressure--wet-or-crusted-fittings = Hoses and unions weep under too much pressure.

## Checks

check-read-static = Read the static pressure
    .how = Everything off for five minutes. Read the gauge at a port and note the loop temperature; both are needed to judge it.
check-pressure-log = Read the pressure log of the last days
    .how = Use the log if someone kept one, or have the owner send a reading at the same hour for some days. The same loss each day is a leak; a loss that shrinks is the pipe.
check-warm-and-cold-pressure = Compare pressure with loop temperature
    .how = Compare earlier readings with the loop temperature of that day, or run the unit and watch both move. In a plastic loop warming lowers the pressure.
check-read-suction = Read the suction pressure, pumps running
    .how = Gauge on the port before the circulator. Read at rest, then running.
check-look-at-relief = Look at the relief valve and hoses
    .how = Look for drops and dried tracks at the relief valve's outlet and along the hoses.
