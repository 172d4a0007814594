//! The board over an invented fleet.

use crate::reference::Reference;
use crate::timing::time;
use crate::{Row, Rows};
use returnline_core::api::types::FleetQuery;
use returnline_core::api::{Engine, ThisMachine};
use serde_json::json;
use std::error::Error;
use std::path::Path;

fn open(path: &Path) -> Result<Engine, Box<dyn Error>> {
    Engine::open(path, Box::new(ThisMachine)).map_err(|error| error.message.into())
}

pub fn rows(reference: &Reference, visits: usize) -> Rows {
    let (mut closed, mut again) = (Vec::new(), Vec::new());
    for visits in [visits / 100, visits / 10, visits] {
        let path = reference.file(&format!("fleet-{visits}.db"));
        open(&path)?
            .invent_fleet(visits, 1)
            .map_err(|error| error.message)?;
        let query = FleetQuery::default();
        let beside = |closed: bool| {
            reference.time(
                "plain SQL, three of its figures",
                "board",
                &json!({ "path": path, "closed": closed }),
            )
        };
        closed.push(Row {
            what: "board, database closed",
            work: format!("{visits} visits"),
            own: time(|| open(&path).is_ok_and(|mut engine| engine.board(&query).is_ok())),
            beside: beside(true)?,
        });
        let mut engine = open(&path)?;
        engine.board(&query).map_err(|error| error.message)?;
        again.push(Row {
            what: "board, another question",
            work: format!("{visits} visits"),
            own: time(|| engine.board(&query).is_ok()),
            beside: beside(false)?,
        });
    }
    closed.append(&mut again);
    Ok(closed)
}
