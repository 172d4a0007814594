//! Simulated calls put to the program, and what it answered.

use super::call::{Effort, SimulatedCall};
use super::fault::{FAULTS, Fault, ORDINARY};
use super::signs::leads_to_a_call;
use super::truth::Truth;
use crate::invented::Dice;
use chrono::NaiveDate;
use returnline_core::api::{Call, Wording, knowledge, read_visit_file};
use returnline_core::diagnosis::{
    Case, CauseId, CauseKind, CheckId, Diagnosis, EvidenceKind, Graph, Learned, Licence, Means,
    NextStep, Policy, SourceText, Verdict, diagnose, shipped,
};
use returnline_core::evidence::{Evaluator, Gathered, gather};
use returnline_core::model::LoopModel;
use returnline_core::records::ReadingPoint;
use returnline_core::records::visit_file::VisitFile;
use std::collections::BTreeSet;
use std::sync::OnceLock;

/// A graph read from a folder instead of the one built in, to try a change of it
/// without building the program anew.
static OTHER_GRAPH: OnceLock<Graph> = OnceLock::new();

/// Uses the graph of a folder from now on.
///
/// # Panics
/// If the folder cannot be read, or holds no valid graph.
pub fn use_graph_of(folder: &str) {
    let read = |name: &str| std::fs::read_to_string(format!("{folder}/{name}")).expect(name);
    let texts: Vec<(&str, String)> = shipped::FILES
        .iter()
        .map(|f| (f.name, read(f.name)))
        .collect();
    let sources: Vec<SourceText<'_>> = texts
        .iter()
        .map(|(name, text)| SourceText { name, text })
        .collect();
    let graph = Graph::load(&sources).unwrap_or_else(|problems| panic!("{problems:#?}"));
    OTHER_GRAPH.set(graph).ok();
}

/// Confirmed causes of earlier callbacks, if the program is to have learned from some.
static CONFIRMED: OnceLock<Learned> = OnceLock::new();

/// Lets the program learn from callbacks from now on: the confirmed causes of each. Of those
/// in which nothing was wrong nobody confirms any.
pub fn learn_from<'a>(callbacks: impl Iterator<Item = &'a [String]>) {
    let mut learned = Learned::default();
    for causes in callbacks {
        learned.add(
            1,
            causes
                .iter()
                .filter(|cause| !ORDINARY.iter().any(|fault| fault.id == cause.as_str()))
                .map(|cause| (CauseId::new(cause), 1)),
        );
    }
    CONFIRMED.set(learned).ok();
}

/// The graph in use.
pub fn graph() -> &'static Graph {
    OTHER_GRAPH.get().unwrap_or_else(|| &knowledge().graph)
}

/// What is tried.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Setting {
    /// How much is read and looked for.
    pub effort: Effort,
    /// One instrument lies.
    pub lying: bool,
    /// The recommended checks are followed up to so many.
    pub follow: usize,
    /// Every fault as often as every other, instead of as often as in the trade.
    pub alike: bool,
}

/// What came out.
#[derive(Clone, Debug)]
pub struct Outcome {
    /// What was injected; empty: nothing.
    pub fault: &'static str,
    /// Whether it is a fault, not ordinary behaviour.
    pub faulty: bool,
    /// The causes in the order of the answer, instruments left out as in the
    /// list of causes that the program shows.
    pub ranked: Vec<(String, f64)>,
    /// The most probable fault, ordinary behaviours left out.
    pub first_fault: Option<String>,
    /// The answer was "nothing to correct".
    pub called_healthy: bool,
    /// The answer was "not the loop".
    pub called_elsewhere: bool,
    /// Probability of no fault.
    pub no_fault: f64,
    /// Checks done until one cause reached 90 %, and whether it was the right one.
    pub reached: Option<(usize, bool)>,
    /// The answer after the recommended checks, and how many were made; none where none
    /// were to be followed.
    pub followed: Option<(usize, Box<Outcome>)>,
    /// The instrument that lied.
    pub liar: Option<&'static str>,
}

