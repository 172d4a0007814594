//! Inference alone, one check weighed, and the full answer to a visit.

use crate::reference::Reference;
use crate::timing::time;
use crate::{Row, Rows};
use chrono::NaiveDate;
use returnline_core::api::{Call, NetworkFormat, Wording, read_visit_file};
use returnline_core::diagnosis::{
    Case, FindingId, FindingIx, Graph, Inference, Likelihood, Observation, Scale, shipped, to_bif,
};
use returnline_tests::invented::Dice;
use returnline_tests::simulator::call::Effort;
use returnline_tests::simulator::trial::{Setting, case, read, simulated};
use serde_json::{Value, json};
use std::error::Error;

/// 75 findings hold what a visit holds on which every sign is asked.
const READINGS: [usize; 5] = [1, 10, 40, 75, 100];
/// The sample calls.
const SAMPLES: [&str; 3] = [
    "pressure-lost-over-summer",
    "freeze-guard-trips",
    "air-in-one-circuit",
];
const SAMPLE_FOLDER: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../core/data/samples");
/// Simulated visits, by their seeds.
const FULL_VISITS: [u64; 3] = [1, 2, 3];
const PYAGRUM: &str = "pyAgrum, same graph and evidence";

pub fn rows(reference: &Reference) -> Rows {
    let graph = shipped::load().map_err(|problems| format!("{problems:?}"))?;
    let mut rows = Vec::new();
    for readings in READINGS {
        rows.push(posteriors(reference, &graph, readings)?);
    }
    for readings in READINGS {
        rows.push(one_check(reference, &graph, readings)?);
    }
    for (name, case) in visits()? {
        let work = format!("{name}: {}", case.observations.len());
        rows.push(every_node(
            reference,
            &graph,
            "inference, a call as it is",
            work,
            &case,
        )?);
    }
    for answers in READINGS {
        rows.push(full_visit(reference, &graph, answers)?);
    }
    Ok(rows)
}

/// Every finding in an order by chance, the same for each size, so that the
/// smaller cases are part of the larger.
fn shuffled(graph: &Graph) -> (Vec<FindingIx>, Dice) {
    let mut dice = Dice::new(8);
    let mut places: Vec<FindingIx> = graph.finding_places().collect();
    for at in (1..places.len()).rev() {
        places.swap(at, dice.below(at + 1));
    }
    (places, dice)
}

/// Soft evidence by chance on so many findings, and what was not seen.
fn seen(graph: &Graph, readings: usize) -> Result<(Case, Vec<FindingIx>), Box<dyn Error>> {
    let (places, mut dice) = shuffled(graph);
    let mut case = Case::default();
    for &place in places.iter().take(readings) {
        let finding = graph.finding(place);
        let mut weight = || dice.between(0.02, 1.0);
        let likelihood = match finding.scale {
            Scale::Graded => Likelihood::graded(weight(), weight(), weight())?,
            Scale::NormallyAbsent | Scale::NormallyPresent => {
                Likelihood::presence(weight(), weight())?
            }
        };
        let id = FindingId::new(finding.id.as_str());
        case.observations.push(Observation::new(id, likelihood));
    }
    Ok((case, places.into_iter().skip(readings).collect()))
}

/// Causes, mechanisms and findings, from the case to their probabilities.
fn posteriors(
    reference: &Reference,
    graph: &Graph,
    readings: usize,
) -> Result<Row, Box<dyn Error>> {
    let (case, _) = seen(graph, readings)?;
    every_node(
        reference,
        graph,
        "inference, every node",
        format!("{readings} readings"),
        &case,
    )
}

