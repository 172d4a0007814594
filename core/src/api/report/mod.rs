//! The reports of a call.

mod before;
mod charts;
mod content;
mod homeowner;
mod season;
mod service;

pub(super) use before::GaugeOn;

use super::types::ReportRequest;
use super::{ApiError, Call, Engine, Wording};
use crate::named::named;
use crate::records::{Photo, Signature, SignatureRole, VisitId};
use crate::report::document::{PageSize, Strokes};
use crate::report::parts::{Issuer, PhotoPart, SignaturePart};
use crate::report::photo;
use crate::report::{ReportError, WriteError, file, to_pdf};
use crate::text::{Args, Catalog, Language};
use chrono::{DateTime, FixedOffset, NaiveDate};
use std::path::Path;
use std::sync::Arc;

named! {
    /// For whom a report is written.
    #[derive(Copy, Clone, PartialEq, Eq, Debug, Default)]
    pub enum Reader {
        /// Complete, sober, checkable.
        #[default]
        Technician = "technician",
        /// A page or two in plain words.
        Homeowner = "homeowner",
    }
}

/// With what a report is issued, besides the call itself. The same call and the
/// same issue give the same bytes.
#[derive(Clone, Debug)]
pub struct Issue {
    /// Moment of issue.
    pub issued: DateTime<FixedOffset>,
    /// Identity of the report; site and day where not given.
    pub id: Option<String>,
    /// Paper.
    pub page: PageSize,
    /// The company.
    pub issuer: Issuer,
    /// Photos, in the order they shall stand.
    pub photos: Vec<PhotoPart>,
    /// Signatures given.
    pub signatures: Vec<Signature>,
    /// Those of them that were given before the visit was changed.
    pub outdated: Vec<SignatureRole>,
    /// Day of the next visit, if one is agreed.
    pub next_visit: Option<NaiveDate>,
}

impl Issue {
    /// An issue without photos, signatures and company.
    pub fn new(issued: DateTime<FixedOffset>, page: PageSize) -> Self {
        Self {
            issued,
            id: None,
            page,
            issuer: Issuer::default(),
            photos: Vec::new(),
            signatures: Vec::new(),
            outdated: Vec::new(),
            next_visit: None,
        }
    }
}

impl Call {
    /// A report of the call as PDF.
    ///
    /// # Errors
    /// [`ReportError`].
    pub fn report(&self, reader: Reader, issue: &Issue) -> Result<Vec<u8>, ReportError> {
        let catalog = self.wording.catalog();
        let document = match reader {
            Reader::Technician => {
                crate::report::service::document(&self.service_content(issue), catalog)
            }
            Reader::Homeowner => {
                crate::report::homeowner::document(&self.homeowner_content(issue), catalog)
            }
        };
        to_pdf(&document, &crate::report::service::words(catalog))
    }

    /// A file name that a person can file.
    pub fn report_name(&self, reader: Reader) -> String {
        let args = Args::new()
            .text("site", self.site_title())
            .text("date", self.today.to_string());
        let catalog = self.wording.catalog();
        let (name, fallback) = match reader {
            Reader::Technician => ("report-file-name", "service-report"),
            Reader::Homeowner => ("homeowner-file-name", "homeowner-report"),
        };
        let name = catalog.fill(name, &args);
        file::safe_name(&name, "pdf", &catalog.text(fallback))
    }
}

/// The photo of a page from a kept picture, with its words.
///
/// # Errors
/// [`ApiError`] of code `photo-damaged` and others.
pub fn photo_part(
    jpeg: &[u8],
    phase: &str,
    caption: Option<String>,
    taken_at: Option<String>,
    wording: Wording,
) -> Result<PhotoPart, ApiError> {
    let photo = photo::Photo::from_bytes(jpeg)
        .map_err(|error| ApiError::new(error.code(), &[("detail", &error.to_string())], wording))?;
    Ok(PhotoPart {
        photo: Arc::new(photo),
        phase: wording.catalog().text(&format!("photo-{phase}")),
        caption,
        taken_at,
    })
}

/// Signatures as they stand on a page: those given, and places for the others.
fn signature_parts(signatures: &[Signature], catalog: &Catalog) -> Vec<SignaturePart> {
    let role = |role: SignatureRole| catalog.text(&format!("signature-{}", role.id()));
    SignatureRole::ALL
        .into_iter()
        .map(|wanted| {
            let given = signatures.iter().find(|given| given.role() == wanted);
            given.map_or_else(
                || SignaturePart {
                    role: role(wanted),
                    ..SignaturePart::default()
                },
                |given| SignaturePart {
                    role: role(wanted),
                    name: given.name().to_owned(),
                    date: super::attachments::moment(given.signed_at()),
                    strokes: Strokes {
                        paths: given
                            .strokes()
                            .iter()
                            .map(|stroke| {
                                let place = |[x, y]: &[f32; 2]| (x * PAD * given.aspect(), y * PAD);
                                stroke.iter().map(place).collect()
                            })
                            .collect(),
                    },
                },
            )
        })
        .collect()
}

