//! A company's logo: small, written anew, with nothing of the file kept but its
//! picture.

use std::io::Cursor;

use image::{ImageFormat, ImageReader, Limits};

use crate::report::PhotoError;

/// Longest edge of a logo in pixels: 2 in at 300 dots an inch.
const LONGEST_EDGE: u32 = 600;
/// Longest edge of a picture that is taken for a logo at all.
const LONGEST_READ: u32 = 8_000;

/// The picture of a PNG or JPEG file as a small PNG; its transparency is kept.
///
/// # Errors
/// [`PhotoError`] for other formats, damaged data and pictures over the limit.
pub fn logo(file: &[u8]) -> Result<Vec<u8>, PhotoError> {
    let format = match file {
        [0xff, 0xd8, 0xff, ..] => ImageFormat::Jpeg,
        [0x89, b'P', b'N', b'G', ..] => ImageFormat::Png,
        _ => return Err(PhotoError::UnknownFormat),
    };
    let mut reader = ImageReader::with_format(Cursor::new(file), format);
    let mut limits = Limits::default();
    limits.max_image_width = Some(LONGEST_READ);
    limits.max_image_height = Some(LONGEST_READ);
    reader.limits(limits);
    let damaged = |source| PhotoError::Damaged { source };
    let picture = reader.decode().map_err(damaged)?;
    let small = if picture.width().max(picture.height()) > LONGEST_EDGE {
        picture.thumbnail(LONGEST_EDGE, LONGEST_EDGE)
    } else {
        picture
    };
    let mut png = Cursor::new(Vec::new());
    small
        .into_rgba8()
        .write_to(&mut png, ImageFormat::Png)
        .map_err(damaged)?;
    Ok(png.into_inner())
}

#[cfg(test)]
mod tests {
    use super::*;
    use image::{DynamicImage, RgbaImage};

    fn png(width: u32, height: u32) -> Vec<u8> {
        let picture = DynamicImage::ImageRgba8(RgbaImage::new(width, height));
        let mut bytes = Cursor::new(Vec::new());
        picture
            .write_to(&mut bytes, ImageFormat::Png)
            .expect("written");
        bytes.into_inner()
    }

    #[test]
    fn a_large_picture_becomes_a_small_one_of_the_same_shape() {
        let small = logo(&png(1200, 300)).expect("read");
        let read = image::load_from_memory(&small).expect("read again");
        assert_eq!((read.width(), read.height()), (600, 150));
    }

    #[test]
    fn what_is_no_picture_is_refused() {
        assert!(matches!(
            logo(b"<svg></svg>"),
            Err(PhotoError::UnknownFormat)
        ));
        let mut cut = png(20, 20);
        cut.truncate(40);
        assert!(matches!(logo(&cut), Err(PhotoError::Damaged { .. })));
        assert!(matches!(logo(b""), Err(PhotoError::UnknownFormat)));
    }
}
