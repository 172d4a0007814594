//! The figures of calls of another hand.

use super::{Wanted, percent};
use returnline_tests::handed::{Judged, judge, judge_followed};
use returnline_tests::simulator::score::calibration_error;
use std::collections::BTreeMap;
use std::path::Path;

/// How the calls of a folder came out, and what was taken for what.
pub(super) fn print(folder: &str, wanted: &Wanted) {
    let folder = Path::new(folder);
    let judged: Vec<Judged> = if let Some(fuller) = &wanted.fuller {
        let followed = judge_followed(folder, Path::new(fuller), wanted.follow);
        let checks: usize = followed.iter().map(|(_, checks)| checks).sum();
        let mean = checks as f64 / followed.len().max(1) as f64;
        println!("After the recommended checks, {mean:.1} each:\n");
        followed.into_iter().map(|(judged, _)| judged).collect()
    } else {
        judge(folder)
    };
    let (sound, faulty): (Vec<&Judged>, Vec<&Judged>) =
        judged.iter().partition(|call| call.is_sound());
    let share = |of: &[&Judged], is: &dyn Fn(&Judged) -> bool| {
        let so = of.iter().filter(|call| is(call)).count();
        percent(so as f64 / of.len().max(1) as f64)
    };
    println!(
        "| faulty calls | first | same correction first | among three | called healthy | calibration error |"
    );
    println!("|---|---|---|---|---|---|");
    println!(
        "| {} | {} | {} | {} | {} | {:.3} |",
        faulty.len(),
        share(&faulty, &|call| call.place() == Some(0)),
        share(&faulty, &|call| call.is_same_correction()),
        share(&faulty, &|call| call.place().is_some_and(|place| place < 3)),
        share(&faulty, &|call| call.called_healthy),
        calibration_error(faulty.iter().filter_map(|call| {
            let (_, probability) = call.ranked.first()?;
            Some((*probability, call.place() == Some(0)))
        })),
    );
    println!(
        "\nNothing wrong: {} of {} recognised.\n",
        sound.iter().filter(|call| call.called_healthy).count(),
        sound.len(),
    );
    println!("| fault | calls | first | among three | taken for |");
    println!("|---|---|---|---|---|");
    let mut faults: BTreeMap<&str, Vec<&Judged>> = BTreeMap::new();
    for call in &faulty {
        faults.entry(&call.truth.truth[0]).or_default().push(call);
    }
    for (fault, calls) in faults {
        let mut others: BTreeMap<&str, usize> = BTreeMap::new();
        for call in calls.iter().filter(|call| call.place() != Some(0)) {
            let first = call.ranked.first().map_or("nothing", |(cause, _)| cause);
            *others.entry(first).or_default() += 1;
        }
        let mut others: Vec<_> = others.into_iter().collect();
        others.sort_by_key(|(_, times)| std::cmp::Reverse(*times));
        let others: Vec<String> = others.iter().map(|(c, n)| format!("{c} {n}")).collect();
        println!(
            "| {fault} | {} | {} | {} | {} |",
            calls.len(),
            share(&calls, &|call| call.place() == Some(0)),
            share(&calls, &|call| call.place().is_some_and(|place| place < 3)),
            others.join(", "),
        );
    }
}
