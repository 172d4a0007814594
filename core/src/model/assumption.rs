//! What was assumed for want of a record.

/// An assumption. Its identifier is the key of its sentence in the catalog.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
#[allow(missing_docs)] // the catalog says each in a sentence
pub enum Assumption {
    SeaLevel,
    CapacityUnknown,
    EfficiencyUsual,
    FlowByCapacity,
    CircuitsUnknown,
    VolumeByCapacity,
    HeadersUnknown,
    PipeRatioUsual,
    FluidUnknown,
    StrengthUnknown,
    FlowCentreUnknown,
    /// The flow centre is not recorded, but the gauge shows that it is no vented one.
    FlowCentreClosed,
}

impl Assumption {
    /// Stable identifier.
    pub fn id(self) -> &'static str {
        match self {
            Self::SeaLevel => "sea-level",
            Self::CapacityUnknown => "capacity-unknown",
            Self::EfficiencyUsual => "efficiency-usual",
            Self::FlowByCapacity => "flow-by-capacity",
            Self::CircuitsUnknown => "circuits-unknown",
            Self::VolumeByCapacity => "volume-by-capacity",
            Self::HeadersUnknown => "headers-unknown",
            Self::PipeRatioUsual => "pipe-ratio-usual",
            Self::FluidUnknown => "fluid-unknown",
            Self::StrengthUnknown => "strength-unknown",
            Self::FlowCentreUnknown => "flow-centre-unknown",
            Self::FlowCentreClosed => "flow-centre-closed",
        }
    }
}
