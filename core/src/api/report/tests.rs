mod seasons;

use super::*;
use crate::api::tests::{engine, started};
use crate::api::types::{FieldEntry, NewPhoto, ReadingEntry, SignatureEntry};
use crate::report::document::Block;

const SAMPLES: [&str; 3] = [
    include_str!("../../../data/samples/air-in-one-circuit.json"),
    include_str!("../../../data/samples/freeze-guard-trips.json"),
    include_str!("../../../data/samples/pressure-lost-over-summer.json"),
];

fn call(sample: &str) -> Call {
    let wording = Wording::default();
    let file = super::super::read_visit_file(sample.as_bytes(), wording).expect("a sample");
    let day = NaiveDate::from_ymd_opt(2026, 8, 20).expect("a day");
    Call::assess(&file, day, wording)
}

fn issue() -> Issue {
    let moment = DateTime::from_timestamp(1_788_000_000, 0).expect("a time");
    Issue::new(moment.fixed_offset(), PageSize::Letter)
}

fn request(reader: &str) -> ReportRequest {
    ReportRequest {
        reader: reader.to_owned(),
        ..ReportRequest::default()
    }
}

/// Everything that is said, to look for messages that do not exist.
fn said(blocks: &[Block]) -> String {
    format!("{blocks:?}")
}

#[test]
fn no_text_of_any_report_is_missing() {
    for sample in SAMPLES {
        let call = call(sample);
        let catalog = call.wording.catalog();
        let service = crate::report::service::document(&call.service_content(&issue()), catalog);
        let page = crate::report::homeowner::document(&call.homeowner_content(&issue()), catalog);
        for blocks in [&service.blocks, &page.blocks] {
            let said = said(blocks);
            assert!(!said.contains('«'), "{said}");
        }
    }
    let catalog = Wording::default().catalog();
    for procedure in super::super::knowledge().library.procedures() {
        let key = format!("homeowner-work-{}", procedure.id.as_str());
        assert!(catalog.has(&key), "{key}");
    }
    for cause in super::super::knowledge().graph.causes() {
        let key = format!("cause-{}.homeowner", cause.id);
        assert!(catalog.has(&key), "{key}");
    }
    for name in [
        "water",
        "propylene_glycol",
        "ethylene_glycol",
        "methanol",
        "ethanol",
        "unknown",
    ] {
        assert!(catalog.has(&format!("homeowner-fluid-{name}")), "{name}");
    }
    for name in ["fixed", "partly", "nothing_wrong", "handed_over", "open"] {
        assert!(catalog.has(&format!("homeowner-short-{name}")), "{name}");
    }
}

/// A publication is known by a name that no other of them has. It may be named by the
/// rule graph, by the procedures and by a quantity of the plan.
#[test]
fn a_publication_stands_once_among_the_sources() {
    let works = [
        "ASTM F2164",
        "Plastics Pipe Institute",
        "Melinder",
        "ENERGY STAR Homes Northwest",
        "15741",
        "Lange's Handbook",
    ];
    for language in Language::ALL {
        for sample in SAMPLES {
            let wording = Wording {
                language,
                ..Wording::default()
            };
            let file = super::super::read_visit_file(sample.as_bytes(), wording).expect("a sample");
            let day = NaiveDate::from_ymd_opt(2026, 8, 20).expect("a day");
            let sources = Call::assess(&file, day, wording)
                .service_content(&issue())
                .sources;
            for work in works {
                let named = sources.iter().filter(|source| source.contains(work));
                assert_eq!(named.count(), 1, "{work} in {sources:#?}");
            }
        }
    }
}

/// What somebody wrote gains no decimals: 900 ft and 15 °F are so in the sample.
#[test]
fn a_record_is_told_as_it_was_written() {
    let told = said(
        &crate::report::service::document(
            &call(SAMPLES[0]).service_content(&issue()),
            Wording::default().catalog(),
        )
        .blocks,
    );
    for written in ["900 ft", "3.7", "15 °F", "55 psi", "1 hp", "15 gal"] {
        assert!(told.contains(written), "{written} in {told}");
    }
    for longer in [
        "900.0 ft", "3.700", "15.0 °F", "55.0 psi", "1.00 hp", "15.0 gal",
    ] {
        assert!(!told.contains(longer), "{longer} in {told}");
    }
}

