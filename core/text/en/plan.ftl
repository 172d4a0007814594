# The work plan: procedures, steps, cautions, tools, materials, quantities.
# Steps are read with wet hands: short, one action after the other.


# --- steps ----------------------------------------------------------------

plan-step-keep-unit-off = The fluid may freeze where the water leaves, and burst the exchanger. Do not run the heat pump, tonight either, until the sample gate of this plan has passed. Set the house to its back-up heat and tell the owner so. If the antifreeze cannot be put in today, leave the unit locked off and tagged.
plan-step-lock-power-off = Switch heat pump and circulators off. Lock and tag the switch. Test that the terminals are dead.
plan-step-protect-people = Goggles and gloves on. Drip tray down. Keep the floor dry and people away.
plan-step-look-up-fluid-rules = Look up what the local list allows in a loop and where old fluid may go. Read the safety data sheet. Have closed, labelled containers ready.
plan-step-guard-drinking-water = Fill through a break tank, or through the backflow preventer that local code asks for. Never leave a hose joined to the drinking water.
plan-step-find-lowest-rating = Read the pressure ratings of heat pump, circulators, tank, relief valve, cart and hoses. The lowest is the limit for all work today.
plan-step-enter-vault = If valves or manifold lie in a vault or pit: test the air, have someone stay outside, follow the site's rules for confined spaces. Otherwise go on.
plan-step-check-display = Before anything is switched off: with the heat pump running steadily, read the display and own thermometers at the same ports. Write both down.
plan-step-read-rise-with-valves-open = Before the circulator is blamed: open every isolation valve fully, with the circulators running. Read rise, drop across the exchanger and power again. If the flow is right now, the circulator stays where it is.
plan-step-test-circulator-supply = Called to run and not running: have the voltage at its terminals measured. No voltage: the fault is in relay, fuse or control, and the circulator stays where it is.
plan-step-bleed-below-rating = If a gauge reads near the lowest rating or above it: stand aside, put a hose on a drain and open it a crack until the gauge is well below. Only then touch caps, ports or gauges.

plan-step-mark-wet-joints = Wipe every indoor joint dry. Look for crust and drips. Wrap suspects in paper and mark them.
plan-step-compare-loop-and-indoor = Close the loop valves. Write down the loop's gauge and the indoor gauge, now and at the end of the timer. The side that falls leaks; the pipe's own relaxing slows down with time. The indoor part is small and stiff: a leak there shows within minutes, and its gauge climbs as the room warms it. Watch it for a quarter of an hour, never leave it shut full and unattended, keep it below the lowest rating. Where too little stands on the gauge, wait with this until the loop is charged.
plan-step-test-each-circuit = Open the loop to the cart, heat pump valved off. One circuit after the other at the manifold, all others shut: raise it to working pressure with the cart, close it, write both readings down. A fall that does not slow down is a leak. After a charge the pipe relaxes by itself: compare the circuits with each other, and wait a day before you judge a small difference.
plan-step-measure-each-circuit = Before anything is switched off, with the circulators running: write down the return temperature and, if you can, the flow of every circuit. The odd one out is the suspect.
plan-step-read-flow-arrows = Read the arrow on each circulator and check valve and follow the pipes. Sketch the real direction of flow.
plan-step-read-valve-positions = Write down how every valve and three-way port stands before you touch it.
plan-step-test-circulator-electrics = Dead and locked: discharge the capacitor, then measure capacitor, relay contacts and winding, or have an electrician do it where the law asks for a licence. Change what failed and try again before the circulator comes out.
plan-step-sample-as-found = Take a sample through a port into a clean bottle. Measure freeze point, pH and temperature with the right instrument for this fluid. Smell and look.
plan-step-test-fill-water = Test the water you will fill with: hardness, chloride, iron, pH. Bring other water if it fails.
plan-step-compare-gauges = Unless it was done today: put a second gauge on the same port and write both readings down. A gauge for differences: both its hoses on one port, it must read zero.
plan-step-check-thermometer = Stir crushed ice and water. Dip the suspect and a second thermometer: both must read the freezing point of water. Clamp thermometer: then on clean bare pipe under insulation, beside a port thermometer.
plan-step-check-flow-meter = With the circulators off it must read zero. Check its direction, the straight pipe before it, and the fluid it is set for. Tag it: no proof rests on it until it agrees.
plan-step-check-refractometer = Clean the prism. Distilled water at room temperature must read the freezing point of water. Check that the scale is that of this fluid. For methanol and ethanol use a hydrometer.
plan-step-check-hydrometer = Clean it. Distilled water at its calibration temperature must read one; correct for any other temperature. Look for cracks and a shifted paper scale. Read at the lower edge of the meniscus.
plan-step-check-power-meter = With nothing running it must read zero. One conductor only in the clamp, jaws closed, right range.
plan-step-check-test-kit = Read the expiry date. Test a buffer solution for pH, and distilled water for hardness, chloride and iron: it must show none.
plan-step-read-gauge-at-rest = Circulators off, and before anything is opened: read the loop gauge at rest and the loop temperature, and enter both. The plan changes with them: a pressure that has served is left again.
plan-step-read-run-hours = Read run hours and the entering-water log for the season.

plan-step-valve-off-unit = Close the valves to the heat pump, so that nothing washed out of the loop passes through it. If it is to be opened, it was let down before: check its zero once more.
plan-step-valve-off-loop = Close the loop valves, so that only the indoor part is opened.
plan-step-take-circuit-out = Close both valves of the bad circuit and tag them. Open the others again, and the heat pump. If it has no valves, do not cut: go on without, and plan the excavation.
plan-step-open-dead-circuit = Open both valves of the dead circuit and tag them. If they were open already, air or a kink holds it: purging it alone will tell.
plan-step-bleed-ports = With the port valves shut, crack the caps over the tray: what stands behind them comes out, then nothing more. If it does not stop, a valve leaks: tighten the caps and relieve the loop first.
plan-step-relieve-indoor = Heat pump's own valves open, so that the exchanger comes down too. Drain the indoor part through a hose into the container and measure what comes. Wait until the gauge reads zero and stays there with the drain open.

