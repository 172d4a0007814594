# Texts of the rule graph: antifreeze: strength, kind, mixing, age


## Causes

cause-antifreeze-too-weak = Antifreeze too weak
    .homeowner = There is too little antifreeze in your loop for the coldest days.
context-antifreeze-too-weak--concentration-not-checked = Where nobody reads the freeze point, the mix is a guess.
context-antifreeze-too-weak--heating-season = It shows when the loop runs cold.
context-antifreeze-too-weak--cooling-season = In summer nothing freezes.
context-antifreeze-too-weak--after-work = A loop that was opened is filled up with water.
context-antifreeze-too-weak--warm-loop = Warm water freezes nowhere; nobody calls about it.
context-antifreeze-too-weak--water-only = Plain water was meant to be in it.
cause-antifreeze-too-strong = Antifreeze too strong
    .homeowner = There is more antifreeze in your loop than it needs, which makes the fluid thick.
context-antifreeze-too-strong--concentration-not-checked = Where nobody reads the freeze point, the mix is a guess.
context-antifreeze-too-strong--heating-season = Strong mixes are thickest in the cold.
context-antifreeze-too-strong--warm-loop = Warm fluid flows well at any strength.
context-antifreeze-too-strong--older-than-five-years = A dose that is too strong shows in the first winters.
context-antifreeze-too-strong--cooling-season = Warm fluid is thin, strong or not.
context-antifreeze-too-strong--alcohol-fluid = Alcohols stay thin where glycols thicken.
cause-antifreeze-unmixed = Antifreeze not mixed
    .homeowner = The antifreeze has not spread evenly through your loop yet.
context-antifreeze-unmixed--mixed-too-short = The cart did not turn the loop over often enough.
context-antifreeze-unmixed--first-month = A fresh charge travels as slugs.
context-antifreeze-unmixed--first-year = Months of running mix any loop that flows.
context-antifreeze-unmixed--older-than-five-years = Years of running have mixed it.
context-antifreeze-unmixed--cooling-season = A weak slug does no harm in warm water.
context-antifreeze-unmixed--concentration-not-checked = Who mixed it well had taken two samples.
cause-antifreeze-wrong-kind = Wrong kind of antifreeze, or two kinds mixed
    .homeowner = The fluid in your loop is not the right kind.
context-antifreeze-wrong-kind--complaint-recurs = Topping up with whatever was on the van mixes kinds.
cause-antifreeze-degraded = Antifreeze degraded
    .homeowner = The antifreeze has aged and no longer protects the metal parts.
context-antifreeze-degraded--older-than-five-years = Inhibitor is used up with the years.
context-antifreeze-degraded--first-year = A fresh charge is seldom spent.
context-antifreeze-degraded--alcohol-fluid = It is the glycols that turn acid.
context-antifreeze-degraded--water-not-tested = Hard or salty water uses inhibitor up.
context-antifreeze-degraded--came-on-slowly = It takes years.
context-antifreeze-degraded--since-start-up = Fresh antifreeze is not spent.

## Mechanisms

mechanism-weak-freeze-protection = Freeze point too near the coldest fluid
    .homeowner = The fluid could freeze on the coldest days.
mechanism-ice-in-exchanger = Slush forms in the exchanger
    .homeowner = Slush forms inside the heat pump.
mechanism-thick-fluid = Fluid too thick when cold
    .homeowner = The fluid is thick when cold.

## Findings

finding-freeze-protection = Freeze point against the lowest leaving temperature
    .homeowner = How well the fluid is protected against freezing.
finding-freeze-samples-differ = Freeze points of two samples differ
    .homeowner = Two samples of the fluid were not alike.
finding-gravity-and-freeze-point-disagree = Specific gravity and refractometer point to different mixes
    .homeowner = Two tests of the fluid do not fit together.
finding-cold-film = Computed flow in the ground pipe is laminar at this fluid and temperature
    .homeowner = By calculation the fluid creeps along the pipe wall and picks up little heat.
finding-improves-when-warm = Flow rises clearly when the fluid is warm
    .homeowner = The flow is better when the fluid is warm.
finding-worse-when-cold = Worse in the coldest weather
    .homeowner = It is worse when it is cold.
finding-flow-recovers-after-rest = Flow falls while running and is back after a rest
    .homeowner = The flow comes back after the heat pump has rested.
finding-freeze-guard-trip = Unit trips on its freeze guard
    .homeowner = The heat pump stopped because the fluid got too cold.
finding-trips-early-then-settles = Tripped in the first days after filling, then settled
    .homeowner = It tripped at first and then settled.
finding-sample-foams = Shaken sample foams and keeps its foam
    .homeowner = The fluid foams.
finding-sample-smells = Sample smells sour, sweet or of solvent
    .homeowner = The fluid smells.
finding-label-disagrees = Label or empty drums name another fluid than the record
    .homeowner = The label and the record do not agree.
finding-other-fluid-added = Topped up with another fluid than the one in the loop
    .homeowner = Another fluid was added.
finding-sample-discoloured = Sample is brown or black
    .homeowner = The fluid is discoloured.

