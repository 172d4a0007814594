//! Statistics of the fleet against lifelines, statsmodels and SciPy; the laws of
//! merging over random histories; and exchange files that must be refused.

mod figures {
    use returnline_core::fleet::statistics::{
        Curve, TwoByTwo, Waiting, adjusted, adjusted_dependent, poisson_rate, wilson,
    };
    use serde_json::Value;

    fn table() -> Value {
        serde_json::from_str(include_str!("../reference/tables/fleet.json")).expect("JSON")
    }

    fn numbers(value: &Value) -> Vec<f64> {
        let list = value.as_array().expect("a list").iter();
        list.map(|one| one.as_f64().expect("a number")).collect()
    }

    #[track_caller]
    fn close(got: f64, expected: f64) {
        let apart = (got - expected).abs();
        assert!(
            apart <= 1e-8 * expected.abs().max(1e-300),
            "{got} for {expected}"
        );
    }

    #[test]
    fn waiting_curves_agree_with_two_packages() {
        let mut steps = 0;
        for (name, curve) in table()["curves"].as_object().expect("curves") {
            let (times, events) = (numbers(&curve["times"]), numbers(&curve["events"]));
            let waiting: Vec<Waiting> = times
                .iter()
                .zip(&events)
                .map(|(time, event)| Waiting {
                    time: *time,
                    happened: *event > 0.5,
                })
                .collect();
            let got = Curve::of(&waiting);
            let expected = curve["steps"].as_array().expect("steps");
            assert_eq!(got.steps.len(), expected.len(), "{name}");
            assert_eq!(got.median(), curve["median"].as_f64(), "{name}");
            for (got, expected) in got.steps.iter().zip(expected) {
                close(got.time, expected["time"].as_f64().expect("a time"));
                assert_eq!(Some(got.at_risk as u64), expected["at_risk"].as_u64());
                assert_eq!(Some(got.events as u64), expected["events"].as_u64());
                let survival = expected["survival"].as_f64().expect("a share");
                if survival > 0.0 {
                    close(got.survival, survival);
                    let ends = numbers(&expected["log_log"]);
                    close(got.log_log().low, ends[0]);
                    close(got.log_log().high, ends[1]);
                    let half = expected["plain_half"].as_f64().expect("a width");
                    close(got.plain().low, (survival - half).max(0.0));
                    close(got.plain().high, (survival + half).min(1.0));
                } else {
                    assert!(got.survival.abs() < 1e-12);
                }
                steps += 1;
            }
        }
        assert!(steps > 100, "{steps}");
    }

    #[test]
    fn intervals_of_shares_and_rates_agree() {
        for row in table()["wilson"].as_array().expect("rows") {
            let row = numbers(row);
            let got = wilson(row[0] as usize, row[1] as usize).expect("counts");
            assert!((got.low - row[2]).abs() < 1e-12, "{row:?} {got:?}");
            assert!((got.high - row[3]).abs() < 1e-12, "{row:?} {got:?}");
        }
        for row in table()["poisson"].as_array().expect("rows") {
            let row = numbers(row);
            let got = poisson_rate(row[0] as usize, row[1]).expect("exposure");
            close(got.low, row[2]);
            close(got.high, row[3]);
        }
    }

    #[test]
    fn the_exact_test_and_ratios_agree() {
        let table = table();
        let rows = table["tables"].as_array().expect("tables");
        for row in rows {
            let cells = numbers(&row["cells"]);
            let [with, without, other_with, other_without] =
                [0, 1, 2, 3].map(|at| cells[at] as usize);
            let got = TwoByTwo {
                with,
                without,
                other_with,
                other_without,
            };
            let number = |key: &str| row[key].as_f64().expect("a number");
            close(got.fisher(), number("fisher"));
            close(got.odds_ratio().expect("a ratio"), number("odds"));
            close(got.risk_ratio().expect("a ratio"), number("risk"));
            for (ends, key) in [
                (got.odds_interval(), "odds_interval"),
                (got.risk_interval(), "risk_interval"),
            ] {
                let (ends, expected) = (ends.expect("ends"), numbers(&row[key]));
                close(ends.low, expected[0]);
                close(ends.high, expected[1]);
            }
        }
        assert!(rows.len() > 10);
    }

