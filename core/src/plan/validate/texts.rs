//! Every word that people read is in every catalog.

use super::{Fault, Problem};
use crate::plan::Library;
use crate::plan::quantity::{Lack, QuantityKind, Remark, Stood};
use crate::plan::terms::{
    FlowCentreKind, Hazard, Observation, ProofTime, Rule, Section, Side, Stage, TimerKind,
};
use crate::pressure::belief::Unknown;

/// The keys that a catalog must hold, each with the entry that needs it.
pub fn text_keys(library: &Library) -> Vec<(String, String)> {
    let mut keys = Vec::new();
    let mut need = |prefix: &str, id: &str| {
        keys.push((id.to_owned(), format!("{prefix}-{id}")));
    };
    for procedure in library.procedures() {
        need("procedure", procedure.id.as_str());
    }
    for step in library.steps() {
        need("plan-step", step.id.as_str());
    }
    for id in library.cautions.keys() {
        need("plan-caution", id.as_str());
    }
    for id in &library.tools {
        need("plan-tool", id.as_str());
    }
    for id in library.sources() {
        need("source", id.as_str());
    }
    for id in library.materials.keys() {
        need("plan-material", id.as_str());
    }
    macro_rules! terms {
        ($($kind:ident $prefix:literal),*) => {$(
            for term in $kind::ALL {
                need($prefix, term.id());
            }
        )*};
    }
    terms!(
        Stage "plan-stage",
        Side "plan-side",
        Section "plan-section",
        Hazard "plan-hazard",
        Observation "plan-observation",
        TimerKind "plan-timer",
        Rule "plan-rule",
        ProofTime "plan-proof-time",
        FlowCentreKind "plan-flow-centre",
        QuantityKind "plan-quantity"
    );
    for lack in Lack::ALL {
        need("plan-lack", lack.id());
    }
    for id in Remark::IDS {
        need("plan-remark", id);
    }
    for id in Stood::IDS {
        need("plan-stood", id);
    }
    for unknown in Unknown::ALL.map(Unknown::id).into_iter().chain(["none"]) {
        need("plan-narrow", unknown);
    }
    keys
}

/// The texts that a catalog lacks.
pub fn texts(library: &Library, language: &str, has: impl Fn(&str) -> bool) -> Vec<Problem> {
    text_keys(library)
        .into_iter()
        .filter(|(_, key)| !has(key))
        .map(|(subject, key)| Problem {
            check: "texts-exist",
            file: String::new(),
            subject,
            fault: Fault::MissingText {
                language: language.to_owned(),
                key,
            },
        })
        .collect()
}
