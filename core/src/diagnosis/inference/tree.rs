//! Variable elimination with messages in both directions.
//!
//! Eliminating the variables one by one, each in its own *bucket*, sums the
//! product of all tables: the probability of the evidence. It is exact because
//! it only reorders that sum by the distributive law. On the way each bucket
//! keeps its table divided by its message: how probable each state of its
//! variable is, given those of the variables of the message and the evidence
//! behind. The way back multiplies that with how probable the cells of the message
//! are, which the bucket that took it has found out by then: that is the joint
//! probability of the bucket's variables given all evidence, and summed onto the
//! messages that it took itself it lets the next go on. (Where a message is 0
//! nothing behind it has any weight.) All numbers are non-negative and nothing is
//! subtracted, so each keeps its relative precision however improbable the
//! evidence is.
//!
//! Sources: R. Dechter, "Bucket elimination", Artificial Intelligence 113
//! (1999); S. Lauritzen and D. Spiegelhalter, "Local computations with
//! probabilities on graphical structures" (1988), whose set chain the divided
//! tables are. From memory of these.

use std::ops::Range;

use super::order::{Adjacency, Order, cheapest};

mod passes;
mod sounding;
mod walk;

pub(super) use passes::Workspace;
pub(super) use sounding::Sounding;
use walk::{Walk, Walks};

/// A table of non-negative numbers over some variables, the last varying fastest.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Table {
    pub(super) scope: Vec<usize>,
    pub(super) values: Vec<f64>,
}

/// Largest number of states of a variable.
pub(super) const MAX_STATES: usize = 4;

/// A weight for each state of a variable.
pub(super) type Weights = [f64; MAX_STATES];

/// What a bucket takes in: a message or an evidence table.
struct Input {
    slot: usize,
    walk: Walk,
    is_evidence: bool,
    /// It is over the bucket's own variable alone: no more than a weight of its states.
    is_of_variable: bool,
}

/// The product of the fixed tables of a bucket.
struct Fixed {
    cells: Range<usize>,
    walk: Walk,
}

/// One elimination. Its table has its own variable first, then those of its
/// message in the order in which they go: what is left to the end is shared by
/// many tables, and being last in all of them lets these run side by side.
struct Bucket {
    variable: usize,
    /// Where its table lies among those of all buckets.
    cells: Range<usize>,
    fixed: Option<Fixed>,
    inputs: Range<usize>,
    out: usize,
    /// The bucket that takes its message; none if that is a number.
    next: Option<usize>,
}

/// A compiled order of elimination over a set of tables.
pub(super) struct Tree {
    cards: Vec<usize>,
    buckets: Vec<Bucket>,
    inputs: Vec<Input>,
    walks: Walks,
    /// The fixed tables of all buckets.
    fixed: Vec<f64>,
    /// Cells of the tables of all buckets.
    cells: usize,
    /// Where each evidence table, then each message, lies in the value arena.
    slots: Vec<Range<usize>>,
    arena: usize,
    /// The bucket of each variable, and of each evidence table.
    bucket_of: Vec<usize>,
    bucket_of_evidence: Vec<Option<usize>>,
}

