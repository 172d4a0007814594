//! Elimination order by the weighted min-fill rule.
//!
//! A table grows by a factor with each variable in it, so what counts of a
//! variable is the logarithm of its number of states: one of four states is as
//! much as two of two, and is taken for that many wherever pairs are counted.

/// An undirected graph on variables, as rows of bits.
#[derive(Clone)]
pub(super) struct Adjacency {
    words: usize,
    rows: Vec<u64>,
    /// As how many variables of two states each counts.
    weights: Vec<u32>,
}

impl Adjacency {
    /// Of variables with so many states and no edges.
    pub(super) fn new(cards: &[usize]) -> Self {
        let words = cards.len().div_ceil(64).max(1);
        Self {
            words,
            rows: vec![0; words * cards.len()],
            weights: cards
                .iter()
                .map(|&card| if card > 2 { 2 } else { 1 })
                .collect(),
        }
    }

    /// Joins every pair of `scope`.
    pub(super) fn join(&mut self, scope: &[usize]) {
        for &a in scope {
            for &b in scope {
                if a != b {
                    self.set(a, b);
                }
            }
        }
    }

    fn row(&self, at: usize) -> &[u64] {
        &self.rows[at * self.words..(at + 1) * self.words]
    }

    fn members(&self, at: usize) -> impl Iterator<Item = usize> + '_ {
        let row = self.row(at).iter().enumerate();
        row.flat_map(|(word, &bits_there)| bits(word, bits_there))
    }

    /// Twice the number of edges that eliminating `at` would add.
    fn fill(&self, at: usize) -> u32 {
        self.members(at)
            .map(|other| self.weights[other] * self.missed(at, other))
            .sum()
    }

    /// How many see `at`.
    fn seen(&self, at: usize) -> u32 {
        self.members(at).map(|other| self.weights[other]).sum()
    }

    /// How many others than itself see `at` and not its neighbour `other`.
    fn missed(&self, at: usize, other: usize) -> u32 {
        let rows = self.row(at).iter().zip(self.row(other)).enumerate();
        let mut missed = 0;
        for (word, (&mine, &theirs)) in rows {
            for one in bits(word, mine & !theirs) {
                missed += self.weights[one];
            }
        }
        missed - self.weights[other]
    }

    /// Cells of the table that eliminating `at` makes.
    fn table(&self, at: usize, cards: &[usize]) -> f64 {
        self.members(at)
            .map(|other| cards[other] as f64)
            .product::<f64>()
            * cards[at] as f64
    }

    fn set(&mut self, at: usize, other: usize) {
        self.rows[at * self.words + other / 64] |= 1 << (other % 64);
    }

    fn clear(&mut self, at: usize, other: usize) {
        self.rows[at * self.words + other / 64] &= !(1 << (other % 64));
    }
}

/// The variables that the bits of a word of a row stand for.
fn bits(word: usize, mut left: u64) -> impl Iterator<Item = usize> {
    std::iter::from_fn(move || {
        let first = (left != 0).then(|| word * 64 + left.trailing_zeros() as usize)?;
        left &= left - 1;
        Some(first)
    })
}

/// An order of elimination and the cells of all tables it makes.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Order {
    pub(super) variables: Vec<usize>,
    pub(super) cells: f64,
}

/// Below so many cells no other order is looked for: seeking one costs as much as
/// summing about 10 000 cells, and seldom spares a tenth of them.
const CHEAP_CELLS: f64 = 150_000.0;
/// Orders tried in all when the first is not cheap.
const TRIES: u32 = 4;

/// The cheapest of some orders. Which it is changes what a sum costs, never
/// what it is.
pub(super) fn cheapest(graph: Adjacency, cards: &[usize]) -> Order {
    let whole = Shrinking::of(graph);
    let mut best = whole.clone().ordered(cards, 0, f64::INFINITY);
    for trial in 1..TRIES {
        if best.cells < CHEAP_CELLS {
            break;
        }
        let other = whole.clone().ordered(cards, trial, best.cells);
        if other.cells < best.cells {
            best = other;
        }
    }
    best
}

