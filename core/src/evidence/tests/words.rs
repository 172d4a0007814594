use super::*;
use crate::text::{Language, catalog};

const SOURCES: &[&str] = &[
    include_str!("../evaluators/air.rs"),
    include_str!("../evaluators/circuits.rs"),
    include_str!("../evaluators/computed.rs"),
    include_str!("../evaluators/flow.rs"),
    include_str!("../evaluators/freeze.rs"),
    include_str!("../evaluators/pressure.rs"),
    include_str!("../evaluators/pump.rs"),
    include_str!("../evaluators/solids.rs"),
    include_str!("../evaluators/split.rs"),
    include_str!("../evaluators/tank.rs"),
    include_str!("../evaluators/trend.rs"),
    include_str!("../evaluators/unit.rs"),
    include_str!("../evaluators/water.rs"),
];

/// Text literals that stand first after an opening.
fn literals(opening: &'static str) -> Vec<&'static str> {
    SOURCES
        .iter()
        .flat_map(|source| source.split(opening).skip(1))
        .filter_map(|rest| rest.trim_start().strip_prefix('"')?.split('"').next())
        .collect()
}

#[test]
fn every_reason_written_in_the_evaluators_has_its_words() {
    let words = catalog(Language::English);
    let handed_on = [
        "entering-water-heating",
        "entering-water-cooling",
        "usual-superheat",
        "usual-subcooling",
        "water-hardness-guide",
        "water-iron-guide",
        "water-manganese-guide",
        "water-chloride-guide",
        "water-sulphate-guide",
        "water-ph-guide",
        "fluid-ph-guide",
    ];
    let formulas = literals("Reasoning::new(");
    assert!(formulas.len() > 25, "{}", formulas.len());
    for formula in formulas.into_iter().chain(handed_on) {
        assert!(words.has(&format!("why-{formula}")), "{formula}");
    }
    let inputs = literals(".with(");
    assert!(inputs.len() > 25, "{}", inputs.len());
    for input in inputs {
        assert!(words.has(&format!("input-{input}")), "{input}");
    }
}

#[test]
fn every_code_has_its_words() {
    let words = catalog(Language::English);
    for why in [
        WhyUnused::AsLeft,
        WhyUnused::WrongMode,
        WhyUnused::InstrumentCannotTell,
        WhyUnused::Earlier,
        WhyUnused::NeedsCompanion,
        WhyUnused::NotAsked,
        WhyUnused::Unknown,
    ] {
        assert!(words.has(&format!("unused-{}", why.code())));
    }
    for basis in [
        SeasonBasis::Mode,
        SeasonBasis::EnteringWater,
        SeasonBasis::NorthernDate,
    ] {
        assert!(words.has(&format!("season-{}", basis.id())));
    }
}

#[test]
fn the_shipped_graph_and_the_evaluators_know_each_other() {
    let graph = crate::diagnosis::shipped::load().expect("a sound graph");
    for finding in graph.findings() {
        if let crate::diagnosis::EvidenceKind::Evaluator(name) = &finding.evidence {
            let evaluator = Evaluator::named(name);
            let graded = evaluator.map(|evaluator| evaluator.graded);
            assert_eq!(graded, Some(finding.scale.count() == 3), "{}", finding.id);
        }
    }
    for evaluator in evaluators::ALL {
        let asked = graph.findings().iter().any(|finding| {
            matches!(&finding.evidence, crate::diagnosis::EvidenceKind::Evaluator(name) if name == evaluator.name)
        });
        assert!(asked, "nothing asks for {}", evaluator.name);
    }
}

#[test]
fn the_shipped_graph_knows_every_fact() {
    let graph = crate::diagnosis::shipped::load().expect("a sound graph");
    let file = file(
        rich(),
        json!({
            "flush_recorded": false, "flushed": true, "flush_flow": value(12.0, "gpm"),
            "flush_duration": value(2.0, "h"), "cart_power": value(1.0, "hp"),
            "circuits_flushed_singly": false, "heat_pump_isolated": true, "filtered": false,
            "dead_head_drop": value(1.0, "in"), "circulators_bled": true, "water_tested": true,
            "water_source": "mains", "pipe_relaxed": true, "charge_pressure": value(50.0, "psi"),
            "mix_duration": value(4.0, "h"), "concentration_checked": true, "date": "2025-10-01"
        }),
        json!({ "date": "2026-01-20" }),
    );
    let known = facts(&file, &LoopModel::of(&file), today());
    assert!(known.len() > 28, "{}", known.len());
    for fact in known.keys() {
        assert!(graph.facts().contains(fact), "{fact}");
    }
}
