//! The installed system, as far as anyone knows it.

use crate::units::{
    Conductance, Fraction, GaugePressure, Length, Measure, Number, Power, PressureDifference,
    Quantity, Temperature, Volume, VolumeFlow,
};
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// One closed-loop ground-source system.
#[derive(Clone, PartialEq, Debug, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct System {
    /// Name that tells it from others at the site, for example `main house`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub label: Option<String>,
    /// Day of first start.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub installed_on: Option<NaiveDate>,
    /// The heat pump.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub heat_pump: Option<HeatPump>,
    /// What holds the circulators and the pressure.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub flow_centre: Option<FlowCentre>,
    /// The loop circulators, in the order of flow.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub circulators: Vec<Circulator>,
    /// How two or more circulators are piped.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub circulator_piping: Option<CirculatorPiping>,
    /// The pipe in the ground.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub ground: Option<GroundLoop>,
    /// Pipe indoors, between flow centre, heat pump and wall.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub indoor: Vec<PipeRun>,
    /// The fluid that is said to be in it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub fluid: Option<LoopFluid>,
    /// Whether a strainer stands in the loop.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub strainer: Option<bool>,
    /// Whether each circulator has a check valve.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub check_valves: Option<bool>,
}

/// The heat pump and its source-side exchanger.
#[derive(Clone, PartialEq, Debug, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct HeatPump {
    /// What is written on it, without meaning to the engine.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub label: Option<String>,
    /// Rated heating capacity at the unit's ground-loop rating point.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub heating_capacity: Option<Measure<Power>>,
    /// Rated cooling capacity at the unit's ground-loop rating point.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cooling_capacity: Option<Measure<Power>>,
    /// Rated heating coefficient of performance.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub heating_cop: Option<Measure<Number>>,
    /// Rated cooling coefficient of performance.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cooling_cop: Option<Measure<Number>>,
    /// Refrigerant on the nameplate.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub refrigerant: Option<Refrigerant>,
    /// Flow the unit's instructions ask for.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rated_flow: Option<Measure<VolumeFlow>>,
    /// Flow below which the unit locks out or the instructions forbid running.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub minimum_flow: Option<Measure<VolumeFlow>>,
    /// Leaving-water temperature at which the freeze guard trips.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub freeze_guard: Option<Measure<Temperature>>,
    /// Highest loop pressure on the nameplate.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub maximum_pressure: Option<Measure<GaugePressure>>,
    /// The source-side exchanger.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub exchanger: Option<Exchanger>,
}

/// The source-side exchanger of the heat pump.
#[derive(Clone, PartialEq, Debug, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Exchanger {
    /// Its construction.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub kind: Option<ExchangerKind>,
    /// Pressure drop against flow, with water, from the unit's data.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub curve: Vec<DropPoint>,
    /// Water temperature for which the curve is printed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub curve_temperature: Option<Measure<Temperature>>,
    /// Conductance when clean, from start-up readings or the unit's data.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub clean_conductance: Option<Measure<Conductance>>,
    /// Volume of the fluid side.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub volume: Option<Measure<Volume>>,
}

/// Construction of an exchanger.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum ExchangerKind {
    /// Tube in tube, wound.
    Coaxial,
    /// Brazed plates.
    BrazedPlate,
}

/// One point of a pressure-drop curve.
#[derive(Copy, Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct DropPoint {
    /// Flow.
    pub flow: Measure<VolumeFlow>,
    /// Pressure drop at that flow.
    pub drop: Measure<PressureDifference>,
}

/// Refrigerants that the units of the trade hold (ASHRAE 34 designations).
#[derive(Copy, Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub enum Refrigerant {
    #[serde(rename = "R-410A")]
    R410A,
    #[serde(rename = "R-32")]
    R32,
    #[serde(rename = "R-454B")]
    R454B,
    #[serde(rename = "R-407C")]
    R407C,
    #[serde(rename = "R-134a")]
    R134a,
    #[serde(rename = "R-22")]
    R22,
}

/// The flow centre.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, tag = "kind", rename_all = "snake_case")]
pub enum FlowCentre {
    /// Closed and pressurised, the pipe itself is the only spring.
    Sealed {},
    /// Closed and pressurised, with a diaphragm expansion tank.
    SealedWithTank {
        /// Shell volume of the tank.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        tank_volume: Option<Measure<Volume>>,
        /// Air pressure set with the fluid side at zero.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        pre_charge: Option<Measure<GaugePressure>>,
    },
    /// Vented reservoir; the level is the gauge.
    NonPressurised {
        /// Inside diameter of the reservoir column.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        reservoir_diameter: Option<Measure<Length>>,
    },
}

impl System {
    /// The highest least suction pressure that the instructions of a circulator ask
    /// for; none where none is recorded.
    pub fn least_suction(&self) -> Option<GaugePressure> {
        self.circulators
            .iter()
            .filter_map(|circulator| circulator.minimum_suction)
            .map(Measure::get)
            .max_by(|a, b| a.si().total_cmp(&b.si()))
    }
}

