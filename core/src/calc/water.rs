//! Fill water, and readings that are combined.

use super::amount::Amount;
use super::given::{topic, words};
use crate::uncertainty::{self, Uncertain, propagate, weighted_mean};
use crate::units::{
    ElectricalConductivity, Fraction, MassConcentration, Number, PressureDifference, Quantity,
    Temperature, VolumeFlow,
};
use crate::water::{self, Mark, Parameter, WaterSample, WaterTest, indices, judge};

words! {
    /// What the Langelier index says.
    Tendency = water::ScaleTendency { Scaling, CannotTell, Dissolving }
    /// What to do with a water.
    WaterAction = water::Action { Use, Treat, BringIn }
    /// What the water is for.
    Purpose = water::Use { PlainLoop, GlycolDilution }
    /// A sign in place of a test.
    WaterSign = water::Sign { BrownStain, BlackStain, RottenEggs, Slime }
    /// What a sign stands for.
    Substance = water::SignOf { Iron, Manganese, Sulphide, Bacteria }
    /// What is known where no test was done.
    Words = water::Words { Shows, NoSign, NotLookedFor }
}

/// What Langelier's index needs.
#[derive(Copy, Clone, Debug, serde::Deserialize, schemars::JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct IndexSample {
    ph: Amount<Number>,
    /// At which saturation is asked for.
    temperature: Amount<Temperature>,
    dissolved_solids: Amount<MassConcentration>,
    /// Calcium hardness as CaCO3.
    calcium: Amount<MassConcentration>,
    /// Total alkalinity as CaCO3.
    alkalinity: Amount<MassConcentration>,
}

impl IndexSample {
    fn sample(self) -> WaterSample {
        WaterSample {
            ph: self.ph.get(),
            temperature: self.temperature.get(),
            dissolved_solids: self.dissolved_solids.get(),
            calcium: self.calcium.get(),
            alkalinity: self.alkalinity.get(),
        }
    }
}

topic! {
    /// Langelier and Ryznar indices.
    WaterIndices "water-indices" by "langelier";
    example r#"{"sample": {"ph": {"value": 7.5, "unit": "1"}, "temperature": {"value": 25, "unit": "degC"}, "dissolved_solids": {"value": 320, "unit": "mg/L"}, "calcium": {"value": 150, "unit": "mg/L"}, "alkalinity": {"value": 34, "unit": "mg/L"}}}"#;
    asks WaterIndicesQuestion { sample: IndexSample }
    tells WaterIndicesAnswer {
        saturation_ph: Amount<Number>,
        langelier: Amount<Number>,
        /// Below 6 scaling, above 7 corrosive.
        ryznar: Amount<Number>,
        tendency: Tendency,
    }
    |q, show| {
        let s = q.sample;
        let inputs = (s.ph.uncertain(), s.temperature.uncertain(), s.dissolved_solids.uncertain(), s.calcium.uncertain(), s.alkalinity.uncertain());
        let at = |of: fn(&water::SaturationIndices) -> Number| {
            propagate(inputs, |(ph, temperature, dissolved_solids, calcium, alkalinity)| {
                indices(&WaterSample { ph, temperature, dissolved_solids, calcium, alkalinity }).map(|i| of(&i))
            })
            .map(|found| show.with(found.result))
        };
        Ok(WaterIndicesAnswer {
            saturation_ph: at(|i| i.saturation_ph)?,
            langelier: at(|i| i.langelier)?,
            ryznar: at(|i| i.ryznar)?,
            tendency: indices(&s.sample())?.tendency.into(),
        })
    }
}

/// A sign that was looked for.
#[derive(Copy, Clone, Debug, serde::Deserialize, schemars::JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct SignLookedFor {
    sign: WaterSign,
    there: bool,
}

/// A limit that a test was held against; concentrations in mg/L, conductivity in uS/cm, pH plain.
#[derive(Debug, serde::Serialize, schemars::JsonSchema)]
pub(super) struct LimitFinding {
    parameter: &'static str,
    value: f64,
    #[serde(skip_serializing_if = "Option::is_none")]
    least: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    most: Option<f64>,
    unit: &'static str,
    action: WaterAction,
    source: &'static str,
    from_memory: bool,
}

/// What is known of a substance without test.
#[derive(Debug, serde::Serialize, schemars::JsonSchema)]
pub(super) struct WordsOf {
    substance: Substance,
    words: Words,
}

