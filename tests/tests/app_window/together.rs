//! All visits together: the board, what was learned, and the exchange file.

use crate::call::pdf_text;
use crate::window::Window;

#[tokio::test]
async fn a_confirmed_cause_reaches_the_board_the_learning_and_an_exchange_file() {
    let window = Window::open().await;
    window.new_visit("Invented mill").await;
    window.write("#field-visit-complaint", "It gurgles").await;
    window.answer("gurgling", "yes").await;
    window.tap("[data-step=causes]").await;
    let cause = window.attribute("[data-cause]", "data-cause").await;
    let card = format!("[data-cause='{cause}']");
    window
        .tap(&format!("{card} [data-test=verdict] > summary"))
        .await;
    window
        .tap(&format!(
            "{card} [data-answer='verdict-{cause}'] label:has([value=yes])"
        ))
        .await;
    window.find(&format!("{card} [data-said=yes]")).await;
    window.tap("a[href='#/visits']").await;

    // Every figure of the board opens its visits.
    window.tap("a[href='#/board']").await;
    let title = window
        .text(&format!("[data-part=causes] [data-row='{cause}'] a"))
        .await;
    window
        .tap(&format!("[data-part=causes] [data-row='{cause}'] a"))
        .await;
    let behind = window.text("[data-visit]").await;
    assert!(behind.contains("Invented mill"), "{behind:?}");
    window.tap("a[href='#/board']").await;
    let table = window.desk().join("causes.csv");
    window.tap("[data-save=causes]").await;
    window.answer_dialog("Save as a table", &table);
    window.find("[data-test=table-saved]").await;
    let text = std::fs::read_to_string(&table).expect("the table");
    assert_eq!(text.lines().count(), 2, "{text}");
    let report = window.desk().join("callbacks.pdf");
    window.tap("[data-test=save-fleet-report]").await;
    window.answer_dialog("Save this as a report", &report);
    window.tap("[data-test=open-report]").await;
    let shown = window.shown().await;
    assert!(shown.ends_with("callbacks.pdf"), "{shown:?} was shown");
    let text = pdf_text(&report);
    assert!(
        text.contains(title.as_str()),
        "{title:?} is not in:\n{text}"
    );

    window.tap("[data-open=learned]").await;
    let learned = window.text(&format!("[data-learned='{cause}']")).await;
    assert!(learned.contains("confirmed once"), "{learned:?}");
    window.tap("a[href='#/board']").await;
    window.tap("a[href='#/visits']").await;

    // The file of this device changes nothing here and brings all to another.
    let file = window.desk().join("all.rlx");
    window.tap("a[href='#/exchange']").await;
    window.tap("[data-test=export]").await;
    window.answer_dialog("Save all records", &file);
    let saved = window.text("[data-test=exchanged]").await;
    assert!(saved.contains("all.rlx"), "{saved:?}");
    let desk = window.close().await;

    let other = Window::open().await;
    other.tap("a[href='#/exchange']").await;
    other.tap("[data-test=import]").await;
    other.choose_in_dialog("Take in a file", &desk.path().join("all.rlx"));
    let taken = other.text("[data-test=exchanged]").await;
    assert!(taken.contains("0 to decide"), "{taken:?}");
    other.tap("a[href='#/visits']").await;
    let visits = other.text("[data-visit]").await;
    assert!(visits.contains("Invented mill"), "{visits:?}");
    // At the next visit there, it asks whether the fix held.
    other.tap("[data-again]").await;
    other
        .tap(&format!("[data-fix='{cause}'] [data-test=fix-held]"))
        .await;
    other.find("[data-test=fix-known]").await;
    other.close().await;
}

#[tokio::test]
async fn a_single_visit_is_carried_over_without_what_names_the_homeowner() {
    let window = Window::open().await;
    for (site, symptom) in [
        ("Invented barn", "gurgling"),
        ("Invented mill", "circulator-hums"),
    ] {
        window.new_visit(site).await;
        window.answer(symptom, "yes").await;
        window.tap("a[href='#/visits']").await;
    }
    window.tap("a[href='#/exchange']").await;
    window.tap("[data-test=choose-visits] > summary").await;
    window.write("#sought", "barn").await;
    window.wait_for_count("[data-choose]", 1).await;
    window.tap("[data-choose]").await;
    window.find("[data-choose] :checked").await;
    window.tap("[data-test=without-personal]").await;
    let file = window.desk().join("one.rlx");
    window.tap("[data-test=export]").await;
    window.answer_dialog("Save all records", &file);
    let saved = window.text("[data-test=exchanged]").await;
    assert!(saved.contains("one.rlx"), "{saved:?}");
    let desk = window.close().await;

    let other = Window::open().await;
    other.tap("a[href='#/exchange']").await;
    other.tap("[data-test=import]").await;
    other.choose_in_dialog("Take in a file", &desk.path().join("one.rlx"));
    other.find("[data-test=exchanged]").await;
    other.tap("a[href='#/visits']").await;
    other.wait_for_count("[data-visit]", 1).await;
    let listed = other.text("[data-visit]").await;
    assert!(!listed.contains("Invented"), "{listed:?}");
    other.tap("[data-visit]").await;
    other
        .find("[data-answer=gurgling] [value=yes]:checked")
        .await;
    assert_eq!(other.value("#field-site-name").await, "");
    other.close().await;
}
