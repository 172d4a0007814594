//! Use the water, treat it, or bring other water.

use super::guideline::{GUIDELINES, Guideline, Parameter, Use};
use super::index::{ScaleTendency, WaterSample, indices};
use crate::units::{
    Bound, ElectricalConductivity, MassConcentration, Number, OutOfRange, Quantity,
};

/// What to do with the water, from harmless to serious.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Action {
    /// As it is.
    Use,
    /// After treatment (softening, deionising, filtering).
    Treat,
    /// Not this water.
    BringIn,
}

/// What can be seen or smelt without a test.
#[derive(Copy, Clone, PartialEq, Eq, Hash, Debug)]
pub enum Sign {
    /// Rust-brown stain, or water that turns brown standing in air.
    BrownStain,
    /// Black stain or black flakes.
    BlackStain,
    /// Smell of rotten eggs.
    RottenEggs,
    /// Slime or an oily-looking film that breaks into pieces.
    Slime,
}

/// What a sign stands for.
#[derive(Copy, Clone, PartialEq, Eq, Hash, Debug)]
#[allow(missing_docs)] // the names are the meaning
pub enum SignOf {
    Iron,
    Manganese,
    Sulphide,
    Bacteria,
}

impl SignOf {
    /// All four.
    pub const ALL: [Self; 4] = [Self::Iron, Self::Manganese, Self::Sulphide, Self::Bacteria];
    /// The sign that shows it.
    pub fn sign(self) -> Sign {
        match self {
            Self::Iron => Sign::BrownStain,
            Self::Manganese => Sign::BlackStain,
            Self::Sulphide => Sign::RottenEggs,
            Self::Bacteria => Sign::Slime,
        }
    }
}

/// What is known of one substance for which there was no test.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Words {
    /// The sign is there: common practice, no source, takes it as present.
    Shows,
    /// Looked for, not there. That is no proof.
    NoSign,
    /// Nobody looked.
    NotLookedFor,
}

/// One word for one substance, in place of a number.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct WordsFor {
    /// Which substance.
    pub substance: SignOf,
    /// What is known of it.
    pub words: Words,
}

/// A result of a water test: what was tested, in the quantity that it is.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct WaterTest {
    parameter: Parameter,
    /// kg/m³, S/m or pH.
    si: f64,
}

impl WaterTest {
    /// A pH.
    pub fn ph(value: Number) -> Self {
        let parameter = Parameter::Ph;
        let si = value.si();
        Self { parameter, si }
    }
    /// An electrical conductivity.
    pub fn conductivity(value: ElectricalConductivity) -> Self {
        let parameter = Parameter::Conductivity;
        let si = value.si();
        Self { parameter, si }
    }
    /// A concentration (hardness as CaCO₃); none for what is measured otherwise.
    pub fn concentration(parameter: Parameter, value: MassConcentration) -> Option<Self> {
        let otherwise = matches!(parameter, Parameter::Ph | Parameter::Conductivity);
        let si = value.si();
        (!otherwise).then_some(Self { parameter, si })
    }
}

/// What is known of a fill water. Everything may be missing.
#[derive(Clone, PartialEq, Debug)]
pub struct Evidence {
    /// What the water is for.
    pub purpose: Use,
    /// Test results.
    pub tests: Vec<WaterTest>,
    /// Signs that were looked for, and whether they were there.
    pub signs: Vec<(Sign, bool)>,
    /// What Langelier's index needs, if it is known.
    pub sample: Option<WaterSample>,
}

/// One limit that was tested.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Finding {
    /// The limit with its source.
    pub guideline: Guideline,
    /// The value, SI.
    pub value: f64,
    /// What this limit alone asks for.
    pub action: Action,
}

/// The verdict and everything it stands on.
#[derive(Clone, PartialEq, Debug)]
pub struct Verdict {
    /// The most serious of all findings; none if nothing is known.
    pub action: Option<Action>,
    /// Every limit that applies to a tested parameter.
    pub findings: Vec<Finding>,
    /// Iron, manganese, sulphide and bacteria where no test was done.
    pub words: Vec<WordsFor>,
    /// What the Langelier index says, if it could be computed. A closed loop holds little
    /// carbonate, so that scale alone asks for treatment and never for other water.
    pub tendency: Option<ScaleTendency>,
}

/// Test results that are accepted, SI.
const TESTED: Bound<Number> = Bound::si("water test result", 0.0, 1e3);