plan-step-connect-cart = Connect supply and return hose to the flush ports and the cart (a charging pump will do to top up alone). Fill the hoses and drive their air into the cart tank.
plan-step-open-strainer = Check zero once more. Open the strainer over the tray.
plan-step-open-circulator = Check zero and dead once more. Undo the circulator over the tray.
plan-step-open-indoor-joint = Check zero once more. Open the joint over the tray.
plan-step-connect-descaler = Check zero once more. Connect the descaling pump across the exchanger only. The circulators stay valved off.
plan-step-connect-back-flush = Check zero once more, at the exchanger too. Connect the second pair of hoses, with their tees and valves, from the cart across the exchanger only, against its normal flow. The hoses at the flush ports stay on, shut. The circulators stay valved off.
plan-step-swap-instrument = Close the gauge cock or check that the port is at zero. Change the gauge, or tag it with its error.

plan-step-change-circulator = Turn the shaft by hand and look for grit and wear. Repair or replace. Mind the arrow, and the shaft level for a wet rotor.
plan-step-turn-piping-round = Pipe as the arrows and the unit's instructions ask. Label supply and return.
plan-step-put-check-valve-in = Fit the check valve with its arrow in the direction of flow, one for each circulator if they stand side by side.
plan-step-mend-joint = Mend the joint as its maker asks. Let it cool and cure before pressure.
plan-step-set-tank-air = Drain the tank's fluid side. Water at the air valve: replace the tank. Otherwise set the air pressure.
plan-step-wash-strainer = Wash the screen. Keep what you find in a bag: it tells where it came from.

plan-step-refit-strainer = Clean the seat, fit a new gasket, close the strainer.
plan-step-refit-circulator = Fit new seals, tighten crosswise, close the terminal box.
plan-step-close-indoor-joint = Close the joint. Check that every part opened today is closed.

plan-step-circulate-loop-cleaner = Open the loop to the cart, heat pump valved off. Circulate the cleaner through the loop only, as strong, as warm and as long as its sheet says.
plan-step-displace-old-fluid = Open the loop to the cart, heat pump valved off. Push the old fluid out with approved water into labelled containers until the return is clean water.
plan-step-flush-loop = Open the loop to the cart, heat pump valved off. Flush the loop. Coarse bag first; when it stays clean, fine bag. Where more than one group is given: one group of circuits at a time, all others shut. Keep one direction while dirt still comes.
plan-step-check-return-clear = Fit a clean bag and watch: the return stays clear and the bag stays clean.
plan-step-circulate-descaler = Circulate the descaler through the exchanger only, against the normal flow if its sheet allows. No stronger and no longer than the unit's instructions say.
plan-step-check-descaled = Watch the pressure drop at steady flow until it no longer falls.
plan-step-neutralise-cleaner = Neutralise the cleaner in the bucket and the exchanger. Drain it into its container.
plan-step-rinse-exchanger = Rinse with approved water. Measure the pH of what comes out.
plan-step-let-descaler-down = Stop the descaling pump. Unplug it. Let the hoses down to zero and drain the exchanger: rinsing water left in it thins the loop.
plan-step-disconnect-descaler = Take the hoses off over the tray. Cap the ports.
plan-step-back-flush-exchanger = Push water backwards through the exchanger into a coarse bag, at no more than the unit's flow. What comes out does not go round again.
plan-step-check-exchanger-clear = Fit a clean bag and watch: the water stays clear and the bag stays clean.
plan-step-let-back-flush-down = Stop the cart. Let the second pair of hoses down to zero and drain the exchanger: water left in it thins the loop.
plan-step-disconnect-back-flush = Take the second pair of hoses off the exchanger over the tray. Cap its ports. The hoses at the flush ports stay on for the purge.
plan-step-flush-unit = Close the loop, open the heat pump slowly. Flush the indoor part through the fine bag with the fluid that the loop now holds, at no more than the unit's flow.

plan-step-purge-loop-side = Open the loop to the cart, heat pump valved off. Purge the loop with the fluid that it now holds; top up with fluid of the same strength. Where more than one group is given: one group of circuits after the other, all others shut. Vent high points.
plan-step-purge-dead-circuit = Shut every other circuit at the manifold. Purge this one alone, at the flow given for one circuit, until it runs freely and no bubble comes. If it stays dead, it is kinked or blocked: plan the excavation. Open the others again; they were not opened and need no purge.
plan-step-check-no-bubbles = Look at the return under the fluid level: no bubbles.
plan-step-fill-indoor = Keep the loop valves shut. Heat pump open. Fill the drained indoor part slowly from the cart with fluid of the same strength, high points open, until clear fluid comes there. It takes as much as was drained.
plan-step-purge-unit-side = Shut the loop, open the heat pump slowly. Purge the indoor part with the same fluid at the unit's flow until no bubble comes back. Vent its high points.
plan-step-vent-indoor = Open one loop valve slowly and let the indoor part fill from the reservoir. Top the reservoir up all the while with fluid of the same strength: never let it run empty. Vent the indoor high points until clear fluid comes, then open the other valve.
plan-step-valve-off-tank = Close the valve of the expansion tank: its air gives way as air in the loop does, and the test would never pass. No valve: plug its connection for the test, or the test tells nothing. Put a gauge where the cart pumps: the tank no longer softens a blow.
plan-step-valve-off-reservoir = Valve the reservoir off: it is open to the room and holds no pressure. Never pump into it with its lid shut.
plan-step-dead-head-test = Open loop and heat pump. Mark the cart tank's level. Shut the return valve slowly and let the pressure rise to the test pressure. Read the drop of the level. Open the valve.

