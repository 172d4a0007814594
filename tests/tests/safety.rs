//! Nobody is sent into harm: every step that can hurt carries its caution, in the
//! app and in the report alike, and no pressure is advised above what the weakest
//! part bears.
//!
//! What a step can do to a person is read here from the procedure files
//! themselves, not from what the program made of them.

use chrono::{NaiveDate, TimeZone, Utc};
use proptest::prelude::*;
use proptest::test_runner::TestRunner;
use returnline_core::api::{Call, Issue, Wording, knowledge};
use returnline_core::model::LoopModel;
use returnline_core::plan::quantity::{Conditions, QuantityKind, Remark};
use returnline_core::plan::{Basis, Library, Looked, Treatment, WorkPlan, load, work_plan};
use returnline_core::records::visit_file::VisitFile;
use returnline_core::records::{
    CircuitGroup, FlowCentre, FlushCart, GroundLoop, HeatPump, LoopFluid, LoopFluidKind,
    NominalInch, Pipe, PlainMeasure, Reading, ReadingKind, ReadingPoint, Sdr, Verdict,
};
use returnline_core::report::document::{Block, PageSize, Text};
use returnline_core::report::service::document;
use returnline_core::text::{Language, catalog};
use returnline_core::uncertainty::Uncertain;
use returnline_core::units::{GaugePressure, Length, Measure, Temperature, Unit};
use serde::Deserialize;
use std::cell::Cell;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::sync::LazyLock;

/// What maims and kills at this work.
const GRAVE: [&str; 8] = [
    "confined",
    "electric",
    "flammable",
    "lifting",
    "potable",
    "pressure",
    "refrigerant",
    "toxic",
];

/// What of a procedure file is about harm.
#[derive(Deserialize, Default)]
struct File {
    #[serde(default)]
    caution: Vec<CautionEntry>,
    #[serde(default)]
    opening: Vec<OpeningEntry>,
    #[serde(default)]
    step: Vec<StepEntry>,
}

#[derive(Deserialize)]
struct CautionEntry {
    id: String,
    hazards: Vec<String>,
}

#[derive(Deserialize)]
struct OpeningEntry {
    id: String,
    section: Option<String>,
}

#[derive(Deserialize, Default)]
#[serde(default)]
struct StepEntry {
    id: String,
    stage: String,
    hazards: Vec<String>,
    cautions: Vec<String>,
    tools: Vec<String>,
    materials: Vec<String>,
    opens: Vec<String>,
    closes: Vec<String>,
    relieves: Vec<String>,
    pressurises: Vec<String>,
    at_zero: Vec<String>,
    refills: bool,
}

struct Written {
    answers: BTreeMap<String, Vec<String>>,
    sections: BTreeMap<String, Option<String>>,
    steps: BTreeMap<String, StepEntry>,
}

static WRITTEN: LazyLock<Written> = LazyLock::new(|| {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/data/procedures");
    let mut all = File::default();
    for entry in std::fs::read_dir(folder).expect("listed") {
        let path = entry.expect("an entry").path();
        if path.extension().is_some_and(|end| end == "toml") {
            let text = std::fs::read_to_string(&path).expect("read");
            let file: File = toml::from_str(&text).expect("TOML");
            all.caution.extend(file.caution);
            all.opening.extend(file.opening);
            all.step.extend(file.step);
        }
    }
    Written {
        answers: all
            .caution
            .into_iter()
            .map(|entry| (entry.id, entry.hazards))
            .collect(),
        sections: all
            .opening
            .into_iter()
            .map(|entry| (entry.id, entry.section))
            .collect(),
        steps: all
            .step
            .into_iter()
            .map(|entry| (entry.id.clone(), entry))
            .collect(),
    }
});

static LIBRARY: LazyLock<Library> =
    LazyLock::new(|| load().unwrap_or_else(|problems| panic!("{problems:?}")));

/// The cautions of a step that answer a hazard.
fn answering<'a>(step: &'a StepEntry, hazard: &'a str) -> impl Iterator<Item = &'a String> {
    step.cautions.iter().filter(move |caution| {
        let answers = WRITTEN.answers.get(*caution);
        answers.is_some_and(|all| all.iter().any(|one| one == hazard))
    })
}

