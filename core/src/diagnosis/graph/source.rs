//! Source marks: where a number of the graph comes from.

use serde::Serialize;

use super::super::id::SourceId;

/// Where a number comes from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum SourceMark {
    /// A published source listed in the graph.
    Published(SourceId),
    /// A published source listed in the graph, quoted from memory and not re-read.
    FromMemoryOf(SourceId),
    /// From memory, the source not known any more.
    FromMemory,
    /// Practice of the trade, no publication.
    CommonPractice,
    /// The author's own estimate.
    Judgement,
}

impl SourceMark {
    /// Reads a mark as written in the files. Any text that is not one of the
    /// reserved words is taken as the id of a published source.
    #[must_use]
    pub fn parse(text: &str) -> Self {
        match text {
            "common-practice" => Self::CommonPractice,
            "judgement" => Self::Judgement,
            "from-memory" => Self::FromMemory,
            other => match other.strip_prefix("from-memory:") {
                Some(id) => Self::FromMemoryOf(SourceId::new(id)),
                None => Self::Published(SourceId::new(other)),
            },
        }
    }

    /// The published source it refers to, if any.
    #[must_use]
    pub fn source_id(&self) -> Option<&SourceId> {
        match self {
            Self::Published(id) | Self::FromMemoryOf(id) => Some(id),
            Self::FromMemory | Self::CommonPractice | Self::Judgement => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn marks_are_read() {
        assert_eq!(SourceMark::parse("judgement"), SourceMark::Judgement);
        assert_eq!(
            SourceMark::parse("common-practice"),
            SourceMark::CommonPractice
        );
        assert_eq!(SourceMark::parse("from-memory"), SourceMark::FromMemory);
        assert_eq!(
            SourceMark::parse("from-memory:handbook"),
            SourceMark::FromMemoryOf(SourceId::new("handbook"))
        );
        assert_eq!(
            SourceMark::parse("handbook"),
            SourceMark::Published(SourceId::new("handbook"))
        );
    }
}
