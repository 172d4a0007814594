//! What a person enters, through the one boundary.

mod checks;
mod drafts;
mod ending;
mod entries;
mod gates;
mod learning;
mod order;
mod proof;
mod signed;
mod sites;
mod steps;
mod troubles;
mod undoing;
mod work;

use super::types::{NewVisit, ReadingEntry};
use super::*;

struct Fixed;
impl Surroundings for Fixed {
    fn now(&self) -> DateTime<Utc> {
        DateTime::from_timestamp(1_786_700_000, 0).expect("a valid time")
    }
    fn today(&self) -> NaiveDate {
        NaiveDate::from_ymd_opt(2026, 8, 14).expect("a valid day")
    }
    fn new_id(&self) -> Uuid {
        Uuid::now_v7()
    }
}

pub(super) fn engine() -> Engine {
    let store = Store::in_memory().expect("opens");
    Engine::over(store, Box::new(Fixed)).expect("opens")
}

pub(super) fn started(engine: &mut Engine) -> String {
    let new = NewVisit {
        site: "Invented farm".to_owned(),
        complaint: None,
        same_system_as: None,
    };
    engine.start_visit(&new).expect("started").id
}

fn entry(point: &str, text: &str, unit: &str) -> ReadingEntry {
    ReadingEntry {
        id: None,
        point: point.to_owned(),
        text: text.to_owned(),
        unit: unit.to_owned(),
        accuracy: None,
        instrument: None,
        mode: None,
        phase: "found".to_owned(),
        circuit: None,
    }
}