/// Orders the variables so that eliminating them in turn keeps tables small:
/// at each step the one that joins the fewest new pairs for what it counts, and
/// among equals the one whose table is smallest.
pub(super) fn min_fill(graph: Adjacency, cards: &[usize]) -> Order {
    Shrinking::of(graph).ordered(cards, 0, f64::INFINITY)
}

/// A graph from which variables go one by one. What each would cost is kept
/// true through every change; counting it anew would take most of the time.
#[derive(Clone)]
struct Shrinking {
    graph: Adjacency,
    /// Twice the pairs that eliminating each variable would join.
    fill: Vec<u32>,
    /// How many each variable sees.
    seen: Vec<u32>,
    /// Where those are that join no new pair, among some that did once.
    free: Vec<usize>,
    /// Variables still there.
    open: Vec<usize>,
    is_gone: Vec<bool>,
    neighbours: Vec<usize>,
}

impl Shrinking {
    fn of(graph: Adjacency) -> Self {
        let count = graph.weights.len();
        let fill: Vec<u32> = (0..count).map(|at| graph.fill(at)).collect();
        Self {
            seen: (0..count).map(|at| graph.seen(at)).collect(),
            free: (0..count).filter(|&at| fill[at] == 0).collect(),
            open: (0..count).collect(),
            is_gone: vec![false; count],
            neighbours: Vec::new(),
            fill,
            graph,
        }
    }

    /// An order by the fewest new pairs, broken off once it costs `limit` cells. In
    /// trials after the first, fill counts are taken up to half as much
    /// higher, by variable and trial: the rule looks one step ahead only, and
    /// swerving from it often does better. The same graph always gets the same
    /// orders.
    fn ordered(mut self, cards: &[usize], trial: u32, limit: f64) -> Order {
        let times: Vec<u32> = (0..cards.len())
            .map(|at| swerve(at, trial) / self.graph.weights[at])
            .collect();
        let mut order = Order {
            variables: Vec::with_capacity(cards.len()),
            cells: 0.0,
        };
        while let Some(next) = self.next(&times) {
            order.variables.push(next);
            order.cells += self.graph.table(next, cards);
            if order.cells >= limit {
                break;
            }
            self.eliminate(next);
        }
        order
    }

    /// The next by the rule: what joins no new pair, as most come to do, and
    /// only where there is none a look at all others. Taking the former first is
    /// never worse (D. Rose, "Triangulated graphs and the elimination process",
    /// 1970, from memory).
    fn next(&mut self, times: &[u32]) -> Option<usize> {
        let (is_gone, fill) = (&self.is_gone, &self.fill);
        self.free.retain(|&at| fill[at] == 0 && !is_gone[at]);
        if self.free.is_empty() {
            self.open.retain(|&at| !is_gone[at]);
            self.cheapest(&self.open, times)
        } else {
            self.cheapest(&self.free, times)
        }
    }

    /// The variable of `among` that joins the fewest new pairs, each count taken
    /// so many times; among equals the one with the smallest table, and among
    /// those the first. As one number for each, so that looking needs no
    /// branches: there is room in it for graphs many times larger than any that
    /// could be summed.
    fn cheapest(&self, among: &[usize], times: &[u32]) -> Option<usize> {
        let costs = among.iter().map(|&at| {
            let pairs = u64::from(self.fill[at]) * u64::from(times[at]);
            let size = u64::from(self.seen[at] + self.graph.weights[at]);
            pairs << 28 | size << 16 | at as u64
        });
        costs.min().map(|cost| (cost & 0xffff) as usize)
    }

