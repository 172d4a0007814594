//! Calls written from a practitioner's reasoning, as visit files, through the whole
//! program (`cases/calls/README.md`, `cases/second_calls/README.md`).

use returnline_tests::handed::{Judged, Truth, hand_over, handed_over, judge};
use returnline_tests::simulator::call::Effort;
use returnline_tests::simulator::trial::{Setting, read, simulated};
use std::path::Path;

#[test]
fn calls_that_are_handed_over_are_read_as_they_were() {
    let setting = Setting {
        effort: Effort::SPARSE,
        lying: false,
        follow: 0,
        alike: false,
    };
    let truth = |file: &str, truth: &[&str], accept: &[&str]| Truth {
        file: file.to_owned(),
        truth: truth.iter().map(|&cause| cause.to_owned()).collect(),
        accept: accept.iter().map(|&cause| cause.to_owned()).collect(),
    };
    let truths = [
        truth(
            "faulty.json",
            &["relaxation", "slow-leak"],
            &["tank-failed"],
        ),
        truth("sound.json", &[], &[]),
    ];
    let calls = [simulated(setting, true, 3), simulated(setting, false, 4)];
    let folder = tempfile::tempdir().expect("a folder");
    let inner = folder.path().join("not/yet/there");
    let given = truths.iter().cloned().zip(calls.iter().map(|c| c.file()));
    hand_over(&inner, given).expect("written");

    let taken: Vec<_> = handed_over(&inner).collect();
    let expected: Vec<_> = truths.iter().cloned().zip(calls.iter().map(read)).collect();
    assert_eq!(taken, expected);
    // As the README of the calls has it: what is not said is left out.
    let lines = std::fs::read_to_string(inner.join("truth.jsonl")).expect("there");
    assert_eq!(
        lines.lines().last(),
        Some(r#"{"file":"sound.json","truth":[]}"#)
    );
}

#[test]
fn calls_come_out_as_a_senior_technician_would_have_them() {
    let wrong = wrong(concat!(env!("CARGO_MANIFEST_DIR"), "/cases/calls"), 80);
    assert!(wrong.is_empty(), "{wrong:#?}");
}

/// The one call that is left open is named with its reason in the README of the calls.
#[test]
fn calls_nobody_had_tried_come_out_as_their_author_has_them() {
    let mut wrong = wrong(
        concat!(env!("CARGO_MANIFEST_DIR"), "/cases/second_calls"),
        60,
    );
    wrong.retain(|call| !call.starts_with("sound-1.json: "));
    assert!(wrong.is_empty(), "{wrong:#?}");
}

/// What came out otherwise, of all calls of a folder, which are so many.
fn wrong(folder: &str, calls: usize) -> Vec<String> {
    let judged = judge(Path::new(folder));
    assert_eq!(judged.len(), calls);
    let wrong = judged.iter().filter(|call| !is_right(call));
    wrong
        .map(|call| {
            let first = call.ranked.first();
            format!(
                "{}: {:?}, not {:?} at {first:?}, doubted {:?}, healthy {}",
                call.truth.file,
                call.truth.truth,
                call.truth.accept,
                call.doubted,
                call.called_healthy
            )
        })
        .collect()
}

fn is_right(call: &Judged) -> bool {
    let truth = &call.truth.truth;
    let lies = |cause: &String| cause.ends_with("-lies") || cause.ends_with("-lie");
    if call.is_sound() {
        call.called_healthy
    } else if truth.iter().all(lies) {
        call.doubted
            .as_ref()
            .is_some_and(|doubted| truth.contains(doubted))
    } else {
        call.place() == Some(0) && !call.called_healthy
    }
}