/// One loop circulator.
#[derive(Clone, PartialEq, Debug, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Circulator {
    /// What is written on it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub label: Option<String>,
    /// Head against flow at full speed, with water.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub curve: Vec<HeadPoint>,
    /// Speed it is set to, as a share of full speed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub speed: Option<Measure<Fraction>>,
    /// Electric input on the nameplate at that speed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rated_power: Option<Measure<Power>>,
    /// Least suction pressure its instructions ask for.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub minimum_suction: Option<Measure<GaugePressure>>,
}

/// One point of a pump curve.
#[derive(Copy, Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct HeadPoint {
    /// Flow.
    pub flow: Measure<VolumeFlow>,
    /// Head at that flow, as a length of the pumped fluid.
    pub head: Measure<Length>,
}

/// How circulators are piped to each other.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum CirculatorPiping {
    /// One after the other; heads add.
    Series,
    /// Side by side; flows add.
    Parallel,
}

/// The pipe in the ground or pond.
#[derive(Clone, PartialEq, Debug, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct GroundLoop {
    /// How it lies.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub kind: Option<GroundKind>,
    /// Circuits in parallel; equal ones may be grouped by count.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub circuits: Vec<CircuitGroup>,
    /// Supply and return headers, each run listed once.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub headers: Vec<PipeRun>,
    /// Direct or reverse return.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub header_return: Option<HeaderReturn>,
}

/// How the loop lies.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum GroundKind {
    /// Bores with U-bends.
    Vertical,
    /// Trenches or drilled sideways.
    Horizontal,
    /// Coils in open water.
    Pond,
}

/// Order in which the headers meet the circuits.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum HeaderReturn {
    /// First supplied is first returned.
    Direct,
    /// First supplied is last returned.
    Reverse,
}

/// A number of equal circuits.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct CircuitGroup {
    /// How many circuits are like this.
    #[schemars(range(min = 1, max = 400))]
    pub count: u32,
    /// The pipe.
    pub pipe: Pipe,
    /// Length of one circuit, there and back.
    pub length: Measure<Length>,
}

/// A straight run of pipe.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PipeRun {
    /// The pipe.
    pub pipe: Pipe,
    /// Its length.
    pub length: Measure<Length>,
}

/// A pipe by its standard and nominal size.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, tag = "standard", rename_all = "snake_case")]
pub enum Pipe {
    /// Polyethylene with iron-pipe-size outside diameter (ASTM D3035, F714).
    IpsPe {
        /// Nominal size in inches.
        size: NominalInch,
        /// Outside diameter over minimum wall.
        sdr: Sdr,
    },
    /// Polyethylene PE100 with metric outside diameter (EN 12201).
    MetricPe {
        /// Outside diameter in millimetres: 25, 32, 40, 50, 63, 75, 90, 110 or 125.
        #[schemars(range(min = 16, max = 400))]
        outside_mm: u32,
        /// Outside diameter over wall.
        sdr: Sdr,
    },
    /// Copper tube type L (ASTM B88).
    CopperL {
        /// Nominal size in inches.
        size: NominalInch,
    },
    /// Hose, named by its inside diameter.
    Hose {
        /// Nominal size in inches.
        size: NominalInch,
    },
    /// Anything else, by its inside diameter.
    Plain {
        /// Inside diameter.
        inside_diameter: Measure<Length>,
    },
}

/// Nominal sizes in inches.
#[derive(
    Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize, JsonSchema,
)]
#[allow(missing_docs)]
pub enum NominalInch {
    #[serde(rename = "1/2")]
    Half,
    #[serde(rename = "3/4")]
    ThreeQuarter,
    #[serde(rename = "1")]
    One,
    #[serde(rename = "1-1/4")]
    OneAndQuarter,
    #[serde(rename = "1-1/2")]
    OneAndHalf,
    #[serde(rename = "2")]
    Two,
    #[serde(rename = "3")]
    Three,
    #[serde(rename = "4")]
    Four,
    #[serde(rename = "6")]
    Six,
}

/// Standard dimension ratios of polyethylene pipe.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub enum Sdr {
    #[serde(rename = "9")]
    Sdr9,
    #[serde(rename = "11")]
    Sdr11,
    #[serde(rename = "13.5")]
    Sdr13_5,
    #[serde(rename = "15.5")]
    Sdr15_5,
    #[serde(rename = "17")]
    Sdr17,
}

/// What the loop is filled with, as far as known.
#[derive(Copy, Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct LoopFluid {
    /// The kind.
    pub kind: LoopFluidKind,
    /// Antifreeze by volume, as recorded at commissioning.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub volume_fraction: Option<Measure<Fraction>>,
}

/// Kinds of loop fluid.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
#[serde(rename_all = "snake_case")]
pub enum LoopFluidKind {
    Water,
    PropyleneGlycol,
    EthyleneGlycol,
    Methanol,
    Ethanol,
}
