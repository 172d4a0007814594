//! Instruments of the trade and how far each can be trusted.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What a reading was taken with.
#[derive(
    Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, JsonSchema,
)]
#[serde(rename_all = "snake_case")]
pub enum Instrument {
    /// Dial gauge fixed to the system or on a port.
    DialGauge,
    /// Digital gauge on a port.
    DigitalGauge,
    /// One gauge moved between two ports, or a differential gauge.
    DifferentialGauge,
    /// Thermometer in a pressure/temperature port.
    PortThermometer,
    /// Thermometer clamped or strapped to the pipe.
    ClampThermometer,
    /// Flow meter in the pipe.
    FlowMeter,
    /// Ultrasonic meter clamped on.
    ClampFlowMeter,
    /// Refractometer.
    Refractometer,
    /// Hydrometer.
    Hydrometer,
    /// Electric power meter.
    PowerMeter,
    /// Clamp-on ammeter.
    ClampAmmeter,
    /// Refrigerant gauges; certified hands only.
    RefrigerantGauges,
    /// Test strip or drop kit.
    TestStrip,
    /// Laboratory.
    Laboratory,
    /// Ruler or tape.
    Ruler,
    /// Readout of the unit's own sensors.
    UnitDisplay,
}

impl Instrument {
    /// Every instrument, in the order offered.
    pub const ALL: [Self; 16] = [
        Self::DialGauge,
        Self::DigitalGauge,
        Self::DifferentialGauge,
        Self::PortThermometer,
        Self::ClampThermometer,
        Self::FlowMeter,
        Self::ClampFlowMeter,
        Self::Refractometer,
        Self::Hydrometer,
        Self::PowerMeter,
        Self::ClampAmmeter,
        Self::RefrigerantGauges,
        Self::TestStrip,
        Self::Laboratory,
        Self::Ruler,
        Self::UnitDisplay,
    ];

    /// Stable identifier, as written in files.
    pub fn id(self) -> &'static str {
        match self {
            Self::DialGauge => "dial_gauge",
            Self::DigitalGauge => "digital_gauge",
            Self::DifferentialGauge => "differential_gauge",
            Self::PortThermometer => "port_thermometer",
            Self::ClampThermometer => "clamp_thermometer",
            Self::FlowMeter => "flow_meter",
            Self::ClampFlowMeter => "clamp_flow_meter",
            Self::Refractometer => "refractometer",
            Self::Hydrometer => "hydrometer",
            Self::PowerMeter => "power_meter",
            Self::ClampAmmeter => "clamp_ammeter",
            Self::RefrigerantGauges => "refrigerant_gauges",
            Self::TestStrip => "test_strip",
            Self::Laboratory => "laboratory",
            Self::Ruler => "ruler",
            Self::UnitDisplay => "unit_display",
        }
    }

    /// The instrument with this identifier.
    pub fn from_id(id: &str) -> Option<Self> {
        Self::ALL
            .into_iter()
            .find(|instrument| instrument.id() == id)
    }
}
