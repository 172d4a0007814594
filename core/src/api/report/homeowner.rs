//! What the homeowner's page says.

use super::super::Call;
use super::super::types::{AssessmentView, PlanView};
use super::Issue;
use super::content::written;
use super::season::Season;
use crate::plan::WorkPlan;
use crate::plan::quantity::QuantityKind;
use crate::records::{FlowCentre, GroundKind, LoopFluidKind, Outcome, Phase, ReadingPoint};
use crate::report::homeowner::{HomeownerReport, PlainReading};
use crate::report::parts::{ChartPart, PhotoPart};
use crate::units::{GaugePressure, Quantity};
use std::sync::Arc;

/// Width and height of the chart, points.
const CHART: (f32, f32) = (254.0, 160.0);
/// Causes told to a layperson.
const CAUSES: usize = 2;
/// Readings that a layperson can follow, each with a label of its own.
const POINTS: [ReadingPoint; 3] = [
    ReadingPoint::StaticPressure,
    ReadingPoint::Flow,
    ReadingPoint::FreezePointSupply,
];
/// Corrections after which bubbles may be heard for some days.
const STIRS_BUBBLES: [&str; 5] = [
    "purge-loop",
    "bleed-circulators",
    "flush-debris",
    "replace-fluid",
    "restore-circuit",
];

/// The correction that says that nothing has to be repaired.
const NO_REPAIR: &str = "explain-and-record";

/// How far the work has come.
#[derive(Copy, Clone, PartialEq, Eq)]
enum Progress {
    Open,
    Begun,
    Done,
}

impl Call {
    /// What the homeowner's page says.
    pub fn homeowner_content(&self, issue: &Issue) -> HomeownerReport {
        let answer = self.answer();
        let view = &answer.assessment;
        let worked = self.work_plan();
        let work = self.work(worked);
        let season = self.season_to_keep(worked);
        let site = self.site_title();
        let day = self.today.to_string();
        let subject = match &self.file.visit.technician {
            Some(technician) => self.fill(
                "homeowner-subject-by",
                &[("date", &day), ("technician", technician)],
            ),
            None => self.fill("homeowner-subject", &[("date", &day)]),
        };
        let title = self.fill("homeowner-title", &[("site", &site)]);
        let (wrong, sure) = self.wrong(view);
        let open: Vec<String> = work
            .iter()
            .filter(|(_, _, progress)| *progress != Progress::Done)
            .map(|(_, words, progress)| match progress {
                Progress::Begun => self.fill("homeowner-begun", &[("work", words)]),
                _ => words.clone(),
            })
            .collect();
        HomeownerReport {
            meta: self.meta(issue, title, subject),
            page: issue.page,
            issuer: issue.issuer.clone(),
            site,
            told: self.file.visit.complaint.clone(),
            short: self.short(view, &work),
            wrong,
            sure,
            done: self.done(&work),
            picture: Some(self.system_picture(&self.told(view))),
            readings: self.plain_readings(answer.plan.as_ref()),
            notice: self.notice(season.as_ref(), worked, &work),
            season: season.as_ref().and_then(|season| {
                let words = ("homeowner-season-words", "homeowner-season");
                self.season_chart(season, words, CHART)
            }),
            watch: self.watch(),
            call: self.call_when(season.as_ref(), !open.is_empty()),
            next_visit: match issue.next_visit {
                Some(day) => self.fill("homeowner-next-date", &[("date", &day.to_string())]),
                None if open.is_empty() => self.say("homeowner-next-none"),
                None => self.say("homeowner-next-open"),
            },
            open,
            safety: self.safety(),
            photos: before_and_after(&issue.photos),
        }
    }

    /// Each correction: its procedure, in plain words, and how far it has come.
    fn work(&self, plan: Option<&WorkPlan>) -> Vec<(String, String, Progress)> {
        let Some(plan) = plan else { return Vec::new() };
        let mark = |step: &str| {
            let mut actions = self.file.visit.actions.iter().rev();
            let action = actions.find(|action| action.step.as_deref() == Some(step))?;
            Some(action.done)
        };
        let fixed = self.file.visit.outcome == Some(Outcome::Fixed);
        let any = plan
            .steps
            .iter()
            .any(|step| mark(step.id.as_str()).is_some());
        // Beside a repair, “nothing has to be repaired” would contradict it.
        let repairs = plan.corrections.len() > 1;
        let corrections = plan.corrections.iter();
        corrections
            .filter(|correction| !(repairs && correction.procedure.as_str() == NO_REPAIR))
            .map(|correction| {
                let serving = plan
                    .steps
                    .iter()
                    .filter(|step| step.serves.contains(&correction.procedure));
                let marks: Vec<bool> = serving
                    .map(|step| mark(step.id.as_str()) == Some(true))
                    .collect();
                let progress =
                    if (fixed && !any) || (!marks.is_empty() && marks.iter().all(|done| *done)) {
                        Progress::Done
                    } else if marks.contains(&true) {
                        Progress::Begun
                    } else {
                        Progress::Open
                    };
                let procedure = correction.procedure.as_str().to_owned();
                let words = self.say(&format!("homeowner-work-{procedure}"));
                (procedure, words, progress)
            })
            .collect()
    }

