//! Files that name nobody, and files that must be refused.

use super::devices::{Step, at, content, edit, file, lines, record, take};
use flate2::Compression;
use flate2::read::GzDecoder;
use flate2::write::GzEncoder;
use returnline_core::exchange::VERSION;
use returnline_core::records::visit_file::schema;
use returnline_core::store::Store;
use returnline_core::text::{Args, Language, catalog};
use serde_json::Value;
use std::collections::BTreeSet;
use std::io::{Read, Write};

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

fn header(file: &[u8]) -> String {
    let mut text = String::new();
    GzDecoder::new(file)
        .read_to_string(&mut text)
        .expect("text");
    text.lines().next().expect("a header").to_owned()
}

/// A file that the first program wrote, see `tests/exchange/README.md`: what it holds is
/// what was typed then.
#[test]
fn a_file_of_version_1_is_read_and_carried_on_as_version_2() {
    let old = include_bytes!("../../exchange/version-1.rlx");
    assert!(header(old).contains("\"version\":1,"));
    let mut office = Store::in_memory().expect("opens");
    take(&mut office, old, 1).expect("taken");
    let visits = office.visits().expect("listed");
    assert_eq!(visits.len(), 3);
    let complaint = "It gurgles behind the wall, and twice last week it stopped with a flow fault.";
    let same = |said: Option<&str>| said == Some(complaint);
    let id = visits.iter().find(|visit| same(visit.complaint.as_deref()));
    let call = office.record(id.expect("the call").id).expect("there");
    // As `tests/databases/calls/air-in-one-circuit.json` has it.
    assert_eq!(call.file.visit.readings.len(), 12);
    assert_eq!(call.file.site.name, "Cedar Hollow house (invented)");
    assert_eq!(call.file.system.circulators.len(), 2);
    // Twice is once, and what this program writes of it is its own version.
    take(&mut office, old, 2).expect("taken again");
    assert_eq!(office.visits().expect("listed").len(), 3);
    assert_eq!(office.conflicts().expect("listed"), []);
    let new = file(&mut office, true, 3);
    assert!(header(&new).contains("\"version\":2,"));
    let mut phone = Store::in_memory().expect("opens");
    take(&mut phone, &new, 4).expect("taken");
    assert_eq!(phone.record(call.id).expect("there").file, call.file);
    assert_eq!(phone.conflicts().expect("listed"), []);
}

/// Every field and every named value of the visit file, each with what it belongs to.
fn fields(schema: &Value, of: &str, found: &mut BTreeSet<String>) {
    match schema {
        Value::Object(members) => {
            if let Some(Value::Object(properties)) = members.get("properties") {
                found.extend(properties.keys().map(|name| format!("{of}.{name}")));
            }
            for (name, member) in members {
                match (name.as_str(), member) {
                    ("$defs", _) => {}
                    ("const", Value::String(value)) => {
                        found.insert(format!("{of}={value}"));
                    }
                    ("enum", Value::Array(values)) => {
                        let values = values.iter().filter_map(Value::as_str);
                        found.extend(values.map(|value| format!("{of}={value}")));
                    }
                    _ => fields(member, of, found),
                }
            }
        }
        Value::Array(members) => members.iter().for_each(|one| fields(one, of, found)),
        _ => {}
    }
}

/// A program that does not know a field or a value of it refuses a file that has it. It says why only if
/// the version went up with it.
#[test]
fn what_an_older_program_does_not_know_raises_the_version() {
    let path = format!(
        "{}/exchange/version-{VERSION}.fields",
        env!("CARGO_MANIFEST_DIR")
    );
    let listed = std::fs::read_to_string(&path).expect("the fields of this version");
    let schema = schema();
    let mut found = BTreeSet::new();
    fields(&schema, "file", &mut found);
    for (name, part) in schema["$defs"].as_object().expect("parts") {
        fields(part, name, &mut found);
    }
    let listed: BTreeSet<String> = listed.lines().map(str::to_owned).collect();
    let changed: Vec<&String> = listed.symmetric_difference(&found).collect();
    assert!(
        changed.is_empty(),
        "{changed:?}: raise exchange::VERSION, say in core/docs/exchange.md what came with it, \
         and follow tests/exchange/README.md"
    );
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
    let newer = text.replacen("\"version\":2", "\"version\":3", 1);
    assert_ne!(newer, text);
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
    let mut office = Store::open(&path).expect("opens");
    let error = take(&mut office, &packed(&newer), 2).expect_err("newer");
    drop(office);
    // Which it is, which is read, and what to do.
    let told = error.context();
    let args = told
        .iter()
        .fold(Args::new(), |args, (name, value)| args.text(name, value));
    let message = catalog(Language::English).fill("error-exchange-newer", &args);
    for told in ["version 3", "up to version 2", "Update this one"] {
        assert!(message.contains(told), "{told}: {message}");
    }
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
