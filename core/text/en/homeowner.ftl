# The homeowner's page. Plain words: no jargon, short sentences, spoken to the
# person who lives in the house. What was wrong comes from the causes'
# own sentences (cause-<id>.homeowner).

homeowner-report = Your heating and cooling system
homeowner-title = For the homeowner, { $site }
homeowner-subject = Visit of { $date }
homeowner-subject-by = Visit of { $date } by { $technician }
homeowner-told = You told us: “{ $text }”

homeowner-wrong = What was wrong
homeowner-done = What we did
homeowner-open = What still has to be done
homeowner-call = When to call
homeowner-notice = What you may notice
homeowner-watch = What to watch
homeowner-next = Next visit:
homeowner-safety = for your safety
homeowner-readings = What we measured
homeowner-what = What
homeowner-before = Before
homeowner-after = After
homeowner-should = Should be
homeowner-is-it = Is it so?

# How it ended, in one sentence.
homeowner-short-fixed = Your system is fixed and we checked that it runs as it should.
homeowner-short-fixed-unproved = Your technician has put your system right. Not everything that shows it has been checked yet.
homeowner-short-partly = Your system runs better, but the work is not finished. We will come again.
homeowner-short-nothing_wrong = Your system is in order. What you noticed is normal.
homeowner-short-nothing-so-far = Nothing that needs correcting was found in what was looked at. If what you noticed goes on or comes back, please tell us.
homeowner-short-handed_over = The cause is outside the ground pipe. Another specialist has to finish the repair.
homeowner-short-open = We are not finished yet. Below is what we know so far.
homeowner-short-found = We know what is most likely wrong. The repair still has to be done.
homeowner-short-unknown = We do not know the cause yet. More has to be measured first.
homeowner-short-done = The work is done, and what we measured afterwards is as it should be.
homeowner-short-done-unread = The work is done. Not everything that shows it was measured yet.
homeowner-short-done-missed = The work is done, but not everything that we measured afterwards is as it should be yet.
homeowner-short-done-excused = The work is done, but not every check on the way was met. Your technician wrote down why.
homeowner-short-begun = The work is begun, but not finished.

# How sure it is.
homeowner-sure-checked = We confirmed this with a test at your system.
homeowner-sure-likely = This is the most likely reason by what we measured: { $probability }.
homeowner-sure-tied = It may be one of these. We could not tell them apart with what we measured, so we treat both.
homeowner-wrong-nothing = Nothing is broken.
homeowner-wrong-nothing-so-far = Nothing broken was found so far.
homeowner-wrong-other = The ground pipe is not the reason. The heat pump itself, its air side or its controls need a look.
homeowner-wrong-unknown = The reason is not clear yet.
homeowner-wrong-so-far = It is not certain yet. Most likely so far: { $cause }
homeowner-begun = { $work } (begun)
homeowner-done-in-part = { $work } (a part of it was left out for a reason)

# The picture.
homeowner-picture = Your system
homeowner-picture-words = The pumps move the fluid round and round through the pipe in the ground: it carries heat to the house in winter and back in summer.
homeowner-picture-words-pond = The pumps move the fluid round and round through the pipe in the water: it carries heat to the house in winter and back in summer.
homeowner-picture-mark = { $letter } marks where the fault is or was: { $what }.
plain-sign-air = air
plain-sign-valve = a valve
plain-sign-blocked = something in the way
plain-sign-leak = a leak
plain-sign-gauge = the pressure
plain-part-flow-centre = Pumps
plain-part-heat-pump = Heat pump
plain-part-tank = Expansion tank
plain-part-reservoir = Tank with the fluid level
plain-part-gauge = Pressure gauge
plain-part-indoors = in the house
plain-part-ground-vertical = { $count ->
    [0] Pipe down drilled holes
    [one] One loop of pipe down a drilled hole
   *[other] { $count } loops of pipe down drilled holes
}
plain-part-ground-horizontal = { $count ->
    [0] Pipe in the ground
    [one] One loop of pipe in the ground
   *[other] { $count } loops of pipe in the ground
}
plain-part-ground-pond = { $count ->
    [0] Pipe coils in the water
    [one] One coil of pipe in the water
   *[other] { $count } coils of pipe in the water
}
plain-part-ground-unknown = { $count ->
    [0] Pipe in the ground
    [one] One loop of pipe in the ground
   *[other] { $count } loops of pipe in the ground
}

