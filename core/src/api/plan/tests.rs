use crate::api::types::PlanView;
use crate::api::{Call, Wording, read_visit_file};
use chrono::NaiveDate;

/// The plan for a cause that was found, in a loop of glycol that freezes at so many °F.
fn plan_for(cause: &str, freezes: f64) -> PlanView {
    let file = format!(
        r#"{{"format":"returnline-visit","version":1,
        "system":{{"fluid":{{"kind":"propylene_glycol"}}}},
        "visit":{{"verdicts":[{{"cause":"{cause}","confirmed":true}}],
        "readings":[{{"point":"freeze_point_supply","value":{{"value":{freezes},"unit":"degF"}}}}]}}}}"#
    );
    let file = read_visit_file(file.as_bytes(), Wording::default()).expect("a visit");
    let call = Call::assess(&file, NaiveDate::default(), Wording::default());
    call.answer().plan.clone().expect("a plan")
}

#[test]
fn materials_say_how_much_of_them_as_the_step_does_that_needs_them() {
    for (cause, freezes, material, amount) in [
        (
            "antifreeze-too-weak",
            27.0,
            "Antifreeze of the kind",
            "Antifreeze to add",
        ),
        (
            "antifreeze-too-strong",
            -20.0,
            "Approved fill water",
            "Replace by water",
        ),
        ("debris-left-in-loop", 15.0, "Fine filter bags", "Fine bag"),
    ] {
        let plan = plan_for(cause, freezes);
        let mut materials = plan.materials.iter();
        let found = materials.find(|one| one.label.starts_with(material));
        let found = found.unwrap_or_else(|| panic!("{cause}: {:?}", plan.materials));
        let mut amounts = found.amounts.iter();
        let told = amounts.find(|told| told.label == amount);
        let told = told.unwrap_or_else(|| panic!("{cause}: {found:?}"));
        assert!(told.why.is_some(), "{cause}: {told:?}");
        let mut at_steps = plan.steps.iter().flat_map(|step| &step.quantities);
        assert!(at_steps.any(|at_step| at_step == told), "{cause}: {told:?}");
    }
}

#[test]
fn what_no_step_measures_out_is_told_without_an_amount() {
    let plan = plan_for("antifreeze-too-weak", 27.0);
    let caps = plan
        .materials
        .iter()
        .find(|one| one.label.starts_with("Port caps"));
    assert!(caps.expect("caps").amounts.is_empty());
    // The level of a loop that is dosed is made up, and no step says by how much.
    let water = plan
        .materials
        .iter()
        .find(|one| one.label.starts_with("Approved fill water"));
    assert!(
        water.is_none_or(|water| water.amounts.is_empty()),
        "{water:?}"
    );
}

#[test]
fn a_usual_figure_that_stands_in_for_an_unknown_one_says_so_and_why() {
    let mix = plan_for("antifreeze-too-weak", 27.0);
    let air = plan_for("air-left-in-circuit", 15.0);
    // Three hours of mixing, an inch of drop: common practice, no source.
    for (plan, step, label, figure) in [
        (&mix, "mix-loop", "Mix at least", "3.0 h"),
        (&air, "dead-head-test", "Level may drop at most", "1.00 in"),
    ] {
        let mut steps = plan.steps.iter();
        let step = steps.find(|known| known.id == step).expect("planned");
        let mut quantities = step.quantities.iter();
        let told = quantities.find(|known| known.label == label);
        let told = told.unwrap_or_else(|| panic!("{:?}", step.quantities));
        let beginning = format!("{figure}, the usual figure, because ");
        assert!(told.value.starts_with(&beginning), "{told:?}");
        assert!(told.value.ends_with("not recorded."), "{told:?}");
        // The limit beside it is that figure, and gives the same reason.
        let gates = step.gate.iter().flat_map(|gate| &gate.criteria);
        let mut limits = gates
            .map(|found| (&found.rule, &found.why))
            .chain((step.timers.iter()).map(|timer| (&timer.shown, &timer.why)));
        let (shown, why) = limits.next().expect("a limit");
        assert!(shown.ends_with(figure), "{shown}");
        assert!(why.formula.contains("not recorded"), "{why:?}");
    }
    // What nothing stands in for is still not worked out.
    let mut lacking = air.steps.iter().flat_map(|step| &step.quantities);
    assert!(lacking.any(|known| known.value.starts_with("Cannot be worked out: ")));
}

#[test]
fn the_pressure_to_leave_of_a_loop_that_nobody_read_is_not_told_alone() {
    let plan = plan_for("air-left-in-circuit", 15.0);
    let told = |plan: &PlanView| {
        let mut quantities = plan.steps.iter().flat_map(|step| step.quantities.clone());
        let told = quantities.find(|one| one.label == "Pressure to leave");
        told.expect("a pressure").value
    };
    let first = "Read the gauge at rest first and enter it";
    assert!(told(&plan).starts_with(first), "{}", told(&plan));
    let remarks = plan.remarks.iter();
    let remarks: Vec<&str> = remarks.map(|remark| remark.words.as_str()).collect();
    let at = |words: &str| remarks.iter().position(|told| told.starts_with(words));
    let unread = at("The pressure at rest was not read.").expect("a remark");
    for other in ["The seasons ask", "No pressure is certain", "Even in one"] {
        assert!(at(other).is_none_or(|place| place > unread), "{remarks:?}");
    }
    let sample = include_str!("../../../data/samples/air-in-one-circuit.json");
    let file = read_visit_file(sample.as_bytes(), Wording::default()).expect("a sample");
    let call = Call::assess(&file, NaiveDate::default(), Wording::default());
    let read = call.answer().plan.clone().expect("a plan");
    assert!(!told(&read).contains("gauge"), "{}", told(&read));
}

#[test]
fn a_time_that_a_quantity_tells_is_told_once() {
    let plan = plan_for("antifreeze-too-weak", 27.0);
    let step = |id: &str| plan.steps.iter().find(|step| step.id == id).expect(id);
    // Three hours of mixing stand in for turnovers that nobody can count.
    let mix = &step("mix-loop").timers[0];
    assert!(mix.told, "{mix:?}");
    // The stretch lasts 20 to 30 minutes, common practice, and nothing else says so.
    let stretch = &step("stretch-pipe").timers[0];
    assert!(!stretch.told && stretch.shown == "30 min", "{stretch:?}");
}
