//! Variable elimination with messages in both directions.
//!
//! Eliminating the variables one by one, each in its own *bucket*, sums the
//! product of all tables: the probability of the evidence. It is exact because
//! it only reorders that sum by the distributive law. The way back computes,
//! for each bucket, the derivative of that sum with respect to the message the
//! bucket sent (reverse-mode differentiation, the same as the outward pass of
//! Shafer and Shenoy). Message times derivative, spread over the bucket's
//! table, is the joint probability of its variables with the evidence, and
//! summed onto what a message says, divided by the message, it is the derivative
//! for that message. (Where a message is 0 nothing behind it has any weight, and
//! its derivative is not needed.) All numbers are non-negative and nothing is
//! subtracted, so each keeps its relative precision however improbable the
//! evidence is.
//!
//! Sources: R. Dechter, "Bucket elimination", Artificial Intelligence 113
//! (1999); P. Shenoy and G. Shafer, "Axioms for probability and belief-function
//! propagation" (1990); A. Darwiche, "A differential approach to inference in
//! Bayesian networks", J. ACM 50 (2003). From memory of these.

use std::ops::Range;

use super::order::{Adjacency, cheapest};

mod sounding;

pub(super) use sounding::Sounding;

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

struct Input {
    slot: usize,
    map: Range<usize>,
    is_evidence: bool,
}

struct Bucket {
    variable: usize,
    card: usize,
    size: usize,
    fixed: usize,
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
    maps: Vec<u32>,
    fixed: Vec<f64>,
    /// Where each evidence table, then each message, lies in the value arena.
    slots: Vec<Range<usize>>,
    arena: usize,
    /// The bucket of each variable, and of each evidence table.
    bucket_of: Vec<usize>,
    bucket_of_evidence: Vec<Option<usize>>,
}

/// Room for one computation on a tree, to be used again and again.
#[derive(Clone, Default)]
pub(super) struct Workspace {
    pub(super) values: Vec<f64>,
    adjoints: Vec<f64>,
    /// The product in each cell of each bucket, after [`Tree::inward`].
    products: Vec<f64>,
    /// The joint probabilities of the cells of one bucket.
    joint: Vec<f64>,
    /// By what each bucket's message was divided, and its logarithm.
    divisors: Vec<(f64, f64)>,
    /// Buckets to be summed anew: something at or before them has changed.
    stale: Vec<bool>,
    /// P(variable = state | evidence), after [`Tree::outward`].
    pub(super) beliefs: Vec<Weights>,
}

impl Tree {
    /// Compiles `fixed` tables, whose values never change, and `evidence`
    /// tables, of which only the scopes count here.
    pub(super) fn compile(cards: Vec<usize>, fixed: &[Table], evidence: &[Table]) -> Self {
        let mut graph = Adjacency::new(cards.len());
        for table in fixed.iter().chain(evidence) {
            graph.join(&table.scope);
        }
        let order = cheapest(graph, &cards).variables;
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
        let mut inputs_at: Vec<Vec<(usize, Vec<usize>)>> = vec![Vec::new(); order.len()];
        let mut slots = Vec::with_capacity(evidence.len() + order.len());
        let mut arena = 0;
        for (slot, table) in evidence.iter().enumerate() {
            if let Some(at) = home(&table.scope) {
                inputs_at[at].push((slot, table.scope.clone()));
            }
            slots.push(arena..arena + table.values.len());
            arena += table.values.len();
        }

        let mut tree = Self {
            cards,
            buckets: Vec::with_capacity(order.len()),
            inputs: Vec::new(),
            maps: Vec::new(),
            fixed: Vec::new(),
            slots,
            arena,
            bucket_of_evidence: evidence.iter().map(|table| home(&table.scope)).collect(),
            bucket_of: position.clone(),
        };
        for (at, &variable) in order.iter().enumerate() {
            let incoming = std::mem::take(&mut inputs_at[at]);
            let mut scope: Vec<usize> = fixed_at[at]
                .iter()
                .flat_map(|table| &table.scope)
                .chain(incoming.iter().flat_map(|(_, scope)| scope))
                .copied()
                .filter(|&other| other != variable)
                .collect();
            scope.sort_unstable();
            scope.dedup();
            let out = tree.slots.len();
            let next = home(&scope);
            if let Some(next) = next {
                inputs_at[next].push((out, scope.clone()));
            }
            tree.push_bucket(variable, scope, next, &fixed_at[at], incoming);
        }
        tree
    }

