//! No input, however spoilt, brings the engine down.
//!
//! Every reader of something that comes from outside is fed the committed
//! examples of `tests/corpus/<reader>/` and the shipped samples, then spoilt
//! copies of them: a fixed number in the tests, as many as fit in
//! `RETURNLINE_SPOIL_SECONDS` with `make spoil`.

use flate2::Compression;
use flate2::read::GzDecoder;
use flate2::write::GzEncoder;
use returnline_core::api::types::ExchangeChoice;
use returnline_core::api::{Call, Engine, ThisMachine, Wording, read_visit_file, restore};
use returnline_core::calc::{Calculator, TOPICS};
use returnline_core::diagnosis::{Graph, SourceText};
use returnline_core::plan;
use returnline_core::report::photo::Photo;
use returnline_core::store::Store;
use returnline_core::text::{Language, catalog};
use returnline_core::units::{Dimension, Unit, UnitSystem, parse};
use returnline_tests::invented::{Dice, Invented, Size};
use returnline_tests::spoil::spoil;
use sha2::{Digest, Sha256};
use std::cell::Cell;
use std::io::{Read, Write};
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

/// Spoilt inputs a reader gets in the short run.
const SHORT: u32 = 6_000;

/// Of the spoilt visit files that are taken, one in so many is worked out to the end.
const WORKED_OUT: u32 = 6;

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

/// The files of a folder; all of them must be readable.
fn files(folder: &str) -> Vec<Vec<u8>> {
    let folder = root().join(folder);
    let entries =
        std::fs::read_dir(&folder).unwrap_or_else(|error| panic!("{}: {error}", folder.display()));
    let mut paths: Vec<PathBuf> = entries
        .map(|entry| entry.expect("an entry").path())
        .collect();
    paths.sort();
    let plain = paths.into_iter().filter(|path| path.is_file());
    plain
        .map(|path| std::fs::read(path).expect("readable"))
        .collect()
}

/// Feeds a reader; it answers whether it took the input as good.
fn feed(name: &str, examples: &[Vec<u8>], share: u32, read: impl Fn(&[u8]) -> bool) {
    assert!(!examples.is_empty(), "{name} has examples");
    let seconds = std::env::var("RETURNLINE_SPOIL_SECONDS").ok();
    let seconds: Option<u64> = seconds.map(|text| text.parse().expect("a number of seconds"));
    let until = seconds.map(|seconds| Instant::now() + Duration::from_secs(seconds));
    let mut dice = Dice::new(seconds.map_or(1, |_| std::process::id().into()));
    let (mut count, mut good) = (0_u64, 0_u64);
    let mut try_one = |bytes: &[u8]| {
        let outcome = catch_unwind(AssertUnwindSafe(|| read(bytes)));
        match outcome {
            Ok(taken) => good += u64::from(taken),
            Err(_) => {
                let kept = std::env::temp_dir().join(format!("returnline-{name}.found"));
                std::fs::write(&kept, bytes).expect("written");
                panic!("{name} broke; the input is kept as {}", kept.display());
            }
        }
        count += 1;
    };
    for example in examples {
        try_one(example);
    }
    let mut turn = 0;
    while until.map_or(turn < SHORT / share, |until| Instant::now() < until) {
        let (one, other) = (dice.below(examples.len()), dice.below(examples.len()));
        try_one(&spoil(&examples[one], &examples[other], &mut dice));
        turn += 1;
    }
    assert!(good > 0, "{name}: nothing was read at all");
    assert!(good < count, "{name}: everything was taken as good");
    println!("{name}: {count} inputs, {good} taken, none broke it");
}

