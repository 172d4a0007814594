//! Files that name nobody, and files that must be refused.

use super::devices::{Step, at, content, edit, file, lines, record, take};
use flate2::Compression;
use flate2::read::GzDecoder;
use flate2::write::GzEncoder;
use returnline_core::store::Store;
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
