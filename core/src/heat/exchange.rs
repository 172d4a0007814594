//! Heat to and from the loop, approach, conductance and fouling.

use super::HeatError;
use super::flow::{LEAST_DIFFERENCE, carrying};
use super::saturation::{Line, Refrigerant, temperature};
use crate::fluids::Fluid;
use crate::uncertainty::{Propagated, Uncertain, propagate};
use crate::units::{
    AbsolutePressure, Bound, Conductance, Fraction, GaugePressure, Number, Power, Quantity,
    Temperature, TemperatureDifference, ThermalResistance, VolumeFlow,
};

/// Flows of a unit.
pub const UNIT_FLOW: Bound<VolumeFlow> = Bound::si("flow", 1e-6, 1.0);
/// Conductances of exchangers.
pub const CONDUCTANCE: Bound<Conductance> = Bound::si("conductance UA", 1.0, 1e8);

const BTU_PER_HOUR: f64 = 0.293_071_070_172_222_2;
const GPM: f64 = 3.785_411_784e-3 / 60.0;

/// Factors of the trade, Btu/h per gpm and °F. Common practice, no source: 500 = 8.33 lb/gal
/// · 60 min/h · 1 Btu/(lb·°F) for water, 485 by convention for antifreeze.
pub const TRADE_WATER: f64 = 500.0;
/// See [`TRADE_WATER`].
pub const TRADE_ANTIFREEZE: f64 = 485.0;

/// Heat carried between two temperatures.
#[derive(Clone, PartialEq, Debug)]
pub struct CarriedHeat {
    /// With the true properties: ρ c_p Q ΔT; positive when the loop gives heat away (leaving
    /// the unit colder than entering), that is extraction. Contributions in the order flow,
    /// temperature difference, density, specific heat.
    pub heat: Propagated<Power>,
    /// True factor in the trade's terms, Btu/h per gpm and °F.
    pub factor: Number,
    /// What 500 would give.
    pub by_trade_water: Power,
    /// What 485 would give.
    pub by_trade_antifreeze: Power,
}

/// Heat of extraction (positive) or rejection (negative) of a unit by its fluid.
///
/// # Errors
/// [`HeatError::OutOfRange`], [`HeatError::Fluid`].
pub fn carried(
    flow: Uncertain<VolumeFlow>,
    entering: Uncertain<Temperature>,
    leaving: Uncertain<Temperature>,
    fluid: Fluid,
) -> Result<CarriedHeat, HeatError> {
    UNIT_FLOW.check(flow.value())?;
    let (rho, cp) = carrying(fluid, entering.value(), leaving.value())?;
    let doubt = entering.standard().hypot(leaving.standard());
    let difference = Uncertain::new(entering.value() - leaving.value(), doubt);
    let heat = propagate((flow, difference, rho, cp), |(q, dt, rho, cp)| {
        Ok::<Power, HeatError>(q.heat(rho, cp, dt))
    })?;
    let per = GPM / (BTU_PER_HOUR * 1.8);
    let by =
        |factor: f64| Power::from_si(factor / per * flow.value().si() * difference.value().si());
    Ok(CarriedHeat {
        heat,
        factor: Number::from_si(rho.value().si() * cp.value().si() * per),
        by_trade_water: by(TRADE_WATER),
        by_trade_antifreeze: by(TRADE_ANTIFREEZE),
    })
}

/// Which way the heat goes.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
pub enum Duty {
    /// The exchanger evaporates: the loop is cooled.
    Heating,
    /// The exchanger condenses: the loop is warmed.
    Cooling,
}

/// Approach: leaving fluid above the evaporating temperature (heating, dew line at suction
/// pressure), or condensing temperature above the leaving fluid (cooling, bubble line at
/// liquid pressure). Contributions in the order pressure, leaving temperature.
///
/// # Errors
/// [`HeatError::Saturation`].
pub fn approach(
    refrigerant: Refrigerant,
    duty: Duty,
    pressure: Uncertain<GaugePressure>,
    atmosphere: AbsolutePressure,
    leaving: Uncertain<Temperature>,
) -> Result<Propagated<TemperatureDifference>, HeatError> {
    propagate((pressure, leaving), |(pressure, leaving)| {
        let saturated = saturation(refrigerant, duty, pressure, atmosphere)?;
        Ok(match duty {
            Duty::Heating => leaving - saturated,
            Duty::Cooling => saturated - leaving,
        })
    })
}

/// The saturation temperature that approach and conductance go by.
///
/// # Errors
/// [`HeatError::Saturation`].
pub fn saturation(
    refrigerant: Refrigerant,
    duty: Duty,
    pressure: GaugePressure,
    atmosphere: AbsolutePressure,
) -> Result<Temperature, HeatError> {
    let line = match duty {
        Duty::Heating => Line::Dew,
        Duty::Cooling => Line::Bubble,
    };
    Ok(temperature(
        refrigerant,
        line,
        pressure.absolute(atmosphere),
    )?)
}

