//! The pressure to leave today so that it stays inside its limits in every season.

use super::PressureError;
use super::balance::{Earlier, LOOP_PRESSURE, Span};
use super::band::{Band, COVERAGE};
use super::belief::{Belief, Charge, MODEL_DOUBT, Moment};
use super::sampling::{Sorted, points};
use super::unknowns::SHARED;
use crate::uncertainty::{Uncertain, normal_cumulative};
use crate::units::{Duration, GaugePressure, PressureDifference, Quantity, Temperature};

/// What is asked of the pressure.
#[derive(Clone, PartialEq, Debug)]
pub struct Demand {
    /// Lowest pressure to keep.
    pub least: GaugePressure,
    /// Lowest pressure to keep where no pressure is certain to keep the least: what the
    /// loop cannot run without. Not above the least; none where nothing less will do.
    pub bare: Option<GaugePressure>,
    /// What the loop stands at, if it was read: the less is changed the better.
    pub stands: Option<GaugePressure>,
    /// Whether nothing speaks against what it stands at: it is then left so where that
    /// lies between the limits and keeps under the ceiling.
    pub keep: bool,
    /// Highest pressure to keep once the loop has been left.
    pub most: GaugePressure,
    /// Highest pressure that may be put on today.
    pub limit_today: GaugePressure,
    /// Highest pressure that the loop may come to at any moment. Where the limits
    /// cannot all be kept, the highest band stays under it and the lowest gives way.
    pub ceiling: GaugePressure,
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
    /// None keeps the least and the most with the certainty of the band, but any between
    /// these keeps the bare least and the ceiling.
    Bare {
        /// Lowest that does.
        from: GaugePressure,
        /// Highest that does.
        to: GaugePressure,
    },
    /// It is left at what it stands at.
    Kept,
    /// None does with the certainty of the band: at the best, it leaves the limits by this much at one end or both.
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
    /// Pressure to leave: what does and changes least, or what most probably does.
    pub pressure: GaugePressure,
    /// Whether it keeps its promise.
    pub outcome: Outcome,
    /// Probability that the pressure stays between the limits at every moment.
    pub inside: f64,
    /// The band at each moment for this pressure.
    pub bands: Vec<Band>,
}

/// Pressures are found to within this, Pa.
const CLOSE: f64 = 20.0;
/// Pressures tried, evenly, before the most probable one is closed in on.
const TRIED: usize = 25;

struct Reach {
    low: f64,
    high: f64,
}

/// The fixed points of a belief at the moments asked for, ready for any pressure to leave.
struct Prospect<'a> {
    belief: Belief,
    moments: &'a [Moment],
    /// Coordinates of every point.
    places: Vec<Vec<f64>>,
    /// By moment and point.
    spans: Vec<Vec<Span>>,
}

impl<'a> Prospect<'a> {
    fn new(belief: Belief, moments: &'a [Moment]) -> Result<Self, PressureError> {
        let root = belief.now.root();
        let places: Vec<Vec<f64>> = points()
            .iter()
            .map(|point| belief.now.carry(&root, point))
            .collect();
        let at = |moment: &Moment| -> Result<Vec<Span>, PressureError> {
            places
                .iter()
                .zip(points())
                .map(|(z, point)| belief.span(z, moment, point[SHARED]))
                .collect()
        };
        let spans = moments.iter().map(at).collect::<Result<_, _>>()?;
        Ok(Self {
            belief,
            moments,
            places,
            spans,
        })
    }

