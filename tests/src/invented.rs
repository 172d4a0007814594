//! Invented rule graphs: random in shape and strength, the same for the same seed.
//!
//! They know nothing of heat pumps. They exist so that the inference can be
//! compared with other computations on many graphs.

use std::fmt::Write;

/// A small generator of numbers that look random (splitmix64, Steele et al. 2014).
#[derive(Debug, Clone)]
pub struct Dice(u64);

impl Dice {
    /// Starts from a seed.
    #[must_use]
    pub fn new(seed: u64) -> Self {
        Self(seed)
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// Uniform in [low, high).
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * ((self.next() >> 11) as f64 / (1_u64 << 53) as f64)
    }

    /// Uniform among 0 .. count.
    pub fn below(&mut self, count: usize) -> usize {
        (self.next() % count.max(1) as u64) as usize
    }

    /// Normal of mean 0 and width 1 (Box and Muller).
    pub fn normal(&mut self) -> f64 {
        let (u, v) = (self.between(1e-12, 1.0), self.between(0.0, 1.0));
        (-2.0 * u.ln()).sqrt() * (std::f64::consts::TAU * v).cos()
    }

    /// True with this probability.
    pub fn chance(&mut self, probability: f64) -> bool {
        self.between(0.0, 1.0) < probability
    }
}

/// What one parent does to a finding or mechanism: probability of a push low and high.
#[derive(Debug, Clone, Copy)]
pub struct Arrow {
    /// Place among the causes, then the mechanisms.
    pub parent: usize,
    /// Probability of a push low.
    pub low: f64,
    /// Probability of a push high, or of being brought about.
    pub high: f64,
}

/// A finding.
#[derive(Debug, Clone)]
pub struct InventedFinding {
    /// Low, normal, high rather than absent, present.
    pub graded: bool,
    /// Present, not absent, is normal.
    pub normally_present: bool,
    /// Leak low.
    pub leak_low: f64,
    /// Leak high.
    pub leak_high: f64,
    /// The instrument, a place among the causes.
    pub instrument: Option<usize>,
    /// Reliability.
    pub reliability: f64,
    /// Parents.
    pub parents: Vec<Arrow>,
}

impl InventedFinding {
    /// Number of levels.
    #[must_use]
    pub fn levels(&self) -> usize {
        if self.graded { 3 } else { 2 }
    }
}

/// A graph. The last causes are instruments.
#[derive(Debug, Clone)]
pub struct Invented {
    /// Prior of each cause.
    pub priors: Vec<f64>,
    /// Probability that each cause, alone, makes somebody call; some never do.
    pub calls: Vec<f64>,
    /// Probability that somebody calls for nothing.
    pub call_leak: f64,
    /// How many of the causes, at the end, are instruments.
    pub instruments: usize,
    /// Leak and parents of each mechanism; parents are causes and earlier mechanisms.
    pub mechanisms: Vec<(f64, Vec<Arrow>)>,
    /// Findings.
    pub findings: Vec<InventedFinding>,
}

/// Sizes of a graph to invent.
#[derive(Debug, Clone, Copy)]
pub struct Size {
    /// Causes that are not instruments.
    pub causes: usize,
    /// Instruments.
    pub instruments: usize,
    /// Mechanisms.
    pub mechanisms: usize,
    /// Findings.
    pub findings: usize,
    /// Most parents of a finding.
    pub finding_parents: usize,
    /// Share of links that stay among neighbours, as within a family.
    pub neighbourly: f64,
}

impl Size {
    /// The size of a real rule graph.
    pub const FULL: Self = Self {
        causes: 38,
        instruments: 7,
        mechanisms: 25,
        findings: 80,
        finding_parents: 3,
        neighbourly: 0.95,
    };
}

impl Invented {
    /// Invents a graph.
    #[must_use]
    pub fn new(seed: u64, size: Size) -> Self {
        let mut dice = Dice::new(seed);
        let Size {
            causes,
            instruments,
            mechanisms,
            ..
        } = size;
        let all_causes = causes + instruments;
        let priors = (0..all_causes).map(|_| dice.between(0.005, 0.15)).collect();
        let mut into: Vec<(f64, Vec<Arrow>)> = (0..mechanisms)
            .map(|_| (dice.between(0.0, 0.05), Vec::new()))
            .collect();
        let near = |dice: &mut Dice, at: usize, of: usize, among: usize| -> usize {
            if dice.chance(size.neighbourly) {
                let middle = at * among / of.max(1);
                (middle + dice.below(5)).saturating_sub(2).min(among - 1)
            } else {
                dice.below(among)
            }
        };
        for cause in 0..causes {
            for _ in 0..1 + dice.below(3) {
                let to = near(&mut dice, cause, causes, mechanisms);
                add(&mut into[to].1, cause, 0.0, dice.between(0.2, 0.95));
            }
        }
        for (to, (_, parents)) in into.iter_mut().enumerate() {
            if parents.is_empty() {
                let cause = near(&mut dice, to, mechanisms, causes);
                add(parents, cause, 0.0, dice.between(0.2, 0.95));
            }
            if to > 0 && dice.chance(0.2) {
                let from = dice.below(to);
                add(parents, all_causes + from, 0.0, dice.between(0.1, 0.8));
            }
        }
        let findings = (0..size.findings)
            .map(|at| {
                let graded = dice.chance(0.5);
                let mut finding = InventedFinding {
                    graded,
                    normally_present: !graded && dice.chance(0.3),
                    leak_low: if graded {
                        dice.between(0.001, 0.05)
                    } else {
                        0.0
                    },
                    leak_high: dice.between(0.001, 0.05),
                    instrument: match dice.below(instruments.max(1)) {
                        _ if at < instruments => Some(causes + at),
                        any if instruments > 0 && dice.chance(0.6) => Some(causes + any),
                        _ => None,
                    },
                    reliability: if dice.chance(0.5) {
                        1.0
                    } else {
                        dice.between(0.7, 1.0)
                    },
                    parents: Vec::new(),
                };
                for nth in 0..1 + dice.below(size.finding_parents) {
                    let parent = if nth == 0 && at < mechanisms {
                        all_causes + at
                    } else if dice.chance(0.85) {
                        all_causes + near(&mut dice, at, size.findings, mechanisms)
                    } else {
                        near(&mut dice, at, size.findings, causes)
                    };
                    let strong = dice.between(0.2, 0.95);
                    let weak = if dice.chance(0.3) {
                        dice.between(0.01, 0.05)
                    } else {
                        0.0
                    };
                    let (low, high) = match (graded, dice.chance(0.5)) {
                        (false, _) => (0.0, strong),
                        (true, false) => (weak, strong),
                        (true, true) => (strong, weak),
                    };
                    add(&mut finding.parents, parent, low, high);
                }
                finding
            })
            .collect();
        // Drawn last, so that the rest of a graph does not hang on it.
        let call_leak = dice.between(0.02, 0.3);
        let mut calls = || match dice.chance(0.2) {
            true => 0.0,
            false => dice.between(0.05, 0.99),
        };
        Self {
            calls: (0..all_causes).map(|_| calls()).collect(),
            call_leak,
            priors,
            instruments,
            mechanisms: into,
            findings,
        }
    }

