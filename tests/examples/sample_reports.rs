//! Writes every kind of report, usual and crowded, into the folder given:
//! to be looked at. All content is invented.

use std::path::Path;
use std::process::ExitCode;

use returnline_core::api::{Reader, Wording};
use returnline_core::report::document::PageSize;
use returnline_core::report::fleet::document;
use returnline_core::report::{file::write_whole, service::words, to_pdf};
use returnline_core::text::{Language, catalog};
use returnline_core::units::UnitSystem;
use returnline_tests::pages::{bare, call, crowded, fleet, issue};
use returnline_tests::program::sample;

type Done = Result<(), Box<dyn std::error::Error>>;

fn main() -> ExitCode {
    let folder = std::env::args().nth(1).unwrap_or_else(|| "out".into());
    match write_all(Path::new(&folder)) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("{error}");
            ExitCode::FAILURE
        }
    }
}

fn write_all(folder: &Path) -> Done {
    std::fs::create_dir_all(folder)?;
    let (us, si) = (
        Wording::default(),
        Wording {
            units: UnitSystem::Si,
            ..Wording::default()
        },
    );
    let mut calls = vec![
        ("crowded", crowded(), us, PageSize::Letter),
        ("bare", bare(), si, PageSize::A4),
    ];
    for (name, wording, page) in [
        ("air-in-one-circuit", us, PageSize::Letter),
        ("freeze-guard-trips", si, PageSize::A4),
        ("pressure-lost-over-summer", us, PageSize::Letter),
    ] {
        calls.push((name, std::fs::read_to_string(sample(name))?, wording, page));
    }
    for (name, text, wording, page) in calls {
        let issue = issue(page, name != "bare");
        for language in Language::ALL {
            let call = call(
                &text,
                Wording {
                    language,
                    ..wording
                },
            );
            for reader in Reader::ALL {
                let path = folder.join(format!("{name}-{}-{}.pdf", reader.id(), language.tag()));
                write_whole(&path, &call.report(reader, &issue)?)?;
            }
        }
    }
    let catalog = catalog(Language::English);
    for (name, crowded) in [("fleet", false), ("fleet-crowded", true)] {
        let document = document(&fleet(PageSize::Letter, crowded), catalog)?;
        let path = folder.join(format!("{name}.pdf"));
        write_whole(&path, &to_pdf(&document, &words(catalog))?)?;
    }
    Ok(())
}
