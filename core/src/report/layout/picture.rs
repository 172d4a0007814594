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
        #[allow(clippy::cast_precision_loss)]
        let column = (width - GAP * (per_row - 1) as f32) / per_row as f32;
        let mut slabs = Vec::new();
        for entries in photos.chunks(per_row) {
            let mut slab = Slab::default();
            let mut captions = Vec::new();
            let mut left = x;
            for entry in entries {
                let (wide, high) = self.photo_size(entry, column);
                let area = Area {
                    x: left,
                    y: 0.0,
                    width: wide,
                    height: high,
                };
                slab.items.push(Item::Picture {
                    area,
                    photo: Arc::clone(&entry.photo),
                });
                slab.height = slab.height.max(high);
                if let Some(caption) = &entry.caption {
                    let lines = set_lines(&mut self.set, caption, CAPTION, column);
                    captions.push(Cell {
                        x: left,
                        width: column,
                        align: Align::Start,
                        lines,
                    });
                }
                left += column + GAP;
            }
            let mut cut = vec![slab];
            if !captions.is_empty() {
                cut[0].keep = Keep::Next;
                cut.extend(row(captions, Finish::plain(4.0, 0.0, self.split_over())));
            }
            space(&mut cut, 6.0, 10.0);
            slabs.extend(cut);
        }
        slabs
    }

    #[allow(clippy::cast_precision_loss)]
    fn photo_size(&self, entry: &PhotoEntry, column: f32) -> (f32, f32) {
        let (across, down) = entry.photo.upright_size();
        let (across, down) = (across.max(1) as f32, down.max(1) as f32);
        let room = self.sheet.body.height * HIGHEST;
        let scale = (column / across).min(room / down).min(72.0 / COARSEST);
        // Even a picture of extreme shape stays visible.
        ((across * scale).max(2.0), (down * scale).max(2.0))
    }
}