    /// Name of a cause or mechanism, numbered together.
    #[must_use]
    pub fn name(&self, node: usize) -> String {
        match node.checked_sub(self.priors.len()) {
            None => format!("c{node}"),
            Some(mechanism) => format!("m{mechanism}"),
        }
    }

    /// The graph as a file of the rule graph.
    #[must_use]
    pub fn to_toml(&self) -> String {
        let mut text = format!(
            "[[call]]\nleak = {:?}\nloop = 0.5\nunit = 0.5\nnormal = 0.5\ninstrument = 0.5\n\
             source = \"judgement\"\n[[family]]\nid = \"invented\"\n",
            self.call_leak
        );
        let faults = self.priors.len() - self.instruments;
        for (at, prior) in self.priors.iter().enumerate() {
            let kind = match at {
                _ if at >= faults => "instrument",
                _ if at % 9 == 7 => "unit",
                _ if at % 9 == 8 => "normal",
                _ => "loop",
            };
            let _ = write!(
                text,
                "[[cause]]\nid = \"c{at}\"\nfamily = \"invented\"\nkind = \"{kind}\"\n\
                 status = \"draft\"\nprior = {prior:?}\ncalls = {:?}\nsource = \"judgement\"\n",
                self.calls[at]
            );
        }
        let link = |text: &mut String, to: &str, arrow: &Arrow, graded: bool| {
            let from = self.name(arrow.parent);
            let _ = write!(text, "[[link]]\nfrom = \"{from}\"\nto = \"{to}\"\n");
            if !graded {
                let _ = writeln!(text, "strength = {:?}", arrow.high);
            } else {
                for (field, value) in [("low", arrow.low), ("high", arrow.high)] {
                    if value > 0.0 {
                        let _ = writeln!(text, "{field} = {value:?}");
                    }
                }
            }
            let _ = writeln!(text, "source = \"judgement\"");
        };
        for (at, (leak, parents)) in self.mechanisms.iter().enumerate() {
            let _ = write!(
                text,
                "[[mechanism]]\nid = \"m{at}\"\nleak = {leak:?}\nsource = \"judgement\"\n"
            );
            for arrow in parents {
                link(&mut text, &format!("m{at}"), arrow, false);
            }
        }
        for (at, finding) in self.findings.iter().enumerate() {
            let _ = writeln!(text, "[[finding]]\nid = \"f{at}\"\nevidence = \"symptom\"");
            let _ = writeln!(
                text,
                "reliability = {:?}\nsource = \"judgement\"",
                finding.reliability
            );
            if let Some(instrument) = finding.instrument {
                let _ = writeln!(text, "instrument = \"c{instrument}\"");
            }
            if finding.graded {
                let _ = writeln!(
                    text,
                    "levels = \"graded\"\nleak_low = {:?}\nleak_high = {:?}",
                    finding.leak_low, finding.leak_high
                );
            } else {
                let normal = if finding.normally_present {
                    "present"
                } else {
                    "absent"
                };
                let _ = writeln!(
                    text,
                    "levels = \"presence\"\nnormal = \"{normal}\"\nleak = {:?}",
                    finding.leak_high
                );
            }
            for arrow in &finding.parents {
                link(&mut text, &format!("f{at}"), arrow, finding.graded);
            }
            let minutes = 1 + at % 9;
            let _ = write!(
                text,
                "[[check]]\nid = \"k{at}\"\nminutes = {minutes}.0\nreveals = [\"f{at}\"]\n\
                 source = \"judgement\"\n"
            );
        }
        text
    }
}

/// Adds a parent unless it is there already.
fn add(parents: &mut Vec<Arrow>, parent: usize, low: f64, high: f64) {
    if parents.iter().all(|arrow| arrow.parent != parent) {
        parents.push(Arrow { parent, low, high });
    }
}
