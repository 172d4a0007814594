//! How the cells of a table run over those of a smaller one.
//!
//! Cells are worked through in blocks of eight, three steps between two states.
//! Within a block the smaller table is run over in the same way everywhere, which
//! the strides of those steps in it tell: 4, 2, 1 where its cells follow on one
//! another too, 0, 0, 0 where it stands still. So one place is kept for each
//! block and the strides once. Both tables mostly having their variables in the
//! same order, few ways occur, and for each there is code of its own, made from
//! one source.

use std::ops::Range;

/// Cells worked through at once.
const BLOCK: usize = 8;

/// One run over a smaller table, its places kept in [`Walks`].
pub(super) struct Walk {
    places: Range<usize>,
    pace: Pace,
}

#[derive(Clone, Copy)]
enum Pace {
    /// A place for each cell: the larger table is no whole number of blocks.
    Cell,
    /// A place for each block, and the strides within.
    Block([u32; 3]),
}

/// The places of many walks.
#[derive(Default)]
pub(super) struct Walks {
    places: Vec<u32>,
    /// Room for the steps of one walk.
    steps: Vec<Step>,
}

/// Between how many states a walk steps, and how far apart they are in the smaller table.
type Step = (u32, u32);

impl Walks {
    /// With room for so many places.
    pub(super) fn with_room(places: usize) -> Self {
        Self {
            places: Vec::with_capacity(places),
            steps: Vec::new(),
        }
    }

    /// A walk of the cells over `scope` along those over `part`, whose
    /// variables are among those of `scope`; the last of each varies fastest.
    pub(super) fn walk(&mut self, scope: &[usize], part: &[usize], cards: &[usize]) -> Walk {
        self.find_steps(scope, part, cards);
        let (outer, pace) = match self.steps.as_slice() {
            [outer @ .., (2, a), (2, b), (2, c)] => (outer, Pace::Block([*a, *b, *c])),
            all => (all, Pace::Cell),
        };
        let from = self.places.len();
        let count: u32 = outer.iter().map(|&(states, _)| states).product();
        self.places.reserve(count as usize);
        self.places.push(0);
        // From the last step to the first: what is there so far is repeated
        // once for each further state.
        for &(states, stride) in outer.iter().rev() {
            let so_far = from..self.places.len();
            for state in 1..states {
                self.places.extend_from_within(so_far.clone());
                let last = self.places.len() - so_far.len();
                for place in &mut self.places[last..] {
                    *place += state * stride;
                }
            }
        }
        Walk {
            places: from..self.places.len(),
            pace,
        }
    }

    /// Sets the steps of a walk, a variable of four states as two steps between two.
    fn find_steps(&mut self, scope: &[usize], part: &[usize], cards: &[usize]) {
        self.steps.clear();
        for variable in scope {
            let behind = part.iter().rev().take_while(|&other| other != variable);
            let (places, stride) = behind.fold((0, 1), |(places, stride), &other| {
                (places + 1, stride * cards[other] as u32)
            });
            let stride = if places < part.len() { stride } else { 0 };
            match cards[*variable] {
                4 => self.steps.extend([(2, 2 * stride), (2, stride)]),
                card => self.steps.push((card as u32, stride)),
            }
        }
    }

    /// Multiplies each cell of `onto` by the cell of `values` it runs over.
    pub(super) fn multiply(&self, walk: &Walk, onto: &mut [f64], values: &[f64]) {
        let places = &self.places[walk.places.clone()];
        let Pace::Block(strides) = walk.pace else {
            for (cell, &place) in onto.iter_mut().zip(places) {
                *cell *= values[place as usize];
            }
            return;
        };
        let blocks = onto.as_chunks_mut().0;
        match strides {
            [4, 2, 1] => multiply(places, blocks, values, const { way([4, 2, 1]) }),
            [0, 2, 1] => multiply(places, blocks, values, const { way([0, 2, 1]) }),
            [2, 0, 1] => multiply(places, blocks, values, const { way([2, 0, 1]) }),
            [2, 1, 0] => multiply(places, blocks, values, const { way([2, 1, 0]) }),
            [0, 0, 1] => multiply(places, blocks, values, const { way([0, 0, 1]) }),
            [0, 1, 0] => multiply(places, blocks, values, const { way([0, 1, 0]) }),
            [1, 0, 0] => multiply(places, blocks, values, const { way([1, 0, 0]) }),
            [0, 0, 0] => multiply(places, blocks, values, const { way([0, 0, 0]) }),
            other => multiply(places, blocks, values, way(other)),
        }
    }

