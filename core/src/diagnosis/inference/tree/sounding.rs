//! What the sum becomes if a few variables are weighted anew, at little cost.
//!
//! A changed weight changes the messages from its bucket onward and no others.
//! By what ratio, the tables left by the sum tell: a new message is to the old one
//! as the mean of the new weights, each state taken as probable as it was. Where
//! the ways of all changes have met, the rest of the sum is as it was, and the
//! mean over the cells of the last message is the ratio of the sums. So the changes
//! are followed to that bucket and not to the last, which is where the large tables
//! are, and nothing grows small on the way.

use super::passes::add_states;
use super::{MAX_STATES, Tree, Weights, Workspace};
use std::cmp::Reverse;
use std::collections::BinaryHeap;

/// Room for soundings, to be used again and again.
#[derive(Default)]
pub(in crate::diagnosis::inference) struct Sounding {
    /// By how much the weights of each bucket's variable are multiplied.
    factors: Vec<Weights>,
    /// New messages over old, one after another.
    ratios: Vec<f64>,
    /// Where those of each bucket begin, if its message has changed.
    changed: Vec<Option<usize>>,
    is_waiting: Vec<bool>,
    waiting: BinaryHeap<Reverse<usize>>,
    /// Buckets to be cleared up after.
    seen: Vec<usize>,
    cells: Vec<f64>,
}

impl Tree {
    /// By what factor the sum changes if the states of these binary variables
    /// (false, true) are weighted so, factors of one variable multiplied.
    /// `settled` is a room after [`Tree::inward`] and [`Tree::outward`].
    pub(in crate::diagnosis::inference) fn sound(
        &self,
        settled: &Workspace,
        room: &mut Sounding,
        factors: &[(usize, [f64; 2])],
    ) -> f64 {
        room.fit(self);
        for &(variable, [no, yes]) in factors {
            let at = self.bucket_of[variable];
            room.factors[at][0] *= no;
            room.factors[at][1] *= yes;
            room.wait(at);
        }
        let mut total = 1.0;
        while let Some(Reverse(at)) = room.waiting.pop() {
            self.follow(at, settled, room);
            match self.buckets[at].next {
                Some(next) if !room.waiting.is_empty() => room.wait(next),
                _ => total *= self.change(at, settled, room),
            }
        }
        room.clear();
        total
    }

    /// Finds the ratios of a bucket's message from those of the messages it takes.
    fn follow(&self, at: usize, settled: &Workspace, room: &mut Sounding) {
        let bucket = &self.buckets[at];
        let factors = &room.factors[at];
        let out = self.slots[bucket.out].clone();
        let conditionals = &settled.conditionals[bucket.cells.clone()];
        let cells = &mut room.cells[..conditionals.len()];
        let states = cells.chunks_exact_mut(out.len());
        let conditionals = conditionals.chunks_exact(out.len());
        for ((cells, conditionals), factor) in states.zip(conditionals).zip(factors) {
            for (cell, conditional) in cells.iter_mut().zip(conditionals) {
                *cell = conditional * factor;
            }
        }
        let messages = self.inputs[bucket.inputs.clone()]
            .iter()
            .take_while(|input| !input.is_evidence);
        for input in messages {
            // Messages follow the evidence tables in the order of their buckets.
            if let Some(from) = room.changed[input.slot - self.bucket_of_evidence.len()] {
                self.walks
                    .multiply(&input.walk, cells, &room.ratios[from..]);
            }
        }
        let from = room.ratios.len();
        room.ratios.extend_from_slice(&cells[..out.len()]);
        add_states(cells, &mut room.ratios[from..]);
        room.changed[at] = Some(from);
    }

    /// By what factor the sum changes with the message of a bucket, if nothing
    /// else changes behind it.
    fn change(&self, at: usize, settled: &Workspace, room: &Sounding) -> f64 {
        let out = self.slots[self.buckets[at].out].clone();
        let marginals = settled.marginals[out.clone()].iter();
        // It is the one whose ratios were found last.
        let ratios = &room.ratios[room.ratios.len() - out.len()..];
        let changed = marginals.zip(ratios);
        changed.map(|(marginal, ratio)| marginal * ratio).sum()
    }
}

impl Sounding {
    fn fit(&mut self, tree: &Tree) {
        if self.factors.len() != tree.buckets.len() {
            self.factors = vec![[1.0; MAX_STATES]; tree.buckets.len()];
            self.changed = vec![None; tree.buckets.len()];
            self.is_waiting = vec![false; tree.buckets.len()];
            self.cells = vec![0.0; tree.largest()];
            // No sounding follows more than every message.
            self.ratios.reserve(tree.arena);
        }
    }

    fn wait(&mut self, at: usize) {
        if !self.is_waiting[at] {
            self.is_waiting[at] = true;
            self.seen.push(at);
            self.waiting.push(Reverse(at));
        }
    }

    fn clear(&mut self) {
        self.ratios.clear();
        for at in self.seen.drain(..) {
            self.factors[at] = [1.0; MAX_STATES];
            self.changed[at] = None;
            self.is_waiting[at] = false;
        }
    }
}
