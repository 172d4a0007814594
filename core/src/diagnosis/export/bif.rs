//! The graph and a case in the Bayesian Interchange Format (BIF 0.15).
//!
//! Causes and mechanisms become variables with the states `no` and `yes`,
//! findings keep their levels. Each reading becomes a child `seen_<finding>_<n>`
//! of its finding and its instrument, whose state `yes` has the reading's
//! likelihood: setting every `seen_...` variable to `yes` is the case's evidence.
//! Hyphens of ids become underscores.
//!
//! Source: F. Cozman, "The Interchange Format for Bayesian Networks" (1998), from memory.

use std::fmt::{self, Write};

use crate::diagnosis::evidence::Case;
use crate::diagnosis::graph::{Graph, Link, Parent, Push, Scale};
use crate::diagnosis::inference::cpt::levels;
use crate::diagnosis::inference::{CaseError, Observed, case_parts};

const NO_YES: &[&str] = &["no", "yes"];

/// The graph with the priors and readings of a case, as BIF text.
///
/// # Errors
/// As for working the case out, except that an impossible case is exported.
pub fn to_bif(graph: &Graph, case: &Case) -> Result<String, CaseError> {
    let (priors, observed) = case_parts(graph, case)?;
    let mut text = String::from("network returnline {\n}\n");
    // Writing to a string cannot fail.
    let _ = write_graph(&mut text, graph, &priors);
    for observation in &observed {
        let _ = write_readings(&mut text, graph, observation);
    }
    Ok(text)
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

fn write_graph(text: &mut String, graph: &Graph, priors: &[f64]) -> fmt::Result {
    for (cause, prior) in graph.causes().iter().zip(priors) {
        let own = name(cause.id.as_str());
        variable(text, &own, NO_YES)?;
        writeln!(
            text,
            "probability ( {own} ) {{\n  table {}, {prior};\n}}",
            1.0 - prior
        )?;
    }
    for mechanism in graph.mechanisms() {
        let own = name(mechanism.id.as_str());
        variable(text, &own, NO_YES)?;
        conditional(text, graph, &own, &mechanism.parents, |active| {
            let off = active
                .iter()
                .fold(1.0 - mechanism.leak, |off, push: &Push| {
                    off * (1.0 - push.high)
                });
            vec![off, 1.0 - off]
        })?;
    }
    for finding in graph.findings() {
        let own = name(finding.id.as_str());
        variable(text, &own, states(finding.scale))?;
        conditional(text, graph, &own, &finding.parents, |active| {
            levels(finding, active.iter().copied())[..finding.scale.count()].to_vec()
        })?;
    }
    Ok(())
}

fn variable(text: &mut String, own: &str, states: &[&str]) -> fmt::Result {
    let (count, list) = (states.len(), states.join(", "));
    writeln!(
        text,
        "variable {own} {{\n  type discrete [ {count} ] {{ {list} }};\n}}"
    )
}

fn conditional(
    text: &mut String,
    graph: &Graph,
    own: &str,
    links: &[Link],
    distribution: impl Fn(&[Push]) -> Vec<f64>,
) -> fmt::Result {
    let parents: Vec<String> = links
        .iter()
        .map(|link| name(graph.parent_id(link.parent)))
        .collect();
    if parents.is_empty() {
        return writeln!(
            text,
            "probability ( {own} ) {{\n  table {};\n}}",
            row(&distribution(&[]))
        );
    }
    writeln!(text, "probability ( {own} | {} ) {{", parents.join(", "))?;
    for active in 0..1_usize << links.len() {
        let is_on = |at: usize| active >> (links.len() - 1 - at) & 1 == 1;
        let on: Vec<Push> = (0..links.len())
            .filter(|&at| is_on(at))
            .map(|at| links[at].push)
            .collect();
        let given: Vec<&str> = (0..links.len())
            .map(|at| NO_YES[usize::from(is_on(at))])
            .collect();
        writeln!(
            text,
            "  ({}) {};",
            given.join(", "),
            row(&distribution(&on))
        )?;
    }
    writeln!(text, "}}")
}

fn row(values: &[f64]) -> String {
    let values: Vec<String> = values.iter().map(f64::to_string).collect();
    values.join(", ")
}

fn write_readings(text: &mut String, graph: &Graph, observed: &Observed) -> fmt::Result {
    let finding = graph.finding(observed.finding);
    for (at, reading) in observed.readings().iter().enumerate() {
        let own = format!("seen_{}_{}", name(finding.id.as_str()), at + 1);
        variable(text, &own, NO_YES)?;
        let weights = &reading.weights[..finding.scale.count()];
        let largest = weights.iter().copied().fold(reading.if_lying, f64::max);
        let of = |weight: f64| row(&[1.0 - weight / largest, weight / largest]);
        let parent = name(finding.id.as_str());
        match reading.instrument {
            None => {
                writeln!(text, "probability ( {own} | {parent} ) {{")?;
                for (state, &weight) in states(finding.scale).iter().zip(weights) {
                    writeln!(text, "  ({state}) {};", of(weight))?;
                }
            }
            Some(instrument) => {
                let instrument = name(graph.parent_id(Parent::Cause(instrument)));
                writeln!(text, "probability ( {own} | {parent}, {instrument} ) {{")?;
                for (state, &weight) in states(finding.scale).iter().zip(weights) {
                    writeln!(text, "  ({state}, no) {};", of(weight))?;
                    writeln!(text, "  ({state}, yes) {};", of(reading.if_lying))?;
                }
            }
        }
        writeln!(text, "}}")?;
    }
    Ok(())
}
