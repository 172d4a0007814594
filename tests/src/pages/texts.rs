//! Every text of a document's content, for comparing with what comes out.

use returnline_core::report::document::{Block, Text};

/// The texts of all blocks; drawings left out.
#[must_use]
pub fn texts_of(blocks: &[Block]) -> Vec<String> {
    blocks.iter().flat_map(texts_of_block).collect()
}

fn texts_of_block(block: &Block) -> Vec<String> {
    let plain = |text: &Option<Text>| text.as_ref().map(Text::to_plain).unwrap_or_default();
    let some = |text: &Option<String>| text.clone().unwrap_or_default();
    match block {
        Block::Title {
            overline,
            text,
            subtitle,
        } => {
            vec![some(overline), text.clone(), plain(subtitle)]
        }
        Block::Heading { text, .. } => vec![text.clone()],
        Block::Paragraph { text, .. } | Block::Reminder(text) => vec![text.to_plain()],
        Block::Facts(facts) | Block::PairedFacts(facts) => facts
            .iter()
            .flat_map(|fact| [fact.label.clone(), fact.value.to_plain()])
            .collect(),
        Block::Table(table) => {
            let heads = table.columns.iter().map(|column| column.head.clone());
            let cells = table
                .rows
                .iter()
                .flat_map(|row| row.cells.iter().map(Text::to_plain));
            std::iter::once(some(&table.caption))
                .chain(heads)
                .chain(cells)
                .collect()
        }
        Block::Callout(callout) => {
            let body = callout.body.iter().map(Text::to_plain);
            std::iter::once(some(&callout.title)).chain(body).collect()
        }
        Block::Steps { steps, .. } => steps
            .iter()
            .flat_map(|step| std::iter::once(step.text.to_plain()).chain(texts_of(&step.blocks)))
            .collect(),
        Block::Checks(checks) => checks
            .iter()
            .flat_map(|check| [check.text.to_plain(), plain(&check.remark)])
            .collect(),
        Block::Points(points) => points.iter().map(Text::to_plain).collect(),
        Block::Figure { caption, .. } => vec![plain(caption)],
        Block::Photos { photos, .. } => photos.iter().map(|entry| plain(&entry.caption)).collect(),
        Block::Signatures(signatures) => signatures
            .iter()
            .flat_map(|each| [each.role.clone(), each.name.clone(), each.date.clone()])
            .collect(),
        Block::Together(blocks) => texts_of(blocks),
        Block::Beside(parts) => parts.iter().flat_map(|part| texts_of(part)).collect(),
        Block::Space(_) | Block::Rule | Block::PageBreak => Vec::new(),
    }
}
