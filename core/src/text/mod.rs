//! Message catalogs: every text that a person reads.
//!
//! Catalogs are Project Fluent files under `core/text/<language>/`, embedded
//! at build time. Another language is another folder and one more variant of
//! [`Language`]; tests hold every language to the messages, variables and numbers
//! of the English one.

mod amount;
mod likeness;
mod nearness;
mod sources;

pub use likeness::alike;
pub use nearness::distance;

use crate::units::UnitSystem;
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use std::borrow::Cow;
use std::sync::LazyLock;
use unic_langid::{LanguageIdentifier, langid};

/// A language with a complete catalog.
///
/// Words change with the language, figures do not: a number keeps its decimal
/// point and a unit its symbol, as the instrument shows them, so that a reading
/// is the same on the gauge, on the screen and in the report.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
pub enum Language {
    /// English.
    English,
    /// Spanish, as technicians of any country read it.
    Spanish,
}

/// The catalog files of a language, with their names for error messages.
type Files = &'static [(&'static str, &'static str)];

macro_rules! files {
    ($language:literal: $($name:literal),* $(,)?) => {
        &[$(($name, include_str!(concat!("../../text/", $language, "/", $name, ".ftl")))),*]
    };
}

/// The catalog files of every language, from one list of their names.
macro_rules! catalogs {
    ($($name:literal),* $(,)?) => {
        const ENGLISH: Files = files!("en": $($name),*);
        const SPANISH: Files = files!("es": $($name),*);
    };
}

catalogs!(
    "app",
    "assessment",
    "calc",
    "evidence",
    "fields",
    "fleet",
    "graph-air",
    "graph-base",
    "graph-circuits",
    "graph-debris",
    "graph-fluid",
    "graph-ground",
    "graph-instruments",
    "graph-leaks",
    "graph-pressure",
    "graph-procedures",
    "graph-pumps",
    "graph-tanks",
    "graph-unit",
    "graph-valves",
    "graph-water",
    "homeowner",
    "messages",
    "model",
    "plan",
    "program",
    "records",
    "report",
    "report-fleet",
    "sources",
);

impl Language {
    /// Every language.
    pub const ALL: [Self; 2] = [Self::English, Self::Spanish];

    /// BCP 47 tag.
    pub fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }
    /// The language with this tag.
    pub fn from_tag(tag: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|language| language.tag() == tag)
    }
    fn identifier(self) -> LanguageIdentifier {
        match self {
            Self::English => langid!("en"),
            Self::Spanish => langid!("es"),
        }
    }
    fn files(self) -> Files {
        match self {
            Self::English => ENGLISH,
            Self::Spanish => SPANISH,
        }
    }
}

/// Named values that a message is filled with.
#[derive(Default)]
pub struct Args<'a>(FluentArgs<'a>);

impl<'a> Args<'a> {
    /// No values.
    pub fn new() -> Self {
        Self::default()
    }
    /// These, and one more text.
    pub fn text(mut self, name: &'a str, value: impl Into<Cow<'a, str>>) -> Self {
        self.0.set(name, FluentValue::String(value.into()));
        self
    }
    /// These, and one more number, for plural forms.
    pub fn count(mut self, name: &'a str, value: usize) -> Self {
        self.0.set(name, value);
        self
    }
}

/// The first sentence of a text, with its full stop.
pub fn first_sentence(text: &str) -> &str {
    match text.find(". ") {
        Some(at) => &text[..=at],
        None => text,
    }
}

/// The messages of one language.
pub struct Catalog {
    bundle: FluentBundle<FluentResource>,
    faults: Vec<String>,
}

/// The catalogs of a language, each read when it is first asked for.
macro_rules! read_when_asked {
    ($language:expr, $units:expr) => {{
        static READ: LazyLock<Catalog> = LazyLock::new(|| Catalog::read($language, $units));
        &READ
    }};
}

/// The catalog of a language, with what it names in the usual units.
pub fn catalog(language: Language) -> &'static Catalog {
    catalog_in(language, UnitSystem::default())
}

/// The catalog of a language, with the fixed amounts that its texts name in these units.
pub fn catalog_in(language: Language, units: UnitSystem) -> &'static Catalog {
    match (language, units) {
        (Language::English, UnitSystem::Us) => {
            read_when_asked!(Language::English, UnitSystem::Us)
        }
        (Language::English, UnitSystem::Si) => {
            read_when_asked!(Language::English, UnitSystem::Si)
        }
        (Language::Spanish, UnitSystem::Us) => {
            read_when_asked!(Language::Spanish, UnitSystem::Us)
        }
        (Language::Spanish, UnitSystem::Si) => {
            read_when_asked!(Language::Spanish, UnitSystem::Si)
        }
    }
}

impl Catalog {
    fn read(language: Language, units: UnitSystem) -> Self {
        let mut bundle = FluentBundle::new_concurrent(vec![language.identifier()]);
        // Isolation marks would be copied out of reports and are needed only
        // where text directions mix.
        bundle.set_use_isolating(false);
        let mut faults = Vec::new();
        if let Err(error) = bundle.add_function("AMOUNT", amount::filled_in(units)) {
            faults.push(error.to_string());
        }
        for (name, source) in language.files() {
            let resource = FluentResource::try_new((*source).to_owned());
            let resource = resource.unwrap_or_else(|(resource, errors)| {
                faults.extend(errors.iter().map(|error| format!("{name}: {error}")));
                resource
            });
            if let Err(errors) = bundle.add_resource(resource) {
                faults.extend(errors.iter().map(|error| format!("{name}: {error}")));
            }
        }
        Self { bundle, faults }
    }

    /// What is wrong with the files of this catalog; a test holds it empty.
    pub fn faults(&self) -> &[String] {
        &self.faults
    }

    /// Whether a message, or an attribute written `message.attribute`, exists.
    pub fn has(&self, id: &str) -> bool {
        let (message, attribute) = split(id);
        self.bundle
            .get_message(message)
            .is_some_and(|message| match attribute {
                Some(attribute) => message.get_attribute(attribute).is_some(),
                None => message.value().is_some(),
            })
    }

    /// A message without values.
    pub fn text(&self, id: &str) -> String {
        self.fill(id, &Args::new())
    }

    /// A message filled with values. A missing message shows as its identifier
    /// in guillemets, so that it is seen and never hides what surrounds it.
    pub fn fill(&self, id: &str, args: &Args<'_>) -> String {
        let (message, attribute) = split(id);
        let message = self.bundle.get_message(message);
        let pattern = message.and_then(|message| match attribute {
            Some(attribute) => message.get_attribute(attribute).map(|found| found.value()),
            None => message.value(),
        });
        let Some(pattern) = pattern else {
            return format!("«{id}»");
        };
        // A value that a message asks for and does not get shows as its name.
        let mut errors = Vec::new();
        self.bundle
            .format_pattern(pattern, Some(&args.0), &mut errors)
            .into_owned()
    }
}

/// `message.attribute` in its two parts.
fn split(id: &str) -> (&str, Option<&str>) {
    match id.split_once('.') {
        Some((message, attribute)) => (message, Some(attribute)),
        None => (id, None),
    }
}

#[cfg(test)]
mod tests;
