//! The work on site: steps, timers, signatures, settings, known sites.

use crate::window::Window;

/// A visit with what points to air in the loop, on its way to the plan.
pub async fn airy_call(window: &Window) {
    window.new_visit("Invented barn").await;
    for symptom in ["gurgling", "low-flow-lockout"] {
        window.answer(symptom, "yes").await;
    }
    window.tap("[data-onward=readings]").await;
    window.tap("[data-test=observed]").await;
    for seen in ["flow-unsteady", "springy-gauge", "air-at-vent"] {
        window.answer(seen, "yes").await;
    }
}

/// Acknowledges every caution of the step in hand.
pub async fn acknowledge(window: &Window, step: &str) {
    let waiting = format!("{step} [data-caution]:not(:checked)");
    window.find(&format!("{step} [data-test=step-done]")).await;
    while window.count(&waiting).await > 0 {
        let before = window.count(&waiting).await;
        window.tap(&waiting).await;
        window.wait_for_count(&waiting, before - 1).await;
    }
}

#[tokio::test]
async fn the_work_is_kept_step_by_step_and_a_timer_runs_on_after_a_kill() {
    let window = Window::open().await;
    airy_call(&window).await;
    window.tap("[data-step=plan]").await;
    let open = "[data-state=open]:has([aria-expanded=true])";
    let first = window.attribute(open, "data-step-id").await;
    let step = format!("[data-step-id='{first}']");
    acknowledge(&window, &step).await;
    // It opens once the acknowledgement is kept.
    window
        .tap(&format!("{step} [data-test=step-done]:not(:disabled)"))
        .await;
    window.find(&format!("{step}[data-state=done]")).await;
    // The next one opens by itself; it is left out for a reason.
    let second = window.attribute(open, "data-step-id").await;
    assert_ne!(first, second);
    let step = format!("[data-step-id='{second}']");
    window.tap(&format!("{step} [data-test=step-skip]")).await;
    window
        .write(&format!("{step} form input"), "No cart on the van")
        .await;
    window
        .tap(&format!("{step} [data-test=step-skip-now]"))
        .await;
    window.find(&format!("{step}[data-state=skipped]")).await;
    // A timer anywhere in the plan.
    let steps = window.attributes("[data-step-id]", "data-step-id").await;
    let mut timed = None;
    for id in steps.iter().filter(|id| **id != first && **id != second) {
        let step = format!("[data-step-id='{id}']");
        if window.count(&format!("{step} [aria-expanded=true]")).await == 0 {
            window.tap(&format!("{step} .head")).await;
            window.find(&format!("{step} [data-test=step-done]")).await;
        }
        if window.count(&format!("{step} [data-run]")).await > 0 {
            timed = Some(step);
            break;
        }
    }
    let timed = timed.expect("a step of purging waits for a time");
    window.tap(&format!("{timed} [data-run]")).await;
    window.find(&format!("{timed} [data-test=left]")).await;
    let data = window.kill();

    let window = Window::open_on(data).await;
    window.tap("[data-visit]").await;
    window.tap("[data-step=plan]").await;
    window
        .find(&format!("[data-step-id='{first}'][data-state=done]"))
        .await;
    window
        .find(&format!("[data-step-id='{second}'][data-state=skipped]"))
        .await;
    if window.count(&format!("{timed} [data-test=left]")).await == 0 {
        window.tap(&format!("{timed} .head")).await;
    }
    let left = window.text(&format!("{timed} [data-test=left]")).await;
    assert!(left.contains(':'), "the timer shows {left:?}");
    window.close().await;
}

#[tokio::test]
async fn a_second_call_at_the_same_site_knows_its_system() {
    let window = Window::open().await;
    window.new_visit("Invented barn").await;
    window.tap("[data-step=system]").await;
    window.write("#field-ground-circuits", "3\n").await;
    window.find("[data-test=undo]").await;
    window.tap("a[href='#/visits']").await;

    window.tap("[data-again]").await;
    let name = window.value("#field-site-name").await;
    assert_eq!(name, "Invented barn");
    window.tap("[data-step=system]").await;
    assert_eq!(window.value("#field-ground-circuits").await, "3");
    window.tap("a[href='#/visits']").await;

    // Typed anew, the site is recognised and joined.
    window.new_visit("INVENTED  barn").await;
    window.tap("[data-test=join-site]").await;
    window
        .wait_for_value("#field-site-name", "Invented barn")
        .await;
    window.tap("[data-step=system]").await;
    assert_eq!(window.value("#field-ground-circuits").await, "3");
    window.close().await;
}

