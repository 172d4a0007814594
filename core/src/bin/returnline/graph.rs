//! `returnline graph`: the rule graph checked, exported, shown.

use super::diagnose::{read, take};
use super::failure::Failure;
use super::show;
use returnline_core::api::{
    self, Call, FilesReport, NetworkFormat, Surroundings, ThisMachine, Wording,
};
use returnline_core::authored::SourceText;
use returnline_core::limits::GRAPH_FILE_BYTES;
use returnline_core::text::{Args, catalog};
use std::io::{Read, Write};
use std::path::{Path, PathBuf};

/// Words after `returnline graph`.
#[derive(clap::Subcommand)]
pub enum Command {
    /// Check the graph, the procedures and their texts; report every fault at once.
    #[command(
        after_help = "Examples:\n  returnline graph check\n  returnline graph check core/data"
    )]
    Check {
        /// A folder with `graph/*.toml` and `procedures/*.toml`; without it, what ships.
        folder: Option<PathBuf>,
    },
    /// Write the graph, with the evidence of a visit if one is given, as a Bayesian network.
    #[command(after_help = "Examples:\n  returnline graph export > graph.bif\n  \
        returnline graph export --visit call.json --format xmlbif > call.xml\n\
        Setting every variable named seen_... to yes is the evidence of the visit.")]
    Export {
        /// The visit file; `-` reads standard input.
        #[arg(long, value_name = "FILE")]
        visit: Option<PathBuf>,
        /// Format to write.
        #[arg(long, value_enum, default_value = "bif")]
        format: Format,
    },
    /// Show a cause: what it starts from and where it leads, with reasons and sources.
    #[command(
        after_help = "Examples:\n  returnline graph show\n  returnline graph show air-left-in-circuit"
    )]
    Show {
        /// Identifier of the cause; without it, all are listed.
        cause: Option<String>,
        /// Follow every mechanism to its end, not only the nearest.
        #[arg(long)]
        whole: bool,
    },
}

#[derive(Copy, Clone, clap::ValueEnum)]
pub enum Format {
    Bif,
    Xmlbif,
}

/// Runs `returnline graph`.
pub fn run(command: &Command) -> Result<(), Failure> {
    let wording = Wording::default();
    match command {
        Command::Check { folder: None } => tell(&api::check_shipped_files(), wording),
        Command::Check {
            folder: Some(folder),
        } => {
            let graph = texts(&folder.join("graph"))?;
            let procedures = texts(&folder.join("procedures"))?;
            let report = api::check_files(&sources(&graph), &sources(&procedures));
            tell(&report, wording)
        }
        Command::Export { visit, format } => {
            let format = match format {
                Format::Bif => NetworkFormat::Bif,
                Format::Xmlbif => NetworkFormat::XmlBif,
            };
            let text = match visit {
                None => api::graph_network(format, wording),
                Some(path) => {
                    let file = take(path, &read(path)?, wording)?;
                    Call::assess(&file, ThisMachine.today(), wording).network(format)
                }
            };
            let text = text.map_err(|error| Failure::api(&error))?;
            std::io::stdout().lock().write_all(text.as_bytes())?;
            Ok(())
        }
        Command::Show { cause: None, .. } => show::causes(&api::cause_names(wording)),
        Command::Show {
            cause: Some(cause),
            whole,
        } => {
            let sheet =
                api::cause_sheet(cause, wording).map_err(|error| unknown(&error, wording))?;
            show::cause(&sheet, *whole, wording)
        }
    }
}

/// The error with the names that there are.
fn unknown(error: &api::ApiError, wording: Wording) -> Failure {
    let names = api::cause_names(wording).into_iter().map(|(id, _)| id);
    let args = Args::new().text("names", names.collect::<Vec<_>>().join(", "));
    let known = catalog(wording.language).fill("program-cause-names", &args);
    Failure::Input(format!("{}\n{known}", error.message))
}

fn tell(report: &FilesReport, wording: Wording) -> Result<(), Failure> {
    if !report.problems.is_empty() {
        let lines = report.problems.iter().map(|problem| {
            let listed = [
                problem.check,
                &problem.file,
                &problem.subject,
                &problem.fault,
            ];
            listed.join(": ")
        });
        return Err(Failure::Input(format!(
            "\n{}",
            lines.collect::<Vec<_>>().join("\n")
        )));
    }
    let counts = report.counts.iter().map(|(what, count)| {
        let args = Args::new().text("count", count.to_string());
        catalog(wording.language).fill(&format!("program-count-{what}"), &args)
    });
    let args = Args::new().text("counts", counts.collect::<Vec<_>>().join(", "));
    let line = catalog(wording.language).fill("program-graph-good", &args);
    writeln!(std::io::stdout().lock(), "{line}")?;
    Ok(())
}

fn sources(texts: &[(String, String)]) -> Vec<SourceText<'_>> {
    texts
        .iter()
        .map(|(name, text)| SourceText { name, text })
        .collect()
}

/// A file, or so much of it as shows that it is too large.
fn read_text(path: &Path) -> std::io::Result<String> {
    let most = u64::try_from(GRAPH_FILE_BYTES).unwrap_or(u64::MAX);
    let mut text = String::new();
    let file = std::fs::File::open(path)?;
    file.take(most.saturating_add(1))
        .read_to_string(&mut text)?;
    Ok(text)
}

/// The TOML files of a folder, by name.
fn texts(folder: &Path) -> Result<Vec<(String, String)>, Failure> {
    let failed = |error: std::io::Error| Failure::file(folder, &error);
    let mut texts = Vec::new();
    for entry in std::fs::read_dir(folder).map_err(failed)? {
        let path = entry.map_err(failed)?.path();
        if path.extension().is_some_and(|end| end == "toml") {
            let name = path.file_name().unwrap_or_default().to_string_lossy();
            let text = read_text(&path).map_err(|error| Failure::file(&path, &error))?;
            texts.push((name.into_owned(), text));
        }
    }
    texts.sort();
    Ok(texts)
}
