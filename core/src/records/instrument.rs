//! Instruments of the trade and how far each can be trusted.

use crate::named::named;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

named! {
    /// What a reading was taken with.
    #[derive(
        Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, JsonSchema,
    )]
    #[serde(rename_all = "snake_case")]
    pub enum Instrument {
        /// Dial gauge fixed to the system or on a port.
        DialGauge = "dial_gauge",
        /// Digital gauge on a port.
        DigitalGauge = "digital_gauge",
        /// One gauge moved between two ports, or a differential gauge.
        DifferentialGauge = "differential_gauge",
        /// Thermometer in a pressure/temperature port.
        PortThermometer = "port_thermometer",
        /// Thermometer clamped or strapped to the pipe.
        ClampThermometer = "clamp_thermometer",
        /// Flow meter in the pipe.
        FlowMeter = "flow_meter",
        /// Ultrasonic meter clamped on.
        ClampFlowMeter = "clamp_flow_meter",
        /// Refractometer.
        Refractometer = "refractometer",
        /// Hydrometer.
        Hydrometer = "hydrometer",
        /// Electric power meter.
        PowerMeter = "power_meter",
        /// Clamp-on ammeter.
        ClampAmmeter = "clamp_ammeter",
        /// Refrigerant gauges; certified hands only.
        RefrigerantGauges = "refrigerant_gauges",
        /// Test strip or drop kit.
        TestStrip = "test_strip",
        /// Laboratory.
        Laboratory = "laboratory",
        /// Ruler or tape.
        Ruler = "ruler",
        /// Readout of the unit's own sensors.
        UnitDisplay = "unit_display",
    }
}
