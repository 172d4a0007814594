//! The pressure of a sealed loop today and through the year.

use super::amount::{Amount, Show};
use super::charge::{CautionText, caution};
use super::error::CalcError;
use super::given::{FluidGiven, atmosphere, topic, words};
use super::pipes::{Lengthwise, ResinClass};
use super::pressure::VesselGiven;
use crate::pressure::balance::{
    ChargeState, LOOP_PRESSURE, PlasticPart, SealedLoop, TrappedAir, balance,
};
use crate::pressure::band::{self, Band};
use crate::pressure::belief::{self, Belief, Charge, Moment, Reading, Unknowns};
use crate::pressure::leave::{Demand, Outcome, Today};
use crate::uncertainty::Uncertain;
use crate::units::{
    Duration, Fraction, GaugePressure, Length, Number, PressureDifference, Quantity, Temperature,
    ThermalExpansion, Volume, VolumeGive,
};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

words! {
    /// What surrounds the pipe.
    Around = belief::Surround { Pond, Trench, Grout }
    /// What is not known and widens the band.
    Widens = belief::Unknown {
        Modulus, PipeExpansion, Restraint, FluidExpansion, ChargePressure, ChargeTemperature,
        TrappedAir, Temperature, Model,
    }
    /// Where a reading lies.
    Place = band::Place { Below, Inside, Above }
}

/// Standard uncertainty of a gauge and thermometer whose accuracy is not stated: 1 psi, 1 K.
const GAUGE: f64 = 6_894.757;
const THERMOMETER: f64 = 1.0;

/// Plastic pipe of one dimension ratio.
#[derive(Copy, Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct PlasticGiven {
    /// Fluid in it.
    volume: Amount<Volume>,
    /// Outside diameter over wall (SDR).
    diameter_ratio: Amount<Number>,
}

/// A sealed loop.
#[derive(Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct LoopGiven {
    #[schemars(length(min = 1, max = 20))]
    plastic: Vec<PlasticGiven>,
    /// Fluid in metal: heat pump, indoor copper, flow centre.
    rigid: Option<Amount<Volume>>,
    /// PE4xxx when left out.
    resin: Option<ResinClass>,
    /// Held when left out, as buried pipe is.
    lengthwise: Option<Lengthwise>,
    fluid: FluidGiven,
    altitude: Option<Amount<Length>>,
    surround: Around,
    /// Expansion tank, if there is one that works.
    tank: Option<VesselGiven>,
    /// Relative uncertainty of the modulus; usual when left out (19 of 20).
    modulus_accuracy: Option<Amount<Fraction>>,
    /// Linear expansion of the pipe; usual when left out.
    linear_expansion: Option<Amount<ThermalExpansion>>,
    /// Restraint by the surround; usual when left out.
    restraint: Option<Amount<Fraction>>,
}

/// How the loop was left.
#[derive(Copy, Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct ChargeGiven {
    /// Gauge pressure that was left.
    pressure: Amount<GaugePressure>,
    /// Mean temperature of fluid and pipe then.
    temperature: Amount<Temperature>,
    /// How long the pipe had been under pressure; half an hour when left out.
    held: Option<Amount<Duration>>,
    /// Air left in, as volume at that pressure.
    air: Option<Amount<Volume>>,
    /// Whether that air dissolves; yes when left out.
    air_dissolves: Option<bool>,
}

impl LoopGiven {
    fn sealed(&self) -> Result<SealedLoop, CalcError> {
        let plastic = self.plastic.iter().map(|part| PlasticPart {
            volume: part.volume.get(),
            ratio: part.diameter_ratio.get(),
        });
        for part in &self.plastic {
            crate::charge::LOOP_VOLUME.check(part.volume.get())?;
        }
        Ok(SealedLoop {
            plastic: plastic.collect(),
            rigid: self.rigid.map_or(Volume::ZERO, Amount::get),
            resin: self.resin.unwrap_or(ResinClass::Pe4xxx).into(),
            axial: self.lengthwise.unwrap_or(Lengthwise::Held).into(),
            fluid: self.fluid.fluid()?,
            atmosphere: atmosphere(self.altitude)?,
            vessel: self.tank.map(VesselGiven::vessel).transpose()?,
        })
    }
    fn unknowns(&self) -> Unknowns {
        let usual = Unknowns::typical(self.surround.into());
        Unknowns {
            modulus: self
                .modulus_accuracy
                .map_or(usual.modulus, |a| a.get() * 0.5),
            expansion: self
                .linear_expansion
                .map_or(usual.expansion, Amount::uncertain),
            restraint: self.restraint.map_or(usual.restraint, Amount::uncertain),
            fluid: usual.fluid,
        }
    }
    fn belief(&self, charge: &ChargeGiven, earlier: &[ReadingGiven]) -> Result<Belief, CalcError> {
        let air = |volume: Amount<Volume>| {
            let trapped = TrappedAir {
                volume: volume.get(),
                dissolves: charge.air_dissolves.unwrap_or(true),
                saturation: Fraction::from_si(1.0),
            };
            (volume.uncertain(), trapped)
        };
        let charge = Charge {
            pressure: charge.pressure.or_standard(GAUGE),
            temperature: charge.temperature.or_standard(THERMOMETER),
            held: charge.held.map_or(Duration::from_si(1_800.0), Amount::get),
            air: charge.air.map(air),
            earlier: None,
        };
        let prior = Belief::prior(self.sealed()?, self.unknowns(), charge)?;
        if earlier.is_empty() {
            return Ok(prior);
        }
        let readings: Vec<Reading> = earlier.iter().map(ReadingGiven::reading).collect();
        for reading in &readings {
            LOOP_PRESSURE.check(reading.pressure.value())?;
        }
        Ok(prior.after(&readings)?)
    }
}

