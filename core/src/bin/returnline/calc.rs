//! `returnline calc`: one question a line in, one answer a line out, in order.

use super::failure::Failure;
use super::show;
use returnline_core::calc::{self, Calculator, MAX_LINE, TOPICS};
use returnline_core::text::{Args, Catalog, Language, catalog};
use std::io::{self, BufRead, BufReader, BufWriter, Read, Write};
use std::path::{Path, PathBuf};

/// Words after `returnline calc`.
#[derive(clap::Args)]
pub struct Arguments {
    /// What to compute; `--list` names every topic.
    #[arg(required_unless_present = "list")]
    topic: Option<String>,
    /// File with one JSON object a line; standard input when left out or `-`.
    file: Option<PathBuf>,
    /// List every topic with a sentence.
    #[arg(long, conflicts_with_all = ["schema", "example"])]
    list: bool,
    /// Print the JSON Schemas of question and answer, an example and the sources.
    #[arg(long, conflicts_with = "example")]
    schema: bool,
    /// Print a question that runs.
    #[arg(long)]
    example: bool,
    /// Units of the answers, where a question does not choose.
    #[arg(long, value_enum, default_value = "us")]
    units: super::diagnose::Units,
}

/// Runs `returnline calc`.
pub fn run(arguments: &Arguments) -> Result<(), Failure> {
    let catalog = catalog(Language::English);
    let Some(name) = arguments.topic.as_deref().filter(|_| !arguments.list) else {
        return list(catalog);
    };
    let entry = calc::topic(name).ok_or_else(|| {
        let near = calc::close_to(name).join(", ");
        let args = Args::new().text("topic", name).text("near", near);
        Failure::Input(catalog.fill("calc-no-such-topic", &args))
    })?;
    if arguments.schema {
        return show::json(&entry.description(catalog));
    }
    if arguments.example {
        let mut out = io::stdout().lock();
        writeln!(out, "{}", entry.example())?;
        return Ok(());
    }
    let file = arguments.file.as_deref();
    let input: Box<dyn Read> = match file.filter(|file| *file != Path::new("-")) {
        None => Box::new(io::stdin().lock()),
        Some(path) => {
            Box::new(std::fs::File::open(path).map_err(|error| Failure::file(path, &error))?)
        }
    };
    let calculator = Calculator::new(entry, arguments.units.into());
    stream(BufReader::new(input), &calculator, catalog)
}

fn list(catalog: &Catalog) -> Result<(), Failure> {
    let mut out = BufWriter::new(io::stdout().lock());
    let width = TOPICS.iter().map(|topic| topic.name().len()).max();
    let width = width.unwrap_or_default();
    for topic in TOPICS {
        writeln!(out, "{:width$}  {}", topic.name(), topic.sentence(catalog))?;
    }
    out.flush()?;
    Ok(())
}

/// Answers every line. A blank line has no answer; a line that is too long or
/// wrong has an object `error` in its place.
fn stream(
    mut input: BufReader<Box<dyn Read>>,
    calculator: &Calculator,
    catalog: &Catalog,
) -> Result<(), Failure> {
    let mut out = BufWriter::new(io::stdout().lock());
    let mut line = Vec::new();
    loop {
        line.clear();
        // One byte more than allowed, and the line feed, tell a line that is too long.
        let limit = MAX_LINE as u64 + 2;
        let read = input.by_ref().take(limit).read_until(b'\n', &mut line)?;
        if read == 0 {
            break;
        }
        let ended = line.ends_with(b"\n");
        let text = line.trim_ascii();
        if text.len() > MAX_LINE || (!ended && read as u64 == limit) {
            if !ended {
                input.skip_until(b'\n')?;
            }
            writeln!(out, "{}", calc::too_long(catalog))?;
        } else if !text.is_empty() {
            writeln!(out, "{}", calculator.answer(text, catalog))?;
        }
        // Whoever asks line by line waits for each answer; a file does not.
        if input.buffer().is_empty() {
            out.flush()?;
        }
    }
    out.flush()?;
    Ok(())
}
