//! What is kept beside the entries of a visit: photos and signatures.

use super::PhotoId;
use crate::named::named;
use chrono::{DateTime, FixedOffset};
use serde::{Deserialize, Serialize};
use thiserror::Error;

/// What attachments may be, each limit declared here and nowhere else. All are
/// judgement: far above what a visit needs, low enough for a phone.
pub mod limits {
    /// Largest picture file that is taken in, bytes.
    pub const PHOTO_FILE_BYTES: usize = 32 * 1024 * 1024;
    /// Most pixels of a picture that is read: any phone camera's, and at three
    /// bytes a pixel still within a phone's memory.
    pub const PHOTO_PIXELS: u64 = 64_000_000;
    /// Longest edge of a kept photo, pixels: about 200 to the inch over the
    /// text width of a page.
    pub const PHOTO_EDGE: u32 = 1600;
    /// Longest edge of the small picture in a list, pixels.
    pub const THUMBNAIL_EDGE: u32 = 240;
    /// Most photos of one visit.
    pub const PHOTOS: usize = 40;
    /// Longest caption, characters.
    pub const CAPTION: usize = 300;
    /// Longest printed name, characters.
    pub const NAME: usize = 120;
    /// Most strokes of a signature.
    pub const STROKES: usize = 200;
    /// Most points of a signature, over all strokes.
    pub const POINTS: usize = 20_000;
    /// Width over height of the pad: from tall to very wide.
    pub const ASPECT: std::ops::RangeInclusive<f32> = 0.2..=10.0;
}

named! {
    /// When in the work a photo was taken.
    #[derive(Copy, Clone, PartialEq, Eq, Hash, Debug, Serialize, Deserialize)]
    #[serde(rename_all = "snake_case")]
    pub enum PhotoPhase {
        /// As found.
        Before = "before",
        /// As left.
        After = "after",
        /// Anything else.
        Other = "other",
    }
}

/// What is said of a photo. The picture itself is a [`Picture`].
#[derive(Clone, PartialEq, Debug)]
pub struct Photo {
    /// Identifier.
    pub id: PhotoId,
    /// When in the work it was taken.
    pub phase: PhotoPhase,
    /// When it was taken.
    pub taken_at: DateTime<FixedOffset>,
    /// What it shows.
    pub caption: Option<String>,
    /// Width of the kept picture, pixels.
    pub width: u32,
    /// Height of the kept picture, pixels.
    pub height: u32,
}

/// A picture as it is kept: a JPEG file that stands upright, without metadata,
/// with no edge over [`limits::PHOTO_EDGE`], and a small one for lists.
#[derive(Clone, PartialEq, Eq)]
pub struct Picture {
    /// The JPEG file.
    pub jpeg: Vec<u8>,
    /// A small JPEG file of the same.
    pub thumbnail: Vec<u8>,
    /// Width, pixels.
    pub width: u32,
    /// Height, pixels.
    pub height: u32,
}

impl std::fmt::Debug for Picture {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "Picture({} x {})", self.width, self.height)
    }
}

named! {
    /// In which role somebody signs.
    #[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
    #[serde(rename_all = "snake_case")]
    pub enum SignatureRole {
        /// Who did the work.
        Technician = "technician",
        /// Who receives it.
        Customer = "customer",
    }
}

/// A signature drawn on a pad.
#[derive(Clone, PartialEq, Debug)]
pub struct Signature {
    role: SignatureRole,
    name: String,
    aspect: f32,
    strokes: Vec<Vec<[f32; 2]>>,
    signed_at: DateTime<FixedOffset>,
}

/// Why an attachment is not taken.
#[derive(Clone, PartialEq, Debug, Error)]
pub enum AttachmentError {
    /// The caption is too long.
    #[error("a caption has at most {most} characters, not {0}", most = limits::CAPTION)]
    CaptionTooLong(usize),
    /// The printed name is missing.
    #[error("a signature needs the name in print")]
    NoName,
    /// The printed name is too long.
    #[error("a name has at most {most} characters, not {0}", most = limits::NAME)]
    NameTooLong(usize),
    /// Nothing was drawn.
    #[error("nothing was drawn")]
    NothingDrawn,
    /// More strokes or points than a pen makes.
    #[error("too many strokes or points")]
    TooMuchDrawn,
    /// The pad's shape is impossible.
    #[error("the pad's width over height cannot be {0}")]
    BadAspect(f32),
    /// A point lies outside the pad or is no number.
    #[error("a point lies outside the pad")]
    OutsidePad,
}

impl AttachmentError {
    /// Stable code, the key of its message.
    pub fn code(&self) -> &'static str {
        match self {
            Self::CaptionTooLong(_) => "caption-too-long",
            Self::NoName => "signature-no-name",
            Self::NameTooLong(_) => "name-too-long",
            Self::NothingDrawn => "signature-empty",
            Self::TooMuchDrawn => "signature-too-much",
            Self::BadAspect(_) | Self::OutsidePad => "signature-damaged",
        }
    }
}

