//! Enumerations by their written names, which are those of their serde form.

use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::Value;

/// The written name of a value; none where it is written as more than a name.
pub(crate) fn name_of<T: Serialize>(value: &T) -> Option<String> {
    match serde_json::to_value(value) {
        Ok(Value::String(name)) => Some(name),
        _ => None,
    }
}

/// The value of a written name.
pub(crate) fn of_name<T: DeserializeOwned>(name: &str) -> serde_json::Result<T> {
    serde_json::from_value(Value::String(name.to_owned()))
}
