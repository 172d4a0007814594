//! Outside checks of the PDF file: its structure, and how other programs read
//! it. `qpdf`, `pdffonts`, `pdftotext` and `pdftoppm` have to be there.

#![allow(clippy::unwrap_used, clippy::panic)]

use std::{fs, process::Command, sync::Arc};

use lopdf::{Dictionary, Object};
use returnline_core::report::{
    Document,
    document::{Block, PageSize, PhotoEntry, Text},
    layout::{display::Item, lay_out},
    photo::Photo,
    to_pdf,
};
use returnline_core::{
    api::{Reader, Wording},
    report::{fleet, homeowner, service},
    text::{Language, catalog},
};
use returnline_tests::pages::{
    bare, call, crowded, empty, hard, issue, jpeg_bytes, photos, png_bytes, texts_of, usual, words,
};
use returnline_tests::program::sample;

#[test]
fn same_input_gives_same_bytes() {
    let photos = photos();
    let document = usual(PageSize::Letter, &photos);
    let first = to_pdf(&document, &words()).unwrap();
    let second = to_pdf(&document, &words()).unwrap();
    assert!(first == second, "two runs in one process differ");
    let mut other = document;
    other.meta.id = "example-0002".into();
    assert!(first != to_pdf(&other, &words()).unwrap());
}

fn text_of(object: &Object) -> String {
    lopdf::decode_text_string(object).unwrap()
}

#[test]
fn the_structure_of_the_file_is_as_promised() {
    let document = usual(PageSize::A4, &[]);
    let bytes = to_pdf(&document, &words()).unwrap();
    assert!(bytes.len() < 400_000, "{} bytes", bytes.len());
    let pdf = lopdf::Document::load_mem(&bytes).unwrap();
    assert_eq!(pdf.version, "1.7");
    let catalog = pdf.catalog().unwrap();
    assert_eq!(text_of(catalog.get(b"Lang").unwrap()), "en-US");
    let viewer = catalog
        .get(b"ViewerPreferences")
        .and_then(Object::as_dict)
        .unwrap();
    assert!(
        viewer
            .get(b"DisplayDocTitle")
            .and_then(Object::as_bool)
            .unwrap()
    );
    let info = pdf
        .trailer
        .get(b"Info")
        .and_then(Object::as_reference)
        .unwrap();
    let info = pdf.get_dictionary(info).unwrap();
    assert!(!info.has(b"GTS_PDFXVersion"));
    assert_eq!(text_of(info.get(b"Title").unwrap()), "Service report");
    assert_eq!(text_of(info.get(b"Author").unwrap()), document.meta.author);
    // ISO 32000-1, 7.9.4: D:YYYYMMDDHHmmSSOHH'mm'
    assert_eq!(
        text_of(info.get(b"CreationDate").unwrap()),
        "D:20261014153000-05'00'"
    );
    assert_eq!(
        pdf.trailer
            .get(b"ID")
            .and_then(Object::as_array)
            .unwrap()
            .len(),
        2
    );

    let outlines = catalog
        .get(b"Outlines")
        .and_then(Object::as_reference)
        .unwrap();
    let sections = titles(&pdf, pdf.get_dictionary(outlines).unwrap());
    let names: Vec<&str> = sections.iter().map(|(title, _)| title.as_str()).collect();
    assert_eq!(
        names,
        [
            "Site and system",
            "Readings",
            "Causes",
            "Work",
            "Pressure over the year",
            "Signatures",
            "Method and sources"
        ]
    );
    assert_eq!(sections[2].1, ["Why air is in front"]);
    assert_eq!(sections[3].1, ["Gates"]);
}

/// Titles of an outline's entries, each with the titles below it.
fn titles(pdf: &lopdf::Document, parent: &Dictionary) -> Vec<(String, Vec<String>)> {
    let mut found = Vec::new();
    let mut next = parent.get(b"First").and_then(Object::as_reference).ok();
    while let Some(id) = next {
        let entry = pdf.get_dictionary(id).unwrap();
        let below = titles(pdf, entry)
            .into_iter()
            .map(|(title, _)| title)
            .collect();
        found.push((text_of(entry.get(b"Title").unwrap()), below));
        next = entry.get(b"Next").and_then(Object::as_reference).ok();
    }
    found
}

/// Runs a program on a file and returns what it prints; fails clearly where the
/// program is absent or complains.
fn run(program: &str, before: &[&str], bytes: &[u8], after: &[&str]) -> Vec<u8> {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("report.pdf");
    fs::write(&path, bytes).unwrap();
    let output = Command::new(program)
        .args(before)
        .arg(&path)
        .args(after)
        .output()
        .unwrap_or_else(|error| {
            panic!("{program} is needed for this test (packages qpdf, poppler-utils): {error}")
        });
    let errors = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{program}: {errors}");
    assert!(errors.trim().is_empty(), "{program}: {errors}");
    output.stdout
}

