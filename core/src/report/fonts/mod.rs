//! The typefaces that every page is set in, and the measuring of text in them.
//!
//! Source Sans 3 is embedded in the program (SIL Open Font License 1.1, the
//! text of the licence lies beside the files in `assets/fonts`). The faces hold
//! Latin with accents, the degree and micro signs, superscripts, the true minus
//! and the comparison signs. What they do not hold is replaced visibly by
//! [`clean`].

mod clean;
mod shape;

use std::{collections::BTreeMap, sync::OnceLock};

use rustybuzz::ttf_parser::PlatformId;

pub use clean::{Coverage, clean};
pub use shape::{Glyph, Shaped, Typesetter};

use super::error::ReportError;

/// The weights and slopes in use. Few on purpose.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Face {
    /// Running text.
    Regular,
    /// Headings, labels that must be found at a glance.
    SemiBold,
    /// Emphasis, captions.
    Italic,
}

impl Face {
    /// Every face, in the order in which [`FaceSet`] holds them.
    pub const ALL: [Self; 3] = [Self::Regular, Self::SemiBold, Self::Italic];

    /// The font program as shipped.
    #[must_use]
    pub fn program(self) -> &'static [u8] {
        match self {
            Self::Regular => include_bytes!("../../../assets/fonts/SourceSans3-Regular.ttf"),
            Self::SemiBold => include_bytes!("../../../assets/fonts/SourceSans3-SemiBold.ttf"),
            Self::Italic => include_bytes!("../../../assets/fonts/SourceSans3-Italic.ttf"),
        }
    }

    /// The PostScript name, as a PDF font dictionary wants it.
    #[must_use]
    pub fn post_script_name(self) -> &'static str {
        match self {
            Self::Regular => "SourceSans3-Regular",
            Self::SemiBold => "SourceSans3-SemiBold",
            Self::Italic => "SourceSans3-It",
        }
    }

    pub(crate) fn index(self) -> usize {
        match self {
            Self::Regular => 0,
            Self::SemiBold => 1,
            Self::Italic => 2,
        }
    }
}

/// Vertical measures and slope of a face, in thousandths of an em.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Metrics {
    /// Font units to the em.
    pub units_per_em: u16,
    /// Ascender (positive).
    pub ascent: i16,
    /// Descender (negative).
    pub descent: i16,
    /// Height of the capitals.
    pub cap_height: i16,
    /// Box that holds every glyph: left, bottom, right, top.
    pub bounds: [i16; 4],
    /// Slant in degrees, negative for a face that leans right.
    pub italic_angle: i16,
    /// Weight class, 400 for regular.
    pub weight: u16,
}

/// One parsed face with the way back from a glyph to its character.
pub struct LoadedFace {
    face: rustybuzz::Face<'static>,
    characters: BTreeMap<u16, char>,
    metrics: Metrics,
}

impl LoadedFace {
    fn load(face: Face) -> Result<Self, ReportError> {
        let parsed = rustybuzz::Face::from_slice(face.program(), 0).ok_or(ReportError::Font {
            face: face.post_script_name(),
        })?;
        let characters = characters_of(&parsed);
        let metrics = metrics_of(&parsed);
        Ok(Self {
            face: parsed,
            characters,
            metrics,
        })
    }

    pub(crate) fn shaper(&self) -> &rustybuzz::Face<'static> {
        &self.face
    }

    /// Whether the face draws this character.
    #[must_use]
    pub fn has(&self, character: char) -> bool {
        self.face.glyph_index(character).is_some()
    }

    /// The character that stands for a glyph when text is copied from a page.
    ///
    /// Some characters share a glyph (micro sign and Greek mu, space and
    /// no-break space, the hyphens); one of them is chosen, always the same.
    #[must_use]
    pub fn character_of(&self, glyph: u16) -> Option<char> {
        self.characters.get(&glyph).copied()
    }

    /// Advance width of a glyph in font units.
    #[must_use]
    pub fn advance(&self, glyph: u16) -> u16 {
        self.face
            .glyph_hor_advance(rustybuzz::ttf_parser::GlyphId(glyph))
            .unwrap_or(0)
    }

    /// Vertical measures and slope.
    #[must_use]
    pub fn metrics(&self) -> Metrics {
        self.metrics
    }
}

