//! What a topic is, and how a line of text becomes its answer.

use super::amount::Show;
use super::error::{CalcError, Printed, join};
use super::spread;
use crate::records::visit_file::{self, Fault, FaultCode};
use crate::text::Catalog;
use crate::units::UnitSystem;
use jsonschema::Validator;
use schemars::{JsonSchema, schema_for};
use serde::de::{DeserializeOwned, DeserializeSeed, MapAccess, SeqAccess, Visitor};
use serde::{Deserializer, Serialize};
use serde_json::{Map, Value, json};
use std::fmt;

/// Longest line that is looked at, bytes.
pub const MAX_LINE: usize = 1024 * 1024;
/// The field by which a question chooses the units of its answer.
const UNITS: &str = "units";
/// Errors that one line reports at most.
const MAX_ERRORS: usize = 10;

/// One quantity, or a few that belong together: a question and its answer.
pub(super) trait Topic {
    /// Its name on the command line.
    const NAME: &'static str;
    /// The source that answers name unless they say otherwise.
    const SOURCE: &'static str;
    /// Whether accuracies are carried to the numbers of the answer from outside, because the
    /// physics behind it takes plain values.
    const SPREADS: bool;
    /// A question that has an answer.
    const EXAMPLE: &'static str;
    /// What is asked with.
    type Input: DeserializeOwned + JsonSchema;
    /// What is answered.
    type Output: Serialize + JsonSchema;
    /// The answer.
    fn answer(question: Self::Input, show: Show) -> Result<Self::Output, CalcError>;
}

/// A topic of the table.
#[derive(Copy, Clone)]
pub struct Entry {
    name: &'static str,
    example: &'static str,
    answer: fn(Value, UnitSystem) -> Result<Value, CalcError>,
    schemas: fn() -> (Value, Value),
}

/// The row of a topic.
pub(super) const fn entry<T: Topic>() -> Entry {
    Entry {
        name: T::NAME,
        example: T::EXAMPLE,
        answer: answer::<T>,
        schemas: || {
            (
                schema_for!(T::Input).to_value(),
                schema_for!(T::Output).to_value(),
            )
        },
    }
}

fn answer<T: Topic>(question: Value, units: UnitSystem) -> Result<Value, CalcError> {
    if !T::SPREADS {
        return plain_answer::<T>(question, units);
    }
    let mut answer = plain_answer::<T>(question.clone(), units)?;
    spread::carry(&question, &mut answer, |moved| {
        plain_answer::<T>(moved, units)
    })?;
    Ok(answer)
}

fn plain_answer<T: Topic>(question: Value, units: UnitSystem) -> Result<Value, CalcError> {
    let input: T::Input = serde_json::from_value(question)
        .map_err(|error| CalcError::new("malformed", "", "").accepting(error))?;
    let source = T::SOURCE;
    let output = T::answer(input, Show { units, source })?;
    let mut answer = serde_json::to_value(output)
        .map_err(|error| CalcError::new("not-computable", "", "").accepting(error))?;
    drop_nulls(&mut answer);
    Ok(answer)
}

/// What is unknown is left out, as in the visit file.
fn drop_nulls(value: &mut Value) {
    match value {
        Value::Object(map) => {
            map.retain(|_, value| !value.is_null());
            map.values_mut().for_each(drop_nulls);
        }
        Value::Array(items) => items.iter_mut().for_each(drop_nulls),
        _ => {}
    }
}

