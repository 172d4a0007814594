//! Whether two written names or addresses are likely the same.

use super::distance;

/// Words that say the same in addresses, the long form first.
const SHORT: &[(&str, &str)] = &[
    ("street", "st"),
    ("road", "rd"),
    ("avenue", "ave"),
    ("lane", "ln"),
    ("drive", "dr"),
    ("court", "ct"),
    ("highway", "hwy"),
    ("north", "n"),
    ("south", "s"),
    ("east", "e"),
    ("west", "w"),
];
/// Letters that may differ in every this many. Judgement.
const LETTERS_PER_SLIP: usize = 6;

/// Whether two texts are likely the same name or address: the same words in any
/// order, whatever their case, common short forms and a slip of the pen in
/// every six letters. Numbers must agree exactly. Two empty texts are not alike.
pub fn alike(one: &str, other: &str) -> bool {
    let [mut one, other] = [words(one), words(other)];
    if one.is_empty() || one.len() != other.len() {
        return false;
    }
    other.iter().all(|word| {
        let place = one.iter().position(|candidate| same(candidate, word));
        place.map(|place| one.swap_remove(place)).is_some()
    })
}

fn words(text: &str) -> Vec<String> {
    text.to_lowercase()
        .split(|c: char| !c.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(|word| {
            let short = SHORT.iter().find(|(long, _)| *long == word);
            short.map_or(word, |(_, short)| short).to_owned()
        })
        .collect()
}

fn same(one: &str, other: &str) -> bool {
    if one == other {
        return true;
    }
    let numeric = |word: &str| word.chars().any(|c| c.is_ascii_digit());
    if numeric(one) || numeric(other) {
        return false;
    }
    let longest = one.chars().count().max(other.chars().count());
    distance(one, other) <= longest / LETTERS_PER_SLIP
}

#[cfg(test)]
mod tests {
    use super::alike;

    #[test]
    fn the_same_place_written_in_two_ways_is_alike() {
        for (one, other) in [
            ("4 Mill Lane", "4 mill ln."),
            ("Invented Barn", "invented barn"),
            ("Larch Hollow, unit B", "Unit B, Larch Hollow"),
            ("12 North Orchard Road", "12 N Ochard Rd"),
        ] {
            assert!(alike(one, other), "{one} / {other}");
        }
    }

    #[test]
    fn other_places_are_not() {
        for (one, other) in [
            ("", ""),
            ("4 Mill Lane", "14 Mill Lane"),
            ("Larch Hollow, unit B", "Larch Hollow, unit C"),
            ("Mill", "Hill"),
            ("Invented Barn", "Invented Barn East"),
        ] {
            assert!(!alike(one, other), "{one} / {other}");
        }
    }
}
