//! A step is done when its gates and timers are met, or for a written reason.

use crate::api::types::{PlanView, ReportRequest, StepChange, StepView};
use crate::api::{ApiError, Engine, Surroundings};
use crate::report::document::Block;
use crate::store::Store;
use chrono::{DateTime, NaiveDate, Utc};
use std::sync::Arc;
use std::sync::atomic::{AtomicI64, Ordering};
use uuid::Uuid;

/// A clock that a test sets.
struct Clock(Arc<AtomicI64>);
impl Surroundings for Clock {
    fn now(&self) -> DateTime<Utc> {
        let seconds = 1_788_000_000 + self.0.load(Ordering::Relaxed);
        DateTime::from_timestamp(seconds, 0).expect("a time")
    }
    fn today(&self) -> NaiveDate {
        self.now().date_naive()
    }
    fn new_id(&self) -> Uuid {
        Uuid::now_v7()
    }
}

/// Purging a loop, with the timer that it runs by and the gate behind it.
const TIMED: &str = "purge-loop-side";
const GATED: &str = "check-no-bubbles";
const LOOKED: &str = "bubble-free-time";

struct Work {
    engine: Engine,
    visit: String,
    seconds: Arc<AtomicI64>,
}

impl Work {
    /// A call on which air was found.
    fn begin() -> Self {
        Self::with("[]")
    }

    fn with(actions: &str) -> Self {
        let seconds = Arc::new(AtomicI64::new(0));
        let store = Store::in_memory().expect("opens");
        let clock = Box::new(Clock(Arc::clone(&seconds)));
        let mut engine = Engine::over(store, clock).expect("opens");
        let file = format!(
            r#"{{"format":"returnline-visit","version":1,
            "visit":{{"verdicts":[{{"cause":"air-left-in-circuit","confirmed":true}}],
            "date":"2026-08-29","actions":{actions}}}}}"#
        );
        let visit = engine.take_visit_file(file.as_bytes()).expect("taken").id;
        Self {
            engine,
            visit,
            seconds,
        }
    }

    fn change(&mut self, step: &str, change: StepChange) -> Result<(), ApiError> {
        self.engine.change_step(&self.visit, step, &change)
    }

    fn done(&mut self, step: &str) -> Result<(), ApiError> {
        self.change(step, StepChange::Done { done: true })
    }

    fn enter(&mut self, minutes: &str) {
        let entry = StepChange::Gate {
            looked: LOOKED.to_owned(),
            text: minutes.to_owned(),
            unit: "min".to_owned(),
        };
        self.change(GATED, entry).expect("kept");
    }

    fn timer(&mut self, running: bool) {
        let kind = "purge".to_owned();
        let change = StepChange::Timer { kind, running };
        self.change(TIMED, change).expect("kept");
    }

    fn wait(&self, minutes: i64) {
        self.seconds.fetch_add(60 * minutes, Ordering::Relaxed);
    }

    fn plan(&self) -> PlanView {
        let answer = self.engine.answer(&self.visit).expect("worked out");
        answer.plan.expect("a plan")
    }

    fn step(&self, id: &str) -> StepView {
        let mut steps = self.plan().steps.into_iter();
        steps.find(|step| step.id == id).expect("planned")
    }

    fn report(&self, reader: &str) -> String {
        let request = ReportRequest {
            reader: reader.to_owned(),
            ..ReportRequest::default()
        };
        let (call, _) = self.engine.call_for(&self.visit, &request).expect("read");
        let issue = self.engine.issue(&self.visit, &request, call.wording);
        let issue = issue.expect("gathered");
        let catalog = call.wording.catalog();
        let blocks: Vec<Block> = match reader {
            "homeowner" => {
                let content = call.homeowner_content(&issue);
                crate::report::homeowner::document(&content, catalog).blocks
            }
            _ => {
                let content = call.service_content(&issue);
                crate::report::service::document(&content, catalog).blocks
            }
        };
        format!("{blocks:?}")
    }
}

