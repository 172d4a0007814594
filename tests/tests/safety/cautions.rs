//! Every step that can hurt carries its caution.

use crate::written::{GRAVE, StepEntry, WRITTEN, answering};
use chrono::{NaiveDate, TimeZone, Utc};
use returnline_core::api::{Call, Issue, Wording, knowledge};
use returnline_core::records::visit_file::VisitFile;
use returnline_core::records::{
    FlowCentre, LoopFluid, LoopFluidKind, PlainMeasure, Reading, ReadingPoint, Verdict,
};
use returnline_core::report::document::{Block, PageSize, Text};
use returnline_core::report::service::document;
use returnline_core::text::{Language, catalog};
use returnline_core::units::Unit;
use std::collections::{BTreeMap, BTreeSet};

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

/// A call in which this cause was found, on a loop below a vented reservoir or of
/// unknown kind.
fn found(cause: &str, fluid: Option<LoopFluidKind>, is_vented: bool) -> VisitFile {
    let mut file = VisitFile::default();
    if is_vented {
        file.system.flow_centre = Some(FlowCentre::NonPressurised {
            reservoir_diameter: None,
        });
    }
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
        let mut calls = Vec::new();
        for (turn, cause) in causes.values().copied().enumerate() {
            // What is not known rules nothing out; of each third the fluid is known
            // in one call more, and of all one stands below a vented reservoir.
            // The words of Spanish are read at each third, too.
            let fluid = match turn % 6 {
                2 => Some(LoopFluidKind::PropyleneGlycol),
                5 => Some(LoopFluidKind::Methanol),
                _ => None,
            };
            if language == Language::Spanish && turn % 3 != 0 {
                continue;
            }
            calls.push((cause, fluid, false));
            if fluid.is_some() {
                calls.push((cause, None, false));
            }
            if language == Language::English {
                calls.push((cause, None, true));
            }
        }
        for (cause, fluid, is_vented) in calls {
            let call = Call::assess(&found(cause, fluid, is_vented), day, wording);
            let Some(plan) = &call.answer().plan else {
                // Nothing to do on this kind of system, or nothing with water.
                assert!(fluid.is_some() || is_vented, "{cause} has no plan");
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
