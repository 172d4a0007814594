//! Filling pages with slabs.

use super::{
    Frame,
    display::{Area, Bookmark, Item, Page},
    slab::{Keep, Slab},
};

/// Fills pages. Always at least one page.
pub(super) fn flow(
    slabs: Vec<Slab>,
    heads: &[Slab],
    frames: &[Frame],
    body: Area,
) -> (Vec<Page>, Vec<Bookmark>) {
    let mut press = Press {
        heads,
        frames,
        body,
        done: Vec::new(),
        bookmarks: Vec::new(),
        page: Open::default(),
    };
    let ends = Ends::of(&slabs);
    let mut until = 0;
    let (mut group_given_up, mut strong_given_up) = (0, 0);
    let lengths: Vec<Measure> = slabs.iter().map(Measure::of).collect();
    for (index, slab) in slabs.into_iter().enumerate() {
        if slab.starts_page && !press.page.is_empty() {
            press.turn();
        }
        if index >= until {
            // Start of a chain: decide once where it goes. The rest of a chain
            // that was given up is not a chain any more.
            let group = ends
                .group
                .get(index)
                .copied()
                .filter(|end| *end > group_given_up);
            let strong = ends
                .next
                .get(index)
                .copied()
                .filter(|end| *end > strong_given_up);
            let choices: Vec<usize> = [group, strong, Some(index + 1)]
                .into_iter()
                .flatten()
                .collect();
            until = press.room_for(&lengths, index, &choices);
            group_given_up = group.filter(|end| *end > until).unwrap_or(group_given_up);
            strong_given_up = strong.filter(|end| *end > until).unwrap_or(strong_given_up);
        } else if press.overflows(&lengths, index) {
            press.turn();
        }
        press.put(slab);
    }
    press.finish()
}

/// What matters of a slab for finding room.
#[derive(Debug, Clone, Copy)]
struct Measure {
    height: f32,
    before: f32,
    after: f32,
    head: Option<usize>,
}

impl Measure {
    fn of(slab: &Slab) -> Self {
        Self {
            height: slab.height,
            before: slab.before,
            after: slab.after,
            head: slab.head,
        }
    }
}

/// For each slab, where the chain that starts with it ends (exclusive).
struct Ends {
    next: Vec<usize>,
    group: Vec<usize>,
}

impl Ends {
    fn of(slabs: &[Slab]) -> Self {
        Self {
            next: Self::chains(slabs, Keep::Next),
            group: Self::chains(slabs, Keep::Group),
        }
    }

    fn chains(slabs: &[Slab], least: Keep) -> Vec<usize> {
        let mut ends = vec![0; slabs.len()];
        let mut end = slabs.len();
        for (index, slab) in slabs.iter().enumerate().rev() {
            let parted = slabs.get(index + 1).is_none_or(|next| next.starts_page);
            if slab.keep < least || parted {
                end = index + 1;
            }
            if let Some(place) = ends.get_mut(index) {
                *place = end;
            }
        }
        ends
    }
}

/// The page being filled.
#[derive(Default)]
struct Open {
    page: Page,
    /// Ground under slabs, painted before everything else.
    grounds: Vec<Item>,
    used: f32,
    after: f32,
    /// Frame of the last slab and where its ground starts and ends.
    ground: Option<(usize, f32, f32)>,
    filled: bool,
}

impl Open {
    fn is_empty(&self) -> bool {
        !self.filled
    }
}

struct Press<'a> {
    heads: &'a [Slab],
    frames: &'a [Frame],
    body: Area,
    done: Vec<Page>,
    bookmarks: Vec<Bookmark>,
    page: Open,
}