#[test]
fn every_grave_hazard_is_borne_by_steps_and_answered_at_each() {
    for hazard in GRAVE {
        let mut bearing = 0;
        for step in WRITTEN.steps.values() {
            if step.hazards.iter().any(|one| one == hazard) {
                bearing += 1;
                assert!(
                    answering(step, hazard).next().is_some(),
                    "{}: {hazard} without a caution",
                    step.id
                );
            }
        }
        assert!(bearing > 0, "no step bears {hazard}: nothing was looked at");
    }
    for language in Language::ALL {
        let catalog = catalog(language);
        for caution in WRITTEN.answers.keys() {
            let text = catalog.text(&format!("plan-caution-{caution}"));
            assert!(text.len() > 30 && !text.contains('«'), "{caution}: {text}");
        }
    }
}

/// A step without its mark would pass every check of cautions. What a step does
/// tells what it can do to a person.
#[test]
fn what_a_step_does_marks_its_hazards() {
    let touched = |step: &StepEntry, id: &str| {
        let mut openings = step.opens.iter().chain(&step.closes);
        openings.any(|opening| opening == id)
    };
    let holds_fluid = |opening: &String| WRITTEN.sections.get(opening).is_some_and(Option::is_some);
    let mut seen = BTreeMap::new();
    for step in WRITTEN.steps.values() {
        let named = |list: &[String], word: &str| list.iter().any(|item| item == word);
        let under_pressure = !step.relieves.is_empty()
            || !step.pressurises.is_empty()
            || !step.at_zero.is_empty()
            || step.opens.iter().any(holds_fluid);
        let cart_runs = named(&step.tools, "flush-cart") && named(&step.hazards, "electric");
        let doses = step
            .materials
            .iter()
            .any(|item| item.contains("antifreeze"));
        let asked = [
            ("pressure", under_pressure),
            ("electric", touched(step, "power")),
            // A motor beside an open tank of what may be alcohol.
            ("flammable", cart_runs || doses || step.refills),
            ("flammable", step.stage == "sample"),
            ("toxic", doses || step.refills || step.stage == "sample"),
            ("potable", named(&step.materials, "approved-water")),
            (
                "lifting",
                step.stage == "open" && named(&step.tools, "flush-cart"),
            ),
        ];
        for (hazard, may_hurt) in asked {
            if may_hurt {
                *seen.entry(hazard).or_insert(0) += 1;
                assert!(named(&step.hazards, hazard), "{}: {hazard}", step.id);
            }
        }
    }
    let seen: Vec<&str> = seen.into_keys().collect();
    let all = [
        "electric",
        "flammable",
        "lifting",
        "potable",
        "pressure",
        "toxic",
    ];
    assert_eq!(seen, all);
}

/// A call in which this cause was found.
fn found(cause: &str, fluid: Option<LoopFluidKind>) -> VisitFile {
    let mut file = VisitFile::default();
    file.system.fluid = fluid.map(|kind| LoopFluid {
        kind,
        volume_fraction: None,
    });
    file.visit.verdicts.push(Verdict {
        cause: cause.to_owned(),
        confirmed: true,
        by_check: None,
    });
    file
}

/// Whether a hazard of the fluid cannot be there: glycol and water do not burn,
/// water and propylene glycol do not poison (21 CFR 582.1666).
fn ruled_out(hazard: &str, fluid: Option<LoopFluidKind>) -> bool {
    use LoopFluidKind as F;
    matches!(
        (hazard, fluid),
        (
            "flammable",
            Some(F::Water | F::PropyleneGlycol | F::EthyleneGlycol)
        ) | ("toxic", Some(F::Water | F::PropyleneGlycol))
    )
}

fn plain(text: &Text) -> String {
    text.spans.iter().map(|span| span.text.as_str()).collect()
}

fn first_sentence(text: &str) -> &str {
    text.find(". ").map_or(text, |at| &text[..=at])
}

/// What the report says of caution at each step: in full, and in short.
fn warned(blocks: &[Block]) -> Vec<(String, String)> {
    let mut all = Vec::new();
    for block in blocks {
        let Block::Steps { steps, .. } = block else {
            continue;
        };
        for step in steps {
            let (mut full, mut short) = (String::new(), String::new());
            for block in &step.blocks {
                match block {
                    Block::Callout(callout) => {
                        full.extend(callout.body.iter().map(plain));
                    }
                    Block::Reminder(text) => short += &plain(text),
                    _ => {}
                }
            }
            all.push((full, short));
        }
    }
    all
}

