//! The pressure to leave today so that it stays inside its limits in every season.

use super::PressureError;
use super::balance::{Earlier, LOOP_PRESSURE};
use super::band::Band;
use super::belief::{Belief, Charge, Moment};
use crate::uncertainty::Uncertain;
use crate::units::{Duration, GaugePressure, PressureDifference, Quantity, Temperature};

/// What is asked of the pressure.
#[derive(Clone, PartialEq, Debug)]
pub struct Demand {
    /// Lowest pressure to keep.
    pub least: GaugePressure,
    /// Highest pressure to keep once the loop has been left.
    pub most: GaugePressure,
    /// Highest pressure that may be put on today.
    pub limit_today: GaugePressure,
    /// The moments that count, time from today: both seasons, soon and in some years.
    pub moments: Vec<Moment>,
}

/// How today's charge is made.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Today {
    /// Mean temperature of fluid and pipe today.
    pub temperature: Uncertain<Temperature>,
    /// How long the new pressure is held before it is read and left.
    pub held: Duration,
    /// Standard uncertainty of the gauge, Pa.
    pub gauge: f64,
    /// Pressure in the loop before, and how long it was there, if the pipe was not emptied.
    pub earlier: Option<Earlier>,
}

/// Whether one pressure serves all moments.
#[derive(Copy, Clone, PartialEq, Debug)]
pub enum Outcome {
    /// Any pressure between these does.
    Possible {
        /// Lowest that does.
        from: GaugePressure,
        /// Highest that does.
        to: GaugePressure,
    },
    /// None does: at the best, the band leaves the limits by this much at one end or both.
    Impossible {
        /// How far the lowest band lies under the least.
        short: PressureDifference,
        /// How far the highest band lies over the most.
        over: PressureDifference,
    },
    /// What would be needed is more than may be put on today.
    LimitedToday {
        /// How far the lowest band lies under the least at the limit.
        short: PressureDifference,
    },
}

/// The answer.
#[derive(Clone, PartialEq, Debug)]
pub struct Leave {
    /// Pressure to leave: the middle of what does, or the best compromise.
    pub pressure: GaugePressure,
    /// Whether it keeps its promise.
    pub outcome: Outcome,
    /// The band at each moment for this pressure.
    pub bands: Vec<Band>,
}

/// Pressures are found to within this, Pa.
const CLOSE: f64 = 20.0;

struct Reach {
    low: f64,
    high: f64,
}

impl Belief {
    /// This belief for a new charge: what was learnt of pipe and surround stays, the charge is
    /// new and known as well as today's gauge and thermometer.
    pub fn recharged(&self, pressure: GaugePressure, today: &Today) -> Self {
        let charge = Charge {
            pressure: Uncertain::new(pressure, today.gauge),
            temperature: today.temperature,
            held: today.held,
            air: None,
            earlier: today.earlier,
        };
        self.with_charge(charge)
    }

    fn reach(
        &self,
        pressure: f64,
        today: &Today,
        moments: &[Moment],
    ) -> Result<Reach, PressureError> {
        let belief = self.recharged(GaugePressure::from_si(pressure), today);
        let mut reach = Reach {
            low: f64::INFINITY,
            high: f64::NEG_INFINITY,
        };
        for moment in moments {
            let band = belief.band(moment)?;
            reach.low = reach.low.min(band.low.si());
            reach.high = reach.high.max(band.high.si());
        }
        Ok(reach)
    }

    /// The pressure to leave today. Both ends of the band rise with it, so that the lowest and
    /// the highest pressure that do are found by bracketing.
    ///
    /// # Errors
    /// [`PressureError::EmptyBand`] for limits the wrong way round,
    /// [`PressureError::TooFewReadings`] for no moment, and as
    /// [`balance`](super::balance::balance).
    pub fn leave(&self, demand: &Demand, today: &Today) -> Result<Leave, PressureError> {
        if demand.least >= demand.most {
            return Err(PressureError::EmptyBand);
        }
        if demand.moments.is_empty() {
            return Err(PressureError::TooFewReadings {
                given: 0,
                needed: 1,
            });
        }
        LOOP_PRESSURE.check(demand.limit_today)?;
        let reach = |p: f64| self.reach(p, today, &demand.moments);
        let (least, most) = (demand.least.si(), demand.most.si());
        let ceiling = LOOP_PRESSURE.max().si();
        // Lowest pressure from which on a rising excess is not negative; the ceiling if it
        // always is. Without gas the excess is straight in the pressure, so that false
        // position (Illinois variant) needs few steps.
        let first = |excess: &dyn Fn(&Reach) -> f64| -> Result<f64, PressureError> {
            let (mut below, mut above) = (LOOP_PRESSURE.min().si(), ceiling);
            let (mut under, mut over) = (excess(&reach(below)?), excess(&reach(above)?));
            if under >= 0.0 {
                return Ok(below);
            }
            if over < 0.0 {
                return Ok(above);
            }
            let mut kept = 0i32;
            for _ in 0..60 {
                let at = below + (above - below) * under / (under - over);
                let here = excess(&reach(at)?);
                if here.abs() < CLOSE || above - below < CLOSE {
                    return Ok(at);
                }
                if here < 0.0 {
                    (below, under) = (at, here);
                    kept = kept.max(0) + 1;
                    if kept > 1 {
                        over *= 0.5;
                    }
                } else {
                    (above, over) = (at, here);
                    kept = kept.min(0) - 1;
                    if kept < -1 {
                        under *= 0.5;
                    }
                }
            }
            Ok(0.5 * (below + above))
        };
        let balance = |r: &Reach| (r.high - most) - (least - r.low);
        let from = first(&|r| r.low - least)?;
        let to = first(&|r| r.high - most)?;
        let limit = demand.limit_today.si();
        let (pressure, outcome) = if from > limit {
            // The same ceiling stops the upper end from being over by more than the lower is short.
            let balanced = first(&balance)?.min(limit);
            let r = reach(balanced)?;
            let short = PressureDifference::from_si((least - r.low).max(0.0));
            if r.high > most {
                let over = PressureDifference::from_si(r.high - most);
                (balanced, Outcome::Impossible { short, over })
            } else {
                (balanced, Outcome::LimitedToday { short })
            }
        } else if from <= to {
            let to = to.min(limit);
            let (from, to) = (GaugePressure::from_si(from), GaugePressure::from_si(to));
            (0.5 * (from + to).si(), Outcome::Possible { from, to })
        } else {
            let balanced = first(&balance)?.min(limit);
            let r = reach(balanced)?;
            let outcome = Outcome::Impossible {
                short: PressureDifference::from_si((least - r.low).max(0.0)),
                over: PressureDifference::from_si((r.high - most).max(0.0)),
            };
            (balanced, outcome)
        };
        let left = self.recharged(GaugePressure::from_si(pressure), today);
        let bands: Result<Vec<Band>, PressureError> = demand
            .moments
            .iter()
            .map(|moment| left.band(moment))
            .collect();
        Ok(Leave {
            pressure: GaugePressure::from_si(pressure),
            outcome,
            bands: bands?,
        })
    }
}