/// A caption as it is kept: trimmed, and none where nothing is left.
///
/// # Errors
/// [`AttachmentError::CaptionTooLong`].
pub fn caption(text: &str) -> Result<Option<String>, AttachmentError> {
    let text = text.trim();
    let length = text.chars().count();
    if length > limits::CAPTION {
        return Err(AttachmentError::CaptionTooLong(length));
    }
    Ok((!text.is_empty()).then(|| text.to_owned()))
}

impl Signature {
    /// A signature from the strokes of the pen: each a path from touch to lift,
    /// its points in 0..1 of the pad's width and height, y downward. `aspect`
    /// is the pad's width over its height.
    ///
    /// # Errors
    /// [`AttachmentError`] where name, pad or strokes cannot be.
    pub fn new(
        role: SignatureRole,
        name: &str,
        aspect: f32,
        strokes: Vec<Vec<[f32; 2]>>,
        signed_at: DateTime<FixedOffset>,
    ) -> Result<Self, AttachmentError> {
        let name = name.trim();
        let length = name.chars().count();
        if length == 0 {
            return Err(AttachmentError::NoName);
        }
        if length > limits::NAME {
            return Err(AttachmentError::NameTooLong(length));
        }
        if !limits::ASPECT.contains(&aspect) {
            return Err(AttachmentError::BadAspect(aspect));
        }
        let points: usize = strokes.iter().map(Vec::len).sum();
        if points == 0 {
            return Err(AttachmentError::NothingDrawn);
        }
        if strokes.len() > limits::STROKES || points > limits::POINTS {
            return Err(AttachmentError::TooMuchDrawn);
        }
        let inside = |value: &f32| (0.0..=1.0).contains(value);
        if !strokes.iter().flatten().flatten().all(inside) {
            return Err(AttachmentError::OutsidePad);
        }
        Ok(Self {
            role,
            name: name.to_owned(),
            aspect,
            strokes,
            signed_at,
        })
    }

    /// In which role.
    pub fn role(&self) -> SignatureRole {
        self.role
    }

    /// The name in print.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Width of the pad over its height.
    pub fn aspect(&self) -> f32 {
        self.aspect
    }

    /// The strokes, points in 0..1 of the pad.
    pub fn strokes(&self) -> &[Vec<[f32; 2]>] {
        &self.strokes
    }

    /// When it was drawn.
    pub fn signed_at(&self) -> DateTime<FixedOffset> {
        self.signed_at
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn signed(name: &str, aspect: f32, strokes: Vec<Vec<[f32; 2]>>) -> Option<AttachmentError> {
        let now = DateTime::from_timestamp(1_788_000_000, 0).expect("a valid time");
        Signature::new(
            SignatureRole::Customer,
            name,
            aspect,
            strokes,
            now.fixed_offset(),
        )
        .err()
    }

    #[test]
    fn a_signature_needs_a_name_and_a_stroke_inside_the_pad() {
        let line = vec![vec![[0.0, 0.5], [1.0, 0.5]]];
        assert_eq!(signed("An invented name", 3.0, line.clone()), None);
        assert_eq!(
            signed("  ", 3.0, line.clone()),
            Some(AttachmentError::NoName)
        );
        let long = "x".repeat(limits::NAME + 1);
        assert!(matches!(
            signed(&long, 3.0, line.clone()),
            Some(AttachmentError::NameTooLong(_))
        ));
        assert_eq!(
            signed("N", 3.0, vec![Vec::new()]),
            Some(AttachmentError::NothingDrawn)
        );
        for outside in [[-0.1, 0.5], [0.5, 1.1], [f32::NAN, 0.5]] {
            assert_eq!(
                signed("N", 3.0, vec![vec![outside]]),
                Some(AttachmentError::OutsidePad)
            );
        }
        for aspect in [0.0, f32::NAN, f32::INFINITY, -2.0] {
            assert!(matches!(
                signed("N", aspect, line.clone()),
                Some(AttachmentError::BadAspect(_))
            ));
        }
        let many = vec![vec![[0.5, 0.5]]; limits::STROKES + 1];
        assert_eq!(signed("N", 3.0, many), Some(AttachmentError::TooMuchDrawn));
    }

    #[test]
    fn an_empty_caption_is_none_and_a_long_one_refused() {
        assert_eq!(caption("  "), Ok(None));
        assert_eq!(caption(" strainer "), Ok(Some("strainer".to_owned())));
        let long = "é".repeat(limits::CAPTION);
        assert_eq!(caption(&long), Ok(Some(long.clone())));
        assert!(caption(&format!("{long}é")).is_err());
    }
}
