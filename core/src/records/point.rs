//! The points at which a reading can be taken.

use super::Instrument;
use crate::units::{Dimension, Unit, UnitSystem};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The kind of quantity read at a point.
#[derive(Copy, Clone, PartialEq, Eq, Hash, Debug)]
#[allow(missing_docs)] // the names are those of the typed quantities
pub enum ReadingKind {
    GaugePressure,
    PressureDifference,
    Temperature,
    TemperatureDifference,
    VolumeFlow,
    Volume,
    Length,
    Power,
    Current,
    Fraction,
    Number,
    ElectricalConductivity,
    MassConcentration,
}

impl ReadingKind {
    /// The dimension whose units may be written.
    pub fn dimension(self) -> Dimension {
        match self {
            Self::GaugePressure | Self::PressureDifference => Dimension::Pressure,
            Self::Temperature => Dimension::Temperature,
            Self::TemperatureDifference => Dimension::TemperatureDifference,
            Self::VolumeFlow => Dimension::VolumeFlow,
            Self::Volume => Dimension::Volume,
            Self::Length => Dimension::Length,
            Self::Power => Dimension::Power,
            Self::Current => Dimension::Current,
            Self::Fraction => Dimension::Fraction,
            Self::Number => Dimension::Number,
            Self::ElectricalConductivity => Dimension::ElectricalConductivity,
            Self::MassConcentration => Dimension::MassConcentration,
        }
    }
}

/// Order in which points are measured: pressure, flow, pump, fluid,
/// temperatures, refrigerant last.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
#[allow(missing_docs)]
pub enum PointGroup {
    Pressure,
    Flow,
    Pump,
    Fluid,
    Temperature,
    Water,
    Electric,
    Refrigerant,
}

/// What a value at a point may be: `possible` is physics or the end of any
/// instrument's scale (outside it the value is refused), `likely` is what a
/// working or failing system shows (outside it the value is kept and marked).
/// Bounds are in the unit of the row.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct PointBounds {
    /// The unit of the bounds.
    pub unit: Unit,
    /// Lowest and highest value that can be.
    pub possible: (f64, f64),
    /// Lowest and highest value that is not surprising.
    pub likely: (f64, f64),
}

struct Row {
    point: ReadingPoint,
    id: &'static str,
    kind: ReadingKind,
    group: PointGroup,
    instrument: Instrument,
    bounds: PointBounds,
}

