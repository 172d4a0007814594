//! A call from its complaint to its report.

use std::{path::Path, process::Command};

use crate::window::Window;

/// Enters one reading from the list of points.
pub async fn read(window: &Window, group: &str, point: &str, text: &str, mode: &str) {
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
    // Back where it was asked for, and shown there.
    window
        .find(&format!("[data-point={point}] [data-test=shown]"))
        .await;
}

#[tokio::test]
async fn what_was_entered_survives_a_kill() {
    let window = Window::open().await;
    window.new_visit("Invented barn").await;
    window.write("#field-visit-complaint", "It gurgles").await;
    window.answer("gurgling", "yes").await;
    window.tap("[data-step=system]").await;
    window.write("#field-ground-circuits", "3\n").await;
    read(&window, "pressure", "static_pressure", "12.5", "idle").await;
    let shown = window
        .text("[data-point=static_pressure] [data-test=shown]")
        .await;
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
async fn a_number_that_was_typed_is_kept_by_whatever_way_its_screen_is_left() {
    let window = Window::open().await;
    window.new_visit("Invented barn").await;
    window.tap("[data-step=readings]").await;
    window.tap("[data-points=pressure] > summary").await;
    window
        .tap("[data-points=pressure] [data-point=static_pressure]")
        .await;
    window.write("#value", "33").await;
    // Not kept by its button: straight on to another step and back.
    window.tap("[data-step=causes]").await;
    window.tap("[data-step=readings]").await;
    let kept = "[data-point=static_pressure] [data-test=shown]";
    let shown = window.text(kept).await;
    assert!(shown.starts_with("33"), "{shown:?}");
    window.tap("[data-test=undo]").await;
    window.wait_for_count(kept, 0).await;
    window.close().await;
}

/// Waits until what is being typed lies on the disk, then ends the app without a word.
async fn kill_while_typing(window: Window, place: &str) -> tempfile::TempDir {
    // Outside of a visit it stands in the settings.
    let asked = "const [place, done] = arguments; \
        const visit = location.hash.split('/')[2]; \
        const command = visit ? 'open_visit' : 'settings'; \
        window.__TAURI_INTERNALS__.invoke(command, { visit }).then( \
            ({ drafts }) => done(drafts.some((draft) => draft.place === place)), done)";
    let started = std::time::Instant::now();
    loop {
        let stored = window.run(asked, vec![place.into()]).await;
        if stored == true {
            return window.kill();
        }
        assert!(started.elapsed().as_secs() < 60, "{place}: {stored:?}");
        tokio::time::sleep(std::time::Duration::from_millis(50)).await;
    }
}

#[tokio::test]
async fn an_accuracy_half_typed_survives_a_kill_and_counts_only_once_it_is_kept() {
    let window = Window::open().await;
    window.tap("a[href='#/settings']").await;
    let gauge = "[data-instrument=dial_gauge]";
    window.tap(&format!("{gauge} input[type=checkbox]")).await;
    window.tap("#accuracy-dial_gauge").await;
    window.type_into_focused("accuracy-dial_gauge", "1").await;
    let data = kill_while_typing(window, "instrument/dial_gauge").await;

    let window = Window::open_on(data).await;
    window.tap("a[href='#/settings']").await;
    window.wait_for_value("#accuracy-dial_gauge", "1").await;
    let kept = "const done = arguments[0]; \
        window.__TAURI_INTERNALS__.invoke('settings').then(({ instruments }) => done( \
        instruments.find((one) => one.id === 'dial_gauge').accuracy), done)";
    assert_eq!(window.run(kept, Vec::new()).await, serde_json::Value::Null);
    window.tap(&format!("{gauge} [data-draft] button")).await;
    window
        .wait_for_count(&format!("{gauge} [data-draft]"), 0)
        .await;
    assert_eq!(window.run(kept, Vec::new()).await, "1");
    window.close().await;
}

#[tokio::test]
async fn what_is_half_typed_survives_a_kill_and_is_no_fact_until_it_is_kept() {
    let window = Window::open().await;
    window.new_visit("Invented barn").await;
    window.tap("[data-step=system]").await;
    window.tap("[data-group=ground]").await;
    window
        .choose("[data-field='ground.length'] select", "m")
        .await;
    window.tap("#field-ground-length").await;
    window.type_into_focused("field-ground-length", "4").await;
    let data = kill_while_typing(window, "field/ground.length").await;

    let window = Window::open_on(data).await;
    window.tap("[data-visit]").await;
    window.tap("[data-step=system]").await;
    let known = window.text("[data-group=ground]").await;
    window.tap("[data-group=ground]").await;
    assert_eq!(window.value("#field-ground-length").await, "4");
    let unit = window.value("[data-field='ground.length'] select").await;
    assert_eq!(unit, "m", "it stands in the unit it was typed in");
    let field = "[data-field='ground.length'] [data-draft]";
    window.tap(&format!("{field} button")).await;
    window.wait_for_count(field, 0).await;
    window.tap("a[href$='/system']:not([data-step])").await;
    let now = window.text("[data-group=ground]").await;
    assert_ne!(known, now, "it is known only once it is kept");

    // A reading, in the same way.
    window.tap("[data-step=readings]").await;
    window.tap("[data-point=static_pressure]").await;
    window.type_into_focused("value", "3").await;
    let data = kill_while_typing(window, "reading/static_pressure").await;

    let window = Window::open_on(data).await;
    window.tap("[data-visit]").await;
    window.tap("[data-step=readings]").await;
    let row = "[data-point=static_pressure]";
    window.find(&format!("{row} [data-test=typed]")).await;
    assert_eq!(window.count(&format!("{row} [data-test=shown]")).await, 0);
    window.tap(row).await;
    window.wait_for_value("#value", "3").await;
    window.type_into_focused("value", "3").await;
    window.tap("[data-test=save-reading]").await;
    let shown = window.text(&format!("{row} [data-test=shown]")).await;
    assert!(shown.starts_with("33"), "{shown:?}");
    window.wait_for_count("[data-test=typed]", 0).await;
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

#[tokio::test]
async fn a_call_without_records_gets_its_causes_and_its_report() {
    let window = Window::open().await;
    window.new_visit("Invented barn").await;
    for symptom in ["gurgling", "low-flow-lockout"] {
        window.answer(symptom, "yes").await;
    }
    window.tap("[data-onward=readings]").await;
    window.tap("[data-test=observed]").await;
    window.answer("flow-unsteady", "yes").await;
    read(&window, "flow", "exchanger_drop", "1.9", "cooling").await;

    window.tap("[data-step=causes]").await;
    let first = "[data-test=causes] > li:first-child [data-cause]";
    let title = window.text(&format!("{first} h2")).await;
    // Gurgling, unsteady flow and little of it: air, wherever it sits.
    let cause = window.attribute(first, "data-cause").await;
    let airy = ["air-left-in-circuit", "circuit-air-locked"];
    assert!(airy.contains(&cause.as_str()), "{title} leads");
    let share = window
        .text(&format!(
            "{first} [data-test=probability] [data-test=number]"
        ))
        .await;
    assert!(share.ends_with('%'), "{share:?}");
    // The reasons stand open under the first cause, each with the way it leads there.
    let reason = format!("{first} [data-reason=gurgling] ol li");
    assert!(
        window.count(&reason).await >= 2,
        "no way from cause to finding"
    );

    window.tap("[data-step=report]").await;
    window.tap("[data-test=save-report]").await;
    let path = window.desk().join("Barn report.pdf");
    window.answer_dialog("Save the report", &path);
    let saved = window.text("[data-test=saved]").await;
    assert!(saved.contains("Barn report.pdf"), "{saved:?}");
    let report = pdf_text(&path);
    for words in ["Invented barn", title.as_str(), share.as_str()] {
        assert!(
            report.contains(words),
            "{words:?} is not in the report:\n{report}"
        );
    }
    window.tap("[data-test=open-report]").await;
    let shown = window.shown().await;
    assert!(shown.ends_with("Barn report.pdf"), "{shown:?} was shown");
    window.close().await;
}

#[tokio::test]
async fn a_report_that_is_not_saved_leaves_nothing_behind() {
    let window = Window::open().await;
    window.tap("[data-test=new-visit]").await;
    window.tap("[data-step=report]").await;
    window.tap("[data-test=save-report]").await;
    window.cancel_dialog("Save the report");
    window.find("[data-test=not-saved]").await;
    window.close().await;
}

#[tokio::test]
async fn a_first_answer_takes_about_a_dozen_taps() {
    let window = Window::open().await;
    window.tap("[data-test=new-visit]").await;
    for symptom in ["gurgling", "low-flow-lockout"] {
        window
            .tap(&format!("[data-answer={symptom}] label:has([value=yes])"))
            .await;
    }
    window.tap("[data-onward=readings]").await;
    // Three readings; the field is ready to type into.
    for (point, text) in [
        ("static_pressure", "27"),
        ("exchanger_drop", "1.9"),
        ("entering_water", "78"),
    ] {
        window.tap(&format!("[data-point={point}]")).await;
        window.type_into_focused("value", text).await;
        window.tap("[data-test=save-reading]").await;
        window
            .find(&format!("[data-point={point}] [data-test=shown]"))
            .await;
    }
    window.tap("[data-step=causes]").await;
    window.find("[data-test=causes] [data-cause]").await;
    let taps = window.taps();
    assert!(taps <= 12, "{taps} taps to the first answer");
    window.close().await;
}

/// The text of a PDF as a reader would copy it, one space between words.
pub fn pdf_text(path: &Path) -> String {
    let output = Command::new("pdftotext")
        .args(["-layout".as_ref(), path.as_os_str(), "-".as_ref()])
        .output()
        .expect("pdftotext runs");
    assert!(
        output.status.success(),
        "{}",
        String::from_utf8_lossy(&output.stderr)
    );
    let text = String::from_utf8(output.stdout).expect("text");
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}