plan-step-drain-before-dose = Draw this much off the loop into a labelled container, to make room for what is added. A full loop takes nothing in.
plan-step-dose-antifreeze = Pump the antifreeze in below the fluid level of the cart tank, slowly, with the cart circulating through the loop. Glycol: pump, do not pour. Alcohol: premixed only.
plan-step-drain-and-dilute = Drain this much into a labelled container and replace it with approved water, slowly, with the cart circulating.
plan-step-dose-inhibitor = Add the inhibitor, as much as its sheet asks for this loop volume and fluid.
plan-step-mix-loop = Open the loop to the cart, heat pump valved off. Circulate until the timer ends.
plan-step-mix-unit = Open the heat pump and circulate through everything.
plan-step-sample-two = Take a sample at supply and, when the timer ends, one at return. Measure both, corrected for temperature. Weak or strong: correct the dose and mix again. Unequal: mix on.
plan-step-sample-after-work = Take one sample at the return. Measure its freeze point, corrected for temperature. Weaker than needed: dose before the heat pump runs.
plan-step-open-tank-again = Open the valve of the expansion tank again, and leave it open. Take out what was plugged.
plan-step-open-reservoir-again = Let the pressure of the test down, then open the reservoir again.

plan-step-stretch-pipe = Raise the loop to the stretch pressure with the cart and hold it there with the supply valve open.
plan-step-charge-to-pressure = Set the pressure to leave. Close supply and return. Write down how much it took.
plan-step-let-pressure-down = Open a drain a crack, through a hose into the jug. Stop at the pressure to leave. Write down the volume.
plan-step-set-reservoir-level = Fill the reservoir to its mark with fluid of the same strength. Close the lid and check its seal.
plan-step-watch-indoor-part = Close the loop valves for a quarter of an hour and stay by the indoor gauge. The indoor part is small and stiff: a leak too slow to move the whole loop makes its gauge fall here within minutes. If it climbs, the room warms it: keep it below the lowest rating. Open the loop valves again.
plan-step-hold-test = Leave everything alone. Write down gauge and time at the start, in the middle and at the end. If it falls more than allowed: look for the leak before setting the pressure again.

plan-step-set-valves-to-run = Turn every valve and three-way port to run. Take handles off or tie them. Tag.
plan-step-bleed-hoses = Unplug the cart. Let the hoses down into its tank until the gauge at the port reads zero.
plan-step-disconnect-cart = Take the hoses off over the tray. Cap the ports. Take every fill hose off the drinking water.

plan-step-bleed-circulators = Power still locked off. Loosen the vent plug one turn with a cloth around it until fluid comes without bubbles. Close it. Turn the shaft by hand.
plan-step-restore-power = Covers on, tools and people clear. Take lock and tag off. Switch on.
plan-step-start-circulators = Run the circulators alone. Listen. Read suction and rise.
plan-step-bleed-circulators-again = After the first minutes of running: switch off, lock, prove dead. Loosen the vent plug once more until no bubble comes. Close it. Covers on, lock off, run again.
plan-step-set-circulator-speed = Set the speed that gives the flow the heat pump needs, no more.
plan-step-throttle-circuits = Throttle the circuits that return too close to the supply. Start with all valves open. Let it settle.
plan-step-check-balance = Read the return of every circuit. Compare the largest with the smallest.
plan-step-replace-thermometer = Set it right, change it, or tag it with its error. Try it in ice water once more, its error taken off.
plan-step-replace-flow-meter = With the circulators running: work the flow out from the exchanger's drop, with the fluid's correction, and compare. Set the meter right, or leave the tag on: changing it opens the pipe.
plan-step-replace-refractometer = Set its zero with distilled water, or change it. Read distilled water once more, then the sample.
plan-step-replace-hydrometer = Tag it with its error, or change it. Read distilled water once more, its error taken off, then the sample.
plan-step-replace-power-meter = With the circulators running: compare it with a second meter on the same conductor. Change it, or tag it with its error.
plan-step-replace-test-kit = Open a fresh kit. Test the buffer solution again, then the water or the fluid.
plan-step-tag-display = Tag the display with its error and use own thermometers for every reading. Have its sensor reseated or changed by whoever is licensed for it.

plan-step-prove-flow = Read the flow, or the drop across the exchanger with the fluid's correction.
plan-step-prove-temperatures = Run the heat pump. When it is steady read entering and leaving water.
plan-step-compare-new-gauge = Compare the new gauge, or the tagged one with its error taken off, with the second one on the same port.
plan-step-repeat-readings = Repeat today's readings that rested on this instrument. Run the diagnosis again with them.

plan-step-record-as-left = Write down pressure, level, flow, freeze point and valve positions as left, and what was put in and taken out.
plan-step-tell-owner = Tell the owner what was wrong, what was done, what to watch, when to call.
plan-step-check-circulator-choice = Highest speed and still too little flow: work out the circulator for this loop and fluid, and offer to change it.
plan-step-log-rechecks = Agree on readings after a day, a week and a month. The volume added must keep shrinking; the same again each time is a leak.
plan-step-plan-excavation = Ask for utility marks before digging. Excavation and fusion are for those trained and insured for it.
plan-step-stop-before-refrigerant = Flow is proven: stop here. Put no refrigerant gauges on. Hand flow, water temperatures and this record to a certified refrigerant technician.
plan-step-hand-on-refrigerant-gauges = Rest no finding on these gauges. Have a certified refrigerant technician check their zero, and compare them at rest with the saturation pressure at the temperature of the room.
plan-step-stop-before-electrical = Stop at the disconnect. Hand sensor, switch and control findings to a licensed electrical technician.
plan-step-hand-on-air-side = Have filter, coil, blower and ducts checked. Do not open the cabinet beyond the filter door.
plan-step-advise-on-loop-length = If flow and fluid are as they should be now: record entering water against run hours; give it to the designer: less load, more loop, or a second source.

