//! How much to drain and how much to add.
//!
//! Masses balance, and the loop is full before and after. With M = V ρ_t the
//! mass of the loop at the target, product in y = M (w_t − w₀)/(ρ_p (w_p − w₀))
//! and solution left (M − y ρ_p)/ρ₀. The volumes of water and antifreeze
//! shrink on mixing, so that a little more goes in than comes out: the
//! contraction is in these figures and is stated beside them.

use super::ChargeError;
use super::caution::{Caution, cautions};
use crate::fluids::{Fluid, FluidError, FluidKind, MASS_FRACTION};
use crate::uncertainty::{Propagated, Uncertain, propagate};
use crate::units::{
    Bound, Density, Fraction, Quantity, Temperature, TemperatureDifference, Volume,
};

/// Loop volumes, 1 L to 1 000 m³.
pub const LOOP_VOLUME: Bound<Volume> = Bound::si("loop volume", 1e-3, 1e3);
/// Margins between freeze point and lowest leaving temperature.
pub const MARGIN: Bound<TemperatureDifference> = Bound::si("freeze margin", 0.0, 20.0);
/// Margin of the trade: 10 °F below the lowest leaving fluid. Common practice, no source.
pub const FREEZE_MARGIN: f64 = 10.0 / 1.8;
/// Temperature at which volumes are measured, °C.
const MEASURED_AT: f64 = 20.0;
/// Strengths of what is sold, by mass.
const PRODUCT: Bound<Fraction> = Bound::si("mass fraction of the product", 0.0, 1.0);

/// What is added: water, a premix or a concentrate.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Product {
    kind: FluidKind,
    mass_fraction: f64,
    density: f64,
}

impl Product {
    /// Plain water.
    ///
    /// # Errors
    /// [`ChargeError`] never for water; the signature is that of the others.
    pub fn water() -> Result<Self, ChargeError> {
        Self::new(FluidKind::Water, Fraction::ZERO)
    }
    /// A product with a mass fraction of antifreeze. Above the range of the correlations the
    /// specific volume is taken straight between the strongest solution and the pure liquid,
    /// within 0.5 %.
    ///
    /// # Errors
    /// [`ChargeError::OutOfRange`].
    pub fn new(kind: FluidKind, mass_fraction: Fraction) -> Result<Self, ChargeError> {
        let w = PRODUCT.check(mass_fraction)?.si();
        let strongest = MASS_FRACTION.max().si();
        let density = if kind == FluidKind::Water || w <= strongest {
            density(Fluid::new(kind, mass_fraction)?)?
        } else {
            let edge = 1.0 / density(Fluid::new(kind, MASS_FRACTION.max())?)?;
            let pure = 1.0 / kind.pure_density().si();
            1.0 / (edge + (pure - edge) * (w - strongest) / (1.0 - strongest))
        };
        Ok(Self {
            kind,
            mass_fraction: w,
            density,
        })
    }
    /// A product whose label gives its strength by volume: pure antifreeze in that of the
    /// finished product, both at 20 °C, as [`Fluid::from_volume_fraction`] counts. Solves
    /// φ = w ρ(w)/ρ_a for w, ρ(w) as in [`Product::new`].
    ///
    /// # Errors
    /// [`ChargeError::OutOfRange`].
    pub fn by_volume(kind: FluidKind, volume_fraction: Fraction) -> Result<Self, ChargeError> {
        let phi = Bound::si("volume fraction of the product", 0.0, 1.0)
            .check(volume_fraction)?
            .si();
        if kind == FluidKind::Water {
            return Self::new(kind, Fraction::from_si(phi));
        }
        let (mut low, mut high) = (0.0, 1.0);
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            let density = Self::new(kind, Fraction::from_si(middle))?.density;
            if middle * density / kind.pure_density().si() < phi {
                low = middle;
            } else {
                high = middle;
            }
        }
        Self::new(kind, Fraction::from_si(high))
    }
    /// What it holds beside water.
    pub fn kind(&self) -> FluidKind {
        self.kind
    }
    /// Mass fraction of antifreeze.
    pub fn mass_fraction(&self) -> Fraction {
        Fraction::from_si(self.mass_fraction)
    }
    /// Density at 20 °C.
    pub fn density(&self) -> Density {
        Density::from_si(self.density)
    }
}