impl Entry {
    /// Name on the command line.
    pub fn name(&self) -> &'static str {
        self.name
    }
    /// A question that runs, on one line.
    pub fn example(&self) -> String {
        // The examples are held to be JSON by a test.
        serde_json::from_str::<Value>(self.example)
            .map_or_else(|_| self.example.to_owned(), |value| value.to_string())
    }
    /// What it is about.
    pub fn sentence(&self, catalog: &Catalog) -> String {
        catalog.text(&format!("calc-{}", self.name))
    }
    fn input_schema(&self) -> Value {
        let mut schema = (self.schemas)().0;
        visit_file::strip_null(&mut schema);
        if let Some(schema) = schema.as_object_mut() {
            let choice = json!({
                "description": "Units of the answer; what the program was told otherwise.",
                "enum": ["us", "si"]
            });
            let properties = schema.entry("properties").or_insert_with(|| json!({}));
            if let Some(properties) = properties.as_object_mut() {
                properties.insert(UNITS.to_owned(), choice);
            }
        }
        schema
    }
    /// The schemas of question and answer, an example, and the sources in full.
    pub fn description(&self, catalog: &Catalog) -> Value {
        let mut output = (self.schemas)().1;
        visit_file::strip_null(&mut output);
        let example: Value = serde_json::from_str(self.example).unwrap_or(Value::Null);
        let mut named = Vec::new();
        let mut question = example.clone();
        if let Some(question) = question.as_object_mut() {
            question.remove(UNITS);
        }
        if let Ok(answer) = (self.answer)(question, UnitSystem::Us) {
            sources(&answer, &mut named);
        }
        let cited: Map<String, Value> = named
            .into_iter()
            .filter_map(|id| {
                // A source that is no identifier is cited in full where it stands.
                let key = format!("calc-source-{id}");
                let citation = catalog.has(&key).then(|| catalog.text(&key))?;
                Some((id, Value::String(citation)))
            })
            .collect();
        json!({
            "topic": self.name,
            "about": self.sentence(catalog),
            "example": example,
            "input": self.input_schema(),
            "output": output,
            "sources": cited,
        })
    }
}

fn sources(value: &Value, into: &mut Vec<String>) {
    match value {
        Value::Object(map) => {
            if let Some(Value::String(id)) = map.get("source")
                && !into.contains(id)
            {
                into.push(id.clone());
            }
            map.values().for_each(|value| sources(value, into));
        }
        Value::Array(items) => items.iter().for_each(|value| sources(value, into)),
        _ => {}
    }
}

/// A topic made ready to answer many lines.
pub struct Calculator {
    entry: Entry,
    schema: Value,
    validator: Option<Validator>,
    units: UnitSystem,
}

impl Calculator {
    /// For a topic; `units` is for questions that do not choose.
    pub fn new(entry: Entry, units: UnitSystem) -> Self {
        let schema = entry.input_schema();
        let validator = jsonschema::validator_for(&schema).ok();
        Self {
            entry,
            schema,
            validator,
            units,
        }
    }
    /// The answer to one line, or an object `error` in its place; with `more`
    /// when more than one thing is wrong.
    pub fn answer(&self, line: &[u8], catalog: &Catalog) -> Value {
        let mut question = Value::Null;
        let errors = match self.read(line) {
            Ok((document, units)) => {
                question = document.clone();
                match (self.entry.answer)(document, units) {
                    Ok(answer) => return answer,
                    Err(error) => vec![error.locate(&question)],
                }
            }
            Err(errors) => errors,
        };
        refusal(&errors, &question, catalog)
    }
    fn read(&self, line: &[u8]) -> Result<(Value, UnitSystem), Vec<CalcError>> {
        let one = |error| vec![error];
        let line = line.strip_prefix(b"\xef\xbb\xbf").unwrap_or(line);
        let mut document = parse(line).map_err(one)?;
        let validator = self.validator.as_ref();
        let faults = match validator {
            Some(validator) => visit_file::faults(validator, &document),
            None => vec![Fault::internal(self.entry.name)],
        };
        if !faults.is_empty() {
            let errors = faults.into_iter().take(MAX_ERRORS).map(|fault| {
                let nearest = (fault.code == FaultCode::Unknown)
                    .then(|| self.nearest(&document, &fault))
                    .flatten();
                CalcError::of_fault(fault, nearest.as_deref())
            });
            return Err(errors.collect());
        }
        let asked = document.as_object_mut().and_then(|map| map.remove(UNITS));
        let units = asked
            .as_ref()
            .and_then(Value::as_str)
            .and_then(UnitSystem::from_id);
        Ok((document, units.unwrap_or(self.units)))
    }
    /// The name nearest to an unknown field: of all names this topic knows, one
    /// that is not there yet and makes the question better.
    fn nearest(&self, document: &Value, fault: &Fault) -> Option<String> {
        let mut names = Vec::new();
        properties(&self.schema, &mut names);
        let unknown = fault.found.as_str();
        names.sort_by_key(|name| crate::text::distance(unknown, name));
        let parent = fault.path.strip_suffix(unknown)?.trim_end_matches('.');
        let count = |document: &Value| {
            self.validator
                .as_ref()
                .map_or(0, |v| visit_file::faults(v, document).len())
        };
        let before = count(document);
        names
            .iter()
            .take(8)
            .find(|name| {
                let mut renamed = document.clone();
                rename(&mut renamed, parent, unknown, name) && count(&renamed) < before
            })
            .or(names.first())
            .cloned()
    }
}

