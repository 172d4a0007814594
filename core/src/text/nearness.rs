//! How far one word is from another.

/// Letters to change, add or drop to make one word the other (Levenshtein).
pub fn distance(a: &str, b: &str) -> usize {
    let b: Vec<char> = b.chars().take(64).collect();
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, c) in a.chars().take(64).enumerate() {
        let mut before = row[0];
        row[0] = i + 1;
        for (j, other) in b.iter().enumerate() {
            let change = before + usize::from(c != *other);
            before = row[j + 1];
            row[j + 1] = change.min(before + 1).min(row[j] + 1);
        }
    }
    row[b.len()]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn changes_are_counted() {
        assert_eq!(distance("kitten", "sitting"), 3);
        assert_eq!(distance("", "abc"), 3);
    }
}
