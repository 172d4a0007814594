//! One call in one go, from opening the app to the saved reports, with a kill in
//! the middle, and the next call at the same site.

use std::path::{Path, PathBuf};

use crate::{
    call::{pdf_text, read},
    window::Window,
    work::{acknowledge, airy_call},
};

/// A picture to take for a photo: the project's own mark.
fn picture() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../src-tauri/icons/128x128.png")
}

/// What may be read after air is purged, in US units; nothing surprising.
const PROVEN: [(&str, &str); 5] = [
    ("static_pressure", "45"),
    ("exchanger_drop", "4"),
    ("flow", "9"),
    ("circulator_rise", "20"),
    ("dead_head_drop", "1"),
];

/// Opens the first step that holds what `css` names and is still to be done.
async fn open_step_with(window: &Window, css: &str) -> String {
    let steps = window
        .attributes("[data-state=open][data-step-id]", "data-step-id")
        .await;
    for id in steps {
        let step = format!("[data-step-id='{id}']");
        if window.count(&format!("{step} [aria-expanded=true]")).await == 0 {
            window.tap(&format!("{step} .head")).await;
            window.find(&format!("{step} [data-test=step-done]")).await;
        }
        if window.count(&format!("{step} {css}")).await > 0 {
            return step;
        }
    }
    panic!("no open step holds {css}");
}

/// Enters at each field of a gate a value on the good side of its limit.
async fn pass_gate(window: &Window, step: &str) {
    let fields = window
        .attributes(&format!("{step} [data-gate] input"), "id")
        .await;
    assert!(!fields.is_empty(), "{step} has no gate");
    for (met, field) in fields.iter().enumerate() {
        let rule = window
            .text(&format!("[id='{field}-hint'] [data-test=number]"))
            .await;
        let mut words = rule.split_whitespace();
        let limit: f64 = words
            .find_map(|word| word.parse().ok())
            .unwrap_or_else(|| panic!("no limit in {rule:?}"));
        let unit = words.collect::<Vec<_>>().join(" ");
        let better = if rule.starts_with("at least") {
            limit * 1.1
        } else {
            limit * 0.9
        };
        window
            .write(&format!("[id='{field}']"), &format!("{better:.3} {unit}"))
            .await;
        window
            .wait_for_count(&format!("{step} [data-gate] .found"), met + 1)
            .await;
    }
    window.find(&format!("{step} [data-gate=passed]")).await;
}

/// Marks the step in hand as done all the same, with a reason.
async fn done_all_the_same(window: &Window, step: &str, reason: &str) {
    if window
        .count(&format!("{step} [data-test=step-without]"))
        .await
        == 0
    {
        window.tap(&format!("{step} .head")).await;
    }
    window
        .tap(&format!("{step} [data-test=step-without]:not(:disabled)"))
        .await;
    window.write(&format!("{step} form input"), reason).await;
    window
        .tap(&format!("{step} [data-test=step-without-now]"))
        .await;
}

/// Whether something is on the screen and not behind the buttons at its bottom.
async fn in_sight(window: &Window, css: &str) -> bool {
    let script = "const done = arguments[arguments.length - 1]; \
        const place = document.querySelector(arguments[0]).getBoundingClientRect(); \
        const buttons = document.querySelector('footer').getBoundingClientRect(); \
        setTimeout(() => done(place.top >= 0 && place.bottom <= buttons.top), 0)";
    window.run(script, vec![css.into()]).await == true
}

/// Waits until a key would go to what `css` names.
async fn under_the_keys(window: &Window, css: &str) {
    let script = "const done = arguments[arguments.length - 1]; \
        const active = document.activeElement; \
        done(active.matches(arguments[0]) ? '' : active.outerHTML.slice(0, 300))";
    let started = std::time::Instant::now();
    loop {
        let other = window.run(script, vec![css.into()]).await;
        if other == "" {
            return;
        }
        assert!(started.elapsed().as_secs() < 30, "the keys are at {other}");
        tokio::time::sleep(std::time::Duration::from_millis(50)).await;
    }
}

/// Saves a report and checks that a PDF lies there.
async fn save(window: &Window, button: &str, dialog: &str, path: &Path) {
    window.tap(button).await;
    window.answer_dialog(dialog, path);
    let name = path.file_name().expect("a name").to_string_lossy();
    let shown = format!("the path of {name}");
    let started = std::time::Instant::now();
    while !window.text("[data-test=saved]").await.contains(&*name) {
        assert!(started.elapsed().as_secs() < 60, "{shown} is not shown");
        tokio::time::sleep(std::time::Duration::from_millis(50)).await;
    }
    let seen = in_sight(window, "[data-test=saved]").await;
    assert!(seen, "{shown} is out of sight");
    let bytes = std::fs::read(path).expect("the report lies there");
    assert!(bytes.starts_with(b"%PDF"), "{name} is no PDF");
}

