//! From the graph and the observations to the tables that a tree sums.

use super::cpt::{Union, levels_of_union};
use super::tree::{MAX_STATES, Table};
use crate::diagnosis::graph::{CauseIx, Finding, FindingIx, Graph, Link, Parent, Push};

/// A mechanism with at most this many parents is one table; above it the
/// contributions are joined one parent after the other in a chain of hidden
/// variables, so that tables stay small however many parents there are.
const MECHANISM_TABLE_PARENTS: usize = 3;
/// The same for an observed finding.
const FINDING_TABLE_PARENTS: usize = 4;

const NO_PUSH: Push = Push {
    low: 0.0,
    high: 0.0,
};

/// One reading of a finding: a weight for each level, and what it is read with.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::diagnosis) struct Reading {
    pub(in crate::diagnosis) weights: [f64; 3],
    pub(in crate::diagnosis) instrument: Option<CauseIx>,
    pub(in crate::diagnosis) if_lying: f64,
}

/// All readings of one finding.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::diagnosis) struct Observed {
    pub(in crate::diagnosis) finding: FindingIx,
    pub(super) readings: Vec<Reading>,
}

impl Observed {
    /// Product over the readings of P(reading | level), the instruments'
    /// states given as bits in the order of [`Observed::instruments`].
    fn weight(&self, level: usize, instruments: &[CauseIx], lying: usize) -> f64 {
        self.readings
            .iter()
            .map(|reading| {
                let lies = reading.instrument.is_some_and(|instrument| {
                    instruments
                        .iter()
                        .position(|&other| other == instrument)
                        .is_some_and(|at| lying >> at & 1 == 1)
                });
                if lies {
                    reading.if_lying
                } else {
                    reading.weights[level]
                }
            })
            .product()
    }

    /// The readings.
    pub(in crate::diagnosis) fn readings(&self) -> &[Reading] {
        &self.readings
    }

    /// The instruments of the readings, each once.
    pub(in crate::diagnosis) fn instruments(&self) -> Vec<CauseIx> {
        let mut all: Vec<_> = self
            .readings
            .iter()
            .filter_map(|reading| reading.instrument)
            .collect();
        all.sort_unstable();
        all.dedup();
        all
    }

    /// The product of the sound weights for each level.
    pub(in crate::diagnosis) fn sound_weights(&self) -> [f64; 3] {
        [0, 1, 2].map(|level| self.weight(level, &[], 0))
    }
}

/// The tables of a case.
pub(super) struct Network {
    pub(super) cards: Vec<usize>,
    /// Tables of mechanisms, and of chains of observed findings.
    pub(super) fixed: Vec<Table>,
    /// One table for each observed finding.
    pub(super) evidence: Vec<Table>,
    /// The part of each evidence table that each level contributes.
    pub(super) evidence_by_level: Vec<Vec<Vec<f64>>>,
    causes: usize,
}

impl Network {
    pub(super) fn new(graph: &Graph, observed: &[Observed]) -> Self {
        let causes = graph.causes().len();
        let mut network = Self {
            cards: vec![2; causes + graph.mechanisms().len()],
            fixed: Vec::new(),
            evidence: Vec::new(),
            evidence_by_level: Vec::new(),
            causes,
        };
        let order = ParentOrder::of(graph);
        for (at, mechanism) in graph.mechanisms().iter().enumerate() {
            let leak = Push {
                low: 0.0,
                high: mechanism.leak,
            };
            let links = order.sorted(&mechanism.parents);
            network.add_mechanism(causes + at, leak, &links);
        }
        for observation in observed {
            let finding = graph.finding(observation.finding);
            let links = order.sorted(&finding.parents);
            network.add_observed(finding, observation, &links);
        }
        network
    }

    /// The variable of a parent.
    pub(super) fn variable(&self, parent: Parent) -> usize {
        variable(self.causes, parent)
    }

    fn add_mechanism(&mut self, own: usize, leak: Push, links: &[&Link]) {
        let links: Vec<Influence> = self.influences(links);
        if links.len() <= MECHANISM_TABLE_PARENTS {
            self.join_into(own, &[0, 2], leak, None, &links);
        } else {
            let (first, last) = links.split_at(links.len() - 1);
            let so_far = self.chain(&[0, 2], leak, first);
            self.join_into(own, &[0, 2], NO_PUSH, Some(so_far), last);
        }
    }

    /// Joins the leak and `links` into a chain of hidden variables and returns
    /// the variable at its end.
    fn chain(&mut self, sets: &[usize], leak: Push, links: &[Influence]) -> usize {
        let (first, others) = links.split_at(links.len().min(2));
        let mut so_far = self.hidden(sets.len());
        self.join_into(so_far, sets, leak, None, first);
        for link in others {
            let next = self.hidden(sets.len());
            self.join_into(
                next,
                sets,
                NO_PUSH,
                Some(so_far),
                std::slice::from_ref(link),
            );
            so_far = next;
        }
        so_far
    }

    fn hidden(&mut self, card: usize) -> usize {
        self.cards.push(card);
        self.cards.len() - 1
    }

    fn influences(&self, links: &[&Link]) -> Vec<Influence> {
        links
            .iter()
            .map(|link| Influence {
                variable: self.variable(link.parent),
                push: link.push,
            })
            .collect()
    }

