//! The service report: from a worked-out call, and made longer.

use crate::reference::Reference;
use crate::timing::time;
use crate::{Row, Rows};
use lopdf::Document as Pages;
use returnline_core::api::{Reader, Wording};
use returnline_core::report::document::PageSize;
use returnline_core::report::{service, to_pdf};
use returnline_core::text::{Language, catalog};
use returnline_tests::pages::{call, issue, texts_of};
use returnline_tests::program::sample;
use serde_json::json;

/// Set by the other side in the same face and size as the running text.
const FACE: &str = concat!(
    env!("CARGO_MANIFEST_DIR"),
    "/../core/assets/fonts/SourceSans3-Regular.ttf"
);

pub fn rows(reference: &Reference) -> Rows {
    let wording = Wording::default();
    let text = std::fs::read_to_string(sample("pressure-lost-over-summer"))?;
    let call = call(&text, wording);
    call.answer();
    let issue = issue(PageSize::Letter, false);
    let pages = |bytes: &[u8]| Pages::load_mem(bytes).map(|read| read.get_pages().len());

    let bytes = call.report(Reader::Technician, &issue)?;
    let mut rows = vec![Row {
        what: "service report of a call",
        work: format!("{} pages", pages(&bytes)?),
        own: time(|| call.report(Reader::Technician, &issue).is_ok()),
        beside: None,
    }];
    let catalog = catalog(Language::English);
    let words = service::words(catalog);
    let once = service::document(&call.service_content(&issue), catalog);
    for times in [1, 10, 100] {
        let mut document = once.clone();
        document.blocks = std::iter::repeat_n(&once.blocks, times)
            .flatten()
            .cloned()
            .collect();
        let bytes = to_pdf(&document, &words)?;
        let question = json!({
            "texts": texts_of(&document.blocks),
            "face": FACE,
            "out": reference.file("report.pdf"),
        });
        rows.push(Row {
            what: "pages of a report",
            work: format!("{} pages", pages(&bytes)?),
            own: time(|| to_pdf(&document, &words).is_ok()),
            beside: reference.time("reportlab, same words, no drawings", "report", &question)?,
        });
    }
    Ok(rows)
}
