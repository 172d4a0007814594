//! What must hold of every plan, checked by walking through it.
//!
//! The walk does not trust how the plan was made: it follows the pressure of
//! each section and what stands open, step by step.

use super::id::{OpeningId, StepId};
use super::library::{Library, Opening, Step};
use super::terms::{FlowCentreKind, Hazard, Section, Side, Stage, TimerKind};
use super::work::{PlanNote, WorkPlan};
use std::collections::{BTreeMap, BTreeSet};
use thiserror::Error;

/// Name of the opening that stands for the power being locked off.
const POWER: &str = "power";

/// A rule that a plan breaks.
#[derive(Clone, PartialEq, Eq, Debug, Error)]
#[allow(missing_docs)] // the messages are the meaning
pub enum Violation {
    #[error("the plan has no step")]
    Empty,
    #[error("`{step}` is not a step of the library")]
    UnknownStep { step: StepId },
    #[error("`{step}` comes twice")]
    Twice { step: StepId },
    #[error("`{step}` comes after a step of a later stage")]
    StageOutOfOrder { step: StepId },
    #[error("`{step}` washes the unit before the loop is done")]
    UnitBeforeLoop { step: StepId },
    #[error("`{step}` flushes or purges after the dose")]
    PurgedAfterDosing { step: StepId },
    #[error("`{step}` moves fluid after the charge")]
    FluidMovedAfterCharge { step: StepId },
    #[error("`{step}` works on {section:?} under pressure")]
    WorkedUnderPressure { step: StepId, section: Section },
    #[error("`{step}` pressurises {section:?} while `{opening}` is open")]
    PressurisedWhileOpen {
        step: StepId,
        section: Section,
        opening: OpeningId,
    },
    #[error("`{step}` opens the indoor part with the power not locked off")]
    PowerNotLocked { step: StepId },
    #[error("`{step}` closes `{opening}`, which is not open")]
    ClosedWhatIsNotOpen { step: StepId, opening: OpeningId },
    #[error("`{opening}` is still open at `{step}`")]
    StartedWhileOpen { step: StepId, opening: OpeningId },
    #[error("`{opening}` is never closed")]
    LeftOpen { opening: OpeningId },
    #[error("`{step}` pumps into {section:?}, which is shut off")]
    PumpedIntoShut { step: StepId, section: Section },
    #[error("`{step}` pumps with no hose connected")]
    PumpedWithoutHoses { step: StepId },
    #[error("what `{step}` drained is not purged and its air not measured")]
    DrainedNotPurged { step: StepId },
    #[error("`{step}` adds to a full loop from which nothing was drawn off")]
    DosedIntoFullLoop { step: StepId },
    #[error("`{step}` reads what takes running circulators, with the power locked off")]
    ReadWithPowerOff { step: StepId },
    #[error("the charge of `{step}` is not held and watched")]
    ChargeNotHeld { step: StepId },
    #[error("`{step}` comes before what it proves")]
    ProofBeforeRestart { step: StepId },
    #[error("the hazard {hazard:?} of `{step}` has no caution")]
    HazardWithoutCaution { step: StepId, hazard: Hazard },
    #[error("the gate of `{step}` goes back to a step that is not before it")]
    NoWayBack { step: StepId },
}

/// Every rule that the plan breaks; none for a good plan.
pub fn violations(library: &Library, plan: &WorkPlan) -> Vec<Violation> {
    let mut walk = Walk::new(library);
    if plan.steps.is_empty() && !nothing_applies(plan) {
        walk.found.push(Violation::Empty);
    }
    for planned in &plan.steps {
        match library.step(&planned.id) {
            None => walk.found.push(Violation::UnknownStep {
                step: planned.id.clone(),
            }),
            Some(step) => walk.take(step),
        }
        for hazard in &planned.hazards {
            let answered = planned.cautions.iter().any(|id| {
                library
                    .caution(id)
                    .is_some_and(|caution| caution.hazards.contains(hazard))
            });
            if !answered {
                walk.found.push(Violation::HazardWithoutCaution {
                    step: planned.id.clone(),
                    hazard: *hazard,
                });
            }
        }
        if planned
            .gate
            .iter()
            .any(|gate| gate.return_to == 0 || gate.return_to >= planned.number)
        {
            walk.found.push(Violation::NoWayBack {
                step: planned.id.clone(),
            });
        }
    }
    walk.end()
}

