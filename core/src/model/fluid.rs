//! What is believed of the fluid.

use super::{Assumption, Piping};
use crate::fluids::{Fluid, FluidKind, Suitability};
use crate::records::visit_file::VisitFile;
use crate::records::{Instrument, LoopFluidKind, Phase, ReadingPoint};
use crate::uncertainty::{Uncertain, weighted_mean};
use crate::units::{Fraction, Quantity, Temperature};

/// Spread of a strength that was written down and not measured, by volume. Judgement.
const RECORDED_SPREAD: f64 = 0.03;
/// A loop whose strength nobody knows, by volume. Judgement.
const UNKNOWN_STRENGTH: f64 = 0.20;
const UNKNOWN_STRENGTH_SPREAD: f64 = 0.09;
/// Share of the loop volume that a dosed volume is uncertain by. Judgement.
const DOSE_SPREAD: f64 = 0.05;
/// Lowest freezing point that inversion is tried for, °C.
const STRONGEST_FREEZING: f64 = -45.0;

/// Where the believed strength comes from.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Concentration {
    /// Freeze-point samples of this visit.
    Measured,
    /// The record of the system.
    Recorded,
    /// The volume dosed at commissioning over the loop volume.
    Dosed,
    /// Nothing is known.
    Assumed,
}

/// What is believed of the fluid.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct FluidBelief {
    /// The kind, if anybody knows.
    pub kind: Option<FluidKind>,
    /// Antifreeze by volume.
    pub volume_fraction: Uncertain<Fraction>,
    /// Where the strength comes from.
    pub concentration: Concentration,
}

impl FluidBelief {
    pub(super) fn of(file: &VisitFile, piping: &Piping, assumptions: &mut Vec<Assumption>) -> Self {
        let Some(recorded) = file.system.fluid else {
            assumptions.push(Assumption::FluidUnknown);
            return Self {
                kind: None,
                volume_fraction: Uncertain::new(
                    Fraction::from_si(UNKNOWN_STRENGTH),
                    UNKNOWN_STRENGTH_SPREAD,
                ),
                concentration: Concentration::Assumed,
            };
        };
        let kind = kind_of(recorded.kind);
        if kind == FluidKind::Water {
            return Self {
                kind: Some(kind),
                volume_fraction: Uncertain::exact(Fraction::ZERO),
                concentration: Concentration::Recorded,
            };
        }
        let (volume_fraction, concentration) = if let Some(measured) = measured(file, kind) {
            (measured, Concentration::Measured)
        } else if let Some(written) = recorded.volume_fraction {
            (
                Uncertain::new(written.get(), RECORDED_SPREAD),
                Concentration::Recorded,
            )
        } else if let Some(dosed) = file.commissioning.antifreeze_volume {
            let share = dosed.get() / piping.volume.value();
            let relative = piping.volume.standard() / piping.volume.value().si();
            let spread = share * relative.hypot(DOSE_SPREAD);
            (
                Uncertain::new(Fraction::from_si(share.min(0.6)), spread),
                Concentration::Dosed,
            )
        } else {
            assumptions.push(Assumption::StrengthUnknown);
            let unknown = Fraction::from_si(UNKNOWN_STRENGTH);
            (
                Uncertain::new(unknown, UNKNOWN_STRENGTH_SPREAD),
                Concentration::Assumed,
            )
        };
        Self {
            kind: Some(kind),
            volume_fraction,
            concentration,
        }
    }

    /// The solution to compute with: the believed one, or water when the kind
    /// is unknown.
    pub fn solution(&self) -> Fluid {
        let fraction = Fraction::from_si(self.volume_fraction.value().si().clamp(0.0, 0.6));
        let known = self
            .kind
            .and_then(|kind| Fluid::from_volume_fraction(kind, fraction).ok());
        known.unwrap_or(Fluid::WATER)
    }

    /// A temperature at which [`FluidBelief::solution`] has properties, nearest
    /// to the one given: above its freezing point and inside its correlations.
    pub fn computable(&self, temperature: Temperature) -> Temperature {
        let solution = self.solution();
        let range = solution.kind().temperatures();
        let lowest = solution
            .freezing_point()
            .celsius()
            .max(range.min().celsius())
            + 0.1;
        let highest = range.max().celsius();
        Temperature::from_celsius(temperature.celsius().clamp(lowest, highest.max(lowest)))
    }
}

/// Strength by the freeze-point samples of the visit, where the instrument can
/// tell this fluid.
fn measured(file: &VisitFile, kind: FluidKind) -> Option<Uncertain<Fraction>> {
    let points = [
        ReadingPoint::FreezePointSupply,
        ReadingPoint::FreezePointReturn,
    ];
    let strengths: Vec<Uncertain<Fraction>> = file
        .visit
        .readings
        .iter()
        .filter(|reading| points.contains(&reading.point()) && reading.phase == Phase::Found)
        .filter(|reading| match reading.instrument_or_usual() {
            Instrument::Refractometer => matches!(
                kind.refractometer_suitability(),
                Suitability::Good | Suitability::Coarse
            ),
            _ => true,
        })
        .filter_map(|reading| {
            let freezing = reading.quantity::<Temperature>()?;
            let at = |celsius: f64| {
                let celsius = celsius.clamp(STRONGEST_FREEZING, 0.0);
                let solution = Fluid::from_freezing_point(kind, Temperature::from_celsius(celsius));
                solution
                    .ok()
                    .map(|solution| solution.volume_fraction().si())
            };
            let spread = reading.standard_uncertainty();
            let middle = at(freezing.celsius())?;
            let width = (at(freezing.celsius() - spread)? - at(freezing.celsius() + spread)?) / 2.0;
            Some(Uncertain::new(Fraction::from_si(middle), width.max(0.005)))
        })
        .collect();
    weighted_mean(&strengths).map(|mean| mean.widened())
}

/// The physics' name of a recorded fluid.
pub fn kind_of(kind: LoopFluidKind) -> FluidKind {
    match kind {
        LoopFluidKind::Water => FluidKind::Water,
        LoopFluidKind::PropyleneGlycol => FluidKind::PropyleneGlycol,
        LoopFluidKind::EthyleneGlycol => FluidKind::EthyleneGlycol,
        LoopFluidKind::Methanol => FluidKind::Methanol,
        LoopFluidKind::Ethanol => FluidKind::Ethanol,
    }
}