    #[test]
    fn control_of_false_discoveries_agrees() {
        let table = table();
        let lists = table["adjusted"].as_array().expect("lists");
        let p = numbers(&lists[0]);
        for (got, expected) in [
            (adjusted(&p), &lists[1]),
            (adjusted_dependent(&p), &lists[2]),
        ] {
            let expected = numbers(expected);
            assert_eq!(got.len(), expected.len());
            for (got, expected) in got.into_iter().zip(expected) {
                close(got, expected);
            }
        }
    }
}

mod exchange {
    use chrono::{DateTime, Utc};
    use flate2::Compression;
    use flate2::read::GzDecoder;
    use flate2::write::GzEncoder;
    use proptest::prelude::*;
    use returnline_core::exchange::{Digest, FollowUp, Kind};
    use returnline_core::records::PlainMeasure;
    use returnline_core::records::visit_file::VisitFile;
    use returnline_core::records::{
        Photo, PhotoId, PhotoPhase, Picture, Reading, ReadingId, ReadingPoint, Signature,
        SignatureRole, SiteId, SystemId, Verdict, VisitId,
    };
    use returnline_core::store::{Store, StoreError, VisitRecord};
    use returnline_core::units::Unit;
    use std::collections::BTreeSet;
    use std::io::{Read, Write};
    use uuid::Uuid;

    fn at(second: u32) -> DateTime<Utc> {
        DateTime::from_timestamp(1_780_000_000 + i64::from(second), 0).expect("a time")
    }

