//! Plans with the numbers of one loop.

use super::*;
use crate::model::LoopModel;
use crate::plan::quantity::{Conditions, QuantityKind, Remark};
use crate::records::visit_file::VisitFile;
use crate::records::{
    CircuitGroup, Circulator, DropPoint, Exchanger, FlowCentre, FlushCart, GroundLoop, HeatPump,
    Instrument, LoopFluid, LoopFluidKind, NominalInch, OperatingMode, Pipe, PlainMeasure, Reading,
    ReadingPoint, Sdr,
};
use crate::uncertainty::Uncertain;
use crate::units::{
    Fraction, Length, Measure, Power, PressureDifference, Temperature, Unit, VolumeFlow,
};
use std::collections::BTreeSet;

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
    doubting(file, procedures, BTreeSet::new())
}

fn doubting(file: &VisitFile, procedures: &[&str], doubted: BTreeSet<Instrument>) -> WorkPlan {
    let conditions = Conditions {
        doubted,
        ..Conditions::at(Uncertain::new(Temperature::from_celsius(9.0), 1.0))
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

/// Adds a reading as it was met.
fn read(file: &mut VisitFile, point: ReadingPoint, value: f64, unit: Unit) {
    let reading = Reading::new(point, PlainMeasure { value, unit }).unwrap();
    file.visit.readings.push(reading);
}

#[test]
fn what_may_freeze_is_strengthened_first_whatever_the_cause() {
    // 23 °F in a loop whose water leaves at 23.6 °F.
    let mut weak = file();
    read(
        &mut weak,
        ReadingPoint::FreezePointSupply,
        23.0,
        Unit::Fahrenheit,
    );
    read(
        &mut weak,
        ReadingPoint::LeavingWater,
        23.6,
        Unit::Fahrenheit,
    );
    weak.visit.readings.last_mut().unwrap().mode = Some(OperatingMode::Heating);
    for procedure in [
        "assess-loop-length",
        "repair-circulator",
        "hand-over-refrigerant",
    ] {
        let plan = planned(&weak, &[procedure]);
        assert_eq!(violations(&LIBRARY, &plan), []);
        assert_eq!(plan.corrections[0].procedure.as_str(), "strengthen-first");
        assert_eq!(plan.corrections[0].causes, Vec::<String>::new());
        holds_in_order(
            &plan,
            &[
                "keep-unit-off",
                "lock-power-off",
                "dose-antifreeze",
                "sample-two",
                "restore-power",
            ],
        );
        let mut proofs = plan.proofs.iter();
        assert!(proofs.any(|proof| proof.reading == ReadingPoint::FreezePointSupply));
    }
    // Where it is dosed anyway it keeps its cause, and comes first.
    let plan = planned(&weak, &["purge-loop", "correct-freeze-point-dose"]);
    assert_eq!(
        plan.corrections[0].causes,
        ["cause-of-correct-freeze-point-dose"]
    );
    let named = plan.corrections.iter().map(|one| one.procedure.as_str());
    // Nobody read the gauge of this loop.
    assert_eq!(
        named.collect::<Vec<_>>(),
        ["strengthen-first", "read-gauge-first", "purge-loop"]
    );
    // A loop that is filled afresh is dosed for the whole of it; the unit waits.
    let plan = planned(&weak, &["replace-fluid"]);
    assert_eq!(violations(&LIBRARY, &plan), []);
    holds_in_order(
        &plan,
        &["keep-unit-off", "displace-old-fluid", "dose-antifreeze"],
    );
    // And what is strong enough is left alone.
    let mut strong = file();
    read(
        &mut strong,
        ReadingPoint::FreezePointSupply,
        10.0,
        Unit::Fahrenheit,
    );
    let plan = planned(&strong, &["repair-circulator"]);
    assert!(position(&plan, "keep-unit-off").is_none());
}

#[test]
fn no_flow_is_proven_by_a_meter_in_doubt() {
    // Two plates of 115 W and an exchanger that takes 5.1 psi at 12 gpm. One of the two
    // dead leaves about half of the input, 112 W, and the drop was read 2.4 psi then; the
    // meter showed 12 gpm all the same.
    let mut dead = file();
    let plate = Circulator {
        rated_power: Some(Measure::<Power>::new(115.0, Unit::Watt)),
        ..Circulator::default()
    };
    dead.system.circulators = vec![plate.clone(), plate];
    dead.system.heat_pump = Some(HeatPump {
        rated_flow: Some(Measure::<VolumeFlow>::new(12.0, Unit::GallonPerMinute)),
        exchanger: Some(Exchanger {
            curve: [(6.0, 1.275), (12.0, 5.1)]
                .map(|(gpm, psi)| DropPoint {
                    flow: Measure::<VolumeFlow>::new(gpm, Unit::GallonPerMinute),
                    drop: Measure::<PressureDifference>::new(psi, Unit::Psi),
                })
                .to_vec(),
            ..Exchanger::default()
        }),
        ..HeatPump::default()
    });
    let proof = |plan: &WorkPlan, point| {
        let found = plan.proofs.iter().find(|proof| proof.reading == point);
        found.map(|proof| proof.at_least.as_ref().map(|end| end.value.si))
    };
    let trusted = planned(&dead, &["repair-circulator"]);
    assert!(proof(&trusted, ReadingPoint::Flow).is_some());
    let meter = BTreeSet::from([Instrument::FlowMeter]);
    let doubted = doubting(&dead, &["repair-circulator"], meter);
    assert!(proof(&doubted, ReadingPoint::Flow).is_none());
    // Before the repair neither of the others passes.
    let input = proof(&doubted, ReadingPoint::CirculatorPower).flatten();
    assert!(
        input.is_some_and(|watts| watts > 112.0 && watts < 230.0),
        "{input:?}"
    );
    let drop = proof(&doubted, ReadingPoint::ExchangerDrop).flatten();
    let drop = drop.map(|pa| Unit::Psi.from_si(pa));
    // 0.9 of the flow: 0.81 of the drop, 4.1 psi, less a fifth for the printed curve, and
    // some more for cold glycol in place of water.
    assert!(drop.is_some_and(|psi| psi > 2.4 && psi < 5.1), "{drop:?}");
    // Where nothing else tells the flow, the meter is all there is.
    let bare = doubting(
        &file(),
        &["repair-circulator"],
        BTreeSet::from([Instrument::FlowMeter]),
    );
    assert!(proof(&bare, ReadingPoint::Flow).is_some());
}

#[test]
fn nothing_is_watched_where_hardly_anything_stands_on_the_gauge() {
    let timers = |psi: f64| {
        let mut file = file();
        read(&mut file, ReadingPoint::StaticPressure, psi, Unit::Psi);
        let plan = planned(&file, &["find-indoor-leak"]);
        let at = position(&plan, "compare-loop-and-indoor").unwrap();
        plan.steps[at].timers.len()
    };
    assert_eq!((timers(30.0), timers(0.5)), (1, 0));
}

#[test]
fn one_reading_at_one_time_has_one_band() {
    let mut file = file();
    read(&mut file, ReadingPoint::StaticPressure, 39.0, Unit::Psi);
    for order in [
        ["correct-gauge", "purge-loop"],
        ["purge-loop", "correct-gauge"],
    ] {
        let plan = planned(&file, &order);
        let mut statics = plan.proofs.iter().filter(|proof| {
            (proof.reading, proof.when) == (ReadingPoint::StaticPressure, ProofTime::Now)
        });
        let only = statics.next().unwrap();
        assert!(statics.next().is_none());
        // That of this loop, not the usual one.
        let least = only.at_least.as_ref().unwrap();
        assert_eq!(least.basis, Basis::Computed(QuantityKind::LeavePressureLow));
    }
}

#[test]
fn a_gauge_that_nobody_read_is_read_before_anything_is_opened() {
    let unread = file();
    for procedure in ["purge-loop", "recharge-pressure", "mix-charge"] {
        let plan = planned(&unread, &[procedure]);
        assert_eq!(violations(&LIBRARY, &plan), []);
        assert_eq!(plan.corrections[0].procedure.as_str(), "read-gauge-first");
        holds_in_order(
            &plan,
            &[
                "lock-power-off",
                "read-gauge-at-rest",
                "connect-cart",
                "charge-to-pressure",
            ],
        );
        let mut read_already = file();
        read(
            &mut read_already,
            ReadingPoint::StaticPressure,
            36.0,
            Unit::Psi,
        );
        let plan = planned(&read_already, &[procedure]);
        assert!(position(&plan, "read-gauge-at-rest").is_none());
    }
    // Where nothing is charged nothing is to be read for it.
    let plan = planned(&unread, &["hand-over-refrigerant"]);
    assert!(position(&plan, "read-gauge-at-rest").is_none());
}
