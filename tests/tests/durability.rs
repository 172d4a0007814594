//! Kills a process that is writing, at moments nobody chose, and looks whether
//! everything it had acknowledged is there and nothing half-written is shown.
//!
//! A short run belongs to the tests; `make kills` sets `RETURNLINE_KILLS`.

use returnline_core::api::types::{
    ExchangeChoice, FieldEntry, NewPhoto, NewVisit, ReadingEntry, ReportRequest, StepChange,
};
use returnline_core::api::{Engine, ThisMachine, Wording, read_picture};
use returnline_core::store::Store;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::io::{BufRead, BufReader, Read, Write};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::Duration;

const SHORT: u32 = 12;
const FOLDER: &str = "RETURNLINE_TEST_FOLDER";
const ROUND: &str = "RETURNLINE_TEST_ROUND";

/// What the writer prints once the engine has acknowledged it.
#[derive(Clone, Debug, Serialize, Deserialize)]
enum Kept {
    Visit { id: String, site: String },
    Reading { visit: String, text: String },
    Address { visit: String, count: u64 },
    Answer { visit: String },
    Step { visit: String },
    Photo { visit: String },
    Import,
    Report { file: PathBuf },
    Backup { file: PathBuf },
}

/// An exchange file of another device, and the site in it.
const BROUGHT: &str = "brought.exchange";
const ELSEWHERE: &str = "Elsewhere (invented)";

/// What another device carries over.
fn bring(folder: &Path) {
    let elsewhere = tempfile::tempdir().expect("a folder");
    let mut engine = open(elsewhere.path());
    for _ in 0..3 {
        let new = NewVisit {
            site: ELSEWHERE.to_owned(),
            complaint: None,
            same_system_as: None,
        };
        let visit = engine.start_visit(&new).expect("started").id;
        engine
            .set_answer(&visit, "gurgling", Some("no"))
            .expect("answered");
    }
    let all = ExchangeChoice {
        visits: Vec::new(),
        systems: Vec::new(),
        without_personal: false,
    };
    engine
        .export_records(&all, &folder.join(BROUGHT))
        .expect("written");
}

fn open(folder: &Path) -> Engine {
    Engine::open(&folder.join("calls.db"), Box::new(ThisMachine)).expect("opens after a kill")
}