#[tokio::test]
async fn the_last_entry_can_be_taken_back() {
    let window = Window::open().await;
    window.tap("[data-test=new-visit]").await;
    window.answer("gurgling", "yes").await;
    window.tap("[data-test=undo]").await;
    window
        .find("[data-answer=gurgling] [value='']:checked")
        .await;
    assert_eq!(window.count("[data-test=undo]").await, 0);
    window.close().await;
}

#[tokio::test]
async fn what_is_chosen_in_the_settings_is_kept_and_words_the_app() {
    let window = Window::open().await;
    window.tap("a[href='#/settings']").await;
    window.find("#units").await;
    window.choose("#units", "si").await;
    window.choose("#theme", "dark").await;
    window.write("#technician", "A. Invented").await;
    window.tap("[data-instrument=dial_gauge] label").await;
    window.find("#accuracy-dial_gauge").await;
    let data = window.kill();

    let window = Window::open_on(data).await;
    window.find("[data-theme=dark]").await;
    window.tap("a[href='#/settings']").await;
    window.wait_for_value("#technician", "A. Invented").await;
    assert_eq!(window.value("#units").await, "si");
    window.tap("a[href='#/visits']").await;
    window.tap("[data-test=new-visit]").await;
    window.tap("[data-step=readings]").await;
    window.tap("[data-points=pressure] > summary").await;
    window
        .tap("[data-points=pressure] [data-point=static_pressure]")
        .await;
    assert_eq!(window.value(".entry select").await, "bar");
    window.close().await;
}

#[tokio::test]
async fn a_tap_on_the_drawing_leads_to_the_point_and_shows_its_reading() {
    let window = Window::open().await;
    window.tap("[data-test=new-visit]").await;
    window.tap("[data-step=readings]").await;
    window.tap("[data-test=drawing]").await;
    window.tap("[data-spot=static_pressure]").await;
    window.write("#value", "12.5").await;
    window.tap("[data-test=save-reading]").await;
    // Back on the drawing, which shows it.
    let spot = window.text("[data-spot=static_pressure].read").await;
    assert!(spot.contains("12.5"), "{spot:?}");
    window.close().await;
}

#[tokio::test]
async fn the_demo_company_comes_when_asked_and_goes_as_a_whole() {
    let window = Window::open().await;
    window.new_visit("Own workshop").await;
    window.tap("a[href='#/visits']").await;
    window.wait_for_count("[data-visit]", 1).await;
    window.tap("a[href='#/settings']").await;
    window.tap("[data-test=load-demo]").await;
    window.find("[data-test=remove-demo]").await;
    let said = window.text("[data-test=demo]").await;
    assert!(said.contains("invented visits"), "{said:?}");
    window.tap("a[href='#/visits']").await;
    window.find("[data-demo]").await;
    let invented = window.count("[data-demo]").await;
    assert!(invented > 1, "{invented} invented visits are listed");
    let first = window.text("[data-demo]").await;
    assert!(first.contains("invented"), "{first:?}");
    // An invented call is worked on like any other.
    window.tap("[data-demo] [data-visit]").await;
    window.tap("[data-step=causes]").await;
    window.find("[data-test=causes] [data-cause]").await;
    window.tap("a[href='#/visits']").await;

    window.tap("a[href='#/settings']").await;
    window.tap("[data-test=remove-demo]").await;
    window.find("[data-test=load-demo]").await;
    window.tap("a[href='#/visits']").await;
    window.wait_for_count("[data-visit]", 1).await;
    let left = window.text("[data-visit]").await;
    assert!(left.contains("Own workshop"), "{left:?}");
    window.close().await;
}