/// Whether the plan says of each of its corrections that it has nothing to do
/// on this kind of system.
fn nothing_applies(plan: &WorkPlan) -> bool {
    plan.corrections.iter().all(|correction| {
        plan.notes.contains(&PlanNote::NotForThisSystem {
            procedure: correction.procedure.clone(),
        })
    })
}

struct Walk<'a> {
    library: &'a Library,
    found: Vec<Violation>,
    seen: BTreeSet<&'a StepId>,
    stage: Option<Stage>,
    unit_begun: bool,
    dosed: bool,
    charged: bool,
    unheld: Option<&'a StepId>,
    open: BTreeMap<&'a OpeningId, Option<&'a Opening>>,
    at_zero: BTreeSet<Section>,
    /// Sections with their valves shut.
    shut: BTreeSet<Section>,
    /// The step that let the fluid out of the indoor part, until the air is out again.
    drained: Option<&'a StepId>,
    purged: bool,
    drawn_off: bool,
}

impl<'a> Walk<'a> {
    /// At arrival everything counts as under pressure and closed.
    fn new(library: &'a Library) -> Self {
        Self {
            library,
            found: Vec::new(),
            seen: BTreeSet::new(),
            stage: None,
            unit_begun: false,
            dosed: false,
            charged: false,
            unheld: None,
            open: BTreeMap::new(),
            at_zero: BTreeSet::new(),
            shut: BTreeSet::new(),
            drained: None,
            purged: false,
            drawn_off: false,
        }
    }

    fn take(&mut self, step: &'a Step) {
        let id = || step.id.clone();
        if !self.seen.insert(&step.id) {
            self.found.push(Violation::Twice { step: id() });
        }
        self.order(step);
        self.valves(step);
        self.pressure(step);
        self.hoses(step);
        self.air(step);
        self.dose(step);
        if step.running && self.open.contains_key(&OpeningId::new(POWER)) {
            self.found.push(Violation::ReadWithPowerOff { step: id() });
        }
        for opening in &step.closes {
            if self.open.remove(opening).is_none() {
                self.found.push(Violation::ClosedWhatIsNotOpen {
                    step: id(),
                    opening: opening.clone(),
                });
            }
        }
        // Power comes back last, when everything that holds fluid is closed.
        let closes_power = step.closes.iter().any(|opening| opening.as_str() == POWER);
        if closes_power || step.stage > Stage::Restart {
            for opening in self.open.keys() {
                self.found.push(Violation::StartedWhileOpen {
                    step: id(),
                    opening: (*opening).clone(),
                });
            }
        }
    }

    fn order(&mut self, step: &'a Step) {
        let id = || step.id.clone();
        if self.stage.is_some_and(|stage| step.stage < stage) {
            self.found.push(Violation::StageOutOfOrder { step: id() });
        }
        if self.stage != Some(step.stage) {
            self.unit_begun = false;
        }
        self.stage = Some(step.stage);
        let washes = matches!(step.stage, Stage::Flush | Stage::Purge);
        if washes && step.side == Side::Loop && self.unit_begun {
            self.found.push(Violation::UnitBeforeLoop { step: id() });
        }
        self.unit_begun |= matches!(step.side, Side::Unit | Side::Whole);
        if washes && self.dosed {
            self.found.push(Violation::PurgedAfterDosing { step: id() });
        }
        if self.charged && step.stage != Stage::Charge && !step.pressurises.is_empty() {
            self.found
                .push(Violation::FluidMovedAfterCharge { step: id() });
        }
        match step.stage {
            Stage::Dose => self.dosed = true,
            Stage::Charge => {
                self.charged = true;
                if needs_hold(step) {
                    self.unheld = Some(&step.id);
                }
            }
            Stage::Hold => self.unheld = None,
            Stage::Prove if self.open.contains_key(&OpeningId::new(POWER)) => {
                self.found
                    .push(Violation::ProofBeforeRestart { step: id() });
            }
            _ => {}
        }
    }

