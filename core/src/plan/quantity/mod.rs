//! Quantities of a correction: what they are, their values for one system, and why.

mod dead_head;
mod dose;
mod hold;
mod kind;
mod leaving;
mod purge;
mod recheck;
mod remark;
mod running;
mod sheet;
mod static_pressure;

pub use dose::{Freezing, may_freeze};
pub use kind::QuantityKind;
pub use remark::{Remark, Stood};
pub use sheet::{Computed, Conditions, Known, Lack, Lacking, Part, Sheet, sheet};
pub use static_pressure::{LEAST_PSI, MOST_PSI, SEASON_DAYS, TANK_LEAST_BAR, TANK_MOST_BAR};

use crate::figures::Figure;
use crate::units::{Dimension, Unit};

/// A value as somebody wrote it, if the unit fits what it measures.
pub(super) fn written(dimension: Dimension, value: f64, unit: &str) -> Option<Figure> {
    let unit = Unit::of(dimension).find(|known| known.symbol() == unit)?;
    value.is_finite().then(|| Figure {
        dimension,
        si: unit.to_si(value),
        standard: 0.0,
        units: (unit == Unit::Inch).then_some((Unit::Inch, Unit::Centimetre)),
    })
}

#[cfg(test)]
mod tests;