    /// Adds each cell of `from` to the cell of `onto` it runs over.
    pub(super) fn gather(&self, walk: &Walk, from: &[f64], onto: &mut [f64]) {
        let places = &self.places[walk.places.clone()];
        let Pace::Block(strides) = walk.pace else {
            for (cell, &place) in from.iter().zip(places) {
                onto[place as usize] += cell;
            }
            return;
        };
        let blocks = from.as_chunks().0;
        match strides {
            [4, 2, 1] => gather::<8>(places, blocks, onto, const { way([4, 2, 1]) }),
            [0, 2, 1] => gather::<4>(places, blocks, onto, const { way([0, 2, 1]) }),
            [2, 0, 1] => gather::<4>(places, blocks, onto, const { way([2, 0, 1]) }),
            [2, 1, 0] => gather::<4>(places, blocks, onto, const { way([2, 1, 0]) }),
            [0, 0, 1] => gather::<2>(places, blocks, onto, const { way([0, 0, 1]) }),
            [0, 1, 0] => gather::<2>(places, blocks, onto, const { way([0, 1, 0]) }),
            [1, 0, 0] => gather::<2>(places, blocks, onto, const { way([1, 0, 0]) }),
            [0, 0, 0] => gather::<1>(places, blocks, onto, const { way([0, 0, 0]) }),
            other => {
                let way = way(other);
                for (block, &place) in blocks.iter().zip(places) {
                    for (cell, to) in block.iter().zip(way) {
                        onto[place as usize + to] += cell;
                    }
                }
            }
        }
    }
}

/// How far from the first each cell of a block is in the smaller table.
const fn way(strides: [u32; 3]) -> [usize; BLOCK] {
    let [a, b, c] = [
        strides[0] as usize,
        strides[1] as usize,
        strides[2] as usize,
    ];
    [0, c, b, b + c, a, a + c, a + b, a + b + c]
}

#[inline(always)]
fn multiply(places: &[u32], blocks: &mut [[f64; BLOCK]], values: &[f64], way: [usize; BLOCK]) {
    for (block, &place) in blocks.iter_mut().zip(places) {
        let beside = &values[place as usize..][..=way[BLOCK - 1]];
        for (cell, to) in block.iter_mut().zip(way) {
            *cell *= beside[to];
        }
    }
}

/// Of a way over so many cells: their sums are ready before any is added on.
#[inline(always)]
fn gather<const CELLS: usize>(
    places: &[u32],
    blocks: &[[f64; BLOCK]],
    onto: &mut [f64],
    way: [usize; BLOCK],
) {
    for (block, &place) in blocks.iter().zip(places) {
        let mut sums = [0.0; CELLS];
        for (cell, to) in block.iter().zip(way) {
            sums[to] += cell;
        }
        for (onto, sum) in onto[place as usize..][..CELLS].iter_mut().zip(sums) {
            *onto += sum;
        }
    }
}

/// Writes the product of two tables, cell by cell, and sums it. In several
/// strands: one after another each addition would wait for the last.
pub(super) fn put_product(one: &[f64], other: &[f64], onto: &mut [f64]) -> f64 {
    let (ones, one_rest) = one.as_chunks::<BLOCK>();
    let (others, other_rest) = other.as_chunks::<BLOCK>();
    let (ontos, onto_rest) = onto.as_chunks_mut::<BLOCK>();
    let mut strands = [0.0; BLOCK];
    for ((one, other), onto) in ones.iter().zip(others).zip(ontos) {
        for (((strand, one), other), onto) in strands.iter_mut().zip(one).zip(other).zip(onto) {
            *onto = one * other;
            *strand += *onto;
        }
    }
    let rest = one_rest.iter().zip(other_rest).zip(onto_rest);
    let rest = rest.map(|((one, other), onto)| {
        *onto = one * other;
        *onto
    });
    strands.into_iter().chain(rest).sum()
}

/// The largest cell, 0 if there is none; cells are not negative.
pub(super) fn largest(cells: &[f64]) -> f64 {
    let larger = |a: f64, b: f64| if a > b { a } else { b };
    let (blocks, rest) = cells.as_chunks::<BLOCK>();
    let mut strands = [0.0; BLOCK];
    for block in blocks {
        for (strand, &cell) in strands.iter_mut().zip(block) {
            *strand = larger(*strand, cell);
        }
    }
    strands.iter().chain(rest).copied().fold(0.0, larger)
}

