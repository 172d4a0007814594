//! Photos in rows.

use std::sync::Arc;

use super::{
    Composer,
    display::{Area, Item},
    lines::set_lines,
    rows::{Cell, Finish, row},
    sheet::CAPTION,
    slab::{Keep, Slab, space},
};
use crate::report::document::{Align, PhotoEntry};

/// Distance between photos.
const GAP: f32 = 12.0;
/// Largest part of the body's height that a photo takes.
const HIGHEST: f32 = 0.5;
/// Shape of a usual photo, width by height.
const USUAL: f32 = 4.0 / 3.0;
/// Narrowest place of a photo, width by height.
const NARROWEST: f32 = 0.5;
/// Widest place of a photo, width by height.
const WIDEST: f32 = 2.4;
/// Photos are not enlarged beyond this many pixels to the inch.
const COARSEST: f32 = 110.0;

impl Composer<'_> {
    pub(super) fn photos(
        &mut self,
        photos: &[PhotoEntry],
        per_row: usize,
        x: f32,
        width: f32,
    ) -> Vec<Slab> {
        let per_row = per_row.clamp(1, 4);
        let mut slabs = Vec::new();
        for entries in photos.chunks(per_row) {
            let row_height = self.row_height(entries, per_row, width);
            let sizes = entries
                .iter()
                .map(|entry| size(entry, slot(entry) * row_height, row_height));
            let height = sizes.map(|(_, high)| high).fold(0.0, f32::max);
            let mut slab = Slab::gap(height);
            let mut captions = Vec::new();
            let mut left = x;
            for entry in entries {
                let slot = slot(entry) * row_height;
                let (wide, high) = size(entry, slot, row_height);
                // Standing on one line, so that captions are near.
                let area = Area {
                    x: left,
                    y: height - high,
                    width: wide,
                    height: high,
                };
                slab.items.push(Item::Picture {
                    area,
                    photo: Arc::clone(&entry.photo),
                });
                if let Some(caption) = &entry.caption {
                    let lines = set_lines(&mut self.set, caption, CAPTION, slot);
                    captions.push(Cell {
                        x: left,
                        width: slot,
                        align: Align::Start,
                        lines,
                    });
                }
                left += slot + GAP;
            }
            if !captions.is_empty() {
                slab.keep = Keep::Next;
            }
            let mut cut = vec![slab];
            if !captions.is_empty() {
                cut.extend(row(captions, Finish::plain(4.0, 0.0, self.split_over())));
            }
            space(&mut cut, 6.0, 10.0);
            slabs.extend(cut);
        }
        slabs
    }

    /// The height at which the photos of a row, all equally high, fill the
    /// width; empty places of the last row count as usual photos.
    fn row_height(&self, entries: &[PhotoEntry], per_row: usize, width: f32) -> f32 {
        let count = |number: usize| f32::from(u8::try_from(number).unwrap_or(u8::MAX));
        let empty = count(per_row.saturating_sub(entries.len())) * USUAL;
        let shapes: f32 = entries.iter().map(slot).sum::<f32>() + empty;
        let room = width - GAP * count(per_row - 1);
        (room / shapes.max(NARROWEST)).clamp(1.0, self.sheet.body.height * HIGHEST)
    }
}

/// Width of the place of a photo, as a part of the row's height. Extreme shapes
/// get a less extreme place.
fn slot(entry: &PhotoEntry) -> f32 {
    let (across, down) = pixels(entry);
    (across / down).clamp(NARROWEST, WIDEST)
}

fn size(entry: &PhotoEntry, width: f32, height: f32) -> (f32, f32) {
    let (across, down) = pixels(entry);
    let scale = (width / across).min(height / down).min(72.0 / COARSEST);
    // Even a picture of extreme shape stays visible.
    ((across * scale).max(1.0), (down * scale).max(1.0))
}

#[allow(clippy::cast_precision_loss)]
fn pixels(entry: &PhotoEntry) -> (f32, f32) {
    let (across, down) = entry.photo.upright_size();
    (across.max(1) as f32, down.max(1) as f32)
}