#[test]
fn visit_files() {
    let mut examples = files("core/data/samples");
    examples.extend(files("tests/corpus/visit-file"));
    let taken = Cell::new(0_u32);
    feed("visit-file", &examples, 1, |bytes| {
        match read_visit_file(bytes, Wording::default()) {
            Ok(file) => {
                // What passes the reader must also pass everything behind it.
                if taken.replace(taken.get() + 1).is_multiple_of(WORKED_OUT) {
                    let day = chrono::NaiveDate::from_ymd_opt(2026, 9, 1).expect("a day");
                    let call = Call::assess(&file, day, Wording::default());
                    assert!(!call.answer().assessment.causes.is_empty());
                }
                true
            }
            Err(error) => {
                assert!(!error.message.is_empty());
                false
            }
        }
    });
}

#[test]
fn graph_files() {
    let mut examples = files("tests/corpus/graph");
    let size = Size {
        causes: 4,
        mechanisms: 3,
        findings: 5,
        ..Size::FULL
    };
    examples.extend((1..6).map(|seed| Invented::new(seed, size).to_toml().into_bytes()));
    feed("graph", &examples, 4, |bytes| {
        let Ok(text) = std::str::from_utf8(bytes) else {
            return false;
        };
        Graph::load(&[SourceText {
            name: "spoilt.toml",
            text,
        }])
        .is_ok()
    });
}

#[test]
fn procedure_files() {
    let mut examples = files("core/data/procedures");
    examples.extend(files("tests/corpus/graph"));
    feed("procedures", &examples, 4, |bytes| {
        let Ok(text) = std::str::from_utf8(bytes) else {
            return false;
        };
        let (_, problems) = plan::validate::parse(&[SourceText {
            name: "spoilt.toml",
            text,
        }]);
        problems.is_empty()
    });
}

#[test]
fn numbers_with_units() {
    let examples = files("tests/corpus/number");
    feed("number", &examples, 1, |bytes| {
        let text = String::from_utf8_lossy(bytes);
        let mut taken = false;
        for dimension in [
            Dimension::Pressure,
            Dimension::Temperature,
            Dimension::VolumeFlow,
            Dimension::Length,
        ] {
            let default = Unit::of(dimension).next();
            if let Ok((value, _)) = parse::plain(&text, dimension, default) {
                assert!(value.is_finite(), "{text:?} became {value}");
                taken = true;
            }
        }
        taken
    });
}

#[test]
fn questions_for_the_calculator() {
    let catalog = catalog(Language::English);
    let examples: Vec<Vec<u8>> = TOPICS
        .iter()
        .map(|topic| topic.example().into_bytes())
        .collect();
    let calculators: Vec<Calculator> = TOPICS
        .iter()
        .map(|topic| Calculator::new(*topic, UnitSystem::Us))
        .collect();
    let turn = Cell::new(0);
    feed("question", &examples, 10, |line| {
        // The examples come first and in the order of the topics; later each
        // topic gets what was meant for another one too.
        let calculator = &calculators[turn.replace(turn.get() + 1) % calculators.len()];
        let answer = calculator.answer(line, catalog);
        assert!(answer.is_object());
        answer.get("error").is_none()
    });
}

/// The text of an exchange file as it would stand with a right sum, packed.
fn packed(text: &[u8]) -> Vec<u8> {
    let end = text
        .windows(8)
        .rposition(|part| part == b"{\"end\":{")
        .unwrap_or(text.len());
    let body = &text[..end];
    let records = body
        .iter()
        .filter(|byte| **byte == b'\n')
        .count()
        .saturating_sub(1);
    let sum: String = Sha256::digest(body)
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect();
    let mut packer = GzEncoder::new(Vec::new(), Compression::fast());
    let end = format!("{{\"end\":{{\"records\":{records},\"sha256\":\"{sum}\"}}}}\n");
    packer.write_all(body).expect("packed");
    packer.write_all(end.as_bytes()).expect("packed");
    packer.finish().expect("packed")
}

