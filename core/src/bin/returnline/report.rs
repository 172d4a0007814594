//! `returnline report`.

use super::diagnose::{Paper, Units, read, take};
use super::exchange::open_existing;
use super::failure::Failure;
use chrono::NaiveDate;
use returnline_core::api::types::{FleetFilter, FleetQuery};
use returnline_core::api::{
    Call, Issue, Reader, Surroundings, ThisMachine, Wording, not_written, photo_part, read_picture,
};
use returnline_core::records::attachment::limits;
use returnline_core::report::file::write_whole;
use returnline_core::report::parts::{Issuer, PhotoPart};
use returnline_core::text::{Args, Language, catalog};
use std::io::{Read, Write};
use std::path::{Path, PathBuf};

/// Words after `returnline report`.
#[derive(clap::Args)]
pub struct Arguments {
    /// The visit file; `-` reads standard input.
    #[arg(required_unless_present = "fleet")]
    visit: Option<PathBuf>,
    /// For whom the report is written.
    #[arg(
        long = "for",
        value_enum,
        value_name = "READER",
        required_unless_present = "fleet"
    )]
    reader: Option<For>,
    /// Instead of a call: the manager's report over this database.
    #[arg(long, value_name = "DB", conflicts_with_all = ["visit", "reader", "photo", "next_visit"])]
    fleet: Option<PathBuf>,
    /// First day of visits in the manager's report, YYYY-MM-DD.
    #[arg(long, value_name = "DAY", requires = "fleet")]
    from: Option<NaiveDate>,
    /// Last day of visits in the manager's report.
    #[arg(long, value_name = "DAY", requires = "fleet")]
    to: Option<NaiveDate>,
    /// The file to write; one that is there is replaced.
    #[arg(long, value_name = "FILE")]
    out: PathBuf,
    /// Language of the report.
    #[arg(long, value_parser = languages(), default_value = "en")]
    language: String,
    /// Units of what is computed; readings stay as written.
    #[arg(long, value_enum, default_value = "us")]
    units: Units,
    /// Paper.
    #[arg(long, value_enum, default_value = "letter")]
    paper: Paper,
    /// A photo, JPEG or PNG; may be given again.
    #[arg(long, value_name = "FILE")]
    photo: Vec<PathBuf>,
    /// Name of the company that issues the report.
    #[arg(long, value_name = "NAME")]
    company: Option<String>,
    /// Number that the customer calls.
    #[arg(long, value_name = "NUMBER")]
    phone: Option<String>,
    /// Day of the next visit, YYYY-MM-DD.
    #[arg(long, value_name = "DAY")]
    next_visit: Option<NaiveDate>,
    /// Moment of issue, RFC 3339; now if not given. The same call and the same
    /// moment give the same bytes.
    #[arg(long, value_name = "MOMENT")]
    issued: Option<chrono::DateTime<chrono::FixedOffset>>,
}

#[derive(Copy, Clone, clap::ValueEnum)]
enum For {
    Technician,
    Homeowner,
}

fn languages() -> clap::builder::PossibleValuesParser {
    Language::ALL.map(Language::tag).into()
}

/// Runs `returnline report`.
pub fn run(arguments: &Arguments) -> Result<(), Failure> {
    let wording = Wording {
        units: arguments.units.into(),
        language: Language::from_tag(&arguments.language).unwrap_or(Language::English),
    };
    let pdf = match (&arguments.fleet, &arguments.visit) {
        (Some(db), _) => fleet(db, arguments, wording)?,
        (None, Some(visit)) => call(visit, arguments, wording)?,
        // The words were checked: one of the two is there.
        (None, None) => return Ok(()),
    };
    write_whole(&arguments.out, &pdf)
        .map_err(|error| Failure::api(&not_written(&error, wording)))?;
    let path = arguments.out.display().to_string();
    let args = Args::new().text("path", path);
    let line = catalog(wording.language).fill("program-pdf-written", &args);
    writeln!(std::io::stdout().lock(), "{line}")?;
    Ok(())
}

fn issuer(arguments: &Arguments) -> Issuer {
    Issuer {
        company: arguments.company.clone(),
        phone: arguments.phone.clone(),
        logo: None,
    }
}

fn fleet(db: &Path, arguments: &Arguments, wording: Wording) -> Result<Vec<u8>, Failure> {
    let day = |day: Option<NaiveDate>| day.map(|day| day.to_string());
    let query = FleetQuery {
        filter: FleetFilter {
            from: day(arguments.from),
            to: day(arguments.to),
            ..FleetFilter::default()
        },
        ..FleetQuery::default()
    };
    let issued = arguments.issued.unwrap_or_else(|| ThisMachine.here());
    let issue = Issue {
        issuer: issuer(arguments),
        ..Issue::new(issued, arguments.paper.into())
    };
    let pdf = open_existing(db)?.fleet_pdf(&query, wording, issue);
    pdf.map_err(|error| Failure::api(&error))
}

fn call(visit: &Path, arguments: &Arguments, wording: Wording) -> Result<Vec<u8>, Failure> {
    let bytes = read(visit)?;
    let file = take(visit, &bytes, wording)?;
    let machine = ThisMachine;
    let call = Call::assess(&file, machine.today(), wording);
    let reader = match arguments.reader {
        Some(For::Homeowner) => Reader::Homeowner,
        Some(For::Technician) | None => Reader::Technician,
    };
    // One photo at a time: read, made small, dropped.
    let photos: Result<Vec<PhotoPart>, Failure> = arguments
        .photo
        .iter()
        .map(|path| photo(path, wording))
        .collect();
    let issue = Issue {
        issuer: issuer(arguments),
        photos: photos?,
        next_visit: arguments.next_visit,
        ..Issue::new(
            arguments.issued.unwrap_or_else(|| machine.here()),
            arguments.paper.into(),
        )
    };
    call.report(reader, &issue)
        .map_err(|error| Failure::Io(error.to_string()))
}

fn photo(path: &Path, wording: Wording) -> Result<PhotoPart, Failure> {
    let mut bytes = Vec::new();
    let most = limits::PHOTO_FILE_BYTES as u64 + 1;
    std::fs::File::open(path)
        .and_then(|file| file.take(most).read_to_end(&mut bytes))
        .map_err(|error| Failure::file(path, &error))?;
    let refused = |error: returnline_core::api::ApiError| {
        Failure::Input(format!("{}: {}", path.display(), error.message))
    };
    let picture = read_picture(&bytes, wording).map_err(refused)?;
    drop(bytes);
    let caption = path
        .file_stem()
        .map(|name| name.to_string_lossy().into_owned());
    photo_part(&picture.jpeg, "other", caption, None, wording).map_err(refused)
}