/// A reading after the charge.
#[derive(Copy, Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct ReadingGiven {
    /// Since the charge.
    elapsed: Amount<Duration>,
    /// Mean temperature of fluid and pipe.
    temperature: Amount<Temperature>,
    pressure: Amount<GaugePressure>,
}

impl ReadingGiven {
    fn reading(&self) -> Reading {
        Reading {
            moment: Moment {
                elapsed: self.elapsed.get(),
                temperature: self.temperature.or_standard(THERMOMETER),
            },
            pressure: self.pressure.or_standard(GAUGE),
        }
    }
}

/// A part of the variance by what is not known.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Cause {
    unknown: Widens,
    share: Amount<Fraction>,
}

/// The pressures to expect; nine in ten lie between low and high.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct BandShown {
    low: Amount<GaugePressure>,
    median: Amount<GaugePressure>,
    high: Amount<GaugePressure>,
    coverage: Amount<Fraction>,
    /// What makes it wide, most first.
    causes: Vec<Cause>,
}

fn shown(band: &Band, show: Show) -> BandShown {
    BandShown {
        low: show.exact(band.low),
        median: show.exact(band.median),
        high: show.exact(band.high),
        coverage: show.share(band::COVERAGE),
        causes: band
            .causes
            .iter()
            .map(|(unknown, share)| Cause {
                unknown: (*unknown).into(),
                share: show.share(*share),
            })
            .collect(),
    }
}

topic! {
    /// The gauge today, and what is missing.
    StaticBand "static-band" by "mass-balance";
    example r#"{"loop": {"plastic": [{"volume": {"value": 60, "unit": "gal"}, "diameter_ratio": {"value": 11, "unit": "1"}}], "rigid": {"value": 3, "unit": "gal"}, "fluid": {"kind": "methanol", "volume_fraction": {"value": 20, "unit": "%"}}, "surround": "trench"}, "charge": {"pressure": {"value": 50, "unit": "psi"}, "temperature": {"value": 50, "unit": "degF"}}, "elapsed": {"value": 120, "unit": "d"}, "temperature": {"value": 75, "unit": "degF"}, "pressure": {"value": 12, "unit": "psi"}}"#;
    asks StaticBandQuestion {
        r#loop: LoopGiven,
        charge: ChargeGiven,
        /// Since the charge.
        elapsed: Amount<Duration>,
        /// Mean temperature of fluid and pipe today.
        temperature: Amount<Temperature>,
        /// What the gauge shows today.
        pressure: Option<Amount<GaugePressure>>,
        /// Earlier readings of the same loop: they narrow the band.
        #[serde(default)]
        #[schemars(length(max = 50))]
        earlier: Vec<ReadingGiven>,
    }
    tells StaticBandAnswer {
        band: BandShown,
        place: Option<Place>,
        /// That the loop holds less than it was charged with.
        probability_missing: Option<Amount<Fraction>>,
        missing: Option<Amount<Volume>>,
        /// Volume that the loop takes by pressure today.
        give: Amount<VolumeGive>,
    }
    |q, show| {
        let belief = q.r#loop.belief(&q.charge, &q.earlier)?;
        let moment = Moment { elapsed: q.elapsed.get(), temperature: q.temperature.or_standard(THERMOMETER) };
        let state = ChargeState {
            pressure: q.charge.pressure.get(),
            temperature: q.charge.temperature.get(),
            held: q.charge.held.map_or(Duration::from_si(1_800.0), Amount::get),
            air: None,
            earlier: None,
        };
        let (properties, _) = belief.properties();
        let here = balance(&q.r#loop.sealed()?, &properties, &state, q.elapsed.get(), q.temperature.get())?;
        let give = show.exact(here.give(here.pressure()));
        let Some(pressure) = q.pressure else {
            let band = shown(&belief.band(&moment)?, show);
            return Ok(StaticBandAnswer { band, place: None, probability_missing: None, missing: None, give });
        };
        let found = belief.assess(&Reading { moment, pressure: pressure.or_standard(GAUGE) })?;
        Ok(StaticBandAnswer {
            band: shown(&found.band, show),
            place: Some(found.place.into()),
            probability_missing: Some(show.share(found.probability_missing)),
            missing: Some(show.with(found.missing)),
            give,
        })
    }
}

/// A moment that counts, from today.
#[derive(Copy, Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct MomentGiven {
    after: Amount<Duration>,
    /// Mean temperature of fluid and pipe then.
    temperature: Amount<Temperature>,
}

