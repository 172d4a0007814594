//! Everything a call says, for the inference.

use super::call::{Call, State};
use super::evaluation::{Evaluation, Explained};
use super::evaluators::{Evaluator, freeze};
use super::facts::facts;
use super::levels::with_slip;
use super::reach;
use super::season::{Season, SeasonBasis};
use crate::diagnosis::{
    Case, CauseId, CauseKind, EvidenceKind, Finding, FindingId, Found, Graph, Level, Likelihood,
    Observation, ReadWith,
};
use crate::model::LoopModel;
use crate::records::visit_file::VisitFile;
use crate::records::{self, Instrument, Phase, Reading, ReadingPoint};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};

/// What a call says.
#[derive(Clone, Debug)]
pub struct Gathered {
    /// For the inference.
    pub case: Case,
    /// Why each finding with readings is judged as it is, in the order of the graph.
    pub explained: Vec<Explained>,
    /// Readings and answers that nothing could be made of.
    pub unused: Vec<Unused>,
    /// Findings that nothing tells yet and no reading could, with what is on record.
    pub out_of_reach: BTreeSet<FindingId>,
    /// The season, and how it is known.
    pub season: Option<(Season, SeasonBasis)>,
}

/// Something written down that nothing could be made of.
#[derive(Clone, PartialEq, Debug)]
pub enum Unused {
    /// The reading at this place of the visit.
    Reading {
        /// Its place.
        place: usize,
        /// Its point.
        point: ReadingPoint,
        /// Why.
        why: WhyUnused,
    },
    /// The answer to this finding.
    Answer {
        /// The finding.
        finding: String,
        /// Why.
        why: WhyUnused,
    },
    /// The verdict on this cause.
    Verdict {
        /// The cause.
        cause: String,
        /// Why.
        why: WhyUnused,
    },
}

/// Why something could not be used.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
pub enum WhyUnused {
    /// It shows the system as it was left.
    AsLeft,
    /// It was taken in a state in which it says nothing.
    WrongMode,
    /// The instrument cannot tell this fluid.
    InstrumentCannotTell,
    /// It is an earlier entry of a log: the last one is that of today.
    Earlier,
    /// It needs another reading or a record beside it.
    NeedsCompanion,
    /// No finding of the graph looks at it.
    NotAsked,
    /// The graph does not know what it refers to.
    Unknown,
}

impl WhyUnused {
    /// Stable code; its sentence is `unused-<code>`.
    pub fn code(self) -> &'static str {
        match self {
            Self::AsLeft => "as-left",
            Self::WrongMode => "wrong-mode",
            Self::InstrumentCannotTell => "instrument-cannot-tell",
            Self::Earlier => "earlier",
            Self::NeedsCompanion => "needs-companion",
            Self::NotAsked => "not-asked",
            Self::Unknown => "unknown",
        }
    }
}

impl Gathered {
    /// Whether readings stand behind a finding.
    pub fn is_read(&self, finding: &FindingId) -> bool {
        let mut explained = self.explained.iter();
        explained.any(|explained| explained.finding == finding.as_str())
    }
}