/// All faces, parsed once.
pub struct FaceSet {
    faces: [LoadedFace; 3],
}

impl FaceSet {
    /// Parses the embedded faces.
    ///
    /// # Errors
    /// [`ReportError::Font`] when a font program in the build is damaged.
    pub fn load() -> Result<Self, ReportError> {
        Ok(Self {
            faces: [
                LoadedFace::load(Face::Regular)?,
                LoadedFace::load(Face::SemiBold)?,
                LoadedFace::load(Face::Italic)?,
            ],
        })
    }

    /// The faces, parsed at first use and kept: they never change.
    ///
    /// # Errors
    /// See [`FaceSet::load`].
    pub fn shared() -> Result<&'static Self, ReportError> {
        static SHARED: OnceLock<FaceSet> = OnceLock::new();
        if let Some(known) = SHARED.get() {
            return Ok(known);
        }
        let loaded = Self::load()?;
        Ok(SHARED.get_or_init(|| loaded))
    }

    /// The parsed face.
    #[must_use]
    pub fn get(&self, face: Face) -> &LoadedFace {
        &self.faces[face.index()]
    }
}

impl Coverage for FaceSet {
    /// A character counts as covered when every face has it, so that emphasis
    /// cannot make a letter vanish.
    fn covers(&self, character: char) -> bool {
        self.faces.iter().all(|face| face.has(character))
    }
}

/// Where several characters share one glyph, the one a reader of the copied
/// text expects. Micro before mu: in this trade the glyph stands in µS/cm.
const PREFERRED: [char; 6] = [' ', '-', '\u{b5}', '=', '\u{394}', '\u{3a9}'];

fn characters_of(face: &rustybuzz::Face<'static>) -> BTreeMap<u16, char> {
    let mut characters = BTreeMap::new();
    let Some(cmap) = face.tables().cmap else {
        return characters;
    };
    for subtable in cmap.subtables {
        let unicode = subtable.platform_id == PlatformId::Unicode
            || (subtable.platform_id == PlatformId::Windows
                && matches!(subtable.encoding_id, 1 | 10));
        if !unicode {
            continue;
        }
        subtable.codepoints(|code| {
            if let (Some(character), Some(glyph)) =
                (char::from_u32(code), subtable.glyph_index(code))
            {
                // Codes arrive in rising order within a table; keep the lowest.
                let kept = characters.entry(glyph.0).or_insert(character);
                if character < *kept {
                    *kept = character;
                }
            }
        });
    }
    for character in PREFERRED {
        if let Some(glyph) = face.glyph_index(character) {
            characters.insert(glyph.0, character);
        }
    }
    characters
}

fn metrics_of(face: &rustybuzz::Face<'static>) -> Metrics {
    let bounds = face.global_bounding_box();
    #[allow(clippy::cast_possible_truncation)]
    let italic_angle = face.italic_angle().round() as i16;
    Metrics {
        units_per_em: u16::try_from(face.units_per_em()).unwrap_or(1000),
        ascent: face.ascender(),
        descent: face.descender(),
        cap_height: face.capital_height().unwrap_or_else(|| face.ascender()),
        bounds: [bounds.x_min, bounds.y_min, bounds.x_max, bounds.y_max],
        italic_angle,
        weight: face.weight().to_number(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_face_has_the_signs_of_the_trade() {
        let faces = FaceSet::load().unwrap();
        for sign in "°µ−±×÷·≤≥≈²³⁻¹½¼‑–—…•→←↑↓✓éñüçÅß¿¡ΔΩ".chars()
        {
            assert!(faces.covers(sign), "{sign} U+{:04X}", u32::from(sign));
        }
    }

    #[test]
    fn shared_glyphs_stand_for_the_expected_character() {
        let faces = FaceSet::load().unwrap();
        let regular = faces.get(Face::Regular);
        for (written, copied) in [
            ('\u{3bc}', '\u{b5}'),
            ('\u{b5}', '\u{b5}'),
            ('\u{a0}', ' '),
            ('\u{2011}', '-'),
            ('\u{2126}', '\u{3a9}'),
            ('\u{2212}', '\u{2212}'),
            ('°', '°'),
        ] {
            let glyph = regular.shaper().glyph_index(written).unwrap();
            assert_eq!(regular.character_of(glyph.0), Some(copied), "{written:?}");
        }
    }
}