/// The process that is killed. It works until then, or until it has done enough.
#[test]
#[ignore = "started by the test below"]
fn writer() {
    let folder = PathBuf::from(std::env::var_os(FOLDER).expect("a folder"));
    let round: u64 = std::env::var(ROUND)
        .expect("a round")
        .parse()
        .expect("a number");
    let mut engine = open(&folder);
    let say = |kept: &Kept| {
        let mut out = std::io::stdout().lock();
        writeln!(out, "{}", serde_json::to_string(kept).expect("written")).expect("said");
        out.flush().expect("said");
    };
    let bytes = include_bytes!("../corpus/photo/turned.jpg");
    let picture = read_picture(bytes, Wording::default()).expect("a picture");
    let photo = NewPhoto {
        data: String::new(),
        phase: "before".to_owned(),
        caption: Some("Gauge (invented)".to_owned()),
        taken_at: None,
    };
    let mut visit = String::new();
    for turn in 0..10_000_u64 {
        let count = round * 10_000 + turn;
        match turn % 12 {
            0 => {
                let site = format!("Site {count} (invented)");
                let new = NewVisit {
                    site: site.clone(),
                    complaint: Some("It hums.".to_owned()),
                    same_system_as: None,
                };
                visit = engine.start_visit(&new).expect("started").id;
                say(&Kept::Visit {
                    id: visit.clone(),
                    site,
                });
            }
            1 => {
                engine
                    .set_answer(&visit, "gurgling", Some("yes"))
                    .expect("answered");
                say(&Kept::Answer {
                    visit: visit.clone(),
                });
            }
            2 => {
                engine
                    .change_step(&visit, "purge-loop", &StepChange::Done { done: true })
                    .expect("marked");
                say(&Kept::Step {
                    visit: visit.clone(),
                });
            }
            5 if turn % 24 == 5 => {
                engine.add_photo(&visit, &photo, &picture).expect("kept");
                say(&Kept::Photo {
                    visit: visit.clone(),
                });
            }
            7 if turn % 24 == 7 => {
                let brought = folder.join(BROUGHT);
                engine.import_records(&brought).expect("taken in");
                say(&Kept::Import);
            }
            3 if turn % 36 == 3 => {
                let file = folder.join(format!("backup-{}.db", count % 3));
                engine.back_up(&file).expect("backed up");
                say(&Kept::Backup { file });
            }
            4 if turn % 60 == 4 => {
                let file = folder.join(format!("report-{}.pdf", count % 3));
                let request = ReportRequest {
                    reader: "technician".to_owned(),
                    language: None,
                    paper: None,
                    next_visit: None,
                };
                engine.save_report(&visit, &request, &file).expect("saved");
                say(&Kept::Report { file });
            }
            n if n % 2 == 0 => {
                let entry = FieldEntry {
                    id: "site.address".to_owned(),
                    text: Some(count.to_string()),
                    unit: None,
                };
                engine.set_field(&visit, &entry).expect("set");
                say(&Kept::Address {
                    visit: visit.clone(),
                    count,
                });
            }
            _ => {
                let text = format!("{}.{:03}", 10 + count % 50, count / 50 % 1000);
                let entry = ReadingEntry {
                    id: None,
                    point: "static_pressure".to_owned(),
                    text: text.clone(),
                    unit: "psi".to_owned(),
                    accuracy: None,
                    instrument: None,
                    mode: None,
                    phase: "found".to_owned(),
                    circuit: None,
                };
                engine.put_reading(&visit, &entry).expect("kept");
                say(&Kept::Reading {
                    visit: visit.clone(),
                    text,
                });
            }
        }
    }
}

/// Everything acknowledged so far, by every process that was killed.
#[derive(Default)]
struct Ledger {
    kept: Vec<Kept>,
    addresses: BTreeMap<String, u64>,
}

impl Ledger {
    fn add(&mut self, line: &str) {
        // The test harness prints lines of its own around the writer's.
        let Some(start) = line.find('{') else { return };
        let Ok(kept) = serde_json::from_str::<Kept>(&line[start..]) else {
            return;
        };
        if let Kept::Address { visit, count } = &kept {
            self.addresses.insert(visit.clone(), *count);
        }
        self.kept.push(kept);
    }

    fn hold_against(&self, folder: &Path) {
        let store = Store::open(&folder.join("calls.db")).expect("opens after a kill");
        let engine = open(folder);
        let mut views = BTreeMap::new();
        // Whatever is listed can be opened: nothing half-written is shown.
        for line in engine.visits().expect("listed") {
            let view = engine.visit(&line.id).expect("readable");
            views.insert(line.id, view);
        }
        let field = |visit: &str, id: &str| {
            let fields = views[visit].groups.iter().flat_map(|group| &group.fields);
            fields
                .clone()
                .find(|field| field.id == id)
                .and_then(|field| field.value.clone())
        };
        for (visit, count) in &self.addresses {
            let stored = field(visit, "site.address").expect("an address");
            let stored: u64 = stored.parse().expect("a number");
            // One more may have been kept and not said before the kill.
            assert!(
                stored >= *count,
                "address {stored} of {visit}, acknowledged {count}"
            );
        }
        for kept in &self.kept {
            match kept {
                Kept::Visit { id, site } => {
                    assert_eq!(field(id, "site.name").as_ref(), Some(site));
                }
                Kept::Reading { visit, text } => {
                    let wanted: f64 = text.parse().expect("a number");
                    let found = views[visit].readings.iter().any(|reading| {
                        reading
                            .value
                            .parse::<f64>()
                            .is_ok_and(|value| (value - wanted).abs() < 1e-9)
                    });
                    assert!(found, "reading {text} of {visit} is lost");
                }
                Kept::Answer { visit } => {
                    let questions = &views[visit].questions;
                    let asked = questions
                        .iter()
                        .flat_map(|group| &group.questions)
                        .find(|question| question.finding == "gurgling");
                    assert_eq!(asked.and_then(|asked| asked.answer.as_deref()), Some("yes"));
                }
                Kept::Step { visit } => {
                    let id = visit.parse().expect("an identifier");
                    let record = store.record(id).expect("readable");
                    let marked = record.file.visit.actions.iter().any(|action| action.done);
                    assert!(marked, "the step of {visit} is lost");
                }
                Kept::Address { .. } => {}
                Kept::Photo { visit } => {
                    let kept = engine.attachments(visit).expect("readable");
                    assert!(!kept.photos.is_empty(), "the photo of {visit} is lost");
                }
                Kept::Import => {
                    let brought = views.values().any(|view| view.title == ELSEWHERE);
                    assert!(brought, "what was taken in is lost");
                }
                Kept::Report { file } => assert!(file.exists(), "{} is lost", file.display()),
                Kept::Backup { file } => assert!(file.exists(), "{} is lost", file.display()),
            }
        }
        for entry in std::fs::read_dir(folder).expect("listed") {
            let path = entry.expect("an entry").path();
            match path.extension().and_then(|extension| extension.to_str()) {
                Some("pdf") => {
                    let bytes = std::fs::read(&path).expect("read");
                    lopdf::Document::load_mem(&bytes).expect("a whole report");
                }
                Some("db") if path.ends_with("calls.db") => {}
                Some("db") => {
                    returnline_core::store::backup::verify(&path).expect("a whole backup");
                }
                _ => {}
            }
        }
    }
}