#[test]
fn the_band_over_the_year_lies_in_that_of_the_plan_and_starts_at_the_reading() {
    use crate::plan::quantity::QuantityKind as Q;
    use crate::units::Quantity;
    let call = call(SAMPLES[2]);
    let plan = call.work_plan().expect("a plan");
    let season = call.season(Some(plan)).expect("a sealed loop");
    let at = |kind| {
        let computed = plan.sheet.get(kind);
        computed.map(|computed| computed.figure.si).expect("known")
    };
    // The plan asks the same model at the same turns of the year, and years later.
    for range in [&season.winter, &season.summer] {
        assert!(at(Q::SeasonLow) <= range.low.si() + 50.0);
        assert!(at(Q::SeasonHigh) >= range.high.si() - 50.0);
    }
    let (_, today) = season.points[0];
    assert!((today.middle.si() - at(Q::LeavePressure)).abs() < 1.0);
    // A sealed loop of polyethylene reads lower when warm.
    assert!(season.falls_when_warm());
    assert!(season.summer.high < season.winter.high);
}

#[test]
fn a_charge_on_record_narrows_the_band_unless_fluid_may_be_missing() {
    use crate::units::Quantity;
    let width = |sample: &str| {
        let call = call(sample);
        let plan = call.work_plan();
        let season = call.season(plan).expect("a sealed loop");
        let winter = season.winter.high.si() - season.winter.low.si();
        (winter, season.since.is_some())
    };
    let known = SAMPLES[2];
    let charge = "\"charge_pressure\": { \"value\": 55, \"unit\": \"psi\" },";
    let added = "\"top_up_volume\", \"value\": { \"value\": 0,";
    for text in [charge, added] {
        assert!(known.contains(text), "{text}");
    }
    let (narrow, learned) = width(known);
    assert!(learned);
    let (wide, learned) = width(&known.replace(charge, ""));
    assert!(!learned);
    assert!(narrow < wide, "{narrow} {wide}");
    let topped_up = added.replace("\"value\": 0,", "\"value\": 2,");
    let (_, learned) = width(&known.replace(added, &topped_up));
    assert!(!learned, "what was added hides how far the pipe moved");
}

#[test]
fn a_reading_as_left_stands_beside_the_one_as_found() {
    let mut engine = engine();
    let visit = started(&mut engine);
    let entry = |text: &str, phase: &str, mode: &str| ReadingEntry {
        id: None,
        point: "static_pressure".to_owned(),
        text: text.to_owned(),
        unit: "psi".to_owned(),
        accuracy: None,
        instrument: None,
        mode: Some(mode.to_owned()),
        phase: phase.to_owned(),
        circuit: None,
    };
    for (text, phase, mode) in [
        ("8", "found", "idle"),
        ("21", "found", "heating"),
        ("45", "left", "idle"),
        ("44", "left", "cooling"),
    ] {
        engine
            .put_reading(&visit, &entry(text, phase, mode))
            .expect("kept");
    }
    let call = engine.call(&visit).expect("there");
    let readings = call.service_content(&issue()).readings;
    let number = |text: &Option<String>| {
        let text = text.as_deref()?;
        text.split(' ').next().map(str::to_owned)
    };
    let pairs: Vec<_> = readings
        .iter()
        .map(|line| [number(&line.found), number(&line.left)])
        .collect();
    let written = |text: &str| Some(text.to_owned());
    assert_eq!(
        pairs,
        [
            [written("8"), written("45")],
            [written("21"), None],
            [None, written("44")]
        ]
    );
}

#[test]
fn an_empty_visit_gives_both_reports_with_photos_and_signatures() {
    let mut engine = engine();
    let visit = started(&mut engine);
    let picture = {
        let rgb = image::RgbImage::from_pixel(64, 48, image::Rgb([90, 120, 140]));
        let mut bytes = Vec::new();
        image::codecs::jpeg::JpegEncoder::new(&mut bytes)
            .encode_image(&rgb)
            .expect("encoded");
        super::super::read_picture(&bytes, engine.wording()).expect("taken")
    };
    let photo = NewPhoto {
        data: String::new(),
        phase: "before".to_owned(),
        caption: Some("Strainer".to_owned()),
        taken_at: None,
    };
    engine.add_photo(&visit, &photo, &picture).expect("kept");
    let signature = SignatureEntry {
        role: "customer".to_owned(),
        name: "An Invented Name".to_owned(),
        aspect: 3.0,
        strokes: vec![vec![[0.1, 0.5], [0.9, 0.4]]],
    };
    engine.set_signature(&visit, &signature).expect("kept");
    for reader in ["technician", "homeowner"] {
        let first = engine.report(&visit, &request(reader)).expect("made");
        assert!(first.starts_with(b"%PDF-1.7"));
        let again = engine.report(&visit, &request(reader)).expect("made");
        assert!(first == again, "two runs differ");
        assert!(
            first.windows(9).any(|part| part == b"DCTDecode"),
            "the photo is there"
        );
    }
    let names = ["technician", "homeowner"].map(|reader| {
        engine
            .report_name(&visit, &request(reader))
            .expect("a name")
    });
    assert_eq!(
        names,
        [
            "2026-08-14 Invented farm service report.pdf",
            "2026-08-14 Invented farm for the homeowner.pdf"
        ]
    );
}