## Links

link-antifreeze-too-weak--weak-freeze-protection = Less antifreeze, higher freeze point.
link-antifreeze-too-strong--freeze-protection = More antifreeze, much lower freeze point than needed.
link-antifreeze-too-strong--thick-fluid = Viscosity rises faster than the freeze point falls.
link-antifreeze-unmixed--freeze-samples-differ = A slug of strong fluid passes one port and then the other.
link-antifreeze-unmixed--weak-freeze-protection = Weak fluid freezes as if there were none.
link-antifreeze-unmixed--thick-fluid = Strong slugs are thick.
link-antifreeze-unmixed--trips-early-then-settles = Running mixes what the cart did not.
link-antifreeze-unmixed--freeze-guard-trip = Each weak slug that passes the exchanger can trip its guard.
link-antifreeze-wrong-kind--gravity-and-freeze-point-disagree = Each kind ties gravity and freeze point by its own curve.
link-antifreeze-wrong-kind--weak-freeze-protection = On the wrong scale the strength was set wrong.
link-antifreeze-wrong-kind--thick-fluid = Another kind may be thicker at the same freeze point.
link-antifreeze-wrong-kind--sample-foams = Washer and motor fluids foam.
link-antifreeze-wrong-kind--label-disagrees = The drum tells what was poured in.
link-antifreeze-wrong-kind--other-fluid-added = Two kinds meet when someone tops up with what is at hand.
link-antifreeze-wrong-kind--sample-smells = It smells of what it is.
link-antifreeze-wrong-kind--wet-or-crusted-fittings = Some kinds creep through threads that hold others.
link-antifreeze-wrong-kind--aggressive-fluid = Inhibitors of two kinds can spoil each other.
link-antifreeze-degraded--aggressive-fluid = Old glycol turns acid and its inhibitor is spent.
link-antifreeze-degraded--sample-smells = Breakdown products smell sweet or sour.
link-antifreeze-degraded--sample-foams = Spent inhibitor and fine solids keep foam up.
link-antifreeze-degraded--black-magnetic-dust = Without its inhibitor the fluid eats steel, and what it eats settles as black dust.
link-weak-freeze-protection--freeze-protection = The sample freezes too near the lowest leaving temperature.
link-weak-freeze-protection--ice-in-exchanger = The coldest place of the loop is the exchanger wall.
link-ice-in-exchanger--low-flow = Slush narrows the passages while it lasts.
link-ice-in-exchanger--flow-recovers-after-rest = Slush melts when the unit rests.
link-ice-in-exchanger--freeze-guard-trip = Slower, colder fluid trips the guard.
link-ice-in-exchanger--worse-when-cold = It happens when the loop is coldest.
link-ice-in-exchanger--exchanger-drop-for-flow = Slush narrows the passages, so they drop more at the same flow.
link-ice-in-exchanger--exchanger-takes-the-head = Ice narrows the exchanger like dirt.
link-thick-fluid--low-flow = At the same pump a thicker fluid flows less.
link-thick-fluid--cold-film = Below the turning point of the flow the film at the wall insulates.
link-thick-fluid--ground-side-weak = A laminar loop looks like a short one.
link-thick-fluid--improves-when-warm = Viscosity falls fast with temperature, a restriction stays.
link-thick-fluid--worse-when-cold = Cold makes it thick.
link-thick-fluid--computed-flow-short = Worked out with the fluid as it was sampled, the same pump moves less.
link-ground-side-weak--freeze-protection = A loop that runs colder needs a lower freeze point than its fluid was made for.

## Checks

check-freeze-point-sample = Freeze point by refractometer
    .how = Draw a sample, let it come to room temperature, read it on the scale of this fluid. Valid for glycols only.
check-specific-gravity-sample = Strength by hydrometer
    .how = Draw a jar full, read gravity and temperature together. This is the way for alcohol mixes.
check-two-samples = Two samples a quarter of an hour apart
    .how = Pumps running. Sample the supply, wait fifteen minutes, sample the return. Alike means mixed.
check-two-samples-by-gravity = Two samples by hydrometer, a quarter of an hour apart
    .how = Pumps running. Read gravity and temperature of a supply sample, wait fifteen minutes, and do the same on the return. Alike means mixed.
check-gravity-and-refraction = Gravity and refraction of the same sample
    .how = Read the same sample both ways. If they name different strengths, it is not the fluid that the label says.
check-compute-film = Compute the flow regime in the ground pipe
    .how = From fluid, temperature, flow and pipe the program computes whether the flow is laminar.
check-read-fluid-label = Read the fluid label and ask what was added
    .how = Read the label on the unit and any drum left behind, and ask what was used for topping up.
check-warm-against-cold = Compare flow warm and cold
    .how = Read flow and fluid temperature now and again after the loop has warmed by { AMOUNT("10 °F") } or more, by resting it or by running in cooling. Or compare with a reading of the other season.
check-flow-after-rest = Read the flow, rest, read again
    .how = Read the flow while the unit heats, stop it for half an hour with the pumps on, and read again. Ice melts, debris stays.
