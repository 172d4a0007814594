//! From the graph and the observations to the tables that a tree sums.

use super::cpt::{Union, levels_from};
use super::joining::{Family, Joining, Part, joining};
use super::tree::{MAX_STATES, Table};
use crate::diagnosis::graph::{CauseIx, Finding, FindingIx, Graph, Link, Mechanism, Parent, Push};

/// A mechanism with at most this many parents is one table; above it the
/// contributions are joined step by step (see `joining`), so that tables stay
/// small however many parents there are.
const MECHANISM_TABLE_PARENTS: usize = 2;
/// An observed finding with at most this many parents and instruments is one table.
const FINDING_TABLE_SCOPE: usize = 3;

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
    /// Tables of mechanisms, and of the unions of large families.
    pub(super) fixed: Vec<Table>,
    /// One table for each observed finding.
    pub(super) evidence: Vec<Table>,
    /// The part of each evidence table that each level contributes.
    pub(super) evidence_by_level: Vec<Vec<Vec<f64>>>,
}

/// A large family on its way to tables.
struct Large {
    influences: Vec<Influence>,
    /// The direction sets that the states of its union stand for.
    sets: &'static [usize],
    used_by: User,
}

/// What a union is used by.
#[derive(Clone, Copy, PartialEq, Eq)]
enum User {
    /// The mechanism at this place.
    Mechanism(usize),
    /// The observation at this place.
    Observation(usize),
}

/// What is joined in a table: a parent, or a union found before.
#[derive(Clone, Copy)]
enum Input {
    Parent(Influence),
    Union(usize),
}

const HIGH_ONLY: &[usize] = &[0, 2];
const LOW_ONLY: &[usize] = &[0, 1];
const BOTH: &[usize; MAX_STATES] = &[0, 1, 2, 3];

