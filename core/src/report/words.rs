//! The few words that the page maker itself sets.

/// Words set by the page maker, in the language of the document.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Words {
    /// Page number, with `{page}` and `{pages}` where the numbers go.
    pub page_of: String,
    /// Word of a caution.
    pub caution: String,
    /// Word of a note.
    pub note: String,
    /// State of a check: done.
    pub done: String,
    /// State of a check: not done.
    pub not_done: String,
    /// State of a check: did not apply.
    pub not_applied: String,
    /// State of a step: left out for a reason.
    pub left_out: String,
    /// State of a step: done, though what it asks for was not met.
    pub unmet: String,
    /// State of a step: done all the same, for a reason.
    pub excused: String,
    /// Said after a caption that is repeated on a later page.
    pub continued: String,
    /// Said where a table without rows stands.
    pub no_rows: String,
    /// Label of the date beside a signature.
    pub date: String,
}

impl Words {
    /// Page number in words.
    #[must_use]
    pub fn page_of(&self, page: usize, pages: usize) -> String {
        self.page_of
            .replace("{page}", &page.to_string())
            .replace("{pages}", &pages.to_string())
    }
}
