//! What was seen, as the answers speak of it.

use crate::diagnosis::graph::{CauseIx, EvidenceKind, FindingIx, Level};
use crate::diagnosis::inference::Inference;

/// One observed finding.
pub(super) struct Seen {
    pub(super) finding: FindingIx,
    /// The level its readings favour, taken as sound.
    pub(super) level: Level,
    pub(super) instruments: Vec<CauseIx>,
    normal: Level,
    /// Weight of the favoured level over that of the normal one.
    over_normal: f64,
    /// It comes from readings, and they lie where two levels meet.
    pub(super) at_edge: bool,
}

/// A reading is abnormal if it favours another level over the normal one by this factor.
const ABNORMAL_RATIO: f64 = 2.0;
/// Readings that favour a level over the next by less than this factor lie where the two meet.
const EDGE_RATIO: f64 = 4.0;

impl Seen {
    pub(super) fn is_abnormal(&self) -> bool {
        self.level != self.normal && self.over_normal >= ABNORMAL_RATIO
    }
}

/// The observed findings in the order of the case.
pub(super) fn seen(inference: &Inference<'_>) -> Vec<Seen> {
    inference
        .observed()
        .iter()
        .map(|observed| {
            let entry = inference.graph().finding(observed.finding);
            let scale = entry.scale;
            let weights = observed.sound_weights();
            let normal = scale.normal();
            let mut level = normal;
            let mut best = scale.index(normal).map_or(0.0, |at| weights[at]);
            let normal_weight = best;
            for (&other, &weight) in scale.levels().iter().zip(&weights) {
                if weight > best {
                    (level, best) = (other, weight);
                }
            }
            let over_normal = if normal_weight > 0.0 {
                best / normal_weight
            } else {
                f64::INFINITY
            };
            let beside = scale.levels().iter().zip(&weights);
            // Readings that clearly contradict each other lie at no edge.
            let is_contradicted = scale.index(level).is_some_and(|at| {
                let mut readings = observed.readings().iter();
                readings.any(|reading| {
                    let most = reading.weights.iter().copied().fold(0.0, f64::max);
                    most >= EDGE_RATIO * reading.weights[at]
                })
            });
            let next = beside
                .filter(|&(&other, _)| other != level)
                .fold(0.0, |most: f64, (_, &weight)| most.max(weight));
            Seen {
                finding: observed.finding,
                level,
                at_edge: matches!(entry.evidence, EvidenceKind::Evaluator(_))
                    && best < EDGE_RATIO * next
                    && !is_contradicted,
                instruments: observed.instruments(),
                normal,
                over_normal,
            }
        })
        .collect()
}
