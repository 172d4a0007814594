//! The walk through a plan sees what is wrong with one that was spoilt.

use super::*;

/// The walk through a plan is worth something only if it sees what is wrong.
#[test]
fn a_spoilt_plan_breaks_the_rules() {
    let good = plan(&["correct-freeze-point-dose", "clean-strainer"], SEALED);
    assert_eq!(violations(&LIBRARY, &good), []);
    let without = |id: &str| {
        let mut bad = good.clone();
        bad.steps.remove(position(&bad, id).unwrap());
        violations(&LIBRARY, &bad)
    };
    let moved = |id: &str, behind: &str| {
        let mut bad = good.clone();
        let step = bad.steps.remove(position(&bad, id).unwrap());
        let to = position(&bad, behind).unwrap();
        bad.steps.insert(to + 1, step);
        violations(&LIBRARY, &bad)
    };
    let has = |found: &[Violation], test: fn(&Violation) -> bool| {
        assert!(found.iter().any(test), "{found:?}");
    };
    has(&without("bleed-ports"), |v| {
        matches!(v, Violation::WorkedUnderPressure { .. })
    });
    has(&without("relieve-indoor"), |v| {
        matches!(v, Violation::WorkedUnderPressure { .. })
    });
    has(&without("bleed-hoses"), |v| {
        matches!(v, Violation::WorkedUnderPressure { .. })
    });
    has(&without("lock-power-off"), |v| {
        matches!(v, Violation::PowerNotLocked { .. })
    });
    has(&without("refit-strainer"), |v| {
        matches!(v, Violation::PressurisedWhileOpen { .. })
    });
    has(&without("disconnect-cart"), |v| {
        matches!(v, Violation::StartedWhileOpen { .. })
    });
    has(&without("restore-power"), |v| {
        matches!(v, Violation::LeftOpen { .. })
    });
    has(&without("hold-test"), |v| {
        matches!(v, Violation::ChargeNotHeld { .. })
    });
    has(&moved("purge-loop-side", "dose-antifreeze"), |v| {
        matches!(v, Violation::PurgedAfterDosing { .. })
    });
    has(&moved("purge-loop-side", "purge-unit-side"), |v| {
        matches!(v, Violation::UnitBeforeLoop { .. })
    });
    has(&moved("mix-loop", "charge-to-pressure"), |v| {
        matches!(v, Violation::FluidMovedAfterCharge { .. })
    });
    has(&moved("prove-flow", "connect-cart"), |v| {
        matches!(v, Violation::ProofBeforeRestart { .. })
    });
    has(&without("dead-head-test"), |v| {
        matches!(v, Violation::PumpedIntoShut { .. })
    });
    has(&without("connect-cart"), |v| {
        matches!(v, Violation::PumpedWithoutHoses { .. })
    });
    has(&without("purge-unit-side"), |v| {
        matches!(v, Violation::DrainedNotPurged { .. })
    });
    has(&without("dead-head-test"), |v| {
        matches!(v, Violation::DrainedNotPurged { .. })
    });
    has(&without("drain-before-dose"), |v| {
        matches!(v, Violation::DosedIntoFullLoop { .. })
    });
    has(&moved("prove-flow", "lock-power-off"), |v| {
        matches!(v, Violation::ReadWithPowerOff { .. })
    });
    let mut bad = good.clone();
    bad.steps[0].cautions.clear();
    has(&violations(&LIBRARY, &bad), |v| {
        matches!(v, Violation::HazardWithoutCaution { .. })
    });
    let mut bad = good.clone();
    let first = bad.steps[0].clone();
    bad.steps.push(first);
    has(&violations(&LIBRARY, &bad), |v| {
        matches!(v, Violation::Twice { .. })
    });
    let mut bad = good;
    let gate = position(&bad, "dead-head-test").unwrap();
    bad.steps[gate].gate[0].return_to = gate + 1;
    has(&violations(&LIBRARY, &bad), |v| {
        matches!(v, Violation::NoWayBack { .. })
    });
}

/// The heat pump valved off first and then the rest let down: its exchanger is still
/// under pressure when it is opened, whatever the gauge beside it reads.
#[test]
fn what_is_shut_off_under_pressure_is_let_down_by_a_step_of_its_own() {
    let good = plan(&["clear-exchanger"], SEALED);
    assert_eq!(violations(&LIBRARY, &good), []);
    let mut bad = good.clone();
    let shut = bad.steps.remove(position(&bad, "valve-off-unit").unwrap());
    let before = position(&bad, "relieve-indoor").unwrap();
    bad.steps.insert(before, shut);
    assert!(
        violations(&LIBRARY, &bad).contains(&Violation::WorkedUnderPressure {
            step: StepId::new("connect-back-flush"),
            section: Section::Exchanger,
        })
    );
}