# Readings in plain words.
homeowner-reading-static_pressure = Pressure in the ground pipe, pumps off
homeowner-reading-flow = Flow through the heat pump
homeowner-reading-freeze_point_supply = Protected against frost down to

# What is normal.
homeowner-notice-band = The pressure gauge is lower in summer and higher in winter, because plastic pipe widens when it is warm. With the pumps off, expect about { $cold } in the coldest weeks ({ $winter } is normal) and about { $warm } in the hottest ({ $summer } is normal).
homeowner-notice-band-even = The pressure gauge moves a little with the seasons. With the pumps off, expect about { $cold } in the coldest weeks ({ $winter } is normal) and about { $warm } in the hottest ({ $summer } is normal).
homeowner-notice-season = The pressure gauge is lower in summer and higher in winter, because plastic pipe widens when it is warm. This is normal.
homeowner-notice-recheck = In the first month the pipe settles: a reading from { $low } to { $high } is normal then.
homeowner-notice-level = The level in the tank goes up and down a little with the temperature. This is normal.
homeowner-notice-bubbles = You may hear a few bubbles in the first days. They should fade and not come back.
homeowner-season = The pressure gauge over the year
homeowner-season-band = normal
homeowner-season-start-left = as left
homeowner-season-start-planned = after filling
homeowner-season-start-found = as found
homeowner-season-from-left = as we left it
homeowner-season-from-planned = once it is filled
homeowner-season-from-found = as we found it
homeowner-season-words = Where the gauge should stand over the coming year with the pumps off, starting from { $left } ({ $start }). Anywhere in the shaded band is normal, as long as no fluid is lost.

# What to watch.
homeowner-watch-gauge = Look at the gauge once a month with the pumps off and write the number down.
homeowner-watch-level = Look at the level in the tank once a month. It should stay near the mark.
homeowner-watch-sound = Listen: the pumps should run quietly, without rattling or gurgling.
homeowner-watch-leak = Look for wet spots, crusts or drips at the pipes and the pumps.
homeowner-watch-filter = Change or clean the air filter as the heat pump's instructions say.

# When to call.
homeowner-phone = Call us at
homeowner-no-phone = Call your service company:
homeowner-call-gauge = if the gauge stands below { $low } or above { $high } with the pumps off, or leaves the shaded band of its season
homeowner-call-pressure = if the gauge keeps falling from month to month, or stands near zero
homeowner-call-level = if the level in the tank falls below its mark
homeowner-call-noise = if the pumps hum, rattle or gurgle again
homeowner-call-stops = if the heat pump stops by itself or shows a fault
homeowner-call-leak = at once if fluid leaks: first switch the heat pump off at its switch, and keep people and pets away
homeowner-call-open = if you hear nothing from us about the work that is still to be done

homeowner-next-date = We will come again on { $date }.
homeowner-next-open = We still have to agree on a day for the work that is not done.
homeowner-next-none = No visit is planned. Have pressure, flow and antifreeze checked once a year.

# Antifreeze and safety.
homeowner-fluid-water = Your ground pipe holds plain water. It must not freeze: tell us if the system will stand still in winter.
homeowner-fluid-propylene_glycol = Your ground pipe holds water with propylene glycol, an antifreeze. It is of low toxicity, but do not drink it, and keep children and pets away from leaks.
homeowner-fluid-ethylene_glycol = Your ground pipe holds water with ethylene glycol, an antifreeze. It is poisonous, and its sweet taste draws children and pets. If anyone swallows any, call the poison centre or the emergency number at once.
homeowner-fluid-methanol = Your ground pipe holds water with methanol, an antifreeze. It is poisonous to drink, to breathe and on the skin, and its vapour burns. If it leaks: no flames, open the windows, go out, call us. If anyone swallows any, call the poison centre or the emergency number at once.
homeowner-fluid-ethanol = Your ground pipe holds water with ethanol made undrinkable, an antifreeze. Its vapour burns. If it leaks: no flames, open the windows, call us. Do not drink it.
homeowner-fluid-unknown = We do not know which antifreeze is in your ground pipe. Treat it as poisonous, and keep children and pets away from leaks.
homeowner-safety-hands-off = Please do not top up, drain or open anything at the pumps: the pipe is under pressure, and what goes in must match what is inside.
homeowner-safety-drain = Loop fluid must not go into a drain, a well or the ground. Leave it to us; local rules say where it may go.
homeowner-safety-inside = Never take covers off the heat pump. Inside are live parts and refrigerant under pressure: work for licensed people only.

