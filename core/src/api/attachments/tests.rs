use super::*;
use crate::api::tests::{engine, started};

/// A picture whose left half is red, as a camera file turned by `exif`.
fn jpeg(width: u32, height: u32) -> Vec<u8> {
    let picture = image::RgbImage::from_fn(width, height, |x, _| {
        image::Rgb(if x < width / 2 {
            [220, 20, 20]
        } else {
            [20, 20, 220]
        })
    });
    photo_file(&picture)
}

fn photo_file(picture: &image::RgbImage) -> Vec<u8> {
    let mut out = Vec::new();
    image::codecs::jpeg::JpegEncoder::new_with_quality(&mut out, 90)
        .encode_image(picture)
        .expect("encoded");
    out
}

/// The same file with an EXIF segment: orientation and a mark to look for.
fn with_exif(jpeg: &[u8], orientation: u8) -> Vec<u8> {
    let mut tiff = b"Exif\0\0II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0".to_vec();
    tiff.extend([orientation, 0, 0, 0, 0, 0, 0, 0]);
    tiff.extend(b"PLACE-OF-THE-CAMERA");
    let length = u16::try_from(tiff.len() + 2).expect("short");
    let mut out = jpeg[..2].to_vec();
    out.extend([0xff, 0xe1]);
    out.extend(length.to_be_bytes());
    out.extend(tiff);
    out.extend(&jpeg[2..]);
    out
}

fn new(caption: &str) -> NewPhoto {
    NewPhoto {
        data: String::new(),
        phase: "before".to_owned(),
        caption: Some(caption.to_owned()),
        taken_at: None,
    }
}

fn signature(role: &str) -> SignatureEntry {
    SignatureEntry {
        role: role.to_owned(),
        name: "An Invented Name".to_owned(),
        aspect: 3.0,
        strokes: vec![vec![[0.1, 0.5], [0.9, 0.4]], vec![[0.5, 0.5]]],
    }
}

#[test]
fn a_photo_is_kept_upright_small_and_without_metadata() {
    let file = with_exif(&jpeg(3200, 1600), 6);
    let picture = read_picture(&file, Wording::default()).expect("taken");
    // Orientation 6 means a quarter turn clockwise: what was left is now above.
    assert_eq!((picture.width, picture.height), (800, limits::PHOTO_EDGE));
    let marked = picture
        .jpeg
        .windows(5)
        .any(|part| part == b"PLACE" || part == b"Exif\0");
    assert!(!marked, "metadata was kept");
    let read = image::load_from_memory(&picture.jpeg)
        .expect("a picture")
        .into_rgb8();
    assert_eq!(read.dimensions(), (picture.width, picture.height));
    assert!(read.get_pixel(400, 100)[0] > 150, "red was left, is above");
    assert!(
        read.get_pixel(400, 1500)[2] > 150,
        "blue was right, is below"
    );
    let small = image::load_from_memory(&picture.thumbnail).expect("a picture");
    assert_eq!(
        (small.width(), small.height()),
        (120, limits::THUMBNAIL_EDGE)
    );
}

#[test]
fn photos_come_back_and_can_be_described_and_taken_away() {
    let mut engine = engine();
    let visit = started(&mut engine);
    let file = jpeg(64, 48);
    let text = format!("data:image/jpeg;base64,{}", STANDARD.encode(&file));
    let picture = read_picture_text(&text, engine.wording()).expect("taken");
    let view = engine
        .add_photo(&visit, &new(" Strainer "), &picture)
        .expect("kept");
    assert_eq!(view.photos_left, limits::PHOTOS - 1);
    let photo = &view.photos[0];
    assert_eq!(photo.caption.as_deref(), Some("Strainer"));
    assert_eq!((photo.width, photo.height), (64, 48));
    assert!(photo.thumbnail.starts_with("data:image/jpeg;base64,"));
    let full = engine.photo(&photo.id).expect("there");
    assert_eq!(full, address(&picture.jpeg));

    let entry = PhotoEntry {
        id: photo.id.clone(),
        phase: "after".to_owned(),
        caption: None,
    };
    let view = engine.describe_photo(&visit, &entry).expect("changed");
    assert_eq!(
        (view.photos[0].phase.as_str(), &view.photos[0].caption),
        ("after", &None)
    );
    let view = engine.remove_photo(&visit, &entry.id).expect("gone");
    assert!(view.photos.is_empty());
    assert_eq!(engine.photo(&entry.id).expect_err("gone").code, "not-found");
    assert_eq!(
        engine
            .describe_photo(&visit, &entry)
            .expect_err("gone")
            .code,
        "not-found"
    );
}

