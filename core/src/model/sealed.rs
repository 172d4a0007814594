//! The loop as the pressure model takes it.

use super::LoopModel;
use crate::hydraulics::elastic::Axial;
use crate::pressure::balance::{PlasticPart, SealedLoop};
use crate::pressure::belief::{Surround, Unknowns};
use crate::pressure::gas::Vessel;
use crate::pressure::modulus::Resin;
use crate::records::{FlowCentre, GroundKind};
use crate::units::{Fraction, Number, Quantity, Temperature, Volume};

/// Gas of an expansion tank indoors, °C. Judgement.
const INDOORS: f64 = 18.0;

impl LoopModel {
    /// The sealed loop; none for a vented reservoir, nor for a tank of which
    /// volume or pre-charge is not known.
    pub fn sealed_loop(&self) -> Option<SealedLoop> {
        let vessel = match &self.flow_centre {
            Some(FlowCentre::NonPressurised { .. }) => return None,
            Some(FlowCentre::SealedWithTank {
                tank_volume,
                pre_charge,
            }) => Some(Vessel {
                volume: tank_volume.as_ref()?.get(),
                precharge: pre_charge.as_ref()?.get(),
                set_at: Temperature::from_celsius(INDOORS),
                gas: Temperature::from_celsius(INDOORS),
            }),
            Some(FlowCentre::Sealed {}) | None => None,
        };
        let rigid = (self.piping.volume.value() - self.piping.plastic_volume).si();
        Some(SealedLoop {
            plastic: vec![PlasticPart {
                volume: self.piping.plastic_volume,
                ratio: Number::from_si(self.piping.diameter_ratio),
            }],
            rigid: Volume::from_si(rigid.max(0.0)),
            resin: Resin::Pe4xxx,
            axial: Axial::Held,
            fluid: self.fluid.solution(),
            atmosphere: self.atmosphere,
            vessel,
        })
    }

    /// What is not known of the pipe, its surround and the fluid.
    pub fn unknowns(&self, ground: Option<GroundKind>) -> Unknowns {
        let mut unknowns = Unknowns::typical(match ground {
            Some(GroundKind::Pond) => Surround::Pond,
            Some(GroundKind::Vertical) => Surround::Grout,
            Some(GroundKind::Horizontal) | None => Surround::Trench,
        });
        // About 2 % of the fluid's growth per percent of antifreeze by volume,
        // and more where the kind itself is unknown; from the expansion of the
        // solutions.
        let strength = 2.0 * self.fluid.volume_fraction.standard();
        let kind = if self.fluid.kind.is_none() { 0.5 } else { 0.0 };
        let spread = unknowns.fluid.si().hypot(strength).hypot(kind);
        unknowns.fluid = Fraction::from_si(spread);
        unknowns
    }
}
