//! A step is done when its gates and timers are met, or for a written reason.

use super::work::{GATED, TIMED, Work, all_done};
use crate::api::types::{StepChange, StepView};

/// The pass value in minutes, as the plan tells it.
fn limit(rule: &str) -> f64 {
    let mut words = rule.split_whitespace();
    words.find_map(|word| word.parse().ok()).expect("a number")
}

#[test]
fn a_step_is_not_done_while_its_gate_has_no_entry_or_one_that_fails() {
    let mut work = Work::begin();
    work.reach(GATED);
    let gate = work.step(GATED).gate.expect("a gate");
    let rule = gate.criteria[0].rule.clone();
    let least = limit(&rule);
    assert!(rule.starts_with("at least"), "{rule}");
    let too_short = (least / 2.0).to_string();
    for (entry, code) in [("", "gate-not-read"), (too_short.as_str(), "gate-not-met")] {
        work.enter(entry);
        let refusal = work.done(GATED).expect_err("refused");
        assert_eq!(refusal.code, code);
        // The gate, and what it needs.
        for told in [&gate.criteria[0].label, &rule] {
            assert!(refusal.message.contains(told), "{told}: {refusal}");
        }
        assert!(refusal.message.contains(entry), "{refusal}");
        // Where to go back to, once something was read that does not pass.
        let sent_back = refusal.message.contains(&gate.otherwise);
        assert_eq!(sent_back, !entry.is_empty(), "{refusal}");
        let still = refusal.message.contains("Still to be read");
        assert_eq!(still, entry.is_empty(), "{refusal}");
        let step = work.step(GATED);
        assert_eq!(step.progress, "open");
        let unread = step.gate.expect("a gate").unread;
        assert_eq!(unread.is_some(), entry.is_empty(), "{unread:?}");
    }
    work.enter(&least.to_string());
    work.done(GATED).expect("it passes");
    let step = work.step(GATED);
    assert_eq!((step.progress.as_str(), step.wanting.len()), ("done", 0));

    // Changed to a value that fails, it does not stay as good as done.
    work.enter(&too_short);
    let step = work.step(GATED);
    assert_eq!((step.progress.as_str(), step.wanting.len()), ("unmet", 1));
    assert!(step.wanting[0].contains(&too_short), "{:?}", step.wanting);
    work.enter("");
    assert_eq!(work.step(GATED).progress, "unmet");
}

#[test]
fn a_step_is_done_all_the_same_without_its_gate_for_a_written_reason_only() {
    let mut work = Work::begin();
    work.reach(GATED);
    let entered = "0.5";
    work.enter(entered);
    let refusal = work.without(GATED, "  ").expect_err("refused");
    assert_eq!(refusal.code, "no-value");
    let reason = "The owner has to leave";
    work.without(GATED, reason).expect("kept");
    let step = work.step(GATED);
    assert_eq!(step.progress, "excused");
    assert_eq!(step.without.as_deref(), Some(reason));
    let report = work.report("technician");
    for told in [reason, &step.wanting[0]] {
        assert!(report.contains(told), "{told}: {report}");
    }
    // Taken back, it is open, and the reason is gone with it.
    work.change(GATED, StepChange::Done { done: false })
        .expect("kept");
    let step = work.step(GATED);
    assert_eq!((step.progress.as_str(), step.without), ("open", None));
}

#[test]
fn a_step_is_not_done_before_its_timer_has_run_to_its_end() {
    let mut work = Work::begin();
    work.reach(TIMED);
    let least = work.step(TIMED).timers[0].seconds / 60.0;
    assert!(least >= 2.0, "{least}");
    let refusal = work.done(TIMED).expect_err("refused");
    assert_eq!(refusal.code, "timer-not-run");
    work.timer(true);
    work.wait(1);
    let refusal = work.done(TIMED).expect_err("refused");
    assert_eq!(refusal.code, "timer-not-run");
    assert!(refusal.message.contains("1 min"), "{refusal}");

    // Stopped and started anew, it counts from its second start.
    work.timer(false);
    work.wait(600);
    assert_eq!(work.step(TIMED).timers[0].ran.as_deref(), Some("1 min"));
    work.done(TIMED).expect_err("refused");
    work.timer(true);
    #[allow(clippy::cast_possible_truncation)]
    work.wait(least.ceil() as i64);
    work.done(TIMED).expect("it has run");
    let step = work.step(TIMED);
    assert_eq!(step.progress, "done");
    assert_eq!(step.timers[0].met, Some(true));
    // Done, it runs no longer.
    assert!(step.timers[0].stopped_at.is_some());
    let ran = step.timers[0].ran.clone().expect("it ran");
    assert!(work.report("technician").contains(&ran), "{ran}");
}

