//! What the procedure files say of harm.

use serde::Deserialize;
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::LazyLock;

/// What maims and kills at this work.
pub const GRAVE: [&str; 8] = [
    "confined",
    "electric",
    "flammable",
    "lifting",
    "potable",
    "pressure",
    "refrigerant",
    "toxic",
];

/// What of a procedure file is about harm.
#[derive(Deserialize, Default)]
pub struct File {
    #[serde(default)]
    pub caution: Vec<CautionEntry>,
    #[serde(default)]
    pub opening: Vec<OpeningEntry>,
    #[serde(default)]
    pub step: Vec<StepEntry>,
}

#[derive(Deserialize)]
pub struct CautionEntry {
    pub id: String,
    pub hazards: Vec<String>,
}

#[derive(Deserialize)]
pub struct OpeningEntry {
    pub id: String,
    pub section: Option<String>,
}

#[derive(Deserialize, Default)]
#[serde(default)]
pub struct StepEntry {
    pub id: String,
    pub stage: String,
    pub hazards: Vec<String>,
    pub cautions: Vec<String>,
    pub tools: Vec<String>,
    pub materials: Vec<String>,
    pub opens: Vec<String>,
    pub closes: Vec<String>,
    pub relieves: Vec<String>,
    pub pressurises: Vec<String>,
    pub at_zero: Vec<String>,
    pub refills: bool,
}

pub struct Written {
    pub answers: BTreeMap<String, Vec<String>>,
    pub sections: BTreeMap<String, Option<String>>,
    pub steps: BTreeMap<String, StepEntry>,
}

pub static WRITTEN: LazyLock<Written> = LazyLock::new(|| {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/data/procedures");
    let mut all = File::default();
    for entry in std::fs::read_dir(folder).expect("listed") {
        let path = entry.expect("an entry").path();
        if path.extension().is_some_and(|end| end == "toml") {
            let text = std::fs::read_to_string(&path).expect("read");
            let file: File = toml::from_str(&text).expect("TOML");
            all.caution.extend(file.caution);
            all.opening.extend(file.opening);
            all.step.extend(file.step);
        }
    }
    Written {
        answers: all
            .caution
            .into_iter()
            .map(|entry| (entry.id, entry.hazards))
            .collect(),
        sections: all
            .opening
            .into_iter()
            .map(|entry| (entry.id, entry.section))
            .collect(),
        steps: all
            .step
            .into_iter()
            .map(|entry| (entry.id.clone(), entry))
            .collect(),
    }
});

/// The cautions of a step that answer a hazard.
pub fn answering<'a>(step: &'a StepEntry, hazard: &'a str) -> impl Iterator<Item = &'a String> {
    step.cautions.iter().filter(move |caution| {
        let answers = WRITTEN.answers.get(*caution);
        answers.is_some_and(|all| all.iter().any(|one| one == hazard))
    })
}