    fn pressure(&mut self, step: &'a Step) {
        let id = || step.id.clone();
        // What is shut off keeps its pressure when its neighbours are let down: only a
        // step of its own relieves it.
        let alone = step.relieves.len() == 1;
        let reached = step.relieves.iter().copied();
        self.at_zero
            .extend(reached.filter(|section| alone || !self.shut.contains(section)));
        for section in &step.at_zero {
            if !self.at_zero.contains(section) {
                self.found.push(Violation::WorkedUnderPressure {
                    step: id(),
                    section: *section,
                });
            }
        }
        for opening in &step.opens {
            let known = self.library.opening(opening);
            let section = known.and_then(|known| known.section);
            if let Some(section) = section
                && !self.at_zero.contains(&section)
            {
                self.found.push(Violation::WorkedUnderPressure {
                    step: id(),
                    section,
                });
            }
            let indoors = matches!(section, Some(Section::Unit | Section::Exchanger));
            if indoors && !self.open.contains_key(&OpeningId::new(POWER)) {
                self.found.push(Violation::PowerNotLocked { step: id() });
            }
            self.open.insert(opening, known);
        }
        for section in &step.pressurises {
            self.at_zero.remove(section);
            // A connection may be under pressure while it is open.
            let open = self.open.iter().filter(|(_, known)| {
                known.is_some_and(|known| !known.connection && known.section == Some(*section))
            });
            self.found
                .extend(open.map(|(opening, _)| Violation::PressurisedWhileOpen {
                    step: id(),
                    section: *section,
                    opening: (*opening).clone(),
                }));
        }
    }

    /// What is shut, and that nothing is pumped there but through hoses of its own.
    fn valves(&mut self, step: &'a Step) {
        for section in &step.joins {
            self.shut.remove(section);
            self.at_zero.remove(section);
        }
        self.shut.extend(step.shuts.iter().copied());
        for section in &step.pressurises {
            if self.shut.contains(section) && !self.connected(&[*section]) {
                self.found.push(Violation::PumpedIntoShut {
                    step: step.id.clone(),
                    section: *section,
                });
            }
        }
    }

    /// Whether a hose sits on one of the sections.
    fn connected(&self, sections: &[Section]) -> bool {
        let mut open = self.open.values().flatten();
        open.any(|opening| {
            let section = opening.section;
            opening.connection && section.is_some_and(|section| sections.contains(&section))
        })
    }

    /// Fluid comes through a hose, or out of the part that a valve is opened to.
    fn hoses(&mut self, step: &'a Step) {
        let by_itself = !step.joins.is_empty() && !step.pressurises.contains(&Section::Ports);
        if !step.pressurises.is_empty() && !by_itself && !self.connected(&step.pressurises) {
            self.found.push(Violation::PumpedWithoutHoses {
                step: step.id.clone(),
            });
        }
    }

    /// What was drained is purged and its air measured; a reservoir that stands over
    /// it fills it and takes its air by itself.
    fn air(&mut self, step: &'a Step) {
        let indoors = [Section::Unit, Section::Exchanger];
        let drains = indoors.iter().any(|part| step.relieves.contains(part));
        if drains {
            self.drained = Some(&step.id);
            self.purged = false;
        }
        let reaches = step.pressurises.contains(&Section::Unit);
        match step.stage {
            Stage::Purge if reaches && needs_reservoir(step) => self.drained = None,
            // Filling alone leaves its air in it.
            Stage::Purge if reaches => {
                let mut timers = step.timers.iter();
                self.purged |= timers.any(|timer| timer.kind == TimerKind::Purge);
            }
            Stage::DeadHead if reaches && self.purged => self.drained = None,
            _ => {}
        }
        if step.stage >= Stage::Restart
            && let Some(drained) = self.drained.take()
        {
            self.found.push(Violation::DrainedNotPurged {
                step: drained.clone(),
            });
        }
    }

    fn dose(&mut self, step: &'a Step) {
        self.drawn_off |= step.draws_off;
        if step.adds && !self.drawn_off {
            self.found.push(Violation::DosedIntoFullLoop {
                step: step.id.clone(),
            });
        }
    }

    fn end(mut self) -> Vec<Violation> {
        self.found
            .extend(self.open.keys().map(|opening| Violation::LeftOpen {
                opening: (*opening).clone(),
            }));
        if let Some(step) = self.unheld {
            self.found
                .push(Violation::ChargeNotHeld { step: step.clone() });
        }
        self.found
    }
}

/// Whether the step is for a vented reservoir alone.
fn needs_reservoir(step: &Step) -> bool {
    step.only.flow_centres == [FlowCentreKind::NonPressurised]
}

/// A charge of a closed system is held and watched; the level of a vented
/// reservoir is not.
fn needs_hold(step: &Step) -> bool {
    step.only
        .flow_centres
        .iter()
        .any(|kind| *kind != FlowCentreKind::NonPressurised)
}
