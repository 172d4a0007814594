//! What published guidelines ask of the water that goes into a loop.

/// What a limit is about.
#[derive(Copy, Clone, PartialEq, Eq, Hash, Debug)]
#[allow(missing_docs)] // the names are the meaning
pub enum Parameter {
    Conductivity,
    Ph,
    Hardness,
    Calcium,
    Magnesium,
    Chloride,
    Sulphate,
    DissolvedSolids,
    Iron,
    Manganese,
}

impl Parameter {
    /// Stable name.
    pub fn code(self) -> &'static str {
        match self {
            Self::Conductivity => "conductivity",
            Self::Ph => "ph",
            Self::Hardness => "hardness",
            Self::Calcium => "calcium",
            Self::Magnesium => "magnesium",
            Self::Chloride => "chloride",
            Self::Sulphate => "sulphate",
            Self::DissolvedSolids => "dissolved-solids",
            Self::Iron => "iron",
            Self::Manganese => "manganese",
        }
    }
}

/// What the water is for.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Use {
    /// Filling a loop that stays plain water.
    PlainLoop,
    /// Diluting an inhibited glycol.
    GlycolDilution,
}

/// The published source of a limit.
#[derive(Copy, Clone, PartialEq, Eq, Hash, Debug)]
pub enum Source {
    /// US EPA secondary drinking-water standards, 40 CFR 143.3.
    EpaSecondary,
    /// VDI 2035-2, by secondary summary.
    Vdi2035,
    /// Bulletins of the water-treatment trade, several agreeing.
    TradeBulletins,
    /// SWKI BT 102-01.
    SwkiBt102,
}

impl Source {
    /// Name under which the source is cited.
    pub fn citation(self) -> &'static str {
        match self {
            Self::EpaSecondary => "US EPA secondary drinking-water standards, 40 CFR 143.3",
            Self::Vdi2035 => "VDI 2035-2",
            Self::TradeBulletins => "water-treatment trade bulletins for glycol dilution water",
            Self::SwkiBt102 => "SWKI BT 102-01",
        }
    }
}

/// How the value came here.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Mark {
    /// Read in the source or in a summary of it.
    Read,
    /// From memory of the source.
    FromMemory,
}

/// Limits in SI (kg/m³, S/m, pH); open where `None`.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Limit {
    /// Least, if any.
    pub min: Option<f64>,
    /// Most, if any.
    pub max: Option<f64>,
}

/// One limit of one source.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Guideline {
    /// What is limited.
    pub parameter: Parameter,
    /// For which use; `None` for both.
    pub applies: Option<Use>,
    /// Limits, SI.
    pub limit: Limit,
    /// Beyond this multiple of the limit treating on site is not sensible: bring water in.
    /// A judgement of ours, not of the source.
    pub bring_in_factor: f64,
    /// Who says so.
    pub source: Source,
    /// How the value came here.
    pub mark: Mark,
}

const fn at_most(
    parameter: Parameter,
    applies: Option<Use>,
    max: f64,
    source: Source,
    mark: Mark,
) -> Guideline {
    Guideline {
        parameter,
        applies,
        limit: Limit {
            min: None,
            max: Some(max),
        },
        bring_in_factor: 4.0,
        source,
        mark,
    }
}

const MG: f64 = 1e-3;
const GLYCOL: Option<Use> = Some(Use::GlycolDilution);
const PLAIN: Option<Use> = Some(Use::PlainLoop);

/// Every limit the verdict uses.
pub const GUIDELINES: &[Guideline] = &[
    at_most(
        Parameter::Calcium,
        GLYCOL,
        50.0 * MG,
        Source::TradeBulletins,
        Mark::Read,
    ),
    at_most(
        Parameter::Magnesium,
        GLYCOL,
        50.0 * MG,
        Source::TradeBulletins,
        Mark::Read,
    ),
    at_most(
        Parameter::Hardness,
        GLYCOL,
        100.0 * MG,
        Source::TradeBulletins,
        Mark::Read,
    ),
    at_most(
        Parameter::Chloride,
        GLYCOL,
        25.0 * MG,
        Source::TradeBulletins,
        Mark::Read,
    ),
    at_most(
        Parameter::Sulphate,
        GLYCOL,
        25.0 * MG,
        Source::TradeBulletins,
        Mark::Read,
    ),
    // 1 500 µS/cm: operation with salts. Low-salt operation asks for less than 100.
    at_most(
        Parameter::Conductivity,
        PLAIN,
        0.15,
        Source::Vdi2035,
        Mark::FromMemory,
    ),
    at_most(
        Parameter::Chloride,
        PLAIN,
        30.0 * MG,
        Source::SwkiBt102,
        Mark::FromMemory,
    ),
    at_most(
        Parameter::Sulphate,
        PLAIN,
        50.0 * MG,
        Source::SwkiBt102,
        Mark::FromMemory,
    ),
    at_most(
        Parameter::Iron,
        None,
        0.3 * MG,
        Source::EpaSecondary,
        Mark::FromMemory,
    ),
    at_most(
        Parameter::Manganese,
        None,
        0.05 * MG,
        Source::EpaSecondary,
        Mark::FromMemory,
    ),
    at_most(
        Parameter::DissolvedSolids,
        None,
        500.0 * MG,
        Source::EpaSecondary,
        Mark::FromMemory,
    ),
    Guideline {
        parameter: Parameter::Ph,
        applies: None,
        limit: Limit {
            min: Some(6.5),
            max: Some(8.5),
        },
        bring_in_factor: f64::INFINITY,
        source: Source::EpaSecondary,
        mark: Mark::FromMemory,
    },
];
