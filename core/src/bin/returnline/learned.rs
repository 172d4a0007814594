//! `returnline learned`: what confirmed causes have taught.

use super::diagnose::read;
use super::failure::Failure;
use super::show;
use returnline_core::api::types::LearnedView;
use returnline_core::api::{Engine, ThisMachine};
use std::io::{self, Write};
use std::path::{Path, PathBuf};

/// Words after `returnline learned`.
#[derive(clap::Args)]
pub struct Arguments {
    #[command(subcommand)]
    command: Command,
}

/// The database a command works on.
#[derive(clap::Args)]
struct Kept {
    /// The database with the records.
    #[arg(long, value_name = "FILE")]
    db: PathBuf,
}

#[derive(clap::Subcommand)]
enum Command {
    /// Show what was learned from confirmed causes.
    Show(Kept),
    /// Print own counts as JSON, to take to another device.
    Export(Kept),
    /// Take in counts from another device.
    Import {
        #[command(flatten)]
        kept: Kept,
        /// What `export` printed there; `-` reads standard input.
        counts: PathBuf,
    },
    /// Count anew from now on. Records are not deleted.
    Reset(Kept),
}

/// Runs `returnline learned`.
pub fn run(arguments: &Arguments) -> Result<(), Failure> {
    let failed = |error| Failure::api(&error);
    match &arguments.command {
        Command::Show(kept) => tell(&open(&kept.db)?.learned().map_err(failed)?),
        Command::Export(kept) => show::json(&open(&kept.db)?.export_learned().map_err(failed)?),
        Command::Import { kept, counts } => {
            let bytes = read(counts)?;
            tell(&open(&kept.db)?.import_learned(&bytes).map_err(failed)?)
        }
        Command::Reset(kept) => tell(&open(&kept.db)?.learn_anew().map_err(failed)?),
    }
}

fn open(path: &Path) -> Result<Engine, Failure> {
    if !path.exists() {
        let error = io::Error::from(io::ErrorKind::NotFound);
        return Err(Failure::file(path, &error));
    }
    Engine::open(path, Box::new(ThisMachine)).map_err(|error| Failure::api(&error))
}

fn tell(view: &LearnedView) -> Result<(), Failure> {
    let mut out = io::stdout().lock();
    writeln!(out, "{}", view.shown)?;
    let percent = |share: f64| format!("{:.1} %", 100.0 * share);
    for cause in view.causes.iter().filter(|cause| cause.confirmed > 0) {
        writeln!(
            out,
            "  {:>4}  {} → {} ± {}  {}",
            cause.confirmed,
            percent(cause.before),
            percent(cause.after),
            percent(cause.spread),
            cause.title
        )?;
    }
    Ok(())
}