topic! {
    /// Verdict on a fill water.
    FillWater "fill-water" by "guidelines";
    example r#"{"purpose": "glycol_dilution", "hardness": {"value": 140, "unit": "mg/L"}, "chloride": {"value": 20, "unit": "mg/L"}, "signs": [{"sign": "brown_stain", "there": true}]}"#;
    asks FillWaterQuestion {
        purpose: Purpose,
        conductivity: Option<Amount<ElectricalConductivity>>,
        ph: Option<Amount<Number>>,
        /// As CaCO3.
        hardness: Option<Amount<MassConcentration>>,
        calcium: Option<Amount<MassConcentration>>,
        magnesium: Option<Amount<MassConcentration>>,
        chloride: Option<Amount<MassConcentration>>,
        sulphate: Option<Amount<MassConcentration>>,
        dissolved_solids: Option<Amount<MassConcentration>>,
        iron: Option<Amount<MassConcentration>>,
        manganese: Option<Amount<MassConcentration>>,
        #[serde(default)]
        #[schemars(length(max = 4))]
        signs: Vec<SignLookedFor>,
        sample: Option<IndexSample>,
    }
    tells FillWaterAnswer {
        /// The most serious of all; none if nothing is known.
        action: Option<WaterAction>,
        findings: Vec<LimitFinding>,
        words: Vec<WordsOf>,
        tendency: Option<Tendency>,
    }
    |q, _show| {
        use crate::units::Unit;
        let mut tests: Vec<WaterTest> = Vec::new();
        tests.extend(q.ph.map(|v| WaterTest::ph(v.get())));
        tests.extend(q.conductivity.map(|v| WaterTest::conductivity(v.get())));
        let dissolved = [
            (Parameter::Hardness, q.hardness),
            (Parameter::Calcium, q.calcium),
            (Parameter::Magnesium, q.magnesium),
            (Parameter::Chloride, q.chloride),
            (Parameter::Sulphate, q.sulphate),
            (Parameter::DissolvedSolids, q.dissolved_solids),
            (Parameter::Iron, q.iron),
            (Parameter::Manganese, q.manganese),
        ];
        tests.extend(dissolved.iter().filter_map(|(parameter, value)| {
            WaterTest::concentration(*parameter, (*value)?.get())
        }));
        let evidence = water::Evidence {
            purpose: q.purpose.into(),
            tests,
            signs: q.signs.iter().map(|s| (s.sign.into(), s.there)).collect(),
            sample: q.sample.map(IndexSample::sample),
        };
        let verdict = judge(&evidence)?;
        let findings = verdict.findings.iter().map(|finding| {
            let unit = match finding.guideline.parameter {
                Parameter::Ph => Unit::Plain,
                Parameter::Conductivity => Unit::MicrosiemensPerCentimetre,
                _ => Unit::MilligramPerLitre,
            };
            LimitFinding {
                parameter: finding.guideline.parameter.code(),
                value: unit.from_si(finding.value),
                least: finding.guideline.limit.min.map(|v| unit.from_si(v)),
                most: finding.guideline.limit.max.map(|v| unit.from_si(v)),
                unit: unit.symbol(),
                action: finding.action.into(),
                source: finding.guideline.source.citation(),
                from_memory: finding.guideline.mark == Mark::FromMemory,
            }
        });
        Ok(FillWaterAnswer {
            action: verdict.action.map(WaterAction::from),
            findings: findings.collect(),
            words: verdict.words.iter().map(|w| WordsOf { substance: w.substance.into(), words: w.words.into() }).collect(),
            tendency: verdict.tendency.map(Tendency::from),
        })
    }
}

/// Readings of one kind.
#[derive(Clone, Debug, serde::Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(super) enum Readings {
    Flows(Vec<Amount<VolumeFlow>>),
    Temperatures(Vec<Amount<Temperature>>),
    PressureDrops(Vec<Amount<PressureDifference>>),
    Numbers(Vec<Amount<Number>>),
}

/// A mean of one kind.
#[derive(Debug, serde::Serialize, schemars::JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(super) enum Mean {
    Flow(Amount<VolumeFlow>),
    Temperature(Amount<Temperature>),
    PressureDrop(Amount<PressureDifference>),
    Number(Amount<Number>),
}

topic! {
    /// Several readings of one quantity, each with its accuracy.
    CombineReadings "combine-readings" by "least-squares";
    example r#"{"readings": {"temperatures": [{"value": 45.2, "unit": "degF", "accuracy": {"value": 1, "unit": "degF"}}, {"value": 44.6, "unit": "degF", "accuracy": {"value": 0.5, "unit": "degF"}}]}}"#;
    asks CombineReadingsQuestion { readings: Readings }
    tells CombineReadingsAnswer {
        /// Widened where the readings scatter more than their accuracies allow.
        mean: Mean,
        chi_squared: Amount<Number>,
        /// Of at least that much scatter if the stated accuracies hold.
        probability: Amount<Fraction>,
    }
    |q, show| {
        fn combined<Q: Quantity>(given: &[Amount<Q>]) -> Result<(Uncertain<Q>, f64, usize), super::error::CalcError> {
            let readings: Vec<Uncertain<Q>> = given.iter().map(|r| r.uncertain()).collect();
            let found: uncertainty::Combined<Q> = weighted_mean(&readings)
                .ok_or_else(|| super::error::CalcError::new("no-readings", "readings", ""))?;
            Ok((found.widened(), found.chi_squared, found.count))
        }
        let (mean, chi_squared, count) = match &q.readings {
            Readings::Flows(r) => combined(r).map(|(m, x, n)| (Mean::Flow(show.with(m)), x, n))?,
            Readings::Temperatures(r) => combined(r).map(|(m, x, n)| (Mean::Temperature(show.with(m)), x, n))?,
            Readings::PressureDrops(r) => combined(r).map(|(m, x, n)| (Mean::PressureDrop(show.with(m)), x, n))?,
            Readings::Numbers(r) => combined(r).map(|(m, x, n)| (Mean::Number(show.with(m)), x, n))?,
        };
        Ok(CombineReadingsAnswer {
            mean,
            chi_squared: show.number(chi_squared),
            probability: show.share(crate::heat::reconcile::chi_squared_above(chi_squared, count.saturating_sub(1))),
        })
    }
}
