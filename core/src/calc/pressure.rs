//! A log of pressures, the expansion tank, the open reservoir, dissolved air.

use super::amount::Amount;
use super::given::{FluidGiven, atmosphere, topic};
use super::pipes::Lengthwise;
use crate::pressure::balance::slope;
use crate::pressure::belief::{Surround, Unknowns};
use crate::pressure::gas::{Vessel, acceptance, air_solubility};
use crate::pressure::level::{OpenLoop, level_change, missing};
use crate::pressure::trend::{LogEntry, TrendPrior, compare};
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{
    Area, Bound, Compressibility, Duration, Fraction, GaugePressure, Length, Number,
    PressureDifference, PressureSlope, Quantity, Temperature, ThermalExpansion, Volume, VolumeFlow,
    VolumeGive,
};

/// An entry of the log.
#[derive(Copy, Clone, Debug, serde::Deserialize, schemars::JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct EntryGiven {
    /// Since the loop was charged.
    since_charge: Amount<Duration>,
    /// Gauge reading, before any top-up now.
    pressure: Amount<GaugePressure>,
    /// Mean temperature of the loop.
    temperature: Amount<Temperature>,
    /// Fluid added right after the reading.
    added: Option<Amount<Volume>>,
}

/// Standard uncertainty of a gauge whose accuracy is not stated: 1 psi (19 of 20: 2 psi).
const GAUGE: f64 = 6_894.757;
/// Fall per decade of time against the pressure, from the modulus table of the PPI handbook.
const DECADE: (f64, f64) = (0.12, 0.05);

topic! {
    /// Relaxation of the pipe or a leak.
    LeakOrRelaxation "leak-or-relaxation" by "evidence-ratio";
    example r#"{"log": [{"since_charge": {"value": 1, "unit": "d"}, "pressure": {"value": 50, "unit": "psi"}, "temperature": {"value": 55, "unit": "degF"}}, {"since_charge": {"value": 3, "unit": "d"}, "pressure": {"value": 44, "unit": "psi"}, "temperature": {"value": 55, "unit": "degF"}}, {"since_charge": {"value": 6, "unit": "d"}, "pressure": {"value": 35, "unit": "psi"}, "temperature": {"value": 54, "unit": "degF"}}, {"since_charge": {"value": 9, "unit": "d"}, "pressure": {"value": 27, "unit": "psi"}, "temperature": {"value": 54, "unit": "degF"}}], "give": {"value": 0.012, "unit": "gal/psi", "accuracy": {"value": 0.006, "unit": "gal/psi"}}}"#;
    asks LeakOrRelaxationQuestion {
        #[schemars(length(min = 1, max = 1000))]
        log: Vec<EntryGiven>,
        /// Volume that the loop takes by pressure; `pipe-stretch` and `static-band` tell it.
        give: Amount<VolumeGive>,
        /// Pressure change by temperature; -0.5 ± 0.5 psi/degF when left out.
        by_temperature: Option<Amount<PressureSlope>>,
        /// Fall of a tight loop per decade of time; 12 ± 10 % of the first pressure when left out.
        per_decade: Option<Amount<PressureDifference>>,
        /// Probability of a leak before the log is seen; one half when left out.
        prior_leak: Option<Amount<Fraction>>,
    }
    tells LeakOrRelaxationAnswer {
        relaxation: Amount<Fraction>,
        leak: Amount<Fraction>,
        /// How much more likely the log is with a leak: powers of two.
        bits: Amount<Number>,
        /// If there is a leak.
        leak_rate: Amount<VolumeFlow>,
        /// If there is none.
        per_decade: Amount<PressureDifference>,
        /// What the better explanation leaves, over the accuracy of the readings; well above 1, neither fits.
        misfit: Amount<Number>,
    }
    |q, show| {
        const USUAL_SLOPE: f64 = -0.5 * 1.8 * 6_894.757;
        let first = q.log.first().map_or(0.0, |entry| entry.pressure.get().si().abs());
        let log: Vec<LogEntry> = q.log.iter().map(|entry| LogEntry {
            since_charge: entry.since_charge.get(),
            pressure: entry.pressure.or_standard(GAUGE),
            temperature: entry.temperature.or_standard(0.5),
            added: entry.added.map_or(Volume::ZERO, Amount::get),
        }).collect();
        let usual_decade = Uncertain::new(PressureDifference::from_si(DECADE.0 * first), DECADE.1 * first);
        let prior = TrendPrior {
            per_decade: q.per_decade.map_or(usual_decade, Amount::uncertain),
            per_kelvin: q.by_temperature.map_or(Uncertain::relative(PressureSlope::from_si(USUAL_SLOPE), 0.5), Amount::uncertain),
            give: q.give.uncertain(),
            leak: q.prior_leak.map_or(Fraction::from_si(0.5), Amount::get),
        };
        let found = compare(&log, &prior)?;
        Ok(LeakOrRelaxationAnswer {
            relaxation: show.share(found.relaxation),
            leak: show.share(found.leak),
            bits: show.number(found.bits),
            leak_rate: show.small(found.rate, crate::units::Unit::GallonPerMinute, crate::units::Unit::LitrePerMinute),
            per_decade: show.with(found.per_decade),
            misfit: show.number(found.misfit),
        })
    }
}

