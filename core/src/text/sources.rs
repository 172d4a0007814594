//! Sources in words: one citation a source, whoever names it.

use super::{Args, Catalog};

impl Catalog {
    /// Author, title and place of a source that a figure, the rule graph or a
    /// procedure names by its id.
    pub fn cited(&self, id: &str) -> String {
        self.text(&format!("source-{id}"))
    }

    /// The same of a source that is quoted from memory.
    pub fn cited_from_memory(&self, id: &str) -> String {
        let args = Args::new().text("source", self.cited(id));
        self.fill("authority-from-memory", &args)
    }
}
