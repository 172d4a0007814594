//! The figures of calls of this simulator.

use super::{Wanted, percent};
use returnline_tests::simulator::call::Effort;
use returnline_tests::simulator::score::{Score, by_fault, reliability};
use returnline_tests::simulator::trial::{Outcome, Setting, many};

fn row(name: &str, score: &Score) {
    println!(
        "| {name} | {} | {} | {} | {} | {} | {:.3} | {:.3} | {} |",
        score.calls,
        percent(score.first),
        percent(score.first_fault),
        percent(score.among_three),
        percent(score.same_correction),
        score.brier,
        score.calibration,
        percent(score.called_healthy),
    );
}

pub(super) fn print(setting: Setting, wanted: &Wanted) {
    println!(
        "| calls | number | first | first of the faults | among three | same correction first | Brier | calibration error | called healthy |"
    );
    println!("|---|---|---|---|---|---|---|---|---|");
    let half = many(
        Setting {
            follow: wanted.follow,
            ..setting
        },
        true,
        wanted.calls,
        wanted.seed,
    );
    row(
        &format!(
            "{} of the readings, {} of the signs",
            wanted.effort.readings, wanted.effort.signs
        ),
        &Score::of(&half),
    );
    let followed = |of: &[Outcome]| -> Vec<Outcome> {
        let ends = of.iter().filter_map(|outcome| outcome.followed.as_ref());
        ends.map(|(_, outcome)| (**outcome).clone()).collect()
    };
    if wanted.follow > 0 {
        let checks = half.iter().filter_map(|outcome| outcome.followed.as_ref());
        let checks: usize = checks.map(|(checks, _)| checks).sum();
        let mean = checks as f64 / half.len().max(1) as f64;
        row(
            &format!("the same after the recommended checks, {mean:.1} each"),
            &Score::of(&followed(&half)),
        );
    }
    let lying = many(
        Setting {
            lying: true,
            ..setting
        },
        true,
        wanted.calls,
        wanted.seed + 100_000,
    );
    row("one instrument lies", &Score::of(&lying));
    if !wanted.brief {
        for (name, effort) in [
            ("all readings", Effort::FULL),
            ("a few readings", Effort::SPARSE),
        ] {
            let calls = many(
                Setting { effort, ..setting },
                true,
                wanted.calls,
                wanted.seed + 200_000,
            );
            row(name, &Score::of(&calls));
        }
    }
    let sound = many(
        Setting {
            follow: wanted.follow,
            ..setting
        },
        false,
        wanted.calls / 2,
        wanted.seed + 300_000,
    );
    let healthy = sound
        .iter()
        .filter(|outcome| outcome.called_healthy)
        .count();
    println!(
        "\nNothing wrong: {} of {} recognised ({}).",
        healthy,
        sound.len(),
        percent(healthy as f64 / sound.len() as f64)
    );
    if wanted.follow > 0 {
        let ends = followed(&sound);
        let seen = ends.iter().filter(|outcome| outcome.called_healthy).count();
        println!("After the recommended checks: {seen} of {}.", ends.len());
    }
    for (fault, _, _) in by_fault(&sound) {
        let of: Vec<&Outcome> = sound
            .iter()
            .filter(|outcome| outcome.fault == fault)
            .collect();
        let seen = of.iter().filter(|outcome| outcome.called_healthy).count();
        println!(
            "- {}: {} of {}",
            if fault.is_empty() {
                "nothing at all"
            } else {
                fault
            },
            seen,
            of.len()
        );
    }
    println!("\n| called healthy from | faulty calls | nothing wrong |\n|---|---|---|");
    for least in [0.4, 0.5, 0.55, 0.6, 0.65, 0.7, 0.75] {
        let share = |of: &[Outcome]| {
            let above = of.iter().filter(|outcome| outcome.no_fault >= least);
            percent(above.count() as f64 / of.len().max(1) as f64)
        };
        println!(
            "| P(no fault) {least} | {} | {} |",
            share(&half),
            share(&sound)
        );
    }
    let reached = Score::of(&half);
    println!(
        "\nFollowing the recommended checks, {} reach 90 % (right in {}), after {:.1} checks on average.",
        percent(reached.reached),
        percent(reached.reached_right),
        reached.checks
    );
    println!("\n| probability of the first | calls | mean | right |\n|---|---|---|---|");
    for (bin, calls, mean, right) in reliability(&half) {
        println!(
            "| {}0 to {}0 % | {calls} | {} | {} |",
            bin,
            bin + 1,
            percent(mean),
            percent(right)
        );
    }
    println!(
        "\n| fault | calls | first | among three | same correction | mean probability of the first | checks to 90 % | taken for |\n|---|---|---|---|---|---|---|---|"
    );
    for (fault, score, taken) in by_fault(&half) {
        println!(
            "| {fault} | {} | {} | {} | {} | {} | {:.1} | {taken} |",
            score.calls,
            percent(score.first),
            percent(score.among_three),
            percent(score.same_correction),
            percent(score.confidence),
            score.checks
        );
    }
}
