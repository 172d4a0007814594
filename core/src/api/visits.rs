//! Visits: listing, starting, opening, and changing their facts.

use super::knowledge::{answer_key, knowledge};
use super::types::{FieldEntry, NewVisit, VisitLine, VisitView};
use super::{Answer, ApiError, Call, Engine};
use crate::records::field::{self, FieldGroup};
use crate::records::visit_file::{VisitFile, Vocabulary};
use crate::records::{Level, Outcome, Signature, SiteId, SystemId, Visit, VisitId, name_of};
use crate::store::{Drafted, StoreError, VisitRecord};
use crate::text::Args;
use crate::units::Unit;

/// The field that says how a visit ended.
const OUTCOME: &str = "visit.outcome";

impl Engine {
    /// All visits, last changed first.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn visits(&self) -> Result<Vec<VisitLine>, ApiError> {
        let lines = self.store.visits().map_err(|error| self.failed(&error))?;
        Ok(lines
            .into_iter()
            .map(|line| VisitLine {
                id: line.id.to_string(),
                site: self.site_title(&line.site_name),
                date: line.date.map(|date| date.to_string()),
                complaint: line.complaint,
                outcome: line.outcome.and_then(|outcome| self.outcome_words(outcome)),
                system: line.system_id.to_string(),
                demo: line.demo,
            })
            .collect())
    }

    /// Starts a visit, at a new system or at one visited before.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn start_visit(&mut self, new: &NewVisit) -> Result<VisitView, ApiError> {
        let mut record = VisitRecord {
            id: VisitId(self.surroundings.new_id()),
            system_id: SystemId(self.surroundings.new_id()),
            site_id: SiteId(self.surroundings.new_id()),
            file: VisitFile::default(),
        };
        if let Some(earlier) = &new.same_system_as {
            let earlier = self.record(earlier)?;
            record.system_id = earlier.system_id;
            record.site_id = earlier.site_id;
            let now = self.store.unsigned(earlier.id);
            record.file = VisitFile {
                visit: Visit::default(),
                ..now.map_err(|error| self.failed(&error))?
            };
        } else {
            record.file.site.name = self.words("site.name", &new.site)?.unwrap_or_default();
        }
        let complaint = new.complaint.as_deref().unwrap_or_default();
        record.file.visit.complaint = self.words("visit.complaint", complaint)?;
        record.file.visit.date = Some(self.surroundings.today());
        record.file.visit.technician = self.settings.technician.clone();
        self.keep(&record)?;
        self.view(&record)
    }

    /// The words of a text field as they are kept.
    fn words(&self, id: &str, text: &str) -> Result<Option<String>, ApiError> {
        let parsed = match field::field(id) {
            Some(field) => field.parse(text, None),
            None => Err(field::FieldError::NoSuchField(id.to_owned())),
        };
        match parsed.map_err(|error| ApiError::field(&error, self.wording))? {
            Some(field::FieldValue::Text(text)) => Ok(Some(text)),
            _ => Ok(None),
        }
    }

    /// Takes in a visit file as a new visit: all or nothing.
    ///
    /// # Errors
    /// [`ApiError`] with every fault of the file.
    pub fn take_visit_file(&mut self, bytes: &[u8]) -> Result<VisitView, ApiError> {
        let file = super::read_visit_file(bytes, self.wording)?;
        let record = VisitRecord {
            id: VisitId(self.surroundings.new_id()),
            system_id: SystemId(self.surroundings.new_id()),
            site_id: SiteId(self.surroundings.new_id()),
            file,
        };
        self.keep(&record)?;
        self.view(&record)
    }

    /// What the engine makes of a visit.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn answer(&self, visit: &str) -> Result<Answer, ApiError> {
        Ok(self.call(visit)?.answer().clone())
    }

    pub(super) fn call(&self, visit: &str) -> Result<Call, ApiError> {
        let record = self.record(visit)?;
        Ok(Call::assess_after(
            self.learned_for(Some(record.id))?,
            &record.file,
            self.surroundings.today(),
            self.wording,
        ))
    }

    /// A visit with everything entered so far.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn visit(&self, id: &str) -> Result<VisitView, ApiError> {
        self.view(&self.record(id)?)
    }

    /// Changes one fact; it is kept when this returns.
    ///
    /// # Errors
    /// [`ApiError`]; the visit is unchanged. Of code `not-proven` if the visit would end
    /// as put right and proven with steps or proofs open: `open` in its context has one
    /// of them a line. [`Engine::end_as_proven`] ends it so all the same.
    pub fn set_field(&mut self, visit: &str, entry: &FieldEntry) -> Result<VisitView, ApiError> {
        self.put_field(visit, entry, false)
    }

    /// Ends a visit as put right and proven by somebody who was told what of it is open.
    ///
    /// # Errors
    /// [`ApiError`]; the visit is unchanged.
    pub fn end_as_proven(&mut self, visit: &str) -> Result<VisitView, ApiError> {
        let entry = FieldEntry {
            id: OUTCOME.to_owned(),
            text: name_of(&Outcome::Fixed),
            unit: None,
        };
        self.put_field(visit, &entry, true)
    }

    /// Refuses what is not proven.
    fn may_be_proven(&self, visit: &str) -> Result<(), ApiError> {
        let call = self.call(visit)?;
        let plan = call.answer().plan.as_ref();
        match plan.map(|plan| plan.unproved.as_slice()) {
            None | Some([]) => Ok(()),
            Some(open) => {
                let open = open.join("\n");
                Err(ApiError::new(
                    "not-proven",
                    &[("open", &open)],
                    self.wording,
                ))
            }
        }
    }

    /// `told` says that whoever ends the visit knows what of it is open.
    fn put_field(
        &mut self,
        visit: &str,
        entry: &FieldEntry,
        told: bool,
    ) -> Result<VisitView, ApiError> {
        let mut record = self.record(visit)?;
        let before = record.clone();
        let wrong = |error: &field::FieldError| ApiError::field(error, self.wording);
        let field = field::field(&entry.id)
            .ok_or_else(|| wrong(&field::FieldError::NoSuchField(entry.id.clone())))?;
        let value = field
            .parse(
                entry.text.as_deref().unwrap_or_default(),
                self.unit_of(field, entry),
            )
            .map_err(|error| wrong(&error))?;
        field
            .write(&mut record.file, value)
            .map_err(|error| wrong(&error))?;
        let fixed = |record: &VisitRecord| record.file.visit.outcome == Some(Outcome::Fixed);
        if fixed(&record) && !fixed(&before) && !told {
            self.may_be_proven(visit)?;
        }
        if !matches!(field.group, FieldGroup::Visit | FieldGroup::Means) {
            self.not_signed(&record)?;
        }
        let now = self.surroundings.now();
        let file = &record.file;
        match field.group {
            FieldGroup::Site => self.store.put_site(record.site_id, &file.site, now),
            FieldGroup::Visit | FieldGroup::Means => {
                self.store
                    .put_visit_facts(record.id, record.system_id, &file.visit, now)
            }
            // The record of commissioning and the system share a group on the form.
            _ => self
                .store
                .put_system(record.system_id, record.site_id, &file.system, now)
                .and_then(|()| {
                    self.store
                        .put_commissioning(record.system_id, &file.commissioning, now)
                }),
        }
        .map_err(|error| self.failed(&error))?;
        if record != before {
            let label = format!("field-{}", field.id.replace('.', "-"));
            let what = self.wording.catalog().text(&label);
            match field.kind {
                field::FieldKind::Text => self.written(what, before),
                _ => self.entered(what, before),
            }
        }
        self.view(&record)
    }

    /// Answers a finding, or makes it unknown again.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn set_answer(
        &mut self,
        visit: &str,
        finding: &str,
        answer: Option<&str>,
    ) -> Result<VisitView, ApiError> {
        let id = self.visit_id(visit)?;
        let levels = knowledge().answers(finding);
        let levels = levels.ok_or_else(|| {
            ApiError::new("no-such-finding", &[("finding", finding)], self.wording)
        })?;
        let level = match answer {
            None => None,
            Some(text) => {
                let named = |level: &&Level| name_of(*level).as_deref() == Some(text);
                Some(*levels.iter().find(named).ok_or_else(|| {
                    let context = [("finding", finding), ("found", text)];
                    ApiError::new("no-such-answer", &context, self.wording)
                })?)
            }
        };
        let before = self.record(visit)?;
        let now = self.surroundings.now();
        self.store
            .put_answer(id, finding, level, now)
            .map_err(|error| self.failed(&error))?;
        let what = self.wording.catalog().text(&answer_key(finding));
        self.entered(what, before);
        self.visit(visit)
    }

    /// The unit sent along, or the one in which the field stands now.
    fn unit_of(&self, field: &field::Field, entry: &FieldEntry) -> Option<Unit> {
        match field.kind {
            field::FieldKind::Measure(dimension) => match &entry.unit {
                Some(symbol) => Unit::of(dimension).find(|unit| unit.symbol() == symbol),
                None => Some(self.wording.units.unit(dimension)),
            },
            _ => None,
        }
    }

    pub(super) fn site_title(&self, name: &str) -> String {
        if name.trim().is_empty() {
            self.wording.catalog().text("site-without-name")
        } else {
            name.to_owned()
        }
    }

    pub(super) fn visit_id(&self, text: &str) -> Result<VisitId, ApiError> {
        text.parse().map_err(|_| {
            let error = StoreError::NotFound {
                kind: "visit",
                id: text.to_owned(),
            };
            self.failed(&error)
        })
    }

    pub(super) fn record(&self, id: &str) -> Result<VisitRecord, ApiError> {
        self.store
            .record(self.visit_id(id)?)
            .map_err(|error| self.failed(&error))
    }

    pub(super) fn keep(&mut self, record: &VisitRecord) -> Result<(), ApiError> {
        let now = self.surroundings.now();
        self.store
            .put_record(record, now)
            .map_err(|error| self.failed(&error))
    }

    /// When the last signature was given for a visit; none while nobody signed.
    fn signed_on(&self, record: &VisitRecord) -> Result<Option<String>, ApiError> {
        let signatures = self.store.signatures(record.id);
        let signatures = signatures.map_err(|error| self.failed(&error))?;
        let last = signatures.iter().map(Signature::signed_at).max();
        Ok(last.map(super::attachments::moment))
    }

    /// Refuses what would change the system under a signature.
    pub(super) fn not_signed(&self, record: &VisitRecord) -> Result<(), ApiError> {
        match self.signed_on(record)? {
            Some(signed) => Err(ApiError::new(
                "visit-signed",
                &[("signed", &signed)],
                self.wording,
            )),
            None => Ok(()),
        }
    }

    pub(super) fn failed(&self, error: &StoreError) -> ApiError {
        ApiError::store(error, self.wording)
    }

    pub(super) fn view(&self, record: &VisitRecord) -> Result<VisitView, ApiError> {
        let visit = &record.file.visit;
        Ok(VisitView {
            id: record.id.to_string(),
            title: self.site_title(&record.file.site.name),
            date: visit.date.map(|date| date.to_string()),
            complaint: visit.complaint.clone(),
            groups: self.field_groups(&record.file),
            questions: self.question_groups(visit),
            readings: visit
                .readings
                .iter()
                .map(|reading| self.reading_view(reading))
                .collect(),
            points: self.points(),
            earlier: self.earlier_readings(record)?,
            last: self.last_visit(record.id)?,
            work_begun: visit.actions.iter().any(|action| action.step.is_some()),
            undo: self.undo.last(record.id).map(str::to_owned),
            similar: self
                .similar_sites(record)
                .map_err(|error| self.failed(&error))?,
            verdicts: self.verdict_views(visit),
            signed: self.signed_on(record)?.map(|day| {
                let args = Args::new().text("signed", day);
                self.wording.catalog().fill("visit-is-signed", &args)
            }),
            drafts: self.drafts(Drafted::Visit(record.id))?,
        })
    }
}