    /// Pressures at one moment if this one is left today, without the model's doubt.
    fn bare(&self, moment: usize, left: f64) -> impl Iterator<Item = f64> + '_ {
        let left = GaugePressure::from_si(left);
        self.spans[moment]
            .iter()
            .zip(&self.places)
            .map(move |(span, z)| span.charged(self.belief.put_on(left, z)).pressure().si())
    }

    fn pressures(&self, moment: usize, left: f64) -> Vec<f64> {
        self.bare(moment, left)
            .zip(points())
            .map(|(pressure, point)| pressure + MODEL_DOUBT * point[SHARED + 1])
            .collect()
    }

    /// Ends of the bands over all moments.
    fn reach(&self, left: f64) -> Reach {
        let mut reach = Reach {
            low: f64::INFINITY,
            high: f64::NEG_INFINITY,
        };
        for moment in 0..self.moments.len() {
            let sorted = Sorted::new(&self.pressures(moment, left), &self.belief.weights);
            reach.low = reach.low.min(sorted.quantile(0.5 * (1.0 - COVERAGE)));
            reach.high = reach.high.max(sorted.quantile(0.5 * (1.0 + COVERAGE)));
        }
        reach
    }

    /// Probability that the pressure lies between the limits at every moment. The model's
    /// doubt is one for all of them: a loop of which it reads too high in winter it reads
    /// too high in summer.
    fn inside(&self, left: f64, least: f64, most: f64) -> f64 {
        let mut ends = vec![(f64::INFINITY, f64::NEG_INFINITY); self.places.len()];
        for moment in 0..self.moments.len() {
            for (end, pressure) in ends.iter_mut().zip(self.bare(moment, left)) {
                *end = (end.0.min(pressure), end.1.max(pressure));
            }
        }
        let below = |limit: f64| normal_cumulative(limit / MODEL_DOUBT);
        ends.iter()
            .zip(&self.belief.weights)
            .map(|((low, high), weight)| {
                weight * (below(most - high) - below(least - low)).max(0.0)
            })
            .sum()
    }

    /// The pressure, not above a limit, with which the loop most probably stays between the
    /// limits; none if it hardly can with any.
    fn most_probable(&self, least: f64, most: f64, limit: f64) -> Option<f64> {
        let from = LOOP_PRESSURE.min().si();
        let step = (limit - from) / (TRIED - 1) as f64;
        let inside = |left: f64| self.inside(left, least, most);
        let (best, peak) = (0..TRIED)
            .map(|i| from + step * i as f64)
            .map(|left| (left, inside(left)))
            .fold((from, 0.0), |a, b| if b.1 > a.1 { b } else { a });
        if peak <= 0.0 {
            return None;
        }
        // Golden section between its neighbours.
        const GOLDEN: f64 = 0.618_033_988_749_894_8;
        let (mut low, mut high) = (best - step, (best + step).min(limit));
        while high - low > 10.0 * CLOSE {
            let (a, b) = (high - GOLDEN * (high - low), low + GOLDEN * (high - low));
            if inside(a) < inside(b) {
                low = a;
            } else {
                high = b;
            }
        }
        let middle = 0.5 * (low + high);
        Some(if inside(limit) >= inside(middle) {
            limit
        } else {
            middle
        })
    }

    fn bands(&self, left: f64) -> Result<Vec<Band>, PressureError> {
        let belief = Belief {
            charge: Charge {
                pressure: Uncertain::new(
                    GaugePressure::from_si(left),
                    self.belief.charge.pressure.standard(),
                ),
                ..self.belief.charge
            },
            ..self.belief.clone()
        };
        self.moments
            .iter()
            .enumerate()
            .map(|(i, moment)| belief.band_of(&self.pressures(i, left), moment))
            .collect()
    }
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

    /// The pressure to leave today, and how probably it keeps inside the limits. Both ends of
    /// the band rise with it, so that the lowest and the highest pressure that do are found by
    /// bracketing; where there is none, the answer is one that keeps the bare least and the
    /// ceiling, else the pressure that most probably does.
    ///
    /// # Errors
    /// [`PressureError::EmptyBand`] for limits the wrong way round,
    /// [`PressureError::TooFewReadings`] for no moment, and as
    /// [`balance`](super::balance::balance).
    pub fn leave(&self, demand: &Demand, today: &Today) -> Result<Leave, PressureError> {
        if demand.least >= demand.most || demand.bare.is_some_and(|bare| bare > demand.least) {
            return Err(PressureError::EmptyBand);
        }
        if demand.moments.is_empty() {
            return Err(PressureError::TooFewReadings {
                given: 0,
                needed: 1,
            });
        }
        let limit = LOOP_PRESSURE.check(demand.limit_today)?.si();
        let belief = self.recharged(demand.limit_today, today);
        let prospect = Prospect::new(belief, &demand.moments)?;
        let (least, most) = (demand.least.si(), demand.most.si());
        let stands = demand.stands.map(Quantity::si);
        let from = first(&prospect, |r| r.low - least);
        let to = first(&prospect, |r| r.high - most);
        let safe = first(&prospect, |r| r.high - demand.ceiling.si()).min(limit);
        let top = to.min(limit);
        let kept = stands.filter(|stands| demand.keep && (least..=safe).contains(stands));
        let between = |from, to| (GaugePressure::from_si(from), GaugePressure::from_si(to));
        // What is left has to do today as well.
        let bare_from = demand
            .bare
            .map(|bare| first(&prospect, |r| r.low - bare.si()).max(least))
            .filter(|from| *from <= safe);
        let (pressure, outcome) = if from <= top {
            let inside = kept.filter(|kept| (from..=top).contains(kept));
            let pressure = inside.unwrap_or_else(|| settled(from, top, stands));
            let (from, to) = between(from, top);
            (pressure, Outcome::Possible { from, to })
        } else if let Some(kept) = kept {
            (kept, Outcome::Kept)
        } else if let Some(bare_from) = bare_from {
            let pressure = settled(bare_from, safe, stands);
            let (from, to) = between(bare_from, safe);
            (pressure, Outcome::Bare { from, to })
        } else {
            let (lowest, highest) = match demand.bare {
                Some(bare) => (bare.si(), demand.ceiling.si()),
                None => (least, most),
            };
            let best = prospect.most_probable(lowest, highest, limit);
            let best = best
                .unwrap_or(0.5 * (from + to))
                .min(safe)
                .max(least)
                .min(limit);
            let reach = prospect.reach(best);
            let short = PressureDifference::from_si((least - reach.low).max(0.0));
            let over = PressureDifference::from_si((reach.high - most).max(0.0));
            let outcome = if from > limit && over.si() == 0.0 {
                Outcome::LimitedToday { short }
            } else {
                Outcome::Impossible { short, over }
            };
            (best, outcome)
        };
        Ok(Leave {
            pressure: GaugePressure::from_si(pressure),
            outcome,
            inside: prospect.inside(pressure, least, most),
            bands: prospect.bands(pressure)?,
        })
    }
}

