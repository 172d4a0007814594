# What the app shows around a call: settings, groups of questions, templates.

language-own-name = English

units-us = US customary (psi, gpm, °F, gal, ft)
units-si = SI (bar, L/s, °C, L, m)
paper-letter = US Letter
paper-a4 = A4
theme-system = As the device
theme-light = Light
theme-dark = Dark
theme-sun = Full sun (highest contrast)
instrument-usual = Usually ± { $accuracy } or a share of the value, whichever is more.

questions-symptom-heard = Heard
questions-symptom-stops = The unit stops
questions-symptom-gauge = On the gauge, and topping up
questions-symptom-comfort = Warmth and the bill
questions-symptom-history = How it began
questions-symptom-house-water = Water in the house
questions-symptom-other = Other
questions-observation-air-and-flow = Air and flow
questions-observation-circulator = At the circulator
questions-observation-valves-and-circuits = Valves and circuits
questions-observation-fluid-and-dirt = Fluid and dirt
questions-observation-leaks-and-tank = Leaks, tank and pressure
questions-observation-loop-temperature = Temperature of the loop
questions-observation-unit = At the unit
questions-observation-instruments = Trying the instruments
questions-observation-other = Other

template-vertical-sealed = Bores, sealed, 3 tons
    .note = 3 circuits of 3/4 in SDR 11, { AMOUNT("400 ft") } each, propylene glycol 20 %.
template-horizontal-sealed = Trenches, sealed, 4 tons
    .note = 4 circuits of 3/4 in SDR 11, { AMOUNT("600 ft") } each, methanol 15 %.
template-vertical-vented = Bores, vented reservoir, 4 tons
    .note = 4 circuits of 3/4 in SDR 11, { AMOUNT("400 ft") } each, propylene glycol 20 %.
template-pond-sealed = Pond, sealed, 5 tons
    .note = 5 circuits of 3/4 in SDR 11, { AMOUNT("300 ft") } each, methanol 20 %.

undo-system = System
step-without-reason = Why is it done all the same?
step-minutes = Minutes it took

reading-formula = A reading is taken to lie within its accuracy in 19 of 20 cases.
reading-accuracy-stated = Accuracy stated for
reading-accuracy-usual = Accuracy usual for
reading-by-statement = Stated by the technician
reading-by-practice = Common practice, no source

error-nothing-to-undo = There is nothing left to take back here.
error-not-a-circuit = "{ $found }" is not the number of a circuit. Write a whole number from { $first } to { $last }, or leave it empty.
error-logo-too-large = The file is too large for a logo. Choose a picture under 8 MB.
error-logo-unreadable = The logo was not taken. Choose a PNG or JPEG picture. ({ $detail })

turn-rests-on = It rests most on this: { $found }. If that were wrong, this cause would lose most.
turn-down = { $check }: if it shows { $seen }, this falls.
turn-up = { $check }: if it shows { $seen }, this rises.

schematic-description = Drawing of this system: flow centre and heat pump indoors, the circuits in the ground, and the points where something can be read.
schematic-flow-centre = Flow centre
schematic-heat-pump = Heat pump
schematic-tank = Expansion tank
schematic-reservoir = Reservoir
schematic-indoors = indoors
schematic-ground-vertical = { $count ->
    [0] ? bores with U-bends
    [one] One bore with a U-bend
   *[other] { $count } bores with U-bends
}
schematic-ground-horizontal = { $count ->
    [0] ? circuits in trenches
    [one] One circuit in a trench
   *[other] { $count } circuits in trenches
}
schematic-ground-pond = { $count ->
    [0] ? coils in the pond
    [one] One coil in the pond
   *[other] { $count } coils in the pond
}
schematic-ground-unknown = { $count ->
    [0] ? circuits in the ground
    [one] One circuit in the ground
   *[other] { $count } circuits in the ground
}

spot-circulator_rise = Pump rise
spot-entering_water = EWT
spot-exchanger_drop = Unit drop
spot-static_pressure = Gauge
spot-suction_pressure = Suction
spot-leaving_water = LWT
spot-flow = Flow
spot-freeze_point_supply = Sample
spot-circuit_return = Circuit
spot-loop_temperature = Loop
spot-strainer_drop = Strainer
spot-tank_pre_charge = Tank air
spot-reservoir_level_change = Level

