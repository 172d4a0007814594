//! Why a question has no answer, as one object with code, field, value and remedy.

use crate::charge::ChargeError;
use crate::fluids::FluidError;
use crate::heat::HeatError;
use crate::heat::saturation::SaturationError;
use crate::hydraulics::component::{CurveError, FlowFromDropError};
use crate::hydraulics::network::SolveError;
use crate::hydraulics::pipe::PipeError;
use crate::hydraulics::pump::PumpError;
use crate::hydraulics::purge::{DeadHeadError, PurgeError};
use crate::hydraulics::suction::SuctionError;
use crate::pressure::PressureError;
use crate::records::visit_file::{Fault, FaultCode};
use crate::text::{Args, Catalog};
use crate::units::{Dimension, OutOfRange, Quantity, Unit};
use serde::Serialize;
use serde_json::Value;

/// Why a question has no answer. [`CalcError::code`] is the key of its remedy.
#[derive(Clone, Debug)]
pub(super) struct CalcError {
    pub code: &'static str,
    /// Path of the field, as far as it is known.
    pub field: String,
    /// What is wrong there, shortened.
    pub found: String,
    /// What would be accepted, or more words on what is wrong.
    pub accepted: String,
    /// The range that was left.
    range: Option<Box<OutOfRange>>,
    /// A fault of form, which the catalog has words for.
    fault: Option<Box<Fault>>,
}

/// An error as it is printed.
#[derive(Serialize)]
pub(super) struct Printed {
    code: &'static str,
    field: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    quantity: Option<&'static str>,
    value: Value,
    #[serde(skip_serializing_if = "Option::is_none")]
    unit: Option<&'static str>,
    remedy: String,
}

impl CalcError {
    pub fn new(code: &'static str, field: &str, found: impl ToString) -> Self {
        Self {
            code,
            field: field.to_owned(),
            found: found.to_string().chars().take(60).collect(),
            accepted: String::new(),
            range: None,
            fault: None,
        }
    }
    pub fn accepting(mut self, accepted: impl ToString) -> Self {
        self.accepted = accepted.to_string();
        self
    }
    /// A fault of the schema, with the nearest name where one is unknown.
    pub fn of_fault(fault: Fault, nearest: Option<&str>) -> Self {
        if fault.path.is_empty() && fault.code == FaultCode::WrongType {
            return Self::new("not-an-object", "", &fault.found);
        }
        let error = Self::new(fault.code.id(), &fault.path, &fault.found);
        match (fault.code, nearest) {
            (FaultCode::Unknown, Some(name)) => error.accepting(name),
            _ => Self {
                fault: Some(Box::new(fault)),
                ..error
            },
        }
    }
    /// The field that holds the value which left a range, found by its value:
    /// the physics knows no field names.
    pub fn locate(mut self, question: &Value) -> Self {
        if let (Some(range), true) = (&self.range, self.field.is_empty())
            && let Some((path, _)) = find(question, range, String::new())
        {
            self.field = path;
        }
        self
    }
    /// As it is printed; `question` decides in which unit a range is given.
    pub fn printed(&self, question: &Value, catalog: &Catalog) -> Printed {
        let mut value = Value::String(self.found.clone());
        let (mut unit, mut accepted) = (None, self.accepted.clone());
        if let Some(range) = &self.range {
            let written = find(question, range, String::new()).map(|(_, unit)| unit);
            let shown = written.or_else(|| Unit::of(range.dimension).next());
            let shown = shown.unwrap_or(Unit::Plain);
            let round = |si: f64| {
                let value = shown.from_si(si);
                let scale = 10f64.powi(6 - value.abs().max(1e-9).log10().ceil() as i32);
                (value * scale).round() / scale
            };
            // A number that is none has no JSON.
            value = serde_json::Number::from_f64(round(range.value))
                .map_or_else(|| Value::String(range.value.to_string()), Value::Number);
            unit = Some(shown.symbol());
            accepted = format!("{} … {}", round(range.min), round(range.max));
        }
        let remedy = match &self.fault {
            Some(fault) => fault.message(catalog),
            None => {
                let args = Args::new()
                    .text("field", self.field.as_str())
                    .text("found", self.found.as_str())
                    .text("unit", unit.unwrap_or_default())
                    .text("accepted", accepted);
                catalog.fill(&format!("calc-remedy-{}", self.code), &args)
            }
        };
        Printed {
            code: self.code,
            field: self.field.clone(),
            quantity: self.range.as_ref().map(|range| range.label),
            value,
            unit,
            remedy,
        }
    }
}

