//! The fewest groups of circuits that a cart can purge one after the other.
//!
//! A group passes if every circuit in it reaches the velocity. Shutting a
//! circuit gives the others more, so a part of a group that passes passes too.

use super::PurgeError;
use super::rig::Rig;

/// Up to this many circuits every way is tried.
const EXHAUSTIVE: usize = 8;
/// A circuit passes within this of the target, so that rounding decides nothing.
const ENOUGH: f64 = 1.0 - 1e-9;

/// Groups, and a number below which no plan can be. A circuit that does not
/// pass even alone gets a group of its own.
pub(super) fn fewest(
    rig: &mut Rig<'_>,
    usable: &[usize],
    target: f64,
) -> Result<(Vec<Vec<usize>>, usize), PurgeError> {
    // Alone: what each circuit draws when it has the cart to itself.
    let mut alone = Vec::new();
    for &circuit in usable {
        let solution = rig.run(&[circuit])?;
        let ratio = rig.ratio(&solution, &[circuit], target);
        alone.push((circuit, ratio, rig.circuit_flow(&solution, circuit)));
    }
    let hopeless: Vec<usize> = alone.iter().filter(|a| a.1 < ENOUGH).map(|a| a.0).collect();
    let mut passing: Vec<_> = alone.into_iter().filter(|a| a.1 >= ENOUGH).collect();
    // Those hardest to move first, so that like goes with like.
    passing.sort_by(|a, b| a.1.total_cmp(&b.1));
    let ordered: Vec<usize> = passing.iter().map(|a| a.0).collect();
    let mut passes = |group: &[usize]| -> Result<bool, PurgeError> {
        let solution = rig.run(group)?;
        Ok(rig.ratio(&solution, group, target) >= ENOUGH)
    };
    let mut groups: Vec<Vec<usize>>;
    let bound;
    if ordered.len() <= EXHAUSTIVE {
        groups = exhaustive(&ordered, &mut passes)?;
        bound = groups.len();
    } else {
        groups = greedy(&ordered, &mut passes)?;
        bound = lower_bound(rig, &ordered, target);
    }
    let bound = bound + hopeless.len();
    for group in &mut groups {
        group.sort_unstable();
    }
    groups.extend(hopeless.into_iter().map(|circuit| vec![circuit]));
    Ok((groups, bound))
}

type Passes<'a> = dyn FnMut(&[usize]) -> Result<bool, PurgeError> + 'a;

/// Groups of neighbours in the order, each as long as it passes; the length of
/// the one before is the first guess.
fn greedy(ordered: &[usize], passes: &mut Passes<'_>) -> Result<Vec<Vec<usize>>, PurgeError> {
    let (mut groups, mut start, mut guess) = (Vec::new(), 0, 1);
    while start < ordered.len() {
        let rest = &ordered[start..];
        // `good` circuits pass, `bad` do not.
        let (mut good, mut bad) = (1, rest.len() + 1);
        let mut at = guess.clamp(1, rest.len());
        while bad - good > 1 {
            at = at.clamp(good + 1, bad - 1);
            if passes(&rest[..at])? {
                good = at;
                at += 1;
            } else {
                bad = at;
                at -= 1;
            }
        }
        groups.push(rest[..good].to_vec());
        start += good;
        guess = good;
    }
    Ok(groups)
}

/// A number of groups below which there is none, headers taken as without loss
/// and every circuit as drawing only what it needs. A group whose hardest circuit
/// needs the drop p has the capacity of the cart against p; filled from the
/// hardest circuit on, a circuit being cut where a group is full.
fn lower_bound(rig: &Rig<'_>, circuits: &[usize], target: f64) -> usize {
    let mut needs: Vec<(f64, f64)> = circuits
        .iter()
        .map(|&circuit| rig.circuit_need(circuit, target))
        .collect();
    needs.sort_by(|a, b| b.0.total_cmp(&a.0));
    let (mut groups, mut room) = (0, 0.0);
    for (drop, flow) in needs {
        let mut flow = flow;
        while flow > room + 1e-12 {
            flow -= room;
            room = rig.capacity(drop);
            groups += 1;
            if room <= 0.0 {
                break;
            }
        }
        room -= flow;
    }
    groups
}

/// Every way, by sets: the fewest passing groups that cover each set.
fn exhaustive(ordered: &[usize], passes: &mut Passes<'_>) -> Result<Vec<Vec<usize>>, PurgeError> {
    let count = ordered.len();
    let full = (1usize << count) - 1;
    let members = |set: usize| -> Vec<usize> {
        (0..count)
            .filter(|i| set >> i & 1 == 1)
            .map(|i| ordered[i])
            .collect()
    };
    let mut pass = vec![false; full + 1];
    for set in 1..=full {
        // A set can pass only if it does without any one of its members.
        let parts = (0..count)
            .filter(|i| set >> i & 1 == 1)
            .map(|i| set & !(1 << i));
        if set.count_ones() == 1 || parts.into_iter().all(|part| pass[part]) {
            pass[set] = passes(&members(set))?;
        }
    }
    let mut best: Vec<(usize, usize)> = vec![(usize::MAX, 0); full + 1];
    best[0] = (0, 0);
    for set in 1..=full {
        let mut group = set;
        while group > 0 {
            let rest = best[set & !group].0;
            if pass[group] && rest < usize::MAX && rest + 1 < best[set].0 {
                best[set] = (rest + 1, group);
            }
            group = (group - 1) & set;
        }
    }
    let (mut groups, mut left) = (Vec::new(), full);
    while left > 0 && best[left].1 > 0 {
        groups.push(members(best[left].1));
        left &= !best[left].1;
    }
    Ok(groups)
}