fn density(fluid: Fluid) -> Result<f64, FluidError> {
    Ok(fluid.density(Temperature::from_celsius(MEASURED_AT))?.si())
}

/// The solution that freezes a margin below the lowest temperature the fluid leaves with.
///
/// # Errors
/// [`ChargeError::WaterCannotProtect`] for water below its freezing point;
/// [`ChargeError::OutOfRange`].
pub fn target(
    kind: FluidKind,
    lowest_leaving: Temperature,
    margin: TemperatureDifference,
) -> Result<Fluid, ChargeError> {
    let freezing = lowest_leaving - MARGIN.check(margin)?;
    if freezing.celsius() >= 0.0 {
        return Ok(Fluid::WATER);
    }
    if kind == FluidKind::Water {
        return Err(ChargeError::WaterCannotProtect);
    }
    Ok(Fluid::from_freezing_point(kind, freezing)?)
}

/// What to do with a loop.
#[derive(Clone, PartialEq, Debug)]
pub struct Adjustment {
    /// Solution to let out first.
    pub drain: Volume,
    /// Product to put in.
    pub add: Volume,
    /// What goes in more than comes out because volumes shrink on mixing (negative if they
    /// grow).
    pub contraction: Volume,
    /// The loop afterwards, when it is mixed.
    pub result: Fluid,
    /// Freeze point afterwards.
    pub freezing: Temperature,
    /// What must be said beside this result.
    pub cautions: Vec<Caution>,
}

/// Drain and add, from a known strength to a target, in a full loop of volume V: a first dose
/// into water, a stronger fill, or a dilution with water or a weaker premix.
///
/// # Errors
/// [`ChargeError::ProductCannotReach`] if the target does not lie between loop and product,
/// [`ChargeError::OtherFluid`] for a second antifreeze, [`ChargeError::OutOfRange`].
pub fn adjust(
    volume: Volume,
    in_loop: Fluid,
    target: Fluid,
    product: &Product,
) -> Result<Adjustment, ChargeError> {
    let v = LOOP_VOLUME.check(volume)?.si();
    let kinds = [in_loop.kind(), target.kind(), product.kind];
    let mut named = kinds.iter().filter(|kind| **kind != FluidKind::Water);
    if let Some(first) = named.next()
        && let Some(other) = named.find(|kind| *kind != first)
    {
        return Err(ChargeError::OtherFluid {
            in_loop: *first,
            product: *other,
        });
    }
    let (w0, wt, wp) = (
        in_loop.mass_fraction().si(),
        target.mass_fraction().si(),
        product.mass_fraction,
    );
    let (drain, add) = if (wt - w0).abs() < 1e-9 {
        (0.0, 0.0)
    } else {
        let share = (wt - w0) / (wp - w0);
        if !(share > 0.0 && share <= 1.0) {
            return Err(ChargeError::ProductCannotReach);
        }
        let mass = v * density(target)?;
        let add = mass * share / product.density;
        let left = mass * (1.0 - share) / density(in_loop)?;
        (v - left, add)
    };
    let strongest = [in_loop, target];
    Ok(Adjustment {
        drain: Volume::from_si(drain),
        add: Volume::from_si(add),
        contraction: Volume::from_si(add - drain),
        result: target,
        freezing: target.freezing_point(),
        cautions: cautions(&strongest, product.kind, Fraction::from_si(wp), drain > 0.0),
    })
}

/// An adjustment from a measured freeze point, with what the instrument's accuracy and the
/// doubt of the loop's volume do to it.
#[derive(Clone, PartialEq, Debug)]
pub struct Measured {
    /// At the best values.
    pub plan: Adjustment,
    /// Product to put in; contributions in the order volume, freeze point.
    pub add: Propagated<Volume>,
    /// Solution to let out.
    pub drain: Propagated<Volume>,
}

