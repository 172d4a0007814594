//! Words with their emphasis and links.

/// How a span of text is set apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Emphasis {
    /// Not at all.
    #[default]
    None,
    /// Semi-bold.
    Strong,
    /// Italic.
    Slanted,
    /// Paler, for words that accompany a value.
    Soft,
}

/// A stretch of text in one style.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Span {
    /// The words. A line feed breaks the line.
    pub text: String,
    /// Style.
    pub emphasis: Emphasis,
    /// Address the words lead to (`https:`, `mailto:`, `tel:`).
    pub link: Option<String>,
}

/// Text with inline emphasis and links.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Text {
    /// Its spans, joined without anything between them.
    pub spans: Vec<Span>,
}

impl Text {
    /// Text in one style.
    #[must_use]
    pub fn plain(text: impl Into<String>) -> Self {
        Self::default().then(text, Emphasis::None)
    }

    /// Semi-bold text.
    #[must_use]
    pub fn strong(text: impl Into<String>) -> Self {
        Self::default().then(text, Emphasis::Strong)
    }

    /// The same text with a span added.
    #[must_use]
    pub fn then(mut self, text: impl Into<String>, emphasis: Emphasis) -> Self {
        self.spans.push(Span {
            text: text.into(),
            emphasis,
            link: None,
        });
        self
    }

    /// The same text with a link added.
    #[must_use]
    pub fn then_link(mut self, text: impl Into<String>, address: impl Into<String>) -> Self {
        let link = Some(address.into());
        self.spans.push(Span {
            text: text.into(),
            emphasis: Emphasis::None,
            link,
        });
        self
    }

    /// The words without style.
    #[must_use]
    pub fn to_plain(&self) -> String {
        self.spans.iter().map(|span| span.text.as_str()).collect()
    }

    /// Whether there is nothing to show.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.spans.iter().all(|span| span.text.trim().is_empty())
    }
}

impl From<&str> for Text {
    fn from(text: &str) -> Self {
        Self::plain(text)
    }
}

impl From<String> for Text {
    fn from(text: String) -> Self {
        Self::plain(text)
    }
}