/// Height of the pad on the page, points.
const PAD: f32 = 44.0;

impl Engine {
    /// A report of a visit as PDF.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn report(&self, visit: &str, request: &ReportRequest) -> Result<Vec<u8>, ApiError> {
        let (call, reader) = self.call_for(visit, request)?;
        let issue = self.issue(visit, request, call.wording)?;
        call.report(reader, &issue).map_err(|error| {
            ApiError::new(
                "report-failed",
                &[("detail", &error.to_string())],
                self.wording(),
            )
        })
    }

    /// Writes a report of a visit to a path, whole or not at all.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn save_report(
        &self,
        visit: &str,
        request: &ReportRequest,
        path: &Path,
    ) -> Result<(), ApiError> {
        let bytes = self.report(visit, request)?;
        file::write_whole(path, &bytes).map_err(|error| not_written(&error, self.wording()))
    }

    /// A file name that a person can file.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn report_name(&self, visit: &str, request: &ReportRequest) -> Result<String, ApiError> {
        let (call, reader) = self.call_for(visit, request)?;
        Ok(call.report_name(reader))
    }

    /// The call in the language and units asked for, and the reader.
    pub(super) fn call_for(
        &self,
        visit: &str,
        request: &ReportRequest,
    ) -> Result<(Call, Reader), ApiError> {
        let unnamed = |field: &str, found: &str| {
            let context = [("field", field), ("found", found)];
            ApiError::new("no-such-name", &context, self.wording)
        };
        let reader =
            Reader::from_id(&request.reader).ok_or_else(|| unnamed("reader", &request.reader))?;
        let mut wording = self.wording;
        if let Some(tag) = &request.language {
            wording.language = Language::from_tag(tag).ok_or_else(|| unnamed("language", tag))?;
        }
        let record = self.record(visit)?;
        let today = self.surroundings.today();
        let learned = self.learned_for(Some(record.id))?;
        let call = Call::assess_after(learned, &record.file, today, wording)
            .with_gauge_before(self.gauge_before(&record)?);
        Ok((call, reader))
    }

    /// What the store adds to a report.
    pub(super) fn issue(
        &self,
        visit: &str,
        request: &ReportRequest,
        wording: Wording,
    ) -> Result<Issue, ApiError> {
        let id = self.visit_id(visit)?;
        let page = match request.paper.as_deref() {
            Some("a4") => PageSize::A4,
            Some(_) => PageSize::Letter,
            None => self.page(),
        };
        let next_visit = match request.next_visit.as_deref().filter(|day| !day.is_empty()) {
            None => None,
            Some(day) => Some(day.parse().map_err(|_| {
                let context = [("field", "next_visit"), ("found", day)];
                ApiError::new("no-such-name", &context, self.wording)
            })?),
        };
        Ok(Issue {
            id: Some(format!("{visit} {}", request.reader)),
            photos: self.photo_parts(id, wording)?,
            signatures: self
                .store
                .signatures(id)
                .map_err(|error| self.failed(&error))?,
            outdated: self
                .store
                .signed_before_a_change(id)
                .map_err(|error| self.failed(&error))?,
            next_visit,
            issuer: self.issuer()?,
            ..Issue::new(self.surroundings.here(), page)
        })
    }

    /// The company, as the settings have it.
    pub(super) fn issuer(&self) -> Result<Issuer, ApiError> {
        let logo = self.store.logo().map_err(|error| self.failed(&error))?;
        // A logo that cannot be read any more is left out; the report matters more.
        let logo = logo.and_then(|png| photo::Photo::from_bytes(&png).ok());
        Ok(Issuer {
            company: self.settings.company.clone(),
            phone: self.settings.phone.clone(),
            logo: logo.map(Arc::new),
        })
    }

    /// The photos of a visit, read from the store one by one.
    fn photo_parts(&self, visit: VisitId, wording: Wording) -> Result<Vec<PhotoPart>, ApiError> {
        let photos = self.store.photos(visit);
        let photos = photos.map_err(|error| self.failed(&error))?;
        let part = |photo: Photo| {
            let jpeg = self.store.picture(photo.id);
            let jpeg = jpeg.map_err(|error| self.failed(&error))?;
            let taken_at = super::attachments::moment(photo.taken_at);
            photo_part(
                &jpeg,
                photo.phase.id(),
                photo.caption,
                Some(taken_at),
                wording,
            )
        };
        photos.into_iter().map(|(photo, _)| part(photo)).collect()
    }
}

/// A report that was not written, with what to do about it.
pub fn not_written(error: &WriteError, wording: Wording) -> ApiError {
    let (code, folder) = match error {
        WriteError::NoRoom { folder, .. } => ("report-no-room", folder.display().to_string()),
        WriteError::NotWritable { folder, .. } => {
            ("report-read-only", folder.display().to_string())
        }
        _ => ("report-not-written", String::new()),
    };
    let context = [("folder", folder.as_str()), ("detail", &error.to_string())];
    ApiError::new(code, &context, wording)
}

#[cfg(test)]
mod tests;