/// As [`adjust`], from the freeze point that was measured in the loop.
///
/// # Errors
/// As [`adjust`].
pub fn adjust_measured(
    volume: Uncertain<Volume>,
    measured_freezing: Uncertain<Temperature>,
    kind: FluidKind,
    target: Fluid,
    product: &Product,
) -> Result<Measured, ChargeError> {
    let at = |volume: Volume, freezing: Temperature| -> Result<Adjustment, ChargeError> {
        let in_loop = if freezing.celsius() >= 0.0 {
            Fluid::WATER
        } else {
            Fluid::from_freezing_point(kind, freezing)?
        };
        adjust(volume, in_loop, target, product)
    };
    let inputs = (volume, measured_freezing);
    Ok(Measured {
        plan: at(volume.value(), measured_freezing.value())?,
        add: propagate(inputs, |(v, t)| at(v, t).map(|plan| plan.add))?,
        drain: propagate(inputs, |(v, t)| at(v, t).map(|plan| plan.drain))?,
    })
}

/// Concentrate and water for an amount of premix.
#[derive(Clone, PartialEq, Debug)]
pub struct Premix {
    /// Concentrate.
    pub concentrate: Volume,
    /// Water.
    pub water: Volume,
    /// Volume lost on mixing.
    pub contraction: Volume,
    /// What must be said beside this result.
    pub cautions: Vec<Caution>,
}

