//! What the engine thinks of a call.

use crate::text::{Args, Catalog};
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The answer to a call.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct AssessmentView {
    /// `likely`, `tied`, `normal`, `normal_so_far`, `not_the_loop` or `open`.
    pub verdict: String,
    /// The answer in one sentence.
    pub headline: String,
    /// Causes, most probable first.
    pub causes: Vec<CauseView>,
    /// Two causes that together explain better than one.
    pub pair: Option<PairView>,
    /// What the leading causes leave unexplained.
    pub unexplained: Vec<String>,
    /// Instruments that may not tell the truth.
    pub doubted: Vec<DoubtView>,
    /// Where nothing is to be corrected: what was found as it should be.
    pub sound: Vec<String>,
    /// What to do next, best first.
    pub checks: Vec<CheckView>,
    /// Why no further check is worth its time, if so.
    pub stop: Option<String>,
    /// Records that would let more be told, in words, those that would tell most first.
    pub records: Vec<String>,
    /// What was assumed for want of a record.
    pub assumptions: Vec<String>,
    /// Readings that could not be used, and why.
    pub unused: Vec<String>,
}

/// An instrument that may not tell the truth.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct DoubtView {
    /// Identifier of the cause that it lies.
    pub cause: String,
    /// What is doubted, in words.
    pub title: String,
    /// How probable that is, as it is shown.
    pub shown: String,
    /// What speaks for and against it.
    pub reasons: Vec<ReasonView>,
}

/// Two causes that together explain better than one.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct PairView {
    /// That they do, in words.
    pub words: String,
    /// How probable it is that both are there, as it is shown.
    pub shown: String,
}

/// A cause with its reasons.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct CauseView {
    /// Identifier.
    pub id: String,
    /// Title for the technician.
    pub title: String,
    /// Sentence for the homeowner.
    pub homeowner: String,
    /// `loop`, `unit`, `normal` or `instrument`.
    pub kind: String,
    /// Probability, 0 to 1.
    pub probability: f64,
    /// Probability as it is shown, for example `83 %`.
    pub shown: String,
    /// Why, strongest reason first.
    pub reasons: Vec<ReasonView>,
    /// What is known of system and commissioning that raises or lowers it.
    pub context: Vec<ContextView>,
    /// What would change the mind about it.
    pub turns: Vec<TurnView>,
    /// Whether there is a work plan for it.
    pub has_plan: bool,
}

/// What is known of system and commissioning that raises or lowers a cause.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct ContextView {
    /// In words.
    pub words: String,
    /// By how much, as it is shown; it is explained with the probability of the cause.
    pub shown: Option<String>,
}

impl ContextView {
    /// The words with their number, in one line.
    pub fn whole(&self) -> String {
        match &self.shown {
            Some(shown) => format!("{} ({shown})", self.words),
            None => self.words.clone(),
        }
    }
}

/// What would change the mind about a cause.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct TurnView {
    /// In words.
    pub words: String,
    /// What it would do; none for what the cause rests on now.
    pub outcome: Option<TurnOutcome>,
}

/// An outcome of a check that would change the mind.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct TurnOutcome {
    /// Identifier of the check.
    pub check: String,
    /// Identifier of the outcome.
    pub outcome: String,
    /// The probability now and then, as it is shown.
    pub shown: String,
}

/// One reason for or against a cause.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct ReasonView {
    /// Identifier of the finding.
    pub finding: String,
    /// What was found, in words.
    pub found: String,
    /// Weight in bits, taken by itself: above zero speaks for the cause, below against.
    pub bits: f64,
    /// Weight as it is shown, for example `4.9 to 1 for it`.
    pub shown: String,
    /// The chain from cause through mechanism to finding, in words. Where it speaks
    /// against the cause, the first of several introduces the others.
    pub path: Vec<String>,
    /// The numbers behind it, if it rests on a reading.
    pub figures: Option<FigureView>,
}

/// Numbers with the reasoning behind them.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct FigureView {
    /// What was measured, with unit and uncertainty.
    pub measured: Option<String>,
    /// What was to be expected here.
    pub expected: Option<String>,
    /// The formula in words and signs.
    pub formula: String,
    /// Inputs: name and value.
    pub inputs: Vec<(String, String)>,
    /// Who says so.
    pub source: String,
}

impl FigureView {
    /// What was measured and what was to be expected, each told by a word: for a text
    /// that has no labels beside its numbers.
    pub fn said(&self, catalog: &Catalog) -> Vec<String> {
        let say = |key: &str, value: &String| {
            catalog.fill(key, &Args::new().text("value", value.clone()))
        };
        let measured = self
            .measured
            .iter()
            .map(|value| say("figure-measured", value));
        let expected = self
            .expected
            .iter()
            .map(|value| say("figure-expected", value));
        measured.chain(expected).collect()
    }
}

/// A number of the answer whose origin is asked for.
#[derive(Clone, PartialEq, Eq, Debug, Deserialize, TS)]
#[ts(export)]
#[serde(tag = "about", rename_all = "snake_case", deny_unknown_fields)]
pub enum WhyQuestion {
    /// The probability of a cause.
    Probability {
        /// Identifier of the cause.
        cause: String,
    },
    /// The bits of a reason.
    Reason {
        /// Identifier of the cause.
        cause: String,
        /// Identifier of the finding.
        finding: String,
    },
    /// The bits and minutes of a check.
    Check {
        /// Identifier of the check.
        check: String,
    },
    /// The chance of one outcome of a check, and what it would do.
    Outcome {
        /// Identifier of the check.
        check: String,
        /// Identifier of the outcome.
        outcome: String,
    },
    /// That two causes together explain better than one.
    Pair,
}

/// A check worth making.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct CheckView {
    /// Identifier.
    pub id: String,
    /// Title.
    pub title: String,
    /// What to do.
    pub how: String,
    /// Minutes it takes.
    pub minutes: f64,
    /// Expected information, bits.
    pub bits: f64,
    /// Both as they are shown, for example `5 min, tells much about: Air left in the loop`.
    pub shown: String,
    /// Tools needed.
    pub tools: Vec<String>,
    /// A licence it needs, in words.
    pub licence: Option<String>,
    /// Cautions to read first.
    pub cautions: Vec<String>,
    /// Findings it answers without a number: their identifiers.
    pub asks: Vec<String>,
    /// Points where it takes a reading: their identifiers.
    pub reads: Vec<String>,
    /// What it may show, the most probable first.
    pub outcomes: Vec<OutcomeView>,
}

/// One thing that a check may show.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct OutcomeView {
    /// Identifier, unique in the check.
    pub id: String,
    /// What it shows, in words.
    pub seen: String,
    /// How probable that is, as it is shown.
    pub shown: String,
    /// What it would make of the causes, in words.
    pub then: String,
}
