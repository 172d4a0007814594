//! The network in XMLBIF 0.3.
//!
//! Source: F. Cozman, "The Interchange Format for Bayesian Networks", XMLBIF
//! version 0.3 (1998), from memory: a table lists its numbers in the counting
//! order of the given variables, the variable itself varying fastest.

use std::fmt::{self, Write};

use super::network::{Variable, variables};
use crate::diagnosis::evidence::Case;
use crate::diagnosis::graph::Graph;
use crate::diagnosis::inference::CaseError;

/// The graph with the priors and readings of a case, as XMLBIF text. Names are
/// ids and need no escaping.
///
/// # Errors
/// As for working the case out, except that an impossible case is exported.
pub fn to_xmlbif(graph: &Graph, case: &Case) -> Result<String, CaseError> {
    let all = variables(graph, case)?;
    let mut text = String::from(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<BIF VERSION=\"0.3\">\n<NETWORK>\n\
         <NAME>returnline</NAME>\n",
    );
    // Writing to a string cannot fail.
    for variable in &all {
        let _ = declare(&mut text, variable);
    }
    for variable in &all {
        let _ = define(&mut text, variable);
    }
    text.push_str("</NETWORK>\n</BIF>\n");
    Ok(text)
}

fn declare(text: &mut String, variable: &Variable) -> fmt::Result {
    write!(
        text,
        "<VARIABLE TYPE=\"nature\"><NAME>{}</NAME>",
        variable.name
    )?;
    for state in variable.states {
        write!(text, "<OUTCOME>{state}</OUTCOME>")?;
    }
    writeln!(text, "</VARIABLE>")
}

fn define(text: &mut String, variable: &Variable) -> fmt::Result {
    write!(text, "<DEFINITION><FOR>{}</FOR>", variable.name)?;
    for given in &variable.parents {
        write!(text, "<GIVEN>{}</GIVEN>", given.name)?;
    }
    let numbers: Vec<String> = variable.rows.iter().flatten().map(f64::to_string).collect();
    writeln!(text, "<TABLE>{}</TABLE></DEFINITION>", numbers.join(" "))
}
