//! What must be said beside a result, as codes; the words are in the catalogues.

use super::flash::flash_point;
use crate::fluids::{Fluid, FluidKind};
use crate::units::{Fraction, Quantity};

/// A caution that belongs to a result.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug, Hash)]
pub enum Caution {
    /// The product as it is handled can be lit at working temperatures: no flame, no sparks,
    /// outdoors, add below the liquid's surface.
    FlammableProduct,
    /// The diluted loop fluid still has a flash point that a boiler room can reach.
    FlammableWhenDiluted,
    /// Pure alcohol is not brought on site: use premix. Common practice, no source.
    UsePremixedAlcohol,
    /// Poisonous if swallowed (methanol, ethylene glycol); methanol also through skin and lungs.
    Poisonous,
    /// Whether this antifreeze may be in the ground at all, and its denaturants, is for local
    /// rules to say.
    LocalPermission,
    /// What is drained is caught, labelled and taken to lawful disposal: never to ground,
    /// storm drain or septic tank.
    CatchAndDispose,
    /// Part the loop from drinking water (air gap or backflow preventer).
    PreventBackflow,
    /// Pump glycol in slowly, do not pour it: it carries fine bubbles and foams when cold.
    /// Common practice, no source.
    PumpGlycol,
    /// Below about a fifth of glycol bacteria feed on it and the inhibitor is thin.
    /// Consensus of trade water treatment.
    ThinGlycol,
    /// Gloves and goggles.
    GlovesAndGoggles,
}

/// Flash points below this ask for a caution, °C: upper end of the flammable liquids of
/// NFPA 30 (class IC, 100 °F).
const WORKING_FLASH: f64 = 37.8;
/// Mass fraction below which a glycol is thin.
const THIN: f64 = 0.20;
/// Mass fraction above which a product counts as pure.
const PURE: f64 = 0.75;

/// The cautions for handling a product and the fluids before and after, in fixed order.
pub fn cautions(
    fluids: &[Fluid],
    product: FluidKind,
    product_mass_fraction: Fraction,
    drained: bool,
) -> Vec<Caution> {
    let holds = |kind: FluidKind| product == kind || fluids.iter().any(|f| f.kind() == kind);
    let antifreeze = FluidKind::ALL
        .into_iter()
        .any(|kind| kind != FluidKind::Water && holds(kind));
    let lit = |kind, w| flash_point(kind, w).is_some_and(|t| t.celsius() < WORKING_FLASH);
    let glycol = |kind| matches!(kind, FluidKind::PropyleneGlycol | FluidKind::EthyleneGlycol);
    let last = fluids.last();
    let mut list = Vec::new();
    let mut when = |condition: bool, caution| {
        if condition {
            list.push(caution);
        }
    };
    when(
        lit(product, product_mass_fraction),
        Caution::FlammableProduct,
    );
    when(
        fluids.iter().any(|f| lit(f.kind(), f.mass_fraction())),
        Caution::FlammableWhenDiluted,
    );
    when(
        product.is_flammable() && product_mass_fraction.si() > PURE,
        Caution::UsePremixedAlcohol,
    );
    when(
        holds(FluidKind::Methanol) || holds(FluidKind::EthyleneGlycol),
        Caution::Poisonous,
    );
    when(antifreeze, Caution::LocalPermission);
    when(drained && antifreeze, Caution::CatchAndDispose);
    when(true, Caution::PreventBackflow);
    when(glycol(product), Caution::PumpGlycol);
    when(
        last.is_some_and(|f| glycol(f.kind()) && f.mass_fraction().si() < THIN),
        Caution::ThinGlycol,
    );
    when(antifreeze, Caution::GlovesAndGoggles);
    list
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(kind: FluidKind, w: f64, product: f64) -> Vec<Caution> {
        let fluid = Fluid::new(kind, Fraction::from_si(w)).unwrap();
        cautions(
            &[Fluid::WATER, fluid],
            kind,
            Fraction::from_si(product),
            true,
        )
    }

    #[test]
    fn every_alcohol_result_carries_fire_and_permission() {
        for kind in FluidKind::ALL
            .into_iter()
            .filter(|kind| kind.is_flammable())
        {
            for w in [0.05, 0.1, 0.2, 0.3] {
                let list = of(kind, w, 1.0);
                assert!(list.contains(&Caution::FlammableProduct), "{kind:?} {w}");
                assert!(list.contains(&Caution::UsePremixedAlcohol));
                assert!(list.contains(&Caution::LocalPermission));
                assert!(list.contains(&Caution::CatchAndDispose));
            }
        }
        assert!(of(FluidKind::Ethanol, 0.25, 1.0).contains(&Caution::FlammableWhenDiluted));
        assert!(of(FluidKind::Methanol, 0.2, 0.3).contains(&Caution::Poisonous));
        assert!(!of(FluidKind::PropyleneGlycol, 0.25, 1.0).contains(&Caution::Poisonous));
    }

    #[test]
    fn thin_glycol_is_named() {
        assert!(of(FluidKind::PropyleneGlycol, 0.15, 1.0).contains(&Caution::ThinGlycol));
        assert!(!of(FluidKind::PropyleneGlycol, 0.25, 1.0).contains(&Caution::ThinGlycol));
    }
}
