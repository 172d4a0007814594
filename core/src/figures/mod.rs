//! Numbers on their way to a person, with the reasons behind them.
//!
//! The engine works in typed quantities. What is shown or reported may be any
//! of them, so here the type becomes data: a [`Figure`] still knows its
//! dimension, its uncertainty and the unit it reads best in, and a
//! [`Reasoning`] says how it came about: which formula, from which inputs, by
//! whose authority.

use crate::text::Catalog;
use crate::uncertainty::Uncertain;
use crate::units::{Dimension, Measure, Quantity, Unit, UnitSystem, format};

/// Share of a figure that its doubt may be before it is no basis to work on. Judgement.
const HARDLY_KNOWN: f64 = 0.75;

/// A number with its dimension and uncertainty, all in SI.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Figure {
    /// What it measures.
    pub dimension: Dimension,
    /// The value.
    pub si: f64,
    /// Its standard uncertainty; zero when exact or not stated.
    pub standard: f64,
    /// The units it reads best in, US and SI, where the usual ones would not
    /// do: inches rather than feet for a level.
    pub units: Option<(Unit, Unit)>,
}

impl Figure {
    /// A quantity with its uncertainty.
    pub fn uncertain<Q: Quantity>(value: Uncertain<Q>) -> Self {
        Self {
            dimension: Q::DIMENSION,
            si: value.value().si(),
            standard: value.standard(),
            units: None,
        }
    }
    /// A quantity without uncertainty.
    pub fn exact<Q: Quantity>(value: Q) -> Self {
        Self {
            dimension: Q::DIMENSION,
            si: value.si(),
            standard: 0.0,
            units: None,
        }
    }
    /// A measure, shown in the unit in which it was written.
    pub fn written<Q: Quantity>(measure: Measure<Q>) -> Self {
        let unit = measure.unit();
        Self {
            units: Some((unit, unit)),
            ..Self::exact(measure.get())
        }
    }
    /// The same figure shown in these units.
    pub fn shown_in(mut self, us: Unit, si: Unit) -> Self {
        self.units = Some((us, si));
        self
    }
    /// Whether what it may be off, in 19 of 20 cases, is near to all of it. A temperature,
    /// or a difference of two readings, is never so: its zero means nothing.
    pub fn is_hardly_known(&self) -> bool {
        let counted = !matches!(
            self.dimension,
            Dimension::Temperature | Dimension::TemperatureDifference | Dimension::Pressure
        );
        counted && 2.0 * self.standard >= HARDLY_KNOWN * self.si.abs() && self.standard > 0.0
    }
    /// The unit it is shown in.
    pub fn unit(&self, system: UnitSystem) -> Unit {
        match (self.units, system) {
            (Some((us, _)), UnitSystem::Us) => us,
            (Some((_, si)), UnitSystem::Si) => si,
            (None, system) => system.unit(self.dimension),
        }
    }
    /// The number and its standard uncertainty in the unit it is shown in.
    pub fn in_unit(&self, system: UnitSystem) -> (f64, f64) {
        let unit = self.unit(system);
        let width = unit.to_si(1.0) - unit.to_si(0.0);
        (unit.from_si(self.si), self.standard / width)
    }
    /// What a person reads: `7.4 ± 0.8 gpm`, `12.0 gal`.
    ///
    /// The number behind ± is twice the standard uncertainty: the truth lies
    /// inside in 19 of 20 cases.
    pub fn text(&self, system: UnitSystem) -> String {
        let unit = self.unit(system);
        // A number of things: no decimals.
        if self.dimension == Dimension::Number && self.standard == 0.0 && self.si.fract() == 0.0 {
            return format::number(self.si, 0);
        }
        let width = unit.to_si(1.0) - unit.to_si(0.0);
        format::plus_minus(unit.from_si(self.si), 2.0 * self.standard / width, unit)
    }
}

/// Who says so.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
pub enum Authority {
    /// A published source; the catalog key of its citation is `source-<id>`.
    Published(&'static str),
    /// The same, from memory of it.
    FromMemory(&'static str),
    /// Common practice of the trade, no publication.
    CommonPractice,
    /// Our own estimate.
    Judgement,
}

/// How a figure came about.
#[derive(Clone, PartialEq, Debug)]
pub struct Reasoning {
    /// Catalog key of the formula in words and signs, `why-<id>`.
    pub formula: &'static str,
    /// What went in: catalog key of the name (`input-<id>`) and the figure.
    pub inputs: Vec<(&'static str, Figure)>,
    /// Who says so.
    pub authority: Authority,
}

impl Reasoning {
    /// Without inputs yet.
    pub fn new(formula: &'static str, authority: Authority) -> Self {
        Self {
            formula,
            inputs: Vec::new(),
            authority,
        }
    }
    /// With one more input.
    pub fn with(mut self, name: &'static str, figure: Figure) -> Self {
        self.inputs.push((name, figure));
        self
    }
    /// The formula in words.
    pub fn formula_text(&self, catalog: &Catalog) -> String {
        catalog.text(&format!("why-{}", self.formula))
    }
    /// The inputs as `name: value`.
    pub fn input_texts(&self, catalog: &Catalog, system: UnitSystem) -> Vec<(String, String)> {
        let name = |key: &str| catalog.text(&format!("input-{key}"));
        self.inputs
            .iter()
            .map(|(key, figure)| (name(key), figure.text(system)))
            .collect()
    }
    /// The authority in words.
    pub fn authority_text(&self, catalog: &Catalog) -> String {
        match self.authority {
            Authority::Published(source) => catalog.cited(source),
            Authority::FromMemory(source) => catalog.cited_from_memory(source),
            Authority::CommonPractice => catalog.text("authority-common-practice"),
            Authority::Judgement => catalog.text("authority-judgement"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{Temperature, Volume, VolumeFlow};

    #[test]
    fn what_is_known_to_nearly_all_of_itself_is_hardly_known() {
        let gpm = |value: f64, twice: f64| {
            let flow = |v| VolumeFlow::from_si(Unit::GallonPerMinute.to_si(v));
            Figure::uncertain(Uncertain::new(flow(value), flow(twice / 2.0).si()))
        };
        assert!(gpm(12.0, 11.0).is_hardly_known());
        assert!(!gpm(12.0, 4.0).is_hardly_known());
        // The zero of °C means nothing, and what is exact is known.
        let cold = Uncertain::new(Temperature::from_celsius(0.5), 2.0);
        assert!(!Figure::uncertain(cold).is_hardly_known());
        assert!(!Figure::exact(Volume::ZERO).is_hardly_known());
    }
}
