//! The faces as they go into a file: only the glyphs in use, renumbered.

use std::collections::{BTreeMap, BTreeSet};

use printpdf::{FontId, FontMetrics, ParsedFont, PdfFont, PdfFontMap};
use subsetter::{GlyphRemapper, subset};

use crate::report::{
    error::ReportError,
    fonts::{Face, FaceSet, Glyph},
    layout::display::Pages,
};

/// The subset faces of one file.
pub(super) struct Fonts {
    subsets: BTreeMap<Face, Subset>,
}

struct Subset {
    font: ParsedFont,
    /// From glyph number in the face to number in the subset.
    numbers: BTreeMap<u16, u16>,
    /// Advance widths in thousandths of an em, by number in the face.
    widths: BTreeMap<u16, f32>,
    /// What is copied for a glyph, by number in the face.
    characters: BTreeMap<u16, char>,
}

/// A glyph ready for a page stream.
pub(super) struct Coded {
    pub number: u16,
    pub width: f32,
    pub character: char,
}

impl Fonts {
    /// Subsets of the faces with the glyphs of these pages.
    pub fn used_in(pages: &Pages, faces: &FaceSet) -> Result<Self, ReportError> {
        let mut used: BTreeMap<Face, BTreeMap<u16, char>> = BTreeMap::new();
        for run in pages.pages.iter().flat_map(|page| page.runs()) {
            let glyphs = used.entry(run.face).or_default();
            for glyph in &run.glyphs {
                glyphs.entry(glyph.id).or_insert(glyph.source);
            }
        }
        let mut subsets = BTreeMap::new();
        for (face, glyphs) in used {
            subsets.insert(face, Subset::new(face, &glyphs, faces)?);
        }
        Ok(Self { subsets })
    }

    pub fn register(&self, map: &mut PdfFontMap) {
        for (face, subset) in &self.subsets {
            map.map
                .insert(font_id(*face), PdfFont::new(subset.font.clone()));
        }
    }

    pub fn code(&self, face: Face, glyph: &Glyph) -> Option<Coded> {
        let subset = self.subsets.get(&face)?;
        Some(Coded {
            number: *subset.numbers.get(&glyph.id)?,
            width: *subset.widths.get(&glyph.id)?,
            character: *subset.characters.get(&glyph.id)?,
        })
    }
}

/// Resource name. Not F1 to F14, which the PDF library keeps for its own.
pub(super) fn font_id(face: Face) -> FontId {
    FontId(
        match face {
            Face::Regular => "Upright",
            Face::SemiBold => "Strong",
            Face::Italic => "Slanted",
        }
        .to_owned(),
    )
}

impl Subset {
    fn new(face: Face, glyphs: &BTreeMap<u16, char>, faces: &FaceSet) -> Result<Self, ReportError> {
        let loaded = faces.get(face);
        let metrics = loaded.metrics();
        let mut remapper = GlyphRemapper::new();
        let mut numbers = BTreeMap::new();
        let mut widths = BTreeMap::new();
        let mut characters = BTreeMap::new();
        let mut subset_widths = BTreeMap::new();
        let mut codes = BTreeMap::new();
        for (&glyph, &source) in glyphs {
            let number = remapper.remap(glyph);
            let advance = loaded.advance(glyph);
            let character = loaded.character_of(glyph).unwrap_or(source);
            numbers.insert(glyph, number);
            widths.insert(
                glyph,
                f32::from(advance) * 1000.0 / f32::from(metrics.units_per_em),
            );
            characters.insert(glyph, character);
            subset_widths.insert(number, advance);
            codes.insert(u32::from(character), number);
        }
        let program =
            subset(face.program(), 0, &remapper).map_err(|source| ReportError::Subset {
                face: face.post_script_name(),
                source,
            })?;
        let name = format!(
            "{}+{}",
            tag(glyphs.keys().copied().collect()),
            face.post_script_name()
        );
        let mut font = ParsedFont::with_glyph_data(
            program,
            0,
            Some(name),
            codes,
            subset_widths,
            metrics.units_per_em,
            FontMetrics {
                ascent: metrics.ascent,
                descent: metrics.descent,
            },
        );
        let [x_min, y_min, x_max, y_max] = metrics.bounds;
        let described = &mut font.pdf_font_metrics;
        (described.x_min, described.y_min) = (x_min, y_min);
        (described.x_max, described.y_max) = (x_max, y_max);
        described.us_weight_class = metrics.weight;
        Ok(Self {
            font,
            numbers,
            widths,
            characters,
        })
    }
}

/// Six capitals that differ between different subsets (ISO 32000-1, 9.6.4).
fn tag(glyphs: BTreeSet<u16>) -> String {
    let bytes: Vec<u8> = glyphs.into_iter().flat_map(u16::to_be_bytes).collect();
    let mut hash = super::finish::fold(&bytes, 0);
    (0..6)
        .map(|_| {
            let letter = u8::try_from(hash % 26).unwrap_or(0);
            hash /= 26;
            char::from(b'A' + letter)
        })
        .collect()
}