#[test]
fn exchange_files() {
    let now = chrono::DateTime::from_timestamp(1_790_000_000, 0).expect("a time");
    let mut engine = Engine::without_database(Box::new(ThisMachine)).expect("opens");
    for sample in files("tests/databases/calls") {
        engine.take_visit_file(&sample).expect("taken");
    }
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("all.rlx");
    let all = ExchangeChoice {
        visits: Vec::new(),
        systems: Vec::new(),
        without_personal: false,
    };
    engine.export_records(&all, &path).expect("written");
    let file = std::fs::read(&path).expect("read");
    let mut text = Vec::new();
    GzDecoder::new(&*file)
        .read_to_end(&mut text)
        .expect("unpacked");
    // With a right sum, so that what is behind the sum is reached.
    feed("exchange", &[text], 10, |text| {
        let mut store = Store::in_memory().expect("opens");
        let bytes = packed(text);
        let taken = store.import(|| Ok(&*bytes), now).is_ok();
        let visits = store.content().expect("readable").visits;
        assert!(
            taken || visits == 0,
            "refused and yet {visits} visits are there"
        );
        for line in store.visits().expect("listed") {
            store.record(line.id).expect("what is listed can be read");
        }
        taken
    });
    // And as it is: any changed byte is noticed.
    feed("exchange-file", &[file], 10, |bytes| {
        let mut store = Store::in_memory().expect("opens");
        store.import(|| Ok(bytes), now).is_ok()
    });
}

#[test]
fn photos() {
    feed("photo", &files("tests/corpus/photo"), 4, |bytes| {
        Photo::from_bytes(bytes).is_ok()
    });
}

#[test]
fn files_of_learned_counts() {
    let mut here = Engine::without_database(Box::new(ThisMachine)).expect("opens");
    let mut own: serde_json::Value =
        serde_json::from_slice(&here.learned_bytes().expect("written")).expect("JSON");
    own["origin"] = "another device".into();
    own["callbacks"] = 9.into();
    own["confirmed"] = serde_json::json!({ "air-left-in-circuit": 3, "exchanger-loaded": 1 });
    feed("learned", &[own.to_string().into_bytes()], 4, |bytes| {
        let mut there = Engine::without_database(Box::new(ThisMachine)).expect("opens");
        match there.import_learned(bytes) {
            Ok(view) => {
                for cause in &view.causes {
                    assert!((0.0..=1.0).contains(&cause.after), "{}", cause.id);
                }
                true
            }
            Err(error) => {
                assert_eq!(there.learned().expect("read").elsewhere, 0, "{error}");
                false
            }
        }
    });
}

/// A file that a person takes for a backup takes the place of nothing unless it is
/// one from end to end.
#[test]
fn backup_files() {
    let folder = tempfile::tempdir().expect("a folder");
    let (from, database) = (
        folder.path().join("from.db"),
        folder.path().join("calls.db"),
    );
    let mut engine = Engine::open(&database, Box::new(ThisMachine)).expect("opens");
    for sample in files("tests/databases/calls") {
        engine.take_visit_file(&sample).expect("taken");
    }
    engine.back_up(&from).expect("written");
    drop(engine);
    let (good, before) = (
        std::fs::read(&from).expect("read"),
        std::fs::read(&database).expect("read"),
    );
    feed("backup", &[good], 100, |bytes| {
        std::fs::write(&from, bytes).expect("written");
        match restore(&from, &database, Wording::default()) {
            Ok(()) => {
                // Whatever was taken can be worked with to the end.
                let engine = Engine::open(&database, Box::new(ThisMachine)).expect("opens");
                for line in engine.visits().expect("listed") {
                    let _ = engine.visit(&line.id);
                }
                drop(engine);
                for entry in std::fs::read_dir(folder.path()).expect("listed") {
                    let path = entry.expect("an entry").path();
                    if path != from {
                        std::fs::remove_file(path).expect("removed");
                    }
                }
                std::fs::write(&database, &before).expect("written");
                true
            }
            Err(error) => {
                assert!(!error.message.is_empty());
                assert_eq!(std::fs::read(&database).expect("read"), before, "{error}");
                false
            }
        }
    });
}