    fn push_bucket(
        &mut self,
        variable: usize,
        mut scope: Vec<usize>,
        next: Option<usize>,
        fixed: &[&Table],
        incoming: Vec<(usize, Vec<usize>)>,
    ) {
        let evidence_count = self.bucket_of_evidence.len();
        scope.push(variable);
        let card = self.cards[variable];
        let size: usize = scope.iter().map(|&other| self.cards[other]).product();
        let start = self.fixed.len();
        self.fixed.resize(start + size, 1.0);
        for table in fixed {
            let map = cell_map(&scope, &table.scope, &self.cards);
            for (value, &cell) in self.fixed[start..].iter_mut().zip(&map) {
                *value *= table.values[cell as usize];
            }
        }
        let first_input = self.inputs.len();
        // Messages before evidence, so that the outward pass may skip the latter.
        let (messages, evidence): (Vec<_>, Vec<_>) = incoming
            .into_iter()
            .partition(|(slot, _)| *slot >= evidence_count);
        for (slot, input_scope) in messages.into_iter().chain(evidence) {
            let from = self.maps.len();
            self.maps
                .extend(cell_map(&scope, &input_scope, &self.cards));
            self.inputs.push(Input {
                slot,
                map: from..self.maps.len(),
                is_evidence: slot < evidence_count,
            });
        }
        let out = self.slots.len();
        self.slots.push(self.arena..self.arena + size / card);
        self.arena += size / card;
        self.buckets.push(Bucket {
            variable,
            card,
            size,
            fixed: start,
            inputs: first_input..self.inputs.len(),
            out,
            next,
        });
    }

    /// Cells of all buckets: the cost of one pass.
    pub(super) fn cells(&self) -> usize {
        self.buckets.iter().map(|bucket| bucket.size).sum()
    }

    /// Cells of the largest bucket.
    pub(super) fn largest(&self) -> usize {
        self.buckets
            .iter()
            .map(|bucket| bucket.size)
            .max()
            .unwrap_or(0)
    }

    /// Makes `room` fit this tree.
    pub(super) fn prepare(&self, room: &mut Workspace) {
        room.values.resize(self.arena, 0.0);
        room.adjoints.resize(self.arena, 0.0);
        room.divisors.resize(self.buckets.len(), (1.0, 0.0));
        room.beliefs.resize(self.cards.len(), [0.0; MAX_STATES]);
        room.products.resize(self.fixed.len(), 0.0);
        room.joint.resize(self.largest(), 0.0);
        room.stale.clear();
        room.stale.resize(self.buckets.len(), true);
    }

    /// Says that the weights of a variable are not those of the last sum.
    pub(super) fn touch(&self, room: &mut Workspace, variable: usize) {
        self.spoil(room, self.bucket_of.get(variable).copied());
    }

    fn spoil(&self, room: &mut Workspace, bucket: Option<usize>) {
        let mut next = bucket;
        while let Some(at) = next.filter(|&at| !room.stale[at]) {
            room.stale[at] = true;
            next = self.buckets[at].next;
        }
    }

    /// Writes the values of an evidence table.
    pub(super) fn set_evidence(&self, room: &mut Workspace, slot: usize, values: &[f64]) {
        room.values[self.slots[slot].clone()].copy_from_slice(values);
        self.spoil(room, self.bucket_of_evidence[slot]);
    }

    /// Makes an evidence table say nothing.
    pub(super) fn silence(&self, room: &mut Workspace, slot: usize) {
        room.values[self.slots[slot].clone()].fill(1.0);
        self.spoil(room, self.bucket_of_evidence[slot]);
    }

    /// Sums everything: the natural logarithm of the sum over all variables of
    /// the product of all tables and of `unary`, or `None` if that sum is 0.
    /// Only buckets at or behind a change are summed anew; the messages of the
    /// others stand from the last time.
    pub(super) fn inward(&self, room: &mut Workspace, unary: &[Weights]) -> Option<f64> {
        for at in 0..self.buckets.len() {
            if room.stale[at] {
                // It stays stale if the sum is 0, and so do all behind it.
                self.sum(at, room, unary)?;
                room.stale[at] = false;
            }
        }
        Some(room.divisors.iter().map(|&(_, log)| log).sum())
    }

    fn sum(&self, at: usize, room: &mut Workspace, unary: &[Weights]) -> Option<()> {
        let bucket = &self.buckets[at];
        let out = self.slots[bucket.out].clone();
        let weights = &unary[bucket.variable];
        let cells = bucket.fixed..bucket.fixed + bucket.size;
        let (before, rest) = room.values.split_at_mut(out.start);
        let message = &mut rest[..out.len()];
        let products = &mut room.products[cells.clone()];
        spread(products, &self.fixed[cells], weights, bucket.card);
        for input in &self.inputs[bucket.inputs.clone()] {
            let values = &before[self.slots[input.slot].clone()];
            for (product, &at) in products.iter_mut().zip(&self.maps[input.map.clone()]) {
                *product *= values[at as usize];
            }
        }
        let mut largest = 0.0_f64;
        let rows = products.chunks_exact(bucket.card);
        for (entry, row) in message.iter_mut().zip(rows) {
            *entry = row.iter().sum();
            largest = largest.max(*entry);
        }
        if largest <= 0.0 {
            return None;
        }
        // Scaling keeps long products of small numbers away from zero.
        for entry in message.iter_mut() {
            *entry /= largest;
        }
        room.divisors[at] = (largest, largest.ln());
        Some(())
    }