impl Press<'_> {
    /// Turns the page if the chain needs it. Tries the longest chain first:
    /// it goes here, or whole on a new page, or is given up for a shorter one.
    /// Returns where the chain that found room ends.
    fn room_for(&mut self, lengths: &[Measure], from: usize, ends: &[usize]) -> usize {
        for &end in ends {
            let Some(chain) = lengths.get(from..end) else {
                continue;
            };
            if self.height(chain, self.page.used, self.page.after, self.page.filled) <= self.limit()
            {
                return end;
            }
            if !self.page.filled {
                continue;
            }
            if self.height(chain, 0.0, 0.0, false) <= self.limit() {
                self.turn();
                return end;
            }
        }
        // A single slab higher than a page: cannot be helped, gets its own.
        if self.page.filled {
            self.turn();
        }
        from + 1
    }

    fn overflows(&self, lengths: &[Measure], index: usize) -> bool {
        let Some(chain) = lengths.get(index..=index) else {
            return false;
        };
        self.page.filled && self.height(chain, self.page.used, self.page.after, true) > self.limit()
    }

    fn limit(&self) -> f32 {
        self.body.height + 0.01
    }

    /// Where the chain would end if it went on from `used`.
    fn height(&self, chain: &[Measure], used: f32, after: f32, filled: bool) -> f32 {
        let (mut used, mut after, mut filled) = (used, after, filled);
        for slab in chain {
            if filled {
                used += after.max(slab.before);
            } else if let Some(head) = slab.head.and_then(|head| self.heads.get(head)) {
                used += head.height;
            }
            used += slab.height;
            after = slab.after;
            filled = true;
        }
        used
    }

    fn put(&mut self, slab: Slab) {
        if self.page.filled {
            self.page.used += self.page.after.max(slab.before);
        } else if let Some(head) = slab.head.and_then(|head| self.heads.get(head)) {
            let mut head = head.clone();
            head.shift(0.0, self.body.y + self.page.used);
            self.page.used += head.height;
            self.page.page.items.extend(head.items);
        }
        let top = self.body.y + self.page.used;
        self.set_ground(slab.frame, top, top + slab.height);
        if let Some((depth, title)) = &slab.bookmark {
            let (depth, title) = (*depth, title.clone());
            self.bookmarks.push(Bookmark {
                depth,
                title,
                page: self.done.len(),
                y: top,
            });
        }
        let mut slab = slab;
        slab.shift(0.0, top);
        self.page.page.items.append(&mut slab.items);
        self.page.page.links.append(&mut slab.links);
        // A space alone does not make a page begun: it vanishes at the top.
        self.page.filled |= slab.height > 0.0;
        self.page.used += slab.height;
        self.page.after = slab.after;
    }

    fn set_ground(&mut self, frame: Option<usize>, top: f32, bottom: f32) {
        match (self.page.ground, frame) {
            (Some((open, from, _)), Some(frame)) if open == frame => {
                self.page.ground = Some((frame, from, bottom));
            }
            (_, frame) => {
                self.close_ground();
                self.page.ground = frame.map(|frame| (frame, top, bottom));
            }
        }
    }

    fn close_ground(&mut self) {
        let Some((frame, top, bottom)) = self.page.ground.take() else {
            return;
        };
        let Some(frame) = self.frames.get(frame) else {
            return;
        };
        let area = Area {
            x: frame.x,
            y: top,
            width: frame.width,
            height: bottom - top,
        };
        self.page.grounds.push(Item::Fill {
            area,
            ink: frame.ground,
        });
        let bar = Area { width: 2.4, ..area };
        self.page.grounds.push(Item::Fill {
            area: bar,
            ink: frame.bar,
        });
    }

    fn turn(&mut self) {
        self.close_ground();
        let open = std::mem::take(&mut self.page);
        let mut items = open.grounds;
        items.extend(open.page.items);
        self.done.push(Page {
            items,
            links: open.page.links,
        });
    }

    fn finish(mut self) -> (Vec<Page>, Vec<Bookmark>) {
        if self.page.filled || self.done.is_empty() {
            self.turn();
        }
        (self.done, self.bookmarks)
    }
}
