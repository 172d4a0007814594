//! From text with emphasis to lines of a given width.

use std::{ops::Range, rc::Rc};

use unicode_linebreak::{BreakOpportunity, linebreaks};

use super::{
    display::{Area, Item, Link, Run},
    sheet::{DEEP, SOFT, Style},
    slab::{Keep, Slab},
};
use crate::report::{
    document::{Align, Emphasis, Text},
    fonts::{Face, Shaped, Typesetter},
};

/// A set line. Runs relative to its top left corner.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Line {
    /// Its runs.
    pub runs: Vec<Run>,
    /// Its links.
    pub links: Vec<Link>,
    /// Width of the words, without trailing space.
    pub width: f32,
    /// Distance to the next line.
    pub height: f32,
}

impl Line {
    /// Puts the line at a place of a slab, aligned in a width.
    pub fn place(self, slab: &mut Slab, x: f32, y: f32, width: f32, align: Align) {
        let room = (width - self.width).max(0.0);
        let x = x + match align {
            Align::Start => 0.0,
            Align::Centre => room / 2.0,
            Align::End => room,
        };
        for mut run in self.runs {
            run.x += x;
            run.y += y;
            slab.items.push(Item::Run(run));
        }
        for mut link in self.links {
            link.area.x += x;
            link.area.y += y;
            slab.links.push(link);
        }
    }
}

/// Where the base line lies in a line, as a part of its height. The same for all
/// sizes, so that a label and its larger value stand on one line.
const BASE: f32 = 0.743;

/// Distance of the base line from the top of a line.
#[must_use]
pub fn baseline(style: Style) -> f32 {
    style.leading * BASE
}

/// Lines as slabs that avoid a single line at the end or start of a page.
#[must_use]
pub fn stack(lines: Vec<Line>, x: f32, width: f32, align: Align) -> Vec<Slab> {
    let count = lines.len();
    lines
        .into_iter()
        .enumerate()
        .map(|(index, line)| {
            let mut slab = Slab::gap(line.height);
            if count > 1 && (index == 0 || index + 2 == count) {
                slab.keep = Keep::Next;
            }
            line.place(&mut slab, x, 0.0, width, align);
            slab
        })
        .collect()
}

/// A stretch of the whole text in one style.
struct Stretch {
    range: Range<usize>,
    face: Face,
    style: Style,
    link: Option<String>,
}

/// A shaped word or space.
#[derive(Clone)]
struct Atom {
    shaped: Rc<Shaped>,
    text: String,
    stretch: usize,
}

impl Atom {
    fn width(&self, size: f32) -> f32 {
        self.shaped.width * size / 1000.0
    }
}

/// Sets text in lines no wider than `width`: breaks where Unicode allows (UAX
/// 14), and inside words that are longer than a line. Always at least one line.
pub fn set_lines(set: &mut Typesetter, text: &Text, style: Style, width: f32) -> Vec<Line> {
    let (whole, stretches) = stretches_of(set, text, style);
    let mut filler = Filler::new(style, width, &stretches);
    let mut from = 0;
    for (to, kind) in linebreaks(&whole) {
        let segment = whole.get(from..to).unwrap_or("");
        let bare = segment.trim_end_matches('\n');
        let word_end = from + bare.trim_end_matches(' ').len();
        let word = atoms(set, &whole, from..word_end, &stretches);
        let space = atoms(set, &whole, word_end..from + bare.len(), &stretches);
        filler.add(word, space);
        // The end of the text is always reported as a forced break.
        if kind == BreakOpportunity::Mandatory && (to < whole.len() || segment.ends_with('\n')) {
            filler.finish_line();
        }
        from = to;
    }
    filler.finish()
}

/// Width of the widest piece that cannot be broken by rule, and of the whole
/// text on one line.
pub fn extent(set: &mut Typesetter, text: &Text, style: Style) -> (f32, f32) {
    let (whole, stretches) = stretches_of(set, text, style);
    let (mut least, mut most, mut line) = (0f32, 0f32, 0f32);
    let mut from = 0;
    for (to, kind) in linebreaks(&whole) {
        let segment = whole.get(from..to).unwrap_or("");
        let bare = segment.trim_end_matches('\n');
        let word_end = from + bare.trim_end_matches(' ').len();
        let sum = |atoms: Vec<Atom>| atoms.iter().map(|atom| atom.width(style.size)).sum::<f32>();
        let word = sum(atoms(set, &whole, from..word_end, &stretches));
        let space = sum(atoms(set, &whole, word_end..from + bare.len(), &stretches));
        least = least.max(word);
        most = most.max(line + word);
        line = if kind == BreakOpportunity::Mandatory {
            0.0
        } else {
            line + word + space
        };
        from = to;
    }
    (least, most)
}

