//! What befalls a database on a phone in a wet basement: spoilt, cut, newer than
//! the program, held by another, in a folder that may not be written, under a
//! clock that was set back. Each is said in the person's language with a way on,
//! and what was kept stays.
//!
//! A full disk is brought about beside the store (`core/src/store/backup/tests.rs`);
//! what is said of it stands in `core/src/api/tests/troubles.rs`.

use chrono::{DateTime, NaiveDate, TimeDelta, Utc};
use returnline_core::api::types::{NewVisit, SettingChange};
use returnline_core::api::{ApiError, Engine, Surroundings, Wording, backups, restore_kept};
use returnline_tests::program;
use rusqlite::Connection;
use std::fs;
use std::os::unix::fs::PermissionsExt;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use tempfile::TempDir;
use uuid::Uuid;

const LANGUAGES: [&str; 2] = ["en", "es"];

/// A clock that stands where it is put.
struct Clock(DateTime<Utc>);

impl Surroundings for Clock {
    fn now(&self) -> DateTime<Utc> {
        self.0
    }
    fn today(&self) -> NaiveDate {
        self.0.date_naive()
    }
    fn new_id(&self) -> Uuid {
        Uuid::now_v7()
    }
}

fn noon() -> DateTime<Utc> {
    "2026-08-14T12:00:00Z".parse().expect("a moment")
}

/// A data folder with a database in it.
struct Phone {
    folder: TempDir,
}

impl Phone {
    /// With one visit, spoken in this language, and backed up.
    fn used(language: &str) -> Self {
        let phone = Self {
            folder: tempfile::tempdir().expect("a folder"),
        };
        let mut engine = phone.open(noon()).expect("opens");
        let change = SettingChange::Language {
            id: language.to_owned(),
        };
        engine.change_setting(&change).expect("kept");
        let new = NewVisit {
            site: "Invented farm".to_owned(),
            complaint: None,
            same_system_as: None,
        };
        engine.start_visit(&new).expect("started");
        drop(engine);
        phone.open(noon() + TimeDelta::days(2)).expect("opens");
        phone
    }

    fn database(&self) -> PathBuf {
        self.folder.path().join("calls.db")
    }

    fn copies(&self) -> PathBuf {
        self.folder.path().join("backups")
    }

    fn open(&self, now: DateTime<Utc>) -> Result<Engine, ApiError> {
        let opened = Engine::open_kept(&self.database(), self.copies(), Box::new(Clock(now)));
        opened.map(|(engine, failed)| {
            assert_eq!(failed, None);
            engine
        })
    }

    fn refused(&self) -> ApiError {
        let opened = self.open(noon() + TimeDelta::days(3));
        opened.map(|_| ()).expect_err("refused")
    }
}

/// The message says the way on in the language spoken, and says nothing in the
/// other.
#[track_caller]
fn says(error: &ApiError, code: &str, language: &str, [english, spanish]: [&str; 2]) {
    assert_eq!(error.code, code, "{error}");
    let (own, other) = match language {
        "en" => (english, spanish),
        _ => (spanish, english),
    };
    assert!(error.message.contains(own), "{language}: {error}");
    assert!(!error.message.contains(other), "{language}: {error}");
    assert!(!error.message.contains('«'), "{language}: {error}");
}

#[test]
fn a_damaged_database_is_told_and_a_backup_brings_it_back() {
    fn overwritten(mut bytes: Vec<u8>) -> Vec<u8> {
        for page in 1..8 {
            bytes[page * 4096..][..512].fill(0xA5);
        }
        bytes
    }
    fn turned(bytes: Vec<u8>) -> Vec<u8> {
        bytes.into_iter().map(|byte| !byte).collect()
    }
    fn cut(mut bytes: Vec<u8>) -> Vec<u8> {
        bytes.truncate(bytes.len() / 2);
        bytes
    }
    for language in LANGUAGES {
        for spoil in [overwritten, turned, cut] {
            let phone = Phone::used(language);
            let bytes = fs::read(phone.database()).expect("read");
            assert!(bytes.len() > 8 * 4096, "{}", bytes.len());
            fs::write(phone.database(), spoil(bytes)).expect("spoilt");
            let way_on = ["Restore a backup", "Restaure una copia de seguridad"];
            says(&phone.refused(), "store-damaged", language, way_on);
            // The window that offers the backups speaks the same.
            let closed = Engine::while_closed(&phone.database(), Box::new(Clock(noon())));
            let settings = closed.expect("opens").settings().expect("shown");
            assert_eq!(settings.language, language);

            let copies = backups(&phone.copies(), Wording::default());
            let newest = copies.first().expect("a backup");
            assert_eq!((newest.visits, newest.trouble.as_deref()), (Some(1), None));
            restore_kept(
                &phone.copies(),
                newest.number,
                &phone.database(),
                Wording::default(),
            )
            .expect("restored");
            let engine = phone.open(noon() + TimeDelta::days(3)).expect("opens");
            assert_eq!(engine.visits().expect("listed").len(), 1);
        }
    }
}

#[test]
fn a_database_of_a_newer_program_is_told_and_left_as_it_is() {
    for language in LANGUAGES {
        let phone = Phone::used(language);
        let connection = Connection::open(phone.database()).expect("opened");
        connection
            .pragma_update(None, "user_version", 4_000)
            .expect("changed");
        drop(connection);
        let before = fs::read(phone.database()).expect("read");
        let error = phone.refused();
        let way_on = ["Update the program", "Actualice el programa"];
        says(&error, "store-newer", language, way_on);
        assert!(error.message.contains("4000"), "{error}");
        assert_eq!(fs::read(phone.database()).expect("read"), before);
    }
}