/// The pressure between two ends, not near either, that changes least what stands in the
/// loop; the middle where that is not known.
fn settled(from: f64, to: f64, stands: Option<f64>) -> f64 {
    let edge = 0.25 * (to - from);
    let middle = 0.5 * (from + to);
    stands.map_or(middle, |stands| stands.clamp(from + edge, to - edge))
}

/// Lowest pressure from which on a rising excess is not negative; the ceiling if it always
/// is. Without gas the excess is nearly straight in the pressure, so that false position
/// (Illinois variant) needs few steps.
fn first(prospect: &Prospect<'_>, excess: impl Fn(&Reach) -> f64) -> f64 {
    let at = |pressure| excess(&prospect.reach(pressure));
    let (mut below, mut above) = (LOOP_PRESSURE.min().si(), LOOP_PRESSURE.max().si());
    let (mut under, mut over) = (at(below), at(above));
    if under >= 0.0 {
        return below;
    }
    if over < 0.0 {
        return above;
    }
    let mut kept = 0i32;
    for _ in 0..60 {
        let middle = below + (above - below) * under / (under - over);
        let here = at(middle);
        if here.abs() < CLOSE || above - below < CLOSE {
            return middle;
        }
        if here < 0.0 {
            (below, under) = (middle, here);
            kept = kept.max(0) + 1;
            if kept > 1 {
                over *= 0.5;
            }
        } else {
            (above, over) = (middle, here);
            kept = kept.min(0) - 1;
            if kept < -1 {
                under *= 0.5;
            }
        }
    }
    0.5 * (below + above)
}