    /// Adds P(`own` | `so_far`, parents of `links`): the union of `so_far`,
    /// the leak and the contributions of the active parents. The states of
    /// `own` and `so_far` stand for the direction sets in `sets`.
    fn join_into(
        &mut self,
        own: usize,
        sets: &[usize],
        leak: Push,
        so_far: Option<usize>,
        links: &[Influence],
    ) {
        let mut scope: Vec<usize> = so_far.into_iter().collect();
        scope.extend(links.iter().map(|link| link.variable));
        scope.push(own);
        let before = if so_far.is_some() { sets } else { &[0] };
        let mut values = Vec::with_capacity((before.len() << links.len()) * sets.len());
        for &set in before {
            let mut start = [0.0; 4];
            start[set] = 1.0;
            for active in 0..1_usize << links.len() {
                let union = links
                    .iter()
                    .enumerate()
                    .filter(|(at, _)| active >> (links.len() - 1 - at) & 1 == 1)
                    .fold(Union(start).join(Union::of(leak)), |union, (_, link)| {
                        union.join(Union::of(link.push))
                    });
                values.extend(sets.iter().map(|&set| union.0[set]));
            }
        }
        self.fixed.push(Table { scope, values });
    }

    fn add_observed(&mut self, finding: &Finding, observed: &Observed, links: &[&Link]) {
        let links = self.influences(links);
        let instruments = observed.instruments();
        let small = links.len() + instruments.len() <= FINDING_TABLE_PARENTS + 1
            && links.len() <= FINDING_TABLE_PARENTS;
        let (scope, by_level) = if small {
            self.whole_table(finding, observed, &instruments, &links)
        } else {
            let sets = direction_sets(finding, &links);
            let mut scope = vec![self.chain(sets, finding.leak, &links)];
            scope.extend(instruments.iter().map(|instrument| instrument.0));
            let mut by_level = vec![Vec::new(); finding.scale.count()];
            for &set in sets {
                let levels = levels_of_union(finding.scale, set);
                for lying in lying_states(instruments.len()) {
                    for (level, part) in by_level.iter_mut().enumerate() {
                        part.push(levels[level] * observed.weight(level, &instruments, lying));
                    }
                }
            }
            (scope, by_level)
        };
        let values = (0..by_level[0].len())
            .map(|cell| by_level.iter().map(|part| part[cell]).sum())
            .collect();
        self.evidence.push(Table { scope, values });
        self.evidence_by_level.push(by_level);
    }

    /// P(readings | parents, instruments) as one table. An instrument may also
    /// be a parent; it then appears once.
    fn whole_table(
        &self,
        finding: &Finding,
        observed: &Observed,
        instruments: &[CauseIx],
        links: &[Influence],
    ) -> (Vec<usize>, Vec<Vec<f64>>) {
        let mut scope: Vec<usize> = links.iter().map(|link| link.variable).collect();
        scope.extend(instruments.iter().map(|instrument| instrument.0));
        scope.sort_unstable();
        scope.dedup();
        let state = |cell: usize, variable: usize| {
            scope
                .iter()
                .position(|&other| other == variable)
                .is_some_and(|at| cell >> (scope.len() - 1 - at) & 1 == 1)
        };
        let mut by_level = vec![Vec::new(); finding.scale.count()];
        for cell in 0..1_usize << scope.len() {
            let active = links
                .iter()
                .filter(|link| state(cell, link.variable))
                .map(|link| link.push);
            let levels = super::cpt::levels(finding, active);
            let lying = instruments
                .iter()
                .enumerate()
                .filter(|(_, instrument)| state(cell, instrument.0))
                .fold(0, |bits, (at, _)| bits | 1 << at);
            for (level, part) in by_level.iter_mut().enumerate() {
                part.push(levels[level] * observed.weight(level, instruments, lying));
            }
        }
        (scope, by_level)
    }
}

/// The variable of a parent, in a graph with this many causes.
pub(super) fn variable(causes: usize, parent: Parent) -> usize {
    match parent {
        Parent::Cause(place) => place.0,
        Parent::Mechanism(place) => causes + place.0,
    }
}

struct Influence {
    variable: usize,
    push: Push,
}

/// Bits for which instruments lie, in the order of a table whose last instrument varies fastest.
fn lying_states(instruments: usize) -> impl Iterator<Item = usize> {
    (0..1_usize << instruments).map(move |cell| {
        (0..instruments)
            .filter(|at| cell >> (instruments - 1 - at) & 1 == 1)
            .fold(0, |bits, at| bits | 1 << at)
    })
}

/// The direction sets a finding can take: fewer states when it is never pushed one way.
fn direction_sets(finding: &Finding, links: &[Influence]) -> &'static [usize] {
    let any = |pick: fn(&Push) -> f64| {
        pick(&finding.leak) > 0.0 || links.iter().any(|link| pick(&link.push) > 0.0)
    };
    const ALL: [usize; MAX_STATES] = [0, 1, 2, 3];
    match (any(|push| push.low), any(|push| push.high)) {
        (true, true) => &ALL,
        (true, false) => &[0, 1],
        (false, _) => &[0, 2],
    }
}

/// Orders parents so that chains take private parents first and parents that
/// also lead elsewhere last, which keeps the hidden variables loosely coupled.
struct ParentOrder {
    causes: usize,
    children: Vec<usize>,
}

impl ParentOrder {
    fn of(graph: &Graph) -> Self {
        let causes = graph.causes().len();
        let mut children = vec![0; causes + graph.mechanisms().len()];
        let mechanisms = graph
            .mechanisms()
            .iter()
            .map(|mechanism| &mechanism.parents);
        for link in mechanisms.flatten() {
            children[variable(causes, link.parent)] += 1;
        }
        Self { causes, children }
    }

    fn sorted<'a>(&self, links: &'a [Link]) -> Vec<&'a Link> {
        let mut links: Vec<_> = links.iter().collect();
        links.sort_by_key(|link| {
            let variable = variable(self.causes, link.parent);
            (self.children[variable], variable)
        });
        links
    }
}
