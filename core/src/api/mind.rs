//! What would change the engine's mind about a cause.

use super::Call;
use super::assess::checks::outcome_id;
use super::assess::percent;
use super::types::{TurnOutcome, TurnView};
use crate::diagnosis::{CauseId, Diagnosis, Trace};
use crate::text::Args;

/// Outcomes told for each cause.
const TOLD: usize = 3;
/// A change of a cause's probability smaller than this is no change of mind.
const CHANGE: f64 = 0.1;
/// Bits that a finding must carry for the cause to be said to rest on it.
const RESTS_BITS: f64 = 1.0;

impl Call {
    /// What would change the mind about one cause: the finding it rests on most,
    /// and what open checks could show that would move it furthest, up or down.
    pub(super) fn turns(
        &self,
        diagnosis: &Diagnosis,
        cause: &CauseId,
        probability: f64,
        trace: Option<&Trace>,
    ) -> Vec<TurnView> {
        let catalog = self.wording.catalog();
        let rests = trace.and_then(|trace| {
            let strongest = trace
                .steps
                .iter()
                .max_by(|a, b| a.bits.total_cmp(&b.bits))?;
            (strongest.bits >= RESTS_BITS).then(|| {
                let args =
                    Args::new().text("found", self.found(&strongest.finding, strongest.level));
                TurnView {
                    words: catalog.fill("turn-rests-on", &args),
                    outcome: None,
                }
            })
        });
        // Only the outcomes that name the cause among their first say how
        // probable it would be.
        let mut moves: Vec<(f64, TurnView)> = Vec::new();
        for outlook in diagnosis
            .checks
            .iter()
            .filter(|check| check.obstacle.is_none())
        {
            for outcome in &outlook.outcomes {
                let after = outcome.leading.iter().find(|(id, _)| id == cause);
                let Some((_, after)) = after else { continue };
                if (after - probability).abs() < CHANGE {
                    continue;
                }
                let seen = outcome
                    .levels
                    .iter()
                    .map(|(finding, level)| self.found(finding, *level));
                let args = Args::new()
                    .text("check", catalog.text(&format!("check-{}", outlook.check)))
                    .text("seen", seen.collect::<Vec<_>>().join(", "));
                let key = if *after < probability {
                    "turn-down"
                } else {
                    "turn-up"
                };
                let weight = (after - probability).abs() * outcome.probability;
                let turn = TurnView {
                    words: catalog.fill(key, &args),
                    outcome: Some(TurnOutcome {
                        check: outlook.check.as_str().to_owned(),
                        outcome: outcome_id(outcome),
                        shown: format!("{} → {}", percent(probability), percent(*after)),
                    }),
                };
                moves.push((weight, turn));
            }
        }
        moves.sort_by(|a, b| b.0.total_cmp(&a.0));
        let moves = moves.into_iter().take(TOLD).map(|(_, turn)| turn);
        rests.into_iter().chain(moves).collect()
    }
}
