//! Head and foot lines, set when the number of pages is known.

use super::{
    display::{Item, Page, Pen},
    lines::set_lines,
    sheet::{EDGE, HAIR, Sheet},
    slab::Slab,
};
use crate::report::{
    document::{Align, Meta},
    fonts::Typesetter,
    words::Words,
};

/// Distance between the foot's words and the page number.
const GAP: f32 = 16.0;

pub(super) fn edges(
    set: &mut Typesetter,
    sheet: &Sheet,
    meta: &Meta,
    words: &Words,
    pages: &mut [Page],
) {
    let count = pages.len();
    let area = sheet.margins;
    let foot = area.bottom() - EDGE.leading;
    for (index, page) in pages.iter_mut().enumerate() {
        let mut slab = Slab::default();
        if index > 0 && !meta.running_head.trim().is_empty() {
            line(
                set,
                &meta.running_head,
                area.x,
                area.y,
                area.width,
                Align::Start,
                &mut slab,
            );
            let y = area.y + EDGE.leading + 3.5;
            slab.items.push(Item::line(
                (area.x, y),
                (area.right(), y),
                Pen::solid(HAIR, 0.5),
            ));
        }
        let number = words.page_of(index + 1, count);
        let room = area.width * 0.5;
        let number = set.fit(EDGE.face, EDGE.size, &number, room);
        let wide = set.width(EDGE.face, EDGE.size, &number);
        line(
            set,
            &number,
            area.right() - wide,
            foot,
            wide + 0.1,
            Align::Start,
            &mut slab,
        );
        line(
            set,
            &meta.running_foot,
            area.x,
            foot,
            area.width - wide - GAP,
            Align::Start,
            &mut slab,
        );
        page.items.append(&mut slab.items);
    }
}

fn line(
    set: &mut Typesetter,
    text: &str,
    x: f32,
    y: f32,
    width: f32,
    align: Align,
    slab: &mut Slab,
) {
    let fitted = set.fit(EDGE.face, EDGE.size, text, width);
    if fitted.trim().is_empty() {
        return;
    }
    // Fitted with a hair more room, so that rounding cannot break the line.
    if let Some(line) = set_lines(set, &fitted.into(), EDGE, width + 1.0)
        .into_iter()
        .next()
    {
        line.place(slab, x, y, width, align);
    }
}
