//! Invented calls and an invented fleet, for the three kinds of report.

use chrono::NaiveDate;
use returnline_core::api::{Call, Issue, Wording, read_visit_file};
use returnline_core::records::{Signature, SignatureRole};
use returnline_core::report::document::PageSize;
use returnline_core::report::fleet::{
    FleetCause, FleetGroup, FleetPicture, FleetReport, GroupRow, RepeatLine, RevisitLine, Share,
    SurvivalPoint,
};
use returnline_core::report::parts::{Issuer, PhotoPart};
use serde_json::{Value, json};

use super::{meta, photos};

/// A call from the text of a visit file.
///
/// # Panics
/// When the file is refused.
#[must_use]
pub fn call(text: &str, wording: Wording) -> Call {
    let file = read_visit_file(text.as_bytes(), wording)
        .unwrap_or_else(|error| panic!("{}", error.message));
    Call::assess(&file, NaiveDate::default(), wording)
}

/// With what the samples are issued: an invented company, photos, a signature.
#[must_use]
pub fn issue(page: PageSize, with_photos: bool) -> Issue {
    let date = meta("").date;
    let stroke = |from: f32| -> Vec<[f32; 2]> {
        (0_u8..40)
            .map(|step| {
                let part = f32::from(step) / 40.0;
                [
                    from + 0.4 * part,
                    0.5 + 0.35 * (part * 14.0).sin() * (1.0 - part),
                ]
            })
            .collect()
    };
    let signature = Signature::new(
        SignatureRole::Customer,
        "Invented Customer",
        3.0,
        vec![stroke(0.05), stroke(0.5)],
        date,
    );
    let words = [
        ("As found", "Strainer with chips"),
        ("As left", "Strainer washed"),
        ("As found", "Gauge before"),
        ("As left", "Gauge after"),
    ];
    let photos = photos().into_iter().zip(words.into_iter().cycle());
    Issue {
        issuer: Issuer {
            company: Some("Example Heating Company (invented)".into()),
            phone: Some("+1 555 010 0199".into()),
            logo: None,
        },
        photos: photos
            .filter(|_| with_photos)
            .map(|(photo, (phase, caption))| PhotoPart {
                photo,
                phase: phase.into(),
                caption: Some(caption.into()),
                taken_at: Some("2026-10-14 15:10".into()),
            })
            .collect(),
        signatures: signature.into_iter().collect(),
        next_visit: NaiveDate::from_ymd_opt(2027, 2, 15),
        ..Issue::new(date, page)
    }
}

/// A call with everything too much: names without end, sixty readings, forty
/// circuits, notes in other scripts and with emoji, steps done and not done.
#[must_use]
pub fn crowded() -> String {
    let long = "Gemeindezentrum-und-Mehrzweckhallenverwaltungsgebäude (invented) ".repeat(3);
    let notes = "Emoji \u{1f600}\u{1f527}, Hebrew \u{5e9}\u{5dc}\u{5d5}\u{5dd}, Arabic \
                 \u{633}\u{644}\u{627}\u{645}, override \u{202e}txt\u{202c}, Chinese \u{4f60}\u{597d}. ";
    let readings: Vec<Value> = (0..60)
        .map(|index| {
            json!({
                "point": "circuit_return",
                "value": { "value": 41.0 + 0.1 * f64::from(index), "unit": "degF" },
                "circuit": index % 40 + 1, "mode": "heating",
                "phase": if index < 40 { "found" } else { "left" },
                "note": if index == 7 { notes } else { "" }
            })
        })
        .collect();
    let mut file = json!({
        "format": "returnline-visit",
        "version": 1,
        "site": { "name": long, "notes": notes, "address": long },
        "system": {
            "label": long,
            "flow_centre": { "kind": "sealed" },
            "ground": { "kind": "vertical", "circuits": [{
                "count": 40,
                "pipe": { "standard": "ips_pe", "size": "3/4", "sdr": "11" },
                "length": { "value": 500, "unit": "ft" }
            }] },
            "fluid": { "kind": "methanol", "volume_fraction": { "value": 15, "unit": "%" } }
        },
        "visit": {
            "date": "2026-10-14",
            "technician": long,
            "complaint": notes.repeat(4),
            "answers": [
                { "finding": "gurgling", "is": "yes" },
                { "finding": "gauge-lower-than-before", "is": "yes" }
            ],
            "verdicts": [
                { "cause": "air-left-in-circuit", "confirmed": true, "by_check": "open-vent" },
                { "cause": "leak-in-ground", "confirmed": false }
            ],
            "actions": [
                { "step": "lock-power-off", "done": true,
                  "duration": { "value": 5, "unit": "min" } },
                { "step": "flush-loop", "done": false },
                { "text": long, "done": true, "duration": { "value": 1.5, "unit": "h" } }
            ],
            "outcome": "partly",
            "notes": notes.repeat(8)
        }
    });
    file["visit"]["readings"] = Value::Array(readings);
    file.to_string()
}

