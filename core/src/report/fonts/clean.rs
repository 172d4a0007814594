//! Makes any text printable: line ends unified, control characters removed,
//! and characters that the faces cannot draw replaced visibly.

/// Most combining marks kept on one letter. Two are needed for the languages
/// written in Latin letters; piles of them would climb out of the line.
const MAX_MARKS: usize = 2;

/// From how many unprintable letters in a row a box is drawn for each instead
/// of its code: a sentence in another script stays a readable length.
const CODES_IN_A_ROW: usize = 3;

/// What stands for one letter of a script the faces do not have.
const BOX: char = '\u{25a1}';

/// Tells which characters can be drawn.
pub trait Coverage {
    /// Whether the character has a glyph.
    fn covers(&self, character: char) -> bool;
}

/// Returns text that can be drawn, in which `\n` is the only control character.
///
/// - line and paragraph separators become `\n`, tabs and other white space a
///   space; control and invisible formatting characters vanish;
/// - a character without a glyph becomes its code, `[U+1F600]`; in a run of
///   more than three, each becomes a drawn box.
#[must_use]
pub fn clean(text: &str, coverage: &impl Coverage) -> String {
    let mut out = String::with_capacity(text.len());
    let mut missing: Vec<char> = Vec::new();
    let mut marks = 0;
    let mut characters = text.chars().peekable();
    while let Some(character) = characters.next() {
        let printable = match character {
            '\r' => {
                characters.next_if_eq(&'\n');
                Some('\n')
            }
            '\n' | '\u{85}' | '\u{2028}' | '\u{2029}' => Some('\n'),
            '\t' | '\u{b}' | '\u{c}' => Some(' '),
            _ if invisible(character) => None,
            _ => Some(character),
        };
        let Some(character) = printable else { continue };
        if combining(character) {
            marks += 1;
            if marks > MAX_MARKS {
                continue;
            }
        } else {
            marks = 0;
        }
        if let Some(same) = same_meaning(character) {
            flush(&mut missing, &mut out);
            out.push_str(same);
        } else if character == '\n' || coverage.covers(character) {
            // A space between two unprintable words does not end the run.
            if character == ' ' && missing.len() > CODES_IN_A_ROW {
                missing.push(' ');
                continue;
            }
            flush(&mut missing, &mut out);
            out.push(character);
        } else {
            missing.push(character);
        }
    }
    flush(&mut missing, &mut out);
    out
}

fn flush(missing: &mut Vec<char>, out: &mut String) {
    let boxes = missing.len() > CODES_IN_A_ROW;
    for character in missing.drain(..) {
        match character {
            ' ' => out.push(' '),
            _ if boxes => out.push(BOX),
            _ => out.push_str(&format!("[U+{:04X}]", u32::from(character))),
        }
    }
}

/// Characters that draw nothing: controls, soft hyphen, joiners, direction
/// marks, variation selectors, tags, byte order mark, private noncharacters.
fn invisible(character: char) -> bool {
    character.is_control()
        || matches!(character,
            '\u{ad}' | '\u{34f}' | '\u{61c}' | '\u{115f}' | '\u{1160}' | '\u{17b4}' | '\u{17b5}'
            | '\u{180b}'..='\u{180f}' | '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}'
            | '\u{2060}'..='\u{206f}' | '\u{3164}' | '\u{fe00}'..='\u{fe0f}' | '\u{feff}'
            | '\u{ffa0}' | '\u{fff0}'..='\u{fffb}' | '\u{1d173}'..='\u{1d17a}'
            | '\u{e0000}'..='\u{e0fff}')
}

fn combining(character: char) -> bool {
    matches!(character,
        '\u{300}'..='\u{36f}' | '\u{483}'..='\u{489}' | '\u{1ab0}'..='\u{1aff}'
        | '\u{1dc0}'..='\u{1dff}' | '\u{20d0}'..='\u{20ff}' | '\u{fe20}'..='\u{fe2f}')
}

/// Signs that Unicode defines as compatible with a plainer spelling.
fn same_meaning(character: char) -> Option<&'static str> {
    Some(match character {
        '\u{2103}' => "°C",
        '\u{2109}' => "°F",
        '\u{212a}' => "K",
        '\u{212b}' => "Å",
        '\u{2000}'..='\u{200a}' | '\u{202f}' | '\u{205f}' | '\u{3000}' | '\u{1680}' => " ",
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    struct Latin;
    impl Coverage for Latin {
        fn covers(&self, character: char) -> bool {
            character < '\u{250}'
                || character == BOX
                || ('\u{300}'..='\u{304}').contains(&character)
        }
    }

    #[test]
    fn line_ends_become_one_kind() {
        assert_eq!(clean("a\r\nb\rc\u{2028}d", &Latin), "a\nb\nc\nd");
    }

    #[test]
    fn controls_and_direction_marks_vanish() {
        assert_eq!(
            clean("a\0\u{1b}[31mb\u{202e}c\u{feff}\u{7f}", &Latin),
            "a[31mbc"
        );
    }

    #[test]
    fn a_single_missing_sign_becomes_its_code() {
        assert_eq!(clean("ok \u{1f600}!", &Latin), "ok [U+1F600]!");
        assert_eq!(clean("\u{26a0}\u{fe0f}", &Latin), "[U+26A0]");
    }

    #[test]
    fn a_sentence_in_another_script_becomes_boxes() {
        let hebrew = "\u{5e9}\u{5dc}\u{5d5}\u{5dd} \u{5e2}\u{5d5}\u{5dc}\u{5dd}";
        assert_eq!(clean(hebrew, &Latin), "□□□□ □□□□");
    }

    #[test]
    fn piles_of_marks_are_cut() {
        let pile = format!("e{}", "\u{301}".repeat(40));
        assert_eq!(clean(&pile, &Latin), "e\u{301}\u{301}");
    }
}