impl Tree {
    /// Compiles `fixed` tables, whose values never change, and `evidence`
    /// tables, of which only the scopes count here.
    pub(super) fn compile(cards: Vec<usize>, fixed: &[Table], evidence: &[Table]) -> Self {
        let mut graph = Adjacency::new(&cards);
        for table in fixed.iter().chain(evidence) {
            graph.join(&table.scope);
        }
        let Order {
            variables: order,
            cells,
        } = cheapest(graph, &cards);
        let mut position = vec![0; cards.len()];
        for (at, &variable) in order.iter().enumerate() {
            position[variable] = at;
        }
        let home = |scope: &[usize]| scope.iter().map(|&variable| position[variable]).min();

        let mut fixed_at: Vec<Vec<&Table>> = vec![Vec::new(); order.len()];
        for table in fixed {
            if let Some(at) = home(&table.scope) {
                fixed_at[at].push(table);
            }
        }
        let mut evidence_at: Vec<Vec<usize>> = vec![Vec::new(); order.len()];
        let mut messages_at: Vec<Vec<(usize, Vec<usize>)>> = vec![Vec::new(); order.len()];
        let bucket_of_evidence: Vec<Option<usize>> =
            evidence.iter().map(|table| home(&table.scope)).collect();
        let mut slots = Vec::with_capacity(evidence.len() + order.len());
        let mut arena = 0;
        for (slot, (table, bucket)) in evidence.iter().zip(&bucket_of_evidence).enumerate() {
            if let &Some(at) = bucket {
                evidence_at[at].push(slot);
            }
            slots.push(arena..arena + table.values.len());
            arena += table.values.len();
        }

        let mut tree = Self {
            cards,
            buckets: Vec::with_capacity(order.len()),
            inputs: Vec::with_capacity(evidence.len() + order.len()),
            // A place for each block of cells, for some tables in each bucket.
            walks: Walks::with_room(cells as usize / 2),
            fixed: Vec::new(),
            cells: 0,
            slots,
            arena,
            bucket_of_evidence,
            bucket_of: position.clone(),
        };
        for (at, &variable) in order.iter().enumerate() {
            let messages = std::mem::take(&mut messages_at[at]);
            // Messages before evidence, so that the outward pass may skip the latter.
            let inputs: Vec<(usize, &[usize])> = messages
                .iter()
                .map(|(slot, scope)| (*slot, scope.as_slice()))
                .chain(
                    evidence_at[at]
                        .iter()
                        .map(|&slot| (slot, evidence[slot].scope.as_slice())),
                )
                .collect();
            let own = fixed_at[at].iter().map(|table| table.scope.as_slice());
            let own = union(own, &position);
            let scopes = inputs.iter().map(|&(_, scope)| scope);
            let mut scope = union(scopes.chain([own.as_slice(), &[variable]]), &position);
            let out = tree.slots.len();
            let next = scope.get(1).map(|&next| position[next]);
            let product = (!own.is_empty()).then(|| tree.fix(&scope, &own, &fixed_at[at]));
            tree.push_bucket(&scope, next, product, &inputs);
            if let Some(next) = next {
                scope.remove(0);
                messages_at[next].push((out, scope));
            }
        }
        tree
    }

    /// Multiplies fixed tables, whose variables are `own`, for a bucket over `scope`.
    fn fix(&mut self, scope: &[usize], own: &[usize], tables: &[&Table]) -> Fixed {
        let start = self.fixed.len();
        self.fixed.resize(start + self.size(own), 1.0);
        let cells = start..self.fixed.len();
        for table in tables {
            let mut walks = Walks::default();
            let walk = walks.walk(own, &table.scope, &self.cards);
            walks.multiply(&walk, &mut self.fixed[cells.clone()], &table.values);
        }
        Fixed {
            cells,
            walk: self.walks.walk(scope, own, &self.cards),
        }
    }

    fn size(&self, scope: &[usize]) -> usize {
        scope.iter().map(|&variable| self.cards[variable]).product()
    }

    fn push_bucket(
        &mut self,
        scope: &[usize],
        next: Option<usize>,
        fixed: Option<Fixed>,
        inputs: &[(usize, &[usize])],
    ) {
        let evidence_count = self.bucket_of_evidence.len();
        let variable = scope[0];
        let card = self.cards[variable];
        let size = self.size(scope);
        let first_input = self.inputs.len();
        for &(slot, part) in inputs {
            self.inputs.push(Input {
                slot,
                walk: self.walks.walk(scope, part, &self.cards),
                is_evidence: slot < evidence_count,
                is_of_variable: part == [variable],
            });
        }
        let out = self.slots.len();
        self.slots.push(self.arena..self.arena + size / card);
        self.arena += size / card;
        self.buckets.push(Bucket {
            variable,
            cells: self.cells..self.cells + size,
            fixed,
            inputs: first_input..self.inputs.len(),
            out,
            next,
        });
        self.cells += size;
    }

    /// Cells of all buckets: the cost of one pass.
    pub(super) fn cells(&self) -> usize {
        self.cells
    }

    /// Cells of the largest bucket.
    pub(super) fn largest(&self) -> usize {
        self.buckets
            .iter()
            .map(|bucket| bucket.cells.len())
            .max()
            .unwrap_or(0)
    }
}

/// All variables of some scopes, each once, in the order in which they go.
fn union<'a>(scopes: impl Iterator<Item = &'a [usize]>, position: &[usize]) -> Vec<usize> {
    let mut all: Vec<usize> = scopes.flatten().copied().collect();
    all.sort_unstable_by_key(|&variable| position[variable]);
    all.dedup();
    all
}

#[cfg(test)]
mod tests;
