//! Shaping: from a piece of text to glyphs with kerned advances, kept in a
//! cache, because reports repeat their words.

use std::{collections::HashMap, rc::Rc};

use rustybuzz::{BufferClusterLevel, Feature, UnicodeBuffer, ttf_parser::Tag};

use super::{Face, FaceSet, clean};
use crate::report::error::ReportError;

/// One glyph of a shaped piece. Distances in thousandths of an em.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Glyph {
    /// Glyph number in the face.
    pub id: u16,
    /// How far the pen moves, kerning included.
    pub advance: f32,
    /// Shift of the drawn shape to the right of the pen.
    pub shift_x: f32,
    /// Shift of the drawn shape above the base line.
    pub shift_y: f32,
    /// The character the glyph came from (the first, where several joined).
    pub source: char,
    /// Whether a line may be broken before this glyph in need: false for marks
    /// that sit on the letter before them.
    pub starts_cluster: bool,
}

/// A shaped piece of text in one face.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Shaped {
    /// The glyphs from left to right.
    pub glyphs: Vec<Glyph>,
    /// Sum of the advances, thousandths of an em.
    pub width: f32,
}

/// Measures and shapes text; owns the faces and the cache.
pub struct Typesetter {
    faces: &'static FaceSet,
    cache: HashMap<(Face, String), Rc<Shaped>>,
    features: Vec<Feature>,
}

/// Substitutions that would join or swap letters. Off, so that one glyph stands
/// for one character and copied text is the written text.
const SUBSTITUTIONS_OFF: [&[u8; 4]; 5] = [b"liga", b"clig", b"calt", b"dlig", b"locl"];

impl Typesetter {
    /// Loads the faces.
    ///
    /// # Errors
    /// [`ReportError::Font`] when a font program in the build is damaged.
    pub fn new() -> Result<Self, ReportError> {
        let features = SUBSTITUTIONS_OFF
            .iter()
            .map(|tag| Feature::new(Tag::from_bytes(tag), 0, ..))
            .collect();
        Ok(Self {
            faces: FaceSet::shared()?,
            cache: HashMap::new(),
            features,
        })
    }

    /// The faces.
    #[must_use]
    pub fn faces(&self) -> &FaceSet {
        self.faces
    }

    /// Text made printable; see [`clean`].
    #[must_use]
    pub fn clean(&self, text: &str) -> String {
        clean(text, self.faces)
    }

    /// Shapes cleaned text of one line.
    pub fn shape(&mut self, face: Face, text: &str) -> Rc<Shaped> {
        // One allocation for the key even on a hit: measured, it does not matter.
        let key = (face, text.to_owned());
        if let Some(known) = self.cache.get(&key) {
            return Rc::clone(known);
        }
        let shaped = Rc::new(self.shape_afresh(face, text));
        self.cache.insert(key, Rc::clone(&shaped));
        shaped
    }

    /// Width of one line of cleaned text at a size in points.
    pub fn width(&mut self, face: Face, size: f32, text: &str) -> f32 {
        self.shape(face, text).width * size / 1000.0
    }

    /// The text, or its beginning with an ellipsis, so that it fits a width in
    /// points. Line ends become spaces.
    pub fn fit(&mut self, face: Face, size: f32, text: &str, width: f32) -> String {
        let text = self.clean(text).replace('\n', " ");
        if self.width(face, size, &text) <= width {
            return text;
        }
        let room = (width - self.width(face, size, "…")).max(0.0) * 1000.0 / size;
        let shaped = self.shape(face, &text);
        let mut used = 0.0;
        let mut kept = String::new();
        for glyph in &shaped.glyphs {
            used += glyph.advance;
            if used > room {
                break;
            }
            if glyph.starts_cluster {
                kept.push(glyph.source);
            }
        }
        format!("{}…", kept.trim_end())
    }

    fn shape_afresh(&self, face: Face, text: &str) -> Shaped {
        let loaded = self.faces.get(face);
        let per_mille = 1000.0 / f32::from(loaded.metrics().units_per_em);
        let mut buffer = UnicodeBuffer::new();
        buffer.set_cluster_level(BufferClusterLevel::MonotoneGraphemes);
        buffer.push_str(text);
        // The faces have Latin, Greek and Cyrillic, all left to right.
        buffer.set_direction(rustybuzz::Direction::LeftToRight);
        let output = rustybuzz::shape(loaded.shaper(), &self.features, buffer);

        let mut shaped = Shaped::default();
        let mut last_cluster = None;
        for (info, position) in output.glyph_infos().iter().zip(output.glyph_positions()) {
            let starts_cluster = last_cluster != Some(info.cluster);
            last_cluster = Some(info.cluster);
            let at = usize::try_from(info.cluster).unwrap_or(0);
            let advance = units(position.x_advance) * per_mille;
            shaped.width += advance;
            shaped.glyphs.push(Glyph {
                id: u16::try_from(info.glyph_id).unwrap_or(0),
                advance,
                shift_x: units(position.x_offset) * per_mille,
                shift_y: units(position.y_offset) * per_mille,
                source: text
                    .get(at..)
                    .and_then(|rest| rest.chars().next())
                    .unwrap_or(' '),
                starts_cluster,
            });
        }
        shaped
    }
}

#[allow(clippy::cast_precision_loss)]
fn units(value: i32) -> f32 {
    value as f32
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn kerning_pulls_a_pair_together() {
        let mut set = Typesetter::new().unwrap();
        let apart = set.width(Face::Regular, 10.0, "A") + set.width(Face::Regular, 10.0, "V");
        assert!(set.width(Face::Regular, 10.0, "AV") < apart - 0.1);
    }

    #[test]
    fn one_glyph_for_one_letter() {
        let mut set = Typesetter::new().unwrap();
        for word in ["office", "fjord", "affiliate", "1/2", "->"] {
            let shaped = set.shape(Face::Regular, word);
            let copied: String = shaped.glyphs.iter().map(|glyph| glyph.source).collect();
            assert_eq!(copied, word);
        }
    }

    #[test]
    fn fitted_text_is_never_wider_than_asked() {
        let mut set = Typesetter::new().unwrap();
        let long = "Geothermal field of the very long named building ".repeat(9);
        for width in [0.0, 3.0, 20.0, 120.0, 400.0] {
            let fitted = set.fit(Face::SemiBold, 9.0, &long, width);
            let ellipsis = set.width(Face::SemiBold, 9.0, "…");
            assert!(set.width(Face::SemiBold, 9.0, &fitted) <= width.max(ellipsis) + 0.01);
        }
    }
}