#[test]
fn the_app_and_the_report_warn_at_every_step_that_can_hurt() {
    let day = NaiveDate::from_ymd_opt(2026, 9, 1).expect("a day");
    let now = Utc
        .timestamp_opt(1_788_000_000, 0)
        .single()
        .expect("a time");
    let mut met: BTreeSet<(&str, String)> = BTreeSet::new();
    // Causes with one procedure have one plan: the first stands for them.
    let mut causes: BTreeMap<&str, &str> = BTreeMap::new();
    for cause in knowledge().graph.causes() {
        if let Some(procedure) = &cause.procedure {
            causes
                .entry(procedure.as_str())
                .or_insert(cause.id.as_str());
        }
    }
    for language in Language::ALL {
        let wording = Wording {
            language,
            ..Wording::default()
        };
        let catalog = catalog(language);
        for (turn, cause) in causes.values().copied().enumerate() {
            // What is not known rules nothing out; each third call knows its fluid.
            // The words of Spanish are read at each third, too.
            let fluid = match turn % 6 {
                2 => Some(LoopFluidKind::PropyleneGlycol),
                5 => Some(LoopFluidKind::Methanol),
                _ => None,
            };
            if language == Language::Spanish && turn % 3 != 0 {
                continue;
            }
            let call = Call::assess(&found(cause, fluid), day, wording);
            let Some(plan) = &call.answer().plan else {
                // Nothing to do on this kind of system, or nothing with water.
                assert!(fluid.is_some(), "{cause} has no plan");
                continue;
            };
            let refilled = plan
                .steps
                .iter()
                .any(|step| WRITTEN.steps[&step.id].refills);
            let issue = Issue::new(now.fixed_offset(), PageSize::Letter);
            let content = call.service_content(&issue);
            assert_eq!(content.steps.len(), plan.steps.len(), "{cause}");
            let pages = document(&content, catalog);
            let printed = warned(&pages.blocks);
            assert_eq!(printed.len(), plan.steps.len(), "{cause}");
            let mut in_full: BTreeSet<&str> = BTreeSet::new();
            for ((view, part), (full, short)) in plan.steps.iter().zip(&content.steps).zip(&printed)
            {
                let step = &WRITTEN.steps[&view.id];
                for caution in &view.cautions {
                    let said = &caution.text;
                    assert!(part.cautions.contains(said), "{cause}, {}", view.id);
                    if full.contains(said.as_str()) {
                        in_full.insert(said);
                    } else {
                        assert!(
                            in_full.contains(said.as_str()),
                            "{cause}, {}: {said}",
                            view.id
                        );
                        assert!(short.contains(first_sentence(said)), "{cause}, {}", view.id);
                    }
                }
                let replaced = refilled && fluid != Some(LoopFluidKind::Water);
                for hazard in GRAVE {
                    let borne = step.hazards.iter().any(|one| one == hazard);
                    if !borne || (!replaced && ruled_out(hazard, fluid)) {
                        continue;
                    }
                    let warning = answering(step, hazard).any(|caution| {
                        let text = catalog.text(&format!("plan-caution-{caution}"));
                        view.cautions.iter().any(|shown| shown.text == text)
                    });
                    assert!(warning, "{cause}, {fluid:?}, {}: {hazard}", view.id);
                    met.insert((hazard, view.id.clone()));
                }
            }
        }
    }
    // Every step of the files that can hurt has been looked at.
    let all: BTreeSet<(&str, String)> = WRITTEN
        .steps
        .values()
        .flat_map(|step| {
            let borne = GRAVE.into_iter();
            let borne = borne.filter(|hazard| step.hazards.iter().any(|one| one == hazard));
            borne.map(|hazard| (hazard, step.id.clone()))
        })
        .collect();
    let missed: Vec<_> = all.difference(&met).collect();
    assert!(missed.is_empty(), "never met in a plan: {missed:?}");
}

