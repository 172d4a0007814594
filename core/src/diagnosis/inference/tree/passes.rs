//! The sum over a tree, and the way back.

use super::walk::{largest, share, total};
use super::{MAX_STATES, Tree, Weights};

/// Room for one computation on a tree, to be used again and again.
#[derive(Clone, Default)]
pub(in crate::diagnosis::inference) struct Workspace {
    pub(super) values: Vec<f64>,
    pub(super) adjoints: Vec<f64>,
    /// The product in each cell of each bucket, after [`Tree::inward`].
    pub(super) products: Vec<f64>,
    /// The joint probabilities of the cells of one bucket.
    joint: Vec<f64>,
    /// By what each bucket's message was divided, and its logarithm.
    pub(super) divisors: Vec<(f64, f64)>,
    /// Buckets to be summed anew: something at or before them has changed.
    stale: Vec<bool>,
    /// P(variable = state | evidence), after [`Tree::outward`].
    pub(in crate::diagnosis::inference) beliefs: Vec<Weights>,
}

impl Tree {
    /// Makes `room` fit this tree.
    pub(in crate::diagnosis::inference) fn prepare(&self, room: &mut Workspace) {
        room.values.resize(self.arena, 0.0);
        room.divisors.resize(self.buckets.len(), (1.0, 0.0));
        room.beliefs.resize(self.cards.len(), [0.0; MAX_STATES]);
        room.products.resize(self.cells, 0.0);
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
        Some(room.divisors.iter().map(|&(_, log)| log).sum())
    }

    fn sum(&self, at: usize, room: &mut Workspace, unary: &[Weights]) -> Option<()> {
        let bucket = &self.buckets[at];
        let out = self.slots[bucket.out].clone();
        let (before, rest) = room.values.split_at_mut(out.start);
        let message = &mut rest[..out.len()];
        let products = &mut room.products[bucket.cells.clone()];
        let states = products.chunks_exact_mut(message.len());
        for (cells, &weight) in states.zip(&unary[bucket.variable]) {
            cells.fill(weight);
        }
        if let Some(fixed) = &bucket.fixed {
            let values = &self.fixed[fixed.cells.clone()];
            self.walks.multiply(&fixed.walk, products, values);
        }
        for input in &self.inputs[bucket.inputs.clone()] {
            let values = &before[self.slots[input.slot].clone()];
            self.walks.multiply(&input.walk, products, values);
        }
        add_states(products, message);
        let divisor = largest(message);
        if divisor <= 0.0 {
            return None;
        }
        // Scaling keeps long products of small numbers away from zero.
        for entry in message.iter_mut() {
            *entry /= divisor;
        }
        room.divisors[at] = (divisor, divisor.ln());
        Some(())
    }

    /// After [`Tree::inward`] on the same room: the probability of each state
    /// of each variable given the evidence, and, `with_evidence`, the
    /// derivatives for the evidence tables.
    pub(in crate::diagnosis::inference) fn outward(
        &self,
        room: &mut Workspace,
        with_evidence: bool,
    ) {
        room.adjoints.clear();
        room.adjoints.resize(self.arena, 0.0);
        for (at, bucket) in self.buckets.iter().enumerate().rev() {
            let out = self.slots[bucket.out].clone();
            if bucket.next.is_none() {
                // Its message was scaled to 1, so beliefs come out as probabilities.
                room.adjoints[out.start] = 1.0;
            }
            let (adjoints_in, adjoints_out) = room.adjoints.split_at_mut(out.start);
            let adjoints_out = &mut adjoints_out[..out.len()];
            let joint = &mut room.joint[..bucket.cells.len()];
            // The belief of a bucket sums to 1; making it so stops rounding
            // from building up along the way.
            let beside = &mut joint[..out.len()];
            for ((share, m), a) in beside.iter_mut().zip(&room.values[out]).zip(&*adjoints_out) {
                *share = m * a;
            }
            let whole = total(beside);
            let scale = if whole > 0.0 {
                1.0 / (whole * room.divisors[at].0)
            } else {
                0.0
            };
            let mut belief = [0.0; MAX_STATES];
            let products = room.products[bucket.cells.clone()].chunks_exact(adjoints_out.len());
            let states = joint.chunks_exact_mut(adjoints_out.len()).zip(products);
            for ((joint, products), sum) in states.zip(&mut belief) {
                for ((joint, product), adjoint) in
                    joint.iter_mut().zip(products).zip(&*adjoints_out)
                {
                    *joint = product * (adjoint * scale);
                }
                *sum = total(joint);
            }
            room.beliefs[bucket.variable] = belief;
            for input in &self.inputs[bucket.inputs.clone()] {
                if input.is_evidence && !with_evidence {
                    break;
                }
                let slot = self.slots[input.slot].clone();
                let adjoints = &mut adjoints_in[slot.clone()];
                self.walks.gather(&input.walk, joint, adjoints);
                for (adjoint, &value) in adjoints.iter_mut().zip(&room.values[slot]) {
                    *adjoint = share(*adjoint, value);
                }
            }
        }
    }

    /// The derivative of the scaled sum by an evidence table: how probable each
    /// of its cells is without it, up to a common factor.
    pub(in crate::diagnosis::inference) fn evidence_adjoint<'a>(
        &self,
        room: &'a Workspace,
        slot: usize,
    ) -> &'a [f64] {
        &room.adjoints[self.slots[slot].clone()]
    }
}

/// Sums a bucket's own variable out of its table.
pub(super) fn add_states(products: &[f64], message: &mut [f64]) {
    let (first, others) = products.split_at(message.len());
    message.copy_from_slice(first);
    for state in others.chunks_exact(message.len()) {
        for (sum, product) in message.iter_mut().zip(state) {
            *sum += product;
        }
    }
}