#[test]
fn a_step_marked_as_done_before_gates_held_is_told_as_done_and_not_met() {
    let mut work = Work::with(
        r#"[{"step":"check-no-bubbles","done":true},
        {"step":"purge-loop-side","done":true,
         "timers":[{"kind":"purge","started_at":"2026-08-29T10:00:00Z"}]}]"#,
    );
    for id in [TIMED, GATED] {
        let step = work.step(id);
        assert_eq!(step.progress, "unmet", "{id}");
        assert!(!step.wanting.is_empty(), "{id}");
    }
    assert!(work.plan().count.contains("2 done but not met"));
    let report = work.report("technician");
    assert!(report.contains("2 steps are done but not met"));
    assert!(!report.contains("Gate passed."), "{report}");
    // One may still say why.
    work.reach(TIMED);
    work.without(TIMED, "Purged until noon").expect("kept");
    assert_eq!(work.step(TIMED).progress, "excused");
    // Done once more, its timer has to run once more.
    work.change(TIMED, StepChange::Done { done: false })
        .expect("kept");
    let refusal = work.done(TIMED).expect_err("refused");
    assert_eq!(refusal.code, "timer-not-run");
}

#[test]
fn app_and_reports_count_alike_and_a_step_left_out_for_a_reason_is_not_missing() {
    let mut work = Work::begin();
    let plan = work.plan();
    let held = |step: &&StepView| step.gate.is_some() || !step.timers.is_empty();
    let held = plan.steps.iter().filter(held).count();
    let left_out = ["tell-owner"];
    all_done(&mut work, &left_out);
    let all = plan.steps.len();
    let count = work.plan().count;
    let done = format!("{} of {all} steps done", all - held - 1);
    for told in [
        done,
        "1 left out for a reason".to_owned(),
        format!("{held} done all the same, for a reason"),
    ] {
        assert!(count.contains(&told), "{told}: {count}");
    }
    let report = work.report("technician");
    assert!(report.contains(&count), "{report}");
    for wrong in ["not done. Do", "write down why"] {
        assert!(!report.contains(wrong), "{wrong}: {report}");
    }
    assert!(report.contains("How the visit ended was not written down."));
    // Nothing is left to do, so nobody is told that it is.
    let page = work.report("homeowner");
    for wrong in ["the work is not finished", "What still has to be done"] {
        assert!(!page.contains(wrong), "{wrong}: {page}");
    }
    assert!(
        page.contains("not every check on the way was met"),
        "{page}"
    );
}

#[test]
fn one_step_that_is_not_done_is_told_as_one() {
    let mut work = Work::begin();
    all_done(&mut work, &[]);
    work.change("tell-owner", StepChange::Done { done: false })
        .expect("kept");
    let report = work.report("technician");
    assert!(report.contains("One step is not done."), "{report}");
    // Not as an end of "31 steps".
    assert!(!report.contains(" 1 steps"), "{report}");
}

#[test]
fn nothing_is_corrected_when_all_that_corrects_was_left_out() {
    let mut work = Work::begin();
    let steps = work.plan().steps;
    let corrects = [
        "Purge", "Charge", "Flush", "Repair", "Adjust", "Dose", "Mix",
    ];
    let left_out = steps
        .iter()
        .filter(|step| corrects.contains(&step.stage.as_str()));
    let left_out: Vec<&str> = left_out.map(|step| step.id.as_str()).collect();
    assert!(left_out.contains(&TIMED), "{left_out:?}");
    all_done(&mut work, &left_out);
    let page = work.report("homeowner");
    assert!(page.contains("What still has to be done"), "{page}");
}
