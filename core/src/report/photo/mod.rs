//! Photos made ready for a page: turned upright, no larger than needed, and
//! without the data that cameras add (place, time, owner).

mod jpeg;
mod logo;

pub use logo::logo;

use std::io::Cursor;

use image::{
    DynamicImage, ImageDecoder, ImageReader, Limits, RgbImage, codecs::jpeg::JpegEncoder, imageops,
    metadata::Orientation as Turn,
};

use super::error::PhotoError;
use crate::records::Picture;
use crate::records::attachment::limits;

/// Longest edge kept, in pixels.
pub const LONGEST_EDGE: u32 = limits::PHOTO_EDGE;
/// Most pixels read.
pub const MOST_PIXELS: u64 = limits::PHOTO_PIXELS;
/// Memory that reading one picture may take: its pixels at four bytes each.
const MOST_BYTES: u64 = MOST_PIXELS * 4;
/// Quality of JPEG pictures written anew.
const QUALITY: u8 = 82;
/// Quality of the small picture of a list.
const SMALL_QUALITY: u8 = 70;

/// How the stored pixels are laid down to stand upright.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Orientation {
    /// Mirrored left to right, before turning.
    pub mirrored: bool,
    /// Clockwise quarter turns.
    pub quarters: u8,
}

impl Orientation {
    /// As stored.
    pub const UPRIGHT: Self = Self {
        mirrored: false,
        quarters: 0,
    };

    /// From the value of the EXIF tag 0x0112 (EXIF 2.3, JEITA CP-3451,
    /// "Orientation"); unknown values mean upright.
    #[must_use]
    pub fn from_exif(value: u16) -> Self {
        let (mirrored, quarters) = match value {
            2 => (true, 0),
            3 => (false, 2),
            4 => (true, 2),
            5 => (true, 3),
            6 => (false, 1),
            7 => (true, 1),
            8 => (false, 3),
            _ => (false, 0),
        };
        Self { mirrored, quarters }
    }
}

/// How the bytes of a photo are to be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Encoding {
    /// A JPEG file with one or three components of 8 bits.
    Jpeg {
        /// One component instead of three.
        grey: bool,
    },
    /// Rows of red, green, blue bytes.
    Rgb,
}

/// A photo ready for a page.
#[derive(Clone, PartialEq)]
pub struct Photo {
    pub(crate) width: u32,
    pub(crate) height: u32,
    pub(crate) orientation: Orientation,
    pub(crate) encoding: Encoding,
    pub(crate) bytes: Vec<u8>,
}

impl std::fmt::Debug for Photo {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Photo")
            .field("width", &self.width)
            .field("height", &self.height)
            .field("orientation", &self.orientation)
            .field("encoding", &self.encoding)
            .field("bytes", &self.bytes.len())
            .finish()
    }
}

impl Photo {
    /// Reads a JPEG or PNG file.
    ///
    /// A JPEG that is small enough is passed on as it is, without its metadata
    /// segments; its orientation is kept aside. Anything larger is turned,
    /// scaled to [`LONGEST_EDGE`] and written anew. Transparent parts of a PNG
    /// become white.
    ///
    /// # Errors
    /// [`PhotoError`] for other formats, damaged data, or more than
    /// [`MOST_PIXELS`].
    pub fn from_bytes(bytes: &[u8]) -> Result<Self, PhotoError> {
        match bytes {
            [0xff, 0xd8, 0xff, ..] => Self::from_jpeg(bytes),
            [0x89, b'P', b'N', b'G', ..] => Self::from_png(bytes),
            _ => Err(PhotoError::UnknownFormat),
        }
    }

    fn from_jpeg(bytes: &[u8]) -> Result<Self, PhotoError> {
        if let Some(plain) = jpeg::strip(bytes) {
            check_size(plain.width, plain.height)?;
            if plain.width.max(plain.height) <= LONGEST_EDGE && plain.passes_through {
                // Decoding proves that a reader will be able to as well.
                decode(bytes)?;
                return Ok(Self {
                    width: plain.width,
                    height: plain.height,
                    orientation: plain.orientation,
                    encoding: Encoding::Jpeg {
                        grey: plain.components == 1,
                    },
                    bytes: plain.bytes,
                });
            }
        }
        let rgb = upright(bytes)?;
        let (width, height) = rgb.dimensions();
        Ok(Self {
            width,
            height,
            orientation: Orientation::UPRIGHT,
            encoding: Encoding::Jpeg { grey: false },
            bytes: jpeg(&rgb, QUALITY)?,
        })
    }

