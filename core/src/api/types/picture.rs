//! Drawings of a call.

use super::QuantityView;
use crate::report::chart::Drawing;
use serde::Serialize;
use ts_rs::TS;

/// The drawing of the system and the charts of a call.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct PicturesView {
    /// The system.
    pub schematic: SchematicView,
    /// The charts.
    pub charts: Vec<PictureView>,
}

/// One chart.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct PictureView {
    /// Identifier, unique in the call.
    pub id: String,
    /// What it shows.
    pub title: String,
    /// The same in words.
    pub caption: String,
    /// Its numbers, each with where it comes from.
    pub figures: Vec<QuantityView>,
    /// The drawing.
    pub drawing: Drawing,
}

/// The system as a drawing with places to tap.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct SchematicView {
    /// The drawing.
    pub drawing: Drawing,
    /// Where something can be read.
    pub spots: Vec<SpotView>,
    /// What is suspected where, in words; the drawing holds the same signs.
    pub marks: Vec<MarkView>,
}

/// A place on the drawing where something can be read.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct SpotView {
    /// Identifier of the point.
    pub point: String,
    /// Label of the point.
    pub label: String,
    /// A word short enough for the drawing.
    pub short: String,
    /// The last reading, if there is one.
    pub reading: Option<String>,
    /// Distance from the left edge, as a share of the width.
    pub x: f32,
    /// Distance from the top edge, as a share of the height.
    pub y: f32,
}

/// Something suspected at a place.
#[derive(Clone, PartialEq, Debug, Serialize, TS)]
#[ts(export)]
pub struct MarkView {
    /// Identifier of the cause.
    pub cause: String,
    /// The letter that stands in its sign on the drawing.
    pub letter: String,
    /// What the sign says.
    pub sign: String,
    /// Title of the cause.
    pub text: String,
    /// Its probability, as it is shown.
    pub shown: String,
}