/// What makes a volume of premix of a strength.
///
/// # Errors
/// [`ChargeError::ProductCannotReach`] if the concentrate is weaker than the premix; as
/// [`adjust`].
pub fn premix(volume: Volume, wanted: Fluid, product: &Product) -> Result<Premix, ChargeError> {
    let plan = adjust(volume, Fluid::WATER, wanted, product)?;
    let water = volume - plan.drain;
    Ok(Premix {
        concentrate: plan.add,
        water,
        contraction: plan.contraction,
        cautions: plan.cautions,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    const PG: FluidKind = FluidKind::PropyleneGlycol;

    fn pg(w: f64) -> Fluid {
        Fluid::new(PG, Fraction::from_si(w)).unwrap()
    }
    fn concentrate() -> Product {
        Product::new(PG, Fraction::from_si(1.0)).unwrap()
    }
    fn litres(v: f64) -> Volume {
        Volume::from_si(v * 1e-3)
    }

    /// By volume is of the finished product. OIML R 22 (alcoholometric tables, from memory):
    /// ethanol of 50 % by volume at 20 °C is 42.43 % by mass and weighs 930.14 kg/m³; by
    /// hand 0.5 · 789.3/930.1 = 0.4243. Counted by unmixed volumes it would be
    /// 789.3/(789.3 + 998.2) = 0.4416.
    #[test]
    fn strength_by_volume_is_of_the_finished_product() {
        let half = Product::by_volume(FluidKind::Ethanol, Fraction::from_si(0.5)).unwrap();
        assert!(
            (half.mass_fraction().si() - 0.4243).abs() < 0.002,
            "{half:?}"
        );
        // The same count as that of the fluids, where both have one.
        let fluid = Fluid::from_volume_fraction(FluidKind::Methanol, Fraction::from_si(0.3));
        let product = Product::by_volume(FluidKind::Methanol, Fraction::from_si(0.3));
        let difference = fluid.unwrap().mass_fraction() - product.unwrap().mass_fraction();
        assert!(difference.si().abs() < 1e-9);
        for (percent, mass) in [(0.0, 0.0), (1.0, 1.0)] {
            let product = Product::by_volume(PG, Fraction::from_si(percent)).unwrap();
            assert!((product.mass_fraction().si() - mass).abs() < 1e-9);
        }
    }

    /// Mass of antifreeze in, out and left must balance whatever the strengths.
    #[test]
    fn antifreeze_is_neither_made_nor_lost() {
        for (w0, wt, wp) in [
            (0.0, 0.25, 1.0),
            (0.1, 0.3, 0.55),
            (0.3, 0.2, 0.0),
            (0.2, 0.35, 0.9),
        ] {
            let kind = if wp == 0.0 { FluidKind::Water } else { PG };
            let product = Product::new(kind, Fraction::from_si(wp)).unwrap();
            let plan = adjust(litres(400.0), pg(w0), pg(wt), &product).unwrap();
            let left = (0.4 - plan.drain.si()) * density(pg(w0)).unwrap();
            let added = plan.add.si() * product.density;
            let found = (left * w0 + added * wp) / (left + added);
            assert!((found - wt).abs() < 1e-12, "{w0} {wt} {wp}");
            assert!((0.0..0.4).contains(&plan.drain.si()));
            let full = (left + added) / density(pg(wt)).unwrap();
            assert!((full - 0.4).abs() < 1e-12);
        }
    }

    /// Without contraction 400 L of water take V φ = 400 φ of pure glycol; shrinkage asks for
    /// no more than 2 % of that on top.
    #[test]
    fn a_first_dose_is_near_the_volume_fraction() {
        let plan = adjust(litres(400.0), Fluid::WATER, pg(0.25), &concentrate()).unwrap();
        let nominal = 400.0 * pg(0.25).volume_fraction().si();
        let add = plan.add.si() * 1e3;
        assert!((1.0..1.02).contains(&(add / nominal)), "{add} {nominal}");
        assert!(plan.contraction.si() > 0.0);
    }

    #[test]
    fn water_does_not_strengthen_and_glycol_does_not_dilute() {
        let water = Product::water().unwrap();
        let more = adjust(litres(400.0), pg(0.2), pg(0.3), &water);
        assert_eq!(more.err(), Some(ChargeError::ProductCannotReach));
        let less = adjust(litres(400.0), pg(0.3), pg(0.2), &concentrate());
        assert_eq!(less.err(), Some(ChargeError::ProductCannotReach));
        let other = Product::new(FluidKind::Methanol, Fraction::from_si(0.3)).unwrap();
        let mixed = adjust(litres(400.0), pg(0.1), pg(0.2), &other);
        assert!(matches!(mixed, Err(ChargeError::OtherFluid { .. })));
        let enough = adjust(litres(400.0), pg(0.2), pg(0.2), &concentrate()).unwrap();
        assert!(enough.add == Volume::ZERO && enough.drain == Volume::ZERO);
    }

    #[test]
    fn the_target_freezes_a_margin_below_the_leaving_water() {
        let margin = TemperatureDifference::from_si(FREEZE_MARGIN);
        let fluid = target(PG, Temperature::from_fahrenheit(28.0), margin).unwrap();
        assert!((fluid.freezing_point().fahrenheit() - 18.0).abs() < 1e-6);
        let warm = target(PG, Temperature::from_fahrenheit(45.0), margin).unwrap();
        assert_eq!(warm, Fluid::WATER);
        let water = target(FluidKind::Water, Temperature::from_fahrenheit(28.0), margin);
        assert_eq!(water.err(), Some(ChargeError::WaterCannotProtect));
    }

    #[test]
    fn doubt_of_loop_volume_is_the_doubt_of_the_dose() {
        let volume = Uncertain::relative(litres(400.0), 0.1);
        let measured = Uncertain::exact(Temperature::from_celsius(-3.0));
        let plan = adjust_measured(volume, measured, PG, pg(0.25), &concentrate()).unwrap();
        let add = plan.add.result;
        assert!((add.standard() / add.value().si() - 0.1).abs() < 1e-6);
        assert_eq!(plan.add.widest(), Some(0));
    }

    #[test]
    fn premix_parts_make_the_whole() {
        let made = premix(litres(200.0), pg(0.3), &concentrate()).unwrap();
        let sum = made.concentrate.si() + made.water.si() - made.contraction.si();
        assert!((sum - 0.2).abs() < 1e-12);
    }
}