fn stretches_of(set: &Typesetter, text: &Text, style: Style) -> (String, Vec<Stretch>) {
    let mut whole = String::new();
    let mut stretches = Vec::new();
    for span in &text.spans {
        let start = whole.len();
        whole.push_str(&set.clean(&span.text));
        let face = match span.emphasis {
            Emphasis::None | Emphasis::Soft => style.face,
            Emphasis::Strong => Face::SemiBold,
            Emphasis::Slanted => Face::Italic,
        };
        let ink = match (&span.link, span.emphasis) {
            (Some(_), _) => DEEP,
            (None, Emphasis::Soft) => SOFT,
            (None, _) => style.ink,
        };
        let link = span.link.clone();
        stretches.push(Stretch {
            range: start..whole.len(),
            face,
            style: style.inked(ink),
            link,
        });
    }
    (whole, stretches)
}

fn atoms(
    set: &mut Typesetter,
    whole: &str,
    range: Range<usize>,
    stretches: &[Stretch],
) -> Vec<Atom> {
    let mut found = Vec::new();
    for (index, stretch) in stretches.iter().enumerate() {
        let from = range.start.max(stretch.range.start);
        let to = range.end.min(stretch.range.end);
        if from < to
            && let Some(text) = whole.get(from..to)
        {
            let shaped = set.shape(stretch.face, text);
            found.push(Atom {
                shaped,
                text: text.to_owned(),
                stretch: index,
            });
        }
    }
    found
}

struct Filler<'a> {
    style: Style,
    width: f32,
    stretches: &'a [Stretch],
    lines: Vec<Line>,
    words: Vec<Atom>,
    /// Spaces seen after the last word: kept only if another word follows.
    pending: Vec<Atom>,
    used: f32,
    pending_width: f32,
}

impl<'a> Filler<'a> {
    fn new(style: Style, width: f32, stretches: &'a [Stretch]) -> Self {
        Self {
            style,
            width,
            stretches,
            lines: Vec::new(),
            words: Vec::new(),
            pending: Vec::new(),
            used: 0.0,
            pending_width: 0.0,
        }
    }

    fn add(&mut self, word: Vec<Atom>, space: Vec<Atom>) {
        let size = self.style.size;
        let word_width: f32 = word.iter().map(|atom| atom.width(size)).sum();
        if !word.is_empty() {
            let fits = self.used + self.pending_width + word_width <= self.width + 0.01;
            if !fits && self.words.is_empty() {
                self.pending.clear();
                self.pending_width = 0.0;
            } else if !fits {
                self.finish_line();
            }
            if word_width > self.width + 0.01 {
                self.add_broken(word);
            } else {
                self.used += self.pending_width + word_width;
                self.words.append(&mut self.pending);
                self.pending_width = 0.0;
                self.words.extend(word);
            }
        }
        self.pending_width += space.iter().map(|atom| atom.width(size)).sum::<f32>();
        self.pending.extend(space);
    }

    /// A word longer than a line, cut between letters.
    fn add_broken(&mut self, word: Vec<Atom>) {
        let size = self.style.size;
        for atom in word {
            let mut piece = Shaped::default();
            let mut text = String::new();
            for glyph in &atom.shaped.glyphs {
                let advance = glyph.advance * size / 1000.0;
                let full = self.used + piece.width * size / 1000.0 + advance > self.width + 0.01;
                let begun = !piece.glyphs.is_empty() || !self.words.is_empty();
                if full && begun && glyph.starts_cluster {
                    self.take(&mut piece, &mut text, atom.stretch);
                    self.finish_line();
                }
                piece.glyphs.push(*glyph);
                piece.width += glyph.advance;
                text.push(glyph.source);
            }
            self.take(&mut piece, &mut text, atom.stretch);
        }
    }

    fn take(&mut self, piece: &mut Shaped, text: &mut String, stretch: usize) {
        let shaped = Rc::new(std::mem::take(piece));
        if !shaped.glyphs.is_empty() {
            let atom = Atom {
                shaped,
                text: std::mem::take(text),
                stretch,
            };
            self.used += atom.width(self.style.size);
            self.words.push(atom);
        }
    }

