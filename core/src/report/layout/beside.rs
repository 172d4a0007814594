//! Pieces beside each other.

use super::{
    Composer, NARROWEST,
    slab::{Slab, space},
};
use crate::report::document::Block;

/// Distance between pieces.
const GAP: f32 = 20.0;
/// Room around the row.
const AROUND: f32 = 8.0;

impl Composer<'_> {
    /// Each piece in its column. They become one slab; where that would be higher
    /// than a page, or the columns too narrow, they stand below each other.
    pub(super) fn beside(&mut self, parts: &[Vec<Block>], x: f32, width: f32) -> Vec<Slab> {
        #[allow(clippy::cast_precision_loss)]
        let count = parts.len().max(1) as f32;
        let each = (width - GAP * (count - 1.0)) / count;
        let (heads, frames) = (self.heads.len(), self.frames.len());
        let mut whole = Slab::default();
        let mut left = x;
        for part in parts {
            let column = merged(self.blocks(part, left, each));
            left += each + GAP;
            whole.height = whole.height.max(column.height);
            whole.items.extend(column.items);
            whole.links.extend(column.links);
            whole.bookmark = whole.bookmark.or(column.bookmark);
        }
        // Grounds and table heads belong to slabs of their own.
        let plain = self.heads.len() == heads && self.frames.len() == frames;
        if plain && each >= NARROWEST && whole.height <= self.sheet.body.height {
            let mut slabs = vec![whole];
            space(&mut slabs, AROUND, AROUND);
            return slabs;
        }
        let parts = parts.iter();
        parts.flat_map(|part| self.blocks(part, x, width)).collect()
    }
}

/// Slabs one below the other as one.
fn merged(slabs: Vec<Slab>) -> Slab {
    let mut whole = Slab::default();
    let mut after = 0.0;
    for mut slab in slabs {
        if whole.height > 0.0 {
            whole.height += slab.before.max(after);
        }
        slab.shift(0.0, whole.height);
        whole.height += slab.height;
        after = slab.after;
        whole.items.append(&mut slab.items);
        whole.links.append(&mut slab.links);
        whole.bookmark = whole.bookmark.or(slab.bookmark);
    }
    whole
}