/// Draws a fault.
fn draw<'a>(faults: &'a [Fault], alike: bool, dice: &mut Dice) -> &'a Fault {
    if alike {
        return &faults[dice.below(faults.len())];
    }
    let all: f64 = faults.iter().map(|fault| fault.share).sum();
    let mut at = dice.between(0.0, all);
    faults
        .iter()
        .find(|fault| {
            at -= fault.share;
            at <= 0.0
        })
        .unwrap_or(&faults[0])
}

/// Severities tried for one that makes somebody call. A fault that hardly ever does
/// so by itself (corrosion, iron in the water) is found in calls about something else.
const SEVERITIES: usize = 100;

/// One call of a number, faulty or ordinary.
#[must_use]
pub fn simulated(setting: Setting, faulty: bool, seed: u64) -> SimulatedCall {
    let mut dice = Dice::new(seed.wrapping_mul(0x5851_f42d_4c95_7f2d) ^ u64::from(faulty));
    let faults = if faulty { FAULTS } else { ORDINARY };
    let fault = draw(faults, setting.alike, &mut dice);
    let mut truth = Truth::new(fault, &mut dice);
    for _ in 0..SEVERITIES {
        if leads_to_a_call(&truth) {
            break;
        }
        truth = Truth::new(fault, &mut dice);
    }
    SimulatedCall::new(truth, setting.effort, setting.lying, seed ^ 0x9e37_79b9)
}

/// Puts a call to the program, and follows its advice.
#[must_use]
pub fn tried(setting: Setting, faulty: bool, seed: u64) -> Outcome {
    let mut call = simulated(setting, faulty, seed);
    let first = assess(&read(&call));
    let mut outcome = outcome(&call, faulty, &first);
    let (end, checks) = followed(first, setting.follow, |asked| {
        call.check(&asked.signs, &asked.points, asked.log);
        assess(&read(&call))
    });
    outcome.reached = found(&end).map(|cause| (checks, cause == call.truth.fault));
    if setting.follow > 0 {
        let after = self::outcome(&call, faulty, &end);
        outcome.followed = Some((checks, Box::new(after)));
    }
    outcome
}

/// The call as the program reads it from its visit file.
///
/// # Panics
/// If it is no visit file: a fault of the simulator.
#[must_use]
pub fn read(call: &SimulatedCall) -> VisitFile {
    let text = call.file().to_string();
    read_visit_file(text.as_bytes(), Wording::default())
        .unwrap_or_else(|error| panic!("{error:?}\n{text}"))
}

/// The day on which all calls are looked at.
fn today() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 1, 1).expect("a day")
}

/// What the program makes of a call before it thinks, on the graph in use.
fn gathered(file: &VisitFile) -> Gathered {
    let mut gathered = gather(file, &LoopModel::of(file), graph(), today());
    if let Some(learned) = CONFIRMED.get() {
        gathered.case.priors = learned.priors(graph());
    }
    gathered
}

/// What the inference gets of a call, on the graph in use.
#[must_use]
pub fn case(file: &VisitFile) -> Case {
    gathered(file).case
}

/// The ordinary path: a visit file, assessed.
///
/// # Panics
/// If its evidence cannot be weighed, which takes certainties that exclude each other.
#[must_use]
pub fn assess(file: &VisitFile) -> Diagnosis {
    if OTHER_GRAPH.get().is_some() || CONFIRMED.get().is_some() {
        let gathered = gathered(file);
        let mut means = Means {
            out_of_reach: gathered.out_of_reach,
            ..Means::default()
        };
        means.licences.insert(Licence::Electrical);
        if file.visit.means.refrigerant_certified == Some(true) {
            means.licences.insert(Licence::Refrigerant);
        }
        return diagnose(graph(), &gathered.case, &means, &Policy::default(), 0)
            .expect("evidence that can be weighed");
    }
    let assessed = Call::assess(file, today(), Wording::default());
    assessed
        .diagnosis()
        .expect("evidence that can be weighed")
        .clone()
}

/// What a check asks for.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Asked {
    /// Findings to look, listen or ask for.
    pub signs: Vec<&'static str>,
    /// Points to read.
    pub points: Vec<&'static str>,
    /// The gauge is to be read over days.
    pub log: bool,
}

