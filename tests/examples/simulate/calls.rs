//! Single calls that came out wrong.

use super::Wanted;
use returnline_tests::simulator::trial::{Setting, many, simulated, tried};

/// One line for each call that came out wrong.
pub(super) fn list_wrong(setting: Setting, wanted: &Wanted) {
    for (at, outcome) in many(setting, true, wanted.calls, wanted.seed)
        .iter()
        .enumerate()
    {
        let place = outcome
            .ranked
            .iter()
            .position(|(cause, _)| cause == outcome.fault);
        if place == Some(0) {
            continue;
        }
        let of = |at: usize| {
            let (cause, p) = &outcome.ranked[at];
            format!("{cause} {p:.2}")
        };
        let own = place.map_or_else(String::new, |place| format!("{place}: {}", of(place)));
        println!(
            "{} | {own} | {} | {} | no fault {:.2}",
            wanted.seed + at as u64,
            of(0),
            of(1),
            outcome.no_fault
        );
    }
}

/// Prints the calls of one fault that came out wrong.
pub(super) fn show(fault: &str, setting: Setting, wanted: &Wanted) {
    let ordinary = matches!(fault, "ordinary-relaxation" | "seasonal-swing" | "nothing");
    let name = if fault == "nothing" { "" } else { fault };
    let mut shown = 0;
    for seed in wanted.seed.. {
        let call = simulated(setting, !ordinary, seed);
        if call.truth.fault != name {
            continue;
        }
        let outcome = tried(setting, !ordinary, seed);
        if outcome
            .ranked
            .first()
            .is_some_and(|(cause, _)| cause == name)
        {
            continue;
        }
        let best: Vec<String> = outcome
            .ranked
            .iter()
            .take(4)
            .map(|(c, p)| format!("{c} {p:.2}"))
            .collect();
        println!(
            "seed {seed}: {} | no fault {:.2}\n{}\n",
            best.join(", "),
            outcome.no_fault,
            call.file()
        );
        shown += 1;
        if shown >= wanted.calls.min(8) {
            return;
        }
    }
}
