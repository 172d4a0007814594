//! Puts simulated calls to the program and prints how good the answers were, in
//! Markdown, for `core/docs/diagnosis-figures.md`.
//!
//!     cargo run --release -p returnline-tests --example simulate -- \
//!         [--calls 1000] [--seed 1] [--follow 12] [--alike] [--effort 0.5/0.5] \
//!         [--brief] [--practice] [--handed FOLDER] [--fuller FOLDER] \
//!         [--confirmed FOLDER,COUNT] [--keep FOLDER] [--wrong] [--show FAULT] \
//!         [--graph FOLDER] [--write FILE]
//!
//! `--handed` puts the calls of a folder (`tests/src/handed.rs`) to the program instead;
//! with `--fuller FOLDER`, of the same calls read more fully, its checks are followed.
//! `--confirmed FOLDER,COUNT` lets it first learn from the first so many lines of the
//! `truth.jsonl` of a folder; mix them there, since folders begin with the faulty calls.
//! `--keep` prints no figures: it writes such a folder, half as many calls with nothing
//! wrong added, so that the same calls can be put to several graphs.
//! `--write` prints no figures: it writes what the inference sees of the calls,
//! one a line, for `tests/reference/ceiling.py`.

mod calls;
mod figures;
mod handed;

use returnline_tests::handed::{Truth, hand_over, handed_over, truths};
use returnline_tests::practice;
use returnline_tests::simulator::call::Effort;
use returnline_tests::simulator::seen::seen;
use returnline_tests::simulator::trial::{
    Setting, graph, learn_from, read, simulated, use_graph_of,
};
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
    fuller: Option<String>,
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
        fuller: None,
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
                let all = truths(Path::new(folder));
                let some = all.iter().take(count.parse()?);
                learn_from(some.map(|truth| &truth.truth[..]));
            }
            "--practice" => wanted.practice = true,
            "--wrong" => wanted.wrong = true,
            "--brief" => wanted.brief = true,
            "--handed" => wanted.handed = Some(value()?),
            "--fuller" => wanted.fuller = Some(value()?),
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
        handed::print(folder, &wanted);
        return Ok(());
    }
    if let Some(fault) = &wanted.show {
        calls::show(fault, setting, &wanted);
        return Ok(());
    }
    if wanted.wrong {
        calls::list_wrong(setting, &wanted);
        return Ok(());
    }
    figures::print(setting, &wanted);
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
