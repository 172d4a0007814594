//! What the reports tell of the pressure over the year.

use super::*;

#[test]
fn a_homeowner_is_never_told_that_a_pressure_out_of_its_limits_is_normal() {
    use crate::units::{Quantity, Unit};
    for sample in SAMPLES {
        let call = call(sample);
        let plan = call.work_plan();
        let Some(season) = call.season_to_keep(plan) else {
            continue;
        };
        let (low, high) = season.ends();
        // 15 psi: a utility's guide to testing loops; 70 psi: the upper end of
        // what is left at start-up, common practice, no source.
        assert!(low.si() >= Unit::Psi.to_si(15.0) - 1.0, "{low:?}");
        assert!(high.si() <= Unit::Psi.to_si(70.0) + 1.0, "{high:?}");
        assert!(low < high);
        let page = call.homeowner_content(&issue());
        let said = format!("{:?} {:?}", page.notice, page.call);
        assert!(said.contains(&call.pressure(low)), "{said}");
        assert!(!said.contains('−'), "a pressure below zero: {said}");
    }
}

#[test]
fn both_reports_tell_the_same_pressures_of_the_year_however_wide_the_band() {
    // A sealed loop of which nothing is recorded but its pressure: the band is wide.
    let bare = r#"{"format":"returnline-visit","version":1,
        "system":{"flow_centre":{"kind":"sealed"}},"visit":{"date":"2026-08-14",
        "verdicts":[{"cause":"air-left-in-circuit","confirmed":true}],
        "readings":[{"point":"static_pressure","value":{"value":27,"unit":"psi"}}]}}"#;
    let mut cut = 0;
    for file in SAMPLES.into_iter().chain([bare]) {
        let call = call(file);
        let Some(season) = call.season_to_keep(call.work_plan()) else {
            continue;
        };
        let page = call.homeowner_content(&issue());
        let service = call.service_content(&issue());
        let title = call.say("service-chart-season");
        let mut charts = service.charts.iter();
        let chart = charts.find(|chart| chart.title == title);
        let caption = &chart.expect("a chart of the year").caption;
        let notice = page.notice.join(" ");
        for range in [&season.winter, &season.summer] {
            let range = call.range(range);
            assert!(caption.contains(&range), "{range}: {caption}");
            assert!(notice.contains(&range), "{range}: {notice}");
        }
        // Where the limits cut it, the technician reads what the model alone says.
        let alone = caption.contains("by the model alone");
        assert_eq!(alone, season.beyond.is_some(), "{caption}");
        cut += usize::from(alone);
        let (low, high) = season.ends();
        for (_, range) in &season.by_temperature {
            assert!(range.low >= season.limits[0] && range.high <= season.limits[1]);
        }
        assert!(low >= season.limits[0] && high <= season.limits[1]);
    }
    assert!(cut > 0, "no band was cut");
}

#[test]
fn a_band_whose_likeliest_course_leaves_the_limits_is_no_forecast() {
    // Of this loop nothing is recorded, and the sample was read in January.
    let call = call(SAMPLES[1]);
    let plan = call.work_plan();
    assert!(call.season_to_keep(plan).is_none());
    let told = call.season_told(plan).expect("a band");
    assert!(told.vague);
    let unit = crate::units::Unit::Bar;
    let lowest = crate::units::Quantity::si(told.ends().0);
    assert!(lowest >= unit.to_si(-1.0), "{lowest:?}");
    // Nor what the gauge should read at any temperature.
    assert!(call.gauge_by_temperature(&told).is_empty());
    let service = call.service_content(&issue());
    let captions: Vec<&str> = service.charts.iter().map(|c| c.caption.as_str()).collect();
    let said = |words: &str| captions.iter().any(|caption| caption.contains(words));
    assert!(said("Do not hold the gauge to this band"), "{captions:?}");
    // Who lives there is told no number of a season.
    let page = call.homeowner_content(&issue());
    let notice = page.notice.join(" ");
    assert!(!notice.contains("in the hottest"), "{notice}");
}