/// Gathers the evidence of a call. `today` stands in for a visit without date.
pub fn gather(file: &VisitFile, model: &LoopModel, graph: &Graph, today: NaiveDate) -> Gathered {
    let call = Call::new(file, model, today);
    let mut observations = Vec::new();
    let mut explained = Vec::new();
    let mut used = BTreeSet::new();
    let mut asked = BTreeSet::new();
    for finding in graph.findings() {
        let evaluator = match &finding.evidence {
            EvidenceKind::Evaluator(name) => Evaluator::named(name),
            // What somebody saw is not said a second time by readings.
            EvidenceKind::Symptom | EvidenceKind::Observation => {
                let id = finding.id.as_str();
                let answered = file.visit.answers.iter().any(|said| said.finding == id);
                Evaluator::showing(id).filter(|_| !answered)
            }
        };
        let Some(evaluator) = evaluator else {
            continue;
        };
        if evaluator.graded != (finding.scale.count() == 3) {
            continue;
        }
        asked.extend(evaluator.reads);
        for evaluation in evaluator.evaluate(&call) {
            used.extend(evaluation.used.iter().copied());
            observations.push(observation(graph, finding, &evaluation));
            explained.push(Explained {
                finding: finding.id.as_str().to_owned(),
                read_with: evaluation.read_with,
                measured: evaluation.measured,
                expected: evaluation.expected,
                beside: evaluation.beside,
                reasoning: evaluation.reasoning,
            });
        }
    }
    let told = observations.iter().map(|seen: &Observation| &seen.finding);
    let out_of_reach = reach::out_of_reach(file, graph, &told.collect(), &used, call.day);
    let mut unused = unused_readings(&call, &used, &asked);
    answers(file, graph, &mut observations, &mut unused);
    let found = verdicts(file, graph, &mut unused);
    let known = graph.facts().iter().collect::<BTreeSet<_>>();
    let facts = facts(file, model, today)
        .into_iter()
        .filter(|(fact, _)| known.contains(fact))
        .collect();
    Gathered {
        case: Case {
            observations,
            facts,
            priors: BTreeMap::new(),
            found,
            called: true,
        },
        explained,
        unused,
        out_of_reach,
        season: call.season(),
    }
}

fn observation(graph: &Graph, finding: &Finding, evaluation: &Evaluation) -> Observation {
    Observation {
        finding: finding.id.clone(),
        likelihood: as_reported(finding, evaluation.likelihood),
        read_with: read_with(graph, evaluation.read_with),
        if_lying: None,
    }
}

/// A finding that is misjudged now and then though the instrument is sound.
fn as_reported(finding: &Finding, likelihood: Likelihood) -> Likelihood {
    let levels = finding.scale.count() as f64;
    // A wrong level is one of the others: reliability r leaves the share
    // (1 - r) n/(n - 1) of observations without meaning.
    let slip = ((1.0 - finding.reliability) * levels / (levels - 1.0)).clamp(0.0, 1.0);
    with_slip(likelihood.weights(), slip).unwrap_or(likelihood)
}

/// The cause of kind instrument that a reading stands or falls with.
fn read_with(graph: &Graph, instrument: Option<Instrument>) -> ReadWith {
    let known = instrument.and_then(lies).map(CauseId::new).filter(|cause| {
        graph
            .find_cause(cause)
            .is_some_and(|place| graph.cause(place).kind == CauseKind::Instrument)
    });
    known.map_or(ReadWith::Nothing, ReadWith::Other)
}

/// Id of the cause that an instrument lies; none for what is not doubted.
pub fn lies(instrument: Instrument) -> Option<&'static str> {
    match instrument {
        Instrument::DialGauge => Some("dial-gauge-lies"),
        Instrument::DifferentialGauge => Some("differential-gauge-lies"),
        Instrument::PortThermometer => Some("port-thermometer-lies"),
        Instrument::ClampThermometer => Some("clamp-thermometer-lies"),
        Instrument::FlowMeter | Instrument::ClampFlowMeter => Some("flow-meter-lies"),
        Instrument::Refractometer => Some("refractometer-lies"),
        Instrument::Hydrometer => Some("hydrometer-lies"),
        Instrument::PowerMeter => Some("power-meter-lies"),
        Instrument::RefrigerantGauges => Some("refrigerant-gauges-lie"),
        Instrument::DigitalGauge => Some("digital-gauge-lies"),
        Instrument::TestStrip => Some("test-kit-lies"),
        Instrument::UnitDisplay => Some("unit-display-lies"),
        Instrument::ClampAmmeter | Instrument::Laboratory | Instrument::Ruler => None,
    }
}