    /// After [`Tree::inward`] on the same room: the probability of each state
    /// of each variable given the evidence, and, `with_evidence`, the
    /// derivatives for the evidence tables.
    pub(super) fn outward(&self, room: &mut Workspace, with_evidence: bool) {
        room.adjoints.fill(0.0);
        for (at, bucket) in self.buckets.iter().enumerate().rev() {
            let out = self.slots[bucket.out].clone();
            if bucket.next.is_none() {
                // Its message was scaled to 1, so beliefs come out as probabilities.
                room.adjoints[out.start] = 1.0;
            }
            let (adjoints_in, adjoints_out) = room.adjoints.split_at_mut(out.start);
            let adjoints_out = &adjoints_out[..out.len()];
            // The belief of a bucket sums to 1; making it so stops rounding
            // from building up along the way.
            let messages = &room.values[out];
            let total: f64 = messages.iter().zip(adjoints_out).map(|(m, a)| m * a).sum();
            let scale = if total > 0.0 {
                1.0 / (total * room.divisors[at].0)
            } else {
                0.0
            };
            let products = &room.products[bucket.fixed..bucket.fixed + bucket.size];
            let joint = &mut room.joint[..bucket.size];
            let mut belief = [0.0; MAX_STATES];
            let rows = products.chunks_exact(bucket.card);
            let joint_rows = joint.chunks_exact_mut(bucket.card);
            for ((row, joint), adjoint) in rows.zip(joint_rows).zip(adjoints_out) {
                let factor = adjoint * scale;
                for ((product, joint), sum) in row.iter().zip(joint).zip(&mut belief) {
                    *joint = product * factor;
                    *sum += *joint;
                }
            }
            room.beliefs[bucket.variable] = belief;
            for input in &self.inputs[bucket.inputs.clone()] {
                if input.is_evidence && !with_evidence {
                    break;
                }
                let slot = self.slots[input.slot].clone();
                let adjoints = &mut adjoints_in[slot.clone()];
                for (joint, &to) in joint.iter().zip(&self.maps[input.map.clone()]) {
                    adjoints[to as usize] += joint;
                }
                for (adjoint, &value) in adjoints.iter_mut().zip(&room.values[slot]) {
                    *adjoint = if value > 0.0 { *adjoint / value } else { 0.0 };
                }
            }
        }
    }

    /// The derivative of the scaled sum by an evidence table: how probable each
    /// of its cells is without it, up to a common factor.
    pub(super) fn evidence_adjoint<'a>(&self, room: &'a Workspace, slot: usize) -> &'a [f64] {
        &room.adjoints[self.slots[slot].clone()]
    }
}

/// Multiplies the rows of a table by the weights of its last variable.
fn spread(products: &mut [f64], fixed: &[f64], weights: &Weights, card: usize) {
    if let (2, &[no, yes, ..]) = (card, weights) {
        let pairs = products.chunks_exact_mut(2).zip(fixed.chunks_exact(2));
        for (product, fixed) in pairs {
            product[0] = fixed[0] * no;
            product[1] = fixed[1] * yes;
        }
        return;
    }
    let rows = products
        .chunks_exact_mut(card)
        .zip(fixed.chunks_exact(card));
    for (row, fixed) in rows {
        for ((product, fixed), weight) in row.iter_mut().zip(fixed).zip(weights) {
            *product = fixed * weight;
        }
    }
}

/// For each cell over `scope`, the cell over `part`, whose variables are among those of `scope`.
fn cell_map(scope: &[usize], part: &[usize], cards: &[usize]) -> Vec<u32> {
    let mut stride = 1;
    let mut strides = vec![0_u32; scope.len()];
    for variable in part.iter().rev() {
        if let Some(at) = scope.iter().position(|other| other == variable) {
            strides[at] = stride;
        }
        stride *= cards[*variable] as u32;
    }
    // From the last variable, which varies fastest, to the first: what is
    // there so far is repeated once for each further state.
    let mut map = Vec::with_capacity(scope.iter().map(|&variable| cards[variable]).product());
    map.push(0_u32);
    for (&variable, &stride) in scope.iter().zip(&strides).rev() {
        let so_far = map.len();
        for state in 1..cards[variable] as u32 {
            for at in 0..so_far {
                map.push(map[at] + state * stride);
            }
        }
    }
    map
}

#[cfg(test)]
mod tests;
