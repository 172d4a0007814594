//! Slabs: the unbreakable pieces into which every block is cut before pages
//! are filled.

use super::display::{Item, Link};

/// How strongly a slab holds on to the next one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum Keep {
    /// Not at all.
    #[default]
    Free,
    /// Same group; given up where the group is longer than a page.
    Group,
    /// A heading with its text, a table head with its first row.
    Next,
}

/// An unbreakable piece of a page. Items relative to the top of the slab, x
/// already on the page.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Slab {
    /// Height.
    pub height: f32,
    /// Distance asked for above; dropped at the top of a page.
    pub before: f32,
    /// Distance asked for below. The larger of two meeting distances counts.
    pub after: f32,
    /// What is painted.
    pub items: Vec<Item>,
    /// Links.
    pub links: Vec<Link>,
    /// Hold on the next slab.
    pub keep: Keep,
    /// Table head to repeat when a page starts with this slab.
    pub head: Option<usize>,
    /// Coloured ground it stands on.
    pub frame: Option<usize>,
    /// Outline entry: depth and words.
    pub bookmark: Option<(usize, String)>,
    /// Whether it starts a page.
    pub starts_page: bool,
}

impl Slab {
    /// An empty slab of some height.
    #[must_use]
    pub fn gap(height: f32) -> Self {
        Self {
            height,
            ..Self::default()
        }
    }

    /// Moves the content down (or up) inside the slab.
    pub fn shift(&mut self, dx: f32, dy: f32) {
        for item in &mut self.items {
            item.shift(dx, dy);
        }
        for link in &mut self.links {
            link.area.x += dx;
            link.area.y += dy;
        }
    }
}

/// Sets the distances around a block.
pub fn space(slabs: &mut [Slab], before: f32, after: f32) {
    if let Some(first) = slabs.first_mut() {
        first.before = first.before.max(before);
    }
    if let Some(last) = slabs.last_mut() {
        last.after = last.after.max(after);
    }
}

/// Makes the slabs hold together with at least this strength.
pub fn hold(slabs: &mut [Slab], keep: Keep) {
    let count = slabs.len();
    for slab in slabs.iter_mut().take(count.saturating_sub(1)) {
        slab.keep = slab.keep.max(keep);
    }
}
