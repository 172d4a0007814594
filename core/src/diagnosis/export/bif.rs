//! The network in the Bayesian Interchange Format (BIF 0.15).
//!
//! Source: F. Cozman, "The Interchange Format for Bayesian Networks" (1998), from memory.

use std::fmt::{self, Write};

use super::network::{Variable, variables};
use crate::diagnosis::evidence::Case;
use crate::diagnosis::graph::Graph;
use crate::diagnosis::inference::CaseError;

/// The graph with the priors and readings of a case, as BIF text.
///
/// # Errors
/// As for working the case out, except that an impossible case is exported.
pub fn to_bif(graph: &Graph, case: &Case) -> Result<String, CaseError> {
    let mut text = String::from("network returnline {\n}\n");
    let all = variables(graph, case)?;
    // All declarations first: a table may name a parent that comes after it.
    // Writing to a string cannot fail.
    for variable in &all {
        let _ = declare(&mut text, variable);
    }
    for variable in &all {
        let _ = define(&mut text, variable);
    }
    Ok(text)
}

fn declare(text: &mut String, variable: &Variable) -> fmt::Result {
    let own = &variable.name;
    let (count, states) = (variable.states.len(), variable.states.join(", "));
    writeln!(
        text,
        "variable {own} {{\n  type discrete [ {count} ] {{ {states} }};\n}}"
    )
}

fn define(text: &mut String, variable: &Variable) -> fmt::Result {
    let own = &variable.name;
    if variable.parents.is_empty() {
        writeln!(text, "probability ( {own} ) {{")?;
        for row in &variable.rows {
            writeln!(text, "  table {};", numbers(row))?;
        }
    } else {
        let parents = variable.parents.iter().map(|given| given.name.as_str());
        let parents: Vec<&str> = parents.collect();
        writeln!(text, "probability ( {own} | {} ) {{", parents.join(", "))?;
        for (given, row) in variable.combinations().iter().zip(&variable.rows) {
            writeln!(text, "  ({}) {};", given.join(", "), numbers(row))?;
        }
    }
    writeln!(text, "}}")
}

fn numbers(values: &[f64]) -> String {
    let values: Vec<String> = values.iter().map(f64::to_string).collect();
    values.join(", ")
}
