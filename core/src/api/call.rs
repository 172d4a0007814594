//! One call worked out, with or without a store.

use super::knowledge::knowledge;
use super::report::GaugeOn;
use super::types::{AssessmentView, PlanView};
use super::{ApiError, Wording};
use crate::diagnosis::{
    Case, Diagnosis, Learned, Licence, Means, Policy, diagnose, to_bif, to_xmlbif,
};
use crate::evidence::{Gathered, gather};
use crate::model::LoopModel;
use crate::plan::WorkPlan;
use crate::pressure::belief::Belief;
use crate::records::visit_file::{self, VisitFile};
use chrono::NaiveDate;
use serde::Serialize;
use std::collections::BTreeSet;
use std::sync::OnceLock;
use ts_rs::TS;

/// How many causes are traced: more than anybody reads.
const TRACED: usize = 8;

/// A call with everything the engine makes of it.
pub struct Call {
    pub(super) file: VisitFile,
    pub(super) model: LoopModel,
    pub(super) gathered: Gathered,
    pub(super) learned: Learned,
    pub(super) diagnosis: Option<Diagnosis>,
    pub(super) wording: Wording,
    pub(super) today: NaiveDate,
    /// What the gauge read at this system on other visits.
    pub(super) gauge_before: Vec<GaugeOn>,
    /// Worded once, however many ask: screen, document and report.
    answer: OnceLock<Answer>,
    /// Worked out once as well: the plan, and what the loop's own readings taught.
    pub(super) plan: OnceLock<Option<WorkPlan>>,
    pub(super) loop_learned: OnceLock<Option<Belief>>,
}

/// The whole answer to a call.
#[derive(Clone, Debug, Serialize, TS)]
#[ts(export)]
pub struct Answer {
    /// What the engine thinks.
    pub assessment: AssessmentView,
    /// What to do; none when there is nothing to treat.
    pub plan: Option<PlanView>,
}

/// Reads a visit file.
///
/// # Errors
/// [`ApiError`] of code `bad-visit-file` with every fault.
pub fn read_visit_file(bytes: &[u8], wording: Wording) -> Result<VisitFile, ApiError> {
    visit_file::read(bytes, knowledge()).map_err(|faults| ApiError::faults(&faults, wording))
}

impl Call {
    /// Works a call out. `today` stands in for a visit without a date.
    /// Only the shipped priors count; see [`Call::assess_after`].
    pub fn assess(file: &VisitFile, today: NaiveDate, wording: Wording) -> Self {
        Self::assess_after(Learned::default(), file, today, wording)
    }

    /// Works a call out with the priors learned from earlier ones.
    pub fn assess_after(
        learned: Learned,
        file: &VisitFile,
        today: NaiveDate,
        wording: Wording,
    ) -> Self {
        let knowledge = knowledge();
        let today = file.visit.date.unwrap_or(today);
        let model = LoopModel::of(file);
        let mut gathered = gather(file, &model, &knowledge.graph, today);
        gathered.case.priors = learned.priors(&knowledge.graph);
        let means = means(file, &gathered);
        // A case is refused only when its evidence cannot be weighed at all;
        // then the answer says that nothing can be told, and nothing is lost.
        let diagnosis = diagnose(
            &knowledge.graph,
            &gathered.case,
            &means,
            &Policy::default(),
            TRACED,
        )
        .ok();
        Self {
            file: file.clone(),
            model,
            gathered,
            learned,
            diagnosis,
            wording,
            today,
            gauge_before: Vec::new(),
            answer: OnceLock::new(),
            plan: OnceLock::new(),
            loop_learned: OnceLock::new(),
        }
    }

    /// The same with what the gauge read before; the answer does not depend on it,
    /// the picture of the year shows it.
    pub(super) fn with_gauge_before(mut self, before: Vec<GaugeOn>) -> Self {
        self.gauge_before = before;
        self
    }

    /// The rule graph as this call's evidence leaves it, in an open format.
    ///
    /// # Errors
    /// [`ApiError`] of code `not-exported` if the evidence cannot be weighed.
    pub fn network(&self, format: NetworkFormat) -> Result<String, ApiError> {
        network(&self.gathered.case, format, self.wording)
    }

    /// What the engine made of the call, not worded; none if its evidence
    /// cannot be weighed at all.
    pub fn diagnosis(&self) -> Option<&Diagnosis> {
        self.diagnosis.as_ref()
    }

    /// The whole answer.
    pub fn answer(&self) -> &Answer {
        self.answer.get_or_init(|| Answer {
            assessment: self.assessment(),
            plan: self.plan(),
        })
    }
}

/// An open Bayesian network format.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum NetworkFormat {
    /// Bayesian Interchange Format 0.15.
    Bif,
    /// The same in XML, 0.3.
    XmlBif,
}

/// The rule graph with the evidence of a case.
pub(super) fn network(
    case: &Case,
    format: NetworkFormat,
    wording: Wording,
) -> Result<String, ApiError> {
    let graph = &knowledge().graph;
    let written = match format {
        NetworkFormat::Bif => to_bif(graph, case),
        NetworkFormat::XmlBif => to_xmlbif(graph, case),
    };
    written
        .map_err(|error| ApiError::new("not-exported", &[("detail", &error.to_string())], wording))
}

/// The rule graph alone, in an open format.
///
/// # Errors
/// [`ApiError`] of code `not-exported`.
pub fn graph_network(format: NetworkFormat, wording: Wording) -> Result<String, ApiError> {
    network(&Case::default(), format, wording)
}

/// What the technician may do. Licences nobody mentioned are not assumed;
/// tools nobody listed are taken to be at hand.
fn means(file: &VisitFile, gathered: &Gathered) -> Means {
    let said = &file.visit.means;
    let mut licences = BTreeSet::new();
    if said.refrigerant_certified == Some(true) {
        licences.insert(Licence::Refrigerant);
    }
    if said.electrical_licence == Some(true) {
        licences.insert(Licence::Electrical);
    }
    Means {
        tools: None,
        licences,
        out_of_reach: gathered.out_of_reach.clone(),
    }
}
