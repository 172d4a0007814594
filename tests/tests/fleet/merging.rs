//! The laws of merging over random histories.

use super::devices::{DEVICES, Step, at, content, edit, file, lines, record, run, step, take};
use proptest::prelude::*;
use returnline_core::exchange::Kind;
use returnline_core::store::Store;
use std::collections::BTreeSet;

fn merged(files: &[&Vec<u8>]) -> BTreeSet<String> {
    let mut store = Store::in_memory().expect("opens");
    for bytes in files {
        take(&mut store, bytes, 8_000).expect("taken");
    }
    content(&mut store)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, ..ProptestConfig::default() })]

    #[test]
    fn order_and_repetition_do_not_matter_and_nothing_is_lost(
        steps in proptest::collection::vec(step(), 5..40),
        order in Just([0, 1, 2, 3, 4]).prop_shuffle(),
    ) {
        let mut stores: Vec<Store> =
            (0..DEVICES).map(|_| Store::in_memory().expect("opens")).collect();
        run(&mut stores, &steps);
        let files: Vec<Vec<u8>> =
            stores.iter_mut().map(|store| file(store, true, 7_000)).collect();
        let straight = merged(&files.iter().collect::<Vec<_>>());
        // Commutative and idempotent: another order, each file twice.
        let other: Vec<&Vec<u8>> =
            order.iter().chain(&order).map(|at| &files[*at]).collect();
        prop_assert_eq!(&merged(&other), &straight);
        // Associative: some merged first, and what comes of it merged with the rest.
        let mut part = Store::in_memory().expect("opens");
        for at in &order[..2] {
            take(&mut part, &files[*at], 8_000).expect("taken");
        }
        let part = file(&mut part, true, 8_001);
        let mut rest: Vec<&Vec<u8>> = order[2..].iter().map(|at| &files[*at]).collect();
        rest.push(&part);
        prop_assert_eq!(&merged(&rest), &straight);
        // Nothing is lost: a state that stood on a device stands, or one does
        // that came from it.
        let all: String = straight.iter().map(String::as_str).collect();
        for line in files.iter().flat_map(|bytes| lines(bytes)) {
            let line: serde_json::Value = serde_json::from_str(&line).expect("JSON");
            for state in line["states"].as_array().expect("states") {
                let name = state["id"].as_str().expect("a name");
                prop_assert!(all.contains(name), "{} is lost", name);
            }
        }
        // A device that takes everything in says the same as the others.
        for store in &mut stores {
            for bytes in &files {
                take(store, bytes, 8_002).expect("taken");
            }
            prop_assert_eq!(&content(store), &straight);
        }
    }
}

#[test]
fn two_edits_are_both_kept_and_the_decision_travels() {
    let [mut left, mut right] = [(); 2].map(|()| Store::in_memory().expect("opens"));
    left.put_record(&record(1), at(0)).expect("kept");
    let first = file(&mut left, true, 1);
    take(&mut right, &first, 2).expect("taken");
    edit(&mut left, &Step::Note(0, 1, 1), 1, at(3));
    edit(&mut right, &Step::Note(1, 1, 2), 1, at(4));
    let theirs = file(&mut right, true, 5);
    take(&mut left, &theirs, 6).expect("taken");
    let conflicts = left.conflicts().expect("listed");
    assert_eq!(conflicts.len(), 1);
    assert_eq!(conflicts[0].kind, Kind::Words);
    let kept: Vec<bool> = ["note 1", "note 2"]
        .iter()
        .map(|note| {
            conflicts[0]
                .sides
                .iter()
                .any(|side| side.revision.content.contains(note))
        })
        .collect();
    assert_eq!(kept, [true, true]);
    let other = conflicts[0]
        .sides
        .iter()
        .find(|side| !side.shown)
        .expect("a side");
    let notes = |store: &Store| store.record(record(1).id).expect("there").file.visit.notes;
    let stood = notes(&left);
    let (kind, id, keep) = (conflicts[0].kind, conflicts[0].id, other.revision.id);
    left.settle(kind, id, keep, at(7)).expect("settled");
    assert_eq!(left.conflicts().expect("listed"), []);
    let decided = notes(&left);
    assert!(
        decided.is_some() && decided != stood,
        "{decided:?} {stood:?}"
    );
    let ours = file(&mut left, true, 8);
    take(&mut right, &ours, 9).expect("taken");
    assert_eq!(right.conflicts().expect("listed"), []);
    assert_eq!(notes(&right), decided);
}