#[test]
fn hostile_files_are_refused_before_their_pixels_are_read() {
    let wording = Wording::default();
    let code = |bytes: &[u8]| read_picture(bytes, wording).expect_err("refused").code;
    assert_eq!(code(b""), "photo-format");
    assert_eq!(code(b"%PDF-1.7"), "photo-format");
    assert_eq!(
        code(&vec![0xff; limits::PHOTO_FILE_BYTES + 1]),
        "photo-too-large"
    );
    let mut cut = jpeg(640, 480);
    cut.truncate(60);
    assert_eq!(code(&cut), "photo-damaged");
    // A PNG header that promises 60000 x 60000 pixels: ten gigabytes.
    let mut bomb = b"\x89PNG\r\n\x1a\n\0\0\0\x0dIHDR".to_vec();
    bomb.extend(60_000_u32.to_be_bytes());
    bomb.extend(60_000_u32.to_be_bytes());
    bomb.extend([8, 2, 0, 0, 0]);
    // CRC-32 of the chunk, worked out bit by bit (PNG specification, annex D).
    let crc = bomb[12..].iter().fold(u32::MAX, |crc, byte| {
        (0..8).fold(crc ^ u32::from(*byte), |crc, _| {
            if crc & 1 == 1 {
                crc >> 1 ^ 0xedb8_8320
            } else {
                crc >> 1
            }
        })
    });
    bomb.extend((!crc).to_be_bytes());
    bomb.extend(b"\0\0\0\0IDAT\x35\xaf\x06\x1e");
    assert_eq!(code(&bomb), "photo-too-large");
    // A JPEG whose frame header promises 65500 x 65500.
    let mut frame = jpeg(16, 16);
    let at = frame
        .windows(2)
        .position(|pair| pair == [0xff, 0xc0])
        .expect("a frame");
    frame[at + 5..at + 9].copy_from_slice(&[0xff, 0xdc, 0xff, 0xdc]);
    assert_eq!(code(&frame), "photo-too-large");
    assert_eq!(
        read_picture_text("no base 64!", wording)
            .expect_err("refused")
            .code,
        "photo-format"
    );
}

#[test]
fn a_visit_takes_only_so_many_photos() {
    let mut engine = engine();
    let visit = started(&mut engine);
    let picture = read_picture(&jpeg(8, 8), engine.wording()).expect("taken");
    for _ in 0..limits::PHOTOS {
        engine.add_photo(&visit, &new("x"), &picture).expect("kept");
    }
    let error = engine
        .add_photo(&visit, &new("x"), &picture)
        .expect_err("refused");
    assert_eq!(error.code, "too-many-photos");
    assert!(error.message.contains("40"), "{}", error.message);
    assert_eq!(
        engine.attachments(&visit).expect("listed").photos.len(),
        limits::PHOTOS
    );
}

#[test]
fn signatures_are_kept_one_a_role_and_can_be_taken_away() {
    let mut engine = engine();
    let visit = started(&mut engine);
    engine
        .set_signature(&visit, &signature("customer"))
        .expect("kept");
    engine
        .set_signature(&visit, &signature("technician"))
        .expect("kept");
    let mut other = signature("customer");
    other.name = "Somebody Else".to_owned();
    let view = engine.set_signature(&visit, &other).expect("replaced");
    let names: Vec<(&str, &str)> = view
        .signatures
        .iter()
        .map(|signature| (signature.role.as_str(), signature.name.as_str()))
        .collect();
    assert_eq!(
        names,
        [
            ("technician", "An Invented Name"),
            ("customer", "Somebody Else")
        ]
    );
    assert_eq!(view.signatures[1].strokes, other.strokes);
    let view = engine.clear_signature(&visit, "customer").expect("gone");
    assert_eq!(view.signatures.len(), 1);

    let mut empty = signature("customer");
    empty.strokes.clear();
    assert_eq!(
        engine
            .set_signature(&visit, &empty)
            .expect_err("refused")
            .code,
        "signature-empty"
    );
    let wrong = signature("manager");
    assert_eq!(
        engine
            .set_signature(&visit, &wrong)
            .expect_err("refused")
            .code,
        "no-such-name"
    );
    let caption = "x".repeat(limits::CAPTION + 1);
    let picture = read_picture(&jpeg(8, 8), engine.wording()).expect("taken");
    let error = engine
        .add_photo(&visit, &new(&caption), &picture)
        .expect_err("refused");
    assert_eq!(error.code, "caption-too-long");
    assert!(!error.message.contains('«'), "{}", error.message);
}

#[test]
fn every_refusal_has_its_words() {
    let catalog = Wording::default().catalog();
    for code in [
        "photo-format",
        "photo-too-large",
        "photo-damaged",
        "too-many-photos",
        "caption-too-long",
        "name-too-long",
        "signature-no-name",
        "signature-empty",
        "signature-too-much",
        "signature-damaged",
    ] {
        assert!(catalog.has(&format!("error-{code}")), "{code}");
    }
    for kind in [
        "photo-before",
        "photo-after",
        "photo-other",
        "signature-technician",
        "signature-customer",
    ] {
        assert!(catalog.has(kind), "{kind}");
    }
}