fn extracted(bytes: &[u8], mode: &str) -> String {
    String::from_utf8(run("pdftotext", &[mode], bytes, &["-"])).unwrap()
}

#[test]
fn other_programs_accept_the_file() {
    let photos = photos();
    for document in [
        usual(PageSize::Letter, &photos),
        hard(PageSize::A4),
        empty(PageSize::Letter),
    ] {
        let bytes = to_pdf(&document, &words()).unwrap();
        run("qpdf", &["--check"], &bytes, &[]);
        let fonts = String::from_utf8(run("pdffonts", &[], &bytes, &[])).unwrap();
        let rows: Vec<&str> = fonts.lines().skip(2).collect();
        assert!(!rows.is_empty());
        for row in rows {
            assert!(row.contains("+SourceSans3-"), "{row}");
            // Embedded, subset, with a map to Unicode.
            assert!(row.contains("yes yes yes"), "{row}");
        }
    }
}

#[test]
fn extracted_text_holds_every_word_of_the_content() {
    let document = usual(PageSize::Letter, &[]);
    let bytes = to_pdf(&document, &words()).unwrap();
    let layout = extracted(&bytes, "-layout");
    for value in [
        "−1.8 °C",
        "310 µS/cm",
        "± 0.3",
        "11.8 gpm",
        "Heat from the ground",
        "72 %",
        "0.6 m/s (2 ft/s)",
        "Page 1 of",
        "did not apply",
        "Caution",
    ] {
        assert!(layout.contains(value), "{value:?} is not in\n{layout}");
    }
    let squeezed = |text: &str| text.split_whitespace().collect::<String>();
    let (layout, raw) = (squeezed(&layout), squeezed(&extracted(&bytes, "-raw")));
    let mut checked = 0;
    for text in texts_of(&document.blocks) {
        for word in text.split_whitespace() {
            assert!(
                layout.contains(word) || raw.contains(word),
                "{word:?} is lost"
            );
            checked += 1;
        }
    }
    assert!(checked > 200, "only {checked} words");
}

#[test]
fn signs_are_copied_as_written() {
    let signs = "12 µm · −4 °C · ±2 · 5×10⁻³ m² · ≤ 3 · é ñ ü ç · fi ffl office";
    let document = Document {
        blocks: vec![Block::paragraph(signs)],
        ..empty(PageSize::Letter)
    };
    let text = extracted(&to_pdf(&document, &words()).unwrap(), "-layout");
    assert!(text.contains(signs), "{signs:?} is not in {text:?}");
}

#[test]
fn links_lead_where_they_should() {
    let text = Text::plain("See ").then_link("the page", "https://www.example.org/a?b=(c)");
    let document = Document {
        blocks: vec![Block::paragraph(text)],
        ..empty(PageSize::A4)
    };
    let pdf = lopdf::Document::load_mem(&to_pdf(&document, &words()).unwrap()).unwrap();
    let page = *pdf.get_pages().get(&1).unwrap();
    let page = pdf.get_dictionary(page).unwrap();
    let annotations = page.get(b"Annots").and_then(Object::as_array).unwrap();
    assert_eq!(annotations.len(), 1);
    let annotation = annotations[0].as_dict().unwrap();
    let action = annotation.get(b"A").and_then(Object::as_dict).unwrap();
    assert_eq!(
        text_of(action.get(b"URI").unwrap()),
        "https://www.example.org/a?b=(c)"
    );
}

fn contains(bytes: &[u8], part: &[u8]) -> bool {
    bytes.windows(part.len()).any(|window| window == part)
}

#[test]
fn photos_lose_their_metadata_and_their_excess_pixels() {
    let small = jpeg_bytes(800, 600, 6);
    assert!(contains(&small, b"INVENTED-PLACE"));
    let photo = Photo::from_bytes(&small).unwrap();
    assert_eq!(photo.upright_size(), (600, 800));
    assert!(!contains(photo.bytes(), b"Exif") && !contains(photo.bytes(), b"INVENTED-PLACE"));
    let large = Photo::from_bytes(&jpeg_bytes(2400, 1800, 6)).unwrap();
    assert_eq!(large.upright_size(), (1200, 1600));
    assert!(!contains(large.bytes(), b"INVENTED-PLACE"));
    let png = Photo::from_bytes(&png_bytes(3200, 800)).unwrap();
    assert_eq!(png.upright_size(), (1600, 400));
    let bad: [&[u8]; 5] = [
        &small[..200],
        b"GIF89a",
        b"",
        b"\xff\xd8\xff",
        b"\x89PNG\r\n",
    ];
    for bytes in bad {
        assert!(Photo::from_bytes(bytes).is_err());
    }
}