#[test]
fn a_wrong_request_is_refused_by_its_name() {
    let mut engine = engine();
    let visit = started(&mut engine);
    let refused = |engine: &Engine, request: &ReportRequest| {
        engine.report(&visit, request).expect_err("refused").code
    };
    assert_eq!(refused(&engine, &request("manager")), "no-such-name");
    let mut other = request("homeowner");
    other.language = Some("xx".to_owned());
    assert_eq!(refused(&engine, &other), "no-such-name");
    other.language = None;
    other.next_visit = Some("tomorrow".to_owned());
    assert_eq!(refused(&engine, &other), "no-such-name");
    let _ = engine.set_field(
        &visit,
        &FieldEntry {
            id: "visit.outcome".to_owned(),
            text: Some("fixed".to_owned()),
            unit: None,
        },
    );
    let page = engine
        .call(&visit)
        .expect("there")
        .homeowner_content(&issue());
    assert_eq!(
        page.short,
        "Your system is fixed and we checked that it runs as it should."
    );
}

#[test]
fn readings_are_told_in_the_units_of_the_reader_with_what_was_written_beside_them() {
    use crate::api::read_visit_file;
    use crate::units::UnitSystem;
    let file = br#"{"format":"returnline-visit","version":1,
        "visit":{"readings":[
            {"point":"static_pressure","value":{"value":27,"unit":"psi"},"mode":"idle"},
            {"point":"static_pressure","value":{"value":3.1,"unit":"bar"},"mode":"idle","phase":"left"},
            {"point":"flow","value":{"value":9,"unit":"gpm"},"mode":"heating"}]}}"#;
    let told = |units: UnitSystem, language: Language| {
        let wording = Wording { language, units };
        let file = read_visit_file(file, wording).expect("a visit");
        let call = Call::assess(&file, NaiveDate::default(), wording);
        let page = call.homeowner_content(&issue());
        let lines = page.readings.iter();
        let lines = lines.map(|line| (line.before.clone(), line.after.clone()));
        lines.collect::<Vec<_>>()
    };
    let text = |told: &str| Some(told.to_owned());
    // 1 psi = 6894.757 Pa, 1 gpm = 6.309020e-5 m3/s: NIST SP 811, appendix B.8.
    let si = [
        (text("1.86 bar (27 psi)"), text("3.1 bar")),
        (text("0.57 L/s (9 gpm)"), None),
    ];
    let us = [
        (text("27 psi"), text("45.0 psi (3.1 bar)")),
        (text("9 gpm"), None),
    ];
    for language in [Language::English, Language::Spanish] {
        assert_eq!(told(UnitSystem::Si, language), si);
        assert_eq!(told(UnitSystem::Us, language), us);
    }
}

#[test]
fn every_time_that_a_step_takes_stands_in_the_service_report_once() {
    let call = call(SAMPLES[1]);
    let plan = call.answer().plan.clone().expect("a plan");
    let service = call.service_content(&issue());
    let mut timed = 0;
    for (step, part) in plan.steps.iter().zip(&service.steps) {
        for timer in &step.timers {
            let told = part.quantities.iter();
            let told = told.filter(|(_, value)| value.starts_with(&timer.shown));
            assert_eq!(told.count(), 1, "{}: {:?}", step.id, part.quantities);
            timed += 1;
        }
    }
    assert!(timed > 3, "{timed}");
}

#[test]
fn readings_that_were_not_used_stand_in_one_line_with_what_they_read() {
    // The sample holds three readings at rest, of which the last is that of today.
    let call = call(SAMPLES[2]);
    let lines = &call.answer().assessment.unused;
    let [line] = lines.as_slice() else {
        panic!("{lines:?}");
    };
    assert!(
        line.contains("8.3 psi") && line.contains("8.6 psi"),
        "{line}"
    );
    assert!(!line.contains("8.0 psi"), "{line}");
}