#[test]
fn nothing_acknowledged_is_lost_when_the_process_is_killed() {
    let kills = std::env::var("RETURNLINE_KILLS").ok();
    let kills = kills.map_or(SHORT, |text| {
        text.parse().expect("RETURNLINE_KILLS is a number")
    });
    let folder = tempfile::tempdir().expect("a folder");
    bring(folder.path());
    let mut ledger = Ledger::default();
    let mut chance = 0x9E37_79B9_u64;
    for round in 0..kills {
        let mut child = Command::new(std::env::current_exe().expect("this program"))
            .args(["--ignored", "--exact", "writer", "--nocapture"])
            .env(FOLDER, folder.path())
            .env(ROUND, round.to_string())
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .expect("started");
        let mut out = BufReader::new(child.stdout.take().expect("piped"));
        let mut line = String::new();
        // The clock starts at the first acknowledgement, however slow the start.
        while !line.contains("Visit") && out.read_line(&mut line).expect("read") > 0 {
            ledger.add(&line);
            if !line.contains("Visit") {
                line.clear();
            }
        }
        chance = chance
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1);
        std::thread::sleep(Duration::from_micros((chance >> 33) % 900_000));
        child.kill().expect("killed");
        let status = child.wait().expect("ended");
        assert!(
            !status.success(),
            "the writer ended by itself in round {round}"
        );
        let mut rest = String::new();
        out.read_to_string(&mut rest).expect("read");
        // A last line cut in the middle was not said.
        let whole = rest.rfind('\n').map_or("", |end| &rest[..end]);
        for line in whole.lines() {
            ledger.add(line);
        }
        if round % 10 == 0 || round + 1 == kills {
            ledger.hold_against(folder.path());
        }
    }
    assert!(
        ledger.kept.len() > usize::try_from(kills).expect("small"),
        "nothing was written"
    );
    println!(
        "{kills} kills, {} acknowledged entries, none lost",
        ledger.kept.len()
    );
}

#[test]
#[should_panic(expected = "is lost")]
fn a_lost_entry_is_noticed() {
    let folder = tempfile::tempdir().expect("a folder");
    let new = NewVisit {
        site: "Site (invented)".to_owned(),
        complaint: None,
        same_system_as: None,
    };
    let visit = open(folder.path()).start_visit(&new).expect("started").id;
    let mut ledger = Ledger::default();
    let text = "12.5".to_owned();
    ledger.kept.push(Kept::Reading { visit, text });
    ledger.hold_against(folder.path());
}
