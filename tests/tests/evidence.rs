//! Whatever a visit file says, the evidence made of it is sound: no panic, no
//! number that is none, nothing lost, the same every time.

use chrono::NaiveDate;
use proptest::prelude::*;
use proptest::strategy::BoxedStrategy;
use returnline_core::diagnosis::{Inference, shipped};
use returnline_core::evidence::{Unused, gather};
use returnline_core::model::LoopModel;
use returnline_core::records::visit_file::{self, FORMAT, Vocabulary};
use returnline_core::records::{Instrument, Level, ReadingPoint};
use returnline_core::text::{Language, catalog};
use serde_json::{Map, Value, json};

/// Takes any identifier.
struct Anything;
impl Vocabulary for Anything {
    fn answers(&self, _: &str) -> Option<&[Level]> {
        Some(&[
            Level::Yes,
            Level::No,
            Level::Low,
            Level::Normal,
            Level::High,
        ])
    }
    fn has_cause(&self, _: &str) -> bool {
        true
    }
    fn has_check(&self, _: &str) -> bool {
        true
    }
    fn close_to(&self, _: &str) -> Vec<String> {
        Vec::new()
    }
}

type Field = BoxedStrategy<Option<Value>>;

/// Nothing, an end of the range, or anything in it.
fn number(low: f64, high: f64, unit: &'static str) -> Field {
    let value = prop_oneof![1 => Just(low), 1 => Just(high), 4 => low..=high];
    prop_oneof![
        1 => Just(None),
        2 => value.prop_map(move |value| Some(json!({ "value": value, "unit": unit })))
    ]
    .boxed()
}

fn one_of(choices: &'static [&'static str]) -> Field {
    prop_oneof![
        1 => Just(None),
        3 => prop::sample::select(choices).prop_map(|choice| Some(json!(choice)))
    ]
    .boxed()
}

fn flag() -> Field {
    prop::option::of(any::<bool>())
        .prop_map(|flag| flag.map(Value::from))
        .boxed()
}

fn day() -> Field {
    prop::option::of((2010..2027_i32, 1..13_u32, 1..29_u32))
        .prop_map(|day| day.map(|(y, m, d)| json!(format!("{y:04}-{m:02}-{d:02}"))))
        .boxed()
}

