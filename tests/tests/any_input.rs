//! No input, however spoilt, brings the engine down.
//!
//! Every reader of something that comes from outside is fed the committed
//! examples of `tests/corpus/<reader>/` and the shipped samples, then spoilt
//! copies of them: a fixed number in the tests, as many as fit in
//! `RETURNLINE_SPOIL_SECONDS` with `make spoil`.

use returnline_core::api::{Call, Wording, read_visit_file};
use returnline_core::diagnosis::{Graph, SourceText};
use returnline_core::plan;
use returnline_core::report::photo::Photo;
use returnline_core::units::{Dimension, Unit, parse};
use returnline_tests::invented::{Dice, Invented, Size};
use returnline_tests::spoil::spoil;
use std::cell::Cell;
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
fn photos() {
    feed("photo", &files("tests/corpus/photo"), 4, |bytes| {
        Photo::from_bytes(bytes).is_ok()
    });
}
