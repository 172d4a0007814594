//! Fill water and the health of the fluid.

use super::Evaluator;
use crate::evidence::call::{Call, State, Taken};
use crate::evidence::evaluation::{Beside, Compared, Evaluation};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::fluids::FluidKind;
use crate::records::ReadingPoint;
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{ElectricalConductivity, MassConcentration, Number, Quantity, Temperature};
use crate::water::{INDEX_DOUBT, WaterSample, indices};

/// Langelier's index. Judgement about the width; above zero carbonate can come out.
const LANGELIER: Levels = Levels::presence(&[(-4.0, 0.3)], &[(0.1, 3.0)]);
/// Hardness of water for glycol, mg/L as CaCO₃: below 100 by several trade
/// bulletins on inhibited glycol. The overlap is judgement.
const HARDNESS: Levels = Levels::presence(&[(0.0, 150.0)], &[(100.0, 400.0), (300.0, 2_000.0)]);
/// Iron, mg/L: 0.3 by the secondary standards of the US EPA, from memory.
const IRON: Levels = Levels::presence(&[(0.0, 0.35)], &[(0.25, 3.0), (2.0, 50.0)]);
/// Manganese, mg/L: 0.05 by the secondary standards of the US EPA, from memory.
const MANGANESE: Levels = Levels::presence(&[(0.0, 0.06)], &[(0.04, 0.5), (0.3, 10.0)]);
/// Chloride, mg/L: 25 in water for glycol (trade bulletins), 250 by the
/// secondary standards of the US EPA, from memory.
const CHLORIDE: Levels = Levels::presence(&[(0.0, 120.0)], &[(60.0, 400.0), (250.0, 5_000.0)]);
/// Sulphate, mg/L: as chloride.
const SULPHATE: Levels = Levels::presence(&[(0.0, 150.0)], &[(80.0, 500.0), (250.0, 5_000.0)]);
/// Conductivity, µS/cm: 1,500 for operation with salts by VDI 2035-2, from memory.
const CONDUCTIVITY: Levels =
    Levels::presence(&[(0.0, 1_200.0)], &[(800.0, 4_000.0), (2_500.0, 50_000.0)]);
/// pH of fill water: 6.5 to 8.5 by the secondary standards of the US EPA, from memory.
const WATER_PH: Levels = Levels::presence(&[(6.4, 9.2)], &[(3.0, 6.7)]);
/// pH of the fluid: 7 to 10. Fresh inhibited glycol has 8 to 10 and is treated or
/// replaced towards 7. Common practice, no source.
const FLUID_PH: Levels = Levels::graded(&[(3.0, 7.3)], &[(6.7, 10.3)], &[(9.7, 13.5)]);
const GLYCOL_PH: Levels = Levels::graded(&[(3.0, 7.8)], &[(7.2, 10.3)], &[(9.7, 13.5)]);

pub(super) const SCALING_WATER: Evaluator = Evaluator {
    name: "scaling-water",
    graded: false,
    reads: &[
        ReadingPoint::WaterHardness,
        ReadingPoint::WaterCalcium,
        ReadingPoint::WaterAlkalinity,
        ReadingPoint::WaterDissolvedSolids,
        ReadingPoint::WaterConductivity,
        ReadingPoint::WaterPh,
    ],
    evaluate: scaling,
};
pub(super) const IRON_IN_WATER: Evaluator = Evaluator {
    name: "iron-in-water",
    graded: false,
    reads: &[ReadingPoint::WaterIron, ReadingPoint::WaterManganese],
    evaluate: iron,
};
pub(super) const CORROSIVE_WATER: Evaluator = Evaluator {
    name: "corrosive-water",
    graded: false,
    reads: &[
        ReadingPoint::WaterChloride,
        ReadingPoint::WaterSulphate,
        ReadingPoint::WaterConductivity,
        ReadingPoint::WaterPh,
    ],
    evaluate: corrosive,
};
pub(super) const FLUID_ACIDITY: Evaluator = Evaluator {
    name: "fluid-ph",
    graded: true,
    reads: &[ReadingPoint::FluidPh],
    evaluate: acidity,
};