# --- cautions -------------------------------------------------------------

plan-caution-lock-and-prove-dead = Electric shock kills. Lock, tag, prove dead with a tester you have just tried on a live point. Work beyond isolation is for licensed electricians; local code decides.
plan-caution-live-tests-by-electrician = Electric shock and arc kill. Measuring on live terminals is for licensed electricians where the law says so. Rated meter and leads, dry gloves, dry floor, never alone; covers back on at once.
plan-caution-covers-before-power = Electric shock kills. All covers on and dry before power returns.
plan-caution-cart-on-tested-socket = Wet floor and mains: cart only on a tested residual-current (GFCI) socket, plug up and dry. The cart is not explosion-proof.
plan-caution-bleed-to-zero-first = Fluid under pressure. Zero on the gauge and an open drain before anything is loosened. A blocked gauge also reads zero.
plan-caution-never-above-lowest-rating = Never above the lowest pressure rating in the system, hoses and cart included. Unit's instructions and nameplates win over this plan.
plan-caution-stand-clear-of-plugs = Stand aside of caps, plugs, hoses and sight glasses under pressure. Water tests only, never air.
plan-caution-turn-valves-slowly = Turn slowly. Caps on before a three-way port is moved: it may spray.
plan-caution-loosen-never-remove = Under pressure: loosen the vent plug, never take it out.
plan-caution-gas-stores-energy = Compressed gas stores energy. Fluid side at zero and open; never above the tank's nameplate.
plan-caution-no-spark-near-alcohol = Alcohol vapour burns, and so does a strong mixture. Outdoors or well aired, containers bonded, no flame, no spark, no cart motor beside an open drum. Local fire code decides.
plan-caution-gloves-goggles-sheet = Some fluids poison by mouth, skin or breath. Gloves, goggles, fresh air, safety data sheet at hand. Never siphon by mouth.
plan-caution-acid-and-biocide = Acids, cleaners and biocides burn skin and eyes. Gloves, goggles, apron, eye wash. Never mix two products. Add acid to water.
plan-caution-catch-every-drop = Nothing to ground, storm drain or septic tank; to sewer only with consent. Catch it, close it, label it. Report what gets away.
plan-caution-dry-floor = Wet floors and hoses trip. Mop up, route hoses, no ladder on a wet floor.
plan-caution-lift-with-two = Drums, carts and pumps are heavy (a full 55-gallon drum weighs some 450 lb, 200 kg). Two people or a hoist.
plan-caution-vault-rules = Vaults, pits and trenches kill by bad air and collapse. Permit, air test and someone outside, as local rules ask. If in doubt stay out.
plan-caution-air-gap-to-drinking-water = Loop fluid must never reach the drinking water: air gap or the backflow preventer that local code asks for. Hose off after filling.
plan-caution-let-it-cool = Circulators and pipes may be hot, or below freezing. Feel from a distance first; let them come to room temperature.
plan-caution-certified-refrigerant-only = Refrigerant work only by certified persons, by law. Some refrigerants burn; all displace air.

# --- tools ----------------------------------------------------------------

plan-tool-lock-and-tag = Lock and tag
plan-tool-voltage-tester = Voltage tester
plan-tool-goggles-and-gloves = Goggles and chemical-proof gloves
plan-tool-drip-tray = Drip tray
plan-tool-flush-cart = Flush cart with filter housing
plan-tool-hoses = Flush hoses with port adapters
plan-tool-second-hoses = Second pair of hoses with tees and valves
plan-tool-valve-key = Valve key
plan-tool-pressure-gauge = Pressure gauge
plan-tool-second-gauge = Second, known-good gauge
plan-tool-bucket-and-hose = Bucket and drain hose
plan-tool-wrenches = Wrenches
plan-tool-vent-screwdriver = Screwdriver for the vent plug, cloth
plan-tool-port-thermometers = Port thermometers
plan-tool-clamp-thermometers = Clamp thermometers
plan-tool-ruler = Ruler
plan-tool-watch = Watch
plan-tool-power-meter = Power meter
plan-tool-flow-or-difference-gauge = Flow meter, or one gauge for both ports
plan-tool-cart-level-ruler = Ruler on the cart tank
plan-tool-clean-white-cloth = White cloth
plan-tool-refractometer-or-hydrometer = Refractometer (glycol) or hydrometer (methanol), right scale
plan-tool-sample-bottles = Clean sample bottles
plan-tool-transfer-pump = Transfer pump
plan-tool-descaling-pump = Descaling pump with bucket
plan-tool-ph-strips = pH strips
plan-tool-water-test-kit = Water test kit
plan-tool-measuring-jug = Measuring jug or drum scale
plan-tool-charging-pump = Charging pump
plan-tool-paper-towels = Paper towels and marker
plan-tool-tank-gauge-and-pump = Low-pressure air gauge and hand pump
plan-tool-run-hour-log = Run-hour log of the unit
plan-tool-multimeter = Multimeter that measures capacitance
plan-tool-buffer-solution = pH buffer solution
plan-tool-second-power-meter = Second, known-good power meter
plan-tool-distilled-water = Distilled water
plan-tool-ice-water = Crushed ice and water, stirred

# --- materials ------------------------------------------------------------

