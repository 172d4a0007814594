//! What must hold of the plan of every call handed over, whatever it is about.

use returnline_core::api::types::PlanView;
use returnline_core::api::{Call, Wording};
use returnline_tests::handed::handed_over;
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::LazyLock;

/// Worked out once for all checks.
static PLANS: LazyLock<Vec<(String, PlanView)>> = LazyLock::new(plans);

/// The plans of the calls of both folders.
fn plans() -> Vec<(String, PlanView)> {
    let folder = Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/cases"));
    let folders = ["calls", "second_calls"].map(|name| folder.join(name));
    let calls = folders.iter().flat_map(|folder| handed_over(folder));
    let plan = calls.filter_map(|(truth, file)| {
        let call = Call::assess(
            &file,
            file.visit.date.unwrap_or_default(),
            Wording::default(),
        );
        Some((truth.file, call.answer().plan.clone()?))
    });
    let plans: Vec<(String, PlanView)> = plan.collect();
    assert!(plans.len() > 60, "{}", plans.len());
    plans
}

#[test]
fn no_plan_corrects_a_fault_and_leaves_it_alone_as_well() {
    for (name, plan) in &*PLANS {
        let alone = |line: &String| line.contains("leave it alone");
        let left = plan.treats.iter().filter(|line| alone(line)).count();
        assert!(
            left == 0 || left == plan.treats.len(),
            "{name}: {:?}",
            plan.treats
        );
    }
}

#[test]
fn a_reading_is_held_to_one_band_at_one_time() {
    for (name, plan) in &*PLANS {
        let mut seen = BTreeMap::new();
        for proof in &plan.proof {
            let other = seen.insert(&proof.label, &proof.expected);
            assert!(other.is_none(), "{name}: {} twice", proof.label);
        }
    }
}

fn plan_of(file: &str) -> &'static PlanView {
    let found = PLANS.iter().find(|(name, _)| name == file);
    found.map(|(_, plan)| plan).expect("a plan of this call")
}

/// By the readings of the calls: 23 °F where the water leaves at 23.6 °F, and a flow meter
/// that shows full flow with one circulator dead.
#[test]
fn what_could_do_harm_or_mislead_is_met_whatever_leads() {
    let weak = plan_of("antifreeze-too-weak.json");
    assert_eq!(weak.steps[0].id, "keep-unit-off");
    assert!(weak.steps.iter().any(|step| step.id == "dose-antifreeze"));
    let dead = plan_of("one-circulator-dead.json");
    assert!(dead.steps.iter().any(|step| step.id == "check-flow-meter"));
    let by_meter = |label: &str| label.starts_with("Flow by meter");
    assert!(!dead.proof.iter().any(|proof| by_meter(&proof.label)));
}