#[test]
fn the_checks_to_do_next_carry_their_cautions_in_app_and_report() {
    let day = NaiveDate::from_ymd_opt(2026, 9, 1).expect("a day");
    let now = Utc
        .timestamp_opt(1_788_000_000, 0)
        .single()
        .expect("a time");
    let graph = &knowledge().graph;
    for language in Language::ALL {
        let wording = Wording {
            language,
            ..Wording::default()
        };
        let mut looked_at = 0;
        for point in [
            ReadingPoint::StaticPressure,
            ReadingPoint::EnteringWater,
            ReadingPoint::CirculatorRise,
        ] {
            let mut file = VisitFile::default();
            let unit = Unit::of(point.kind().dimension()).next().expect("a unit");
            let reading = Reading::new(point, PlainMeasure { value: 5.0, unit });
            file.visit.readings.push(reading.expect("a reading"));
            let call = Call::assess(&file, day, wording);
            let view = &call.answer().assessment;
            let issue = Issue::new(now.fixed_offset(), PageSize::Letter);
            let printed = call.service_content(&issue).checks;
            assert!(!printed.is_empty());
            for (check, (title, words)) in view.checks.iter().zip(&printed) {
                assert_eq!(&check.title, title);
                let known = graph
                    .checks()
                    .iter()
                    .find(|known| known.id.as_str() == check.id);
                let cautions = &known.expect("a check").cautions;
                assert_eq!(cautions.len(), check.cautions.len(), "{}", check.id);
                for caution in cautions {
                    let said = catalog(language).text(&format!("caution-{caution}"));
                    assert!(check.cautions.contains(&said), "{}: {said}", check.id);
                    assert!(words.contains(&said), "{}: {said}", check.id);
                    looked_at += 1;
                }
            }
        }
        assert!(looked_at > 0, "no check with a caution was among them");
    }
}

/// The conservative rating where none is known: 100 psi, what the weakest usual
/// unit of the trade bears. Common practice, no source.
const CONSERVATIVE_PSI: f64 = 100.0;
/// The relief valve of a system with a tank: 3 bar. Common practice, no source.
const RELIEF_BAR: f64 = 3.0;

#[derive(Clone, Debug)]
struct System {
    unit: Option<f64>,
    cart: Option<f64>,
    centre: u8,
    fluid: u8,
    circuits: bool,
    loop_celsius: Option<f64>,
    gauge_psi: Option<f64>,
    procedures: Vec<usize>,
}

fn some_system() -> impl Strategy<Value = System> {
    let rating = || prop::option::of(8.0..250.0_f64);
    (
        rating(),
        rating(),
        0..4_u8,
        0..6_u8,
        any::<bool>(),
        prop::option::of(-15.0..60.0_f64),
        prop::option::of(0.0..120.0_f64),
        prop::collection::vec(0..LIBRARY.procedures().count(), 1..4),
    )
        .prop_map(
            |(unit, cart, centre, fluid, circuits, loop_celsius, gauge_psi, procedures)| System {
                unit,
                cart,
                centre,
                fluid,
                circuits,
                loop_celsius,
                gauge_psi,
                procedures,
            },
        )
}

impl System {
    fn file(&self) -> VisitFile {
        let psi = |value| Measure::<GaugePressure>::new(value, Unit::Psi);
        let mut file = VisitFile::default();
        file.system.heat_pump = Some(HeatPump {
            maximum_pressure: self.unit.map(psi),
            ..HeatPump::default()
        });
        file.system.flow_centre = match self.centre {
            0 => None,
            1 => Some(FlowCentre::Sealed {}),
            2 => Some(FlowCentre::SealedWithTank {
                tank_volume: None,
                pre_charge: None,
            }),
            _ => Some(FlowCentre::NonPressurised {
                reservoir_diameter: None,
            }),
        };
        let kinds = [
            LoopFluidKind::Water,
            LoopFluidKind::PropyleneGlycol,
            LoopFluidKind::EthyleneGlycol,
            LoopFluidKind::Methanol,
            LoopFluidKind::Ethanol,
        ];
        file.system.fluid = kinds.get(usize::from(self.fluid)).map(|kind| LoopFluid {
            kind: *kind,
            volume_fraction: None,
        });
        if self.circuits {
            file.system.ground = Some(GroundLoop {
                circuits: vec![CircuitGroup {
                    count: 4,
                    pipe: Pipe::IpsPe {
                        size: NominalInch::ThreeQuarter,
                        sdr: Sdr::Sdr11,
                    },
                    length: Measure::<Length>::new(500.0, Unit::Foot),
                }],
                ..GroundLoop::default()
            });
        }
        file.visit.means.cart = Some(FlushCart {
            maximum_pressure: self.cart.map(psi),
            reservoir_diameter: Some(Measure::<Length>::new(10.0, Unit::Inch)),
            ..FlushCart::default()
        });
        if let Some(value) = self.gauge_psi {
            let measure = PlainMeasure {
                value,
                unit: Unit::Psi,
            };
            let reading = Reading::new(ReadingPoint::StaticPressure, measure);
            file.visit.readings.push(reading.expect("a reading"));
        }
        file
    }

