# Texts of the rule graph: what is not the loop: refrigerant, air side, sensors and controls


## Causes

cause-refrigerant-undercharge = Refrigerant charge low
    .homeowner = The heat pump itself is short of refrigerant.
context-refrigerant-undercharge--older-than-five-years = Joints leak with the years.
context-refrigerant-undercharge--came-on-slowly = It leaks slowly.
context-refrigerant-undercharge--since-start-up = A slow leak takes time.
cause-expansion-device-fault = Expansion device fault
    .homeowner = A part inside the heat pump does not meter properly.
cause-compressor-or-reversing-valve-weak = Compressor or reversing valve weak
    .homeowner = A part inside the heat pump is worn.
context-compressor-or-reversing-valve-weak--older-than-five-years = Valves and compressors wear.
context-compressor-or-reversing-valve-weak--first-year = A new one is seldom worn.
cause-air-filter-or-coil-dirty = Air filter or coil dirty
    .homeowner = The air filter or the air coil is dirty.
context-air-filter-or-coil-dirty--first-month = A filter takes some months to load.
context-air-filter-or-coil-dirty--came-on-slowly = Dirt gathers.
context-air-filter-or-coil-dirty--since-start-up = A filter is clean when the house is new.
context-air-filter-or-coil-dirty--older-than-five-years = Dust has had years to settle on the coil.
cause-flow-switch-or-sensor-fault = Flow switch or sensor fault
    .homeowner = A sensor reports a fault that is not there.
context-flow-switch-or-sensor-fault--older-than-five-years = Switches stick with the years.
context-flow-switch-or-sensor-fault--came-on-suddenly = Switches fail from one day to the next.
context-flow-switch-or-sensor-fault--since-start-up = A switch that fails has mostly worked before.
cause-control-fault = Control fault or wrong setting
    .homeowner = The controls do not run the system as they should.
context-control-fault--first-month = Settings are wrong from the start.
context-control-fault--after-work = Settings are changed in the course of other work.
context-control-fault--came-on-suddenly = Electronics fail from one day to the next.
context-expansion-device-fault--came-on-suddenly = A valve that sticks does so from one day to the next.

## Mechanisms

mechanism-refrigerant-side-weak = Refrigerant side carries too little heat
    .homeowner = The refrigerant side carries too little heat.
mechanism-load-side-starved = Air side carries too little heat
    .homeowner = Too little air flows through the heat pump.
mechanism-false-trip = Protection trips without cause
    .homeowner = A safety device trips without cause.

## Findings

finding-high-pressure-trip = Unit trips on high refrigerant pressure
    .homeowner = The heat pump stopped because its pressure was too high.
finding-weak-airflow = Weak airflow from the registers
    .homeowner = Little air comes from the registers.
finding-air-filter-dirty = Air filter or coil visibly dirty
    .homeowner = The air filter was dirty.
finding-lockout-though-flow-proven = Lockout although flow and temperatures are proven right
    .homeowner = The heat pump stopped although everything was right.
finding-display-disagrees = Unit's own temperature or flow display disagrees with the reading
    .homeowner = The heat pump's own sensor is off.
finding-controls-out-of-step = Pump, stage or auxiliary heat is called at the wrong time
    .homeowner = The controls switch at the wrong time.
finding-oil-stain = Oil stain at a refrigerant joint
    .homeowner = There is an oil stain at a joint of the heat pump.
finding-superheat = Superheat against the unit's data
    .homeowner = A reading of the refrigerant.
finding-subcooling = Subcooling against the unit's data
    .homeowner = A reading of the refrigerant.
finding-unit-power = Electric input of the unit against its rating
    .homeowner = How much electricity the heat pump takes.
finding-unit-capacity = Capacity against the rating at these temperatures
    .homeowner = How much heat the heat pump delivers.
finding-air-temperature-change = Temperature change of the air across the unit
    .homeowner = How much the air is warmed or cooled.
finding-hot-gas-both-ways = Reversing valve warm on all lines, or compressor does not build pressure
    .homeowner = A part inside the heat pump leaks heat across.
finding-settings-wrong = Thermostat, stage or auxiliary-heat setting is not as it should be
    .homeowner = A setting was not right.
finding-switch-sticks = Flow switch or sensor sticks, chatters or has a loose wire
    .homeowner = A sensor or its wire is faulty.

## Links

