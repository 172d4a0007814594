//! Puts simulated calls to the program and prints how good the answers were, in
//! Markdown, for `core/docs/diagnosis-figures.md`.
//!
//!     cargo run --release -p returnline-tests --example simulate -- \
//!         [--calls 1000] [--seed 1] [--follow 12] [--alike] [--effort 0.5/0.5] \
//!         [--brief] [--handed FOLDER] [--keep FOLDER] [--wrong] [--show FAULT] [--graph FOLDER] [--write FILE]
//!
//! `--handed` puts the calls of a folder (`tests/src/handed.rs`) to the program instead.
//! `--keep` prints no figures: it writes such a folder, half as many calls with nothing
//! wrong added, so that the same calls can be put to several graphs.
//! `--write` prints no figures: it writes what the inference sees of the calls,
//! one a line, for `tests/reference/ceiling.py`.

use returnline_tests::handed::{Judged, Truth, hand_over, handed_over, judge};
use returnline_tests::practice;
use returnline_tests::simulator::call::Effort;
use returnline_tests::simulator::score::{Score, by_fault, calibration_error, reliability};
use returnline_tests::simulator::seen::seen;
use returnline_tests::simulator::trial::{
    Outcome, Setting, graph, learn_from, many, read, simulated, tried, use_graph_of,
};
use std::collections::BTreeMap;
use std::error::Error;
use std::fs::File;
use std::io::{BufWriter, Write};
use std::path::Path;

struct Wanted {
    calls: usize,
    seed: u64,
    follow: usize,
    alike: bool,
    effort: Effort,
    brief: bool,
    practice: bool,
    wrong: bool,
    show: Option<String>,
    write: Option<String>,
    handed: Option<String>,
    keep: Option<String>,
}

fn wanted() -> Result<Wanted, Box<dyn Error>> {
    let mut wanted = Wanted {
        calls: 1_000,
        seed: 1,
        follow: 12,
        alike: false,
        effort: Effort::HALF,
        brief: false,
        practice: false,
        wrong: false,
        show: None,
        write: None,
        handed: None,
        keep: None,
    };
    let mut arguments = std::env::args().skip(1);
    while let Some(argument) = arguments.next() {
        let mut value = || arguments.next().ok_or(format!("{argument} needs a value"));
        match argument.as_str() {
            "--calls" => wanted.calls = value()?.parse()?,
            "--seed" => wanted.seed = value()?.parse()?,
            "--follow" => wanted.follow = value()?.parse()?,
            "--alike" => wanted.alike = true,
            "--effort" => {
                let share = |text: &str| text.parse::<f64>();
                let value = value()?;
                let (readings, signs) = value.split_once('/').ok_or("--effort 0.5/1")?;
                wanted.effort = Effort {
                    readings: share(readings)?,
                    signs: share(signs)?,
                };
            }
            "--graph" => use_graph_of(&value()?),
            "--confirmed" => {
                let value = value()?;
                let (folder, count) = value.split_once(',').ok_or("--confirmed FOLDER,300")?;
                let truths = std::fs::read_to_string(format!("{folder}/truth.jsonl"))?;
                let truths = truths.lines().take(count.parse()?);
                let truths: Vec<Truth> =
                    truths.map(serde_json::from_str).collect::<Result<_, _>>()?;
                learn_from(truths.iter().map(|truth| &truth.truth[..]));
            }
            "--practice" => wanted.practice = true,
            "--wrong" => wanted.wrong = true,
            "--brief" => wanted.brief = true,
            "--handed" => wanted.handed = Some(value()?),
            "--keep" => wanted.keep = Some(value()?),
            "--write" => wanted.write = Some(value()?),
            "--show" => wanted.show = Some(value()?),
            other => return Err(format!("what is `{other}`?").into()),
        }
    }
    Ok(wanted)
}

fn percent(share: f64) -> String {
    format!("{:.1} %", 100.0 * share)
}

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

fn main() -> Result<(), Box<dyn Error>> {
    let wanted = wanted()?;
    let setting = Setting {
        effort: wanted.effort,
        lying: false,
        follow: 0,
        alike: wanted.alike,
    };
    if wanted.practice {
        for (name, call) in practice::calls() {
            for missed in practice::misses(graph(), &call) {
                println!("{name}: {missed}");
            }
        }
        return Ok(());
    }
    if let Some(folder) = &wanted.keep {
        return Ok(keep(Path::new(folder), setting, &wanted)?);
    }
    if let Some(file) = &wanted.write {
        return write(file, setting, &wanted);
    }
    if let Some(folder) = &wanted.handed {
        handed(folder);
        return Ok(());
    }
    if let Some(fault) = &wanted.show {
        show(fault, setting, &wanted);
        return Ok(());
    }
    if wanted.wrong {
        list_wrong(setting, &wanted);
        return Ok(());
    }
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
    let followed = Score::of(&half);
    println!(
        "\nFollowing the recommended checks, {} reach 90 % (right in {}), after {:.1} checks on average.",
        percent(followed.reached),
        percent(followed.reached_right),
        followed.checks
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
    Ok(())
}

fn write(file: &str, setting: Setting, wanted: &Wanted) -> Result<(), Box<dyn Error>> {
    let mut lines = BufWriter::new(File::create(file)?);
    if let Some(folder) = &wanted.handed {
        for (truth, visit) in handed_over(Path::new(folder)) {
            let fault = truth.truth.first().map_or("", String::as_str);
            writeln!(lines, "{}", seen(&visit, fault))?;
        }
        return Ok(lines.flush()?);
    }
    for at in 0..wanted.calls {
        let call = simulated(setting, true, wanted.seed + at as u64);
        writeln!(lines, "{}", seen(&read(&call), call.truth.fault))?;
    }
    Ok(lines.flush()?)
}

fn keep(folder: &Path, setting: Setting, wanted: &Wanted) -> std::io::Result<()> {
    let faulty = (0..wanted.calls).map(|at| (true, at));
    let sound = (0..wanted.calls / 2).map(|at| (false, at));
    let calls = faulty.chain(sound).map(|(is_faulty, at)| {
        let call = simulated(setting, is_faulty, wanted.seed + at as u64);
        let fault = call.truth.fault;
        let truth = Truth {
            file: format!("{}{at:05}.json", if is_faulty { 'c' } else { 's' }),
            truth: (!fault.is_empty())
                .then(|| fault.to_owned())
                .into_iter()
                .collect(),
            accept: Vec::new(),
        };
        (truth, call.file())
    });
    hand_over(folder, calls)
}

/// How the calls of a folder came out, and what was taken for what.
fn handed(folder: &str) {
    let judged = judge(Path::new(folder));
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

/// One line for each call that came out wrong.
fn list_wrong(setting: Setting, wanted: &Wanted) {
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
fn show(fault: &str, setting: Setting, wanted: &Wanted) {
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