    /// What was done: corrections, and what the technician wrote down.
    fn done(&self, work: &[(String, String, Progress)]) -> Vec<String> {
        let done = work
            .iter()
            .filter(|(_, _, progress)| *progress == Progress::Done)
            .map(|(_, words, _)| words.clone());
        let actions = self.file.visit.actions.iter();
        let others = actions.filter(|action| action.step.is_none() && action.done);
        done.chain(others.filter_map(|action| action.text.clone()))
            .collect()
    }

    fn short(&self, view: &AssessmentView, work: &[(String, String, Progress)]) -> String {
        let finished = !work.is_empty() && work.iter().all(|(_, _, p)| *p == Progress::Done);
        let begun = work.iter().any(|(_, _, p)| *p != Progress::Open);
        let key = match (self.file.visit.outcome, view.verdict.as_str()) {
            (Some(outcome), _) => format!("homeowner-short-{}", written(&outcome)),
            (None, "normal") => "homeowner-short-nothing_wrong".to_owned(),
            (None, _) if finished || begun => "homeowner-short-partly".to_owned(),
            (None, "not_the_loop") => "homeowner-short-handed_over".to_owned(),
            (None, "likely" | "tied") => "homeowner-short-found".to_owned(),
            (None, _) if !work.is_empty() => "homeowner-short-open".to_owned(),
            (None, _) => "homeowner-short-unknown".to_owned(),
        };
        self.say(&key)
    }

    /// What was wrong, and how sure that is.
    fn wrong(&self, view: &AssessmentView) -> (Vec<String>, Option<String>) {
        let confirmed: Vec<String> = self
            .file
            .visit
            .verdicts
            .iter()
            .filter(|verdict| verdict.confirmed)
            .map(|verdict| self.say(&format!("cause-{}.homeowner", verdict.cause)))
            .collect();
        if !confirmed.is_empty() {
            return (confirmed, Some(self.say("homeowner-sure-checked")));
        }
        let leading: Vec<String> = view
            .causes
            .iter()
            .take(CAUSES)
            .map(|cause| cause.homeowner.clone())
            .collect();
        let first = leading.first().cloned();
        match view.verdict.as_str() {
            "likely" => {
                let probability = view.causes.first().map(|cause| cause.shown.clone());
                let probability = probability.unwrap_or_default();
                let sure = self.fill("homeowner-sure-likely", &[("probability", &probability)]);
                (first.into_iter().collect(), Some(sure))
            }
            "tied" => (leading, Some(self.say("homeowner-sure-tied"))),
            "normal" => {
                let normal = view.causes.iter().find(|cause| cause.kind == "normal");
                let why = normal.map(|cause| cause.homeowner.clone());
                let nothing = self.say("homeowner-wrong-nothing");
                (std::iter::once(nothing).chain(why).collect(), None)
            }
            "not_the_loop" => (vec![self.say("homeowner-wrong-other")], None),
            _ => {
                // What the plan would treat is worth telling, as what it is.
                let planned = view.causes.first().filter(|cause| cause.has_plan);
                let told = planned.map(|cause| {
                    self.fill("homeowner-wrong-so-far", &[("cause", &cause.homeowner)])
                });
                let unknown = || self.say("homeowner-wrong-unknown");
                (vec![told.unwrap_or_else(unknown)], None)
            }
        }
    }

    fn open_tank(&self) -> bool {
        let centre = &self.file.system.flow_centre;
        matches!(centre, Some(FlowCentre::NonPressurised { .. }))
    }

    /// The system as it is recorded, with a sign where the fault is or was.
    fn system_picture(&self, told: &[String]) -> ChartPart {
        let (drawing, marks) = self.system_in_plain_words(told);
        let ground = self.file.system.ground.as_ref();
        let key = match ground.and_then(|ground| ground.kind) {
            Some(GroundKind::Pond) => "homeowner-picture-words-pond",
            _ => "homeowner-picture-words",
        };
        let mut caption = vec![self.say(key)];
        caption.extend(marks.iter().map(|mark| {
            let what = self.say(&format!("plain-sign-{}", mark.kind));
            let named = [
                ("letter", mark.view.letter.as_str()),
                ("what", what.as_str()),
            ];
            self.fill("homeowner-picture-mark", &named)
        }));
        ChartPart {
            title: self.say("homeowner-picture"),
            drawing: Arc::new(drawing),
            caption: caption.join(" "),
        }
    }

    /// The causes that the page tells: confirmed ones, else those in the lead.
    fn told(&self, view: &AssessmentView) -> Vec<String> {
        let verdicts = self.file.visit.verdicts.iter();
        let confirmed: Vec<String> = verdicts
            .filter(|verdict| verdict.confirmed)
            .map(|verdict| verdict.cause.clone())
            .collect();
        if !confirmed.is_empty() {
            return confirmed;
        }
        let leading = match view.verdict.as_str() {
            "likely" => 1,
            "tied" => CAUSES,
            _ => 0,
        };
        let causes = view.causes.iter().take(leading);
        causes.map(|cause| cause.id.clone()).collect()
    }