/// Effectiveness of a counter-flow exchanger: ε = (1 − e^(−N(1−C)))/(1 − C e^(−N(1−C))),
/// N = UA/C_min transfer units, C = C_min/C_max; 1 − e^(−N) where one side boils or
/// condenses (C = 0); N/(1+N) for C = 1. F. Incropera and D. DeWitt, *Fundamentals of Heat
/// and Mass Transfer*, table 11.3.
///
/// # Errors
/// [`HeatError::OutOfRange`] for N below 0 or above 1 000, C outside 0 to 1.
pub fn effectiveness(transfer_units: Number, ratio: Fraction) -> Result<Fraction, HeatError> {
    let n = Bound::si("transfer units", 0.0, 1e3)
        .check(transfer_units)?
        .si();
    let c = Bound::si("ratio of heat capacity rates", 0.0, 1.0)
        .check(ratio)?
        .si();
    let value = if 1.0 - c < 1e-9 {
        n / (1.0 + n)
    } else {
        let fade = (-n * (1.0 - c)).exp();
        (1.0 - fade) / (1.0 - c * fade)
    };
    Ok(Fraction::from_si(value))
}

/// Transfer units of a counter-flow exchanger from its effectiveness, the inverse of
/// [`effectiveness`] (same source, table 11.4): N = ln[(1 − εC)/(1 − ε)]/(1 − C);
/// −ln(1 − ε) for C = 0; ε/(1 − ε) for C = 1.
///
/// # Errors
/// [`HeatError::OutOfRange`] for ε outside 0 to 0.999 999.
pub fn transfer_units(effectiveness: Fraction, ratio: Fraction) -> Result<Number, HeatError> {
    let e = Bound::si("effectiveness", 0.0, 0.999_999)
        .check(effectiveness)?
        .si();
    let c = Bound::si("ratio of heat capacity rates", 0.0, 1.0)
        .check(ratio)?
        .si();
    let n = if 1.0 - c < 1e-9 {
        e / (1.0 - e)
    } else {
        ((1.0 - e * c) / (1.0 - e)).ln() / (1.0 - c)
    };
    Ok(Number::from_si(n))
}

/// An exchanger against what it was when clean.
#[derive(Clone, PartialEq, Debug)]
pub struct ExchangerState {
    /// Conductance now. Contributions in the order flow, entering, leaving and saturation
    /// temperature, density, specific heat.
    pub conductance: Propagated<Conductance>,
    /// Now over clean.
    pub share_of_clean: Uncertain<Fraction>,
    /// Added resistance 1/UA − 1/UA_clean. For a fouling factor in m²K/W multiply by the
    /// surface.
    pub fouling: Uncertain<ThermalResistance>,
    /// Probability that the conductance is below the clean value.
    pub probability_fouled: f64,
}