/// mg/L.
const MILLIGRAM_PER_LITRE: f64 = 1e-3;
/// µS/cm in S/m.
const MICROSIEMENS: f64 = 1e-4;
/// Dissolved solids by conductivity, mg/L per µS/cm, and how loosely. Common
/// practice, no source: 0.5 to 0.8.
const SOLIDS_PER_CONDUCTIVITY: (f64, f64) = (0.65, 0.1);
/// Share of hardness that is calcium where nobody tested it. Judgement.
const CALCIUM_SHARE: (f64, f64) = (0.7, 0.15);

fn read(call: &Call<'_>, point: ReadingPoint) -> Option<Taken> {
    call.best(point, State::Any)
}

fn scaling(call: &Call<'_>) -> Vec<Evaluation> {
    if let Some(by_index) = by_index(call) {
        return vec![by_index];
    }
    let hardness = read(call, ReadingPoint::WaterHardness);
    let calcium = || read(call, ReadingPoint::WaterCalcium);
    hardness
        .or_else(calcium)
        .map(|taken| concentration(&HARDNESS, &taken, 100.0, "water-hardness-guide"))
        .into_iter()
        .collect()
}

/// A concentration against a guide value, mg/L.
fn concentration(levels: &Levels, taken: &Taken, guide: f64, formula: &'static str) -> Evaluation {
    let guide = MassConcentration::from_si(guide * MILLIGRAM_PER_LITRE);
    Evaluation::of(
        levels,
        Compared::Value(
            taken.si / MILLIGRAM_PER_LITRE,
            taken.standard / MILLIGRAM_PER_LITRE,
        ),
        taken,
        Figure::uncertain(taken.uncertain::<MassConcentration>()),
        Figure::exact(guide),
        Reasoning::new(formula, Authority::CommonPractice),
    )
    .against(Beside::AtMost)
}

/// By Langelier's index, where pH, calcium, alkalinity and solids are known.
fn by_index(call: &Call<'_>) -> Option<Evaluation> {
    let ph = read(call, ReadingPoint::WaterPh)?;
    let alkalinity = read(call, ReadingPoint::WaterAlkalinity)?;
    let calcium = read(call, ReadingPoint::WaterCalcium).or_else(|| {
        let hardness = read(call, ReadingPoint::WaterHardness)?;
        let (share, spread) = CALCIUM_SHARE;
        let standard = (hardness.standard * share).hypot(hardness.si * spread);
        Some(Taken {
            si: hardness.si * share,
            standard,
            ..hardness
        })
    })?;
    let solids = read(call, ReadingPoint::WaterDissolvedSolids).or_else(|| {
        let conductivity = read(call, ReadingPoint::WaterConductivity)?;
        let (factor, spread) = SOLIDS_PER_CONDUCTIVITY;
        let per = MILLIGRAM_PER_LITRE / MICROSIEMENS;
        let standard = (conductivity.standard * factor).hypot(conductivity.si * spread);
        Some(Taken {
            si: conductivity.si * factor * per,
            standard: standard * per,
            ..conductivity
        })
    })?;
    let inputs = (
        ph.uncertain::<Number>(),
        solids.uncertain::<MassConcentration>(),
        calcium.uncertain::<MassConcentration>(),
        alkalinity.uncertain::<MassConcentration>(),
    );
    let index = propagate(inputs, |(ph, dissolved_solids, calcium, alkalinity)| {
        indices(&WaterSample {
            ph,
            temperature: Temperature::from_celsius(25.0),
            dissolved_solids,
            calcium,
            alkalinity,
        })
        .map(|indices| indices.langelier)
    })
    .ok()?
    .result;
    let spread = index.standard().hypot(INDEX_DOUBT);
    let reasoning = Reasoning::new("langelier", Authority::CommonPractice)
        .with("water-ph", Figure::uncertain(inputs.0))
        .with("water-solids", Figure::uncertain(inputs.1))
        .with("water-calcium", Figure::uncertain(inputs.2))
        .with("water-alkalinity", Figure::uncertain(inputs.3));
    let evaluation = Evaluation::of(
        &LANGELIER,
        Compared::Value(index.value().si(), spread),
        &calcium,
        Figure::uncertain(Uncertain::new(index.value(), spread)),
        Figure::exact(Number::from_si(0.0)),
        reasoning,
    )
    .against(Beside::AtMost);
    let others = [ph.readings, alkalinity.readings, solids.readings].concat();
    Some(evaluation.using(&others))
}

