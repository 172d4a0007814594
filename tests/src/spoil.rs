//! Spoils good input: what a hostile or broken file may look like.
//!
//! Coverage-guided fuzzers need a nightly compiler; random bytes alone never
//! come past the first bracket of a JSON file. So good examples are changed a
//! little, many times over, the same for the same seed.

use crate::invented::Dice;

/// Numbers at which programs break.
const NUMBERS: &[&str] = &[
    "0",
    "-0",
    "-1",
    "1e308",
    "-1e308",
    "1e309",
    "1e-320",
    "NaN",
    "Infinity",
    "9007199254740993",
    "18446744073709551616",
    "0.1e",
    "1_000",
    "00",
    "1,5",
    "٣",
];

/// Words at which programs break.
const WORDS: &[&str] = &[
    "",
    "null",
    "true",
    "[]",
    "{}",
    "\"\"",
    "\"\\u0000\"",
    "\"\\ud800\"",
    "../../etc/passwd",
    "=HYPERLINK(\"x\")",
    "<script>",
    "\u{202e}\u{200d}\u{1f9ea}",
    "%n%s",
    "'; DROP TABLE visit;--",
    "'''",
    "\"\"\"",
    "[[[[[[[[[[[[[[[[",
    "{\"a\":{\"a\":{\"a\":{\"a\":",
];

/// One good input, changed in one to six places; sometimes joined with another.
pub fn spoil(good: &[u8], other: &[u8], dice: &mut Dice) -> Vec<u8> {
    let mut bytes = good.to_vec();
    for _ in 0..=dice.below(6) {
        change(&mut bytes, other, dice);
    }
    bytes
}

fn change(bytes: &mut Vec<u8>, other: &[u8], dice: &mut Dice) {
    let at = dice.below(bytes.len() + 1);
    match dice.below(10) {
        0 => bytes.truncate(at),
        1 if at < bytes.len() => bytes[at] ^= 1 << dice.below(8),
        2 => bytes.insert(at, dice.below(256) as u8),
        3 if at < bytes.len() => {
            let end = (at + 1 + dice.below(40)).min(bytes.len());
            bytes.drain(at..end);
        }
        4 => {
            let from = dice.below(other.len() + 1);
            let piece = &other[from..(from + dice.below(200)).min(other.len())];
            bytes.splice(at..at, piece.iter().copied());
        }
        5 => {
            // The same line or entry twice.
            let end = (at + 1 + dice.below(200)).min(bytes.len());
            let piece = bytes[at.min(end)..end].to_vec();
            bytes.splice(at..at, piece);
        }
        6 => {
            let depth = 1 << dice.below(15);
            let bracket = if dice.chance(0.5) { b'[' } else { b'{' };
            bytes.splice(at..at, std::iter::repeat_n(bracket, depth));
        }
        7 => replace(bytes, at, WORDS, dice, |byte| {
            byte.is_ascii_alphanumeric() || *byte == b'_'
        }),
        _ => replace(bytes, at, NUMBERS, dice, |byte| {
            byte.is_ascii_digit() || matches!(*byte, b'.' | b'-')
        }),
    }
}

/// Puts one of `words` in the place of the next run of bytes of a kind.
fn replace(
    bytes: &mut Vec<u8>,
    from: usize,
    words: &[&str],
    dice: &mut Dice,
    of_kind: impl Fn(&u8) -> bool,
) {
    let Some(start) = bytes[from..].iter().position(&of_kind) else {
        return;
    };
    let start = from + start;
    let length = bytes[start..]
        .iter()
        .take_while(|byte| of_kind(byte))
        .count();
    let word = words[dice.below(words.len())];
    bytes.splice(start..start + length, word.bytes());
}
