//! In what order the work of single procedures comes, and what it does without.

use super::*;

/// A reservoir fills what was drained for a strainer; nothing fills it in a closed loop.
#[test]
fn only_a_strainer_under_a_reservoir_is_a_job_without_a_cart() {
    let alone = plan(&["clean-strainer"], VENTED);
    holds_in_order(&alone, &["relieve-indoor", "refit-strainer", "vent-indoor"]);
    for id in ["connect-cart", "purge-unit-side", "dead-head-test"] {
        assert!(position(&alone, id).is_none(), "{id}");
    }
    for (procedure, situation) in [
        ("clean-strainer", SEALED),
        ("repair-circulator", SEALED),
        ("repair-circulator", VENTED),
        ("fit-check-valve", VENTED),
    ] {
        let plan = plan(&[procedure], situation);
        holds_in_order(
            &plan,
            &[
                "relieve-indoor",
                "connect-cart",
                "purge-unit-side",
                "dead-head-test",
            ],
        );
        assert!(position(&plan, "purge-loop-side").is_none(), "{procedure}");
        assert!(position(&plan, "vent-indoor").is_none(), "{procedure}");
    }
    let both = plan(&["clean-strainer", "purge-loop"], VENTED);
    assert!(both.notes.contains(&PlanNote::Superseded {
        kept: StepId::new("purge-unit-side"),
        dropped: StepId::new("vent-indoor"),
    }));
}

/// What is shut off before it is let down keeps its pressure though the gauge beside
/// it reads zero; hoses that are needed for the purge stay on.
#[test]
fn an_exchanger_is_let_down_with_the_indoor_part_and_then_shut() {
    for procedure in ["clear-exchanger", "descale-exchanger"] {
        let plan = plan(&[procedure], SEALED);
        let opens = match procedure {
            "clear-exchanger" => "connect-back-flush",
            _ => "connect-descaler",
        };
        holds_in_order(
            &plan,
            &[
                "valve-off-loop",
                "relieve-indoor",
                "connect-cart",
                "valve-off-unit",
                opens,
                "purge-unit-side",
                "dead-head-test",
                "sample-after-work",
                "bleed-hoses",
                "disconnect-cart",
            ],
        );
        for id in ["purge-loop-side", "mix-loop"] {
            assert!(position(&plan, id).is_none(), "{procedure} {id}");
        }
    }
}

#[test]
fn a_tank_is_shut_for_the_dead_head_gate_and_open_for_the_charge() {
    let tank = Situation {
        flow_centre: KnownCentre::Kind(FlowCentreKind::SealedWithTank),
        ..SEALED
    };
    let ids = [
        "valve-off-tank",
        "dead-head-test",
        "open-tank-again",
        "charge-to-pressure",
    ];
    holds_in_order(&plan(&["service-expansion-tank"], tank), &ids);
    let vented = plan(&["purge-loop"], VENTED);
    holds_in_order(
        &vented,
        &[
            "valve-off-reservoir",
            "dead-head-test",
            "open-reservoir-again",
        ],
    );
    let sealed = plan(&["purge-loop"], SEALED);
    for id in ["valve-off-tank", "valve-off-reservoir"] {
        assert!(position(&sealed, id).is_none(), "{id}");
    }
}

#[test]
fn a_dose_follows_a_draw_off_after_a_refill_too() {
    for procedure in ["replace-fluid", "treat-water", "correct-freeze-point-dose"] {
        let plan = plan(&[procedure], SEALED);
        holds_in_order(&plan, &["drain-before-dose", "dose-antifreeze"]);
    }
}

