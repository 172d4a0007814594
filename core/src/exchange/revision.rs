//! The states of a record and their order.
//!
//! A state names all states it came from. One state is over another exactly when
//! it names it; states of which neither names the other were made apart, and
//! both are kept. The name of a state is a digest of what it is, so the same
//! step taken on two devices is the same state, and no clock decides anything.

use crate::named::named;
use serde::{Deserialize, Serialize};
use sha2::{Digest as _, Sha256};
use std::collections::{BTreeMap, BTreeSet};
use std::fmt;
use uuid::Uuid;

named! {
    /// The kinds of record that travel. What may name a person at a home stands in
    /// kinds of its own, so that leaving it out leaves the rest whole. A record
    /// comes after those it needs.
    #[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
    #[serde(rename_all = "snake_case")]
    pub enum Kind {
        /// Facts of a site that name nobody.
        Site = "site",
        /// Name, address and contact at a site.
        Household = "household",
        /// A system.
        System = "system",
        /// How it was commissioned.
        Commissioning = "commissioning",
        /// A visit.
        Visit = "visit",
        /// Free words of a visit.
        Words = "words",
        /// Whether a fix held.
        FollowUp = "follow_up",
        /// A photo with its picture.
        Photo = "photo",
        /// The signatures of a visit.
        Signatures = "signatures",
    }
}

impl Kind {
    /// Whether it may name a person at a home.
    #[must_use]
    pub fn is_personal(self) -> bool {
        matches!(
            self,
            Self::Household | Self::Words | Self::Photo | Self::Signatures
        )
    }
}

/// The first half of a SHA-256 (FIPS 180-4).
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Digest(pub [u8; 16]);

impl Digest {
    /// Of bytes.
    #[must_use]
    pub fn of(bytes: &[u8]) -> Self {
        Self::first_half(Sha256::new_with_prefix(bytes))
    }

    fn first_half(hasher: Sha256) -> Self {
        let mut half = [0; 16];
        half.copy_from_slice(&hasher.finalize()[..16]);
        Self(half)
    }
}

impl fmt::Display for Digest {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|byte| write!(f, "{byte:02x}"))
    }
}
impl fmt::Debug for Digest {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, f)
    }
}
impl std::str::FromStr for Digest {
    type Err = ();
    fn from_str(text: &str) -> Result<Self, ()> {
        let plain = |b: &u8| b.is_ascii_digit() || (b'a'..=b'f').contains(b);
        if text.len() != 32 || !text.bytes().all(|b| plain(&b)) {
            return Err(());
        }
        let value = u128::from_str_radix(text, 16).map_err(|_| ())?;
        Ok(Self(value.to_be_bytes()))
    }
}
impl Serialize for Digest {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}
impl<'de> Deserialize<'de> for Digest {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        let bad = |()| serde::de::Error::custom("32 digits 0-9, a-f are wanted");
        text.parse().map_err(bad)
    }
}

/// One state of a record.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Revision {
    /// Its name.
    pub id: Digest,
    /// Every state that it came from.
    pub past: BTreeSet<Digest>,
    /// What the record says, as one compact JSON text.
    pub content: String,
    /// When it was noted, UTC; shown to people, and breaks ties.
    pub made_at: String,
    /// The device that noted it.
    pub device: Uuid,
}

impl Revision {
    /// A state of a record that came from these states.
    #[must_use]
    pub fn new(
        kind: Kind,
        record: Uuid,
        past: BTreeSet<Digest>,
        content: String,
        made_at: String,
        device: Uuid,
    ) -> Self {
        Self {
            id: Self::name(kind, record, &past, &content),
            past,
            content,
            made_at,
            device,
        }
    }

    /// The name of a state: a digest of kind, record, past and content.
    #[must_use]
    pub fn name(kind: Kind, record: Uuid, past: &BTreeSet<Digest>, content: &str) -> Digest {
        let mut hasher = Sha256::new();
        hasher.update(kind.id());
        hasher.update([0]);
        hasher.update(record.as_bytes());
        hasher.update((past.len() as u64).to_be_bytes());
        for earlier in past {
            hasher.update(earlier.0);
        }
        hasher.update(content);
        Digest::first_half(hasher)
    }
}

/// The states that are left of two sets: all but those that another one names.
///
/// Commutative, associative and idempotent, because it is the set of maximal
/// elements of a union under a partial order.
#[must_use]
pub fn merge(ours: Vec<Revision>, theirs: Vec<Revision>) -> Vec<Revision> {
    let mut all: BTreeMap<Digest, Revision> = BTreeMap::new();
    for one in ours.into_iter().chain(theirs) {
        match all.get_mut(&one.id) {
            // The same step on two devices: whoever took it first is named.
            Some(known) => {
                if (&one.made_at, one.device) < (&known.made_at, known.device) {
                    known.made_at = one.made_at;
                    known.device = one.device;
                }
            }
            None => {
                all.insert(one.id, one);
            }
        }
    }
    let seen: BTreeSet<Digest> = all.values().flat_map(|one| one.past.clone()).collect();
    all.into_values()
        .filter(|one| !seen.contains(&one.id))
        .collect()
}

/// The state that stands until somebody decides: the latest, ties by name.
#[must_use]
pub fn shown(revisions: &[Revision]) -> Option<&Revision> {
    revisions
        .iter()
        .max_by(|a, b| (&a.made_at, a.id).cmp(&(&b.made_at, b.id)))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn state(past: &[&Revision], content: &str, at: &str) -> Revision {
        let past = past
            .iter()
            .flat_map(|one| one.past.iter().copied().chain([one.id]))
            .collect();
        let record = Uuid::from_u128(1);
        let device = Uuid::from_u128(9);
        Revision::new(Kind::Visit, record, past, content.into(), at.into(), device)
    }

    #[test]
    fn a_later_state_replaces_what_it_has_seen_and_nothing_else() {
        let first = state(&[], "1", "a");
        let left = state(&[&first], "2", "b");
        let right = state(&[&first], "3", "c");
        let both = merge(vec![left.clone()], vec![right.clone(), first.clone()]);
        assert_eq!(both.len(), 2);
        assert_eq!(shown(&both), Some(&right));
        let decided = state(&[&left, &right], "2", "d");
        assert_eq!(merge(both, vec![decided.clone()]), [decided]);
    }

    #[test]
    fn an_edit_beside_an_open_conflict_keeps_the_other_side() {
        let first = state(&[], "1", "a");
        let left = state(&[&first], "2", "b");
        let right = state(&[&first], "3", "c");
        let edited = state(&[&right], "4", "d");
        let later = state(&[&edited], "5", "e");
        let left_over = merge(vec![left.clone(), right], vec![edited, later.clone()]);
        assert_eq!(left_over.len(), 2);
        assert!(left_over.contains(&left) && left_over.contains(&later));
    }

    #[test]
    fn names_are_read_back() {
        let digest = Digest::of(b"abc");
        // First half of the SHA-256 of "abc", FIPS 180-4 example.
        assert_eq!(digest.to_string(), "ba7816bf8f01cfea414140de5dae2223");
        assert_eq!(digest.to_string().parse(), Ok(digest));
        assert!(
            "BA7816BF8F01CFEA414140DE5DAE2223"
                .parse::<Digest>()
                .is_err()
        );
    }
}