    fn record(number: u8) -> VisitRecord {
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

    fn file(store: &mut Store, personal: bool, now: u32) -> Vec<u8> {
        let mut bytes = Vec::new();
        store
            .export(&[], &[], personal, at(now), &mut bytes)
            .expect("written");
        bytes
    }

    fn take(store: &mut Store, bytes: &[u8], now: u32) -> Result<(), StoreError> {
        store.import(|| Ok(bytes), at(now)).map(drop)
    }

    /// Lines of a file, without header and end.
    fn lines(bytes: &[u8]) -> Vec<String> {
        let mut text = String::new();
        GzDecoder::new(bytes)
            .read_to_string(&mut text)
            .expect("packed text");
        let all: Vec<String> = text.lines().map(str::to_owned).collect();
        all[1..all.len() - 1].to_vec()
    }

    /// Everything that a database would carry out: records with their states.
    fn content(store: &mut Store) -> BTreeSet<String> {
        lines(&file(store, true, 9_000)).into_iter().collect()
    }

    #[derive(Clone, Debug)]
    enum Step {
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

    const DEVICES: usize = 5;

    fn step() -> impl Strategy<Value = Step> {
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

    fn run(stores: &mut [Store], steps: &[Step]) {
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

    fn edit(store: &mut Store, step: &Step, number: u8, now: DateTime<Utc>) {
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
                    .put_signature(id, &signed.expect("drawn"), now)
                    .expect("kept");
            }
        }
    }

    fn merged(files: &[&Vec<u8>]) -> BTreeSet<String> {
        let mut store = Store::in_memory().expect("opens");
        for bytes in files {
            take(&mut store, bytes, 8_000).expect("taken");
        }
        content(&mut store)
    }

    proptest! {
        #![proptest_config(ProptestConfig { cases: 24, ..ProptestConfig::default() })]

        #[test]
        fn order_and_repetition_do_not_matter_and_nothing_is_lost(
            steps in proptest::collection::vec(step(), 5..40),
            order in Just([0, 1, 2, 3, 4]).prop_shuffle(),
        ) {
            let mut stores: Vec<Store> =
                (0..DEVICES).map(|_| Store::in_memory().expect("opens")).collect();
            run(&mut stores, &steps);
            let files: Vec<Vec<u8>> =
                stores.iter_mut().map(|store| file(store, true, 7_000)).collect();
            let straight = merged(&files.iter().collect::<Vec<_>>());
            // Commutative and idempotent: another order, each file twice.
            let other: Vec<&Vec<u8>> =
                order.iter().chain(&order).map(|at| &files[*at]).collect();
            prop_assert_eq!(&merged(&other), &straight);
            // Associative: some merged first, and what comes of it merged with the rest.
            let mut part = Store::in_memory().expect("opens");
            for at in &order[..2] {
                take(&mut part, &files[*at], 8_000).expect("taken");
            }
            let part = file(&mut part, true, 8_001);
            let mut rest: Vec<&Vec<u8>> = order[2..].iter().map(|at| &files[*at]).collect();
            rest.push(&part);
            prop_assert_eq!(&merged(&rest), &straight);
            // Nothing is lost: a state that stood on a device stands, or one does
            // that came from it.
            let all: String = straight.iter().map(String::as_str).collect();
            for line in files.iter().flat_map(|bytes| lines(bytes)) {
                let line: serde_json::Value = serde_json::from_str(&line).expect("JSON");
                for state in line["states"].as_array().expect("states") {
                    let name = state["id"].as_str().expect("a name");
                    prop_assert!(all.contains(name), "{} is lost", name);
                }
            }
            // A device that takes everything in says the same as the others.
            for store in &mut stores {
                for bytes in &files {
                    take(store, bytes, 8_002).expect("taken");
                }
                prop_assert_eq!(&content(store), &straight);
            }
        }
    }

    #[test]
    fn two_edits_are_both_kept_and_the_decision_travels() {
        let [mut left, mut right] = [(); 2].map(|()| Store::in_memory().expect("opens"));
        left.put_record(&record(1), at(0)).expect("kept");
        let first = file(&mut left, true, 1);
        take(&mut right, &first, 2).expect("taken");
        edit(&mut left, &Step::Note(0, 1, 1), 1, at(3));
        edit(&mut right, &Step::Note(1, 1, 2), 1, at(4));
        let theirs = file(&mut right, true, 5);
        take(&mut left, &theirs, 6).expect("taken");
        let conflicts = left.conflicts().expect("listed");
        assert_eq!(conflicts.len(), 1);
        assert_eq!(conflicts[0].kind, Kind::Words);
        let kept: Vec<bool> = ["note 1", "note 2"]
            .iter()
            .map(|note| {
                conflicts[0]
                    .sides
                    .iter()
                    .any(|side| side.revision.content.contains(note))
            })
            .collect();
        assert_eq!(kept, [true, true]);
        let other = conflicts[0]
            .sides
            .iter()
            .find(|side| !side.shown)
            .expect("a side");
        let notes = |store: &Store| store.record(record(1).id).expect("there").file.visit.notes;
        let stood = notes(&left);
        let (kind, id, keep) = (conflicts[0].kind, conflicts[0].id, other.revision.id);
        left.settle(kind, id, keep, at(7)).expect("settled");
        assert_eq!(left.conflicts().expect("listed"), []);
        let decided = notes(&left);
        assert!(
            decided.is_some() && decided != stood,
            "{decided:?} {stood:?}"
        );
        let ours = file(&mut left, true, 8);
        take(&mut right, &ours, 9).expect("taken");
        assert_eq!(right.conflicts().expect("listed"), []);
        assert_eq!(notes(&right), decided);
    }

    #[test]
    fn nobody_is_named_when_that_is_asked_and_the_rest_is_whole() {
        let mut phone = Store::in_memory().expect("opens");
        phone.put_record(&record(1), at(0)).expect("kept");
        edit(&mut phone, &Step::Picture(0, 1), 1, at(1));
        edit(&mut phone, &Step::Sign(0, 1), 1, at(1));
        let bare = file(&mut phone, false, 2);
        let text = lines(&bare).concat();
        for word in [
            "Invented site",
            "invented person",
            "gurgles",
            "jpeg",
            "invented name",
        ] {
            assert!(!text.contains(word), "{word} is inside");
        }
        let mut office = Store::in_memory().expect("opens");
        take(&mut office, &bare, 3).expect("taken");
        let there = office.record(record(1).id).expect("there");
        assert_eq!(there.file.visit.readings, record(1).file.visit.readings);
        assert_eq!(there.file.site.name, "");
        // The whole file later fills in what was left out, without a conflict.
        let whole = file(&mut phone, true, 4);
        take(&mut office, &whole, 5).expect("taken");
        assert_eq!(
            office.record(record(1).id).expect("there").file,
            record(1).file
        );
        assert_eq!(office.conflicts().expect("listed"), []);
    }

    fn packed(text: &str) -> Vec<u8> {
        let mut out = GzEncoder::new(Vec::new(), Compression::fast());
        out.write_all(text.as_bytes()).expect("packed");
        out.finish().expect("packed")
    }

    #[test]
    fn a_bad_file_is_refused_whole_and_the_database_is_as_before() {
        let folder = tempfile::tempdir().expect("a folder");
        let path = folder.path().join("office.db");
        let mut office = Store::open(&path).expect("opens");
        office.put_record(&record(1), at(0)).expect("kept");
        let before = content(&mut office);
        drop(office);
        let on_disk = || std::fs::read(&path).expect("read");
        let bytes_before = on_disk();

        let mut phone = Store::in_memory().expect("opens");
        for number in 1..4 {
            phone.put_record(&record(number), at(0)).expect("kept");
        }
        let good = file(&mut phone, true, 1);
        let mut text = String::new();
        GzDecoder::new(&good[..])
            .read_to_string(&mut text)
            .expect("text");
        let mut flipped = good.clone();
        let middle = flipped.len() / 2;
        flipped[middle] ^= 4;
        let mut longer = good.clone();
        longer.push(b'x');
        let newer = text.replacen("\"version\":1", "\"version\":2", 1);
        let changed = text.replacen("gurgles", "rattles", 1);
        assert_ne!(changed, text);
        let cut_clean = text.rsplit_once("{\"end\"").expect("an end").0;
        let cases: Vec<(&str, Vec<u8>)> = vec![
            ("exchange-not-ours", Vec::new()),
            ("exchange-not-ours", b"hello".to_vec()),
            ("exchange-not-ours", packed("{\"format\":\"other\"}\n")),
            ("exchange-newer", packed(&newer)),
            ("exchange-cut", good[..good.len() - 20].to_vec()),
            ("exchange-cut", packed(cut_clean)),
            ("exchange-altered", longer),
            ("exchange-malformed", packed(&changed)),
            (
                "exchange-altered",
                packed(&text.replacen("\"sha256\":\"", "\"sha256\":\"0", 1)),
            ),
            (
                "exchange-malformed",
                packed(&text.replacen("\"kind\":\"site\"", "\"kind\":\"cite\"", 1)),
            ),
        ];
        for (code, bytes) in cases {
            let mut office = Store::open(&path).expect("opens");
            let error = take(&mut office, &bytes, 2).expect_err(code);
            assert_eq!(error.code(), code, "{error}");
            drop(office);
            assert!(on_disk() == bytes_before, "{code}");
        }
        // Wherever a bit flips, the file is refused.
        let mut office = Store::open(&path).expect("opens");
        for place in (10..good.len()).step_by(good.len() / 40) {
            let mut bytes = good.clone();
            bytes[place] ^= 1 << (place % 8);
            assert!(take(&mut office, &bytes, 2).is_err(), "byte {place}");
        }
        assert!(take(&mut office, &flipped, 2).is_err());
        assert_eq!(content(&mut office), before);
        take(&mut office, &good, 3).expect("the good one is taken");
        assert_eq!(office.visits().expect("listed").len(), 3);
    }
}

mod company {
    use returnline_core::api::types::{ExchangeChoice, FleetQuery, LearnedView};
    use returnline_core::api::{Engine, Issue, ThisMachine, Wording};
    use returnline_core::report::document::PageSize;
    use returnline_core::text::Language;
    use std::path::Path;

    fn open(path: &Path) -> Engine {
        Engine::open(path, Box::new(ThisMachine)).expect("opens")
    }

    fn confirmed(learned: &LearnedView) -> Vec<(String, u32)> {
        let causes = learned.causes.iter();
        let mut causes: Vec<_> = causes.map(|one| (one.id.clone(), one.confirmed)).collect();
        causes.sort();
        causes
    }

    /// What technicians confirmed on their phones teaches the office's graph, and
    /// its board says the same as theirs, with nobody named in the file.
    #[test]
    fn the_office_learns_from_what_came_on_files() {
        let folder = tempfile::tempdir().expect("a folder");
        let mut phone = open(&folder.path().join("phone.db"));
        let mut office = open(&folder.path().join("office.db"));
        assert_eq!(office.learned().expect("known").own, 0);
        phone.invent_fleet(300, 7).expect("made");
        let theirs = phone.learned().expect("known");
        assert!(theirs.own > 20, "{}", theirs.own);

        let carried = folder.path().join("phone.rlx");
        let choice = ExchangeChoice {
            without_personal: true,
            ..ExchangeChoice::default()
        };
        phone.export_records(&choice, &carried).expect("written");
        for _ in 0..2 {
            office.import_records(&carried).expect("taken");
            let ours = office.learned().expect("known");
            assert_eq!(ours.own, theirs.own);
            assert_eq!(confirmed(&ours), confirmed(&theirs));
        }
        let board = |engine: &mut Engine| {
            let mut board = engine.board(&FleetQuery::default()).expect("a board");
            // Equally frequent causes stand as they came.
            board.causes.sort_by(|a, b| a.cause.cmp(&b.cause));
            (board.headline, board.causes, board.waiting)
        };
        let (said, causes, waiting) = board(&mut phone);
        let (headline, mut ours, curve) = board(&mut office);
        // Without words there is no complaint, so a call that stayed unexplained
        // is a callback only where it was kept.
        assert_ne!(said, headline);
        assert_eq!(curve.systems, waiting.systems);
        for (ours, theirs) in ours.iter_mut().zip(&causes) {
            assert_eq!(
                (&ours.cause, ours.count, ours.hours.round()),
                (&theirs.cause, theirs.count, theirs.hours.round())
            );
        }
        assert_eq!(ours.len(), causes.len());
    }

    /// The whole file makes the whole board.
    #[test]
    fn the_office_sees_the_board_of_the_phone() {
        let folder = tempfile::tempdir().expect("a folder");
        let mut phone = open(&folder.path().join("phone.db"));
        let mut office = open(&folder.path().join("office.db"));
        phone.invent_fleet(300, 8).expect("made");
        let carried = folder.path().join("phone.rlx");
        phone
            .export_records(&ExchangeChoice::default(), &carried)
            .expect("written");
        office.import_records(&carried).expect("taken");
        let query = FleetQuery::default();
        let [theirs, ours] = [&mut phone, &mut office].map(|engine| engine.board(&query));
        let (theirs, ours) = (theirs.expect("a board"), ours.expect("a board"));
        assert_eq!(ours.headline, theirs.headline);
        assert_eq!(ours.waiting, theirs.waiting);
        assert_eq!(ours.fixes, theirs.fixes);
        assert_eq!(ours.differences, theirs.differences);
    }

    #[test]
    fn the_managers_report_is_written_in_every_language() {
        let folder = tempfile::tempdir().expect("a folder");
        let mut office = open(&folder.path().join("office.db"));
        let issued = chrono::DateTime::parse_from_rfc3339("2026-08-14T10:00:00Z").expect("a time");
        let issue = || Issue::new(issued, PageSize::A4);
        let empty = office.fleet_pdf(&FleetQuery::default(), Wording::default(), issue());
        assert!(empty.expect("written").starts_with(b"%PDF-"));
        office.invent_fleet(600, 9).expect("made");
        let mut sizes = Vec::new();
        for language in Language::ALL {
            for from in [None, Some("2024-01-01")] {
                let wording = Wording {
                    language,
                    ..Wording::default()
                };
                let mut query = FleetQuery::default();
                query.filter.from = from.map(str::to_owned);
                let pdf = office.fleet_pdf(&query, wording, issue()).expect("written");
                let again = office.fleet_pdf(&query, wording, issue()).expect("written");
                assert!(pdf == again, "the same records give the same bytes");
                assert!(pdf.starts_with(b"%PDF-"));
                sizes.push(pdf.len());
            }
        }
        assert!(sizes.iter().all(|size| *size > 10_000), "{sizes:?}");
    }
}
