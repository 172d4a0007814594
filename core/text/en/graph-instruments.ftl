# Texts of the rule graph: instruments that lie, and the quick trial that settles it


## Causes

cause-dial-gauge-lies = Dial gauge lies
    .homeowner = A pressure gauge reads wrong.
cause-digital-gauge-lies = Digital gauge lies
    .homeowner = A pressure gauge reads wrong.
cause-differential-gauge-lies = Differential gauge lies
    .homeowner = A pressure gauge reads wrong.
cause-port-thermometer-lies = Port thermometer lies
    .homeowner = A thermometer reads wrong.
cause-clamp-thermometer-lies = Clamp thermometer lies
    .homeowner = A thermometer reads wrong.
cause-flow-meter-lies = Flow meter lies
    .homeowner = A flow meter reads wrong.
cause-refractometer-lies = Refractometer lies or has the wrong scale
    .homeowner = The tool that reads the antifreeze is off.
cause-hydrometer-lies = Hydrometer lies
    .homeowner = The tool that reads the antifreeze is off.
cause-power-meter-lies = Power meter or clamp ammeter lies
    .homeowner = A power meter reads wrong.
cause-refrigerant-gauges-lie = Refrigerant gauges lie
    .homeowner = A refrigerant gauge reads wrong.
cause-test-kit-lies = Test strips or kit lie
    .homeowner = A water test reads wrong.
cause-unit-display-lies = Unit's own display lies
    .homeowner = The heat pump's own display is off.

## Findings

finding-second-gauge-disagrees = A second gauge on the same port disagrees
    .homeowner = Two gauges on the same place do not agree.
finding-digital-gauge-not-zero = Digital gauge does not read zero in open air
    .homeowner = The gauge does not read zero when it should.
finding-differential-gauge-not-zero = Differential gauge does not read zero on one port
    .homeowner = The gauge does not read zero when it should.
finding-port-thermometer-ice-wrong = Port thermometer does not read 32 °F (0 °C) in ice water
    .homeowner = The thermometer is wrong in ice water.
finding-clamp-thermometer-ice-wrong = Clamp thermometer disagrees with a port thermometer at the same place
    .homeowner = Two thermometers do not agree.
finding-meter-disagrees-with-bucket = Flow meter disagrees with a timed volume or a second meter
    .homeowner = The flow meter disagrees with a measured volume.
finding-refractometer-water-wrong = Refractometer does not read water as water, or the scale is for another fluid
    .homeowner = The tool does not read plain water rightly.
finding-hydrometer-water-wrong = Hydrometer does not read water as water
    .homeowner = The tool does not read plain water rightly.
finding-power-meter-disagrees = Second power meter disagrees
    .homeowner = Two power meters do not agree.
finding-refrigerant-gauges-not-zero = Refrigerant gauges do not read zero in open air
    .homeowner = The gauge does not read zero when it should.
finding-test-kit-control-fails = Test kit fails on water of known make-up, or is out of date
    .homeowner = The water test fails on known water.
finding-display-thermometer-disagree = Unit's display disagrees with a proven thermometer
    .homeowner = The heat pump's display disagrees with a good thermometer.

## Links

link-dial-gauge-lies--second-gauge-disagrees = Two gauges on one port must agree.
link-digital-gauge-lies--digital-gauge-not-zero = In open air it must read zero.
link-digital-gauge-lies--second-gauge-disagrees = Two gauges differ whichever of them is wrong.
link-differential-gauge-lies--differential-gauge-not-zero = Both sides on one port, it must read zero.
link-port-thermometer-lies--port-thermometer-ice-wrong = Crushed ice and water is always at its freezing point.
link-port-thermometer-lies--display-thermometer-disagree = The two differ whichever of them is wrong.
link-port-thermometer-lies--clamp-thermometer-ice-wrong = The two differ whichever of them is wrong.
link-clamp-thermometer-lies--clamp-thermometer-ice-wrong = At the same place both must agree.
link-flow-meter-lies--meter-disagrees-with-bucket = A timed volume cannot lie.
link-flow-meter-lies--head-unaccounted = At the wrong flow the account does not close.
link-flow-meter-lies--exchanger-drop-for-flow = The drop is right for the true flow, not for the one that the meter shows.
link-refractometer-lies--refractometer-water-wrong = Plain water must read as water.
link-hydrometer-lies--hydrometer-water-wrong = Plain water must read as water.
link-power-meter-lies--power-meter-disagrees = Two meters must agree.
link-refrigerant-gauges-lie--refrigerant-gauges-not-zero = In open air they must read zero.
link-test-kit-lies--test-kit-control-fails = Known water must read as known.
link-unit-display-lies--display-thermometer-disagree = The display is only as good as its sensor.
link-unit-display-lies--display-disagrees = The display is only as good as its sensor.

## Checks

check-second-gauge = A second gauge on the same port
    .how = Put another gauge on the same port and compare.
check-zero-digital-gauge = Zero of the digital gauge
    .how = Read it open to the air.
check-zero-differential-gauge = Zero of the differential gauge
    .how = Both hoses on one port, or the same gauge twice on one port.
check-ice-bath = Thermometer in ice water
    .how = Crushed ice just covered with water, stir, wait a minute, read.
check-compare-thermometers = Compare thermometers at one place
    .how = Clamp, port and display at the same point, steady running.
check-timed-bucket = Flow meter against a timed volume
    .how = On the cart: time a known volume into the reservoir and compare.
check-refractometer-on-water = Refractometer on clean water
    .how = A drop of clean water must read as water; check that the scale is the one for this fluid.
check-hydrometer-on-water = Hydrometer in clean water
    .how = In clean water at the marked temperature it must read 1.000.
check-second-power-meter = A second power meter
    .how = Clamp another meter on the same lead and compare.
check-zero-refrigerant-gauges = Zero of the refrigerant gauges
    .how = Open to the air, before connecting.
check-control-for-test-kit = Test kit on known water
    .how = Check the date, and test a water whose make-up is known.
