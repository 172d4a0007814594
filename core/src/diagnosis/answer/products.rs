//! Products of factors, by which the probability of what a check shows is worked out.

use super::super::inference::Factor;

/// A part of the probability of what a check shows: `weights` of the outcomes
/// times the sum of the joint weighted by `factors`.
#[derive(Debug, Clone)]
pub(super) struct Component {
    pub(super) factors: Vec<Factor>,
    pub(super) weights: Vec<f64>,
}

/// Adds a component, into an equal one if there is one.
pub(super) fn put(components: &mut Vec<Component>, factors: Vec<Factor>, weights: Vec<f64>) {
    match components
        .iter_mut()
        .find(|component| component.factors == factors)
    {
        Some(component) => {
            for (sum, weight) in component.weights.iter_mut().zip(weights) {
                *sum += weight;
            }
        }
        None => components.push(Component { factors, weights }),
    }
}

/// One factor a variable, in order.
pub(super) fn merged(mut factors: Vec<Factor>) -> Vec<Factor> {
    factors.sort_by_key(|&(variable, _)| variable);
    let mut merged: Vec<Factor> = Vec::with_capacity(factors.len());
    for (variable, [no, yes]) in factors {
        match merged.last_mut() {
            Some((last, weights)) if *last == variable => {
                weights[0] *= no;
                weights[1] *= yes;
            }
            _ => merged.push((variable, [no, yes])),
        }
    }
    merged
}

/// The components of two independent reports, given the causes, together.
pub(super) fn join(first: &[Component], second: &[Component]) -> Vec<Component> {
    let mut joined = Vec::new();
    for a in first {
        for b in second {
            let factors = merged(a.factors.iter().chain(&b.factors).copied().collect());
            if factors
                .iter()
                .any(|(_, [no, yes])| *no <= 0.0 && *yes <= 0.0)
            {
                continue;
            }
            let weights = a
                .weights
                .iter()
                .flat_map(|x| b.weights.iter().map(move |y| x * y))
                .collect();
            put(&mut joined, factors, weights);
        }
    }
    joined
}
