//! The loop as the pressure model takes it.

use super::LoopModel;
use crate::hydraulics::elastic::Axial;
use crate::pressure::balance::{PlasticPart, SealedLoop, TrappedAir};
use crate::pressure::belief::{Surround, Unknowns};
use crate::pressure::gas::Vessel;
use crate::pressure::modulus::Resin;
use crate::records::{FlowCentre, GroundKind};
use crate::uncertainty::Uncertain;
use crate::units::{Fraction, GaugePressure, Number, Quantity, Temperature, Unit, Volume};

/// Gas of an expansion tank indoors, °C. Judgement.
const INDOORS: f64 = 18.0;
/// Size of an expansion tank over the volume of its loop, and what its air side is set
/// to. Common practice, no source.
const USUAL_TANK: f64 = 0.05;
const USUAL_PRE_CHARGE_PSI: f64 = 15.0;
/// Air that a purged loop still holds at its charge over its volume, with its standard
/// uncertainty: seldom more than the 0.2 % that a dead-head test lets pass. Judgement.
const AIR_LEFT: (f64, f64) = (5e-4, 5e-4);

/// An expansion tank indoors.
fn tank(volume: Volume, precharge: GaugePressure) -> Vessel {
    Vessel {
        volume,
        precharge,
        set_at: Temperature::from_celsius(INDOORS),
        gas: Temperature::from_celsius(INDOORS),
    }
}

impl LoopModel {
    /// The sealed loop; none for a vented reservoir, nor for a tank of which
    /// volume or pre-charge is not known.
    pub fn sealed_loop(&self) -> Option<SealedLoop> {
        let vessel = match &self.flow_centre {
            Some(FlowCentre::NonPressurised { .. }) => return None,
            Some(FlowCentre::SealedWithTank {
                tank_volume,
                pre_charge,
            }) => Some(tank(
                tank_volume.as_ref()?.get(),
                pre_charge.as_ref()?.get(),
            )),
            Some(FlowCentre::Sealed {}) | None => None,
        };
        Some(self.sealed_with(vessel))
    }

    /// The loop with an expansion tank of usual size and pre-charge where the records
    /// say that there is one and not which; none for any other flow centre.
    pub fn sealed_loop_with_usual_tank(&self) -> Option<SealedLoop> {
        let Some(FlowCentre::SealedWithTank {
            tank_volume,
            pre_charge,
        }) = &self.flow_centre
        else {
            return None;
        };
        let usual = self.piping.volume.value() * USUAL_TANK;
        let set = GaugePressure::from_si(Unit::Psi.to_si(USUAL_PRE_CHARGE_PSI));
        Some(self.sealed_with(Some(tank(
            tank_volume.as_ref().map_or(usual, |volume| volume.get()),
            pre_charge.as_ref().map_or(set, |set| set.get()),
        ))))
    }

    fn sealed_with(&self, vessel: Option<Vessel>) -> SealedLoop {
        let rigid = (self.piping.volume.value() - self.piping.plastic_volume).si();
        SealedLoop {
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
        }
    }

    /// Air left in at a charge, by volume at the charge pressure. It dissolves in the days
    /// after and takes pressure with it. The fluid came out of an open tank, that is with the
    /// air it holds at one atmosphere.
    pub fn trapped_air(&self) -> (Uncertain<Volume>, TrappedAir) {
        let holds = self.piping.volume.value();
        let volume = holds * AIR_LEFT.0;
        let air = TrappedAir {
            volume,
            dissolves: true,
            saturation: Fraction::from_si(1.0),
        };
        (Uncertain::new(volume, holds.si() * AIR_LEFT.1), air)
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
