//! Pictures made up on the spot: a ramp of colours with a mark in one corner.

use std::{io::Cursor, sync::Arc};

use image::{ImageFormat, Rgb, RgbImage, codecs::jpeg::JpegEncoder};
use returnline_core::report::photo::Photo;

/// A picture whose upper left corner is red and lower right corner blue.
fn picture(width: u32, height: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| {
        let shade = |part: u32, whole: u32| u8::try_from(part * 160 / whole).unwrap_or(0);
        if x < width / 4 && y < height / 4 {
            Rgb([220, 30, 30])
        } else if x >= width - width / 4 && y >= height - height / 4 {
            Rgb([30, 30, 220])
        } else {
            Rgb([90 + shade(x, width) / 2, 110 + shade(y, height) / 2, 120])
        }
    })
}

/// A JPEG file with the given EXIF orientation and an invented place in its
/// metadata.
#[must_use]
pub fn jpeg_bytes(width: u32, height: u32, orientation: u8) -> Vec<u8> {
    let mut plain = Vec::new();
    if JpegEncoder::new_with_quality(&mut plain, 85)
        .encode_image(&picture(width, height))
        .is_err()
    {
        return Vec::new();
    }
    // EXIF in an APP1 segment: TIFF header, one directory with one entry.
    let mut exif = b"Exif\0\0MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0".to_vec();
    exif.push(orientation);
    exif.extend(b"\0\0\0\0\0\0INVENTED-PLACE");
    let length = u16::try_from(exif.len() + 2).unwrap_or(0).to_be_bytes();
    let mut bytes = plain[..2].to_vec();
    bytes.extend([0xff, 0xe1, length[0], length[1]]);
    bytes.extend(exif);
    bytes.extend(&plain[2..]);
    bytes
}

/// A PNG file.
#[must_use]
pub fn png_bytes(width: u32, height: u32) -> Vec<u8> {
    let mut bytes = Cursor::new(Vec::new());
    match picture(width, height).write_to(&mut bytes, ImageFormat::Png) {
        Ok(()) => bytes.into_inner(),
        Err(_) => Vec::new(),
    }
}

/// A few photos: upright, turned, mirrored, a large one, a drawing.
#[must_use]
pub fn photos() -> Vec<Arc<Photo>> {
    [
        jpeg_bytes(800, 600, 1),
        jpeg_bytes(600, 800, 6),
        jpeg_bytes(800, 600, 3),
        jpeg_bytes(2400, 1800, 8),
        jpeg_bytes(800, 600, 4),
        png_bytes(300, 300),
    ]
    .iter()
    .filter_map(|bytes| Photo::from_bytes(bytes).ok())
    .map(Arc::new)
    .collect()
}
