//! A call from its complaint to its report.

use crate::window::Window;

/// Enters one reading from the list of points.
async fn read(window: &Window, group: &str, point: &str, text: &str, mode: &str) {
    window.tap("[data-step=readings]").await;
    window
        .tap(&format!("[data-points={group}] > summary"))
        .await;
    window
        .tap(&format!("[data-points={group}] [data-point={point}]"))
        .await;
    window.write("#value", text).await;
    window.choose("#mode", mode).await;
    window.tap("[data-test=save-reading]").await;
    window.find("[data-test=reading]").await;
}

#[tokio::test]
async fn what_was_entered_survives_a_kill() {
    let window = Window::open().await;
    window.tap("[data-test=new-visit]").await;
    window.write("#field-site-name", "Invented barn").await;
    window.write("#field-visit-complaint", "It gurgles").await;
    window.tap("[data-answer=gurgling] label:has([value=yes])").await;
    window
        .find("[data-answer=gurgling] [value=yes]:checked")
        .await;
    window.tap("[data-step=system]").await;
    window.write("#field-ground-circuits", "3\n").await;
    read(&window, "pressure", "static_pressure", "12.5", "idle").await;
    let shown = window.text("[data-test=reading]").await;
    assert!(shown.starts_with("12.5"), "the reading shows as {shown:?}");
    let data = window.kill();

    let window = Window::open_on(data).await;
    let line = window.text("[data-visit]").await;
    assert!(
        line.contains("Invented barn") && line.contains("It gurgles"),
        "{line:?}"
    );
    window.tap("[data-visit]").await;
    window
        .find("[data-answer=gurgling] [value=yes]:checked")
        .await;
    window.tap("[data-step=system]").await;
    assert_eq!(window.value("#field-ground-circuits").await, "3");
    window.tap("[data-step=readings]").await;
    let row = window.text("[data-point=static_pressure]").await;
    assert!(row.contains("12.5"), "{row:?}");
    window.close().await;
}

#[tokio::test]
async fn a_value_that_cannot_be_is_refused_in_words_and_an_odd_one_is_questioned() {
    let window = Window::open().await;
    window.tap("[data-test=new-visit]").await;
    window.tap("[data-step=readings]").await;
    window.tap("[data-points=temperature] > summary").await;
    window
        .tap("[data-points=temperature] [data-point=entering_water]")
        .await;
    window.write("#value", "320").await;
    window.tap("[data-test=save-reading]").await;
    let refusal = window.text("[data-test=failure]").await;
    assert!(
        refusal.contains("320") && refusal.contains("250"),
        "{refusal:?}"
    );
    // What was typed stays to be put right.
    assert_eq!(window.value("#value").await, "320");

    window.write("#value", "200").await;
    window.tap("[data-test=save-reading]").await;
    let doubt = window.text("[data-test=warning]").await;
    assert!(doubt.contains("200"), "{doubt:?}");
    window.close().await;
}
