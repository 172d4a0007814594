//! What was learned from confirmed causes: shown, taken along, begun anew.

use super::knowledge::knowledge;
use super::types::{FigureView, LearnedCauseView, LearnedView};
use super::why::marked;
use super::{ApiError, Engine};
use crate::diagnosis::{CauseId, Learned, PRIOR_WEIGHT};
use crate::records::VisitId;
use crate::store::{Confirmed, StoreError};
use crate::text::Args;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::fs::File;
use std::io::Read;
use std::path::Path;

/// The name of the file format, with its version.
const FORMAT: &str = "returnline-learned-1";

/// Largest file of counts that is read, bytes.
pub const LARGEST_LEARNED_FILE: usize = 1024 * 1024;

/// Counts on their way from one device to another.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LearnedFile {
    /// Which format this is.
    pub format: String,
    /// The database that counted.
    pub origin: String,
    /// Callbacks that were settled: a cause was confirmed, or nothing was wrong.
    pub callbacks: u32,
    /// Of these, how many each cause was confirmed in.
    pub confirmed: BTreeMap<String, u32>,
}

impl Engine {
    /// What was learned, for showing.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn learned(&self) -> Result<LearnedView, ApiError> {
        let own = self.confirmed(None)?.callbacks;
        let all = self.learned_for(None)?;
        let graph = &knowledge().graph;
        let catalog = self.wording.catalog();
        let causes = graph.causes().iter().filter_map(|cause| {
            let after = all.of(cause)?;
            Some(LearnedCauseView {
                id: cause.id.as_str().to_owned(),
                title: catalog.text(&format!("cause-{}", cause.id)),
                confirmed: all.confirmed(&cause.id),
                before: cause.prior,
                after: after.mean(),
                spread: after.standard_deviation(),
                before_shown: share(cause.prior),
                after_shown: share(after.mean()),
            })
        });
        let mut causes: Vec<LearnedCauseView> = causes.collect();
        causes.sort_by(|a, b| b.confirmed.cmp(&a.confirmed).then(a.id.cmp(&b.id)));
        let callbacks = all.callbacks();
        let args = Args::new()
            .text("own", own.to_string())
            .text("elsewhere", callbacks.saturating_sub(own).to_string())
            .text("weight", format!("{PRIOR_WEIGHT:.0}"));
        Ok(LearnedView {
            own,
            elsewhere: callbacks.saturating_sub(own),
            weight: PRIOR_WEIGHT,
            since: self
                .store
                .counts_from()
                .map_err(|error| self.failed(&error))?,
            shown: catalog.fill("learned-from", &args),
            causes,
        })
    }

    /// How the callbacks moved what is expected of a cause.
    ///
    /// # Errors
    /// [`ApiError`], of code `no-such-name` where nothing was learned about it.
    pub fn explain_learned(&self, cause: &str) -> Result<FigureView, ApiError> {
        let own = self.confirmed(None)?;
        let all = self.learned_for(None)?;
        let graph = &knowledge().graph;
        let place = graph.find_cause(&CauseId::new(cause));
        let shipped = place.map(|place| graph.cause(place));
        let learned = shipped.and_then(|shipped| Some((shipped, all.of(shipped)?)));
        let (shipped, learned) = learned.ok_or_else(|| {
            let context = [("field", "cause"), ("found", cause)];
            ApiError::new("no-such-name", &context, self.wording)
        })?;
        let catalog = self.wording.catalog();
        let counted = |key: &str, confirmed: u32, callbacks: u32| {
            let args = Args::new()
                .text("confirmed", confirmed.to_string())
                .text("callbacks", callbacks.to_string());
            (catalog.text(key), catalog.fill("why-learned-of", &args))
        };
        let (callbacks, confirmed) = (all.callbacks(), all.confirmed(&shipped.id));
        let own_confirmed = own.by_cause.get(cause).copied().unwrap_or(0);
        let worth = Args::new().text("weight", format!("{PRIOR_WEIGHT:.0}"));
        let spread = share(learned.standard_deviation());
        let source = Args::new().text("source", marked(&shipped.source, self.wording));
        Ok(FigureView {
            measured: None,
            expected: None,
            formula: catalog.text("why-learned-prior"),
            inputs: vec![
                (catalog.text("why-expected"), share(shipped.prior)),
                (
                    catalog.text("why-learned-weight"),
                    catalog.fill("why-learned-worth", &worth),
                ),
                counted("why-learned-own", own_confirmed, own.callbacks),
                counted(
                    "why-learned-elsewhere",
                    confirmed.saturating_sub(own_confirmed),
                    callbacks.saturating_sub(own.callbacks),
                ),
                (
                    catalog.text("why-learned-after"),
                    format!("{} ± {spread}", share(learned.mean())),
                ),
            ],
            source: catalog.fill("why-learned-source", &source),
        })
    }

    /// Own counts, to take along. What came from elsewhere stays out, so that
    /// nothing is counted twice.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn export_learned(&mut self) -> Result<LearnedFile, ApiError> {
        let new = self.surroundings.new_id();
        let origin = self.store.learning_origin(new);
        let origin = origin.map_err(|error| self.failed(&error))?;
        let Confirmed {
            callbacks,
            by_cause,
        } = self.confirmed(None)?;
        Ok(LearnedFile {
            format: FORMAT.to_owned(),
            origin,
            callbacks,
            confirmed: by_cause,
        })
    }

    /// The same as the bytes of a file.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn learned_bytes(&mut self) -> Result<Vec<u8>, ApiError> {
        let file = self.export_learned()?;
        serde_json::to_vec_pretty(&file).map_err(|error| {
            let detail = error.to_string();
            ApiError::new("bad-learned-file", &[("detail", &detail)], self.wording)
        })
    }

    /// Takes in a file of counts; of one that is too large only so much is read
    /// as shows it.
    ///
    /// # Errors
    /// [`ApiError`], as [`Engine::import_learned`].
    pub fn import_learned_file(&mut self, path: &Path) -> Result<LearnedView, ApiError> {
        let most = u64::try_from(LARGEST_LEARNED_FILE).unwrap_or(u64::MAX);
        let mut bytes = Vec::new();
        File::open(path)
            .and_then(|file| file.take(most.saturating_add(1)).read_to_end(&mut bytes))
            .map_err(|source| {
                let path = path.to_owned();
                self.failed(&StoreError::File { path, source })
            })?;
        self.import_learned(&bytes)
    }

    /// Takes in what another device counted, in place of what it counted before.
    ///
    /// # Errors
    /// [`ApiError`] of code `bad-learned-file` or `own-learned-file`.
    pub fn import_learned(&mut self, bytes: &[u8]) -> Result<LearnedView, ApiError> {
        let wording = self.wording;
        let bad = |detail: String| {
            ApiError::new("bad-learned-file", &[("detail", detail.as_str())], wording)
        };
        if bytes.len() > LARGEST_LEARNED_FILE {
            return Err(bad(format!("> {LARGEST_LEARNED_FILE}")));
        }
        let file: LearnedFile =
            serde_json::from_slice(bytes).map_err(|error| bad(error.to_string()))?;
        if file.format != FORMAT {
            return Err(bad(file.format));
        }
        if let Some((cause, count)) = file
            .confirmed
            .iter()
            .find(|&(cause, &count)| count > file.callbacks || !self.knows_cause(cause))
        {
            return Err(bad(format!("{cause}: {count} / {}", file.callbacks)));
        }
        let new = self.surroundings.new_id();
        let own = self.store.learning_origin(new);
        if own.map_err(|error| self.failed(&error))? == file.origin {
            return Err(ApiError::new("own-learned-file", &[], wording));
        }
        let confirmed = Confirmed {
            callbacks: file.callbacks,
            by_cause: file.confirmed,
        };
        let now = self.surroundings.now();
        self.store
            .put_confirmed_elsewhere(&file.origin, &confirmed, now)
            .map_err(|error| self.failed(&error))?;
        self.learned()
    }

    /// Begins to learn anew; the records stay as they are.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn learn_anew(&mut self) -> Result<LearnedView, ApiError> {
        let (new, now) = (self.surroundings.new_id(), self.surroundings.now());
        self.store
            .count_anew(new, now)
            .map_err(|error| self.failed(&error))?;
        self.learned()
    }

    /// What counts for a call: everything but the call itself.
    pub(super) fn learned_for(&self, visit: Option<VisitId>) -> Result<Learned, ApiError> {
        let signed = visit.map(|visit| self.store.signed(visit)).transpose();
        let signed = signed.map_err(|error| self.failed(&error))?.flatten();
        if let Some(then) = signed.and_then(|signed| signed.learned) {
            let confirmed = then.confirmed.iter();
            let known = confirmed.filter(|(cause, _)| self.knows_cause(cause));
            let mut learned = Learned::default();
            let known = known.map(|(cause, count)| (CauseId::new(cause), *count));
            learned.add(then.callbacks, known);
            return Ok(learned);
        }
        let elsewhere = self
            .store
            .confirmed_elsewhere()
            .map_err(|error| self.failed(&error))?;
        let mut learned = Learned::default();
        for counted in elsewhere.into_values().chain([self.confirmed(visit)?]) {
            let by_cause = counted.by_cause.into_iter();
            let known = by_cause.filter(|(cause, _)| self.knows_cause(cause));
            let known = known.map(|(cause, count)| (CauseId::new(&cause), count));
            learned.add(counted.callbacks, known);
        }
        Ok(learned)
    }

    fn confirmed(&self, except: Option<VisitId>) -> Result<Confirmed, ApiError> {
        self.store
            .confirmed(except)
            .map_err(|error| self.failed(&error))
    }

    fn knows_cause(&self, cause: &str) -> bool {
        knowledge().graph.find_cause(&CauseId::new(cause)).is_some()
    }
}

/// A share of callbacks, with the digits that a rare cause needs.
fn share(of: f64) -> String {
    let digits = if of < 0.01 { 2 } else { 1 };
    format!("{:.digits$} %", of * 100.0)
}
