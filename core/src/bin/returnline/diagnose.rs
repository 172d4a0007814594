//! `returnline diagnose` and `returnline check`.

use super::failure::Failure;
use super::show;
use returnline_core::api::{self, Call, Engine, Issue, Reader, Surroundings, ThisMachine, Wording};
use returnline_core::records::visit_file::VisitFile;
use returnline_core::report::document::PageSize;
use returnline_core::report::file::write_whole;
use returnline_core::text::{Args, catalog};
use returnline_core::units::UnitSystem;
use std::io::{Read, Write};
use std::path::{Path, PathBuf};

/// Largest input that is read before it is refused, so that an endless stream ends.
const MAX_INPUT: u64 = 8 * 1024 * 1024;

/// Words after `returnline diagnose`.
#[derive(clap::Args)]
pub struct Arguments {
    /// The visit file; `-` reads standard input.
    visit: PathBuf,
    /// Print the whole answer as one JSON document.
    #[arg(long)]
    json: bool,
    /// Write the service report to this file.
    #[arg(long, value_name = "FILE")]
    pdf: Option<PathBuf>,
    /// Keep the call in this database, made if it is not there.
    #[arg(long, value_name = "FILE")]
    keep: Option<PathBuf>,
    /// Units of the answer.
    #[arg(long, value_enum, default_value = "us")]
    units: Units,
    /// Paper of the report.
    #[arg(long, value_enum, default_value = "letter")]
    paper: Paper,
}

#[derive(Copy, Clone, clap::ValueEnum)]
pub enum Units {
    /// psi, gpm, degF.
    Us,
    /// bar, L/s, degC.
    Si,
}

#[derive(Copy, Clone, clap::ValueEnum)]
pub enum Paper {
    Letter,
    A4,
}

impl From<Units> for UnitSystem {
    fn from(units: Units) -> Self {
        match units {
            Units::Us => Self::Us,
            Units::Si => Self::Si,
        }
    }
}

impl From<Paper> for PageSize {
    fn from(paper: Paper) -> Self {
        match paper {
            Paper::Letter => Self::Letter,
            Paper::A4 => Self::A4,
        }
    }
}

/// Runs `returnline diagnose`.
pub fn run(arguments: &Arguments) -> Result<(), Failure> {
    let wording = Wording {
        units: arguments.units.into(),
        ..Wording::default()
    };
    let bytes = read(&arguments.visit)?;
    let file = take(&arguments.visit, &bytes, wording)?;
    let machine = ThisMachine;
    let call = Call::assess(&file, machine.today(), wording);
    // The answer first: a report that cannot be written must not cost it.
    if arguments.json {
        show::json(call.answer())?;
    } else {
        show::call(&call, wording)?;
    }
    let mut out = std::io::stdout().lock();
    if let Some(path) = &arguments.pdf {
        let issue = Issue::new(machine.here(), arguments.paper.into());
        let report = call.report(Reader::Technician, &issue);
        let pdf = report.map_err(|error| Failure::Io(error.to_string()))?;
        write_whole(path, &pdf).map_err(|error| Failure::Io(error.to_string()))?;
        if !arguments.json {
            let args = Args::new().text("path", path.display().to_string());
            writeln!(
                out,
                "{}",
                catalog(wording.language).fill("program-pdf-written", &args)
            )?;
        }
    }
    if let Some(path) = &arguments.keep {
        let mut engine =
            Engine::open(path, Box::new(ThisMachine)).map_err(|error| Failure::api(&error))?;
        engine
            .take_visit_file(&bytes)
            .map_err(|error| Failure::api(&error))?;
        if !arguments.json {
            let args = Args::new().text("path", path.display().to_string());
            writeln!(
                out,
                "{}",
                catalog(wording.language).fill("program-stored", &args)
            )?;
        }
    }
    Ok(())
}

/// Runs `returnline check`.
pub fn check(path: &Path) -> Result<(), Failure> {
    let wording = Wording::default();
    let bytes = read(path)?;
    take(path, &bytes, wording)?;
    let args = Args::new().text("path", path.display().to_string());
    let line = catalog(wording.language).fill("program-visit-file-good", &args);
    writeln!(std::io::stdout().lock(), "{line}")?;
    Ok(())
}

pub fn take(path: &Path, bytes: &[u8], wording: Wording) -> Result<VisitFile, Failure> {
    api::read_visit_file(bytes, wording)
        .map_err(|error| Failure::Input(format!("{}:\n{}", path.display(), error.message)))
}

pub fn read(path: &Path) -> Result<Vec<u8>, Failure> {
    let mut bytes = Vec::new();
    let read = if path == Path::new("-") {
        std::io::stdin()
            .lock()
            .take(MAX_INPUT)
            .read_to_end(&mut bytes)
    } else {
        std::fs::File::open(path).and_then(|file| file.take(MAX_INPUT).read_to_end(&mut bytes))
    };
    read.map_err(|error| Failure::file(path, &error))?;
    Ok(bytes)
}