plan-material-coarse-bag = Coarse filter bags
plan-material-fine-bag = Fine filter bags
plan-material-approved-water = Approved fill water
plan-material-same-fluid = Loop fluid of the same kind and strength
plan-material-valve-tags = Valve tags
plan-material-port-caps-and-seals = Port caps and seals
plan-material-waste-container = Closed, labelled waste containers
plan-material-strainer-gasket = Strainer gasket
plan-material-circulator-and-seals = Circulator, seals
plan-material-pipe-fittings = Pipe and fittings
plan-material-check-valve = Check valve
plan-material-arrow-labels = Flow-direction labels
plan-material-antifreeze-or-premix = Antifreeze of the kind in the loop, or premix
plan-material-inhibitor = Inhibitor that suits the fluid
plan-material-loop-cleaner = Loop cleaner with its data sheet
plan-material-descaler = Descaler that the unit's instructions allow
plan-material-neutraliser = Neutraliser
plan-material-joint-materials = Seals, fittings, sealant
plan-material-expansion-tank = Expansion tank

# --- stages, sides, hazards -----------------------------------------------

plan-stage-make-safe = Make safe
plan-stage-inspect = Look and measure
plan-stage-isolate = Isolate
plan-stage-relieve = Relieve pressure
plan-stage-open = Open
plan-stage-repair = Repair
plan-stage-clean = Clean
plan-stage-refit = Close again
plan-stage-flush = Flush
plan-stage-purge = Purge
plan-stage-dead-head = Dead-head gate
plan-stage-dose = Dose
plan-stage-mix = Mix
plan-stage-sample = Sample gate
plan-stage-charge = Charge
plan-stage-hold = Hold gate
plan-stage-close = Disconnect and set to run
plan-stage-restart = Restart
plan-stage-adjust = Adjust
plan-stage-prove = Prove
plan-stage-hand-over = Hand over

plan-side-any = everything
plan-side-loop = loop
plan-side-unit = indoor part
plan-side-whole = whole system

plan-section-loop = the loop
plan-section-unit = the indoor part
plan-section-exchanger = the exchanger
plan-section-ports = ports and hoses

plan-hazard-pressure = Pressure
plan-hazard-electric = Electricity
plan-hazard-flammable = Fire
plan-hazard-toxic = Poison
plan-hazard-corrosive = Burns by chemicals
plan-hazard-refrigerant = Refrigerant
plan-hazard-lifting = Heavy load
plan-hazard-confined = Confined space
plan-hazard-potable = Drinking water
plan-hazard-slip = Slipping
plan-hazard-hot = Heat and cold
plan-hazard-spill = Spill

plan-observation-bubble-free-time = Time without bubbles
plan-observation-clear-return-time = Time with clear return and clean bag
plan-observation-sample-difference = Difference of the two samples
plan-observation-pressure-fall = Fall of the gauge
plan-observation-return-spread = Spread of the circuits' returns
plan-observation-instrument-disagreement = Disagreement with the second gauge
plan-observation-thermometer-error = Error in ice water
plan-observation-flow-disagreement = Disagreement with the flow by the exchanger's drop
plan-observation-water-freeze-point-error = Error of the freeze point of distilled water
plan-observation-water-gravity-error = Error of the specific gravity of distilled water
plan-observation-power-disagreement = Disagreement with the second power meter
plan-observation-buffer-error = Error of the pH of the buffer solution
plan-observation-steady-drop-time = Time with steady pressure drop

plan-timer-flush = Flush
plan-timer-purge = Purge
plan-timer-mix = Mix
plan-timer-sample = Wait between samples
plan-timer-stretch = Hold stretched
plan-timer-hold = Hold
plan-timer-clean = Let the cleaner work
plan-timer-settle = Let it settle

plan-rule-at-most = at most
plan-rule-at-least = at least

plan-proof-time-now = before leaving
plan-proof-time-rechecks = after a day, a week, a month
plan-proof-time-after-day = after a day
plan-proof-time-after-week = after a week
plan-proof-time-after-month = after a month

plan-flow-centre-sealed = sealed flow centre
plan-flow-centre-sealed-with-tank = flow centre with expansion tank
plan-flow-centre-non-pressurised = vented reservoir

# --- quantities -----------------------------------------------------------

plan-quantity-loop-volume = Volume of the loop
plan-quantity-indoor-volume = Indoor part and exchanger hold
plan-quantity-needed-flow = Flow the heat pump needs
plan-quantity-lowest-rating = Never above
plan-quantity-least-flow = Flow, no less than
plan-quantity-purge-flow = Purge flow
plan-quantity-circuit-purge-flow = Flow for one circuit alone
plan-quantity-circuit-volume = One circuit holds
plan-quantity-purge-loss = Pressure at the cart for that flow
plan-quantity-cart-velocity = Velocity the cart reaches
plan-quantity-purge-groups = Groups to purge one after the other
plan-quantity-turnover-time = One turnover
plan-quantity-flush-time = Flush at least
plan-quantity-purge-time = Purge each group at least
plan-quantity-unit-flush-time = Indoor part at least
plan-quantity-coarse-filter = Coarse bag
plan-quantity-fine-filter = Fine bag
plan-quantity-dead-head-pressure = Raise to
plan-quantity-dead-head-limit = Level may drop at most
plan-quantity-dead-head-air = Air left at that drop
plan-quantity-target-freeze-point = Freeze point to reach
plan-quantity-freeze-point-floor = Freeze point, no lower than
plan-quantity-antifreeze-dose = Antifreeze to add
plan-quantity-drain-volume = Drain first
plan-quantity-dilution-volume = Replace by water
plan-quantity-mix-time = Mix at least
plan-quantity-stretch-pressure = Stretch at
plan-quantity-leave-pressure = Pressure to leave
plan-quantity-leave-pressure-low = Leave no less than
plan-quantity-leave-pressure-high = Leave no more than
plan-quantity-recheck-day-low = After a day, no lower than
plan-quantity-recheck-day-high = After a day, no higher than
plan-quantity-recheck-week-low = After a week, no lower than
plan-quantity-recheck-week-high = After a week, no higher than
plan-quantity-recheck-month-low = After a month, no lower than
plan-quantity-recheck-month-high = After a month, no higher than
plan-quantity-season-low = Lowest over the seasons, by the model alone
plan-quantity-season-high = Highest over the seasons, once the pipe has relaxed, by the model alone
plan-quantity-missing-volume = Fluid missing
plan-quantity-release-volume = Fluid to let out
plan-quantity-hold-time = Hold for
plan-quantity-hold-fall-limit = Gauge may fall at most
plan-quantity-standing-hold-time = Watch it for
plan-quantity-standing-fall-limit = A tight loop falls in that time at most
plan-quantity-tank-pre-charge = Air pressure of the tank
plan-quantity-suction-floor = Suction, no less than
plan-quantity-temperature-change-low = Water temperature change, no less than
plan-quantity-temperature-change-high = Water temperature change, no more than
plan-quantity-exchanger-drop-low = Drop across the exchanger, no less than
plan-quantity-circulator-power-low = Electric input of all circulators at full speed, no less than
plan-quantity-exchanger-drop-high = Drop across the exchanger, no more than
plan-quantity-lowest-leaving-water = Lowest leaving water reckoned with
plan-quantity-leaving-water-limit = Leaving water in heating, no lower than
plan-quantity-reservoir-fill = Fluid to fill the reservoir

