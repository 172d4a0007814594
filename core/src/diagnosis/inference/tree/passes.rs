//! The sum over a tree, and the way back.

use super::walk::{largest, put_product, reciprocal};
use super::{MAX_STATES, Tree, Weights};

/// Room for one computation on a tree, to be used again and again.
#[derive(Default)]
pub(in crate::diagnosis::inference) struct Workspace {
    /// The evidence tables, then the messages.
    values: Vec<f64>,
    /// The probability of each cell of `values` given the evidence, after
    /// [`Tree::outward`].
    pub(super) marginals: Vec<f64>,
    /// The probability of each state of each bucket's variable given those of
    /// its message and the evidence behind it, after [`Tree::inward`].
    pub(super) conditionals: Vec<f64>,
    /// The joint probabilities of the cells of one bucket.
    joint: Vec<f64>,
    /// The natural logarithm of what each bucket's message was divided by.
    logs: Vec<f64>,
    /// Buckets to be summed anew: something at or before them has changed.
    stale: Vec<bool>,
    /// P(variable = state | evidence), after [`Tree::outward`].
    pub(in crate::diagnosis::inference) beliefs: Vec<Weights>,
}

impl Workspace {
    /// Another to go on with from the last sum. What the way back found is left
    /// out: it finds it anew.
    pub(in crate::diagnosis::inference) fn again(&self) -> Self {
        Self {
            values: self.values.clone(),
            marginals: Vec::new(),
            conditionals: self.conditionals.clone(),
            joint: vec![0.0; self.joint.len()],
            logs: self.logs.clone(),
            stale: self.stale.clone(),
            beliefs: vec![[0.0; MAX_STATES]; self.beliefs.len()],
        }
    }
}

impl Tree {
    /// Makes `room` fit this tree.
    pub(in crate::diagnosis::inference) fn prepare(&self, room: &mut Workspace) {
        room.values.resize(self.arena, 0.0);
        room.logs.resize(self.buckets.len(), 0.0);
        room.beliefs.resize(self.cards.len(), [0.0; MAX_STATES]);
        room.conditionals.clear();
        room.conditionals.reserve(self.cells);
        room.joint.resize(self.largest(), 0.0);
        room.stale.clear();
        room.stale.resize(self.buckets.len(), true);
    }