/// Calls as they are: the samples, and simulated ones in which everything that an
/// ordinary visit has was read and looked for. Complaints are evidence like other
/// signs; that somebody called at all is left out, for with the exported chain of
/// all causes that leads to it the library beside us needs more memory than there is.
fn visits() -> Result<Vec<(String, Case)>, Box<dyn Error>> {
    let mut all: Vec<(String, Case)> = Vec::new();
    for sample in SAMPLES {
        let text = std::fs::read(format!("{SAMPLE_FOLDER}/{sample}.json"))?;
        let file = read_visit_file(&text, Wording::default()).map_err(|error| error.message)?;
        all.push((sample.to_owned(), case(&file)));
    }
    let setting = Setting {
        effort: Effort::FULL,
        lying: false,
        follow: 0,
        alike: true,
    };
    for seed in FULL_VISITS {
        all.push((
            format!("simulated {seed}"),
            case(&read(&simulated(setting, true, seed))),
        ));
    }
    for (_, case) in &mut all {
        case.called = false;
    }
    Ok(all)
}

/// Every node of a case, against its network as exported.
fn every_node(
    reference: &Reference,
    graph: &Graph,
    what: &'static str,
    work: String,
    case: &Case,
) -> Result<Row, Box<dyn Error>> {
    let bif = reference.file("case.bif");
    std::fs::write(&bif, to_bif(graph, case)?)?;
    Inference::new(graph, case)?;
    Ok(Row {
        what,
        work,
        own: time(|| Inference::new(graph, case).map(|inference| inference.findings())),
        beside: reference.time(PYAGRUM, "posteriors", &json!({ "bif": bif }))?,
    })
}

/// What one check would tell about every cause, from the case on.
fn one_check(reference: &Reference, graph: &Graph, readings: usize) -> Result<Row, Box<dyn Error>> {
    let (case, hidden) = seen(graph, readings)?;
    let asked = *hidden.first().ok_or("every finding was seen")?;
    let finding = graph.finding(asked);
    let bif = reference.file("case.bif");
    std::fs::write(&bif, to_bif(graph, &case)?)?;
    Inference::new(graph, &case)?;
    let causes: Vec<&str> = graph.causes().iter().map(|c| c.id.as_str()).collect();
    let question = json!({
        "bif": bif,
        "causes": causes,
        "asked": finding.id,
        "levels": finding.scale.count(),
        "reliability": finding.reliability,
        "instrument": finding.instrument.map(|place| graph.cause(place).id.clone()),
    });
    Ok(Row {
        what: "one check, bits per cause",
        work: format!("{readings} readings"),
        own: time(|| {
            Inference::new(graph, &case).map(|inference| inference.report_information(&[asked]))
        }),
        beside: reference.time("pyAgrum, same check and causes", "check", &question)?,
    })
}

/// A visit with so many answers by chance: read, worked out, worded, with reasons,
/// every check weighed and a plan.
fn full_visit(reference: &Reference, graph: &Graph, answers: usize) -> Result<Row, Box<dyn Error>> {
    let (places, mut dice) = shuffled(graph);
    let given: Vec<Value> = places
        .iter()
        .take(answers)
        .map(|&place| {
            let finding = graph.finding(place);
            let is = match finding.scale {
                Scale::Graded => ["low", "normal", "high"][dice.below(3)],
                Scale::NormallyAbsent | Scale::NormallyPresent => ["yes", "no"][dice.below(2)],
            };
            json!({ "finding": finding.id, "is": is })
        })
        .collect();
    let text = json!({
        "format": "returnline-visit", "version": 1,
        "site": { "name": "Bench Hill (invented)" },
        "visit": { "date": "2026-10-14", "answers": given }
    })
    .to_string();
    let wording = Wording::default();
    let worked = || -> Result<Call, Box<dyn Error>> {
        let file = read_visit_file(text.as_bytes(), wording).map_err(|error| error.message)?;
        let call = Call::assess(&file, NaiveDate::default(), wording);
        call.answer();
        Ok(call)
    };
    let call = worked()?;
    call.diagnosis()
        .ok_or("the answers contradict themselves")?;
    let network = call
        .network(NetworkFormat::Bif)
        .map_err(|error| error.message)?;
    let bif = reference.file("visit.bif");
    std::fs::write(&bif, network)?;
    Ok(Row {
        what: "full visit, all checks, plan",
        work: format!("{answers} answers"),
        own: time(|| worked().is_ok()),
        beside: reference.time(
            "pyAgrum, its probabilities alone",
            "posteriors",
            &json!({ "bif": bif }),
        )?,
    })
}
