//! `returnline exchange`: records between devices, as files.

use super::failure::Failure;
use super::show;
use returnline_core::api::types::{ConflictView, ExchangeChoice};
use returnline_core::api::{Engine, ThisMachine, Wording};
use returnline_core::text::catalog;
use std::io::Write;
use std::path::{Path, PathBuf};

/// Words after `returnline exchange`.
#[derive(clap::Subcommand)]
pub enum Command {
    /// Write visits, with all that belongs to them, into one file.
    #[command(after_help = "Examples:\n  \
        returnline exchange export --db calls.db --to monday.rlx\n  \
        returnline exchange export --db calls.db --to one.rlx --visit ID --without-personal")]
    Export {
        /// The database.
        #[arg(long, value_name = "FILE")]
        db: PathBuf,
        /// The file to write.
        #[arg(long, value_name = "FILE")]
        to: PathBuf,
        /// Only this visit; may be given more than once.
        #[arg(long, value_name = "ID")]
        visit: Vec<String>,
        /// Only this system with its visits; may be given more than once.
        #[arg(long, value_name = "ID")]
        system: Vec<String>,
        /// Leave out names, addresses, complaints, notes and photos.
        #[arg(long)]
        without_personal: bool,
    },
    /// Take files in, in any order and any number of times.
    #[command(after_help = "Example:\n  returnline exchange import --db office.db *.rlx")]
    Import {
        /// The database, made if it is not there.
        #[arg(long, value_name = "FILE")]
        db: PathBuf,
        /// The files. Each is taken whole or not at all.
        #[arg(required = true, value_name = "EXCHANGE")]
        files: Vec<PathBuf>,
    },
    /// List records on which devices disagree.
    Conflicts {
        /// The database.
        #[arg(long, value_name = "FILE")]
        db: PathBuf,
        /// Print them as one JSON document.
        #[arg(long)]
        json: bool,
    },
    /// Decide which state of a record stands.
    #[command(after_help = "Example:\n  \
        returnline exchange settle --db office.db visit ID STATE")]
    Settle {
        /// The database.
        #[arg(long, value_name = "FILE")]
        db: PathBuf,
        /// Kind of the record, as listed.
        kind: String,
        /// Identifier of the record.
        record: String,
        /// The state that stands.
        state: String,
    },
}

/// Runs `returnline exchange`.
pub fn run(command: Command) -> Result<(), Failure> {
    let mut out = std::io::stdout().lock();
    match command {
        Command::Export {
            db,
            to,
            visit,
            system,
            without_personal,
        } => {
            let choice = ExchangeChoice {
                visits: visit,
                systems: system,
                without_personal,
            };
            let done = open_existing(&db)?.export_records(&choice, &to);
            let done = done.map_err(|error| Failure::api(&error))?;
            writeln!(out, "{}", done.words)?;
        }
        Command::Import { db, files } => {
            let mut engine = open(&db)?;
            for file in files {
                let done = engine.import_records(&file).map_err(|error| {
                    let message = format!("{}: {}", file.display(), error.message);
                    match error.code.as_str() {
                        "exchange-io" => Failure::Io(message),
                        code if code.starts_with("exchange-") => Failure::Input(message),
                        _ => Failure::Io(message),
                    }
                })?;
                writeln!(out, "{}: {}", file.display(), done.words)?;
            }
        }
        Command::Conflicts { db, json } => {
            let conflicts = open_existing(&db)?.record_conflicts();
            let conflicts = conflicts.map_err(|error| Failure::api(&error))?;
            if json {
                drop(out);
                return show::json(&conflicts);
            }
            list(&mut out, &conflicts)?;
        }
        Command::Settle {
            db,
            kind,
            record,
            state,
        } => {
            let left = open_existing(&db)?.settle_record(&kind, &record, &state);
            let left = left.map_err(|error| Failure::api(&error))?;
            list(&mut out, &left)?;
        }
    }
    Ok(())
}

/// Opens a database, made if it is not there.
pub fn open(path: &Path) -> Result<Engine, Failure> {
    Engine::open(path, Box::new(ThisMachine)).map_err(|error| Failure::api(&error))
}

/// Opens a database that must be there: a slip of the pen makes no new one.
pub fn open_existing(path: &Path) -> Result<Engine, Failure> {
    std::fs::metadata(path).map_err(|error| Failure::file(path, &error))?;
    open(path)
}

fn list(out: &mut impl Write, conflicts: &[ConflictView]) -> Result<(), Failure> {
    if conflicts.is_empty() {
        let catalog = catalog(Wording::default().language);
        writeln!(out, "{}", catalog.text("exchange-nothing-to-decide"))?;
    }
    for conflict in conflicts {
        writeln!(out, "{}  {} {}", conflict.title, conflict.kind, conflict.id)?;
        for side in &conflict.sides {
            let mark = if side.stands { '*' } else { ' ' };
            writeln!(out, "  {mark} {}  {}", side.state, side.made_at)?;
            for [place, value] in &side.differs {
                writeln!(out, "      {place}: {value}")?;
            }
        }
    }
    Ok(())
}
