//! Widths of table columns.

use crate::report::document::Width;

/// Distance between columns, points.
pub const GAP: f32 = 10.0;

/// A column is never squeezed below this for the sake of others; long words in
/// it are cut instead.
const FLOOR: f32 = 46.0;

/// What a column asks for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ask {
    /// Width of its longest word.
    pub least: f32,
    /// Width of its longest text on one line.
    pub most: f32,
    /// How it wants to share the room.
    pub width: Width,
}

impl Ask {
    fn floor(&self) -> f32 {
        self.least.min(FLOOR)
    }

    fn share(&self) -> Option<f32> {
        match self.width {
            Width::Natural => None,
            Width::Share(weight) if weight.is_finite() && weight > 0.0 => {
                Some(weight.clamp(0.01, 100.0))
            }
            Width::Share(_) => Some(1.0),
        }
    }
}

/// Cuts the columns into bands that fit one below the other; the first column
/// is repeated in each, since it says what a row is about. One band as a rule.
#[must_use]
pub fn bands(asks: &[Ask], room: f32) -> Vec<Vec<usize>> {
    let Some(first) = asks.first() else {
        return Vec::new();
    };
    let mut bands = vec![vec![0]];
    let mut used = first.floor();
    for (index, ask) in asks.iter().enumerate().skip(1) {
        let more = ask.floor() + GAP;
        let Some(band) = bands.last_mut() else { break };
        if used + more <= room || band.len() < 2 {
            band.push(index);
            used += more;
        } else {
            bands.push(vec![0, index]);
            used = first.floor() + more;
        }
    }
    bands
}

/// Widths of the columns; together with the gaps they fill the room.
#[must_use]
pub fn widths(asks: &[Ask], room: f32) -> Vec<f32> {
    let count = asks.len();
    if count == 0 {
        return Vec::new();
    }
    #[allow(clippy::cast_precision_loss)]
    let room = (room - GAP * (count - 1) as f32).max(1.0);
    let weights: f32 = asks.iter().filter_map(Ask::share).sum();
    if weights <= 0.0 {
        return fill(asks, room);
    }
    let natural: Vec<Ask> = asks
        .iter()
        .filter(|ask| ask.share().is_none())
        .copied()
        .collect();
    let shared_least: f32 = asks
        .iter()
        .filter(|ask| ask.share().is_some())
        .map(|ask| ask.least.min(room / 2.0))
        .sum();
    let wanted: f32 = natural.iter().map(|ask| ask.most).sum();
    let mut given: Vec<f32> = if wanted + shared_least <= room {
        natural.iter().map(|ask| ask.most).collect()
    } else {
        let floors: f32 = natural.iter().map(Ask::floor).sum();
        squeeze(&natural, (room - shared_least).max(floors.min(room * 0.7)))
    };
    let rest = (room - given.iter().sum::<f32>()).max(0.0);
    given.reverse();
    let widths = asks
        .iter()
        .map(|ask| match ask.share() {
            Some(weight) => rest * weight / weights,
            None => given.pop().unwrap_or(0.0),
        })
        .collect();
    raise(widths, asks, room)
}

/// Brings columns with a tiny share up to their floor, at the cost of the others.
fn raise(widths: Vec<f32>, asks: &[Ask], room: f32) -> Vec<f32> {
    #[allow(clippy::cast_precision_loss)]
    let fair = room / asks.len().max(1) as f32;
    let floors: Vec<f32> = asks.iter().map(|ask| ask.floor().min(fair)).collect();
    let above = |(width, floor): (&f32, &f32)| (width - floor).max(0.0);
    let lack: f32 = widths
        .iter()
        .zip(&floors)
        .map(|(width, floor)| (floor - width).max(0.0))
        .sum();
    let spare: f32 = widths.iter().zip(&floors).map(above).sum();
    if lack <= 0.0 || spare <= 0.0 {
        return widths;
    }
    let part = (lack / spare).min(1.0);
    widths
        .iter()
        .zip(&floors)
        .map(|pair| pair.1.max(*pair.0) - part * above(pair))
        .collect()
}

/// Natural columns stretched to the room, or squeezed into it.
fn fill(asks: &[Ask], room: f32) -> Vec<f32> {
    let wanted: f32 = asks.iter().map(|ask| ask.most).sum();
    if wanted > room {
        return squeeze(asks, room);
    }
    let stretch = room / wanted.max(0.01);
    asks.iter().map(|ask| ask.most * stretch).collect()
}