macro_rules! points {
    ($($(#[$doc:meta])* $point:ident $id:literal $kind:ident $group:ident $instrument:ident
        $unit:ident [$pmin:literal $pmax:literal] [$lmin:literal $lmax:literal];)*) => {
        /// A point of the system where something is read.
        #[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, JsonSchema)]
        pub enum ReadingPoint {
            $($(#[$doc])* #[serde(rename = $id)] $point),*
        }
        impl ReadingPoint {
            /// Every point, in the order of proof.
            pub const ALL: &'static [Self] = &[$(Self::$point),*];
        }
        const TABLE: &[Row] = &[$(Row {
            point: ReadingPoint::$point, id: $id, kind: ReadingKind::$kind,
            group: PointGroup::$group, instrument: Instrument::$instrument,
            bounds: PointBounds {
                unit: Unit::$unit, possible: ($pmin, $pmax), likely: ($lmin, $lmax),
            },
        }),*];
    };
}

points! {
    /// Loop gauge with everything at rest.
    StaticPressure "static_pressure" GaugePressure Pressure DialGauge Psi [-14.7 300.0] [-5.0 110.0];
    /// Circulator suction, running.
    SuctionPressure "suction_pressure" GaugePressure Pressure DialGauge Psi [-14.7 300.0] [-10.0 110.0];
    /// Air side of the expansion tank with the fluid side at zero.
    TankPreCharge "tank_pre_charge" GaugePressure Pressure DialGauge Psi [-14.7 150.0] [0.0 80.0];
    /// Fluid level in the vented reservoir against the mark set at start-up; below it is negative.
    ReservoirLevelChange "reservoir_level_change" Length Pressure Ruler Inch [-200.0 200.0] [-40.0 40.0];
    /// Fluid added since the last visit or start-up to bring pressure or level back.
    TopUpVolume "top_up_volume" Volume Pressure FlowMeter Gallon [0.0 10000.0] [0.0 50.0];
    /// Drop of the cart's reservoir level in the dead-head test.
    DeadHeadDrop "dead_head_drop" Length Pressure Ruler Inch [-5.0 200.0] [0.0 30.0];
    /// Pressure before the return valve is shut in the dead-head test.
    DeadHeadPressureBefore "dead_head_pressure_before" GaugePressure Pressure DialGauge Psi [-14.7 300.0] [0.0 60.0];
    /// Pressure with the return valve shut in the dead-head test.
    DeadHeadPressureAfter "dead_head_pressure_after" GaugePressure Pressure DialGauge Psi [-14.7 300.0] [5.0 110.0];
    /// Pressure drop across the heat pump's source exchanger, running.
    ExchangerDrop "exchanger_drop" PressureDifference Flow DifferentialGauge Psi [-100.0 100.0] [0.0 25.0];
    /// Flow by a meter.
    Flow "flow" VolumeFlow Flow FlowMeter GallonPerMinute [-2000.0 2000.0] [0.0 200.0];
    /// Pressure drop across the strainer, running.
    StrainerDrop "strainer_drop" PressureDifference Flow DifferentialGauge Psi [-100.0 100.0] [0.0 20.0];
    /// Pressure rise across the circulator or the set of circulators, running.
    CirculatorRise "circulator_rise" PressureDifference Pump DifferentialGauge Psi [-100.0 150.0] [0.0 50.0];
    /// Pressure rise with the discharge shut for seconds.
    ShutOffRise "shut_off_rise" PressureDifference Pump DifferentialGauge Psi [-100.0 150.0] [0.0 60.0];
    /// Electric input of the circulators together.
    CirculatorPower "circulator_power" Power Pump PowerMeter Watt [0.0 50000.0] [0.0 2000.0];
    /// Electric current of the circulators together.
    CirculatorCurrent "circulator_current" Current Pump ClampAmmeter Ampere [0.0 200.0] [0.0 20.0];
    /// Body of the circulator.
    CirculatorBodyTemperature "circulator_body_temperature" Temperature Pump ClampThermometer Fahrenheit [-40.0 400.0] [20.0 220.0];
    /// Freeze point of a sample from the supply side.
    FreezePointSupply "freeze_point_supply" Temperature Fluid Refractometer Fahrenheit [-80.0 60.0] [-20.0 33.0];
    /// Freeze point of a sample from the return side, or of the second sample.
    FreezePointReturn "freeze_point_return" Temperature Fluid Refractometer Fahrenheit [-80.0 60.0] [-20.0 33.0];
    /// Specific gravity of a sample.
    SpecificGravity "specific_gravity" Number Fluid Hydrometer Plain [0.7 1.4] [0.94 1.06];
    /// Temperature of the sample in the hydrometer or refractometer.
    SampleTemperature "sample_temperature" Temperature Fluid PortThermometer Fahrenheit [-40.0 212.0] [25.0 110.0];
    /// pH of a sample.
    FluidPh "fluid_ph" Number Fluid TestStrip Plain [0.0 14.0] [4.0 12.0];
    /// Entering water temperature, into the heat pump.
    EnteringWater "entering_water" Temperature Temperature PortThermometer Fahrenheit [-60.0 250.0] [10.0 120.0];
    /// Leaving water temperature, out of the heat pump.
    LeavingWater "leaving_water" Temperature Temperature PortThermometer Fahrenheit [-60.0 250.0] [5.0 140.0];
    /// Loop fluid after a long rest or the mean of the loop.
    LoopTemperature "loop_temperature" Temperature Temperature PortThermometer Fahrenheit [-60.0 250.0] [15.0 120.0];
    /// Return of one circuit at the manifold.
    CircuitReturn "circuit_return" Temperature Temperature ClampThermometer Fahrenheit [-60.0 250.0] [10.0 120.0];
    /// Lowest entering water temperature the unit has logged this season.
    LowestEnteringWater "lowest_entering_water" Temperature Temperature UnitDisplay Fahrenheit [-60.0 250.0] [10.0 100.0];
    /// pH of the fill water.
    WaterPh "water_ph" Number Water TestStrip Plain [0.0 14.0] [5.0 10.0];
    /// Total hardness of the fill water, as CaCO3.
    WaterHardness "water_hardness" MassConcentration Water TestStrip MilligramPerLitre [0.0 20000.0] [0.0 1500.0];
    /// Calcium of the fill water, as CaCO3.
    WaterCalcium "water_calcium" MassConcentration Water TestStrip MilligramPerLitre [0.0 20000.0] [0.0 1500.0];
    /// Alkalinity of the fill water, as CaCO3.
    WaterAlkalinity "water_alkalinity" MassConcentration Water TestStrip MilligramPerLitre [0.0 20000.0] [0.0 1000.0];
    /// Dissolved solids of the fill water.
    WaterDissolvedSolids "water_dissolved_solids" MassConcentration Water TestStrip MilligramPerLitre [0.0 100000.0] [0.0 3000.0];
    /// Iron in the fill or loop water.
    WaterIron "water_iron" MassConcentration Water TestStrip MilligramPerLitre [0.0 1000.0] [0.0 30.0];
    /// Manganese in the fill water.
    WaterManganese "water_manganese" MassConcentration Water TestStrip MilligramPerLitre [0.0 1000.0] [0.0 5.0];
    /// Chloride in the fill or loop water.
    WaterChloride "water_chloride" MassConcentration Water TestStrip MilligramPerLitre [0.0 100000.0] [0.0 1000.0];
    /// Sulphate in the fill water.
    WaterSulphate "water_sulphate" MassConcentration Water TestStrip MilligramPerLitre [0.0 100000.0] [0.0 1000.0];
    /// Electrical conductivity of the fill or loop water.
    WaterConductivity "water_conductivity" ElectricalConductivity Water TestStrip MicrosiemensPerCentimetre [0.0 200000.0] [0.0 5000.0];
    /// Electric input of the whole unit, running.
    UnitPower "unit_power" Power Electric PowerMeter Watt [0.0 500000.0] [0.0 60000.0];
    /// Capacity the unit reports or that was measured on the load side.
    UnitCapacity "unit_capacity" Power Electric UnitDisplay BtuPerHour [0.0 5000000.0] [0.0 600000.0];
    /// Temperature change of the air across the unit.
    AirTemperatureChange "air_temperature_change" TemperatureDifference Electric PortThermometer DifferenceFahrenheit [-100.0 150.0] [0.0 60.0];
    /// Saturation temperature at the evaporator (dew).
    EvaporatingTemperature "evaporating_temperature" Temperature Refrigerant RefrigerantGauges Fahrenheit [-120.0 200.0] [-20.0 70.0];
    /// Saturation temperature at the condenser (bubble).
    CondensingTemperature "condensing_temperature" Temperature Refrigerant RefrigerantGauges Fahrenheit [-60.0 250.0] [50.0 150.0];
    /// Superheat of the suction gas.
    Superheat "superheat" TemperatureDifference Refrigerant RefrigerantGauges DifferenceFahrenheit [-50.0 150.0] [0.0 60.0];
    /// Subcooling of the liquid.
    Subcooling "subcooling" TemperatureDifference Refrigerant RefrigerantGauges DifferenceFahrenheit [-50.0 150.0] [-5.0 40.0];
}

impl ReadingPoint {
    fn row(self) -> &'static Row {
        // The enum and the table come from one macro, in one order.
        &TABLE[self as usize]
    }
    /// Stable identifier, as written in files.
    pub fn id(self) -> &'static str {
        self.row().id
    }
    /// The point with this identifier.
    pub fn from_id(id: &str) -> Option<Self> {
        TABLE.iter().find(|row| row.id == id).map(|row| row.point)
    }
    /// The kind of quantity read here.
    pub fn kind(self) -> ReadingKind {
        self.row().kind
    }
    /// The group in the order of proof.
    pub fn group(self) -> PointGroup {
        self.row().group
    }
    /// What it is usually read with.
    pub fn usual_instrument(self) -> Instrument {
        self.row().instrument
    }
    /// Whether it is among the few that are read first at every call: the gauge,
    /// the drop that tells the flow, and the water in and out. Common practice, no source.
    pub fn is_first(self) -> bool {
        matches!(
            self,
            Self::StaticPressure | Self::ExchangerDrop | Self::EnteringWater | Self::LeavingWater
        )
    }
    /// The unit that its instrument usually shows: inches on a ruler, watts on a
    /// power meter, whatever lengths and powers are shown in elsewhere.
    pub fn usual_unit(self, system: UnitSystem) -> Unit {
        match (system, self.row().bounds.unit) {
            (UnitSystem::Us, unit) => unit,
            (UnitSystem::Si, Unit::Inch) => Unit::Centimetre,
            (UnitSystem::Si, Unit::Watt) => Unit::Watt,
            (UnitSystem::Si, _) => system.unit(self.kind().dimension()),
        }
    }
    /// What a value may be.
    pub fn bounds(self) -> PointBounds {
        self.row().bounds
    }
}
