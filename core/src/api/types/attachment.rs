//! Photos and signatures as they are shown and entered.

use super::ChoiceView;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A new photo.
#[derive(Clone, PartialEq, Debug, Deserialize, TS)]
#[ts(export)]
pub struct NewPhoto {
    /// A JPEG or PNG file in base 64, with or without `data:…;base64,` before it.
    pub data: String,
    /// `before`, `after` or `other`.
    pub phase: String,
    /// What it shows.
    pub caption: Option<String>,
    /// When it was taken, RFC 3339; now if not given.
    pub taken_at: Option<String>,
}

/// What is said of a photo.
#[derive(Clone, PartialEq, Debug, Deserialize, TS)]
#[ts(export)]
pub struct PhotoEntry {
    /// Identifier of the photo.
    pub id: String,
    /// `before`, `after` or `other`.
    pub phase: String,
    /// What it shows.
    pub caption: Option<String>,
}

/// A photo as it is listed.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct PhotoView {
    /// Identifier.
    pub id: String,
    /// `before`, `after` or `other`.
    pub phase: String,
    /// The phase in words.
    pub phase_label: String,
    /// What it shows.
    pub caption: Option<String>,
    /// Day and time it was taken, as shown.
    pub taken_at: String,
    /// Width of the kept picture, pixels.
    pub width: u32,
    /// Height of the kept picture, pixels.
    pub height: u32,
    /// A small picture as a `data:` address.
    pub thumbnail: String,
}

/// A signature as it is drawn.
#[derive(Clone, PartialEq, Debug, Deserialize, TS)]
#[ts(export)]
pub struct SignatureEntry {
    /// `technician` or `customer`.
    pub role: String,
    /// Name in print.
    pub name: String,
    /// Width of the pad over its height.
    pub aspect: f32,
    /// Strokes from touch to lift: points `[x, y]` in 0..1 of the pad, y downward.
    pub strokes: Vec<Vec<[f32; 2]>>,
}

/// A signature as it is shown.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct SignatureView {
    /// `technician` or `customer`.
    pub role: String,
    /// The role in words.
    pub role_label: String,
    /// Name in print.
    pub name: String,
    /// Width of the pad over its height.
    pub aspect: f32,
    /// Strokes: points `[x, y]` in 0..1 of the pad, y downward.
    pub strokes: Vec<Vec<[f32; 2]>>,
    /// Day and time it was drawn, as shown.
    pub signed_at: String,
    /// That the visit was changed since, in words; none if it was not.
    pub changed: Option<String>,
}

/// Photos and signatures of a visit, and what can be chosen for them.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct AttachmentsView {
    /// The photos in the order they were kept.
    pub photos: Vec<PhotoView>,
    /// The signatures given so far.
    pub signatures: Vec<SignatureView>,
    /// Phases of a photo.
    pub phases: Vec<ChoiceView>,
    /// Roles of a signature.
    pub roles: Vec<ChoiceView>,
    /// How many more photos the visit takes.
    pub photos_left: usize,
}