/// Between least and most width in equal part; below the least where needed.
fn squeeze(asks: &[Ask], room: f32) -> Vec<f32> {
    let sum = |of: fn(&Ask) -> f32| asks.iter().map(of).sum::<f32>();
    let (floor, least, most) = (sum(Ask::floor), sum(|ask| ask.least), sum(|ask| ask.most));
    let between = |low: fn(&Ask) -> f32, high: fn(&Ask) -> f32, from: f32, to: f32| {
        let part = if to - from > 0.01 {
            ((room - from) / (to - from)).clamp(0.0, 1.0)
        } else {
            0.0
        };
        asks.iter()
            .map(|ask| low(ask) + part * (high(ask) - low(ask)))
            .collect::<Vec<_>>()
    };
    if room >= least {
        between(|ask| ask.least, |ask| ask.most, least, most)
    } else if room >= floor {
        between(Ask::floor, |ask| ask.least, floor, least)
    } else {
        let scale = room / floor.max(0.01);
        asks.iter().map(|ask| ask.floor() * scale).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn natural(least: f32, most: f32) -> Ask {
        Ask {
            least,
            most,
            width: Width::Natural,
        }
    }

    fn total(widths: &[f32]) -> f32 {
        #[allow(clippy::cast_precision_loss)]
        let gaps = GAP * (widths.len() - 1) as f32;
        widths.iter().sum::<f32>() + gaps
    }

    #[test]
    fn columns_fill_the_room() {
        let asks = [
            natural(20.0, 40.0),
            natural(30.0, 60.0),
            natural(10.0, 10.0),
        ];
        assert!((total(&widths(&asks, 400.0)) - 400.0).abs() < 0.1);
        let long = [natural(20.0, 40.0), natural(50.0, 2000.0)];
        let given = widths(&long, 300.0);
        assert!((total(&given) - 300.0).abs() < 0.1);
        assert!(given[0] >= 20.0 && given[1] > 200.0);
    }

    #[test]
    fn shares_take_what_natural_columns_leave() {
        let share = |weight| Ask {
            least: 20.0,
            most: 500.0,
            width: Width::Share(weight),
        };
        let given = widths(&[natural(20.0, 50.0), share(1.0), share(3.0)], 470.0);
        assert!((given[0] - 50.0).abs() < 0.1);
        assert!((given[2] - 3.0 * given[1]).abs() < 0.1);
        assert!((total(&given) - 470.0).abs() < 0.1);
    }

    #[test]
    fn too_many_columns_become_bands_with_the_first_repeated() {
        let asks = vec![natural(60.0, 60.0); 41];
        let bands = bands(&asks, 492.0);
        assert!(bands.len() > 1);
        assert!(bands.iter().all(|band| band[0] == 0));
        let rest: Vec<usize> = bands.iter().flat_map(|band| band[1..].to_vec()).collect();
        assert_eq!(rest, (1..41).collect::<Vec<_>>());
    }

    #[test]
    fn a_tiny_share_still_holds_its_words() {
        let share = |least, weight| Ask {
            least,
            most: 900.0,
            width: Width::Share(weight),
        };
        let given = widths(
            &[share(30.0, 1e-30), share(400.0, 1e30), natural(20.0, 300.0)],
            400.0,
        );
        assert!(given[0] >= 29.9, "{given:?}");
        assert!(total(&given) <= 400.1, "{given:?}");
    }

    #[test]
    fn words_wider_than_the_room_never_push_a_column_out() {
        for room in [30.0, 120.0, 492.0] {
            for asks in [
                vec![natural(9000.0, 9000.0); 5],
                vec![
                    Ask {
                        least: 9000.0,
                        most: 9000.0,
                        width: Width::Share(f32::NAN)
                    };
                    3
                ],
                vec![
                    natural(9000.0, 9000.0),
                    Ask {
                        least: 900.0,
                        most: 900.0,
                        width: Width::Share(2.0),
                    },
                ],
            ] {
                let given = widths(&asks, room);
                assert!(given.iter().all(|width| *width > 0.0), "{room} {given:?}");
                #[allow(clippy::cast_precision_loss)]
                let least_room = room.max(GAP * (asks.len() - 1) as f32 + 1.0);
                assert!(total(&given) <= least_room + 0.1, "{room} {given:?}");
            }
        }
    }
}