/// A call of which nothing is known but its site.
#[must_use]
pub fn bare() -> String {
    json!({
        "format": "returnline-visit", "version": 1,
        "site": { "name": "Bare Hill (invented)" },
        "visit": { "date": "2026-10-14" }
    })
    .to_string()
}

/// An invented fleet. `crowded` makes every list long.
#[must_use]
pub fn fleet(page: PageSize, crowded: bool) -> FleetReport {
    let names = [
        "Air left in the loop at filling",
        "Charged cold with no allowance for summer",
        "Debris left in the loop",
        "Antifreeze too weak",
        "Three-way valve left mis-set",
        "Circulators never bled",
    ];
    let times = if crowded { 6 } else { 1 };
    let causes: Vec<FleetCause> = (0..names.len() * times)
        .map(|index| {
            let count = (40_usize).saturating_sub(3 * index).max(1);
            FleetCause {
                title: format!(
                    "{}{}",
                    names[index % names.len()],
                    " again".repeat(index / 6)
                ),
                share: share(count, 142),
                cost: (index % 3 != 2).then_some(1234.5 * count as f64),
            }
        })
        .collect();
    let row = |name: String, count: usize, of: usize, chance: Option<f64>| GroupRow {
        name,
        share: share(count, of),
        chance,
    };
    let group = |title: &str, names: &[&str]| FleetGroup {
        title: title.into(),
        rows: names
            .iter()
            .cycle()
            .take(names.len() * times)
            .enumerate()
            .map(|(index, name)| {
                let chance = (index > 0).then_some(0.0004 + 0.21 * index as f64 / 10.0);
                row((*name).into(), 3 + index, 20 + 9 * index, chance)
            })
            .collect(),
    };
    let day = |month, day| NaiveDate::from_ymd_opt(2026, month, day);
    let lines = 5 * times as u32 * if crowded { 3 } else { 1 };
    FleetReport {
        meta: meta("Callbacks of an invented fleet"),
        page,
        issuer: Issuer {
            company: Some("Example Heating Company (invented)".into()),
            ..Issuer::default()
        },
        picture: FleetPicture {
            from: day(1, 1).unwrap_or_default(),
            to: day(10, 31).unwrap_or_default(),
            systems: 318,
            visits: 142,
            callbacks: 96,
            called_back: share(96, 318),
            watched_months: 24,
            repeat_days: 365,
            differences: vec![
                "Debris left in the loop: 9 % of the systems commissioned by Crew North had it (8 of 89), of all others 2 % (5 of 229).".into(),
            ],
            differences_how: "From 120 invented comparisons.".into(),
            cost: Some(184_250.0),
            currency: Some("USD".into()),
            causes,
            first_fixes: share(17, 88),
            fixes_by_cause: names
                .iter()
                .map(|name| row((*name).into(), 3, 14, None))
                .collect(),
            repeats: (1..=lines)
                .map(|index| RepeatLine {
                    system: format!("{index} Mill Road (invented), main house"),
                    visits: 2 + (index % 3) as usize,
                    causes: format!("{}; {}", names[index as usize % 6], names[1]),
                    last: day(1 + index % 12, 1 + index % 28),
                })
                .collect(),
            groups: vec![
                group(
                    "By crew",
                    &["Crew North", "Crew South", "Subcontractor", "not recorded"],
                ),
                group(
                    "By season of start-up",
                    &["winter", "spring", "summer", "autumn"],
                ),
                group("By fluid", &["propylene glycol", "methanol", "water"]),
                group(
                    "By flow centre",
                    &["sealed", "with tank", "non-pressurised"],
                ),
                group("By habit: flush recorded", &["yes", "no", "not recorded"]),
            ],
            first_callback: (0..=30)
                .map(|step| {
                    let months = f64::from(step);
                    let without = (-months / 70.0).exp();
                    SurvivalPoint {
                        months,
                        without,
                        low: without - 0.002 * months,
                        high: (without + 0.002 * months).min(1.0),
                    }
                })
                .collect(),
            revisit: (1..=lines)
                .map(|index| RevisitLine {
                    system: format!("{index} Quarry Lane (invented)"),
                    reason: "Fix held for less than three months; the same cause was found twice."
                        .into(),
                    last: day(1 + index % 12, 1 + index % 28),
                })
                .collect(),
            remarks: vec!["All of this is invented.".into()],
        },
    }
}

/// A share with an interval made up for its looks.
fn share(count: usize, of: usize) -> Share {
    let rate = count as f64 / of as f64;
    let half = 1.0 / (of as f64).sqrt();
    Share {
        count,
        of,
        low: (rate - half).max(0.0),
        high: (rate + half).min(1.0),
    }
}