impl Network {
    pub(super) fn new(graph: &Graph, observed: &[Observed]) -> Self {
        let causes = graph.causes().len();
        let mut network = Self {
            cards: vec![2; causes + graph.mechanisms().len()],
            fixed: Vec::new(),
            evidence: Vec::new(),
            evidence_by_level: Vec::new(),
        };
        let influences = |links: &[Link]| -> Vec<Influence> {
            links
                .iter()
                .map(|link| Influence {
                    variable: variable(causes, link.parent),
                    push: link.push,
                })
                .collect()
        };
        let mut large = Vec::new();
        for (at, mechanism) in graph.mechanisms().iter().enumerate() {
            let links = influences(&mechanism.parents);
            if links.len() <= MECHANISM_TABLE_PARENTS {
                let inputs: Vec<Input> = links.into_iter().map(Input::Parent).collect();
                network.join_into(causes + at, HIGH_ONLY, HIGH_ONLY, leak(mechanism), &inputs);
            } else {
                large.push(Large {
                    influences: links,
                    sets: HIGH_ONLY,
                    used_by: User::Mechanism(at),
                });
            }
        }
        for (at, observation) in observed.iter().enumerate() {
            let finding = graph.finding(observation.finding);
            let links = influences(&finding.parents);
            let instruments = observation.instruments();
            if links.len() + instruments.len() <= FINDING_TABLE_SCOPE {
                let (scope, by_level) = whole_table(finding, observation, &instruments, &links);
                network.add_evidence(scope, by_level);
            } else {
                // Its table follows once its unions have their variables.
                network.add_evidence(Vec::new(), vec![vec![1.0]; finding.scale.count()]);
                large.extend(
                    by_direction(links)
                        .into_iter()
                        .map(|(sets, influences)| Large {
                            influences,
                            sets,
                            used_by: User::Observation(at),
                        }),
                );
            }
        }
        let unions = network.join_all(causes, observed, &large);
        for (at, mechanism) in graph.mechanisms().iter().enumerate() {
            if let Some(place) = large
                .iter()
                .position(|family| family.used_by == User::Mechanism(at))
            {
                network.join_into(
                    causes + at,
                    HIGH_ONLY,
                    HIGH_ONLY,
                    leak(mechanism),
                    &unions[place],
                );
            }
        }
        for (at, observation) in observed.iter().enumerate() {
            let own: Vec<(&'static [usize], usize)> = large
                .iter()
                .zip(&unions)
                .filter(|(family, _)| family.used_by == User::Observation(at))
                .map(|(family, inputs)| {
                    let union = network.hidden(family.sets.len());
                    network.join_into(union, family.sets, family.sets, NO_PUSH, inputs);
                    (family.sets, union)
                })
                .collect();
            if !own.is_empty() {
                let finding = graph.finding(observation.finding);
                let (scope, by_level) = union_table(finding, observation, &own);
                network.evidence[at] = total(scope, &by_level);
                network.evidence_by_level[at] = by_level;
            }
        }
        network
    }

    /// Joins the large families and returns what is left to join of each.
    fn join_all(
        &mut self,
        causes: usize,
        observed: &[Observed],
        large: &[Large],
    ) -> Vec<Vec<Input>> {
        let families: Vec<Family> = large
            .iter()
            .map(|family| Family {
                parents: family
                    .influences
                    .iter()
                    .map(|influence| influence.variable)
                    .collect(),
                beside: match family.used_by {
                    User::Mechanism(at) => vec![causes + at],
                    User::Observation(at) => {
                        observed[at].instruments().iter().map(|i| i.0).collect()
                    }
                },
                card: family.sets.len(),
            })
            .collect();
        let scopes: Vec<&[usize]> = self
            .fixed
            .iter()
            .chain(&self.evidence)
            .map(|table| table.scope.as_slice())
            .collect();
        let Joining { steps, rest } = joining(&self.cards, &scopes, &families);
        let first = self.cards.len();
        let input = |family: usize, part: Part| match part {
            Part::Parent(place) => Input::Parent(large[family].influences[place]),
            Part::Step(step) => Input::Union(first + step),
        };
        for step in &steps {
            let sets = large[step.family].sets;
            let own = self.hidden(sets.len());
            let inputs = step.parts.map(|part| input(step.family, part));
            self.join_into(own, sets, sets, NO_PUSH, &inputs);
        }
        rest.iter()
            .enumerate()
            .map(|(family, parts)| parts.iter().map(|&part| input(family, part)).collect())
            .collect()
    }

    fn hidden(&mut self, card: usize) -> usize {
        self.cards.push(card);
        self.cards.len() - 1
    }

    /// Adds P(`own` | inputs): the union of the leak and the inputs'
    /// contributions. The states of `own` stand for the direction sets in
    /// `sets`, those of unions among the inputs for the ones in `before`.
    fn join_into(
        &mut self,
        own: usize,
        sets: &[usize],
        before: &[usize],
        leak: Push,
        inputs: &[Input],
    ) {
        let mut unions = vec![Union::of(leak)];
        let mut scope = Vec::with_capacity(inputs.len() + 1);
        for input in inputs {
            let contributions: Vec<Union> = match input {
                Input::Parent(influence) => {
                    scope.push(influence.variable);
                    vec![Union::of(NO_PUSH), Union::of(influence.push)]
                }
                Input::Union(variable) => {
                    scope.push(*variable);
                    before.iter().map(|&set| Union::certain(set)).collect()
                }
            };
            unions = unions
                .iter()
                .flat_map(|union| contributions.iter().map(|other| union.join(*other)))
                .collect();
        }
        scope.push(own);
        let values = unions
            .iter()
            .flat_map(|union| sets.iter().map(|&set| union.0[set]))
            .collect();
        self.fixed.push(Table { scope, values });
    }

    fn add_evidence(&mut self, scope: Vec<usize>, by_level: Vec<Vec<f64>>) {
        self.evidence.push(total(scope, &by_level));
        self.evidence_by_level.push(by_level);
    }
}

fn leak(mechanism: &Mechanism) -> Push {
    Push {
        low: 0.0,
        high: mechanism.leak,
    }
}

/// The table of an observation from what each level contributes.
fn total(scope: Vec<usize>, by_level: &[Vec<f64>]) -> Table {
    let values = (0..by_level[0].len())
        .map(|cell| by_level.iter().map(|part| part[cell]).sum())
        .collect();
    Table { scope, values }
}

/// Families of a finding: one for each direction if no parent pushes both
/// ways, so that their unions stay apart.
fn by_direction(links: Vec<Influence>) -> Vec<(&'static [usize], Vec<Influence>)> {
    let low = |link: &Influence| link.push.low > 0.0;
    let high = |link: &Influence| link.push.high > 0.0;
    if links.iter().any(|link| low(link) && high(link)) {
        return vec![(BOTH, links)];
    }
    let (downward, upward): (Vec<_>, Vec<_>) = links.into_iter().partition(low);
    let families = [(LOW_ONLY, downward), (HIGH_ONLY, upward)];
    families
        .into_iter()
        .filter(|(_, links)| !links.is_empty())
        .collect()
}

/// P(readings | unions, instruments), the leak taken in.
fn union_table(
    finding: &Finding,
    observed: &Observed,
    unions: &[(&'static [usize], usize)],
) -> (Vec<usize>, Vec<Vec<f64>>) {
    let instruments = observed.instruments();
    let mut scope: Vec<usize> = unions.iter().map(|&(_, union)| union).collect();
    scope.extend(instruments.iter().map(|instrument| instrument.0));
    let mut cells = vec![0_usize];
    for (sets, _) in unions {
        cells = cells
            .iter()
            .flat_map(|cell| sets.iter().map(move |set| cell | set))
            .collect();
    }
    let mut by_level = vec![Vec::new(); finding.scale.count()];
    for set in cells {
        let levels = levels_from(
            finding.scale,
            Union::certain(set).join(Union::of(finding.leak)),
        );
        for lying in lying_states(instruments.len()) {
            for (level, part) in by_level.iter_mut().enumerate() {
                part.push(levels[level] * observed.weight(level, &instruments, lying));
            }
        }
    }
    (scope, by_level)
}

/// P(readings | parents, instruments) as one table. An instrument may also
/// be a parent; it then appears once.
fn whole_table(
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

/// The variable of a parent, in a graph with this many causes.
pub(super) fn variable(causes: usize, parent: Parent) -> usize {
    match parent {
        Parent::Cause(place) => place.0,
        Parent::Mechanism(place) => causes + place.0,
    }
}

#[derive(Clone, Copy)]
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
