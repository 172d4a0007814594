//! Every procedure and every pair of procedures makes a plan that keeps the rules.

use super::{Fault, Problem};
use crate::fluids::FluidKind;
use crate::plan::rules::violations;
use crate::plan::terms::FlowCentreKind;
use crate::plan::{KnownCentre, Library, Situation, Treatment, assemble};

/// Situations that differ in which steps apply.
pub(in crate::plan) fn situations() -> Vec<Situation> {
    let known = FlowCentreKind::ALL.map(KnownCentre::Kind);
    let centres = [KnownCentre::Unknown, KnownCentre::Closed]
        .into_iter()
        .chain(known);
    // Other kinds of fluid differ in cautions only, not in steps.
    let fluids = [None, Some(FluidKind::Water)];
    centres
        .flat_map(|flow_centre| fluids.map(|fluid| Situation { flow_centre, fluid }))
        .collect()
}

/// Assembles every procedure alone and every ordered pair, in every situation,
/// and holds each plan against the rules. Some seconds in a debug build.
pub fn plans(library: &Library) -> Vec<Problem> {
    let mut problems = Vec::new();
    for situation in situations() {
        for first in library.procedures() {
            for second in library.procedures() {
                let treatments = [first, second].map(|procedure| Treatment {
                    cause: procedure.id.to_string(),
                    procedure: procedure.id.clone(),
                });
                let mut add = |fault: Fault| {
                    problems.push(Problem {
                        check: "plans-hold",
                        file: String::new(),
                        subject: format!("{} and {}", first.id, second.id),
                        fault,
                    });
                };
                match assemble(library, &treatments, &situation) {
                    Err(error) => add(error.into()),
                    Ok(plan) => violations(library, &plan)
                        .into_iter()
                        .for_each(|violation| add(violation.into())),
                }
            }
        }
    }
    problems
}
