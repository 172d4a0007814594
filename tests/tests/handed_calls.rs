//! Calls written from a practitioner's reasoning, as visit files, through the whole
//! program (`cases/calls/README.md`).

use returnline_tests::handed::{Judged, judge};
use std::path::Path;

#[test]
fn calls_come_out_as_a_senior_technician_would_have_them() {
    let folder = Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/cases/calls"));
    let judged = judge(folder);
    assert_eq!(judged.len(), 80);
    let wrong: Vec<String> = judged
        .iter()
        .filter(|call| !is_right(call))
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
        .collect();
    assert!(wrong.is_empty(), "{wrong:#?}");
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