/// A diaphragm expansion tank.
#[derive(Copy, Clone, Debug, serde::Deserialize, schemars::JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct VesselGiven {
    /// Volume of the empty tank.
    volume: Amount<Volume>,
    /// Gas pressure with the fluid side at zero.
    pre_charge: Amount<GaugePressure>,
    /// Temperature of the gas when that was set; 18 degC when left out.
    set_at: Option<Amount<Temperature>>,
    /// Temperature of the gas in service; 18 degC when left out.
    gas: Option<Amount<Temperature>>,
}

impl VesselGiven {
    pub fn vessel(self) -> Result<Vessel, super::error::CalcError> {
        const INDOORS: f64 = 18.0;
        let usual = Temperature::from_celsius(INDOORS);
        let temperature = |given: Option<Amount<Temperature>>| {
            GAS_TEMPERATURE.check(given.map_or(usual, Amount::get))
        };
        Ok(Vessel {
            volume: TANK_VOLUME.check(self.volume.get())?,
            precharge: crate::pressure::balance::LOOP_PRESSURE.check(self.pre_charge.get())?,
            set_at: temperature(self.set_at)?,
            gas: temperature(self.gas)?,
        })
    }
}

const TANK_VOLUME: Bound<Volume> = Bound::si("volume of the tank", 1e-4, 40.0);
const GAS_TEMPERATURE: Bound<Temperature> = Bound::si("temperature of the gas", 233.15, 373.15);

topic! {
    /// What an expansion tank takes up between two pressures.
    ExpansionTank "expansion-tank" by "ideal-gas";
    example r#"{"tank": {"volume": {"value": 4.4, "unit": "gal"}, "pre_charge": {"value": 20, "unit": "psi"}}, "low": {"value": 22, "unit": "psi"}, "high": {"value": 50, "unit": "psi", "accuracy": {"value": 2, "unit": "psi"}}}"#;
    asks ExpansionTankQuestion {
        tank: VesselGiven,
        low: Amount<GaugePressure>,
        high: Amount<GaugePressure>,
        altitude: Option<Amount<Length>>,
    }
    tells ExpansionTankAnswer {
        /// Fluid in the tank at the low pressure.
        at_low: Amount<Volume>,
        at_high: Amount<Volume>,
        /// What it takes up in between.
        accepted: Amount<Volume>,
    }
    |q, show| {
        let (vessel, air) = (q.tank.vessel()?, atmosphere(q.altitude)?);
        let holds = |pressure| {
            let pressure = crate::pressure::balance::LOOP_PRESSURE.check(pressure)?;
            Ok::<_, crate::units::OutOfRange>(acceptance(&vessel, pressure, air))
        };
        let (low, high) = (q.low.uncertain(), q.high.uncertain());
        Ok(ExpansionTankAnswer {
            at_low: show.with(propagate((low,), |(p,)| holds(p))?.result),
            at_high: show.with(propagate((high,), |(p,)| holds(p))?.result),
            accepted: show.with(propagate((low, high), |(a, b)| Ok::<_, crate::units::OutOfRange>(holds(b)? - holds(a)?))?.result),
        })
    }
}

topic! {
    /// Level of a non-pressurised reservoir over the season.
    ReservoirLevel "reservoir-level" by "mass-balance";
    example r#"{"plastic": {"value": 60, "unit": "gal"}, "rigid": {"value": 3, "unit": "gal"}, "fluid": {"kind": "propylene_glycol", "volume_fraction": {"value": 20, "unit": "%"}}, "surface": {"value": 0.2, "unit": "ft2"}, "from": {"value": 70, "unit": "degF"}, "to": {"value": 35, "unit": "degF"}, "fall": {"value": 6, "unit": "in", "accuracy": {"value": 0.5, "unit": "in"}}}"#;
    asks ReservoirLevelQuestion {
        /// Fluid in plastic pipe.
        plastic: Amount<Volume>,
        /// Fluid elsewhere.
        rigid: Option<Amount<Volume>>,
        fluid: FluidGiven,
        /// Held when left out, as buried pipe is.
        lengthwise: Option<Lengthwise>,
        /// Linear expansion of the pipe; usual when left out.
        linear_expansion: Option<Amount<ThermalExpansion>>,
        /// Share of the growth that the surround takes away; that of a trench when left out.
        restraint: Option<Amount<Fraction>>,
        /// Free surface of the reservoir.
        surface: Amount<Area>,
        /// Mean temperature of the loop then and now.
        from: Amount<Temperature>,
        to: Amount<Temperature>,
        /// How much the level really fell.
        fall: Option<Amount<Length>>,
    }
    tells ReservoirLevelAnswer {
        /// Change of level that the season explains, upwards positive.
        change: Amount<Length>,
        /// Fluid missing beyond that.
        missing: Option<Amount<Volume>>,
    }
    |q, show| {
        use crate::units::Unit;
        let usual = Unknowns::typical(Surround::Trench);
        let system = OpenLoop {
            plastic: q.plastic.uncertain(),
            rigid: q.rigid.map_or(Volume::ZERO, Amount::get),
            fluid: q.fluid.fluid()?,
            axial: q.lengthwise.unwrap_or(Lengthwise::Held).into(),
            expansion: q.linear_expansion.map_or(usual.expansion, Amount::uncertain),
            restraint: q.restraint.map_or(usual.restraint, Amount::uncertain),
            surface: q.surface.get(),
        };
        crate::pressure::balance::RESTRAINT.check(system.restraint.value())?;
        let (from, to) = (q.from.uncertain(), q.to.uncertain());
        let change = level_change(&system, from, to)?.result;
        let missing = match q.fall {
            Some(fall) => Some(show.with(missing(&system, from, to, fall.uncertain())?)),
            None => None,
        };
        Ok(ReservoirLevelAnswer { change: show.small(change, Unit::Inch, Unit::Millimetre), missing })
    }
}

