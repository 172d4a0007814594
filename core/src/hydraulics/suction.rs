//! Whether a circulator gets its fluid in: suction head against vapour pressure.

use crate::fluids::{ALTITUDE, Fluid, FluidError, atmospheric_pressure};
use crate::uncertainty::{Propagated, Uncertain, propagate};
use crate::units::{
    Bound, GaugePressure, Length, OutOfRange, PressureDifference, Quantity, Temperature,
};
use thiserror::Error;

/// Suction pressures of a circulator.
pub const SUCTION_PRESSURE: Bound<GaugePressure> = Bound::si("suction pressure", -1.0e5, 1.6e6);
/// Least gauge pressure at the suction, off and running: 3 psi. Common practice, no source;
/// the pump's own figure goes before it.
pub const TRADE_LEAST: f64 = 3.0 * 6_894.757_293_168;

/// Why a suction margin cannot be told.
#[derive(Copy, Clone, Debug, PartialEq, Error)]
pub enum SuctionError {
    /// An input lies outside its range.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
    /// The fluid has no properties there.
    #[error(transparent)]
    Fluid(#[from] FluidError),
}

/// What the pump asks for at its inlet.
#[derive(Copy, Clone, PartialEq, Debug)]
pub enum Needed {
    /// Net positive suction head by the pump's data.
    Head(Length),
    /// Least gauge pressure by the pump's data.
    Pressure(GaugePressure),
    /// No data: [`TRADE_LEAST`].
    Unknown,
}

/// The suction side of a circulator.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct SuctionMargin {
    /// Net positive suction head available.
    pub available: Uncertain<Length>,
    /// Pressure above the vapour pressure, absolute.
    pub above_vapour: PressureDifference,
    /// Margin over what the pump asks for, as head; below zero it starves.
    pub margin: Uncertain<Length>,
    /// Probability that there is a margin.
    pub probability_enough: f64,
    /// True where the need is the trade's and not the pump's.
    pub by_trade: bool,
}

/// Suction side of a circulator: available head
/// H = (p_gauge + p_atm(altitude) − p_vap)/(ρ g) + z − h_loss, where z is the height of the
/// gauge above the pump's inlet and h_loss what is lost between them; against what the pump
/// needs. p_atm by ISO 2533, p_vap by [`Fluid::vapour_pressure`].
///
/// Cold loops: vapour pressure is next to nothing, so a starving pump means a gauge near or
/// below zero, or air.
///
/// # Errors
/// [`SuctionError`].
pub fn margin(
    gauge: Uncertain<GaugePressure>,
    altitude: Length,
    above_inlet: Length,
    loss: Uncertain<PressureDifference>,
    fluid: Fluid,
    temperature: Temperature,
    needed: Needed,
) -> Result<SuctionMargin, SuctionError> {
    SUCTION_PRESSURE.check(gauge.value())?;
    let atmosphere = atmospheric_pressure(ALTITUDE.check(altitude)?)?;
    let density = fluid.density(temperature)?;
    let vapour = fluid.vapour_pressure(temperature)?;
    let available: Propagated<Length> = propagate((gauge, loss), |(gauge, loss)| {
        let above = gauge.absolute(atmosphere) - vapour;
        Ok::<Length, SuctionError>(above.head(density) + above_inlet - loss.head(density))
    })?;
    let available = available.result;
    let need = match needed {
        Needed::Head(head) => head,
        Needed::Pressure(least) => (least.absolute(atmosphere) - vapour).head(density),
        Needed::Unknown => {
            let least = GaugePressure::from_si(TRADE_LEAST);
            (least.absolute(atmosphere) - vapour).head(density)
        }
    };
    let margin = Uncertain::new(available.value() - need, available.standard());
    Ok(SuctionMargin {
        available,
        above_vapour: available.value().pressure(density),
        margin,
        probability_enough: margin.probability_above(Length::ZERO),
        by_trade: needed == Needed::Unknown,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Unit;

    fn at(psi: f64, metres: f64, needed: Needed) -> SuctionMargin {
        margin(
            Uncertain::new(GaugePressure::from_si(Unit::Psi.to_si(psi)), 3e3),
            Length::from_si(metres),
            Length::from_si(0.5),
            Uncertain::exact(PressureDifference::from_si(2e3)),
            Fluid::WATER,
            Temperature::from_celsius(20.0),
            needed,
        )
        .unwrap()
    }

    /// By hand: (5 psi = 34 474 Pa + 101 325 − 2 339)/(998.2·9.80665) = 13.633 m, + 0.5 m,
    /// − 2 000/(998.2·9.80665) = 0.204 m: 13.929 m.
    #[test]
    fn available_head_by_hand() {
        let side = at(5.0, 0.0, Needed::Head(Length::from_si(2.0)));
        assert!((side.available.value().si() - 13.929).abs() < 2e-3);
        assert!((side.margin.value().si() - 11.929).abs() < 2e-3);
        assert!(side.probability_enough > 0.999 && !side.by_trade);
    }

    /// 1 500 m: 84.56 kPa by ISO 2533, 16.77 kPa or 1.713 m less than at the sea.
    #[test]
    fn altitude_takes_head_away() {
        let need = Needed::Head(Length::from_si(2.0));
        let lost = at(5.0, 0.0, need).available.value() - at(5.0, 1_500.0, need).available.value();
        assert!((lost.si() - 1.713).abs() < 2e-3, "{lost:?}");
    }

    #[test]
    fn below_the_rule_of_the_trade_the_probability_says_so() {
        let low = at(1.0, 0.0, Needed::Unknown);
        let right = at(6.0, 0.0, Needed::Unknown);
        assert!(low.by_trade && low.probability_enough < 0.1);
        assert!(right.probability_enough > 0.99);
    }
}