# --- parts of the system that a quantity is of -----------------------------

plan-part-whole = whole loop
plan-part-circuits = circuits of kind { $number }
plan-part-supply-header = supply header
plan-part-return-header = return header
plan-part-all-open = all circuits open
plan-part-group = group { $number }

# --- why a quantity is missing ----------------------------------------------
# What is unknown is a clause, which stands in one of these two sentences.

plan-not-worked-out = Cannot be worked out: { $why }.
plan-hardly-known = { $value }: hardly known, nothing to work by. Look it up or measure it first.
plan-without-gauge = Read the gauge at rest first and enter it; this figure is reckoned without it: { $value }
plan-usual-figure = { $figure }, the usual figure, because { $why }.

plan-lack-circuits = the circuits are not recorded
plan-lack-indoor-pipe = the indoor pipe is not recorded
plan-lack-fluid-kind = the kind of fluid is not known (have a sample tested)
plan-lack-freeze-point-sample = no freeze point was read with an instrument that fits this fluid (test a sample first; alcohol: with a hydrometer)
plan-lack-cart-curve = the cart's pump curve is not recorded
plan-lack-cart-tank = the diameter of the cart's tank is not recorded
plan-lack-exchanger-curve = the exchanger's curve is not recorded
plan-lack-unit-rating = the heat pump's rated capacity and flow are not recorded
plan-lack-nameplates = the nameplates of the circulators are not recorded
plan-lack-static-reading = the pressure at rest was not read
plan-lack-gauge-too-low = so little stands on the gauge that a leak would hardly move it (charge first, then watch)
plan-lack-too-little-known = too little is known of pipe, ground and the seasons' temperatures; log gauge and water temperature through the year
plan-lack-tank-data = volume and pre-charge of the expansion tank are not recorded
plan-lack-reservoir-size = the reservoir's diameter is not recorded
plan-lack-reservoir-level = the reservoir's level was not read
plan-lack-cooling = Has no meaning in cooling.
plan-lack-flow-centre = Has no meaning for this flow centre.
plan-lack-nothing-to-do = Nothing to do: it is there already.
plan-lack-outside-model = the values lie outside what the model covers

# --- remarks ---------------------------------------------------------------

