//! Solving the symmetric equations of a network: sparse LDLᵀ.
//!
//! The order of elimination is that of least degree, found once for a network;
//! the ladders and stars that ground loops are fill in hardly at all.

use std::cmp::Reverse;
use std::collections::BinaryHeap;

/// Pattern of the factor, and where each update goes.
#[derive(Clone, Debug)]
pub(super) struct Elimination {
    /// Unknowns in the order in which they are eliminated.
    order: Vec<usize>,
    /// For each step, where its off-diagonal entries begin.
    starts: Vec<usize>,
    /// Unknown of each off-diagonal entry.
    rows: Vec<usize>,
    /// For each step and each pair of its entries (second at or after first),
    /// the entry that is updated; `DIAGONAL` where that is a diagonal.
    targets: Vec<usize>,
    /// Entry of the factor for each edge given.
    edges: Vec<usize>,
}

const DIAGONAL: usize = usize::MAX;

impl Elimination {
    /// Pattern for `count` unknowns coupled by `edges`.
    pub fn new(count: usize, edges: &[(usize, usize)]) -> Self {
        let mut near: Vec<Vec<usize>> = vec![Vec::new(); count];
        for &(a, b) in edges {
            if a != b && !near[a].contains(&b) {
                near[a].push(b);
                near[b].push(a);
            }
        }
        let mut step_of = vec![usize::MAX; count];
        let (mut order, mut starts, mut rows) = (Vec::new(), vec![0], Vec::new());
        // A node stands in the heap once for every degree it has had; all but the
        // newest are passed over.
        let mut left: BinaryHeap<Reverse<(usize, usize)>> =
            (0..count).map(|i| Reverse((near[i].len(), i))).collect();
        while let Some(Reverse((degree, pivot))) = left.pop() {
            if step_of[pivot] != usize::MAX || degree != near[pivot].len() {
                continue;
            }
            step_of[pivot] = order.len();
            order.push(pivot);
            let neighbours = std::mem::take(&mut near[pivot]);
            for &a in &neighbours {
                near[a].retain(|&b| b != pivot);
                for &b in &neighbours {
                    if b != a && !near[a].contains(&b) {
                        near[a].push(b);
                    }
                }
                left.push(Reverse((near[a].len(), a)));
            }
            rows.extend(&neighbours);
            starts.push(rows.len());
        }
        let entry = |a: usize, b: usize| {
            let (first, second) = if step_of[a] < step_of[b] {
                (a, b)
            } else {
                (b, a)
            };
            let step = step_of[first];
            (starts[step]..starts[step + 1])
                .find(|&e| rows[e] == second)
                .unwrap_or(DIAGONAL)
        };
        let mut targets = Vec::new();
        for step in 0..count {
            let entries = starts[step]..starts[step + 1];
            for first in entries.clone() {
                for second in first..entries.end {
                    targets.push(if first == second {
                        DIAGONAL
                    } else {
                        entry(rows[first], rows[second])
                    });
                }
            }
        }
        let edges = edges.iter().map(|&(a, b)| entry(a, b)).collect();
        Self {
            order,
            starts,
            rows,
            targets,
            edges,
        }
    }

    /// Solves in place. `diagonal` and `right` by unknown; `coupling` by edge
    /// (subtracted off the diagonal); `lower` is room for the factor. False if the
    /// equations have no one answer.
    pub fn solve(
        &self,
        diagonal: &mut [f64],
        coupling: &[f64],
        right: &mut [f64],
        lower: &mut Vec<f64>,
    ) -> bool {
        lower.clear();
        lower.resize(self.rows.len(), 0.0);
        for (edge, value) in self.edges.iter().zip(coupling) {
            if let Some(entry) = lower.get_mut(*edge) {
                *entry -= value;
            }
        }
        let mut target = self.targets.iter();
        for (step, &pivot) in self.order.iter().enumerate() {
            let entries = self.starts[step]..self.starts[step + 1];
            if !(diagonal[pivot].is_finite() && diagonal[pivot] > 0.0) {
                return false;
            }
            for first in entries.clone() {
                let factor = lower[first] / diagonal[pivot];
                for second in first..entries.end {
                    let change = factor * lower[second];
                    match target.next() {
                        Some(&DIAGONAL) => diagonal[self.rows[first]] -= change,
                        Some(&entry) => lower[entry] -= change,
                        None => return false,
                    }
                }
                right[self.rows[first]] -= factor * right[pivot];
            }
        }
        for (step, &pivot) in self.order.iter().enumerate().rev() {
            let entries = self.starts[step]..self.starts[step + 1];
            let known: f64 = entries.map(|e| lower[e] * right[self.rows[e]]).sum();
            right[pivot] = (right[pivot] - known) / diagonal[pivot];
        }
        true
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A small Laplacian against nalgebra's dense solution.
    #[test]
    fn agrees_with_a_dense_solution() {
        let edges = [(0, 1), (1, 2), (2, 3), (3, 0), (0, 2), (1, 4), (4, 3)];
        let coupling = [1.0, 2.0, 0.5, 3.0, 0.1, 4.0, 1.5];
        let (mut diagonal, mut right) = (vec![0.2; 5], vec![1.0, -2.0, 0.5, 3.0, 0.0]);
        let mut dense = nalgebra::DMatrix::from_diagonal_element(5, 5, 0.2);
        for (&(a, b), c) in edges.iter().zip(coupling) {
            diagonal[a] += c;
            diagonal[b] += c;
            dense[(a, a)] += c;
            dense[(b, b)] += c;
            dense[(a, b)] -= c;
            dense[(b, a)] -= c;
        }
        let expected = dense
            .lu()
            .solve(&nalgebra::DVector::from_vec(right.clone()))
            .unwrap();
        assert!(Elimination::new(5, &edges).solve(
            &mut diagonal,
            &coupling,
            &mut right,
            &mut Vec::new()
        ));
        for (a, b) in right.iter().zip(expected.iter()) {
            assert!((a - b).abs() < 1e-12);
        }
    }
}
