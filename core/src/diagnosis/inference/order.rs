//! Elimination order by the min-fill rule.

/// An undirected graph on variables, as rows of bits.
#[derive(Clone)]
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

/// An order of elimination and the cells of all tables it makes.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Order {
    pub(super) variables: Vec<usize>,
    pub(super) cells: f64,
}

/// Below so many cells no other order is looked for.
const CHEAP_CELLS: f64 = 8000.0;
/// Orders tried in all when the first is not cheap.
const TRIES: u32 = 5;

/// The cheapest of some orders. Which it is changes what a sum costs, never
/// what it is.
pub(super) fn cheapest(graph: &Adjacency, cards: &[usize]) -> Order {
    let mut best = min_fill(graph.clone(), cards);
    for trial in 1..TRIES {
        if best.cells < CHEAP_CELLS {
            break;
        }
        let other = ordered(graph.clone(), cards, trial);
        if other.cells < best.cells {
            best = other;
        }
    }
    best
}

/// Orders the variables so that eliminating them in turn keeps tables small:
/// at each step the one that joins the fewest new pairs, and among equals the
/// one whose table is smallest.
pub(super) fn min_fill(graph: Adjacency, cards: &[usize]) -> Order {
    ordered(graph, cards, 0)
}

/// Fill counts are taken up to half as much higher, by variable, step and trial:
/// the rule of the fewest new pairs looks one step ahead only, and swerving from
/// it often does better. The same graph always gets the same orders.
fn ordered(mut graph: Adjacency, cards: &[usize], trial: u32) -> Order {
    let count = cards.len();
    let weight = |graph: &Adjacency, at: usize| -> f64 {
        graph
            .members(at)
            .map(|other| cards[other] as f64)
            .product::<f64>()
            * cards[at] as f64
    };
    let swerve = |at: usize, step: usize| -> f64 {
        if trial == 0 {
            return 1.0;
        }
        // Mixing constants of splitmix64 (Steele, Lea and Flood 2014, from memory).
        let mut mixed = (at as u64 + 1)
            .wrapping_mul(0x9e37_79b9_7f4a_7c15)
            .wrapping_add((step as u64) << 32 | u64::from(trial));
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        1.0 + 0.5 * ((mixed >> 11) as f64 / (1_u64 << 53) as f64)
    };
    let mut fill: Vec<f64> = (0..count)
        .map(|at| f64::from(graph.fill(at)) * swerve(at, 0))
        .collect();
    let mut size: Vec<f64> = (0..count).map(|at| weight(&graph, at)).collect();
    let mut open: Vec<usize> = (0..count).collect();
    let mut order = Order {
        variables: Vec::with_capacity(count),
        cells: 0.0,
    };
    while let Some(best) = (0..open.len()).min_by(|&a, &b| {
        let (a, b) = (open[a], open[b]);
        fill[a]
            .total_cmp(&fill[b])
            .then(size[a].total_cmp(&size[b]))
            .then(a.cmp(&b))
    }) {
        let chosen = open.swap_remove(best);
        order.variables.push(chosen);
        order.cells += size[chosen];
        let neighbours: Vec<usize> = graph.members(chosen).collect();
        let mut stale = graph.row(chosen).to_vec();
        if fill[chosen] > 0.0 {
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
        let step = order.variables.len();
        for &at in &open {
            if stale[at / 64] >> (at % 64) & 1 == 1 {
                fill[at] = f64::from(graph.fill(at)) * swerve(at, step);
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
        let order = min_fill(graph, &[2; 5]).variables;
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
        let order = min_fill(graph, &[2; 70]).variables;
        assert!(order.iter().position(|&at| at == 0) >= Some(68));
    }
}