link-refrigerant-undercharge--refrigerant-side-weak = Less refrigerant moves less heat, in heating most of all.
link-refrigerant-undercharge--superheat = The evaporator runs dry before its end.
link-refrigerant-undercharge--subcooling = No liquid stands in the condenser.
link-refrigerant-undercharge--oil-stain = Oil leaves with the refrigerant.
link-refrigerant-undercharge--unit-power = Thin gas takes less power.
link-refrigerant-undercharge--approach = The evaporating temperature falls away from the fluid.
link-expansion-device-fault--refrigerant-side-weak = The evaporator is starved or flooded.
link-expansion-device-fault--superheat = Stuck open floods, stuck shut starves.
link-expansion-device-fault--subcooling = What does not pass stands in the condenser.
link-expansion-device-fault--approach = A starved evaporator falls away from the fluid.
link-compressor-or-reversing-valve-weak--refrigerant-side-weak = Gas leaks back inside.
link-compressor-or-reversing-valve-weak--hot-gas-both-ways = Leaking gas warms the wrong line.
link-compressor-or-reversing-valve-weak--unit-power = It compresses little.
link-compressor-or-reversing-valve-weak--approach = Little heat needs little temperature difference.
link-air-filter-or-coil-dirty--load-side-starved = Dirt holds the air back.
link-air-filter-or-coil-dirty--air-filter-dirty = It is seen.
link-flow-switch-or-sensor-fault--false-trip = It reports what is not so.
link-flow-switch-or-sensor-fault--display-disagrees = The display shows the sensor's error.
link-flow-switch-or-sensor-fault--switch-sticks = Looked at closely, it shows.
link-control-fault--controls-out-of-step = Watching a start shows it.
link-control-fault--capacity-short = The wrong stage or the heater runs.
link-control-fault--auxiliary-heat-often = The back-up is called too early.
link-control-fault--false-trip = A pump called too late trips the protection.
link-control-fault--settings-wrong = Read one by one, the wrong setting shows.
link-refrigerant-side-weak--temperature-split = Less heat from the same flow.
link-refrigerant-side-weak--capacity-short = Less heat is carried over.
link-refrigerant-side-weak--air-temperature-change = Less heat in the same air.
link-refrigerant-side-weak--freeze-guard-trip = Evaporating temperature falls and the guard on the refrigerant line trips.
link-load-side-starved--air-temperature-change = Less air takes up the same heat.
link-load-side-starved--weak-airflow = Little air comes out.
link-load-side-starved--high-pressure-trip = In heating the condenser cannot give its heat to the air.
link-load-side-starved--unit-power = Higher condensing pressure takes more power.
link-load-side-starved--subcooling = Liquid stands in the condenser.
link-load-side-starved--superheat = In cooling a starved coil floods.
link-load-side-starved--temperature-split = Less heat is moved.
link-load-side-starved--capacity-short = The heat does not get into the house.
link-false-trip--low-flow-lockout = The unit says low flow.
link-false-trip--freeze-guard-trip = The unit says freezing.
link-false-trip--high-pressure-trip = The unit says high pressure.
link-false-trip--lockout-though-flow-proven = Everything measured is right and it still trips.

## Checks

check-look-at-air-side = Look at air filter and coil
    .how = Unit off and locked. Look at filter and coil with a torch.
check-prove-the-trip = Prove flow and temperature while it trips
    .how = Read flow and temperatures yourself while the unit runs towards its trip and compare with its display. Never bypass a protection to keep it running.
check-watch-a-start = Watch the unit through a start
    .how = From the call to full run: pump first, then compressor, auxiliary heat last.
check-read-settings = Read the settings
    .how = Thermostat, stages, balance point of the auxiliary heat, pump delay: compare with the unit's instructions.
check-look-at-switch = Look at flow switch and sensors
    .how = Power off and locked. Look at the paddle or membrane, the wires and the plug; feel for play.
check-look-for-oil = Look for oil at refrigerant joints
    .how = Covers that need no tool only. Oil marks a leak.
check-air-temperatures = Air temperature change across the unit
    .how = Return and supply air, out of sight of the coil, after ten minutes of running.
check-unit-power-and-capacity = Electric input and capacity of the unit
    .how = Power of the whole unit running steadily, and its capacity if it shows one.
check-superheat-subcooling = Superheat, subcooling and approach
    .how = Only when flow is proven right. Read suction and liquid line, and compare with the unit's data and with the leaving fluid.