#[tokio::test]
async fn a_call_goes_from_its_complaint_over_a_kill_to_both_reports_and_the_next_call() {
    let window = Window::open().await;
    airy_call(&window).await;
    window.tap("[data-step=call]").await;
    window
        .write("#field-visit-complaint", "It gurgles and then stops")
        .await;
    read(&window, "pressure", "static_pressure", "27", "idle").await;
    read(&window, "flow", "exchanger_drop", "1.9", "cooling").await;

    // The causes, each number with its reasons.
    window.tap("[data-step=causes]").await;
    let first = "[data-test=causes] > li:first-child [data-cause]";
    let title = window.text(&format!("{first} h2")).await;
    let share = window
        .text(&format!(
            "{first} [data-test=probability] [data-test=number]"
        ))
        .await;
    for asked in [
        format!("{first} [data-test=probability]"),
        format!("{first} [data-reason=gurgling]"),
        "[data-check]".to_owned(),
    ] {
        window.tap(&format!("{asked} [data-why] button")).await;
        let told = window.text(&format!("{asked} [data-why] dl")).await;
        assert!(!told.trim().is_empty(), "{asked} tells nothing");
    }

    // The charts, laid out for this screen, their numbers with reasons too.
    window.tap("[data-test=pictures]").await;
    window.find("[data-chart=path] svg").await;
    let causes = "[data-chart]:has([data-why])";
    window.tap(&format!("{causes} [data-why] button")).await;
    let told = window.text(&format!("{causes} [data-why] dl")).await;
    assert!(!told.trim().is_empty(), "a number of a chart tells nothing");
    let beyond = "const done = arguments[arguments.length - 1]; \
        done([...document.querySelectorAll('[data-chart] .scroll')] \
            .filter((box) => box.scrollWidth > box.clientWidth + 1).length)";
    let beyond = window.run(beyond, Vec::new()).await;
    assert_eq!(beyond, 0, "charts wider than the screen");

    // The work: cautions, a step done, a timer, a gate.
    window.tap("[data-step=plan]").await;
    let open = "[data-state=open]:has([aria-expanded=true])";
    let done = window.attribute(open, "data-step-id").await;
    let done = format!("[data-step-id='{done}']");
    acknowledge(&window, &done).await;
    window
        .write(&format!("{done} input[id^=note]"), "Plate says 100 psi\n")
        .await;
    window
        .tap(&format!("{done} [data-test=step-done]:not(:disabled)"))
        .await;
    window.find(&format!("{done}[data-state=done]")).await;
    // The next step is under the keys, and in sight.
    under_the_keys(&window, &format!("{open} .head")).await;
    let next = in_sight(&window, &format!("{open} .head")).await;
    assert!(next, "the next step is out of sight");
    let timed = open_step_with(&window, "[data-run]").await;
    window.tap(&format!("{timed} [data-run]")).await;
    window.find(&format!("{timed} [data-test=left]")).await;
    // Not done before the steps that it rests on, which it names, nor while its time has
    // not run, unless a reason is written down.
    acknowledge(&window, &timed).await;
    window.find(&format!("{timed} [data-earlier]")).await;
    window
        .tap(&format!("{timed} [data-test=step-done]:not(:disabled)"))
        .await;
    let refused = window.text(&format!("{timed} [data-test=failure]")).await;
    assert!(refused.contains("It rests on"), "{refused:?}");
    window.find(&format!("{timed}[data-state=open]")).await;
    let gated = open_step_with(&window, "[data-gate]").await;
    acknowledge(&window, &gated).await;
    window
        .tap(&format!("{gated} [data-test=step-done]:not(:disabled)"))
        .await;
    window.find(&format!("{gated} [data-test=failure]")).await;
    window.find(&format!("{gated}[data-state=open]")).await;
    pass_gate(&window, &gated).await;
    let untimed = window.count(&format!("{gated} [data-run]")).await == 0;
    assert!(untimed, "{gated} waits for a time as well");
    window
        .tap(&format!("{gated} [data-test=step-done]:not(:disabled)"))
        .await;
    window.find(&format!("{gated}[data-state=done]")).await;
    let data = window.kill();

    // Everything is there again.
    let window = Window::open_on(data).await;
    window.tap("[data-visit]").await;
    window
        .wait_for_value("#field-visit-complaint", "It gurgles and then stops")
        .await;
    window
        .find("[data-answer=gurgling] [value=yes]:checked")
        .await;
    window.tap("[data-step=readings]").await;
    for (point, value) in [("static_pressure", "27"), ("exchanger_drop", "1.9")] {
        let shown = window
            .text(&format!("[data-point={point}] [data-test=shown]"))
            .await;
        assert!(shown.starts_with(value), "{point} shows {shown:?}");
    }
    window.tap("[data-step=plan]").await;
    window.find(&format!("{done}[data-state=done]")).await;
    for (step, css) in [(&timed, "[data-test=left]"), (&gated, "[data-gate=passed]")] {
        let there = format!("{step} {css}");
        if window.count(&there).await == 0 {
            window.tap(&format!("{step} .head")).await;
        }
        window.find(&there).await;
    }
    window.find(&format!("{gated}[data-state=done]")).await;

    // The time is not waited for; why is on record.
    done_all_the_same(&window, &timed, "The owner has to leave").await;
    window.find(&format!("{timed}[data-state=excused]")).await;

    // The reading that proves it: as left, without saying so.
    let proofs = window.attributes("[data-proof]", "data-proof").await;
    let (point, value) = PROVEN
        .into_iter()
        .find(|(point, _)| proofs.iter().any(|known| known == point))
        .unwrap_or_else(|| panic!("none of {proofs:?} is expected of air"));
    let row = format!("[data-proof={point}]");
    window.tap(&row).await;
    window.type_into_focused("value", value).await;
    window.tap("[data-test=save-reading]").await;
    let started = std::time::Instant::now();
    loop {
        let text = window.text(&row).await;
        if text.contains(&format!("As left: {value}")) {
            break;
        }
        assert!(started.elapsed().as_secs() < 60, "{text:?}");
        tokio::time::sleep(std::time::Duration::from_millis(50)).await;
    }

    // Back where it was asked for, not at the top of the plan.
    under_the_keys(&window, &row).await;
    assert!(in_sight(&window, &row).await, "{point} is out of sight");
    window.find("[data-step=plan] .mark.begun").await;

    // That it is put right and proven is said by nobody who does not know what is open.
    window.tap("[data-step=report]").await;
    let outcome = "#field-visit-outcome";
    window.find(outcome).await;
    window.choose(outcome, "fixed").await;
    let missing = window.text("[data-test=outcome-open]").await;
    for told in ["still to do", "not read"] {
        assert!(missing.contains(told), "{told}: {missing:?}");
    }
    window.tap("[data-test=outcome-another]").await;
    window.wait_for_value(outcome, "").await;
    window.choose(outcome, "partly").await;
    window.find("[data-step=report] .mark.begun").await;
    window.choose(outcome, "fixed").await;
    window.tap("[data-test=outcome-all-the-same]").await;
    // It is told for as long as it is so.
    window
        .wait_for_count("[data-test=outcome-all-the-same]", 0)
        .await;
    window.find("[data-test=outcome-open]").await;
    window.wait_for_value(outcome, "fixed").await;

    // Photo and signatures.
    window.pick_file("#photo", &picture()).await;
    window.find("[data-photo] img").await;
    window
        .write("[data-photo] input[id^=caption]", "Invented strainer")
        .await;
    for role in ["technician", "customer"] {
        let pad = format!("[data-signature={role}]");
        window
            .write(&format!("#name-{role}"), &format!("Invented {role}"))
            .await;
        window
            .tap(&format!("{pad} [data-test=sign-typed]:not(:disabled)"))
            .await;
        // The name stands where a signature would.
        let signed = window.text(&format!("{pad} [data-test=by-name]")).await;
        assert!(signed.contains(&format!("Invented {role}")), "{signed:?}");
    }

    // Both reports.
    let service = window.desk().join("Barn service.pdf");
    let home = window.desk().join("Barn homeowner.pdf");
    save(
        &window,
        "[data-test=save-report]",
        "Save the report",
        &service,
    )
    .await;
    save(&window, "[data-test=save-homeowner]", "homeowner", &home).await;
    let report = pdf_text(&service);
    for words in [
        "Invented barn",
        "It gurgles and then stops",
        title.as_str(),
        "Invented strainer",
        "Invented customer",
        "Not proved",
        "The owner has to leave",
        "Plate says 100 psi",
    ] {
        assert!(report.contains(words), "{words:?} is not in:\n{report}");
    }
    let page = pdf_text(&home);
    assert!(page.contains("Invented barn"), "{page}");
    assert!(
        !page.contains(share.as_str()),
        "the homeowner's page speaks of {share}"
    );

    // The next call at the same site knows what was read at this one.
    window.tap("a[href='#/visits']").await;
    let signed = window.attribute("[data-visit]", "data-visit").await;
    window.tap("[data-again]").await;
    window
        .wait_for_value("#field-site-name", "Invented barn")
        .await;
    assert_eq!(window.value("#field-visit-complaint").await, "");
    let before = window.text("[data-test=last-visit]").await;
    assert!(before.contains("Loop gauge at rest"), "{before:?}");
    window.tap("[data-step=readings]").await;
    window.tap("[data-point=static_pressure]").await;
    window.tap("[data-test=earlier] > summary").await;
    let earlier = window.text("[data-test=earlier]").await;
    assert!(earlier.contains("27"), "{earlier:?}");
    // What is changed of the system here does not change what was signed there.
    window.tap("a[href$='/readings']:not([data-step])").await;
    window.tap("[data-step=system]").await;
    window.write("#field-ground-circuits", "7\n").await;
    window.find("[data-test=undo]").await;
    window.tap("a[href='#/visits']").await;
    window.tap(&format!("[data-visit='{signed}']")).await;
    window.tap("[data-step=system]").await;
    window.find("[data-test=signed]").await;
    assert_ne!(window.value("#field-ground-circuits").await, "7");
    window.close().await;
}
