//! What is believed of a system: the records made computable.
//!
//! Physics takes plain inputs and records may leave anything out. In between
//! stands this model: what is known is taken as it is, what is not known is a
//! wide distribution with a stated [`Assumption`], never an error.

mod assumption;
mod demand;
mod fluid;
mod piping;
mod sealed;
mod stood;

pub use assumption::Assumption;
pub use demand::Demand;
pub use fluid::{Concentration, FluidBelief, kind_of};
pub use piping::{Piping, Section, pipe_of};
pub use stood::{STOOD_DAYS, charged_or_installed, stood_under, topped_up};

use crate::fluids::atmospheric_pressure;
use crate::records::visit_file::VisitFile;
use crate::records::{FlowCentre, Reading, ReadingPoint};
use crate::units::{AbsolutePressure, GaugePressure, Quantity, Unit};

/// Highest static pressure that a trade accepts for a loop of unknown rating.
/// Common practice, no source.
pub const CONSERVATIVE_RATING_PSI: f64 = 100.0;

/// A gauge at rest above this, psi, does not stand on a vented reservoir: it
/// would have to lie some 23 ft higher. Judgement.
const VENTED_MOST_PSI: f64 = 10.0;

/// Everything computable about one system.
#[derive(Clone, Debug)]
pub struct LoopModel {
    /// The air pressure at the site.
    pub atmosphere: AbsolutePressure,
    /// What the heat pump asks of the loop.
    pub demand: Demand,
    /// The pipe and what it holds.
    pub piping: Piping,
    /// The fluid.
    pub fluid: FluidBelief,
    /// The flow centre, if known.
    pub flow_centre: Option<FlowCentre>,
    /// Whether the loop is closed under pressure, if that is known.
    pub is_pressurised: Option<bool>,
    /// What was assumed for want of a record, in the order it was needed.
    pub assumptions: Vec<Assumption>,
}

impl LoopModel {
    /// The model of a call.
    pub fn of(file: &VisitFile) -> Self {
        let mut assumptions = Vec::new();
        let altitude = file.site.elevation.map(|elevation| elevation.get());
        let atmosphere = altitude.and_then(|altitude| atmospheric_pressure(altitude).ok());
        if atmosphere.is_none() {
            assumptions.push(Assumption::SeaLevel);
        }
        let demand = Demand::of(&file.system, &mut assumptions);
        let piping = Piping::of(&file.system, &demand, &mut assumptions);
        let fluid = FluidBelief::of(file, &piping, &mut assumptions);
        let is_pressurised = is_pressurised(file);
        match (&file.system.flow_centre, is_pressurised) {
            (None, Some(_)) => assumptions.push(Assumption::FlowCentreClosed),
            (None, None) => assumptions.push(Assumption::FlowCentreUnknown),
            (Some(_), _) => {}
        }
        Self {
            atmosphere: atmosphere.unwrap_or(AbsolutePressure::standard_atmosphere()),
            demand,
            piping,
            fluid,
            flow_centre: file.system.flow_centre.clone(),
            is_pressurised,
            assumptions,
        }
    }

    /// The pressure that no advice may exceed: the lowest rating known of the
    /// system, or the conservative one when none is known. The second value
    /// says whether a rating was known.
    pub fn pressure_limit(&self, file: &VisitFile) -> (GaugePressure, bool) {
        let conservative = GaugePressure::from_si(Unit::Psi.to_si(CONSERVATIVE_RATING_PSI));
        let unit = file
            .system
            .heat_pump
            .as_ref()
            .and_then(|unit| unit.maximum_pressure);
        match unit.map(|pressure| pressure.get()) {
            Some(rating) if rating < conservative => (rating, true),
            Some(_) => (conservative, true),
            None => (conservative, false),
        }
    }
}

/// By the record, or by a gauge that no vented reservoir would hold up.
fn is_pressurised(file: &VisitFile) -> Option<bool> {
    if let Some(centre) = &file.system.flow_centre {
        return Some(!matches!(centre, FlowCentre::NonPressurised { .. }));
    }
    let most = Unit::Psi.to_si(VENTED_MOST_PSI);
    let at_rest = |reading: &&Reading| reading.point() == ReadingPoint::StaticPressure;
    let mut readings = file.visit.readings.iter().filter(at_rest);
    readings
        .any(|reading| reading.value().si() > most)
        .then_some(true)
}

#[cfg(test)]
mod tests;