#[test]
fn photos_stand_upright_whatever_the_camera_noted() {
    // Orientation values after EXIF 2.3 (JEITA CP-3451C), tag 0x0112, from
    // memory: which side of the scene the stored first row and first column
    // show. The stored picture is red where both begin.
    let corners = [
        (1, "top left"),
        (2, "top right"),
        (3, "bottom right"),
        (4, "bottom left"),
        (5, "top left"),
        (6, "top right"),
        (7, "bottom right"),
        (8, "bottom left"),
    ];
    for (value, corner) in corners {
        for edge in [200, 1610] {
            let photo = Arc::new(Photo::from_bytes(&jpeg_bytes(edge, edge, value)).unwrap());
            let entry = PhotoEntry {
                photo,
                caption: None,
            };
            let document = Document {
                blocks: vec![Block::Photos {
                    photos: vec![entry],
                    per_row: 2,
                }],
                ..empty(PageSize::Letter)
            };
            assert_eq!(
                red_corner(&document),
                corner,
                "orientation {value}, {edge} pixels"
            );
        }
    }
}

/// Has the first page drawn and tells where its only picture is red.
fn red_corner(document: &Document) -> &'static str {
    let pages = lay_out(document, &words()).unwrap();
    let picture = pages.pages[0].items.iter().find_map(|item| match item {
        Item::Picture { area, .. } => Some(*area),
        _ => None,
    });
    let area = picture.unwrap();
    let bytes = to_pdf(document, &words()).unwrap();
    // At 72 to the inch a pixel is a point. Without a name for the output the
    // picture goes to standard output, as a binary portable pixmap.
    let pixmap = run("pdftoppm", &["-r", "72", "-f", "1", "-l", "1"], &bytes, &[]);
    let pixels = &pixmap[pixmap.len() - 612 * 792 * 3..];
    let inset = 8.0;
    let (left, right) = (area.x + inset, area.right() - inset);
    let (top, bottom) = (area.y + inset, area.bottom() - inset);
    let corners = [
        ("top left", left, top),
        ("top right", right, top),
        ("bottom left", left, bottom),
        ("bottom right", right, bottom),
    ];
    let red = corners.into_iter().find(|(_, x, y)| {
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let at = (y.round() as usize * 612 + x.round() as usize) * 3;
        matches!(pixels[at..at + 3], [red, green, blue] if red > 180 && green < 80 && blue < 80)
    });
    red.map_or("nowhere", |(name, ..)| name)
}

/// Every report of every kind, from content to text: each word of the content
/// comes out of the file, wherever a font has its letters.
#[test]
fn every_report_is_accepted_and_holds_every_word_of_its_content() {
    let catalog = catalog(Language::English);
    let mut documents = Vec::new();
    let mut texts = vec![("crowded", crowded()), ("bare", bare())];
    for name in [
        "air-in-one-circuit",
        "freeze-guard-trips",
        "pressure-lost-over-summer",
    ] {
        texts.push((name, fs::read_to_string(sample(name)).unwrap()));
    }
    for (name, text) in texts {
        let call = call(&text, Wording::default());
        let issue = issue(PageSize::Letter, false);
        let service = service::document(&call.service_content(&issue), catalog);
        let page = homeowner::document(&call.homeowner_content(&issue), catalog);
        let made = call.report(Reader::Homeowner, &issue).unwrap();
        assert!(
            made == to_pdf(&page, &service::words(catalog)).unwrap(),
            "content and report differ"
        );
        documents.push((name, service));
        documents.push((name, page));
    }
    for crowded in [false, true] {
        let report = returnline_tests::pages::fleet(PageSize::A4, crowded);
        documents.push(("fleet", fleet::document(&report, catalog).unwrap()));
    }
    for (name, document) in documents {
        let bytes = to_pdf(&document, &service::words(catalog)).unwrap();
        assert!(bytes.len() < 400_000, "{name}: {} bytes", bytes.len());
        run("qpdf", &["--check"], &bytes, &[]);
        let squeezed = |text: &str| text.split_whitespace().collect::<String>();
        let (layout, raw) = (
            squeezed(&extracted(&bytes, "-layout")),
            squeezed(&extracted(&bytes, "-raw")),
        );
        for text in texts_of(&document.blocks) {
            for word in text.split_whitespace() {
                let shown = word
                    .chars()
                    .all(|sign| sign.is_ascii() || "°±·–—×≤≥≠−“”‘’…²³äöüßéΔ→½".contains(sign));
                assert!(
                    !shown || layout.contains(word) || raw.contains(word),
                    "{name}: {word:?} is lost"
                );
            }
        }
    }
}