/// An object of those fields that have a value.
fn object(fields: Vec<(&'static str, Field)>) -> BoxedStrategy<Value> {
    let (names, values): (Vec<_>, Vec<_>) = fields.into_iter().unzip();
    values
        .prop_map(move |values| {
            let named = names.iter().zip(values);
            let known = named.filter_map(|(name, value)| Some(((*name).to_owned(), value?)));
            Value::Object(known.collect::<Map<_, _>>())
        })
        .boxed()
}

fn maybe(value: BoxedStrategy<Value>) -> Field {
    prop::option::weighted(0.7, value).boxed()
}

fn curve(of: &'static str, falls: bool, high: f64, unit: &'static str) -> Field {
    let point = (0.0..60.0_f64, 0.0..high);
    prop::collection::vec(point, 0..5)
        .prop_map(move |mut points| {
            points.sort_by(|a, b| a.0.total_cmp(&b.0));
            let mut heights: Vec<f64> = points.iter().map(|point| point.1).collect();
            heights.sort_by(|a, b| {
                if falls {
                    b.total_cmp(a)
                } else {
                    a.total_cmp(b)
                }
            });
            let points = points.iter().zip(heights).map(|((flow, _), height)| {
                json!({
                    "flow": { "value": flow, "unit": "gpm" },
                    of: { "value": height, "unit": unit }
                })
            });
            Some(Value::Array(points.collect()))
        })
        .boxed()
}

fn pipe() -> BoxedStrategy<Value> {
    const SIZES: &[&str] = &["3/4", "1", "1-1/4", "2", "3"];
    prop_oneof![
        (
            prop::sample::select(SIZES),
            prop::sample::select(&["9", "11", "17"][..])
        )
            .prop_map(|(size, sdr)| json!({ "standard": "ips_pe", "size": size, "sdr": sdr })),
        prop::sample::select(&[25_u32, 32, 40, 63, 110][..])
            .prop_map(|mm| json!({ "standard": "metric_pe", "outside_mm": mm, "sdr": "11" })),
        prop::sample::select(SIZES)
            .prop_map(|size| json!({ "standard": "copper_l", "size": size })),
        (0.1..120.0_f64).prop_map(|bore| json!({
            "standard": "plain", "inside_diameter": { "value": bore, "unit": "in" }
        })),
    ]
    .boxed()
}

fn circuits() -> Field {
    let group = (1..30_u32, pipe(), 1.0..5_000.0_f64).prop_map(|(count, pipe, feet)| {
        json!({ "count": count, "pipe": pipe, "length": { "value": feet, "unit": "ft" } })
    });
    prop::collection::vec(group, 0..4)
        .prop_map(|groups| Some(Value::Array(groups)))
        .boxed()
}

fn runs() -> Field {
    let run = (pipe(), 0.1..2_000.0_f64).prop_map(
        |(pipe, feet)| json!({ "pipe": pipe, "length": { "value": feet, "unit": "ft" } }),
    );
    prop::collection::vec(run, 0..3)
        .prop_map(|runs| Some(Value::Array(runs)))
        .boxed()
}

fn flow_centre() -> Field {
    let tank = object(vec![
        ("kind", Just(Some(json!("sealed_with_tank"))).boxed()),
        ("tank_volume", number(0.1, 10_000.0, "gal")),
        ("pre_charge", number(-14.7, 100.0, "psi")),
    ]);
    let open = object(vec![
        ("kind", Just(Some(json!("non_pressurised"))).boxed()),
        ("reservoir_diameter", number(0.1, 120.0, "in")),
    ]);
    prop::option::weighted(
        0.8,
        prop_oneof![Just(json!({ "kind": "sealed" })), tank, open],
    )
    .boxed()
}

fn system() -> BoxedStrategy<Value> {
    let exchanger = object(vec![
        ("kind", one_of(&["coaxial", "brazed_plate"])),
        ("curve", curve("drop", false, 30.0, "psi")),
        ("curve_temperature", number(-40.0, 212.0, "degF")),
        ("clean_conductance", number(1.0, 1e7, "W/K")),
        ("volume", number(0.1, 100.0, "gal")),
    ]);
    let unit = object(vec![
        ("heating_capacity", number(0.05, 1_000.0, "ton")),
        ("cooling_capacity", number(0.05, 1_000.0, "ton")),
        ("heating_cop", number(1.0, 15.0, "1")),
        ("cooling_cop", number(1.0, 15.0, "1")),
        ("rated_flow", number(0.1, 3_000.0, "gpm")),
        ("freeze_guard", number(-40.0, 60.0, "degF")),
        ("exchanger", maybe(exchanger)),
    ]);
    let circulator = object(vec![
        ("curve", curve("head", true, 80.0, "ft")),
        ("speed", number(5.0, 120.0, "%")),
        ("rated_power", number(1.0, 100_000.0, "W")),
        ("minimum_suction", number(-14.7, 100.0, "psi")),
    ]);
    let ground = object(vec![
        ("kind", one_of(&["vertical", "horizontal", "pond"])),
        ("circuits", circuits()),
        ("headers", runs()),
    ]);
    const KINDS: &[&str] = &[
        "water",
        "propylene_glycol",
        "ethylene_glycol",
        "methanol",
        "ethanol",
    ];
    let fluid =
        (prop::sample::select(KINDS), number(0.0, 100.0, "%")).prop_map(
            |(kind, share)| match share {
                Some(share) => json!({ "kind": kind, "volume_fraction": share }),
                None => json!({ "kind": kind }),
            },
        );
    object(vec![
        ("installed_on", day()),
        ("heat_pump", maybe(unit)),
        ("flow_centre", flow_centre()),
        (
            "circulators",
            prop::collection::vec(circulator, 0..3)
                .prop_map(|all| Some(Value::Array(all)))
                .boxed(),
        ),
        ("circulator_piping", one_of(&["series", "parallel"])),
        ("ground", maybe(ground)),
        ("indoor", runs()),
        ("fluid", maybe(fluid.boxed())),
        ("strainer", flag()),
        ("check_valves", flag()),
    ])
}

fn commissioning() -> BoxedStrategy<Value> {
    object(vec![
        ("date", day()),
        ("flush_recorded", flag()),
        ("flushed", flag()),
        ("flush_flow", number(0.0, 3_000.0, "gpm")),
        ("flush_velocity", number(0.0, 50.0, "ft/s")),
        ("flush_duration", number(0.0, 2_000.0, "h")),
        ("cart_power", number(0.01, 200.0, "hp")),
        ("circuits_flushed_singly", flag()),
        ("dead_head_drop", number(-5.0, 200.0, "in")),
        ("pipe_relaxed", flag()),
        ("charge_pressure", number(-14.7, 300.0, "psi")),
        ("charge_date", day()),
        ("charge_temperature", number(-40.0, 212.0, "degF")),
        ("antifreeze_volume", number(0.0, 100_000.0, "gal")),
        ("mix_duration", number(0.0, 2_000.0, "h")),
    ])
}

/// A reading anywhere that an instrument could show.
fn reading() -> BoxedStrategy<Value> {
    let points = prop::sample::select(ReadingPoint::ALL);
    let share = prop_oneof![1 => Just(0.0), 1 => Just(1.0), 6 => 0.0..=1.0_f64];
    let mode = one_of(&["idle", "pumps_only", "heating", "cooling"]);
    let instrument = prop::option::of(prop::sample::select(&Instrument::ALL[..]));
    let time = prop::option::of((1..13_u32, 1..29_u32, 0..24_u32));
    let left = prop::bool::weighted(0.1);
    let circuit = prop::option::of(1..9_u32);
    let likely = any::<bool>();
    (points, share, mode, instrument, time, left, circuit, likely)
        .prop_map(
            |(point, share, mode, instrument, time, left, circuit, likely)| {
                let bounds = point.bounds();
                let (low, high) = if likely {
                    bounds.likely
                } else {
                    bounds.possible
                };
                let mut reading = json!({
                    "point": point.id(),
                    "value": { "value": low + share * (high - low), "unit": bounds.unit.symbol() }
                });
                let fields = [
                    ("mode", mode),
                    ("instrument", instrument.map(|with| json!(with.id()))),
                    (
                        "taken_at",
                        time.map(|(m, d, h)| {
                            json!(format!("2026-{m:02}-{d:02}T{h:02}:00:00-05:00"))
                        }),
                    ),
                    ("phase", left.then(|| json!("left"))),
                    ("circuit", circuit.map(Value::from)),
                ];
                for (name, value) in fields {
                    if let Some(value) = value {
                        reading[name] = value;
                    }
                }
                reading
            },
        )
        .boxed()
}

fn document() -> BoxedStrategy<Value> {
    let readings = prop::collection::vec(reading(), 0..24);
    let cart = number(0.1, 120.0, "in");
    let wanted = number(-60.0, 40.0, "degF");
    let site = number(-1_500.0, 20_000.0, "ft");
    (
        system(),
        commissioning(),
        readings,
        day(),
        cart,
        wanted,
        site,
    )
        .prop_map(
            |(system, commissioning, readings, day, cart, wanted, elevation)| {
                let mut visit = json!({ "readings": readings, "means": {} });
                if let Some(day) = day {
                    visit["date"] = day;
                }
                if let Some(diameter) = cart {
                    visit["means"]["cart"] = json!({ "reservoir_diameter": diameter });
                }
                if let Some(wanted) = wanted {
                    visit["means"]["wanted_freeze_point"] = wanted;
                }
                let mut document = json!({
                    "format": FORMAT, "version": 1,
                    "system": system, "commissioning": commissioning, "visit": visit
                });
                if let Some(elevation) = elevation {
                    document["site"] = json!({ "name": "invented", "elevation": elevation });
                }
                document
            },
        )
        .boxed()
}

fn today() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 7, 1).expect("a day")
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_visit_file_gives_sound_evidence(document in document()) {
        let bytes = document.to_string();
        let file = match visit_file::read(bytes.as_bytes(), &Anything) {
            Ok(file) => file,
            // What the records refuse never gets here.
            Err(_) => return Err(TestCaseError::reject("refused by the records")),
        };
        let graph = shipped::load().expect("a sound graph");
        let model = LoopModel::of(&file);
        let gathered = gather(&file, &model, &graph, today());
        for observation in &gathered.case.observations {
            let weights = observation.likelihood.weights();
            prop_assert!(
                weights.iter().all(|weight| weight.is_finite() && *weight > 0.0),
                "{}: {weights:?}", observation.finding
            );
        }
        let words = catalog(Language::English);
        for why in &gathered.explained {
            for figure in [why.measured, why.expected] {
                prop_assert!(figure.si.is_finite() && figure.standard >= 0.0, "{why:?}");
            }
            prop_assert!(words.has(&format!("why-{}", why.reasoning.formula)), "{why:?}");
            for (input, figure) in &why.reasoning.inputs {
                prop_assert!(words.has(&format!("input-{input}")), "{input}");
                prop_assert!(figure.si.is_finite(), "{why:?}");
            }
        }
        let mut unused: Vec<usize> = gathered.unused.iter().filter_map(|unused| match unused {
            Unused::Reading { place, .. } => Some(*place),
            Unused::Answer { .. } | Unused::Verdict { .. } => None,
        }).collect();
        unused.dedup();
        prop_assert!(unused.iter().all(|place| *place < file.visit.readings.len()));
        prop_assert!(Inference::new(&graph, &gathered.case).is_ok());
        let again = gather(&file, &model, &graph, today());
        prop_assert_eq!(again.case, gathered.case);
    }
}

#[test]
fn nothing_known_is_no_evidence() {
    let document = json!({ "format": FORMAT, "version": 1, "visit": {} });
    let file = visit_file::read(document.to_string().as_bytes(), &Anything).expect("readable");
    let graph = shipped::load().expect("a sound graph");
    let april = NaiveDate::from_ymd_opt(2026, 4, 20).expect("a day");
    let gathered = gather(&file, &LoopModel::of(&file), &graph, april);
    assert!(gathered.case.observations.is_empty());
    assert!(gathered.case.facts.is_empty());
}