plan-remark-rating-unknown = No pressure rating of the heat pump is recorded. The conservative limit is used; read the nameplate before you go near it.
plan-remark-cart-too-small = This cart does not reach the velocity everywhere, not even one circuit at a time. Bring a larger one, shorter or wider hoses.
plan-remark-loss-above-rating = All circuits at once would take { $loss } at the cart, and { $rating } is the limit: purge them in groups or one after the other, each at its own purge flow.
plan-remark-large-header = A header this large clears of air only at { $velocity }: vent its high points.
plan-remark-hoses-assumed = The hoses are not recorded: two of { AMOUNT("1 in") }, { AMOUNT("10 ft") } each, are assumed.
plan-remark-product-assumed = Glycol is taken as pure concentrate, alcohol as premix half and half by volume. Read the label and correct the dose for what it says.
plan-remark-no-pressure-serves = No pressure is certain to keep this loop inside its limits in every season. The one given is the best: it stays inside with a probability of { $inside }. At the ends of its band it reads { $short } too low or { $over } too high. { $narrow } See it again before the season turns.
plan-remark-limited-by-rating = The seasons ask for more than may be left in the loop today: at the end of its band the pressure falls { $short } too low. It stays inside its limits with a probability of { $inside }. See it again before the season turns.
plan-remark-bare-least = No pressure is certain to keep this loop inside both its limits in every season: it stays there with a probability of { $inside }. The one given keeps at least what the circulators need, and stays below the lowest rating. Read the gauge again before the season turns.
plan-remark-pressure-kept = Nothing speaks against the pressure at which the loop stood when it was met: set it back to that. By pipe and seasons alone it stays inside its limits with a probability of { $inside }; { $stood } Read the gauge again before the season turns.
plan-remark-pressure-kept-unsure = Nothing speaks against the pressure at which the loop stood when it was met: set it back to that. What is known of pipe and seasons does not suffice to foretell whether it stays inside its limits; { $stood } Read the gauge again in the coldest and in the warmest week, with the water temperature.
plan-stood-every-season = it has come through every season on the charge of { $day }, as far as is on record.
plan-stood-since = it has stood on the charge of { $day }, not yet through every season.
plan-stood-unknown = since when it stands so is not on record.
plan-remark-seasons-unsure = Even in one and the same week the reckoning leaves { $width } open: that is what is not known of this loop, not how far it will swing. { $narrow } Note gauge and water temperature together in the cold and in the warm season: such a pair tells how far this loop itself moves.
plan-remark-may-pass-rating = At the upper end of its band the loop may come to { $high }, above the lowest rating of { $rating }. No pressure that serves today rules it out. See that a relief valve set no higher than the rating is on the loop, and read the gauge before the cold season.
plan-remark-read-gauge-first = The pressure at rest was not read. Read it before anything is opened: if it lies inside the limits and the loop ran well on it, set it back to that instead.
plan-remark-freezes-where-it-leaves = The fluid freezes at { $freezes }, and the water leaves at { $leaving } or must be reckoned with there: strengthening comes first, whatever the cause. The heat pump stays off until it is done.
plan-remark-lowest-entering-assumed = Nobody logged the lowest entering water of the season: { $entering } is taken, as in loops of usual size. Log it in the coldest weeks; the dose can then be made exact.
plan-remark-comes-back = What is let down comes back in part, for the pipe goes on shrinking: after a month the gauge reads some { $after } at the same temperature. Do not let it down further today; read it at the rechecks and let it down again where it lies above their band.
plan-remark-hold-shows = The hour after a charge shows only a leak that takes { $shows } a day or more, for the pipe relaxes too. A slower one shows after a night at rest and at the rechecks.
plan-remark-hold-cannot-show = The gauge fell { $leak } a day. The hour after a charge shows only { $shows } a day or more, for the pipe relaxes too: a hold that passes does not prove it tight. Let it stand for a night, watch it again, and let the rechecks decide.
plan-narrow-modulus = Most would be gained by recording the pipe and its wall, and by a second reading some days after the charge.
plan-narrow-pipe-expansion = Most would be gained by recording the pipe, and by a second reading some days after the charge.
plan-narrow-restraint = Most would be gained by later readings, which show how firmly the ground holds the pipe.
plan-narrow-fluid-expansion = Most would be gained by testing a sample: which fluid, how strong.
plan-narrow-charge-pressure = Most would be gained by a better gauge for the charge.
plan-narrow-charge-temperature = Most would be gained by measuring how warm the loop is today: entering and leaving water.
plan-narrow-trapped-air = Most would be gained by purging until no air is left.
plan-narrow-temperature = Most would be gained by noting the water temperatures of the seasons.
plan-narrow-model = Most would be gained by readings over the next weeks.
plan-narrow-none = Its own readings narrow the band.

# --- formulas in words -----------------------------------------------------

