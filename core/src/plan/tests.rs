//! Plans made from the shipped procedures, alone, in pairs and in larger sets.

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
    holds_in_order(&restored, &["purge-dead-circuit", "purge-loop-side"]);
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

mod for_a_system {
    use super::*;
    use crate::model::LoopModel;
    use crate::plan::quantity::{Conditions, QuantityKind, Remark};
    use crate::records::visit_file::VisitFile;
    use crate::records::{
        CircuitGroup, FlowCentre, FlushCart, GroundLoop, LoopFluid, LoopFluidKind, NominalInch,
        Pipe, Sdr,
    };
    use crate::uncertainty::Uncertain;
    use crate::units::{Fraction, Length, Measure, Temperature, Unit};

    fn file() -> VisitFile {
        let mut file = VisitFile::default();
        file.system.flow_centre = Some(FlowCentre::Sealed {});
        file.system.ground = Some(GroundLoop {
            circuits: vec![CircuitGroup {
                count: 3,
                pipe: Pipe::IpsPe {
                    size: NominalInch::ThreeQuarter,
                    sdr: Sdr::Sdr11,
                },
                length: Measure::<Length>::new(400.0, Unit::Foot),
            }],
            ..GroundLoop::default()
        });
        file.system.fluid = Some(LoopFluid {
            kind: LoopFluidKind::PropyleneGlycol,
            volume_fraction: Some(Measure::<Fraction>::new(22.0, Unit::Percent)),
        });
        file.visit.means.cart = Some(FlushCart {
            reservoir_diameter: Some(Measure::<Length>::new(10.0, Unit::Inch)),
            ..FlushCart::default()
        });
        file
    }

    fn planned(file: &VisitFile, procedures: &[&str]) -> WorkPlan {
        let conditions = Conditions {
            loop_temperature: Uncertain::new(Temperature::from_celsius(9.0), 1.0),
            lowest_leaving: None,
            year: None,
            learned: None,
        };
        let model = LoopModel::of(file);
        work_plan(&LIBRARY, &treatments(procedures), file, &model, conditions).unwrap()
    }

    #[test]
    fn gates_and_proofs_hold_the_numbers_of_this_loop() {
        let plan = planned(&file(), &["purge-loop"]);
        assert_eq!(violations(&LIBRARY, &plan), []);
        let gate = &plan.steps[position(&plan, "dead-head-test").unwrap()].gate[0];
        let limit = plan.sheet.get(QuantityKind::DeadHeadLimit).unwrap();
        assert_eq!(
            gate.limit.basis,
            Basis::Computed(QuantityKind::DeadHeadLimit)
        );
        assert_eq!(gate.limit.value, limit.figure);
        let proof = plan
            .proofs
            .iter()
            .find(|proof| proof.reading.id() == "flow")
            .unwrap();
        assert!(proof.at_least.is_some() && proof.at_most.is_none());
        // Nothing in the sheet that no step asks for; the dose is not asked for here.
        assert!(plan.sheet.get(QuantityKind::AntifreezeDose).is_none());
        assert!(plan.sheet.remarks.contains(&Remark::RatingUnknown));
    }

    #[test]
    fn without_a_tank_the_gate_holds_the_trade_s_inch() {
        let mut bare = file();
        bare.visit.means.cart = None;
        let plan = planned(&bare, &["purge-loop"]);
        let gate = &plan.steps[position(&plan, "dead-head-test").unwrap()].gate[0];
        let instead_of = QuantityKind::DeadHeadLimit;
        assert_eq!(
            gate.limit.basis,
            Basis::Usual(Origin::CommonPractice, instead_of)
        );
        assert!((Unit::Inch.from_si(gate.limit.value.si) - 1.0).abs() < 1e-9);
    }

    #[test]
    fn replacing_the_fluid_keeps_the_cautions_of_every_fluid_and_doses_from_water() {
        let dosed = planned(&file(), &["correct-freeze-point-dose"]);
        let replaced = planned(&file(), &["replace-fluid"]);
        let burns = |plan: &WorkPlan| {
            plan.steps
                .iter()
                .any(|step| step.hazards.contains(&Hazard::Flammable))
        };
        assert!(!burns(&dosed) && burns(&replaced));
        let dose = |plan: &WorkPlan| {
            plan.sheet
                .get(QuantityKind::AntifreezeDose)
                .unwrap()
                .figure
                .si
        };
        assert!(dose(&replaced) > dose(&dosed));
    }

    #[test]
    fn a_timer_is_never_shorter_than_the_trade_s() {
        let plan = planned(&file(), &["flush-debris"]);
        for step in &plan.steps {
            let library = LIBRARY.step(&step.id).unwrap();
            for (timer, least) in step.timers.iter().zip(&library.timers) {
                assert!(timer.time.value.si >= crate::units::Quantity::si(least.least));
            }
        }
    }
}