    fn from_png(bytes: &[u8]) -> Result<Self, PhotoError> {
        let rgb = upright(bytes)?;
        let (width, height) = rgb.dimensions();
        Ok(Self {
            width,
            height,
            orientation: Orientation::UPRIGHT,
            encoding: Encoding::Rgb,
            bytes: rgb.into_raw(),
        })
    }

    /// Width and height in pixels as it stands on the page.
    #[must_use]
    pub fn upright_size(&self) -> (u32, u32) {
        if self.orientation.quarters % 2 == 1 {
            (self.height, self.width)
        } else {
            (self.width, self.height)
        }
    }

    /// How the stored pixels have to be turned.
    #[must_use]
    pub fn orientation(&self) -> Orientation {
        self.orientation
    }

    /// How the stored bytes are to be read.
    #[must_use]
    pub fn encoding(&self) -> Encoding {
        self.encoding
    }

    /// The stored bytes.
    #[must_use]
    pub fn bytes(&self) -> &[u8] {
        &self.bytes
    }
}

/// Makes a picture file ready to be kept: turned upright, scaled to
/// [`limits::PHOTO_EDGE`], written anew as JPEG without any metadata.
///
/// # Errors
/// [`PhotoError`]: a file or picture over the limits is refused before its
/// pixels are read.
pub fn picture(bytes: &[u8]) -> Result<Picture, PhotoError> {
    if bytes.len() > limits::PHOTO_FILE_BYTES {
        return Err(PhotoError::TooManyBytes { bytes: bytes.len() });
    }
    if !matches!(bytes, [0xff, 0xd8, 0xff, ..] | [0x89, b'P', b'N', b'G', ..]) {
        return Err(PhotoError::UnknownFormat);
    }
    let rgb = upright(bytes)?;
    let (width, height) = rgb.dimensions();
    let large = jpeg(&rgb, QUALITY)?;
    let small = shrink(DynamicImage::ImageRgb8(rgb), limits::THUMBNAIL_EDGE).into_rgb8();
    Ok(Picture {
        jpeg: large,
        thumbnail: jpeg(&small, SMALL_QUALITY)?,
        width,
        height,
    })
}

/// The pixels of a file as they stand on a page.
fn upright(bytes: &[u8]) -> Result<RgbImage, PhotoError> {
    let (picture, turn) = decode(bytes)?;
    let mut picture = shrink(picture, LONGEST_EDGE);
    picture.apply_orientation(turn);
    Ok(over_white(picture))
}

fn jpeg(rgb: &RgbImage, quality: u8) -> Result<Vec<u8>, PhotoError> {
    let mut out = Vec::new();
    JpegEncoder::new_with_quality(&mut out, quality)
        .encode_image(rgb)
        .map_err(|source| PhotoError::Damaged { source })?;
    Ok(out)
}

fn check_size(width: u32, height: u32) -> Result<(), PhotoError> {
    if u64::from(width) * u64::from(height) > MOST_PIXELS {
        return Err(PhotoError::TooLarge { width, height });
    }
    Ok(())
}

fn decode(bytes: &[u8]) -> Result<(DynamicImage, Turn), PhotoError> {
    let damaged = |source| PhotoError::Damaged { source };
    let mut reader = ImageReader::new(Cursor::new(bytes))
        .with_guessed_format()
        .map_err(|source| damaged(source.into()))?;
    let mut limits = Limits::default();
    limits.max_alloc = Some(MOST_BYTES);
    reader.limits(limits);
    let mut decoder = reader.into_decoder().map_err(damaged)?;
    let (width, height) = decoder.dimensions();
    check_size(width, height)?;
    let turn = decoder.orientation().unwrap_or(Turn::NoTransforms);
    let picture = DynamicImage::from_decoder(decoder).map_err(damaged)?;
    Ok((picture, turn))
}

/// Smaller where the longest edge is over the limit. Averages whole blocks of
/// pixels, which needs no second copy of the picture.
fn shrink(picture: DynamicImage, most: u32) -> DynamicImage {
    let longest = picture.width().max(picture.height());
    if longest <= most {
        return picture;
    }
    let scaled = |edge: u32| {
        let edge = u64::from(edge) * u64::from(most) / u64::from(longest);
        u32::try_from(edge).unwrap_or(most).max(1)
    };
    let (width, height) = (scaled(picture.width()), scaled(picture.height()));
    picture.thumbnail_exact(width, height)
}

fn over_white(picture: DynamicImage) -> RgbImage {
    if !picture.color().has_alpha() {
        return picture.into_rgb8();
    }
    let rgba = picture.into_rgba8();
    let mut ground =
        image::RgbaImage::from_pixel(rgba.width(), rgba.height(), image::Rgba([255; 4]));
    imageops::overlay(&mut ground, &rgba, 0, 0);
    DynamicImage::ImageRgba8(ground).into_rgb8()
}
