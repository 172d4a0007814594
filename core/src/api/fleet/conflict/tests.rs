use super::lines::flatten;
use super::*;
use crate::api::read_visit_file;
use crate::api::tests::{engine, started};
use crate::api::types::{ExchangeChoice, FieldEntry, ReadingEntry};
use std::collections::BTreeMap;

const FULL: &[u8] = include_bytes!("../../../../data/samples/air-in-one-circuit.json");

/// A system with what no form asks for.
const FURTHER: &[u8] = br#"{"format":"returnline-visit","version":1,
"system":{"heat_pump":{"exchanger":{"curve":[
    {"flow":{"value":6,"unit":"gpm"},"drop":{"value":1.5,"unit":"psi"}},
    {"flow":{"value":9,"unit":"gpm"},"drop":{"value":3.1,"unit":"psi"}}]}},
  "flow_centre":{"kind":"sealed_with_tank","pre_charge":{"value":30,"unit":"psi"}},
  "circulators":[{"rated_power":{"value":100,"unit":"W"}},{"rated_power":{"value":245,"unit":"W"}}],
  "ground":{"headers":[{"pipe":{"standard":"ips_pe","size":"1-1/4","sdr":"11"},
    "length":{"value":80,"unit":"ft"}}]}},
"visit":{"means":{"instruments":["refractometer"]},
  "verdicts":[{"cause":"air-left-in-circuit","confirmed":true,"by_check":"dead-head-test"}],
  "actions":[{"step":"lock-power-off","done":true,"parts":"two tags"}]}}"#;

fn field(engine: &mut Engine, visit: &str, id: &str, text: &str, unit: Option<&str>) {
    let entry = FieldEntry {
        id: id.to_owned(),
        text: Some(text.to_owned()),
        unit: unit.map(str::to_owned),
    };
    engine.set_field(visit, &entry).expect("kept");
}

fn reading(engine: &mut Engine, visit: &str, text: &str) {
    let entry = ReadingEntry {
        id: None,
        point: "static_pressure".to_owned(),
        text: text.to_owned(),
        unit: "psi".to_owned(),
        accuracy: None,
        instrument: None,
        mode: None,
        phase: "found".to_owned(),
        circuit: None,
    };
    engine.put_reading(visit, &entry).expect("kept");
}

#[test]
fn sides_are_told_by_the_names_of_the_forms() {
    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("all.rlx");
    let all = ExchangeChoice {
        visits: Vec::new(),
        systems: Vec::new(),
        without_personal: false,
    };
    let (mut here, mut there) = (engine(), engine());
    let visit = started(&mut here);
    field(&mut here, &visit, "visit.date", "2026-08-14", None);
    here.export_records(&all, &file).expect("written");
    there.import_records(&file).expect("taken");
    for (engine, complaint, capacity, gauge) in [
        (&mut here, "It hums", "3", "27"),
        (&mut there, "It stops", "4", "31"),
    ] {
        field(engine, &visit, "visit.complaint", complaint, None);
        field(
            engine,
            &visit,
            "unit.cooling_capacity",
            capacity,
            Some("ton"),
        );
        reading(engine, &visit, gauge);
    }
    there.export_records(&all, &file).expect("written");
    here.import_records(&file).expect("taken");

    let conflicts = here.record_conflicts().expect("listed");
    let told = |kind: &str| {
        let conflict = conflicts.iter().find(|conflict| conflict.kind == kind);
        conflict.unwrap_or_else(|| panic!("no {kind} in {conflicts:?}"))
    };
    for (kind, name, values) in [
        ("words", "What the customer says", ["It hums", "It stops"]),
        ("system", "Cooling capacity", ["3 ton", "4 ton"]),
    ] {
        let conflict = told(kind);
        let mut said = Vec::new();
        for side in &conflict.sides {
            let [[told, value]] = side.differs.as_slice() else {
                panic!("{conflict:?}");
            };
            assert_eq!(told, name);
            said.push(value.as_str());
        }
        said.sort_unstable();
        assert_eq!(said, values);
    }
    let visit = told("visit");
    assert_eq!(visit.title, "Visit: Invented farm, 2026-08-14");
    let name = "Loop gauge, at rest, As found";
    for side in &visit.sides {
        let [line] = side.differs.as_slice() else {
            panic!("{visit:?}");
        };
        assert_eq!(line[0], name);
        let values = ["27 psi · dial gauge", "31 psi · dial gauge"];
        assert!(values.contains(&&*line[1]), "{line:?}");
    }
    let here_and_there = visit
        .sides
        .iter()
        .map(|side| side.noted.contains("this device"));
    assert_eq!(here_and_there.filter(|here| *here).count(), 1, "{visit:?}");
}

#[test]
fn what_a_side_lacks_is_told_as_not_noted() {
    let line = |name: &str, value: &str| (name.to_owned(), value.to_owned());
    let (one, other) = (vec![line("Fluid", "methanol")], vec![]);
    let told = engine().differing(&other, &[one, other.clone()]);
    assert_eq!(told, [["Fluid".to_owned(), "not noted".to_owned()]]);
}

#[test]
fn nothing_that_a_call_holds_goes_untold_and_nothing_is_told_by_its_path() {
    let engine = engine();
    for written in [FULL, FURTHER] {
        let file = read_visit_file(written, crate::api::Wording::default()).expect("a call");
        let lines = engine.file_lines(&file);
        for (name, value) in &lines {
            let dotted = name
                .split('.')
                .skip(1)
                .any(|rest| rest.starts_with(char::is_alphanumeric));
            let path = dotted || name.contains(['_', '/']);
            assert!(!path && !value.is_empty(), "{name:?}: {value:?}");
        }
        let all = lines
            .iter()
            .map(|(_, value)| value.as_str())
            .collect::<Vec<_>>()
            .join("\n");
        let mut leaves = BTreeMap::new();
        flatten("", &crate::records::visit_file::write(&file), &mut leaves);
        for (place, value) in leaves {
            let number = value.ends_with("psi") || value.ends_with("gpm") || value.ends_with('W');
            assert!(
                !number || all.contains(&value),
                "{place}: {value} is not in\n{all}"
            );
        }
    }
    let file = read_visit_file(FURTHER, crate::api::Wording::default()).expect("a call");
    let lines = engine.file_lines(&file);
    for (name, value) in [
        (
            "Heat pump: points of the curve",
            "1.5 psi · 6 gpm · 3.1 psi · 9 gpm",
        ),
        (
            "Flow centre and circulators: pre-charge of the tank",
            "30 psi",
        ),
        ("Your tools and licences: instruments", "refractometer"),
        (
            "Air left in the loop at filling",
            "Confirmed · Dead-head test",
        ),
    ] {
        let told = lines.iter().find(|(known, _)| known == name);
        let told = told.unwrap_or_else(|| panic!("{name} is not in {lines:#?}"));
        assert!(told.1.starts_with(value), "{told:?}");
    }
}