    /// Joins all neighbours of a variable and takes it off.
    fn eliminate(&mut self, gone: usize) {
        let mut neighbours = std::mem::take(&mut self.neighbours);
        neighbours.clear();
        neighbours.extend(self.graph.members(gone));
        if self.fill[gone] > 0 {
            for &a in &neighbours {
                for word in a / 64..self.graph.words {
                    let mut apart = self.graph.row(gone)[word] & !self.graph.row(a)[word];
                    if word == a / 64 {
                        // Each pair once, and none with itself.
                        apart &= !(u64::MAX >> (63 - a % 64));
                    }
                    for b in bits(word, apart) {
                        self.join(a, b);
                    }
                }
            }
        }
        let weight = self.graph.weights[gone];
        for &neighbour in &neighbours {
            // Its pairs with those that the variable that goes did not see: by now
            // it sees all that this one does.
            self.seen[neighbour] -= weight;
            let missed = self.seen[neighbour] - (self.seen[gone] - self.graph.weights[neighbour]);
            self.lessen(neighbour, weight * missed);
            self.graph.clear(neighbour, gone);
        }
        self.is_gone[gone] = true;
        self.neighbours = neighbours;
    }

    /// Takes pairs that a variable would join off its count.
    fn lessen(&mut self, at: usize, pairs: u32) {
        self.fill[at] -= 2 * pairs;
        if self.fill[at] == 0 {
            self.free.push(at);
        }
    }

    fn join(&mut self, a: usize, b: usize) {
        let [weight_a, weight_b] = [a, b].map(|at| self.graph.weights[at]);
        let mut shared = 0;
        // Whoever sees both misses this pair no more, counted both ways.
        for word in 0..self.graph.words {
            let both = self.graph.row(a)[word] & self.graph.row(b)[word];
            for seer in bits(word, both) {
                shared += self.graph.weights[seer];
                self.lessen(seer, weight_a * weight_b);
            }
        }
        // Each misses the other's pairs with those it sees and the other does not.
        self.fill[a] += 2 * weight_b * (self.seen[a] - shared);
        self.fill[b] += 2 * weight_a * (self.seen[b] - shared);
        self.seen[a] += weight_b;
        self.seen[b] += weight_a;
        self.graph.set(a, b);
        self.graph.set(b, a);
    }
}

/// How many times the fill counts of a variable are taken in a trial.
fn swerve(at: usize, trial: u32) -> u32 {
    const ONCE: u32 = 1 << 10;
    if trial == 0 {
        return ONCE;
    }
    // Mixing constants of splitmix64 (Steele, Lea and Flood 2014, from memory).
    let mut mixed = (at as u64 + 1)
        .wrapping_mul(0x9e37_79b9_7f4a_7c15)
        .wrapping_add(u64::from(trial) << 32);
    mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    ONCE + (mixed % u64::from(ONCE / 2)) as u32
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_chain_is_eliminated_without_fill() {
        let mut graph = Adjacency::new(&[2; 5]);
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
    fn costs_stay_true_while_variables_go() {
        let cards: Vec<usize> = (0..90).map(|at| [2, 2, 4, 3][at % 4]).collect();
        let mut graph = Adjacency::new(&cards);
        let mut state = 1_u64;
        for _ in 0..150 {
            state = state.wrapping_mul(6364136223846793005).wrapping_add(1);
            let (a, b, c) = (state >> 33, state >> 41, state >> 49);
            graph.join(&[a, b, c].map(|place| place as usize % cards.len()));
        }
        let mut shrinking = Shrinking::of(graph);
        let mut left: Vec<usize> = (0..cards.len()).collect();
        while left.len() > 1 {
            let gone = left.swap_remove(7 * left.len() / 11);
            shrinking.eliminate(gone);
            for &at in &left {
                assert!(shrinking.graph.members(at).all(|other| other != gone));
                assert_eq!(shrinking.fill[at], shrinking.graph.fill(at));
                assert_eq!(shrinking.seen[at], shrinking.graph.seen(at));
            }
        }
    }

    #[test]
    fn a_hub_goes_after_its_leaves() {
        let mut graph = Adjacency::new(&[2; 70]);
        for leaf in 1..70 {
            graph.join(&[0, leaf]);
        }
        let order = min_fill(graph, &[2; 70]).variables;
        assert!(order.iter().position(|&at| at == 0) >= Some(68));
    }
}