/// Conductance of the loop-side exchanger of a heat pump, whose other side evaporates or
/// condenses: ε = (T_in − T_out)/(T_in − T_sat), UA = −ln(1 − ε) ρ c_p Q, and fouling against
/// the clean value of the same unit at about the same flow and fluid.
///
/// # Errors
/// [`HeatError::TemperaturesCross`], [`HeatError::NoDifference`], [`HeatError::OutOfRange`],
/// [`HeatError::Fluid`].
pub fn exchanger(
    flow: Uncertain<VolumeFlow>,
    entering: Uncertain<Temperature>,
    leaving: Uncertain<Temperature>,
    saturation: Uncertain<Temperature>,
    fluid: Fluid,
    clean: Uncertain<Conductance>,
) -> Result<ExchangerState, HeatError> {
    UNIT_FLOW.check(flow.value())?;
    CONDUCTANCE.check(clean.value())?;
    let (rho, cp) = carrying(fluid, entering.value(), leaving.value())?;
    let inputs = (flow, entering, leaving, saturation, rho, cp);
    let conductance = propagate(inputs, |(q, t_in, t_out, t_sat, rho, cp)| {
        let (taken, most) = ((t_in - t_out).si(), (t_in - t_sat).si());
        if taken.abs() < LEAST_DIFFERENCE {
            return Err(HeatError::NoDifference);
        }
        let effectiveness = taken / most;
        if !(effectiveness > 0.0 && effectiveness < 1.0) {
            return Err(HeatError::TemperaturesCross);
        }
        let units = transfer_units(Fraction::from_si(effectiveness), Fraction::ZERO)?;
        Ok(Conductance::from_si(
            units.si() * q.si() * rho.si() * cp.si(),
        ))
    })?;
    let now = conductance.result;
    let share = now.value() / clean.value();
    let relative = |v: Uncertain<Conductance>| v.standard() / v.value().si();
    let resistance = |v: Uncertain<Conductance>| 1.0 / v.value().si();
    let doubt = (resistance(now) * relative(now)).hypot(resistance(clean) * relative(clean));
    let below = Uncertain::new(
        clean.value() - now.value(),
        clean.standard().hypot(now.standard()),
    );
    Ok(ExchangerState {
        share_of_clean: Uncertain::relative(
            Fraction::from_si(share),
            relative(now).hypot(relative(clean)),
        ),
        fouling: Uncertain::new(
            ThermalResistance::from_si(resistance(now) - resistance(clean)),
            doubt,
        ),
        probability_fouled: below.probability_above(Conductance::ZERO),
        conductance,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fluids::FluidKind;
    use crate::units::Unit;

    fn t(celsius: f64) -> Uncertain<Temperature> {
        Uncertain::new(Temperature::from_celsius(celsius), 0.1)
    }
    fn q(litres: f64) -> Uncertain<VolumeFlow> {
        Uncertain::relative(VolumeFlow::from_si(litres * 1e-3), 0.03)
    }

    #[test]
    fn the_true_factor_stands_beside_the_trades() {
        let water = carried(q(0.5), t(10.0), t(6.0), Fluid::WATER).unwrap();
        // 8.345 lb/gal · 60 · 1.004 Btu/(lb·°F), by hand about 503.
        assert!(
            (water.factor.si() - 503.0).abs() < 1.5,
            "{:?}",
            water.factor
        );
        let glycol = Fluid::new(FluidKind::PropyleneGlycol, Fraction::from_si(0.25)).unwrap();
        // 475 at 0 °C for 25 % by mass (evaluated from Melinder's correlation elsewhere).
        let cold = carried(q(0.5), t(2.0), t(-2.0), glycol).unwrap();
        assert!((cold.factor.si() - 475.0).abs() < 2.0, "{:?}", cold.factor);
        let ratio = cold.by_trade_antifreeze / cold.heat.result.value();
        assert!((ratio - 485.0 / cold.factor.si()).abs() < 1e-9);
    }

    /// Common practice, no source: 3 gpm a ton in cooling gives about 10 °F.
    #[test]
    fn three_gallons_a_ton_give_ten_degrees() {
        let flow = Uncertain::exact(VolumeFlow::from_si(Unit::GallonPerMinute.to_si(3.0)));
        let f = |v: f64| Uncertain::exact(Temperature::from_fahrenheit(v));
        let heat = carried(flow, f(80.0), f(90.0), Fluid::WATER).unwrap().heat;
        let tons = -Unit::Ton.from_si(heat.result.value().si());
        // A ton of cooling rejects about 15 000 Btu/h = 1.25 ton.
        assert!((tons - 1.25).abs() < 0.02, "{tons}");
    }

    #[test]
    fn effectiveness_and_transfer_units_undo_each_other() {
        for ratio in [0.0, 0.3, 0.75, 1.0] {
            let mut last = -1.0;
            for step in 1..=40 {
                let n = 0.1 * f64::from(step);
                let c = Fraction::from_si(ratio);
                let e = effectiveness(Number::from_si(n), c).unwrap();
                assert!(e.si() > last && e.si() < 1.0);
                last = e.si();
                assert!((transfer_units(e, c).unwrap().si() - n).abs() < 1e-9);
            }
        }
    }

    #[test]
    fn a_fouled_exchanger_has_less_conductance_and_a_resistance() {
        let clean = Uncertain::relative(Conductance::from_si(3_000.0), 0.1);
        let at = |saturated: f64| {
            exchanger(q(0.5), t(8.0), t(4.0), t(saturated), Fluid::WATER, clean).unwrap()
        };
        // By hand: ε = 4/10, NTU = 0.5108, C = 0.5·999.9·4 200/1 000 = 2.1 kW/K: 1 073 W/K.
        let state = at(-2.0);
        assert!((state.conductance.result.value().si() - 1_073.0).abs() < 5.0);
        assert!(state.fouling.value().si() > 0.0 && state.probability_fouled > 0.999);
        assert!(at(2.5).probability_fouled < state.probability_fouled);
        let crossed = exchanger(q(0.5), t(8.0), t(4.0), t(5.0), Fluid::WATER, clean);
        assert_eq!(crossed.err(), Some(HeatError::TemperaturesCross));
    }

    #[test]
    fn approach_has_its_sign_in_both_duties() {
        let atmosphere = AbsolutePressure::standard_atmosphere();
        let of = |duty, psi: f64, celsius| {
            let p = Uncertain::exact(GaugePressure::from_si(Unit::Psi.to_si(psi)));
            let found = approach(Refrigerant::R410A, duty, p, atmosphere, t(celsius));
            found.unwrap().result.value().si()
        };
        // R-410A pressure-temperature charts: about 100 psig at 31 °F, 318 psig at 100 °F.
        assert!((of(Duty::Heating, 100.0, 4.0) - (4.0 + 0.4)).abs() < 0.7);
        assert!((of(Duty::Cooling, 318.0, 33.0) - (37.8 - 33.0)).abs() < 0.7);
    }
}