/// Judges a fill water against [`GUIDELINES`].
///
/// A value within a limit: use. Beyond it: treat; beyond the guideline's
/// `bring_in_factor` times: bring in. A smell of sulphide asks for other water
/// (copper and cupronickel fail in it); stain or slime for treatment.
///
/// # Errors
/// [`OutOfRange`] for a test result or an index input that cannot be.
pub fn judge(evidence: &Evidence) -> Result<Verdict, OutOfRange> {
    let mut findings = Vec::new();
    for test in &evidence.tests {
        let value = TESTED.check(Number::from_si(test.si))?.si();
        findings.extend(
            GUIDELINES
                .iter()
                .filter(|g| g.parameter == test.parameter)
                .filter(|g| g.applies.is_none_or(|purpose| purpose == evidence.purpose))
                .map(|g| Finding {
                    guideline: *g,
                    value,
                    action: against(g, value),
                }),
        );
    }
    let words: Vec<WordsFor> = SignOf::ALL
        .into_iter()
        .filter(|substance| !tested(*substance, &evidence.tests))
        .map(|substance| WordsFor {
            substance,
            words: match evidence
                .signs
                .iter()
                .find(|(sign, _)| *sign == substance.sign())
            {
                Some((_, true)) => Words::Shows,
                Some((_, false)) => Words::NoSign,
                None => Words::NotLookedFor,
            },
        })
        .collect();
    let tendency = match &evidence.sample {
        Some(sample) => Some(indices(sample)?.tendency),
        None => None,
    };
    let action = findings
        .iter()
        .map(|finding| finding.action)
        .chain(words.iter().filter_map(|w| by_words(*w)))
        .chain(tendency.map(by_tendency))
        .max();
    Ok(Verdict {
        action,
        findings,
        words,
        tendency,
    })
}

fn against(guideline: &Guideline, value: f64) -> Action {
    let over = guideline.limit.max.is_some_and(|max| value > max);
    let under = guideline.limit.min.is_some_and(|min| value < min);
    let far = guideline
        .limit
        .max
        .is_some_and(|max| value > guideline.bring_in_factor * max);
    match (far, over || under) {
        (true, _) => Action::BringIn,
        (false, true) => Action::Treat,
        (false, false) => Action::Use,
    }
}

fn tested(substance: SignOf, tests: &[WaterTest]) -> bool {
    let parameter = match substance {
        SignOf::Iron => Parameter::Iron,
        SignOf::Manganese => Parameter::Manganese,
        SignOf::Sulphide | SignOf::Bacteria => return false,
    };
    tests.iter().any(|test| test.parameter == parameter)
}

fn by_words(words: WordsFor) -> Option<Action> {
    match (words.words, words.substance) {
        (Words::Shows, SignOf::Sulphide) => Some(Action::BringIn),
        (Words::Shows, _) => Some(Action::Treat),
        (Words::NoSign | Words::NotLookedFor, _) => None,
    }
}

fn by_tendency(tendency: ScaleTendency) -> Action {
    match tendency {
        ScaleTendency::Scaling => Action::Treat,
        ScaleTendency::CannotTell | ScaleTendency::Dissolving => Action::Use,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Unit;

    fn nothing() -> Evidence {
        Evidence {
            purpose: Use::GlycolDilution,
            tests: vec![],
            signs: vec![],
            sample: None,
        }
    }

    fn milligrams(parameter: Parameter, value: f64) -> WaterTest {
        let value = Unit::MilligramPerLitre.to_si(value);
        WaterTest::concentration(parameter, MassConcentration::from_si(value)).unwrap()
    }

    #[test]
    fn a_concentration_is_no_ph() {
        let some = MassConcentration::from_si(1.0);
        assert_eq!(WaterTest::concentration(Parameter::Ph, some), None);
    }

    #[test]
    fn unknown_water_gets_no_verdict_but_says_what_to_look_for() {
        let verdict = judge(&nothing()).unwrap();
        assert_eq!(verdict.action, None);
        assert_eq!(verdict.words.len(), 4);
        assert!(verdict.words.iter().all(|w| w.words == Words::NotLookedFor));
    }

    #[test]
    fn hard_water_is_treated_and_brine_is_not_used() {
        let with = |chloride: f64| {
            let mut evidence = nothing();
            evidence.tests = vec![milligrams(Parameter::Chloride, chloride)];
            judge(&evidence).unwrap().action
        };
        assert_eq!(with(20.0), Some(Action::Use));
        assert_eq!(with(26.0), Some(Action::Treat));
        assert_eq!(with(101.0), Some(Action::BringIn));
    }

    #[test]
    fn a_limit_for_glycol_does_not_bind_plain_water() {
        let mut evidence = nothing();
        evidence.purpose = Use::PlainLoop;
        evidence.tests = vec![milligrams(Parameter::Hardness, 300.0)];
        assert!(judge(&evidence).unwrap().findings.is_empty());
    }

    #[test]
    fn rotten_eggs_ask_for_other_water() {
        let mut evidence = nothing();
        evidence.signs = vec![(Sign::RottenEggs, true), (Sign::Slime, false)];
        assert_eq!(judge(&evidence).unwrap().action, Some(Action::BringIn));
    }

    #[test]
    fn a_result_below_zero_is_refused() {
        let mut evidence = nothing();
        evidence.tests = vec![milligrams(Parameter::Iron, -1.0)];
        assert!(judge(&evidence).is_err());
    }
}
