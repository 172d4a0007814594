use super::*;
use crate::records::{Level, PlainMeasure};
use crate::text::{Language, catalog};
use crate::units::Unit;
use serde_json::json;

struct Words;
impl Vocabulary for Words {
    fn answers(&self, finding: &str) -> Option<&[Level]> {
        (finding == "gurgling").then_some(&[Level::Yes, Level::No])
    }
    fn has_cause(&self, cause: &str) -> bool {
        cause == "air_in_circuit"
    }
    fn has_check(&self, _: &str) -> bool {
        false
    }
    fn close_to(&self, _: &str) -> Vec<String> {
        vec!["gurgling".to_owned()]
    }
}

fn faults(document: &Value) -> Vec<Fault> {
    read(document.to_string().as_bytes(), &Words).expect_err("must be refused")
}

fn paths(faults: &[Fault]) -> Vec<&str> {
    faults.iter().map(|fault| fault.path.as_str()).collect()
}

fn minimal() -> Value {
    json!({ "format": FORMAT, "version": 1, "visit": {} })
}

#[test]
fn everything_may_be_unknown() {
    let file = read(minimal().to_string().as_bytes(), &Words).expect("readable");
    assert_eq!(file, VisitFile::default());
}

#[test]
fn writing_and_reading_return_the_same_file() {
    let document = json!({
        "format": FORMAT, "version": 1,
        "site": { "name": "Invented farm", "elevation": { "value": 1200.0, "unit": "ft" } },
        "system": {
            "flow_centre": { "kind": "sealed" },
            "ground": { "kind": "vertical", "circuits": [{
                "count": 3, "length": { "value": 500.0, "unit": "ft" },
                "pipe": { "standard": "ips_pe", "size": "1", "sdr": "11" }
            }] },
            "fluid": { "kind": "methanol", "volume_fraction": { "value": 20.0, "unit": "%" } }
        },
        "visit": {
            "date": "2026-08-14",
            "answers": [{ "finding": "gurgling", "is": "yes" }],
            "readings": [{
                "point": "static_pressure", "value": { "value": 8.0, "unit": "psi" },
                "instrument": "dial_gauge", "mode": "idle", "phase": "found",
                "taken_at": "2026-08-14T09:30:00-05:00"
            }],
            "means": {}
        }
    });
    let file = read(document.to_string().as_bytes(), &Words).expect("readable");
    let again = read(write(&file).to_string().as_bytes(), &Words).expect("readable again");
    assert_eq!(file, again);
    assert_eq!(
        file.visit.readings[0].value(),
        PlainMeasure {
            value: 8.0,
            unit: Unit::Psi
        }
    );
}

#[test]
fn every_fault_is_reported_at_once_with_its_path() {
    let mut document = minimal();
    document["system"] = json!({
        "colour": "green",
        "ground": { "circuits": [{
            "count": 0, "length": { "value": 500, "unit": "furlong" },
            "pipe": { "standard": "ips_pe", "size": "5", "sdr": "11" }
        }] }
    });
    document["visit"]["readings"] =
        json!([{ "point": "flow", "value": { "value": 7, "unit": "psi" } }]);
    let faults = faults(&document);
    let mut found = paths(&faults);
    found.sort_unstable();
    assert_eq!(
        found,
        [
            "system.colour",
            "system.ground.circuits[0].count",
            "system.ground.circuits[0].length.unit",
            "system.ground.circuits[0].pipe.size",
            "visit.readings[0].value.unit",
        ]
    );
    let unit = faults
        .iter()
        .find(|fault| fault.path.starts_with("visit"))
        .expect("found above");
    assert_eq!(
        (unit.code, unit.found.as_str()),
        (FaultCode::NotAccepted, "psi")
    );
    assert_eq!(unit.accepted, "gpm, L/s, L/min, m3/h, m3/s");
}

#[test]
fn a_choice_by_tag_is_explained_by_the_branch_that_was_meant() {
    let mut document = minimal();
    document["system"] = json!({ "flow_centre": { "kind": "sealed_with_tank", "pre_charge": 20 } });
    assert_eq!(paths(&faults(&document)), ["system.flow_centre.pre_charge"]);
    document["system"] = json!({ "flow_centre": { "kind": "open" } });
    let faults = faults(&document);
    assert_eq!(paths(&faults), ["system.flow_centre.kind"]);
    assert_eq!(
        faults[0].accepted,
        "sealed, sealed_with_tank, non_pressurised"
    );
}

#[test]
fn values_that_cannot_be_are_refused_after_conversion() {
    let mut document = minimal();
    document["visit"]["readings"] = json!([
        { "point": "static_pressure", "value": { "value": -2.0, "unit": "bar" } },
        { "point": "entering_water", "value": { "value": 320, "unit": "degC" } }
    ]);
    document["system"] = json!({ "heat_pump": { "rated_flow": { "value": -3, "unit": "gpm" } } });
    let faults = faults(&document);
    assert_eq!(
        paths(&faults),
        [
            "visit.readings[0].value.value",
            "visit.readings[1].value.value",
            "system.heat_pump.rated_flow.value"
        ]
    );
    assert!(
        faults
            .iter()
            .all(|fault| fault.code == FaultCode::OutOfRange)
    );
    assert!(faults[0].accepted.contains("bar"), "{}", faults[0].accepted);
}

#[test]
fn names_are_held_to_the_rule_graph() {
    let mut document = minimal();
    document["visit"]["answers"] = json!([
        { "finding": "gurgle", "is": "yes" },
        { "finding": "gurgling", "is": "low" }
    ]);
    let faults = faults(&document);
    assert_eq!(
        paths(&faults),
        ["visit.answers[0].finding", "visit.answers[1].is"]
    );
    assert_eq!(faults[1].accepted, "yes, no");
}

#[test]
fn documents_that_are_no_visit_file_get_one_clear_fault() {
    let code = |bytes: &[u8]| {
        let faults = read(bytes, &Words).expect_err("must be refused");
        assert_eq!(faults.len(), 1, "{faults:?}");
        faults[0].code
    };
    assert_eq!(code(b""), FaultCode::Empty);
    assert_eq!(code(b" \n"), FaultCode::Empty);
    assert_eq!(code(b"{\"format\": \"returnline-vi"), FaultCode::Truncated);
    assert_eq!(code(b"pressure: 55"), FaultCode::NotJson);
    assert_eq!(code(&[0xff, 0xfe, 0x00]), FaultCode::NotJson);
    assert_eq!(code(b"[]"), FaultCode::NotAVisitFile);
    assert_eq!(
        code(b"{\"format\":\"returnline-visit\",\"version\":2}"),
        FaultCode::NewerVersion
    );
    assert_eq!(code(&vec![b' '; MAX_BYTES + 1]), FaultCode::TooLarge);
    let deep = "[".repeat(100_000);
    assert_eq!(code(deep.as_bytes()), FaultCode::NotJson);
}

#[test]
fn every_fault_has_a_message_that_repeats_what_it_knows() {
    let fault = Fault::at("visit.date", FaultCode::Malformed, "14 August", "date");
    let message = fault.message(catalog(Language::English));
    for part in ["visit.date", "14 August", "date"] {
        assert!(message.contains(part), "{message}");
    }
}

#[test]
fn dates_that_do_not_exist_are_refused() {
    let mut document = minimal();
    document["visit"]["date"] = json!("2026-02-30");
    assert_eq!(paths(&faults(&document)).len(), 1);
}
