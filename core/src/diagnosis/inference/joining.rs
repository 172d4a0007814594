//! In which order the contributions of a large family are joined.
//!
//! A node depends on its parents through the union of their contributions
//! alone (see `cpt`), and unions may be joined in any grouping. The grouping
//! decides how large the tables of the tree become. It is found by eliminating
//! a simpler graph first, in which each large family is a star: one stand-in
//! beside each parent and beside whatever the node itself is joined with. That
//! is the graph of the multiplicative factorisation of the noisy-MAX (F. J. Díez
//! and S. F. Galán, "Efficient computation for the noisy MAX", Int. J. of
//! Intelligent Systems 18 (2003), from memory), whose terms have mixed signs.
//! Here only its elimination order is taken: wherever that elimination brings
//! two parts of a family together, their unions are joined into one hidden
//! variable. All tables stay probabilities, nothing is subtracted.

use super::order::{Adjacency, min_fill};

/// A family whose contributions are joined step by step.
pub(super) struct Family {
    /// The variables of the parents.
    pub(super) parents: Vec<usize>,
    /// The variables that the union is used together with.
    pub(super) beside: Vec<usize>,
    /// States of its union.
    pub(super) card: usize,
}

/// A part of a family's union.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Part {
    /// The contribution of the parent at this place of the family.
    Parent(usize),
    /// The union joined in this step.
    Step(usize),
}

/// Two parts of one family joined into one.
pub(super) struct Step {
    pub(super) family: usize,
    pub(super) parts: [Part; 2],
}

/// The steps in order, and what then remains of each family.
pub(super) struct Joining {
    pub(super) steps: Vec<Step>,
    pub(super) rest: Vec<Vec<Part>>,
}

/// What eliminating a variable brings together.
#[derive(Clone, Default)]
struct Gathered {
    scope: Vec<usize>,
    parts: Vec<(usize, Part)>,
    /// Families whose union is used here.
    used: Vec<usize>,
}

/// Finds the grouping for `families` beside tables over `scopes`, which are
/// sets of the first `cards.len()` variables.
pub(super) fn joining(cards: &[usize], scopes: &[&[usize]], families: &[Family]) -> Joining {
    let variables = cards.len();
    let mut star_cards = cards.to_vec();
    star_cards.extend(families.iter().map(|family| family.card));
    let mut graph = Adjacency::new(&star_cards);
    for scope in scopes {
        graph.join(scope);
    }
    let uses: Vec<Vec<usize>> = (variables..)
        .zip(families)
        .map(|(stand_in, family)| {
            for &parent in &family.parents {
                graph.join(&[parent, stand_in]);
            }
            let mut scope = family.beside.clone();
            scope.push(stand_in);
            graph.join(&scope);
            scope
        })
        .collect();
    let order = min_fill(graph, &star_cards).variables;
    let mut position = vec![0; order.len()];
    for (at, &variable) in order.iter().enumerate() {
        position[variable] = at;
    }
    let home = |scope: &[usize]| scope.iter().map(|&variable| position[variable]).min();
    let mut buckets = vec![Gathered::default(); order.len()];
    let mut put = |scope: &[usize], part: Option<(usize, Part)>, used: Option<usize>| {
        if let Some(at) = home(scope) {
            buckets[at].scope.extend(scope);
            buckets[at].parts.extend(part);
            buckets[at].used.extend(used);
        }
    };
    for scope in scopes {
        put(scope, None, None);
    }
    for (at, (family, scope)) in families.iter().zip(&uses).enumerate() {
        for (place, &parent) in family.parents.iter().enumerate() {
            let part = (at, Part::Parent(place));
            put(&[parent, variables + at], Some(part), None);
        }
        put(scope, None, Some(at));
    }
    let mut joining = Joining {
        steps: Vec::new(),
        rest: vec![Vec::new(); families.len()],
    };
    for (at, &variable) in order.iter().enumerate() {
        let merged = joining.merge(std::mem::take(&mut buckets[at]), variable, variables);
        if let Some(next) = home(&merged.scope) {
            buckets[next].scope.extend(merged.scope);
            buckets[next].parts.extend(merged.parts);
            buckets[next].used.extend(merged.used);
        }
    }
    joining
}

impl Joining {
    /// Joins what one elimination brings together.
    fn merge(&mut self, mut together: Gathered, variable: usize, variables: usize) -> Gathered {
        let Gathered { scope, parts, used } = &mut together;
        scope.sort_unstable();
        scope.dedup();
        scope.retain(|&other| other != variable);
        used.sort_unstable();
        used.dedup();
        parts.sort_by_key(|&(family, _)| family);
        let mut open = Vec::new();
        for same in parts.chunk_by(|a, b| a.0 == b.0) {
            let (family, first) = same[0];
            let joined = same[1..].iter().fold(first, |so_far, &(_, part)| {
                self.steps.push(Step {
                    family,
                    parts: [so_far, part],
                });
                Part::Step(self.steps.len() - 1)
            });
            if variables + family == variable || used.contains(&family) {
                self.rest[family].push(joined);
            } else {
                open.push((family, joined));
            }
        }
        used.retain(|&family| variables + family != variable);
        *parts = open;
        together
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_parent_is_joined_once() {
        let families = [
            Family {
                parents: vec![0, 1, 2, 3, 4],
                beside: vec![7],
                card: 2,
            },
            Family {
                parents: vec![2, 3, 5, 6],
                beside: Vec::new(),
                card: 4,
            },
        ];
        let joining = joining(&[2; 8], &[&[0, 5], &[6, 7]], &families);
        for (at, family) in families.iter().enumerate() {
            let steps = joining.steps.iter().filter(|step| step.family == at);
            let mut parts: Vec<Part> = steps.flat_map(|step| step.parts).collect();
            parts.extend(&joining.rest[at]);
            for place in 0..family.parents.len() {
                let times = parts.iter().filter(|&&part| part == Part::Parent(place));
                assert_eq!(times.count(), 1, "family {at} parent {place}");
            }
            for (number, step) in joining.steps.iter().enumerate() {
                let times = parts.iter().filter(|&&part| part == Part::Step(number));
                assert_eq!(times.count(), usize::from(step.family == at));
            }
        }
    }
}