# Corrections, in words that fit under “What we did” and under “What still has
# to be done”.
homeowner-work-purge-loop = Flush trapped air and dirt out of the ground pipe, then fill it to the right pressure.
homeowner-work-bleed-circulators = Let the trapped air out of the pumps.
homeowner-work-clean-strainer = Clean the strainer, the sieve that catches dirt, and find where the dirt came from.
homeowner-work-flush-debris = Wash dirt out of the ground pipe, with the heat pump shut off so that nothing gets into it.
homeowner-work-clear-exchanger = Wash out the part of the heat pump where the loop fluid passes.
homeowner-work-read-gauge-first = Read the pressure in the ground pipe before anything is opened.
homeowner-work-strengthen-first = Make the fluid safe against freezing before the heat pump runs again; until then the house is heated by its back-up.
homeowner-work-wait-for-fluid = Keep the heat pump off until the new fluid is in.
homeowner-work-correct-freeze-point-dose = Add antifreeze until the fluid is safe at your winter temperatures.
homeowner-work-dilute = Bring the antifreeze back to the right strength with clean water.
homeowner-work-mix-charge = Mix the fluid so that the antifreeze is the same everywhere in the pipe.
homeowner-work-replace-fluid = Drain the old fluid, flush the pipe and fill it with the right fluid.
homeowner-work-recharge-pressure = Fill the ground pipe to the right pressure for this season.
homeowner-work-stretch-and-recharge = Let the plastic pipe settle under pressure, then fill it to the right pressure.
homeowner-work-relieve-pressure = Let some pressure out of the ground pipe, down to the right range.
homeowner-work-set-valves = Set the valves as they belong and label them.
homeowner-work-find-indoor-leak = Find the leak inside the house and repair it.
homeowner-work-test-circuits-for-leak = Test the ground pipes one by one and shut off the one that leaks.
homeowner-work-balance-circuits = Adjust the ground pipes so that each gets its share of the flow.
homeowner-work-restore-circuit = Get the flow going again in the ground pipe that stood still.
homeowner-work-repair-circulator = Repair or replace the pump that moves the fluid.
homeowner-work-resize-circulator = Match the pump to your ground pipe.
homeowner-work-correct-piping = Correct the piping so that the fluid flows the right way.
homeowner-work-fit-check-valve = Fit a new one-way valve.
homeowner-work-service-expansion-tank = Set or replace the expansion tank, which evens out the pressure.
homeowner-work-refill-reservoir = Refill the tank beside the pump and stop it drawing in air.
homeowner-work-treat-water = Treat or replace the water in the ground pipe.
homeowner-work-descale-exchanger = Remove scale from the part of the heat pump where the loop fluid passes.
homeowner-work-clean-loop-chemically = Clean the ground pipe and refill it with a protective additive.
homeowner-work-correct-gauge = Replace a pressure gauge that read wrong, and measure again.
homeowner-work-correct-thermometer = Check a thermometer that read wrong, and measure again.
homeowner-work-correct-flow-meter = Check a flow meter that read wrong, and measure again.
homeowner-work-correct-refractometer = Check the instrument that tests the antifreeze, and test again.
homeowner-work-correct-hydrometer = Check the instrument that tests the antifreeze, and test again.
homeowner-work-correct-power-meter = Check a power meter that read wrong, and measure again.
homeowner-work-correct-test-kit = Check a water test kit that read wrong, and test again.
homeowner-work-hand-over-refrigerant-gauges = Have a certified refrigerant technician check the refrigerant gauges.
homeowner-work-correct-display = Label the display of the heat pump as reading wrong, and measure with other thermometers.
homeowner-work-explain-and-record = Write down today's readings. Nothing has to be repaired.
homeowner-work-assess-loop-length = Work out whether the ground pipe is long enough for your house.
homeowner-work-hand-over-refrigerant = Have a certified refrigerant technician look at the heat pump itself.
homeowner-work-hand-over-electrical = Have a licensed electrician look at the wiring or controls.
homeowner-work-hand-over-air-side = Have the air filter, coil or ducts put right.