#[test]
fn an_entry_while_another_program_holds_the_database_is_refused_and_taken_later() {
    for language in LANGUAGES {
        let phone = Phone::used(language);
        let mut engine = phone.open(noon() + TimeDelta::days(3)).expect("opens");
        let visit = engine.visits().expect("listed").remove(0).id;
        let other = Connection::open(phone.database()).expect("opened");
        other.execute_batch("BEGIN IMMEDIATE").expect("held");
        let entered = engine.set_answer(&visit, "gurgling", Some("yes"));
        let way_on = ["Close it and try again", "Ciérrelo e inténtelo de nuevo"];
        says(
            &entered.expect_err("refused"),
            "store-busy",
            language,
            way_on,
        );
        other.execute_batch("ROLLBACK").expect("let go");
        engine
            .set_answer(&visit, "gurgling", Some("yes"))
            .expect("kept");
    }
}

/// Runs a program as somebody who may not write everywhere: root may.
fn run_without_rights(program: &Path, arguments: &[&str]) -> Output {
    let id = Command::new("id").arg("-u").output().expect("id runs");
    let mut command = if id.stdout == b"0\n" {
        let mut command = Command::new("setpriv");
        command.args(["--reuid=65534", "--regid=65534", "--clear-groups"]);
        command.arg(program);
        command
    } else {
        Command::new(program)
    };
    command.args(arguments).output().expect("runs")
}

#[test]
fn a_folder_that_may_not_be_written_is_told() {
    let allow = |path: &Path, mode: u32| {
        fs::set_permissions(path, PermissionsExt::from_mode(mode)).expect("set");
    };
    for language in LANGUAGES {
        let phone = Phone::used(language);
        let folder = phone.folder.path();
        // Copies, since others may not be let in where the program lies.
        let (program, call) = (folder.join("program"), folder.join("call.json"));
        fs::copy(program::path(), &program).expect("copied");
        fs::copy(program::sample("air-in-one-circuit"), &call).expect("copied");
        for entry in fs::read_dir(folder).expect("listed") {
            let path = entry.expect("an entry").path();
            if path.is_file() {
                allow(&path, 0o444);
            }
        }
        allow(&program, 0o555);
        allow(folder, 0o555);
        let words = |path: &Path| path.to_str().expect("a plain path").to_owned();
        let (call, database) = (words(&call), words(&phone.database()));
        let keep = ["diagnose", &call, "--keep", &database];
        let before = fs::read(phone.database()).expect("read");
        let output = run_without_rights(&program, &keep);
        allow(folder, 0o755);
        let said = String::from_utf8_lossy(&output.stderr);
        assert_eq!(output.status.code(), Some(1), "{said}");
        let way_on = match language {
            "en" => "Choose another folder",
            _ => "Elija otra carpeta",
        };
        assert!(said.contains(way_on), "{said}");
        assert_eq!(fs::read(phone.database()).expect("read"), before);
    }
}

#[test]
fn a_clock_set_back_is_told_and_loses_nothing() {
    for language in LANGUAGES {
        let phone = Phone::used(language);
        let right = phone.open(noon() + TimeDelta::days(3)).expect("opens");
        assert_eq!(right.clock_behind().expect("read"), None);
        drop(right);
        // A correction by the network is no news.
        let play = phone.open(noon() - TimeDelta::hours(1)).expect("opens");
        assert_eq!(play.clock_behind().expect("read"), None);
        drop(play);

        let mut engine = phone.open(noon() - TimeDelta::days(400)).expect("opens");
        let told = engine.clock_behind().expect("read").expect("told");
        let way_on = ["Set the clock", "Ponga el reloj en hora"];
        says(&told, "clock-behind", language, way_on);
        // 400 days before 14 August 2026: 365 to 14 August 2025, 35 more to 10 July.
        for moment in ["2026-08-14", "2025-07-10"] {
            assert!(told.message.contains(moment), "{told}");
        }
        let visit = engine.visits().expect("listed").remove(0).id;
        let view = engine.set_answer(&visit, "gurgling", Some("yes"));
        assert!(view.expect("kept").undo.is_some());
        drop(engine);
        let engine = phone.open(noon() + TimeDelta::days(3)).expect("opens");
        let view = engine.visit(&visit).expect("there");
        let questions = view.questions.iter().flat_map(|group| &group.questions);
        assert_eq!(questions.filter(|one| one.answer.is_some()).count(), 1);
    }
}

/// What the system said is in no language of ours: a message stands without it.
#[test]
fn technical_words_stand_in_brackets_behind_the_message() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/text");
    for language in LANGUAGES {
        let mut seen = 0;
        for entry in fs::read_dir(folder.join(language)).expect("listed") {
            let path = entry.expect("an entry").path();
            let text = fs::read_to_string(&path).expect("read");
            for line in text.lines().filter(|line| line.contains("{ $detail }")) {
                assert!(line.ends_with(". ({ $detail })"), "{language}: {line}");
                seen += 1;
            }
        }
        assert!(seen >= 10, "{language}: {seen}");
    }
}