/// Renames a field of the object at a path such as `field.circuits[2]`.
fn rename(document: &mut Value, path: &str, from: &str, to: &str) -> bool {
    let pointer: String = path
        .replace('[', ".")
        .replace(']', "")
        .split('.')
        .filter(|part| !part.is_empty())
        .map(|part| format!("/{part}"))
        .collect();
    let Some(map) = document
        .pointer_mut(&pointer)
        .and_then(Value::as_object_mut)
    else {
        return false;
    };
    match map.remove(from) {
        Some(value) if !map.contains_key(to) => {
            map.insert(to.to_owned(), value);
            true
        }
        _ => false,
    }
}

fn properties(schema: &Value, into: &mut Vec<String>) {
    match schema {
        Value::Object(map) => {
            if let Some(Value::Object(named)) = map.get("properties") {
                into.extend(
                    named
                        .keys()
                        .filter(|k| !into.contains(k))
                        .cloned()
                        .collect::<Vec<_>>(),
                );
            }
            map.values().for_each(|value| properties(value, into));
        }
        Value::Array(items) => items.iter().for_each(|value| properties(value, into)),
        _ => {}
    }
}

/// The object that stands in place of an answer.
fn refusal(errors: &[CalcError], question: &Value, catalog: &Catalog) -> Value {
    let mut printed: Vec<Printed> = errors
        .iter()
        .map(|error| error.printed(question, catalog))
        .collect();
    let more = printed.split_off(printed.len().min(1));
    let first = printed.pop();
    if more.is_empty() {
        json!({ "error": first })
    } else {
        json!({ "error": first, "more": more })
    }
}

/// What stands in place of the answer to a line longer than [`MAX_LINE`].
pub fn too_long(catalog: &Catalog) -> Value {
    let error = CalcError::new("line-too-long", "", "").accepting(MAX_LINE);
    refusal(&[error], &Value::Null, catalog)
}

fn parse(line: &[u8]) -> Result<Value, CalcError> {
    let mut reader = serde_json::Deserializer::from_slice(line);
    let parsed = Strict("").deserialize(&mut reader);
    let document = parsed.and_then(|value| reader.end().map(|()| value));
    document.map_err(|error| {
        let text = error.to_string();
        let place = format!("column {}", error.column());
        match text.split_once(TWICE) {
            Some((_, rest)) => {
                let field = rest.split('`').nth(1).unwrap_or_default();
                CalcError::new("duplicate-field", field, "")
            }
            None if error.is_eof() => CalcError::new("truncated-line", "", place),
            None => CalcError::new("not-json-line", "", place).accepting(text),
        }
    })
}

/// How the reader says that a field stands twice.
const TWICE: &str = "field twice: ";

/// Reads any JSON document and refuses a field that stands twice.
struct Strict<'a>(&'a str);

impl<'de> DeserializeSeed<'de> for Strict<'_> {
    type Value = Value;
    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<Value, D::Error> {
        deserializer.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Strict<'_> {
    type Value = Value;
    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a JSON document")
    }
    fn visit_unit<E>(self) -> Result<Value, E> {
        Ok(Value::Null)
    }
    fn visit_bool<E>(self, value: bool) -> Result<Value, E> {
        Ok(Value::Bool(value))
    }
    fn visit_i64<E>(self, value: i64) -> Result<Value, E> {
        Ok(value.into())
    }
    fn visit_u64<E>(self, value: u64) -> Result<Value, E> {
        Ok(value.into())
    }
    fn visit_f64<E>(self, value: f64) -> Result<Value, E> {
        Ok(value.into())
    }
    fn visit_str<E>(self, value: &str) -> Result<Value, E> {
        Ok(value.into())
    }
    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Value, A::Error> {
        let mut list = Vec::new();
        loop {
            let path = format!("{}[{}]", self.0, list.len());
            match items.next_element_seed(Strict(&path))? {
                Some(item) => list.push(item),
                None => return Ok(Value::Array(list)),
            }
        }
    }
    fn visit_map<A: MapAccess<'de>>(self, mut fields: A) -> Result<Value, A::Error> {
        let mut map = Map::new();
        while let Some(name) = fields.next_key::<String>()? {
            let path = join(self.0, &name);
            if map.contains_key(&name) {
                return Err(serde::de::Error::custom(format!("{TWICE}`{path}`")));
            }
            map.insert(name, fields.next_value_seed(Strict(&path))?);
        }
        Ok(Value::Object(map))
    }
}
