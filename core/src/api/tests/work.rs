//! A call on which somebody works, with a clock that the tests set.

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
pub const TIMED: &str = "purge-loop-side";
pub const GATED: &str = "check-no-bubbles";
pub const LOOKED: &str = "bubble-free-time";

/// The call.
pub struct Work {
    engine: Engine,
    visit: String,
    seconds: Arc<AtomicI64>,
}

impl Work {
    /// A call on which air was found.
    pub fn begin() -> Self {
        Self::with("[]")
    }

    pub fn with(actions: &str) -> Self {
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

    pub fn change(&mut self, step: &str, change: StepChange) -> Result<(), ApiError> {
        self.engine.change_step(&self.visit, step, &change)
    }

    /// Acknowledges every caution of a step that asks for it.
    pub fn acknowledge(&mut self, step: &str) {
        for caution in self.step(step).cautions {
            let change = StepChange::Acknowledged {
                caution: caution.id,
                yes: true,
            };
            self.change(step, change).expect("kept");
        }
    }

    /// Does everything before a step, gates and timers on paper, and reads its cautions.
    pub fn reach(&mut self, step: &str) {
        let before = self.plan().steps.into_iter();
        for earlier in before.take_while(|known| known.id != step) {
            take_up(self, &earlier);
        }
        self.acknowledge(step);
    }

    pub fn without(&mut self, step: &str, reason: &str) -> Result<(), ApiError> {
        let reason = reason.to_owned();
        self.change(step, StepChange::Without { reason })
    }

    pub fn done(&mut self, step: &str) -> Result<(), ApiError> {
        self.change(step, StepChange::Done { done: true })
    }

    pub fn enter(&mut self, minutes: &str) {
        let entry = StepChange::Gate {
            looked: LOOKED.to_owned(),
            text: minutes.to_owned(),
            unit: "min".to_owned(),
        };
        self.change(GATED, entry).expect("kept");
    }

    pub fn timer(&mut self, running: bool) {
        let kind = "purge".to_owned();
        let change = StepChange::Timer { kind, running };
        self.change(TIMED, change).expect("kept");
    }

    pub fn wait(&self, minutes: i64) {
        self.seconds.fetch_add(60 * minutes, Ordering::Relaxed);
    }

    pub fn plan(&self) -> PlanView {
        let answer = self.engine.answer(&self.visit).expect("worked out");
        answer.plan.expect("a plan")
    }

    pub fn step(&self, id: &str) -> StepView {
        let mut steps = self.plan().steps.into_iter();
        steps.find(|step| step.id == id).expect("planned")
    }

    pub fn report(&self, reader: &str) -> String {
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

/// Marks a step as done, with a reason where it has a gate or timer.
pub fn take_up(work: &mut Work, step: &StepView) {
    work.acknowledge(&step.id);
    let held = step.gate.is_some() || !step.timers.is_empty();
    let taken = match held {
        true => work.without(&step.id, "Proved on paper"),
        false => work.done(&step.id),
    };
    taken.expect("kept");
}

/// Leaves a step out.
pub fn leave_out(work: &mut Work, step: &str) {
    let reason = Some("Not on this system".to_owned());
    work.change(step, StepChange::Skipped { reason })
        .expect("kept");
}

/// Takes every step up: the named ones left out, the others done.
pub fn all_done(work: &mut Work, left_out: &[&str]) {
    for step in work.plan().steps {
        match left_out.contains(&step.id.as_str()) {
            true => leave_out(work, &step.id),
            false => take_up(work, &step),
        }
    }
}