/// Path and unit of the measure whose value left a range.
fn find(value: &Value, range: &OutOfRange, path: String) -> Option<(String, Unit)> {
    match value {
        Value::Object(map) => {
            if let (Some(number), Some(symbol)) = (
                map.get("value").and_then(Value::as_f64),
                map.get("unit").and_then(Value::as_str),
            ) && let Some(unit) = Unit::of(range.dimension).find(|u| u.symbol() == symbol)
                && (unit.to_si(number) - range.value).abs() <= 1e-12 * range.value.abs()
            {
                return Some((format!("{path}.value"), unit));
            }
            map.iter()
                .find_map(|(name, value)| find(value, range, join(&path, name)))
        }
        Value::Array(items) => items
            .iter()
            .enumerate()
            .find_map(|(i, value)| find(value, range, format!("{path}[{i}]"))),
        _ => None,
    }
}

pub(super) fn join(path: &str, name: &str) -> String {
    if path.is_empty() {
        name.to_owned()
    } else {
        format!("{path}.{name}")
    }
}

impl From<OutOfRange> for CalcError {
    fn from(range: OutOfRange) -> Self {
        Self {
            range: Some(Box::new(range)),
            ..Self::new("out-of-range", "", "")
        }
    }
}
impl From<FluidError> for CalcError {
    fn from(error: FluidError) -> Self {
        match error {
            FluidError::OutOfRange(range) => range.into(),
            FluidError::BelowFreezing {
                temperature,
                freezing,
                ..
            } => OutOfRange {
                label: "temperature of the fluid",
                dimension: Dimension::Temperature,
                value: temperature.si(),
                min: freezing.si(),
                max: 373.15,
            }
            .into(),
            other => Self::new(other.code(), "fluid", ""),
        }
        .coded(error.code())
    }
}
impl CalcError {
    fn coded(self, code: &'static str) -> Self {
        Self { code, ..self }
    }
    fn plain(code: &'static str, error: &dyn std::fmt::Display) -> Self {
        Self::new(code, "", "").accepting(error)
    }
}

/// Errors that pass some of their kinds on and have a code for the others.
macro_rules! errors {
    ($($error:ident { $($inner:ident),* } else |$other:ident| $code:expr;)*) => {$(
        impl From<$error> for CalcError {
            fn from(error: $error) -> Self {
                match error {
                    $($error::$inner(inner) => inner.into(),)*
                    $other => Self::plain($code, &$other),
                }
            }
        }
    )*};
}
errors! {
    ChargeError { OutOfRange, Fluid } else |other| other.code();
    HeatError { OutOfRange, Fluid, Saturation } else |other| other.code();
    PressureError { OutOfRange, Fluid } else |other| other.code();
    PumpError { OutOfRange } else |other| "bad-pump-curve";
    CurveError { OutOfRange } else |other| "bad-loss-curve";
    PurgeError { OutOfRange, Solve, Pump } else |other| "no-circuit";
    DeadHeadError { OutOfRange, Fluid } else |other| "no-test";
    SolveError { OutOfRange } else |other| match other {
        SolveError::Empty => "empty-network",
        SolveError::Unreachable { .. } => "unreachable-node",
        _ => "not-converged",
    };
}
impl From<PipeError> for CalcError {
    fn from(error: PipeError) -> Self {
        match error {
            PipeError::NoSuchSize { series, nominal } => {
                Self::new("no-such-pipe", "pipe", nominal).accepting(series.sizes().join(", "))
            }
            PipeError::NoSuchRatio { nominal, sdr, .. } => {
                Self::new("no-such-ratio", "pipe.sdr", sdr).accepting(nominal)
            }
            PipeError::OutOfRange(range) => range.into(),
        }
    }
}
impl From<SaturationError> for CalcError {
    fn from(error: SaturationError) -> Self {
        let SaturationError::OutOfRange(range) = error;
        range.into()
    }
}
impl From<SuctionError> for CalcError {
    fn from(error: SuctionError) -> Self {
        match error {
            SuctionError::OutOfRange(range) => range.into(),
            SuctionError::Fluid(error) => error.into(),
        }
    }
}
impl From<FlowFromDropError> for CalcError {
    fn from(error: FlowFromDropError) -> Self {
        match error {
            FlowFromDropError::Fluid(error) => error.into(),
            FlowFromDropError::Curve(error) => error.into(),
        }
    }
}