why-plan-lowest-rating = The lowest of the ratings known for heat pump and cart, and never above { AMOUNT("100 psi") }; with an expansion tank never above its usual relief valve of { AMOUNT("3 bar") }.
why-plan-volume-by-capacity = Some { AMOUNT("21 gal") } of loop per ton, loosely, for want of a record.
why-plan-volume-by-pipe = Bore and length of every recorded pipe, the exchanger, and a share for what is not recorded; real bores are 2 to 3 % smaller in area than the published least wall says.
why-plan-indoor-volume = Bore and length of the recorded indoor pipe, and the exchanger: as recorded, or { AMOUNT("0.5 gal") } per ton.
why-plan-flow-rated = The flow that the unit's instructions ask for; within 10 % is good.
why-plan-flow-by-capacity = { AMOUNT("3 gpm") } per ton, and no less than { AMOUNT("2.25 gpm") }.
why-plan-suction-floor = What the circulators ask for, and at least { AMOUNT("3 psi") }.
why-plan-suction-floor-vented = What the circulators ask for, and no vacuum. Above a vented reservoir stands only its own level, some { AMOUNT("1 psi") } for { AMOUNT("2.3 ft") }; a vacuum at the inlet draws air in.
why-plan-reservoir-fill = Area of the reservoir times how far the level stands below its mark.
why-plan-leaving-water-limit = The lowest leaving water that the dose reckons with. What that may be off is covered by the margin between it and the freeze point.
why-plan-purge-flow = Bore area times the velocity that carries air, in every section; the section that needs most decides for the whole.
why-plan-header-velocity = 0.9 times the square root of gravity times bore: at that Froude number the flow takes air down with it.
why-plan-purge-loss = Friction and fittings of loop and hoses at the purge flow, with the fluid at its temperature.
why-plan-cart-velocity = Where the cart's own curve meets the loss of the circuits that are open; the slowest open circuit counts.
why-plan-purge-groups = The fewest groups of circuits in which every open circuit reaches the velocity.
why-plan-turnover = Volume of the open part over the cart's flow; the slowest group counts.
why-plan-flush-time = Two hours in all, 15 minutes a group, or ten turnovers, whichever is longest.
why-plan-purge-time = 15 minutes at the velocity, or ten turnovers, whichever is longer.
why-plan-mix-time = Three hours, or three turnovers of every group, whichever is longer.
why-plan-filter-stages = 100 micron until no more bubbles show, then 1 micron.
why-plan-unit-flush-time = The indoor part by itself after the loop, 5 to 10 minutes.
why-plan-dead-head-pressure = { AMOUNT("50 psi") }, or the lowest rating if that is less.
why-plan-dead-head-air = 0.2 % of the loop's volume may stay: the running fluid takes up about that much.
why-plan-dead-head-limit = Stretch of the pipe and squeeze of the liquid (thick-wall tube), plus the air that may stay squeezed by Boyle's law on absolute pressures, over the area of the tank. It stands beside the trade's { AMOUNT("1 in", digits: 2) } to { AMOUNT("2 in", digits: 2) }, which fits no loop in particular.
why-plan-lowest-leaving = Lowest entering water less the change across the unit at rated heat and needed flow.
why-plan-lowest-leaving-known = The lowest leaving water that the readings of this call let expect.
why-plan-target-freeze-point = The trade's { AMOUNT("10 °F") } below the lowest leaving water.
why-plan-freeze-point-asked = As the company or the unit's instructions ask.
why-plan-freeze-point-floor = { AMOUNT("10 °F") } stronger than needed: from there on strength only costs flow.
why-plan-dose = Masses balance and the loop stays full: what goes in replaces what was drained; shrinking on mixing is counted.
why-plan-drain = Masses balance and the loop stays full: drain this much of the mixed fluid first.
why-plan-dilution = Masses balance and the loop stays full: replace this much of the fluid by water.
why-plan-tank-pre-charge = As recorded, or somewhat below the least pressure of the loop.
why-plan-leave-pressure = Volumes of fluid and pipe balance in both seasons, soon and in five years, with what is not known of pipe and soil; of the pressures that stay between the limits the one that changes least what stands in the loop; where none is certain to, one that keeps what the circulators need and stays below the rating. What the pipe has stood under it keeps most of: only what is changed today relaxes afresh. Taken to have stood so since the charge on record, a month where there is none, a day after a top-up.
why-plan-stretch-pressure = { AMOUNT("10 psi") } above the pressure to leave, and below the lowest rating by what a dial gauge may be off.
why-plan-season-band = Volumes of fluid and pipe balance in both seasons, soon and in five years, with what is not known of pipe and soil. The pipe relaxes in that time: the highest may lie below what is left today. Where the loop's own readings at two temperatures tell how far it moves, they are taken in.
why-plan-circuit-volume = Bore and length of one circuit.
why-plan-recheck-band = What a tight loop shows at that time: the pipe goes on relaxing by the logarithm of time, and what air is left dissolves and takes pressure with it. So the highest of the seasons may lie below what is left today. Never below what the circulators need.
why-plan-hold-time = One hour of watching, as in the published test; that one stretches the pipe for four hours first.
why-plan-standing-hold-time = The shortest time in which the fall that was seen shows above what a tight loop explains; a night where no rate was seen.
why-plan-hold-fall-limit = What the pipe's own relaxing makes most likely in that time, and what its spread, a small move of the temperature and reading the same gauge twice can add in 95 of 100 tight loops.
why-plan-missing-volume = Stretch of the pipe and squeeze of the fluid between the reading and the pressure to leave.
why-plan-change-heating = Heat taken from the loop over flow, density and specific heat.
why-plan-change-cooling = Heat given to the loop over flow, density and specific heat.
why-plan-circulator-power = The sum of the nameplates; circulators that turn take three quarters of it or more, one of two that stands still leaves half.
why-plan-exchanger-drop = The exchanger's own curve at the needed flow, corrected for the fluid, and 20 % more.
why-plan-usual = The usual figure, the same for every system. It could be worked out for this one, but { $why }.

# --- names of inputs -------------------------------------------------------

input-plan-conservative-limit = Limit without a rating
input-plan-unit-rating = Rating of the heat pump
input-plan-cart-rating = Rating of the cart
input-plan-usual-relief = Usual relief valve with a tank
input-plan-capacity = Capacity of the heat pump
input-plan-plastic-volume = Volume of the plastic pipe
input-plan-rated-flow = Flow on the nameplate
input-plan-transport-velocity = Velocity that carries air
input-plan-bore = Bore
input-plan-purge-flow = Purge flow
input-plan-density = Density
input-plan-viscosity = Viscosity
input-plan-cart-flow = Flow of the cart
input-plan-cart-head = Head of the cart
input-plan-turnover = One turnover
input-plan-turnovers = Turnovers
input-plan-lowest-rating = Lowest rating
input-plan-loop-volume = Volume of the loop
input-plan-pressure-before = Pressure before
input-plan-pressure-after = Pressure with the return shut
input-plan-tank-diameter = Diameter of the tank
input-plan-drop-without-air = Drop with no air at all
input-plan-air-allowed = Air that may stay
input-plan-target-freeze-point = Freeze point to reach
input-plan-freeze-point-now = Freeze point before the dose
input-plan-strength-after = Strength after, by volume
input-plan-product-strength = Strength of the product, by volume
input-plan-lowest-entering = Lowest entering water
input-plan-water-change = Change of the water across the unit
input-plan-lowest-leaving-water = Lowest leaving water
input-plan-freeze-margin = Margin
input-plan-heat-moved = Heat between unit and loop
input-plan-nameplates = Nameplates together
input-plan-needed-flow = Needed flow
input-plan-loop-temperature = Temperature of the loop
input-plan-drop-expected = Drop expected
input-plan-least-pressure = Least pressure over the seasons
input-plan-too-low = Too low by, at the end of its band
input-plan-too-high = Too high by, at the end of its band
input-plan-header-velocity = Velocity that clears it
input-plan-inside-limits = Probability to stay inside in every season
input-plan-most-pressure = Highest pressure once left
input-plan-leave-pressure = Pressure to leave
input-plan-fall-by-relaxing = Fall by relaxing, most likely
input-plan-pressure-at-start = Pressure at the start
input-plan-reservoir-level = Level against the mark
input-plan-reservoir-diameter = Diameter of the reservoir
input-plan-fall-unsure = What may come on top in a tight loop
input-plan-hold-shows = Fall a day from which a leak shows
input-plan-leak-seen = Fall a day that was seen
input-plan-static-pressure = Pressure at rest now