/// `1 / value`, but finite where that is 0 or next to it.
pub(super) fn reciprocal(value: f64) -> f64 {
    let least = f64::MIN_POSITIVE;
    1.0 / if value > least { value } else { least }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The cell of a table over `part` for each cell over `scope`, by counting through the states.
    fn by_counting(scope: &[usize], part: &[usize], cards: &[usize]) -> Vec<usize> {
        let size: usize = scope.iter().map(|&v| cards[v]).product();
        (0..size)
            .map(|cell| {
                let mut left = cell;
                let mut states = vec![0; cards.len()];
                for &v in scope.iter().rev() {
                    states[v] = left % cards[v];
                    left /= cards[v];
                }
                part.iter().fold(0, |at, &v| at * cards[v] + states[v])
            })
            .collect()
    }

    #[test]
    fn walks_run_over_the_right_cells() {
        let cards = [2, 4, 2, 2, 3, 4];
        let some: [(&[usize], &[usize]); 8] = [
            (&[0, 1, 2, 3], &[1, 2, 3]),
            (&[0, 1, 2, 3], &[0]),
            (&[0, 1, 2, 3], &[3, 0]),
            (&[4, 0, 5, 1], &[4, 5, 1]),
            (&[4, 0, 5, 1], &[0, 4]),
            (&[0, 2, 4], &[0, 4]),
            (&[1], &[]),
            (&[5, 1, 0], &[1, 0]),
        ];
        // Every way through a block that has code of its own, and each the other way round.
        let whole = [1, 0, 2, 3];
        let chosen = |set: usize| {
            let chosen = (0..4).filter(move |at| set >> at & 1 == 1);
            chosen.map(|at| whole[at]).collect::<Vec<usize>>()
        };
        let parts = (0..16).flat_map(|set| {
            let turned: Vec<usize> = chosen(set).into_iter().rev().collect();
            [chosen(set), turned]
        });
        let every = parts.map(|part| (whole.to_vec(), part));
        let some = some.map(|(scope, part)| (scope.to_vec(), part.to_vec()));
        for (scope, part) in some.into_iter().chain(every) {
            let (scope, part) = (scope.as_slice(), part.as_slice());
            let places = by_counting(scope, part, &cards);
            let small = part.iter().map(|&v| cards[v]).product::<usize>();
            let values: Vec<f64> = (0..small).map(|at| (at + 2) as f64).collect();
            let cells: Vec<f64> = (0..places.len()).map(|at| (at * at + 1) as f64).collect();
            let mut walks = Walks::default();
            // A second walk of the same store must not depend on the first.
            walks.walk(&[0, 1], &[1], &cards);
            let walk = walks.walk(scope, part, &cards);

            let mut product = cells.clone();
            walks.multiply(&walk, &mut product, &values);
            let mut sums = vec![0.0; small];
            walks.gather(&walk, &cells, &mut sums);

            let mut wanted_sums = vec![0.0; small];
            for (at, &place) in places.iter().enumerate() {
                let wanted = cells[at] * values[place];
                assert_eq!(
                    product[at].to_bits(),
                    wanted.to_bits(),
                    "{scope:?} {part:?} {at}"
                );
                wanted_sums[place] += cells[at];
            }
            assert_eq!(sums, wanted_sums, "{scope:?} {part:?}");
        }
    }

    #[test]
    fn products_and_largest_cells_heed_every_cell() {
        for length in 1..40 {
            let cells: Vec<f64> = (0..length).map(|at| f64::from(at * 7 % 13)).collect();
            let others: Vec<f64> = (0..length).map(|at| f64::from(at * 5 % 11)).collect();
            let mut product = vec![f64::NAN; cells.len()];
            let sum = put_product(&cells, &others, &mut product);
            let wanted: Vec<f64> = cells.iter().zip(&others).map(|(a, b)| a * b).collect();
            assert_eq!(product, wanted);
            let by_order = [
                wanted.iter().sum(),
                cells.iter().copied().fold(0.0, f64::max),
            ];
            assert_eq!(
                [sum, largest(&cells)].map(f64::to_bits),
                by_order.map(f64::to_bits)
            );
        }
    }
}
