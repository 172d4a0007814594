//! Flow by the pump's curve and by the heat balance. Flow by the exchanger's
//! pressure drop is in [`crate::hydraulics::component`].

use super::HeatError;
use crate::fluids::Fluid;
use crate::hydraulics::pump::PumpCurve;
use crate::uncertainty::{Propagated, Uncertain, propagate};
use crate::units::{
    Bound, Density, Number, Power, PressureDifference, Quantity, SpecificHeat, Temperature,
    TemperatureDifference, VolumeFlow,
};

/// Heat that a heat pump's loop side carries.
pub const HEAT: Bound<Power> = Bound::si("heat", 1.0, 1e8);

/// Flow at the head that a pump makes: Q with H(Q) = Δp/(ρ g), found by halving.
///
/// Contributions of the result, in order: pressure rise, speed. The curve's own
/// uncertainty belongs into that of the rise. Where the curve is flat the
/// result is uncertain, and says so.
///
/// # Errors
/// [`HeatError::AboveShutOff`], [`HeatError::NoRise`], [`HeatError::Fluid`].
pub fn by_pump(
    curve: &PumpCurve,
    speed: Uncertain<Number>,
    rise: Uncertain<PressureDifference>,
    fluid: Fluid,
    temperature: Temperature,
) -> Result<Propagated<VolumeFlow>, HeatError> {
    let density = fluid.density(temperature)?;
    propagate((rise, speed), |(rise, speed)| {
        let wanted = rise.head(density);
        if wanted.si() < 0.0 {
            return Err(HeatError::NoRise);
        }
        let at = |q: f64| curve.head(VolumeFlow::from_si(q), speed);
        if at(0.0)? < wanted {
            return Err(HeatError::AboveShutOff);
        }
        let (mut low, mut high) = (0.0, curve.free_flow().si() * speed.si());
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            if at(middle)? > wanted {
                low = middle;
            } else {
                high = middle;
            }
        }
        Ok(VolumeFlow::from_si(0.5 * (low + high)))
    })
}

/// Density and specific heat at the mean of two temperatures, with what the correlations
/// leave open.
pub(super) fn carrying(
    fluid: Fluid,
    a: Temperature,
    b: Temperature,
) -> Result<(Uncertain<Density>, Uncertain<SpecificHeat>), HeatError> {
    let mean = Temperature::from_si(0.5 * (a.si() + b.si()));
    let spread = fluid.spread();
    Ok((
        Uncertain::relative(fluid.density(mean)?, spread.density),
        Uncertain::relative(fluid.specific_heat(mean)?, spread.specific_heat),
    ))
}

/// Flow by heat balance: Q = Φ/(ρ c_p |ΔT|), Φ the heat taken from the loop (capacity less
/// electric input) or given to it (capacity plus input).
///
/// Contributions of the result, in order: heat, temperature difference, density, specific heat.
///
/// # Errors
/// [`HeatError::NoDifference`] for a temperature difference below 0.2 K, which says nothing;
/// [`HeatError::OutOfRange`], [`HeatError::Fluid`].
pub fn by_heat(
    heat: Uncertain<Power>,
    entering: Uncertain<Temperature>,
    leaving: Uncertain<Temperature>,
    fluid: Fluid,
) -> Result<Propagated<VolumeFlow>, HeatError> {
    HEAT.check(heat.value())?;
    let (rho, cp) = carrying(fluid, entering.value(), leaving.value())?;
    let size = (leaving.value() - entering.value()).si().abs();
    if size < LEAST_DIFFERENCE {
        return Err(HeatError::NoDifference);
    }
    let doubt = entering.standard().hypot(leaving.standard());
    let difference = Uncertain::new(TemperatureDifference::from_si(size), doubt);
    propagate((heat, difference, rho, cp), |(heat, dt, rho, cp)| {
        Ok(VolumeFlow::from_si(
            heat.si() / (rho.si() * cp.si() * dt.si()),
        ))
    })
}

/// Smallest temperature difference from which a flow is told, K.
pub const LEAST_DIFFERENCE: f64 = 0.2;

/// Heat taken from the loop when heating: capacity less electric input.
pub fn extraction(capacity: Uncertain<Power>, input: Uncertain<Power>) -> Uncertain<Power> {
    let doubt = capacity.standard().hypot(input.standard());
    Uncertain::new(capacity.value() - input.value(), doubt)
}

/// Heat given to the loop when cooling: capacity plus electric input.
pub fn rejection(capacity: Uncertain<Power>, input: Uncertain<Power>) -> Uncertain<Power> {
    let doubt = capacity.standard().hypot(input.standard());
    Uncertain::new(capacity.value() + input.value(), doubt)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{Length, Unit};

    #[test]
    fn the_curve_gives_back_its_own_flow() {
        let point = |q: f64, h: f64| (VolumeFlow::from_si(q), Length::from_si(h));
        let curve =
            PumpCurve::through(&[point(0.0, 9.0), point(5e-4, 7.0), point(1e-3, 3.0)]).unwrap();
        let t = Temperature::from_celsius(10.0);
        let rise = Length::from_si(7.0).pressure(Fluid::WATER.density(t).unwrap());
        let speed = Uncertain::exact(Number::from_si(1.0));
        let at = |rise: f64| {
            let rise = Uncertain::new(PressureDifference::from_si(rise), 2e3);
            by_pump(&curve, speed, rise, Fluid::WATER, t)
        };
        let flow = at(rise.si()).unwrap().result;
        assert!((flow.value().si() - 5e-4).abs() < 1e-9);
        // Flat near shut-off: the same gauge tells less.
        let flat = at(0.99 * 9.0 / 7.0 * rise.si()).unwrap().result;
        assert!(flat.standard() > flow.standard());
        assert_eq!(at(2e5).err(), Some(HeatError::AboveShutOff));
        assert_eq!(at(-1e3).err(), Some(HeatError::NoRise));
    }

    /// By hand: 10 kW, ρ 999.8, c_p 4 199, 5 K: 0.4764 L/s.
    #[test]
    fn the_heat_balance_by_hand() {
        let t = |c: f64| Uncertain::new(Temperature::from_celsius(c), 0.1);
        let heat = Uncertain::relative(Power::from_si(1e4), 0.05);
        let flow = by_heat(heat, t(8.5), t(3.5), Fluid::WATER).unwrap();
        let litres = Unit::LitrePerSecond.from_si(flow.result.value().si());
        assert!((litres - 0.476_4).abs() < 0.001, "{litres}");
        let relative = flow.result.standard() / flow.result.value().si();
        let by_hand = 0.05f64.hypot(0.1 * 2f64.sqrt() / 5.0);
        assert!((relative - by_hand).abs() < 1e-4);
        let same = by_heat(heat, t(8.5), t(8.45), Fluid::WATER);
        assert_eq!(same.err(), Some(HeatError::NoDifference));
    }
}