    fn plain_readings(&self, plan: Option<&PlanView>) -> Vec<PlainReading> {
        let line = |point: ReadingPoint| {
            let shown = |phase: Phase| {
                let value = self.latest(point, Some(phase))?;
                if value.circuit.is_some() {
                    return None;
                }
                Some(value.text_for(self.wording.units))
            };
            let (before, after) = (shown(Phase::Found), shown(Phase::Left));
            if before.is_none() && after.is_none() {
                return None;
            }
            let mut proof = plan.into_iter().flat_map(|plan| &plan.proof);
            Some(PlainReading {
                label: self.say(&format!("homeowner-reading-{}", point.id())),
                before,
                after,
                expected: proof
                    .find(|proof| proof.point == point.id())
                    .and_then(|proof| proof.expected.clone()),
            })
        };
        POINTS.into_iter().filter_map(line).collect()
    }

    fn notice(
        &self,
        season: Option<&Season>,
        plan: Option<&WorkPlan>,
        work: &[(String, String, Progress)],
    ) -> Vec<String> {
        let mut said = Vec::new();
        let between = |key: &str, low: GaugePressure, high: GaugePressure| {
            let ends = [self.pressure(low), self.pressure(high)];
            self.fill(key, &[("low", &ends[0]), ("high", &ends[1])])
        };
        if self.open_tank() {
            said.push(self.say("homeowner-notice-level"));
        } else if let Some(season) = season {
            let key = if season.falls_when_warm() {
                "homeowner-notice-band"
            } else {
                "homeowner-notice-band-even"
            };
            let seasons = [&season.winter, &season.summer];
            let [winter, summer] = seasons.map(|range| self.range(range));
            let [cold, warm] = seasons.map(|range| self.pressure(range.middle));
            let named = [
                ("winter", winter.as_str()),
                ("summer", summer.as_str()),
                ("cold", cold.as_str()),
                ("warm", warm.as_str()),
            ];
            said.push(self.fill(key, &named));
        } else {
            said.push(self.say("homeowner-notice-season"));
        }
        let at = |kind| {
            plan.and_then(|plan| Some(plan.sheet.get(kind)?.figure.si))
                .map(GaugePressure::from_si)
        };
        let recharged = work
            .iter()
            .any(|(_, _, progress)| *progress == Progress::Done);
        if let (true, Some(low), Some(high)) = (
            recharged,
            at(QuantityKind::RecheckLow),
            at(QuantityKind::RecheckHigh),
        ) {
            said.push(between("homeowner-notice-recheck", low, high));
        }
        let stirred = work.iter().any(|(procedure, _, progress)| {
            *progress == Progress::Done && STIRS_BUBBLES.contains(&procedure.as_str())
        });
        if stirred {
            said.push(self.say("homeowner-notice-bubbles"));
        }
        said
    }

    fn watch(&self) -> Vec<String> {
        let first = if self.open_tank() {
            "homeowner-watch-level"
        } else {
            "homeowner-watch-gauge"
        };
        [
            first,
            "homeowner-watch-sound",
            "homeowner-watch-leak",
            "homeowner-watch-filter",
        ]
        .map(|key| self.say(key))
        .into()
    }

    fn call_when(&self, season: Option<&Season>, open: bool) -> Vec<String> {
        let mut said = Vec::new();
        if self.open_tank() {
            said.push(self.say("homeowner-call-level"));
        } else if let Some((low, high)) = season.map(Season::ends) {
            let ends = [self.pressure(low), self.pressure(high)];
            let ends = [("low", ends[0].as_str()), ("high", ends[1].as_str())];
            said.push(self.fill("homeowner-call-gauge", &ends));
        } else {
            said.push(self.say("homeowner-call-pressure"));
        }
        for key in ["noise", "stops", "leak"] {
            said.push(self.say(&format!("homeowner-call-{key}")));
        }
        if open {
            said.push(self.say("homeowner-call-open"));
        }
        said
    }

    fn safety(&self) -> Vec<String> {
        let fluid = self.file.system.fluid.map(|fluid| fluid.kind);
        let name = fluid.map_or("unknown".to_owned(), |kind: LoopFluidKind| written(&kind));
        [
            format!("homeowner-fluid-{name}"),
            "homeowner-safety-hands-off".to_owned(),
            "homeowner-safety-drain".to_owned(),
            "homeowner-safety-inside".to_owned(),
        ]
        .map(|key| self.say(&key))
        .into()
    }
}

/// The first photo as found and the first as left.
fn before_and_after(photos: &[PhotoPart]) -> Vec<PhotoPart> {
    let mut kept: Vec<PhotoPart> = Vec::new();
    for photo in photos {
        if kept.len() < 2 && kept.iter().all(|known| known.phase != photo.phase) {
            kept.push(PhotoPart {
                taken_at: None,
                ..photo.clone()
            });
        }
    }
    kept
}
