//! What the homeowner's page says.

mod work;

use work::{Stand, Work};

use super::super::Call;
use super::super::types::{AssessmentView, PlanView};
use super::Issue;
use super::content::written;
use super::season::Season;
use crate::plan::quantity::QuantityKind;
use crate::plan::{ProofTime, WorkPlan};
use crate::records::{FlowCentre, GroundKind, LoopFluidKind, Phase, Reading, ReadingPoint};
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
            .filter(|work| work.stand != Stand::Done)
            .map(|work| match work.stand {
                Stand::Begun => self.fill("homeowner-begun", &[("work", &work.words)]),
                _ => work.words.clone(),
            })
            .collect();
        HomeownerReport {
            meta: self.meta(issue, title, subject),
            page: issue.page,
            issuer: issue.issuer.clone(),
            site,
            told: self.file.visit.complaint.clone(),
            short: self.short(view, &work, answer.plan.as_ref()),
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
            call: self.call_when(season.as_ref(), worked, !open.is_empty()),
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
            verdict @ ("normal" | "normal_so_far") => {
                let normal = view.causes.iter().find(|cause| cause.kind == "normal");
                let why = normal.map(|cause| cause.homeowner.clone());
                let nothing = self.say(match verdict {
                    "normal" => "homeowner-wrong-nothing",
                    _ => "homeowner-wrong-nothing-so-far",
                });
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
            let shown = |value: Option<&Reading>| {
                let value = value.filter(|value| value.circuit.is_none())?;
                Some(value.text_for(self.wording.units))
            };
            let before = shown(self.latest(point, Some(Phase::Found)));
            let after = shown(self.as_left(point, ProofTime::Now));
            if before.is_none() && after.is_none() {
                return None;
            }
            let mut proof = plan.into_iter().flat_map(|plan| &plan.proof);
            let proof = proof.find(|proof| proof.point == point.id() && !proof.later);
            let proof = proof.filter(|proof| proof.expected.is_some());
            Some(PlainReading {
                label: self.say(&format!("homeowner-reading-{}", point.id())),
                before,
                after,
                expected: proof.and_then(|proof| proof.expected.clone()),
                verdict: proof.map(|proof| proof.verdict_words.clone()),
            })
        };
        POINTS.into_iter().filter_map(line).collect()
    }

    fn notice(
        &self,
        season: Option<&Season>,
        plan: Option<&WorkPlan>,
        work: &[Work],
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
        let recharged = work.iter().any(|work| work.stand == Stand::Done);
        if let (true, Some(low), Some(high)) = (
            recharged,
            at(QuantityKind::RecheckMonthLow),
            at(QuantityKind::RecheckDayHigh),
        ) {
            said.push(between("homeowner-notice-recheck", low, high));
        }
        let stirred = work.iter().any(|work| {
            work.stand == Stand::Done && STIRS_BUBBLES.contains(&work.procedure.as_str())
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

    fn call_when(
        &self,
        season: Option<&Season>,
        plan: Option<&WorkPlan>,
        open: bool,
    ) -> Vec<String> {
        let mut said = Vec::new();
        if self.open_tank() {
            said.push(self.say("homeowner-call-level"));
        } else if let Some((low, high)) = season.map(Season::ends) {
            // What was left on purpose is nothing to call about, before the pipe has given way.
            let left = plan.and_then(|plan| plan.sheet.get(QuantityKind::LeavePressureHigh));
            let left = left.map_or(high, |left| GaugePressure::from_si(left.figure.si));
            let high = if left > high { left } else { high };
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