    fn finish_line(&mut self) {
        let mut line = Line {
            height: self.style.leading,
            ..Line::default()
        };
        let base = baseline(self.style);
        let mut x = 0.0;
        let mut last = None;
        for atom in self.words.drain(..) {
            let stretch = &self.stretches[atom.stretch];
            let width = atom.width(self.style.size);
            match line.runs.last_mut() {
                Some(run) if last == Some(atom.stretch) => {
                    run.glyphs.extend_from_slice(&atom.shaped.glyphs);
                    run.text.push_str(&atom.text);
                }
                _ => line.runs.push(Run {
                    face: stretch.face,
                    size: self.style.size,
                    ink: stretch.style.ink,
                    x,
                    y: base,
                    glyphs: atom.shaped.glyphs.clone(),
                    text: atom.text.clone(),
                }),
            }
            if let Some(address) = &stretch.link {
                match line.links.last_mut() {
                    Some(link) if last == Some(atom.stretch) => link.area.width += width,
                    _ => line.links.push(Link {
                        area: Area {
                            x,
                            y: 0.0,
                            width,
                            height: self.style.leading,
                        },
                        address: address.clone(),
                    }),
                }
            }
            last = Some(atom.stretch);
            x += width;
        }
        line.width = x;
        self.lines.push(line);
        self.pending.clear();
        self.used = 0.0;
        self.pending_width = 0.0;
    }

    fn finish(mut self) -> Vec<Line> {
        if !self.words.is_empty() || self.lines.is_empty() {
            self.finish_line();
        }
        self.lines
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::report::layout::sheet::BODY;

    fn words(lines: &[Line]) -> Vec<String> {
        lines
            .iter()
            .map(|line| line.runs.iter().map(|run| run.text.as_str()).collect())
            .collect()
    }

    #[test]
    fn breaks_at_spaces_and_drops_them_at_the_end() {
        let mut set = Typesetter::new().unwrap();
        let width = set.width(Face::Regular, BODY.size, "one two") + 0.1;
        let lines = set_lines(&mut set, &Text::plain("one two three"), BODY, width);
        assert_eq!(words(&lines), ["one two", "three"]);
        assert!(lines.iter().all(|line| line.width <= width));
    }

    #[test]
    fn a_forced_break_breaks_and_an_empty_text_has_one_line() {
        let mut set = Typesetter::new().unwrap();
        let lines = set_lines(&mut set, &Text::plain("a\n\nb"), BODY, 100.0);
        assert_eq!(words(&lines), ["a", "", "b"]);
        assert_eq!(set_lines(&mut set, &Text::default(), BODY, 100.0).len(), 1);
    }

    #[test]
    fn a_long_token_is_cut_without_loss() {
        let mut set = Typesetter::new().unwrap();
        let token = "SN00112233445566778899AABBCCDDEEFF".repeat(4);
        let lines = set_lines(&mut set, &Text::plain(token.clone()), BODY, 60.0);
        assert!(lines.len() > 5);
        assert!(lines.iter().all(|line| line.width <= 60.01));
        assert_eq!(words(&lines).concat(), token);
    }

    #[test]
    fn a_number_stays_with_its_unit_behind_a_no_break_space() {
        let mut set = Typesetter::new().unwrap();
        let width = set.width(Face::Regular, BODY.size, "flow 12") + 1.0;
        let lines = set_lines(&mut set, &Text::plain("flow 12\u{a0}gpm"), BODY, width);
        assert_eq!(words(&lines), ["flow", "12\u{a0}gpm"]);
    }

    #[test]
    fn emphasis_makes_runs_on_one_line() {
        let mut set = Typesetter::new().unwrap();
        let text = Text::plain("press ")
            .then("slowly", Emphasis::Strong)
            .then(" now", Emphasis::None);
        let lines = set_lines(&mut set, &text, BODY, 400.0);
        assert_eq!(lines.len(), 1);
        assert_eq!(lines[0].runs.len(), 3);
        assert_eq!(lines[0].runs[1].face, Face::SemiBold);
        let end = lines[0].runs[0].x + lines[0].runs[0].width();
        assert!((lines[0].runs[1].x - end).abs() < 0.01);
    }
}