    fn plan(&self) -> WorkPlan {
        let file = self.file();
        let model = LoopModel::of(&file);
        let treatments: Vec<Treatment> = self
            .procedures
            .iter()
            .filter_map(|pick| LIBRARY.procedures().nth(*pick))
            .map(|procedure| Treatment {
                cause: format!("cause-of-{}", procedure.id),
                procedure: procedure.id.clone(),
            })
            .collect();
        let celsius = self.loop_celsius.unwrap_or(13.0);
        let conditions = Conditions {
            loop_temperature: Uncertain::new(Temperature::from_celsius(celsius), 1.0),
            lowest_leaving: None,
            year: None,
            learned: None,
        };
        work_plan(&LIBRARY, &treatments, &file, &model, conditions).expect("a plan")
    }

    /// What the weakest part bears, Pa.
    fn weakest(&self) -> f64 {
        let relief = (self.centre == 2).then(|| Unit::Bar.to_si(RELIEF_BAR));
        let rated = [self.unit, self.cart].into_iter().flatten();
        rated
            .map(|psi| Unit::Psi.to_si(psi))
            .chain(relief)
            .fold(Unit::Psi.to_si(CONSERVATIVE_PSI), f64::min)
    }
}

#[test]
fn no_pressure_is_advised_above_what_the_weakest_part_bears() {
    let advised = [
        QuantityKind::DeadHeadPressure,
        QuantityKind::StretchPressure,
        QuantityKind::LeavePressure,
        QuantityKind::LeavePressureLow,
        QuantityKind::LeavePressureHigh,
        QuantityKind::TankPreCharge,
    ];
    let (computed, ends, fallbacks) = (Cell::new(0), Cell::new(0), Cell::new(0));
    let count = |of: &Cell<u32>| of.set(of.get() + 1);
    let mut runner = TestRunner::new(ProptestConfig::with_cases(120));
    let outcome = runner.run(&some_system(), |system| {
        let plan = system.plan();
        let weakest = system.weakest();
        let bears = |pascal: f64| pascal <= weakest + 1e-6;
        if let Some(rating) = plan.sheet.get(QuantityKind::LowestRating) {
            prop_assert!(
                (rating.figure.si - weakest).abs() < 1e-6,
                "{:?}",
                rating.figure
            );
            let unknown = plan.sheet.remarks.contains(&Remark::RatingUnknown);
            prop_assert_eq!(unknown, system.unit.is_none());
        }
        for kind in advised {
            for one in plan.sheet.all(kind) {
                count(&computed);
                prop_assert!(bears(one.figure.si), "{:?} {:?}", kind, one.figure);
            }
        }
        // What a reading of the loop's pressure is held to, at gates and as proof.
        let at = |point: ReadingPoint| point.kind() == ReadingKind::GaugePressure;
        let gates = plan.steps.iter().flat_map(|step| &step.gate);
        let gates = gates.filter_map(|gate| match gate.looked {
            Looked::Reading(point) if at(point) => Some(&gate.limit),
            _ => None,
        });
        let proofs = plan.proofs.iter().filter(|proof| at(proof.reading));
        let proofs = proofs.flat_map(|proof| proof.at_least.iter().chain(&proof.at_most));
        for limit in gates.chain(proofs) {
            count(&ends);
            if matches!(limit.basis, Basis::Fixed(_)) {
                count(&fallbacks);
            }
            prop_assert!(bears(limit.value.si), "{:?} over {}", limit, weakest);
        }
        Ok(())
    });
    if let Err(error) = outcome {
        panic!("{error}");
    }
    // All three kinds of number have been looked at, and often.
    assert!(computed.get() > 120, "{}", computed.get());
    assert!(ends.get() > 120, "{}", ends.get());
    assert!(fallbacks.get() > 12, "{}", fallbacks.get());
}
