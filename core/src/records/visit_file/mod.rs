//! The visit file: one JSON document that says everything known of a call.
//!
//! The published schema ([`schema`]) is what [`read`] enforces, so the two
//! cannot drift apart. Reading reports every fault at once, each with its
//! path, the value found there, and what would be accepted.

mod fault;
mod limits;
mod wire;

pub use fault::{Fault, FaultCode};
pub(crate) use wire::strip_null;
pub use wire::{FORMAT, VERSION, schema};

use super::{Commissioning, Site, System, Visit};
use serde_json::Value;
use std::sync::LazyLock;

/// Largest visit file that is read, in bytes.
pub const MAX_BYTES: usize = 4 * 1024 * 1024;

/// Everything a visit file says.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct VisitFile {
    /// Where.
    pub site: Site,
    /// The system.
    pub system: System,
    /// How it was commissioned.
    pub commissioning: Commissioning,
    /// The visit.
    pub visit: Visit,
}

/// The identifiers that a visit file may refer to.
///
/// Implemented by the rule graph; records do not know it.
pub trait Vocabulary {
    /// The levels an answer to this finding may have; none if there is no such finding.
    fn answers(&self, finding: &str) -> Option<&[super::Level]>;
    /// Whether this cause exists.
    fn has_cause(&self, cause: &str) -> bool;
    /// Whether this check exists.
    fn has_check(&self, check: &str) -> bool;
    /// Identifiers close to one that does not exist, nearest first.
    fn close_to(&self, unknown: &str) -> Vec<String>;
}

static VALIDATOR: LazyLock<Result<jsonschema::Validator, String>> =
    LazyLock::new(|| jsonschema::validator_for(&schema()).map_err(|error| error.to_string()));

/// Reads a visit file.
///
/// # Errors
/// Every [`Fault`] found; never empty.
pub fn read(bytes: &[u8], vocabulary: &dyn Vocabulary) -> Result<VisitFile, Vec<Fault>> {
    let document = parse(bytes).map_err(|fault| vec![fault])?;
    wire::check_envelope(&document).map_err(|fault| vec![fault])?;
    let validator = VALIDATOR
        .as_ref()
        .map_err(|error| vec![Fault::internal(error)])?;
    let faults = faults(validator, &document);
    if !faults.is_empty() {
        return Err(faults);
    }
    let wire: wire::Wire = serde_json::from_value(document)
        .map_err(|error| vec![Fault::at("", FaultCode::Malformed, &error.to_string(), "")])?;
    let mut faults = Vec::new();
    let file = wire.into_file(&mut faults);
    faults.extend(check_limits(&file));
    limits::check_vocabulary(&file.visit, vocabulary, &mut faults);
    if faults.is_empty() {
        Ok(file)
    } else {
        Err(faults)
    }
}

/// What a schema finds wrong with a document.
pub(crate) fn faults(validator: &jsonschema::Validator, document: &Value) -> Vec<Fault> {
    let found = validator.iter_errors(document);
    fault::tidy(found.flat_map(|error| fault::translate(&error)).collect())
}

/// Writes a visit file, readable by [`read`].
pub fn write(file: &VisitFile) -> Value {
    // Plain data with string keys always serialises.
    serde_json::to_value(wire::Wire::from_file(file)).unwrap_or(Value::Null)
}

/// Writes the part of a visit file that is the visit.
pub fn write_visit(visit: &Visit) -> Value {
    // Plain data with string keys always serialises.
    serde_json::to_value(wire::WireVisit::from_visit(visit)).unwrap_or(Value::Null)
}

/// Reads what [`write_visit`] wrote. Numbers are held to their ranges; whether
/// findings and causes exist is not asked, since another program may know more.
///
/// # Errors
/// The first thing wrong, for a person who mends files.
pub fn read_visit(written: Value) -> Result<Visit, String> {
    let wire: wire::WireVisit =
        serde_json::from_value(written).map_err(|error| error.to_string())?;
    let mut faults = Vec::new();
    let file = VisitFile {
        visit: wire.into_visit(&mut faults),
        ..VisitFile::default()
    };
    faults.extend(check_limits(&file));
    match faults.first() {
        Some(fault) => Err(format!("{}: {}", fault.path, fault.found)),
        None => Ok(file.visit),
    }
}

/// The faults in the numbers of a call that are not readings.
pub fn check_limits(file: &VisitFile) -> Vec<Fault> {
    let mut faults = Vec::new();
    limits::check(file, &mut faults);
    faults
}

fn parse(bytes: &[u8]) -> Result<Value, Fault> {
    if bytes.len() > MAX_BYTES {
        let size = format!("{} bytes", bytes.len());
        return Err(Fault::at(
            "",
            FaultCode::TooLarge,
            &size,
            &format!("{MAX_BYTES} bytes"),
        ));
    }
    if bytes.iter().all(u8::is_ascii_whitespace) {
        return Err(Fault::at("", FaultCode::Empty, "", ""));
    }
    let bytes = bytes.strip_prefix(b"\xef\xbb\xbf").unwrap_or(bytes);
    serde_json::from_slice(bytes).map_err(|error| {
        let code = if error.is_eof() {
            FaultCode::Truncated
        } else {
            FaultCode::NotJson
        };
        let place = format!("line {}, column {}", error.line(), error.column());
        Fault::at("", code, &place, "")
    })
}

#[cfg(test)]
mod tests;
