//! Elimination order by the min-fill rule.

/// An undirected graph on variables, as rows of bits.
pub(super) struct Adjacency {
    words: usize,
    rows: Vec<u64>,
}

impl Adjacency {
    pub(super) fn new(count: usize) -> Self {
        let words = count.div_ceil(64).max(1);
        Self {
            words,
            rows: vec![0; words * count],
        }
    }

    /// Joins every pair of `scope`.
    pub(super) fn join(&mut self, scope: &[usize]) {
        for &a in scope {
            for &b in scope {
                if a != b {
                    self.rows[a * self.words + b / 64] |= 1 << (b % 64);
                }
            }
        }
    }

    fn row(&self, at: usize) -> &[u64] {
        &self.rows[at * self.words..(at + 1) * self.words]
    }

    fn members(&self, at: usize) -> impl Iterator<Item = usize> + '_ {
        self.row(at).iter().enumerate().flat_map(|(word, &bits)| {
            std::iter::successors((bits != 0).then_some(bits), |&left| {
                let left = left & (left - 1);
                (left != 0).then_some(left)
            })
            .map(move |left| word * 64 + left.trailing_zeros() as usize)
        })
    }

    /// Twice the number of edges that eliminating `at` would add.
    fn fill(&self, at: usize) -> u32 {
        let own = self.row(at);
        self.members(at)
            .map(|other| {
                let missing: u32 = own
                    .iter()
                    .zip(self.row(other))
                    .map(|(&mine, &theirs)| (mine & !theirs).count_ones())
                    .sum();
                // `other` itself is among my neighbours but not among its own.
                missing - 1
            })
            .sum()
    }

    fn clear(&mut self, at: usize, other: usize) {
        self.rows[at * self.words + other / 64] &= !(1 << (other % 64));
    }
}

/// Orders the variables so that eliminating them in turn keeps tables small:
/// at each step the one that joins the fewest new pairs, and among equals the
/// one whose table is smallest.
pub(super) fn min_fill(mut graph: Adjacency, cards: &[usize]) -> Vec<usize> {
    let count = cards.len();
    let weight = |graph: &Adjacency, at: usize| -> f64 {
        graph
            .members(at)
            .map(|other| cards[other] as f64)
            .product::<f64>()
            * cards[at] as f64
    };
    let mut fill: Vec<u32> = (0..count).map(|at| graph.fill(at)).collect();
    let mut size: Vec<f64> = (0..count).map(|at| weight(&graph, at)).collect();
    let mut open: Vec<usize> = (0..count).collect();
    let mut order = Vec::with_capacity(count);
    while let Some(best) = (0..open.len()).min_by(|&a, &b| {
        let (a, b) = (open[a], open[b]);
        fill[a]
            .cmp(&fill[b])
            .then(size[a].total_cmp(&size[b]))
            .then(a.cmp(&b))
    }) {
        let chosen = open.swap_remove(best);
        order.push(chosen);
        let neighbours: Vec<usize> = graph.members(chosen).collect();
        let mut stale = graph.row(chosen).to_vec();
        if fill[chosen] > 0 {
            // New edges also change the fill of whoever sees both their ends.
            for &neighbour in &neighbours {
                for (word, &bits) in stale.iter_mut().zip(graph.row(neighbour)) {
                    *word |= bits;
                }
            }
            graph.join(&neighbours);
        }
        for &neighbour in &neighbours {
            graph.clear(neighbour, chosen);
        }
        for &at in &open {
            if stale[at / 64] >> (at % 64) & 1 == 1 {
                fill[at] = graph.fill(at);
                size[at] = weight(&graph, at);
            }
        }
    }
    order
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_chain_is_eliminated_without_fill() {
        let mut graph = Adjacency::new(5);
        for at in 0..4 {
            graph.join(&[at, at + 1]);
        }
        let order = min_fill(graph, &[2; 5]);
        let mut sorted = order.clone();
        sorted.sort_unstable();
        assert_eq!(sorted, [0, 1, 2, 3, 4]);
        assert!(
            order[0] == 0 || order[0] == 4,
            "starts at an end: {order:?}"
        );
    }

    #[test]
    fn a_hub_goes_after_its_leaves() {
        let mut graph = Adjacency::new(70);
        for leaf in 1..70 {
            graph.join(&[0, leaf]);
        }
        let order = min_fill(graph, &[2; 70]);
        assert!(order.iter().position(|&at| at == 0) >= Some(68));
    }
}