/// With the power locked off no circuit flows and no circulator turns.
#[test]
fn what_takes_running_circulators_is_read_before_the_power_is_locked_off() {
    for (procedure, ids) in [
        (
            "restore-circuit",
            &["enter-vault", "measure-each-circuit", "lock-power-off"][..],
        ),
        (
            "repair-circulator",
            &[
                "read-rise-with-valves-open",
                "test-circulator-supply",
                "lock-power-off",
                "test-circulator-electrics",
                "open-circulator",
            ],
        ),
    ] {
        let mut bad = plan(&[procedure], SEALED);
        assert_eq!(violations(&LIBRARY, &bad), []);
        holds_in_order(&bad, ids);
        let locked = bad.steps.remove(position(&bad, "lock-power-off").unwrap());
        bad.steps.insert(0, locked);
        assert!(
            violations(&LIBRARY, &bad)
                .iter()
                .any(|found| matches!(found, Violation::ReadWithPowerOff { .. })),
            "{procedure}"
        );
    }
}

#[test]
fn a_dead_circuit_is_purged_alone_and_nothing_is_mixed_that_was_not_dosed() {
    let restored = plan(&["restore-circuit"], SEALED);
    holds_in_order(
        &restored,
        &["purge-dead-circuit", "check-no-bubbles", "dead-head-test"],
    );
    // What was not opened took in no air.
    assert!(position(&restored, "purge-loop-side").is_none());
    for procedure in ["restore-circuit", "purge-loop"] {
        let plan = plan(&[procedure], SEALED);
        assert!(position(&plan, "mix-loop").is_none(), "{procedure}");
        assert!(position(&plan, "sample-after-work").is_some());
    }
}

/// A second gauge and a cap that is cracked are for pressure gauges only.
#[test]
fn each_kind_of_instrument_is_tried_in_its_own_way() {
    let gauge = plan(&["correct-gauge"], SEALED);
    holds_in_order(&gauge, &["compare-gauges", "swap-instrument"]);
    for (procedure, check) in [
        ("correct-thermometer", "check-thermometer"),
        ("correct-flow-meter", "check-flow-meter"),
        ("correct-refractometer", "check-refractometer"),
        ("correct-hydrometer", "check-hydrometer"),
        ("correct-power-meter", "check-power-meter"),
        ("correct-test-kit", "check-test-kit"),
        ("correct-display", "check-display"),
        ("hand-over-refrigerant-gauges", "hand-on-refrigerant-gauges"),
    ] {
        let plan = plan(&[procedure], SEALED);
        assert!(position(&plan, check).is_some(), "{procedure}");
        for id in ["compare-gauges", "bleed-ports", "swap-instrument"] {
            assert!(position(&plan, id).is_none(), "{procedure} {id}");
        }
    }
}

#[test]
fn too_much_pressure_is_let_down_before_a_gauge_is_put_on() {
    let plan = plan(&["relieve-pressure"], SEALED);
    holds_in_order(
        &plan,
        &[
            "lock-power-off",
            "find-lowest-rating",
            "bleed-below-rating",
            "compare-gauges",
            "let-pressure-down",
            "restore-power",
        ],
    );
}

/// A circuit that is shut opens nothing: only what was topped up is looked at.
#[test]
fn a_leaking_circuit_is_found_with_the_cart_on_and_its_neighbours_are_not_purged() {
    let plan = plan(&["test-circuits-for-leak"], SEALED);
    holds_in_order(
        &plan,
        &[
            "compare-loop-and-indoor",
            "connect-cart",
            "test-each-circuit",
            "take-circuit-out",
            "sample-after-work",
            "charge-to-pressure",
            "hold-test",
        ],
    );
    assert!(position(&plan, "purge-loop-side").is_none());
    assert!(position(&plan, "purge-unit-side").is_none());
}

/// The indoor part is small and stiff, so that a slow leak shows in it.
#[test]
fn a_mended_indoor_part_is_watched_by_itself() {
    let plan = plan(&["find-indoor-leak"], SEALED);
    holds_in_order(
        &plan,
        &[
            "mend-joint",
            "charge-to-pressure",
            "watch-indoor-part",
            "restore-power",
        ],
    );
}

#[test]
fn valve_positions_are_written_down_before_any_is_opened() {
    let plan = plan(&["repair-circulator", "set-valves"], SEALED);
    holds_in_order(
        &plan,
        &[
            "read-valve-positions",
            "read-rise-with-valves-open",
            "open-circulator",
        ],
    );
}
