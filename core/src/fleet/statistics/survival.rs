//! Time until something happens, when for many it has not happened yet.

use super::{Interval, Z};

/// One waiting time.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Waiting {
    /// How long; any unit, zero or more.
    pub time: f64,
    /// Whether it happened at that time; false when it had not by then.
    pub happened: bool,
}

/// One step of the curve.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Step {
    /// Time at which something happened.
    pub time: f64,
    /// How many had waited until just before.
    pub at_risk: usize,
    /// For how many it happened now.
    pub events: usize,
    /// Share for whom it has not happened after this time.
    pub survival: f64,
    /// Greenwood's sum Σ d / (n (n - d)) up to this time; infinite at survival zero.
    pub greenwood: f64,
}

/// The product-limit curve.
///
/// S(t) = Π (1 - d/n) over the times up to t at which something happened, n
/// waiting and d of them ending. Source: E. L. Kaplan, P. Meier, *Nonparametric
/// estimation from incomplete observations*, J. Am. Stat. Assoc. 53 (1958)
/// 457-481.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Curve {
    /// Steps in order of time.
    pub steps: Vec<Step>,
    /// How many waited in all.
    pub all: usize,
}

impl Curve {
    /// The curve of waiting times. Times that are negative or no number are left
    /// out.
    #[must_use]
    pub fn of(waiting: &[Waiting]) -> Self {
        let mut sorted: Vec<Waiting> = waiting
            .iter()
            .copied()
            .filter(|one| one.time >= 0.0)
            .collect();
        sorted.sort_by(|a, b| a.time.total_cmp(&b.time));
        let all = sorted.len();
        let (mut survival, mut greenwood) = (1.0, 0.0);
        let mut steps = Vec::new();
        let mut gone = 0;
        for tied in sorted.chunk_by(|a, b| a.time.total_cmp(&b.time).is_eq()) {
            let at_risk = all - gone;
            gone += tied.len();
            let events = tied.iter().filter(|one| one.happened).count();
            if events == 0 {
                continue;
            }
            let (n, d) = (at_risk as f64, events as f64);
            survival *= 1.0 - d / n;
            greenwood += d / (n * (n - d));
            steps.push(Step {
                time: tied[0].time,
                at_risk,
                events,
                survival,
                greenwood,
            });
        }
        Self { steps, all }
    }

    /// First time at which at most half are left; none while more than half are.
    #[must_use]
    pub fn median(&self) -> Option<f64> {
        let step = self.steps.iter().find(|step| step.survival <= 0.5)?;
        Some(step.time)
    }

    /// The last step at or before a time.
    #[must_use]
    pub fn at(&self, time: f64) -> Option<&Step> {
        let after = self.steps.partition_point(|step| step.time <= time);
        self.steps[..after].last()
    }
}

impl Step {
    /// Plain interval S ± z S √G, cut to 0 … 1, with G Greenwood's sum.
    /// Source: M. Greenwood, *The natural duration of cancer*, Reports on Public
    /// Health and Medical Subjects 33 (1926); in the form of Kalbfleisch and
    /// Prentice, *The Statistical Analysis of Failure Time Data*, 1.4 (from memory).
    #[must_use]
    pub fn plain(&self) -> Interval {
        if self.survival <= 0.0 {
            return Interval {
                low: 0.0,
                high: 0.0,
            };
        }
        let half = Z * self.survival * self.greenwood.sqrt();
        Interval {
            low: (self.survival - half).max(0.0),
            high: (self.survival + half).min(1.0),
        }
    }

    /// Interval on the scale ln(-ln S), which never leaves 0 … 1: S^exp(± z √G / ln S).
    /// Source: Kalbfleisch and Prentice, as above.
    #[must_use]
    pub fn log_log(&self) -> Interval {
        if self.survival <= 0.0 || self.survival >= 1.0 {
            let end = self.survival.clamp(0.0, 1.0);
            return Interval {
                low: end,
                high: end,
            };
        }
        let spread = Z * self.greenwood.sqrt() / self.survival.ln().abs();
        Interval {
            low: self.survival.powf(spread.exp()),
            high: self.survival.powf((-spread).exp()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nobody_waiting_gives_no_steps() {
        assert_eq!(Curve::of(&[]).steps, []);
        let odd = [f64::NAN, -1.0].map(|time| Waiting {
            time,
            happened: true,
        });
        assert_eq!(Curve::of(&odd).all, 0);
    }

    #[test]
    fn the_last_one_takes_the_curve_to_zero() {
        let curve = Curve::of(&[1.0, 2.0].map(|time| Waiting {
            time,
            happened: true,
        }));
        assert_eq!(curve.median(), Some(1.0));
        let last = curve.steps[1];
        assert!(last.survival.abs() < 1e-15);
        assert_eq!(last.plain(), last.log_log());
        assert_eq!(curve.at(0.5), None);
        assert_eq!(curve.at(5.0), Some(&last));
    }
}
