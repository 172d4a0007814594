//! Outside checks of the page maker's display list, for documents of every
//! kind and length.

#![allow(clippy::unwrap_used, clippy::panic)]

use returnline_core::report::{
    Document,
    document::{Block, Level, PageSize},
    layout::{
        display::{Area, Item, Pages},
        lay_out,
    },
};
use returnline_tests::pages::{empty, hard, photos, usual, words};

/// Everything that must hold for any document.
fn assert_sound(pages: &Pages) {
    let count = pages.pages.len();
    assert!(count >= 1);
    for (index, page) in pages.pages.iter().enumerate() {
        let number = words().page_of(index + 1, count);
        assert!(page.runs().any(|run| run.text == number), "no {number:?}");
        let mut boxes: Vec<(Area, &str)> = Vec::new();
        for item in &page.items {
            let area = item.area();
            assert!(
                pages.margins.holds(&area, 0.8),
                "page {index}: outside the margins: {item:?}"
            );
            let beside = area.bottom() <= pages.body.y || area.y >= pages.body.bottom();
            assert!(
                beside || pages.body.holds(&area, 0.8),
                "page {index}: over the edge of the body: {item:?}"
            );
            match item {
                Item::Run(run) => {
                    assert!(
                        run.glyphs.iter().all(|glyph| glyph.id != 0),
                        "missing glyph: {run:?}"
                    );
                    assert!(!run.text.contains('\n'));
                    boxes.push((area, &run.text));
                }
                Item::Picture { .. } => boxes.push((area, "picture")),
                _ => {}
            }
        }
        for (at, (area, text)) in boxes.iter().enumerate() {
            for (other, other_text) in &boxes[..at] {
                assert!(
                    !area.overlaps(other, 0.7),
                    "page {index}: {text:?} {area:?} over {other_text:?} {other:?}"
                );
            }
        }
    }
    assert!(pages.bookmarks.iter().all(|mark| mark.page < count));
}

fn laid(document: &Document) -> Pages {
    let pages = lay_out(document, &words()).unwrap();
    assert_sound(&pages);
    pages
}

fn page_text(pages: &Pages, index: usize) -> String {
    let texts: Vec<&str> = pages.pages[index]
        .runs()
        .map(|run| run.text.as_str())
        .collect();
    texts.join(" ")
}

#[test]
fn pages_are_sound_on_both_papers() {
    let photos = photos();
    assert_eq!(photos.len(), 6);
    for paper in [PageSize::Letter, PageSize::A4] {
        laid(&usual(paper, &photos));
        laid(&hard(paper));
        assert_eq!(laid(&empty(paper)).pages.len(), 1);
    }
}

#[test]
fn the_head_of_a_table_stands_on_each_of_its_pages() {
    let pages = laid(&hard(PageSize::Letter));
    let mut with_rows = 0;
    for index in 0..pages.pages.len() {
        let text = page_text(&pages, index);
        if text.contains("Reading number") {
            with_rows += 1;
            assert!(
                text.contains("Mode"),
                "page {index} has rows without a head"
            );
            assert!(
                text.contains("Sixty readings"),
                "page {index} has rows without a caption"
            );
        }
    }
    assert!(with_rows >= 2, "sixty rows need more than one page");
}

#[test]
fn no_value_of_a_table_is_lost() {
    let pages = laid(&hard(PageSize::A4));
    let all: Vec<String> = (0..pages.pages.len())
        .map(|page| page_text(&pages, page))
        .collect();
    let all = all.join(" ");
    for number in 1..=60 {
        assert!(all.contains(&format!("{number}.{number} °C")));
    }
    for number in 2..=40 {
        assert!(all.contains(&format!("Flow {number}")) && all.contains(&format!("Drop {number}")));
    }
}

#[test]
fn a_heading_never_stands_alone_at_the_end_of_a_page() {
    for lines in 30..60 {
        let document = Document {
            blocks: vec![
                Block::paragraph("line\n".repeat(lines)),
                Block::heading(Level::Section, "The heading"),
                Block::paragraph("The text that follows."),
            ],
            ..empty(PageSize::Letter)
        };
        let pages = laid(&document);
        let page_of = |words: &str| {
            (0..pages.pages.len())
                .find(|page| page_text(&pages, *page).contains(words))
                .unwrap()
        };
        assert_eq!(
            page_of("The heading"),
            page_of("The text that"),
            "{lines} lines before"
        );
        assert_eq!(pages.bookmarks[0].page, page_of("The heading"));
    }
}

#[test]
fn blocks_kept_together_share_a_page() {
    for lines in 30..55 {
        let together = (0..6)
            .map(|part| Block::paragraph(format!("part {part}")))
            .collect();
        let document = Document {
            blocks: vec![
                Block::paragraph("line\n".repeat(lines)),
                Block::Together(together),
            ],
            ..empty(PageSize::A4)
        };
        let pages = laid(&document);
        let whole = (0..pages.pages.len()).any(|page| {
            let text = page_text(&pages, page);
            (0..6).all(|part| text.contains(&format!("part {part}")))
        });
        assert!(whole, "{lines} lines before");
    }
}

#[test]
fn a_group_longer_than_a_page_fills_its_pages() {
    let document = Document {
        blocks: vec![Block::Together(vec![Block::paragraph(
            "Many words. ".repeat(2000),
        )])],
        ..empty(PageSize::Letter)
    };
    let pages = laid(&document);
    let last = pages.pages.len() - 1;
    assert!(last >= 2);
    for page in &pages.pages[..last] {
        let lowest = page
            .runs()
            .filter(|run| run.y < pages.body.bottom())
            .map(|run| run.y)
            .fold(0.0, f32::max);
        assert!(
            lowest > pages.body.bottom() - 40.0,
            "a page was left half empty"
        );
    }
}

#[test]
fn what_cannot_be_drawn_is_replaced_visibly() {
    let pages = laid(&hard(PageSize::Letter));
    let text = page_text(&pages, 0) + &page_text(&pages, 1);
    for shown in ["[U+1F600]", "[U+26A0]", "□□□□ □□□□", "−12 °C", "10⁻³ m²"]
    {
        assert!(text.contains(shown), "{shown} in {text}");
    }
    assert!(!text.contains('\u{202e}') && !text.contains('\u{7}'));
}
