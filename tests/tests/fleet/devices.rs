//! Devices that keep the same records, and what is done on them.

use chrono::{DateTime, Utc};
use flate2::read::GzDecoder;
use proptest::prelude::*;
use returnline_core::exchange::{CountsSigned, Digest, FollowUp};
use returnline_core::records::PlainMeasure;
use returnline_core::records::visit_file::VisitFile;
use returnline_core::records::{
    Photo, PhotoId, PhotoPhase, Picture, Reading, ReadingId, ReadingPoint, Signature,
    SignatureRole, SiteId, SystemId, Verdict, VisitId,
};
use returnline_core::store::{Store, StoreError, VisitRecord};
use returnline_core::units::Unit;
use std::collections::BTreeSet;
use std::io::Read;
use uuid::Uuid;

pub(super) fn at(second: u32) -> DateTime<Utc> {
    DateTime::from_timestamp(1_780_000_000 + i64::from(second), 0).expect("a time")
}

pub(super) fn record(number: u8) -> VisitRecord {
    let id = |sort: u128| Uuid::from_u128(sort << 64 | u128::from(number));
    let value = PlainMeasure {
        value: 8.125 + f64::from(number),
        unit: Unit::Psi,
    };
    let mut reading = Reading::new(ReadingPoint::StaticPressure, value).expect("possible");
    reading.id = Some(ReadingId(id(4)));
    let mut file = VisitFile::default();
    file.site.name = format!("Invented site {number}");
    file.site.contact = Some("An invented person".to_owned());
    file.commissioning.crew = Some("Invented crew".to_owned());
    file.visit.complaint = Some("It gurgles, says an invented person".to_owned());
    file.visit.date = chrono::NaiveDate::from_ymd_opt(2026, 5, 4);
    file.visit.readings = vec![reading];
    VisitRecord {
        id: VisitId(id(3)),
        system_id: SystemId(id(2)),
        site_id: SiteId(id(1)),
        file,
    }
}

pub(super) fn file(store: &mut Store, personal: bool, now: u32) -> Vec<u8> {
    let mut bytes = Vec::new();
    store
        .export(&[], &[], personal, at(now), &mut bytes)
        .expect("written");
    bytes
}

pub(super) fn take(store: &mut Store, bytes: &[u8], now: u32) -> Result<(), StoreError> {
    store.import(|| Ok(bytes), at(now)).map(drop)
}

/// Lines of a file, without header and end.
pub(super) fn lines(bytes: &[u8]) -> Vec<String> {
    let mut text = String::new();
    GzDecoder::new(bytes)
        .read_to_string(&mut text)
        .expect("packed text");
    let all: Vec<String> = text.lines().map(str::to_owned).collect();
    all[1..all.len() - 1].to_vec()
}

/// Everything that a database would carry out: records with their states.
pub(super) fn content(store: &mut Store) -> BTreeSet<String> {
    lines(&file(store, true, 9_000)).into_iter().collect()
}

#[derive(Clone, Debug)]
pub(super) enum Step {
    Start(usize, u8),
    Note(usize, u8, u8),
    Crew(usize, u8, u8),
    Confirm(usize, u8, u8),
    Drop(usize, u8),
    FollowUp(usize, u8, bool),
    Picture(usize, u8),
    Unpicture(usize, u8),
    Sign(usize, u8),
    Carry(usize, usize),
    Settle(usize, u8),
}

pub(super) const DEVICES: usize = 5;

pub(super) fn step() -> impl Strategy<Value = Step> {
    let (device, record, value) = (0..DEVICES, 0..3_u8, 0..4_u8);
    prop_oneof![
        3 => (device.clone(), record.clone()).prop_map(|(d, r)| Step::Start(d, r)),
        3 => (device.clone(), record.clone(), value.clone()).prop_map(|(d, r, v)| Step::Note(d, r, v)),
        2 => (device.clone(), record.clone(), value.clone()).prop_map(|(d, r, v)| Step::Crew(d, r, v)),
        2 => (device.clone(), record.clone(), value.clone()).prop_map(|(d, r, v)| Step::Confirm(d, r, v)),
        1 => (device.clone(), record.clone()).prop_map(|(d, r)| Step::Drop(d, r)),
        1 => (device.clone(), record.clone(), any::<bool>()).prop_map(|(d, r, h)| Step::FollowUp(d, r, h)),
        1 => (device.clone(), record.clone()).prop_map(|(d, r)| Step::Picture(d, r)),
        1 => (device.clone(), record.clone()).prop_map(|(d, r)| Step::Unpicture(d, r)),
        1 => (device.clone(), record).prop_map(|(d, r)| Step::Sign(d, r)),
        4 => (device.clone(), device.clone()).prop_map(|(a, b)| Step::Carry(a, b)),
        1 => (device, value).prop_map(|(d, v)| Step::Settle(d, v)),
    ]
}

