//! How the cells of a table run over those of a smaller one.
//!
//! Where both end in the same variables their cells run side by side, and where
//! the smaller one lacks the last variables of the larger it stands still: then
//! one place is kept for a whole block of cells and the block is worked through
//! at once. Elsewhere there is a place for every cell.

use std::ops::Range;

/// Cells worked through at once.
const BLOCK: usize = 8;

/// One run over a smaller table, its places kept in [`Walks`].
pub(super) struct Walk {
    places: Range<usize>,
    pace: Pace,
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Pace {
    /// A place for each cell.
    Cell,
    /// A place for each block, whose cells follow on one another in both tables.
    Along,
    /// A place for each block, which has that one cell of the smaller table.
    Still,
}

/// The places of many walks.
#[derive(Default)]
pub(super) struct Walks {
    places: Vec<u32>,
}

impl Walks {
    /// A walk of the cells over `scope` along those over `part`, whose
    /// variables are among those of `scope`; the last of each varies fastest.
    pub(super) fn walk(&mut self, scope: &[usize], part: &[usize], cards: &[usize]) -> Walk {
        let mut stride = 1;
        let mut strides = vec![0_u32; scope.len()];
        for variable in part.iter().rev() {
            if let Some(at) = scope.iter().position(|other| other == variable) {
                strides[at] = stride;
            }
            stride *= cards[*variable] as u32;
        }
        let (outer, pace, length) = run(scope, &strides, cards);
        let from = self.places.len();
        self.places.push(0);
        // The rest of the run that the block is the beginning of.
        for block in 1..length / BLOCK {
            let step = if pace == Pace::Along { BLOCK } else { 0 };
            self.places.push((block * step) as u32);
        }
        // From the last variable to the first: what is there so far is
        // repeated once for each further state.
        for (&variable, &stride) in scope.iter().zip(&strides).take(outer).rev() {
            let so_far = from..self.places.len();
            for state in 1..cards[variable] as u32 {
                for at in so_far.clone() {
                    let place = self.places[at] + state * stride;
                    self.places.push(place);
                }
            }
        }
        Walk {
            places: from..self.places.len(),
            pace,
        }
    }

    /// Multiplies each cell of `onto` by the cell of `values` it runs over.
    pub(super) fn multiply(&self, walk: &Walk, onto: &mut [f64], values: &[f64]) {
        let places = &self.places[walk.places.clone()];
        match walk.pace {
            Pace::Cell => {
                for (cell, &place) in onto.iter_mut().zip(places) {
                    *cell *= values[place as usize];
                }
            }
            Pace::Along => {
                for (block, &place) in blocks_mut(onto).iter_mut().zip(places) {
                    let beside = values[place as usize..].iter();
                    for (cell, value) in block.iter_mut().zip(beside) {
                        *cell *= value;
                    }
                }
            }
            Pace::Still => {
                for (block, &place) in blocks_mut(onto).iter_mut().zip(places) {
                    let value = values[place as usize];
                    for cell in block {
                        *cell *= value;
                    }
                }
            }
        }
    }

    /// Adds each cell of `from` to the cell of `onto` it runs over.
    pub(super) fn gather(&self, walk: &Walk, from: &[f64], onto: &mut [f64]) {
        let places = &self.places[walk.places.clone()];
        match walk.pace {
            Pace::Cell => {
                for (cell, &place) in from.iter().zip(places) {
                    onto[place as usize] += cell;
                }
            }
            Pace::Along => {
                for (block, &place) in from.as_chunks::<BLOCK>().0.iter().zip(places) {
                    let beside = onto[place as usize..].iter_mut();
                    for (sum, cell) in beside.zip(block) {
                        *sum += cell;
                    }
                }
            }
            Pace::Still => {
                for (block, &place) in from.as_chunks::<BLOCK>().0.iter().zip(places) {
                    onto[place as usize] += total(block);
                }
            }
        }
    }
}

/// How many variables of `scope` come before the longest run, its pace, and its cells.
fn run(scope: &[usize], strides: &[u32], cards: &[usize]) -> (usize, Pace, usize) {
    let pace = match strides.last() {
        Some(1) => Pace::Along,
        Some(0) => Pace::Still,
        _ => return (scope.len(), Pace::Cell, 1),
    };
    let mut length = 1;
    let mut outer = scope.len();
    while outer > 0 {
        let goes_on = match pace {
            Pace::Along => strides[outer - 1] as usize == length,
            _ => strides[outer - 1] == 0,
        };
        if !goes_on {
            break;
        }
        outer -= 1;
        length *= cards[scope[outer]];
    }
    if length % BLOCK == 0 {
        (outer, pace, length)
    } else {
        (scope.len(), Pace::Cell, 1)
    }
}

fn blocks_mut(cells: &mut [f64]) -> &mut [[f64; BLOCK]] {
    cells.as_chunks_mut().0
}

/// The sum of all cells, in several strands: one after another each addition
/// would wait for the last.
pub(super) fn total(cells: &[f64]) -> f64 {
    let (blocks, rest) = cells.as_chunks::<BLOCK>();
    let mut strands = [0.0; BLOCK];
    for block in blocks {
        for (strand, cell) in strands.iter_mut().zip(block) {
            *strand += cell;
        }
    }
    strands.iter().chain(rest).sum()
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
        let scopes: [(&[usize], &[usize]); 8] = [
            (&[0, 1, 2, 3], &[1, 2, 3]),
            (&[0, 1, 2, 3], &[0]),
            (&[0, 1, 2, 3], &[3, 0]),
            (&[4, 0, 5, 1], &[4, 5, 1]),
            (&[4, 0, 5, 1], &[0, 4]),
            (&[0, 2, 4], &[0, 4]),
            (&[1], &[]),
            (&[5, 1, 0], &[1, 0]),
        ];
        for (scope, part) in scopes {
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
    fn totals_and_largest_cells_heed_every_cell() {
        for length in 1..40 {
            let cells: Vec<f64> = (0..length).map(|at| f64::from(at * 7 % 13)).collect();
            let by_order = [
                cells.iter().sum(),
                cells.iter().copied().fold(0.0, f64::max),
            ];
            assert_eq!(
                [total(&cells), largest(&cells)].map(f64::to_bits),
                by_order.map(f64::to_bits)
            );
        }
    }
}
