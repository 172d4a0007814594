//! Words of caution and notes: ground, sign and word.

use super::{
    Composer, Frame,
    display::{Item, Leg, Pen},
    lines::{set_lines, stack},
    list::circle,
    sheet::{AMBER, AMBER_PALE, BODY, DEEP, SLATE_PALE, SMALL, Style, TEXT},
    slab::{Keep, Slab, hold, space},
};
use crate::report::{
    document::{Align, Callout, CalloutKind, Emphasis, Text},
    fonts::Face,
};

/// Room between the edge of the ground and the words.
const PAD: f32 = 9.0;
/// Room for the sign at the left.
const SIGN: f32 = 22.0;

impl Composer<'_> {
    pub(super) fn callout(&mut self, callout: &Callout, x: f32, width: f32) -> Vec<Slab> {
        let (word, deep, ground) = match callout.kind {
            CalloutKind::Caution => (self.words.caution.as_str(), AMBER, AMBER_PALE),
            CalloutKind::Note => (self.words.note.as_str(), DEEP, SLATE_PALE),
        };
        // Without a title the first words follow the word of its kind at once.
        let mut body = callout.body.as_slice();
        let (head, style): (Text, Style) = match (&callout.title, body) {
            (Some(title), _) => {
                let head = Text::plain(word).then(format!(" \u{2013} {title}"), Emphasis::None);
                (head, BODY.faced(Face::SemiBold).inked(deep))
            }
            (None, [first, rest @ ..]) => {
                body = rest;
                let mut head = Text::strong(word).then(" \u{2013} ", Emphasis::None);
                head.spans.extend(first.spans.iter().cloned());
                (head, BODY)
            }
            (None, []) => (Text::plain(word), BODY.faced(Face::SemiBold).inked(deep)),
        };
        let left = x + PAD + SIGN;
        let inner = width - 2.0 * PAD - SIGN;

        let mut slabs = vec![Slab::gap(PAD - 2.0)];
        let mut lines = stack(
            set_lines(&mut self.set, &head, style, inner),
            left,
            inner,
            Align::Start,
        );
        if let Some(first) = lines.first_mut() {
            first
                .items
                .extend(sign(callout.kind, x + PAD + 6.5, BODY.leading / 2.0 + 0.4));
        }
        hold(&mut lines, Keep::Next);
        if let Some(last) = lines.last_mut() {
            last.keep = Keep::Next;
        }
        slabs.extend(lines);
        for text in body {
            let mut lines = stack(
                set_lines(&mut self.set, text, BODY, inner),
                left,
                inner,
                Align::Start,
            );
            space(&mut lines, 3.0, 3.0);
            slabs.extend(lines);
        }
        slabs.push(Slab::gap(PAD - 1.0));
        if let Some(first) = slabs.first_mut() {
            first.keep = Keep::Next;
        }
        // The ground ends under the last line, not under a line of its own.
        let count = slabs.len();
        if let Some(last_line) = slabs.get_mut(count.saturating_sub(2)) {
            last_line.keep = Keep::Next;
            last_line.after = 0.0;
        }
        hold(&mut slabs, Keep::Group);

        let frame = self.frames.len();
        self.frames.push(Frame {
            x,
            width,
            ground,
            bar: deep,
        });
        for slab in &mut slabs {
            slab.frame = Some(frame);
        }
        space(&mut slabs, 6.0, 9.0);
        slabs
    }
}

impl Composer<'_> {
    /// A caution in short: a small sign and its words, without ground.
    pub(super) fn reminder(&mut self, text: &Text, x: f32, width: f32) -> Vec<Slab> {
        let (left, inner) = (x + SIGN - 4.0, width - SIGN + 4.0);
        let style = SMALL.inked(TEXT);
        let lines = set_lines(&mut self.set, text, style, inner);
        let mut slabs = stack(lines, left, inner, Align::Start);
        if let Some(first) = slabs.first_mut() {
            let middle = style.leading / 2.0 + 0.4;
            first
                .items
                .extend(sign(CalloutKind::Caution, x + 7.0, middle));
        }
        hold(&mut slabs, Keep::Group);
        space(&mut slabs, 1.0, 2.0);
        slabs
    }
}

/// A triangle with a stroke and a dot, or a circle with a dot and a stroke.
fn sign(kind: CalloutKind, x: f32, y: f32) -> Vec<Item> {
    let outline = |legs, ink| Item::Path {
        legs,
        closed: true,
        fill: None,
        pen: Some(Pen::round(ink, 1.1)),
    };
    let dot = |y, ink| Item::Path {
        legs: circle((x, y), 0.8),
        closed: true,
        fill: Some(ink),
        pen: None,
    };
    match kind {
        CalloutKind::Caution => vec![
            outline(
                vec![
                    Leg::Move(x, y - 6.0),
                    Leg::Line(x + 6.6, y + 5.0),
                    Leg::Line(x - 6.6, y + 5.0),
                ],
                AMBER,
            ),
            Item::line((x, y - 2.2), (x, y + 1.2), Pen::round(AMBER, 1.3)),
            dot(y + 3.1, AMBER),
        ],
        CalloutKind::Note => vec![
            outline(circle((x, y), 5.6), DEEP),
            dot(y - 2.6, DEEP),
            Item::line((x, y - 0.2), (x, y + 2.9), Pen::round(DEEP, 1.3)),
        ],
    }
}
