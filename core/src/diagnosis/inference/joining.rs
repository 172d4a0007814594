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

/// What an elimination has brought together so far.
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
    let mut all: Vec<Gathered> = scopes
        .iter()
        .map(|scope| Gathered {
            scope: scope.to_vec(),
            parts: Vec::new(),
            used: Vec::new(),
        })
        .collect();
    for (at, family) in families.iter().enumerate() {
        let stand_in = variables + at;
        for (place, &parent) in family.parents.iter().enumerate() {
            all.push(Gathered {
                scope: vec![parent, stand_in],
                parts: vec![(at, Part::Parent(place))],
                used: Vec::new(),
            });
        }
        let mut scope = family.beside.clone();
        scope.push(stand_in);
        all.push(Gathered {
            scope,
            parts: Vec::new(),
            used: vec![at],
        });
    }
    let mut star_cards = cards.to_vec();
    star_cards.extend(families.iter().map(|family| family.card));
    let mut graph = Adjacency::new(&star_cards);
    for gathered in &all {
        graph.join(&gathered.scope);
    }
    let order = min_fill(graph, &star_cards).variables;
    let mut position = vec![0; order.len()];
    for (at, &variable) in order.iter().enumerate() {
        position[variable] = at;
    }
    let mut buckets: Vec<Vec<Gathered>> = Vec::new();
    buckets.resize_with(order.len(), Vec::new);
    let home = |scope: &[usize]| scope.iter().map(|&variable| position[variable]).min();
    for gathered in all {
        if let Some(at) = home(&gathered.scope) {
            buckets[at].push(gathered);
        }
    }
    let mut joining = Joining {
        steps: Vec::new(),
        rest: vec![Vec::new(); families.len()],
    };
    for (at, &variable) in order.iter().enumerate() {
        let merged = joining.merge(std::mem::take(&mut buckets[at]), variable, variables);
        if let Some(next) = home(&merged.scope) {
            buckets[next].push(merged);
        }
    }
    joining
}

impl Joining {
    /// Brings together what one elimination brings together.
    fn merge(&mut self, together: Vec<Gathered>, variable: usize, variables: usize) -> Gathered {
        let mut scope = Vec::new();
        let mut parts = Vec::new();
        let mut used = Vec::new();
        for gathered in together {
            scope.extend(gathered.scope);
            parts.extend(gathered.parts);
            used.extend(gathered.used);
        }
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
        Gathered {
            scope,
            parts: open,
            used,
        }
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
