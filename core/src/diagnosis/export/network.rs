//! The graph and a case as a plain Bayesian network: discrete variables, each
//! with its table.
//!
//! Causes and mechanisms become variables with the states `no` and `yes`,
//! findings keep their levels. Each reading becomes a child `seen_<finding>_<n>`
//! of its finding and its instrument, whose state `yes` has the reading's
//! likelihood; what was found about a cause itself becomes `seen_<cause>_itself`.
//! That somebody called is a noisy-OR over all causes, built link by link: one
//! variable `call_by_<cause>` after the other, "called because of this cause or
//! one before it", and the last of them, `seen_call`, is the call.
//! Setting every `seen_...` variable to `yes` is the case's evidence.
//! Hyphens of ids become underscores.

use crate::diagnosis::evidence::Case;
use crate::diagnosis::graph::{CallModel, Cause, Graph, Link, Parent, Push, Scale};
use crate::diagnosis::inference::cpt::levels;
use crate::diagnosis::inference::{CaseError, CaseParts, Observed};

const NO_YES: &[&str] = &["no", "yes"];

/// A variable and its distribution.
pub(super) struct Variable {
    pub(super) name: String,
    pub(super) states: &'static [&'static str],
    pub(super) parents: Vec<Given>,
    /// A row of probabilities for each combination of the parents' states, the
    /// last parent varying fastest.
    pub(super) rows: Vec<Vec<f64>>,
}

/// A parent and its states.
#[derive(Clone)]
pub(super) struct Given {
    pub(super) name: String,
    pub(super) states: &'static [&'static str],
}

impl Variable {
    /// The parents' states of each row.
    pub(super) fn combinations(&self) -> Vec<Vec<&'static str>> {
        self.parents.iter().fold(vec![Vec::new()], |so_far, given| {
            so_far
                .iter()
                .flat_map(|states| {
                    given.states.iter().map(move |&state| {
                        let mut longer = states.clone();
                        longer.push(state);
                        longer
                    })
                })
                .collect()
        })
    }
}

/// All variables; a mechanism's parents may come after it.
pub(super) fn variables(graph: &Graph, case: &Case) -> Result<Vec<Variable>, CaseError> {
    let CaseParts {
        priors,
        calls,
        observed,
        found,
    } = CaseParts::of(graph, case)?;
    let mut all = Vec::new();
    for (cause, prior) in graph.causes().iter().zip(priors) {
        all.push(Variable {
            name: name(cause.id.as_str()),
            states: NO_YES,
            parents: Vec::new(),
            rows: vec![vec![1.0 - prior, prior]],
        });
    }
    for mechanism in graph.mechanisms() {
        all.push(Variable {
            name: name(mechanism.id.as_str()),
            states: NO_YES,
            parents: parents(graph, &mechanism.parents),
            rows: rows(&mechanism.parents, |active| {
                let off = active
                    .iter()
                    .fold(1.0 - mechanism.leak, |off, push| off * (1.0 - push.high));
                vec![off, 1.0 - off]
            }),
        });
    }
    for finding in graph.findings() {
        all.push(Variable {
            name: name(finding.id.as_str()),
            states: states(finding.scale),
            parents: parents(graph, &finding.parents),
            rows: rows(&finding.parents, |active| {
                levels(finding, active.iter().copied())[..finding.scale.count()].to_vec()
            }),
        });
    }
    for observation in &observed {
        readings(&mut all, graph, observation);
    }
    for (cause, likelihood) in found {
        let cause = cause_given(graph, Parent::Cause(cause));
        all.push(Variable {
            name: format!("seen_{}_itself", cause.name),
            states: NO_YES,
            parents: vec![cause],
            rows: likelihood.map(|weight| vec![1.0 - weight, weight]).to_vec(),
        });
    }
    if let Some((call, calls)) = graph.call().zip(calls) {
        called(&mut all, graph, call, &calls);
    }
    Ok(all)
}

/// The links of the chain from the causes to the call.
fn called(all: &mut Vec<Variable>, graph: &Graph, call: &CallModel, calls: &[f64]) {
    let mut before: Option<Given> = None;
    let all_causes = graph.causes().iter().zip(calls);
    let callers: Vec<(&Cause, f64)> = all_causes
        .filter(|(_, calls)| **calls > 0.0)
        .map(|(cause, &calls)| (cause, calls))
        .collect();
    for (at, &(cause, calls)) in callers.iter().enumerate() {
        let own = name(cause.id.as_str());
        let caller = Given {
            name: own.clone(),
            states: NO_YES,
        };
        let row = |no: f64| vec![no, 1.0 - no];
        let silent = 1.0 - calls;
        let (parents, rows) = match before {
            None => {
                let none = 1.0 - call.leak;
                (vec![caller], vec![row(none), row(none * silent)])
            }
            Some(before) => (
                vec![before, caller],
                vec![row(1.0), row(silent), row(0.0), row(0.0)],
            ),
        };
        let name = if at + 1 == callers.len() {
            "seen_call".to_owned()
        } else {
            format!("call_by_{own}")
        };
        before = Some(Given {
            name: name.clone(),
            states: NO_YES,
        });
        all.push(Variable {
            name,
            states: NO_YES,
            parents,
            rows,
        });
    }
}

fn name(id: &str) -> String {
    id.replace('-', "_")
}

fn states(scale: Scale) -> &'static [&'static str] {
    match scale {
        Scale::NormallyAbsent | Scale::NormallyPresent => &["absent", "present"],
        Scale::Graded => &["low", "normal", "high"],
    }
}

fn cause_given(graph: &Graph, parent: Parent) -> Given {
    Given {
        name: name(graph.parent_id(parent)),
        states: NO_YES,
    }
}

fn parents(graph: &Graph, links: &[Link]) -> Vec<Given> {
    links
        .iter()
        .map(|link| cause_given(graph, link.parent))
        .collect()
}

fn rows(links: &[Link], distribution: impl Fn(&[Push]) -> Vec<f64>) -> Vec<Vec<f64>> {
    (0..1_usize << links.len())
        .map(|active| {
            let on: Vec<Push> = links
                .iter()
                .enumerate()
                .filter(|(at, _)| active >> (links.len() - 1 - at) & 1 == 1)
                .map(|(_, link)| link.push)
                .collect();
            distribution(&on)
        })
        .collect()
}

fn readings(all: &mut Vec<Variable>, graph: &Graph, observed: &Observed) {
    let finding = graph.finding(observed.finding);
    let own = name(finding.id.as_str());
    for (at, reading) in observed.readings().iter().enumerate() {
        let weights = &reading.weights[..finding.scale.count()];
        let largest = weights.iter().copied().fold(reading.if_lying, f64::max);
        let row = |weight: f64| vec![1.0 - weight / largest, weight / largest];
        let mut parents = vec![Given {
            name: own.clone(),
            states: states(finding.scale),
        }];
        let rows = match reading.instrument {
            None => weights.iter().map(|&weight| row(weight)).collect(),
            Some(instrument) => {
                parents.push(cause_given(graph, Parent::Cause(instrument)));
                weights
                    .iter()
                    .flat_map(|&weight| [row(weight), row(reading.if_lying)])
                    .collect()
            }
        };
        all.push(Variable {
            name: format!("seen_{own}_{}", at + 1),
            states: NO_YES,
            parents,
            rows,
        });
    }
}