pub(super) fn run(stores: &mut [Store], steps: &[Step]) {
    for (place, step) in steps.iter().enumerate() {
        let now = place as u32;
        let stamp = at(now);
        match *step {
            Step::Start(device, number) => {
                let store = &mut stores[device];
                if store.record(record(number).id).is_err() {
                    store.put_record(&record(number), stamp).expect("kept");
                }
            }
            Step::Carry(from, to) if from != to => {
                let bytes = file(&mut stores[from], place % 4 != 0, now);
                take(&mut stores[to], &bytes, now).expect("taken");
            }
            Step::Carry(..) => {}
            Step::Settle(device, choice) => {
                let store = &mut stores[device];
                if let Some(conflict) = store.conflicts().expect("listed").first() {
                    let sides = &conflict.sides;
                    let side = &sides[usize::from(choice) % sides.len()];
                    let keep: Digest = side.revision.id;
                    store
                        .settle(conflict.kind, conflict.id, keep, stamp)
                        .expect("settled");
                }
            }
            Step::Note(device, number, _)
            | Step::Crew(device, number, _)
            | Step::Confirm(device, number, _)
            | Step::Drop(device, number)
            | Step::FollowUp(device, number, _)
            | Step::Picture(device, number)
            | Step::Unpicture(device, number)
            | Step::Sign(device, number) => {
                edit(&mut stores[device], step, number, stamp);
            }
        }
    }
}

pub(super) fn edit(store: &mut Store, step: &Step, number: u8, now: DateTime<Utc>) {
    let Ok(mut kept) = store.record(record(number).id) else {
        return;
    };
    let id = kept.id;
    let photo = PhotoId(Uuid::from_u128(5 << 64 | u128::from(number)));
    let visit = &mut kept.file.visit;
    match *step {
        Step::Note(_, _, value) => {
            visit.notes = Some(format!("note {value}"));
            store
                .put_visit_facts(id, kept.system_id, visit, now)
                .expect("kept");
        }
        Step::Crew(_, _, value) => {
            kept.file.commissioning.crew = Some(format!("Crew {value}"));
            store
                .put_commissioning(kept.system_id, &kept.file.commissioning, now)
                .expect("kept");
        }
        Step::Confirm(_, _, value) => {
            let verdict = Verdict {
                cause: format!("cause-{value}"),
                confirmed: value % 2 == 0,
                by_check: None,
            };
            store.put_verdict(id, &verdict, now).expect("kept");
        }
        Step::Drop(..) => {
            for reading in visit.readings.iter().filter_map(|reading| reading.id) {
                store.remove_reading(id, reading, now).expect("removed");
            }
        }
        Step::FollowUp(_, _, held) => {
            let follow_up = FollowUp {
                visit: id,
                cause: "cause-0".to_owned(),
                held,
                day: chrono::NaiveDate::from_ymd_opt(2026, 6, 1).expect("a day"),
            };
            let own = Uuid::from_u128(6 << 64 | u128::from(number));
            store.put_follow_up(own, &follow_up, now).expect("kept");
        }
        Step::Picture(..) => {
            let taken = Photo {
                id: photo,
                phase: PhotoPhase::Before,
                taken_at: at(0).fixed_offset(),
                caption: None,
                width: 2,
                height: 2,
            };
            let picture = Picture {
                jpeg: vec![0xff, 0xd8, 1],
                thumbnail: vec![0xff, 0xd8],
                width: 2,
                height: 2,
            };
            // Kept once; a second time it is there already.
            let _ = store.put_photo(id, &taken, &picture, now);
        }
        Step::Unpicture(..) => store.remove_photo(id, photo, now).expect("removed"),
        _ => {
            let strokes = vec![vec![[0.1, 0.5], [0.9, 0.25]]];
            let role = SignatureRole::Customer;
            let when = now.fixed_offset();
            let signed = Signature::new(role, "An invented name", 3.0, strokes, when);
            store
                .put_signature(id, &signed.expect("drawn"), &CountsSigned::default(), now)
                .expect("kept");
        }
    }
}