/// The pass value in minutes, as the plan tells it.
fn limit(rule: &str) -> f64 {
    let mut words = rule.split_whitespace();
    words.find_map(|word| word.parse().ok()).expect("a number")
}

#[test]
fn a_step_is_not_done_while_its_gate_has_no_entry_or_one_that_fails() {
    let mut work = Work::begin();
    let gate = work.step(GATED).gate.expect("a gate");
    let rule = gate.criteria[0].rule.clone();
    let least = limit(&rule);
    assert!(rule.starts_with("at least"), "{rule}");
    let too_short = (least / 2.0).to_string();
    for entry in ["", &too_short] {
        work.enter(entry);
        let refusal = work.done(GATED).expect_err("refused");
        assert_eq!(refusal.code, "gate-not-met");
        // The gate, what it needs, and where to go back to.
        for told in [&gate.criteria[0].label, &rule, &gate.otherwise] {
            assert!(refusal.message.contains(told), "{told}: {refusal}");
        }
        assert!(refusal.message.contains(entry), "{refusal}");
        assert_eq!(work.step(GATED).progress, "open");
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
fn a_step_is_gone_on_from_without_its_gate_for_a_written_reason_only() {
    let mut work = Work::begin();
    let entered = "0.5";
    work.enter(entered);
    let without = |reason: &str| StepChange::Without {
        reason: reason.to_owned(),
    };
    let refusal = work.change(GATED, without("  ")).expect_err("refused");
    assert_eq!(refusal.code, "no-value");
    let reason = "The owner has to leave";
    work.change(GATED, without(reason)).expect("kept");
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
    assert!(work.plan().count.contains("2 done, gate or time not met"));
    let report = work.report("technician");
    assert!(report.contains("2 steps are marked as done without"));
    assert!(!report.contains("Gate passed."), "{report}");
    // One may still say why.
    let reason = "Purged until noon".to_owned();
    work.change(TIMED, StepChange::Without { reason })
        .expect("kept");
    assert_eq!(work.step(TIMED).progress, "excused");
    // Done once more, its timer has to run once more.
    work.change(TIMED, StepChange::Done { done: false })
        .expect("kept");
    let refusal = work.done(TIMED).expect_err("refused");
    assert_eq!(refusal.code, "timer-not-run");
}

/// Takes every step up: the named ones left out, the others done.
fn all_done(work: &mut Work, left_out: &[&str]) {
    for step in work.plan().steps {
        let change = if left_out.contains(&step.id.as_str()) {
            StepChange::Skipped {
                reason: Some("Not on this system".to_owned()),
            }
        } else if step.gate.is_some() || !step.timers.is_empty() {
            StepChange::Without {
                reason: "Proved on paper".to_owned(),
            }
        } else {
            StepChange::Done { done: true }
        };
        work.change(&step.id, change).expect("kept");
    }
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
        format!("{held} gone on from without gate or time, for a reason"),
    ] {
        assert!(count.contains(&told), "{told}: {count}");
    }
    let report = work.report("technician");
    assert!(report.contains(&count), "{report}");
    for wrong in ["not done. Finish", "write down why not"] {
        assert!(!report.contains(wrong), "{wrong}: {report}");
    }
    assert!(report.contains("How the visit ended was not written down."));
    // Nothing is left to do, so nobody is told that it is.
    let page = work.report("homeowner");
    for wrong in ["the work is not finished", "What still has to be done"] {
        assert!(!page.contains(wrong), "{wrong}: {page}");
    }
    assert!(page.contains("one check on the way was not met"), "{page}");
}

#[test]
fn one_step_that_is_not_done_is_told_as_one() {
    let mut work = Work::begin();
    all_done(&mut work, &[]);
    work.change("tell-owner", StepChange::Done { done: false })
        .expect("kept");
    let report = work.report("technician");
    assert!(report.contains("One step is not done."), "{report}");
    assert!(!report.contains("1 steps"), "{report}");
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