fn iron(call: &Call<'_>) -> Vec<Evaluation> {
    let iron = read(call, ReadingPoint::WaterIron)
        .map(|taken| concentration(&IRON, &taken, 0.3, "water-iron-guide"));
    let manganese = read(call, ReadingPoint::WaterManganese)
        .map(|taken| concentration(&MANGANESE, &taken, 0.05, "water-manganese-guide"));
    // One finding, one water: the one that says more.
    strongest([iron, manganese])
}

/// Of several signs of one finding, the one that speaks most for it; if none
/// does, the one that speaks most against it.
fn strongest(signs: impl IntoIterator<Item = Option<Evaluation>>) -> Vec<Evaluation> {
    let bits = |evaluation: &Evaluation| match evaluation.likelihood.weights() {
        [absent, present] => (present / absent).ln(),
        _ => 0.0,
    };
    let all: Vec<Evaluation> = signs.into_iter().flatten().collect();
    let places: Vec<usize> = all.iter().flat_map(|one| one.used.clone()).collect();
    let strongest = all.into_iter().max_by(|a, b| bits(a).total_cmp(&bits(b)));
    strongest
        .map(|strongest| Evaluation {
            used: places,
            ..strongest
        })
        .into_iter()
        .collect()
}

fn corrosive(call: &Call<'_>) -> Vec<Evaluation> {
    let chloride = read(call, ReadingPoint::WaterChloride)
        .map(|taken| concentration(&CHLORIDE, &taken, 25.0, "water-chloride-guide"));
    let sulphate = read(call, ReadingPoint::WaterSulphate)
        .map(|taken| concentration(&SULPHATE, &taken, 25.0, "water-sulphate-guide"));
    let conductivity = read(call, ReadingPoint::WaterConductivity).map(|taken| {
        Evaluation::of(
            &CONDUCTIVITY,
            Compared::Value(taken.si / MICROSIEMENS, taken.standard / MICROSIEMENS),
            &taken,
            Figure::uncertain(taken.uncertain::<ElectricalConductivity>()),
            Figure::exact(ElectricalConductivity::from_si(1_500.0 * MICROSIEMENS)),
            Reasoning::new("water-conductivity-guide", Authority::CommonPractice),
        )
        .against(Beside::AtMost)
    });
    let ph = read(call, ReadingPoint::WaterPh)
        .map(|taken| acid(&WATER_PH, &taken, 6.5, "water-ph-guide"));
    strongest([chloride, sulphate, conductivity, ph])
}

fn acid(levels: &Levels, taken: &Taken, guide: f64, formula: &'static str) -> Evaluation {
    Evaluation::of(
        levels,
        Compared::Value(taken.si, taken.standard),
        taken,
        Figure::uncertain(taken.uncertain::<Number>()),
        Figure::exact(Number::from_si(guide)),
        Reasoning::new(formula, Authority::CommonPractice),
    )
    .against(Beside::AtLeast)
}

fn acidity(call: &Call<'_>) -> Vec<Evaluation> {
    let glycol = matches!(
        call.model.fluid.kind,
        Some(FluidKind::PropyleneGlycol | FluidKind::EthyleneGlycol)
    );
    let (levels, guide) = if glycol {
        (&GLYCOL_PH, 7.5)
    } else {
        (&FLUID_PH, 7.0)
    };
    call.by_instrument(ReadingPoint::FluidPh, State::Any)
        .iter()
        .map(|taken| acid(levels, taken, guide, "fluid-ph-guide"))
        .collect()
}