sign-air = air?
sign-valve = valve?
sign-blocked = blocked?
sign-leak = leak?
sign-gauge = pressure?

picture-path = From cause to finding: { $cause }
picture-path-words = { $cause } leads to what was found: { $found }.
picture-cause = Cause
picture-mechanism = What it does
picture-finding = Found
picture-pair = Before and after: { $point }
picture-pair-words = As it was found and as it was left, in one unit.
picture-velocity-words = Water velocity in each part against the one that carries air along.
picture-pump-words = The loop’s curve goes through the flow that was read, by the law of squares; fluid and temperature change it.
picture-season-words = What the gauge should read at rest over the coming year, if the loop is tight. The loop’s temperatures are { $basis }. The band starts at one pressure and widens with time and temperature; nine readings in ten should lie in it.
picture-season-winter = In the coldest weeks, loop at { $temperature }
picture-season-summer = In the warmest weeks, loop at { $temperature }
why-season-band = The pressure it starts from, moved by what fluid and pipe take up at the temperature of those weeks and by the pipe’s relaxing until then. Nine readings in ten should lie between the ends.
input-season-start = Pressure it starts from

demo-none = Nothing invented is loaded.
demo-there = { $visits } invented visits at { $systems } invented systems are loaded.{ $own ->
    [0] {""}
    [one] {" "}You made one visit of your own at one of these systems; it would stay.
   *[other] {" "}You made { $own } visits of your own at these systems; they would stay.
}

## Where the numbers of an answer come from

why-probability = How often the cause is there before anything was found, moved by what is known of the system and then by all that was found. Each finding counts with what it adds to the rest: findings that say the same are worth less beside each other. Summed exactly over every combination of causes; each cause has a probability of its own.
why-expected = Expected in callbacks before anything is known
why-learned = The same after your own callbacks
why-before-findings = With what is known of the system
why-call = That somebody called at all
why-altogether = With all that was found
why-bits = “9 to 1 for it”: this is found 9 times as readily with the cause as without it; “9 to 1 against it” the other way round. The list shows what it says by itself. Beside everything else found it can add less, down to nothing, where other findings say the same already. In bits: log2 of that number; one bit doubles the odds, three make them eight times as high, below zero it speaks against.
why-alone = By itself, as in the list
why-odds = By itself it changes the odds by
why-beside = Added to everything else found
why-alone-bits = By itself, in bits
why-beside-bits = Added to the rest, in bits
why-added = { $found } (added to the rest)
why-check = How much less open the causes are expected to be after this check, over everything it may show. A clear yes or no to a question that was wholly open is worth 1; the same question half settled before is worth less. Checks are ordered by what they tell a minute. In figures: the expected fall of the entropy of each cause, in bits, summed over the faults and the instruments in doubt.
why-check-bits = Expected to tell
why-check-minutes = Minutes it takes
why-check-rate = For each minute
why-check-about = Of these, about: { $cause }
why-check-source = Minutes: { $source }. Bits: worked out for this call.
why-outcome = How probable it is that the check shows this after all that was found so far, summed exactly over every combination of causes. If it does, the causes move by Bayes’ theorem: after = now × chance with the cause ÷ chance of this.
why-outcome-chance = Chance of this
why-outcome-with = Chance of this with: { $cause }
why-outcome-without = Chance of this without: { $cause }
why-outcome-moves = Now and after it: { $cause }
why-pair = How probable it is that both are there, whatever else is so. It is told because both and nothing else is more probable than any single cause and nothing else.
why-pair-together = Both, whatever else is so
why-pair-alone = Only this: { $cause }
why-worked-out = Worked out for this call from the rule graph; each link names its source at the reasons of its cause.
why-learned-prior = (shipped share × its weight + confirmed) ÷ (weight + callbacks): the mean of a beta distribution after counting. What follows ± is its standard deviation.
why-learned-weight = That is worth
why-learned-worth = { $weight } callbacks
why-learned-own = Confirmed here
why-learned-elsewhere = Confirmed elsewhere
why-learned-of = { $confirmed } of { $callbacks }
why-learned-after = Expected in callbacks now
why-learned-source = Counting: Gelman et al., Bayesian Data Analysis, section 2.4 (from memory). Shipped share: { $source }. Its weight: own estimate.
