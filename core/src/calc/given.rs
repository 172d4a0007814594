//! What several topics ask with: fluid, pipe, pump, part, loop.

use super::amount::Amount;
use super::error::CalcError;
use crate::fluids::{Fluid, FluidKind, MASS_FRACTION, atmospheric_pressure};
use crate::hydraulics::component::{self, FluidState, LossCurve};
use crate::hydraulics::friction::FrictionLaw;
use crate::hydraulics::network::ground_loop::Run;
use crate::hydraulics::pipe::Pipe;
use crate::hydraulics::pump::PumpCurve;
use crate::model::{kind_of, pipe_of};
use crate::records::{self, DropPoint, HeadPoint, LoopFluidKind};
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{AbsolutePressure, Fraction, Length, Number, Quantity, Temperature};
use schemars::JsonSchema;
use serde::Deserialize;

/// A question and its answer, with the topic that joins them. `and spreads`: the
/// accuracies of the question are carried to the numbers of the answer that have none.
macro_rules! topic {
    (
        $(#[$doc:meta])*
        $topic:ident $name:literal by $source:literal $(and $spread:ident)?;
        example $example:literal;
        asks $question:ident { $($(#[$ask:meta])* $asked:ident: $asked_type:ty),* $(,)? }
        tells $answer:ident { $($(#[$tell:meta])* $told:ident: $told_type:ty),* $(,)? }
        |$q:ident, $show:ident| $body:block
    ) => {
        #[derive(Clone, Debug, serde::Deserialize, schemars::JsonSchema)]
        #[serde(deny_unknown_fields)]
        pub(super) struct $question { $($(#[$ask])* pub(super) $asked: $asked_type),* }

        #[derive(Debug, serde::Serialize, schemars::JsonSchema)]
        pub(super) struct $answer { $($(#[$tell])* $told: $told_type),* }

        $(#[$doc])*
        pub(super) struct $topic;
        impl $crate::calc::topic::Topic for $topic {
            const NAME: &'static str = $name;
            const SOURCE: &'static str = $source;
            const SPREADS: bool = !<[&str]>::is_empty(&[$(stringify!($spread))?]);
            const EXAMPLE: &'static str = $example;
            type Input = $question;
            type Output = $answer;
            fn answer(
                $q: $question,
                $show: $crate::calc::amount::Show,
            ) -> Result<$answer, $crate::calc::error::CalcError> $body
        }
    };
}
pub(super) use topic;

/// The words in JSON for the kinds of an engine type.
macro_rules! words {
    ($($(#[$doc:meta])* $name:ident = $engine:ty { $($variant:ident),* $(,)? })*) => {$(
        $(#[$doc])*
        #[derive(Copy, Clone, Debug, PartialEq, Eq, serde::Serialize, serde::Deserialize, schemars::JsonSchema)]
        #[serde(rename_all = "snake_case")]
        pub(super) enum $name { $($variant),* }
        impl From<$engine> for $name {
            fn from(kind: $engine) -> Self {
                match kind { $(<$engine>::$variant => Self::$variant),* }
            }
        }
        impl From<$name> for $engine {
            fn from(kind: $name) -> Self {
                match kind { $($name::$variant => <$engine>::$variant),* }
            }
        }
    )*};
}
pub(super) use words;

words! {
    /// A fitting by its usual loss coefficient.
    Fitting = component::Fitting {
        Elbow90, Elbow45, UBend, TeeThrough, TeeBranch, BallValve, ThreeWayValve, Entrance, Exit,
    }
    /// The friction law: Swamee-Jain as EPANET, or Churchill over all regimes.
    Law = FrictionLaw { SwameeJain, Churchill }
}

/// The law used where none is named.
pub(super) fn law(given: Option<Law>) -> FrictionLaw {
    given.map_or(FrictionLaw::SwameeJain, FrictionLaw::from)
}

/// A fluid by kind and one measure of its strength (none for water).
#[derive(Copy, Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct FluidGiven {
    pub kind: LoopFluidKind,
    /// Antifreeze by mass.
    pub mass_fraction: Option<Amount<Fraction>>,
    /// Volume of pure antifreeze in that of the finished solution, both at 20 degC.
    pub volume_fraction: Option<Amount<Fraction>>,
    /// Freeze point of the solution.
    pub freeze_point: Option<Amount<Temperature>>,
}

impl FluidGiven {
    pub fn kind(self) -> FluidKind {
        kind_of(self.kind)
    }
    pub fn fluid(self) -> Result<Fluid, CalcError> {
        Ok(Fluid::new(self.kind(), self.strength()?.value())?)
    }
    /// Mass fraction with its uncertainty.
    pub fn strength(self) -> Result<Uncertain<Fraction>, CalcError> {
        let kind = self.kind();
        let given = (self.mass_fraction, self.volume_fraction, self.freeze_point);
        if kind == FluidKind::Water {
            return match given {
                (None, None, None) => Ok(Uncertain::exact(Fraction::ZERO)),
                _ => Err(CalcError::new("water-has-no-strength", "fluid", "water")),
            };
        }
        match given {
            (Some(w), None, None) => {
                MASS_FRACTION.check(w.get())?;
                Ok(w.uncertain())
            }
            (None, Some(phi), None) => Ok(propagate((phi.uncertain(),), |(phi,)| {
                Fluid::from_volume_fraction(kind, phi).map(Fluid::mass_fraction)
            })?
            .result),
            (None, None, Some(t)) => Ok(propagate((t.uncertain(),), |(t,)| {
                Fluid::from_freezing_point(kind, t).map(Fluid::mass_fraction)
            })?
            .result),
            _ => Err(CalcError::new("one-strength", "fluid", "")),
        }
    }
}

/// A fluid as the hydraulics need it.
pub(super) fn state(fluid: FluidGiven, t: Amount<Temperature>) -> Result<FluidState, CalcError> {
    Ok(FluidState::of(fluid.fluid()?, t.get())?)
}

/// Air pressure at an altitude; at the sea where none is given.
pub(super) fn atmosphere(altitude: Option<Amount<Length>>) -> Result<AbsolutePressure, CalcError> {
    let altitude = altitude.map_or(Length::ZERO, Amount::get);
    Ok(atmospheric_pressure(altitude)?)
}

/// The dimensions of a pipe.
pub(super) fn pipe(given: &records::Pipe) -> Result<Pipe, CalcError> {
    Ok(pipe_of(given)?)
}

/// A number of one fitting.
#[derive(Copy, Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct FittingCount {
    pub kind: Fitting,
    #[schemars(range(min = 1, max = 10000))]
    pub count: u32,
}

/// A run of pipe with its fittings.
#[derive(Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct RunGiven {
    pub pipe: records::Pipe,
    /// Length of the whole run; of a circuit out and back.
    pub length: Amount<Length>,
    #[serde(default)]
    #[schemars(length(max = 100))]
    pub fittings: Vec<FittingCount>,
    /// Loss coefficient K of anything else in the run.
    pub loss_coefficient: Option<Amount<Number>>,
}

impl RunGiven {
    pub fn run(&self) -> Result<Run, CalcError> {
        let counted: f64 = self
            .fittings
            .iter()
            .map(|f| {
                let k = component::Fitting::from(f.kind).loss_coefficient();
                k.si() * f64::from(f.count)
            })
            .sum();
        let more = self.loss_coefficient.map_or(0.0, |k| k.get().si());
        Ok(Run {
            pipe: pipe(&self.pipe)?,
            length: crate::hydraulics::pipe::LENGTH.check(self.length.get())?,
            fittings: component::LOSS_COEFFICIENT.check(Number::from_si(counted + more))?,
        })
    }
}

/// A list of runs.
pub(super) fn runs(given: &[RunGiven]) -> Result<Vec<Run>, CalcError> {
    given.iter().map(RunGiven::run).collect()
}

/// A pump curve through points.
pub(super) fn pump_curve(points: &[HeadPoint]) -> Result<PumpCurve, CalcError> {
    let points: Vec<_> = points
        .iter()
        .map(|point| (point.flow.get(), point.head.get()))
        .collect();
    Ok(PumpCurve::through(&points)?)
}

/// A speed relative to the curve; full where none is given.
pub(super) fn speed(given: Option<Amount<Fraction>>) -> Number {
    Number::from_si(given.map_or(1.0, |speed| speed.get().si()))
}

/// A part by its own curve: exchanger, strainer, filter, check valve.
#[derive(Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct PartGiven {
    /// Pressure drop against flow, from the maker's data.
    #[schemars(length(min = 1, max = 100))]
    pub curve: Vec<DropPoint>,
    /// Fluid for which the curve is printed; water when left out.
    pub curve_fluid: Option<FluidGiven>,
    /// Temperature for which it is printed; 15 degC when left out.
    pub curve_temperature: Option<Amount<Temperature>>,
}

impl PartGiven {
    pub fn loss_curve(&self) -> Result<LossCurve, CalcError> {
        const USUAL: f64 = 15.0;
        let fluid = self
            .curve_fluid
            .map_or(Ok(Fluid::WATER), FluidGiven::fluid)?;
        let t = self
            .curve_temperature
            .map_or(Temperature::from_celsius(USUAL), Amount::get);
        let points: Vec<_> = self
            .curve
            .iter()
            .map(|point| (point.flow.get(), point.drop.get()))
            .collect();
        Ok(LossCurve::through(&points, FluidState::of(fluid, t)?)?)
    }
}