    /// Says that the weights of a variable are not those of the last sum.
    pub(in crate::diagnosis::inference) fn touch(&self, room: &mut Workspace, variable: usize) {
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
    pub(in crate::diagnosis::inference) fn set_evidence(
        &self,
        room: &mut Workspace,
        slot: usize,
        values: &[f64],
    ) {
        room.values[self.slots[slot].clone()].copy_from_slice(values);
        self.spoil(room, self.bucket_of_evidence[slot]);
    }

    /// Makes an evidence table say nothing.
    pub(in crate::diagnosis::inference) fn silence(&self, room: &mut Workspace, slot: usize) {
        room.values[self.slots[slot].clone()].fill(1.0);
        self.spoil(room, self.bucket_of_evidence[slot]);
    }

    /// Sums everything: the natural logarithm of the sum over all variables of
    /// the product of all tables and of `unary`, or `None` if that sum is 0.
    /// Only buckets at or behind a change are summed anew; the messages of the
    /// others stand from the last time.
    pub(in crate::diagnosis::inference) fn inward(
        &self,
        room: &mut Workspace,
        unary: &[Weights],
    ) -> Option<f64> {
        for at in 0..self.buckets.len() {
            if room.stale[at] {
                // It stays stale if the sum is 0, and so do all behind it.
                self.sum(at, room, unary)?;
                room.stale[at] = false;
            }
        }
        Some(room.logs.iter().sum())
    }

    fn sum(&self, at: usize, room: &mut Workspace, unary: &[Weights]) -> Option<()> {
        let bucket = &self.buckets[at];
        let out = self.slots[bucket.out].clone();
        let (before, rest) = room.values.split_at_mut(out.start);
        let message = &mut rest[..out.len()];
        let inputs = &self.inputs[bucket.inputs.clone()];
        let mut weights = unary[bucket.variable];
        for input in inputs.iter().filter(|input| input.is_of_variable) {
            let values = &before[self.slots[input.slot].clone()];
            for (weight, value) in weights.iter_mut().zip(values) {
                *weight *= value;
            }
        }
        let states = 0..self.cards[bucket.variable];
        for (weight, state) in weights.into_iter().zip(states) {
            let cells = bucket.cells.start + state * message.len();
            // The first time around there is nothing yet to write over.
            if let Some(cells) = room.conditionals.get_mut(cells..cells + message.len()) {
                cells.fill(weight);
            } else {
                room.conditionals.resize(cells + message.len(), weight);
            }
        }
        let products = &mut room.conditionals[bucket.cells.clone()];
        if let Some(fixed) = &bucket.fixed {
            let values = &self.fixed[fixed.cells.clone()];
            self.walks.multiply(&fixed.walk, products, values);
        }
        for input in inputs.iter().filter(|input| !input.is_of_variable) {
            let values = &before[self.slots[input.slot].clone()];
            self.walks.multiply(&input.walk, products, values);
        }
        message.copy_from_slice(&products[..message.len()]);
        add_states(products, message);
        let divisor = largest(message);
        if divisor <= 0.0 {
            return None;
        }
        // Scaling keeps long products of small numbers away from zero.
        let scale = reciprocal(divisor);
        let whole = &mut room.joint[..message.len()];
        for (entry, whole) in message.iter_mut().zip(&mut *whole) {
            *whole = reciprocal(*entry);
            *entry *= scale;
        }
        for cells in products.chunks_exact_mut(whole.len()) {
            for (cell, whole) in cells.iter_mut().zip(&*whole) {
                *cell *= whole;
            }
        }
        room.logs[at] = -scale.ln();
        Some(())
    }

    /// After [`Tree::inward`] on the same room: the probability of each state
    /// of each variable given the evidence, and, `with_evidence`, of each cell
    /// of the evidence tables.
    pub(in crate::diagnosis::inference) fn outward(
        &self,
        room: &mut Workspace,
        with_evidence: bool,
    ) {
        room.marginals.clear();
        room.marginals.resize(self.arena, 0.0);
        for bucket in self.buckets.iter().rev() {
            let out = self.slots[bucket.out].clone();
            if bucket.next.is_none() {
                room.marginals[out.start] = 1.0;
            }
            let (before, rest) = room.marginals.split_at_mut(out.start);
            let behind = &rest[..out.len()];
            let joint = &mut room.joint[..bucket.cells.len()];
            let conditionals = room.conditionals[bucket.cells.clone()].chunks_exact(behind.len());
            let states = joint.chunks_exact_mut(behind.len()).zip(conditionals);
            let belief = &mut room.beliefs[bucket.variable];
            for ((joint, conditionals), belief) in states.zip(&mut *belief) {
                *belief = put_product(conditionals, behind, joint);
            }
            for input in &self.inputs[bucket.inputs.clone()] {
                if input.is_evidence && !with_evidence {
                    break;
                }
                let marginals = &mut before[self.slots[input.slot].clone()];
                if input.is_of_variable {
                    let states = marginals.len();
                    marginals.copy_from_slice(&belief[..states]);
                } else {
                    self.walks.gather(&input.walk, joint, marginals);
                }
            }
        }
    }

    /// The probability of each cell of an evidence table given all evidence.
    pub(in crate::diagnosis::inference) fn evidence_marginal<'a>(
        &self,
        room: &'a Workspace,
        slot: usize,
    ) -> &'a [f64] {
        &room.marginals[self.slots[slot].clone()]
    }
}

/// Sums a bucket's own variable out of its table, whose first state is in the
/// message already.
pub(super) fn add_states(products: &[f64], message: &mut [f64]) {
    for state in products.chunks_exact(message.len()).skip(1) {
        for (sum, product) in message.iter_mut().zip(state) {
            *sum += product;
        }
    }
}