topic! {
    /// The pressure to leave today.
    PressureToLeave "pressure-to-leave" by "mass-balance";
    example r#"{"loop": {"plastic": [{"volume": {"value": 60, "unit": "gal"}, "diameter_ratio": {"value": 11, "unit": "1"}}], "rigid": {"value": 3, "unit": "gal"}, "fluid": {"kind": "methanol", "volume_fraction": {"value": 20, "unit": "%"}}, "surround": "trench"}, "temperature": {"value": 55, "unit": "degF"}, "least": {"value": 5, "unit": "psi"}, "most": {"value": 80, "unit": "psi"}, "limit_today": {"value": 90, "unit": "psi"}, "moments": [{"after": {"value": 182, "unit": "d"}, "temperature": {"value": 35, "unit": "degF"}}, {"after": {"value": 365, "unit": "d"}, "temperature": {"value": 80, "unit": "degF"}}]}"#;
    asks PressureToLeaveQuestion {
        r#loop: LoopGiven,
        /// Mean temperature of fluid and pipe today.
        temperature: Amount<Temperature>,
        /// How long the new pressure is held before it is left; half an hour when left out.
        held: Option<Amount<Duration>>,
        /// Pressures to keep, and the most that may be put on today.
        least: Amount<GaugePressure>,
        most: Amount<GaugePressure>,
        limit_today: Amount<GaugePressure>,
        /// Both seasons, soon and in some years.
        #[schemars(length(min = 1, max = 12))]
        moments: Vec<MomentGiven>,
        /// An earlier charge and readings after it, from which the loop is known better.
        earlier_charge: Option<ChargeGiven>,
        #[serde(default)]
        #[schemars(length(max = 50))]
        earlier: Vec<ReadingGiven>,
    }
    tells PressureToLeaveAnswer {
        pressure: Amount<GaugePressure>,
        /// `possible`, `impossible` or `limited_today`.
        outcome: &'static str,
        /// Any pressure between these does.
        from: Option<Amount<GaugePressure>>,
        to: Option<Amount<GaugePressure>>,
        /// How far the band leaves the limits.
        short: Option<Amount<PressureDifference>>,
        over: Option<Amount<PressureDifference>>,
        /// The band at each moment for this pressure.
        bands: Vec<BandShown>,
        caution: CautionText,
    }
    |q, show| {
        let today = Today {
            temperature: q.temperature.or_standard(THERMOMETER),
            held: q.held.map_or(Duration::from_si(1_800.0), Amount::get),
            gauge: GAUGE,
            earlier: None,
        };
        let fresh = ChargeGiven {
            pressure: q.least,
            temperature: q.temperature,
            held: q.held,
            air: None,
            air_dissolves: None,
        };
        let belief = q.r#loop.belief(&q.earlier_charge.unwrap_or(fresh), &q.earlier)?;
        let demand = Demand {
            least: q.least.get(),
            bare: None,
            stands: None,
            keep: false,
            most: q.most.get(),
            limit_today: q.limit_today.get(),
            ceiling: q.limit_today.get(),
            moments: q.moments.iter().map(|m| Moment {
                elapsed: m.after.get(),
                temperature: m.temperature.or_standard(THERMOMETER),
            }).collect(),
        };
        let found = belief.leave(&demand, &today)?;
        let mut answer = PressureToLeaveAnswer {
            pressure: show.with(Uncertain::exact(found.pressure)),
            outcome: "possible",
            from: None, to: None, short: None, over: None,
            bands: found.bands.iter().map(|band| shown(band, show)).collect(),
            caution: caution("lowest-rating", "plan-caution-never-above-lowest-rating"),
        };
        match found.outcome {
            // Nothing less and nothing that stands is given.
            Outcome::Kept => {}
            Outcome::Possible { from, to } | Outcome::Bare { from, to } => {
                (answer.from, answer.to) = (Some(show.exact(from)), Some(show.exact(to)));
            }
            Outcome::Impossible { short, over } => {
                answer.outcome = "impossible";
                (answer.short, answer.over) = (Some(show.exact(short)), Some(show.exact(over)));
            }
            Outcome::LimitedToday { short } => {
                answer.outcome = "limited_today";
                answer.short = Some(show.exact(short));
            }
        }
        Ok(answer)
    }
}