/// The cause that reached 90 %, if one did.
fn found(diagnosis: &Diagnosis) -> Option<String> {
    let first = ranking(diagnosis).into_iter().next();
    first.and_then(|(cause, probability)| (probability >= 0.9).then_some(cause))
}

/// Follows the recommended checks, `most` of them, until one cause has 90 % or none is worth
/// its time: `made` makes one and gives the answer after it. The last answer, and how many
/// checks were made.
pub fn followed(
    first: Diagnosis,
    most: usize,
    mut made: impl FnMut(&Asked) -> Diagnosis,
) -> (Diagnosis, usize) {
    let mut now = first;
    let mut done = BTreeSet::new();
    while done.len() < most && found(&now).is_none() {
        let Some(asked) = asked(&now, &mut done) else {
            break;
        };
        now = made(&asked);
    }
    (now, done.len())
}

/// The check that comes next, or the next one of the list where that was made
/// already and nothing came of it; none if there is nothing to be checked.
fn asked(diagnosis: &Diagnosis, made: &mut BTreeSet<CheckId>) -> Option<Asked> {
    if !matches!(diagnosis.next, NextStep::Check(_)) {
        return None;
    }
    let policy = Policy::default();
    let next = diagnosis.checks.iter().find(|check| {
        check.obstacle.is_none() && check.bits >= policy.worth_bits && !made.contains(&check.check)
    })?;
    let graph = graph();
    let mut checks = graph.checks().iter();
    let check = checks.find(|check| check.id == next.check)?;
    made.insert(check.id.clone());
    let mut asked = Asked {
        signs: Vec::new(),
        points: Vec::new(),
        log: check.id.as_str() == "pressure-log",
    };
    for &place in &check.reveals {
        let finding = graph.finding(place);
        match &finding.evidence {
            EvidenceKind::Evaluator(name) => {
                let reads = Evaluator::named(name).map_or(&[][..], |evaluator| evaluator.reads);
                asked
                    .points
                    .extend(reads.iter().copied().map(ReadingPoint::id));
            }
            _ => asked.signs.push(finding.id.as_str()),
        }
    }
    Some(asked)
}

/// Causes in the order of the answer: faults and ordinary behaviours.
#[must_use]
pub fn ranking(diagnosis: &Diagnosis) -> Vec<(String, f64)> {
    diagnosis
        .causes
        .iter()
        .filter(|ranked| ranked.kind != CauseKind::Instrument)
        .map(|ranked| (ranked.cause.as_str().to_owned(), ranked.probability))
        .collect()
}

fn outcome(call: &SimulatedCall, faulty: bool, diagnosis: &Diagnosis) -> Outcome {
    Outcome {
        fault: call.truth.fault,
        faulty,
        ranked: ranking(diagnosis),
        first_fault: diagnosis
            .causes
            .iter()
            .find(|ranked| matches!(ranked.kind, CauseKind::Loop | CauseKind::Unit))
            .map(|ranked| ranked.cause.as_str().to_owned()),
        called_healthy: matches!(diagnosis.verdict, Verdict::NothingToCorrect { .. }),
        called_elsewhere: matches!(diagnosis.verdict, Verdict::NotTheLoop { .. }),
        no_fault: diagnosis.health.no_fault,
        reached: None,
        followed: None,
        liar: call.lie.map(|lie| lie.instrument),
    }
}

/// Many calls, on two threads.
#[must_use]
pub fn many(setting: Setting, faulty: bool, count: usize, seed: u64) -> Vec<Outcome> {
    let threads = std::thread::available_parallelism().map_or(2, |n| n.get().min(8));
    let mut all: Vec<(usize, Outcome)> = std::thread::scope(|scope| {
        let workers: Vec<_> = (0..threads)
            .map(|thread| {
                scope.spawn(move || {
                    (thread..count)
                        .step_by(threads)
                        .map(|at| (at, tried(setting, faulty, seed + at as u64)))
                        .collect::<Vec<_>>()
                })
            })
            .collect();
        workers
            .into_iter()
            .flat_map(|worker| worker.join().expect("a worker that ends"))
            .collect()
    });
    all.sort_by_key(|(at, _)| *at);
    all.into_iter().map(|(_, outcome)| outcome).collect()
}