fn answers(
    file: &VisitFile,
    graph: &Graph,
    observations: &mut Vec<Observation>,
    unused: &mut Vec<Unused>,
) {
    for answer in &file.visit.answers {
        let finding = graph
            .findings()
            .iter()
            .find(|finding| finding.id.as_str() == answer.finding);
        let level = match answer.is {
            records::Level::Yes => Level::Present,
            records::Level::No => Level::Absent,
            records::Level::Low => Level::Low,
            records::Level::Normal => Level::Normal,
            records::Level::High => Level::High,
        };
        let likelihood = finding.and_then(|finding| {
            // A level called by eye is no reading, whatever the reading is worth.
            let reliability = match finding.evidence {
                EvidenceKind::Evaluator(_) => finding.reliability.min(BY_EYE),
                EvidenceKind::Symptom | EvidenceKind::Observation => finding.reliability,
            };
            Likelihood::reported(finding.scale, level, reliability)
                .ok()
                .map(|likelihood| (finding, likelihood))
        });
        match likelihood {
            Some((finding, likelihood)) => {
                observations.push(Observation::new(finding.id.clone(), likelihood));
            }
            // Some facts are told; they are with the facts.
            None if graph
                .facts()
                .iter()
                .any(|fact| fact.as_str() == answer.finding) => {}
            None => unused.push(Unused::Answer {
                finding: answer.finding.clone(),
                why: WhyUnused::Unknown,
            }),
        }
    }
}

/// How often a level called without a number is the true one. Judgement.
const BY_EYE: f64 = 0.85;

/// A cause that somebody found to be so, or not so, is so or not so: what the
/// technician put on record by looking outweighs what readings suggest.
fn verdicts(file: &VisitFile, graph: &Graph, unused: &mut Vec<Unused>) -> BTreeMap<CauseId, Found> {
    let mut found = BTreeMap::new();
    for verdict in &file.visit.verdicts {
        let cause = CauseId::new(&verdict.cause);
        if graph.find_cause(&cause).is_none() {
            unused.push(Unused::Verdict {
                cause: verdict.cause.clone(),
                why: WhyUnused::Unknown,
            });
            continue;
        }
        found.insert(cause, Found::certainly(verdict.confirmed));
    }
    found
}

fn unused_readings(
    call: &Call<'_>,
    used: &BTreeSet<usize>,
    asked: &BTreeSet<ReadingPoint>,
) -> Vec<Unused> {
    call.file
        .visit
        .readings
        .iter()
        .enumerate()
        .filter(|(place, _)| !used.contains(place))
        .map(|(place, reading)| Unused::Reading {
            place,
            point: reading.point(),
            why: why_unused(call, reading, asked),
        })
        .collect()
}

fn why_unused(call: &Call<'_>, reading: &Reading, asked: &BTreeSet<ReadingPoint>) -> WhyUnused {
    let point = reading.point();
    let freeze_point = matches!(
        point,
        ReadingPoint::FreezePointSupply | ReadingPoint::FreezePointReturn
    );
    if reading.phase == Phase::Left {
        WhyUnused::AsLeft
    } else if !wanted_state(point).admits(reading.mode) {
        WhyUnused::WrongMode
    } else if freeze_point
        && freeze::doubt(call.model.fluid.kind, reading.instrument_or_usual()).is_none()
    {
        WhyUnused::InstrumentCannotTell
    } else if call.is_earlier(reading) {
        WhyUnused::Earlier
    } else if asked.contains(&point) || HELPERS.contains(&point) {
        WhyUnused::NeedsCompanion
    } else {
        WhyUnused::NotAsked
    }
}

/// Points that say nothing by themselves and help to judge others.
const HELPERS: &[ReadingPoint] = &[
    ReadingPoint::LoopTemperature,
    ReadingPoint::SampleTemperature,
    ReadingPoint::LowestEnteringWater,
    ReadingPoint::UnitCapacity,
];

/// The state in which a reading at a point says something.
fn wanted_state(point: ReadingPoint) -> State {
    use ReadingPoint as P;
    match point {
        P::StaticPressure => State::AtRest,
        P::SuctionPressure
        | P::ExchangerDrop
        | P::Flow
        | P::StrainerDrop
        | P::CirculatorRise
        | P::ShutOffRise
        | P::CirculatorPower
        | P::CirculatorCurrent
        | P::CirculatorBodyTemperature
        | P::CircuitReturn
        | P::EnteringWater
        | P::LeavingWater
        | P::UnitPower
        | P::UnitCapacity
        | P::AirTemperatureChange
        | P::EvaporatingTemperature
        | P::CondensingTemperature
        | P::Superheat
        | P::Subcooling => State::Running,
        _ => State::Any,
    }
}
