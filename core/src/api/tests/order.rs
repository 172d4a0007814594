//! Cautions and the order of steps, and what is not proved when they are done.

use super::work::{GATED, Work, all_done, leave_out};
use crate::api::types::StepChange;

#[test]
fn a_step_is_never_done_before_its_cautions_are_acknowledged() {
    let mut work = Work::begin();
    let locked = "lock-power-off";
    let caution = work.step(locked).cautions.remove(0);
    assert!(caution.acknowledge);
    for refusal in [work.done(locked), work.without(locked, "In a hurry")] {
        let refusal = refusal.expect_err("refused");
        assert_eq!(refusal.code, "caution-not-acknowledged");
        assert_eq!(refusal.context["step"], "1");
        for told in ["Step 1", "Acknowledge", caution.text.as_str()] {
            assert!(refusal.message.contains(told), "{told}: {refusal}");
        }
    }
    assert_eq!(work.step(locked).progress, "open");
    work.acknowledge(locked);
    work.done(locked).expect("read");
    assert_eq!(work.step(locked).progress, "done");
    // What asks for no acknowledgement waits for none.
    let people = work.step("protect-people");
    assert!(people.cautions.iter().all(|caution| !caution.acknowledge));
    work.done("protect-people").expect("kept");
}

/// What a step was done with is a record: a slip on the box must not take it away.
#[test]
fn the_tick_of_a_caution_stays_while_its_step_is_done() {
    let mut work = Work::begin();
    let locked = "lock-power-off";
    let caution = work.step(locked).cautions.remove(0);
    let tick = |yes| StepChange::Acknowledged {
        caution: caution.id.clone(),
        yes,
    };
    work.change(locked, tick(true)).expect("kept");
    work.change(locked, tick(false)).expect("the step is open");
    assert!(!work.step(locked).cautions[0].acknowledged);
    work.acknowledge(locked);
    work.done(locked).expect("read");
    let refusal = work.change(locked, tick(false)).expect_err("refused");
    assert_eq!(refusal.code, "caution-of-done-step");
    assert_eq!(refusal.context["step"], "1");
    for told in ["Step 1", "Not done after all", caution.text.as_str()] {
        assert!(refusal.message.contains(told), "{told}: {refusal}");
    }
    let step = work.step(locked);
    assert_eq!(step.progress, "done");
    assert!(step.cautions[0].acknowledged);
    // A tick once more takes nothing away; an open step lets it go.
    work.change(locked, tick(true)).expect("kept");
    let open = StepChange::Done { done: false };
    work.change(locked, open).expect("open again");
    work.change(locked, tick(false)).expect("open");
    assert!(!work.step(locked).cautions[0].acknowledged);
    let refusal = work.done(locked).expect_err("refused");
    assert_eq!(refusal.code, "caution-not-acknowledged");
}

#[test]
fn a_step_is_done_before_one_that_makes_it_safe_for_a_written_reason_only() {
    let mut work = Work::begin();
    let (later, first) = ("connect-cart", "lock-power-off");
    work.acknowledge(later);
    let refusal = work.done(later).expect_err("refused");
    assert_eq!(refusal.code, "earlier-step-open");
    // The step, the first one it rests on, and both ways on.
    let earlier = "Step 1: Switch heat pump and circulators off.";
    for told in [earlier, "leave it out with a reason", "write down why"] {
        assert!(refusal.message.contains(told), "{told}: {refusal}");
    }
    let step = work.step(later);
    assert_eq!(step.progress, "open");
    let named = step.earlier.iter().map(|step| step.id.as_str());
    assert_eq!(named.clone().next(), Some(first));
    assert!(named.clone().count() > 1);
    let waiting: Vec<String> = named.map(ToOwned::to_owned).collect();

    let reason = "The breaker was off already";
    work.without(later, reason).expect("kept");
    // It stays on record, though what was left is done afterwards.
    for id in &waiting {
        work.acknowledge(id);
        work.done(id).expect("kept");
    }
    let step = work.step(later);
    assert_eq!(step.progress, "excused");
    assert_eq!(step.wanting.len(), 1);
    let before = &step.wanting[0];
    assert!(
        before.starts_with("Not done before it: steps 1"),
        "{before}"
    );
    let report = work.report("technician");
    for told in [before.as_str(), reason, "done all the same"] {
        assert!(report.contains(told), "{told}: {report}");
    }
    // Done anew in its turn, it is as good as done.
    work.change(later, StepChange::Done { done: false })
        .expect("kept");
    work.done(later).expect("nothing is before it");
    assert_eq!(work.step(later).progress, "done");
}