topic! {
    /// Air that water holds.
    AirSolubility "air-solubility" by "air-solubility";
    example r#"{"temperature": {"value": 50, "unit": "degF"}, "pressure": {"value": 30, "unit": "psi"}}"#;
    asks AirSolubilityQuestion {
        temperature: Amount<Temperature>,
        /// Gauge.
        pressure: Amount<GaugePressure>,
        altitude: Option<Amount<Length>>,
    }
    tells AirSolubilityAnswer {
        /// Mole fraction of air in water at equilibrium.
        mole_fraction: Amount<Number>,
        /// As volume of air at one atmosphere and that temperature, over that of the water.
        volume_share: Amount<Fraction>,
    }
    |q, show| {
        use crate::pressure::gas::GAS_CONSTANT;
        use crate::units::STANDARD_ATMOSPHERE_PA;
        let air = atmosphere(q.altitude)?;
        let inputs = (q.temperature.uncertain(), q.pressure.uncertain());
        let dissolved = |t: Temperature, p: GaugePressure| {
            let p = crate::pressure::balance::LOOP_PRESSURE.check(p)?;
            Ok::<f64, crate::pressure::PressureError>(air_solubility(t)?.si() * p.absolute(air).si().max(0.0))
        };
        // Moles of water in a cubic metre.
        const WATER: f64 = 998.2 / 18.015_28e-3;
        Ok(AirSolubilityAnswer {
            mole_fraction: show.with(propagate(inputs, |(t, p)| dissolved(t, p).map(Number::from_si))?.result),
            volume_share: show.with(propagate(inputs, |(t, p)| {
                dissolved(t, p).map(|x| Fraction::from_si(x * WATER * GAS_CONSTANT * t.si() / STANDARD_ATMOSPHERE_PA))
            })?.result),
        })
    }
}

topic! {
    /// Pressure change of a sealed loop by temperature, in closed form.
    PressureByTemperature "pressure-by-temperature" by "mass-balance";
    example r#"{"fluid_expansion": {"value": 0.00021, "unit": "1/K"}, "pipe_growth": {"value": 0.00045, "unit": "1/K"}, "compliance": {"value": 0.0000000085, "unit": "1/Pa"}, "fluid_compressibility": {"value": 0.00000000046, "unit": "1/Pa"}, "restraint": {"value": 20, "unit": "%", "accuracy": {"value": 20, "unit": "%"}}}"#;
    asks PressureByTemperatureQuestion {
        /// Volumetric; `fluid-properties` tells it.
        fluid_expansion: Amount<ThermalExpansion>,
        /// Of the volume inside the pipe; `pipe-stretch` tells it.
        pipe_growth: Amount<ThermalExpansion>,
        /// Of the pipe; `pipe-stretch` tells it.
        compliance: Amount<Compressibility>,
        fluid_compressibility: Amount<Compressibility>,
        /// Share of the pipe's movement that its surround takes away.
        restraint: Amount<Fraction>,
    }
    tells PressureByTemperatureAnswer { by_temperature: Amount<PressureSlope> }
    |q, show| {
        let inputs = (q.fluid_expansion.uncertain(), q.pipe_growth.uncertain(), q.compliance.uncertain(), q.fluid_compressibility.uncertain(), q.restraint.uncertain());
        crate::pressure::balance::RESTRAINT.check(q.restraint.get())?;
        let found = propagate(inputs, |(beta, growth, c, kappa, r)| {
            Ok::<_, super::error::CalcError>(slope(beta, growth, c, kappa, r))
        })?;
        Ok(PressureByTemperatureAnswer { by_temperature: show.with(found.result) })
    }
}
