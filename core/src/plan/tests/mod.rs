//! Plans made from the shipped procedures, alone, in pairs and in larger sets.

mod order;
mod quantities;
mod spoilt;

use super::rules::{Violation, violations};
use super::*;
use crate::fluids::FluidKind;
use std::sync::LazyLock;

static LIBRARY: LazyLock<Library> = LazyLock::new(|| load().unwrap());

fn treatments(procedures: &[&str]) -> Vec<Treatment> {
    procedures
        .iter()
        .map(|procedure| Treatment {
            cause: format!("cause-of-{procedure}"),
            procedure: ProcedureId::new(procedure),
        })
        .collect()
}

fn plan(procedures: &[&str], situation: Situation) -> WorkPlan {
    assemble(&LIBRARY, &treatments(procedures), &situation).unwrap()
}

const SEALED: Situation = Situation {
    flow_centre: KnownCentre::Kind(FlowCentreKind::Sealed),
    fluid: Some(FluidKind::PropyleneGlycol),
};

fn position(plan: &WorkPlan, id: &str) -> Option<usize> {
    plan.steps.iter().position(|step| step.id.as_str() == id)
}

/// The ids come in the plan, in this order.
fn holds_in_order(plan: &WorkPlan, ids: &[&str]) {
    let places: Vec<Option<usize>> = ids.iter().map(|id| position(plan, id)).collect();
    assert!(places.iter().all(Option::is_some), "{ids:?} {places:?}");
    assert!(places.is_sorted(), "{ids:?} {places:?}");
}

#[test]
fn air_and_weak_antifreeze_are_treated_in_one_visit() {
    let plan = plan(&["correct-freeze-point-dose", "purge-loop"], SEALED);
    holds_in_order(
        &plan,
        &[
            "lock-power-off",
            "sample-as-found",
            "bleed-ports",
            "connect-cart",
            "valve-off-unit",
            "purge-loop-side",
            "check-no-bubbles",
            "purge-unit-side",
            "dead-head-test",
            "drain-before-dose",
            "dose-antifreeze",
            "mix-loop",
            "sample-two",
            "stretch-pipe",
            "charge-to-pressure",
            "hold-test",
            "set-valves-to-run",
            "bleed-hoses",
            "disconnect-cart",
            "bleed-circulators",
            "restore-power",
            "start-circulators",
            "prove-flow",
            "tell-owner",
        ],
    );
}

const VENTED: Situation = Situation {
    flow_centre: KnownCentre::Kind(FlowCentreKind::NonPressurised),
    ..SEALED
};

#[test]
fn thinning_and_strengthening_are_not_done_together() {
    let thin = plan(&["dilute", "correct-freeze-point-dose"], SEALED);
    assert!(position(&thin, "drain-and-dilute").is_some());
    assert!(position(&thin, "dose-antifreeze").is_none());
    let strong = plan(&["correct-freeze-point-dose", "dilute"], SEALED);
    assert!(position(&strong, "drain-and-dilute").is_none());
    assert!(position(&strong, "dose-antifreeze").is_some());
}

#[test]
fn a_vented_reservoir_is_filled_and_not_charged() {
    let vented = Situation {
        flow_centre: KnownCentre::Kind(FlowCentreKind::NonPressurised),
        ..SEALED
    };
    let here = plan(&["purge-loop"], vented);
    assert!(position(&here, "set-reservoir-level").is_some());
    for id in ["stretch-pipe", "charge-to-pressure", "hold-test"] {
        assert!(position(&here, id).is_none(), "{id}");
    }
    assert!(
        here.proofs
            .iter()
            .all(|proof| proof.reading.id() != "static_pressure")
    );
    let none = plan(&["recharge-pressure"], vented);
    assert!(none.steps.is_empty());
    assert_eq!(
        none.notes,
        [PlanNote::NotForThisSystem {
            procedure: ProcedureId::new("recharge-pressure")
        }]
    );
}

#[test]
fn an_unknown_system_keeps_every_step_and_every_caution() {
    let plan = plan(&["correct-freeze-point-dose"], Situation::default());
    let step = |id: &str| &plan.steps[position(&plan, id).unwrap()];
    assert!(step("dose-antifreeze").hazards.contains(&Hazard::Flammable));
    assert_eq!(
        step("set-reservoir-level").condition,
        Some(Condition {
            flow_centres: vec![FlowCentreKind::NonPressurised],
            with_antifreeze: false
        })
    );
    assert!(step("hold-test").condition.is_some());
    assert!(step("connect-cart").condition.is_none());
}

#[test]
fn a_loop_under_pressure_has_no_reservoir_to_fill() {
    let closed = Situation {
        flow_centre: KnownCentre::Closed,
        ..Situation::default()
    };
    let plan = plan(&["purge-loop"], closed);
    assert!(position(&plan, "set-reservoir-level").is_none());
    let hold = position(&plan, "hold-test").unwrap();
    assert_eq!(plan.steps[hold].condition, None);
    assert!(
        plan.proofs
            .iter()
            .all(|proof| proof.reading.id() != "reservoir_level_change")
    );
}

#[test]
fn cautions_against_fire_go_with_fluids_that_burn() {
    for fluid in FluidKind::ALL {
        let situation = Situation {
            fluid: Some(fluid),
            ..SEALED
        };
        for procedure in LIBRARY.procedures() {
            let plan = plan(&[procedure.id.as_str()], situation);
            assert_eq!(violations(&LIBRARY, &plan), [], "{}", procedure.id);
            let burns = plan
                .steps
                .iter()
                .any(|step| step.hazards.contains(&Hazard::Flammable));
            assert!(!burns || fluid.is_flammable(), "{fluid:?} {}", procedure.id);
        }
        let dose = plan(&["replace-fluid"], situation);
        let warned = dose.steps.iter().any(|step| {
            step.cautions
                .contains(&CautionId::new("no-spark-near-alcohol"))
        });
        assert_eq!(warned, fluid.is_flammable(), "{fluid:?}");
    }
}

#[test]
fn nothing_and_unknown_procedures_are_refused() {
    let none = assemble(&LIBRARY, &[], &SEALED);
    assert_eq!(none, Err(AssembleError::NothingToTreat));
    let unknown = assemble(&LIBRARY, &treatments(&["sing-to-it"]), &SEALED);
    assert!(matches!(
        unknown,
        Err(AssembleError::UnknownProcedure { .. })
    ));
}

#[test]
fn causes_with_one_procedure_share_it() {
    let mut both = treatments(&["purge-loop", "purge-loop"]);
    both[1].cause = "another".to_owned();
    let plan = assemble(&LIBRARY, &both, &SEALED).unwrap();
    assert_eq!(plan.corrections.len(), 1);
    assert_eq!(
        plan.corrections[0].causes,
        ["cause-of-purge-loop", "another"]
    );
}