#[test]
fn a_step_behind_a_gate_waits_for_it_and_one_left_out_for_a_reason_holds_nothing() {
    let mut work = Work::begin();
    let steps = work.plan().steps;
    let gate = steps.iter().position(|step| step.id == GATED);
    let behind = steps[gate.expect("planned") + 1].id.clone();
    work.reach(GATED);
    work.acknowledge(&behind);
    let refusal = work.done(&behind).expect_err("refused");
    assert_eq!(refusal.code, "earlier-step-open");
    leave_out(&mut work, GATED);
    assert!(work.step(&behind).earlier.is_empty());
    // What is handed over is told as it stands.
    let last = &steps.last().expect("steps").id;
    assert_eq!(last, "tell-owner");
    assert!(work.step(last).earlier.is_empty());
}

#[test]
fn a_gate_that_was_left_out_is_not_proved_and_an_ordinary_step_says_nothing_of_proof() {
    let mut work = Work::begin();
    let steps = work.plan().steps;
    let hold = steps.iter().position(|step| step.id == "hold-test");
    let hold = hold.expect("a charge is held");
    let rule = &steps[hold].gate.as_ref().expect("a gate").criteria[0];
    all_done(&mut work, &["hold-test", "protect-people"]);
    let unproved = work.plan().unproved;
    let number = format!("Step {}, left out:", hold + 1);
    let told = unproved.iter().find(|line| line.starts_with(&number));
    let told = told.unwrap_or_else(|| panic!("{unproved:?}"));
    for words in [rule.label.as_str(), &rule.rule, "Not on this system"] {
        assert!(told.contains(words), "{words}: {told}");
    }
    assert!(work.report("technician").contains(told), "{told}");
    let ordinary = |line: &&String| line.starts_with("Step 2,");
    assert_eq!(unproved.iter().find(ordinary), None);
}

#[test]
fn a_gate_that_was_taken_up_but_not_read_is_told_as_still_to_be_read() {
    let mut work = Work::begin();
    work.acknowledge(GATED);
    let note = "Watching".to_owned();
    work.change(GATED, StepChange::Note { text: note })
        .expect("kept");
    let report = work.report("technician");
    assert!(report.contains("Still to be read: "), "{report}");
    assert!(!report.contains("Gate not passed."), "{report}");
}

#[test]
fn steps_that_are_still_to_do_are_named_few_by_words_and_many_by_number() {
    let mut work = Work::begin();
    let all = work.plan().steps.len();
    let many = format!("These steps are still to do: 1 to {all}.");
    assert_eq!(work.plan().unproved[0], many);
    work.acknowledge("lock-power-off");
    work.done("lock-power-off").expect("kept");
    work.done("protect-people").expect("kept");
    leave_out(&mut work, "find-lowest-rating");
    let numbers = &work.plan().unproved[0];
    let steps = work.plan().steps;
    let open = (1..)
        .zip(&steps)
        .filter(|(_, step)| step.progress == "open");
    let open: Vec<usize> = open.map(|(number, _)| number).collect();
    // Every open step is in one of the runs that are told.
    let told = numbers.trim_start_matches("These steps are still to do: ");
    let runs = told.trim_end_matches('.').split(", ");
    let runs = runs.flat_map(|run| match run.split_once(" to ") {
        Some((low, high)) => low.parse().expect("low")..=high.parse().expect("high"),
        None => run.parse().expect("one")..=run.parse().expect("one"),
    });
    assert_eq!(runs.collect::<Vec<usize>>(), open, "{numbers}");

    all_done(&mut work, &[]);
    let last = work.plan().steps.len();
    work.change("tell-owner", StepChange::Done { done: false })
        .expect("kept");
    let one = format!("Step {last} is still to do: Tell the owner");
    assert!(work.plan().unproved[0].starts_with(&one));
}
