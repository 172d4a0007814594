//! Two instruments at one point: whether they agree.

use super::Evaluator;
use crate::evidence::call::{Call, State, Taken};
use crate::evidence::evaluation::{Compared, Evaluation};
use crate::evidence::levels::Levels;
use crate::figures::{Authority, Figure, Reasoning};
use crate::records::{Instrument, ReadingPoint};
use crate::uncertainty::Uncertain;
use crate::units::{
    GaugePressure, PressureDifference, Quantity, Temperature, TemperatureDifference, Unit,
};

/// Difference of two gauges on one loop at rest, psi. Judgement: within 2 psi of
/// each other, a needle's width on a dial, they agree.
const GAUGES: Levels = Levels::presence(&[(-2.0, 2.0)], &[(-100.0, -4.0), (4.0, 100.0)]);
/// Difference of two thermometers in one stream, K. Judgement: the unit's sensor
/// sits a little away from the port.
const THERMOMETERS: Levels = Levels::presence(&[(-1.5, 1.5)], &[(-30.0, -3.0), (3.0, 30.0)]);

pub(super) const SECOND_GAUGE: Evaluator = Evaluator {
    name: "second-gauge-disagrees",
    graded: false,
    reads: &[ReadingPoint::StaticPressure],
    evaluate: second_gauge,
};
pub(super) const DISPLAY: Evaluator = Evaluator {
    name: "display-thermometer-disagree",
    graded: false,
    reads: &[ReadingPoint::EnteringWater, ReadingPoint::LeavingWater],
    evaluate: display,
};

fn second_gauge(call: &Call<'_>) -> Vec<Evaluation> {
    let read = call.by_instrument(ReadingPoint::StaticPressure, State::AtRest);
    let with = |instrument| read.iter().find(|taken| taken.instrument == instrument);
    let gauges = with(Instrument::DialGauge).zip(with(Instrument::DigitalGauge));
    let compared = gauges.map(|(dial, digital)| {
        let apart = Uncertain::new(
            PressureDifference::from_si(dial.si - digital.si),
            dial.standard.hypot(digital.standard),
        );
        let psi = |pa| Unit::Psi.from_si(pa);
        let x = Compared::Value(psi(apart.value().si()), psi(apart.standard()));
        let reasoning = Reasoning::new("two-instruments", Authority::Judgement)
            .with(
                "dial-gauge",
                Figure::uncertain(dial.uncertain::<GaugePressure>()),
            )
            .with(
                "digital-gauge",
                Figure::uncertain(digital.uncertain::<GaugePressure>()),
            );
        let none = Figure::exact(PressureDifference::ZERO);
        apart_by(
            &GAUGES,
            x,
            [dial, digital],
            Figure::uncertain(apart),
            none,
            reasoning,
        )
    });
    compared.into_iter().collect()
}

fn display(call: &Call<'_>) -> Vec<Evaluation> {
    [ReadingPoint::EnteringWater, ReadingPoint::LeavingWater]
        .into_iter()
        .filter_map(|point| {
            let read = call.by_instrument(point, State::Running);
            let (shown, measured): (Vec<&Taken>, Vec<&Taken>) = read
                .iter()
                .partition(|taken| taken.instrument == Instrument::UnitDisplay);
            let shown = *shown.first()?;
            let sharpest = measured
                .into_iter()
                .min_by(|a, b| a.standard.total_cmp(&b.standard))?;
            let apart = Uncertain::new(
                TemperatureDifference::from_si(shown.si - sharpest.si),
                shown.standard.hypot(sharpest.standard),
            );
            let reasoning = Reasoning::new("two-instruments", Authority::Judgement)
                .with(
                    "unit-display",
                    Figure::uncertain(shown.uncertain::<Temperature>()),
                )
                .with(
                    "thermometer",
                    Figure::uncertain(sharpest.uncertain::<Temperature>()),
                );
            let x = Compared::Value(apart.value().si(), apart.standard());
            let none = Figure::exact(TemperatureDifference::ZERO);
            let figure = Figure::uncertain(apart);
            Some(apart_by(
                &THERMOMETERS,
                x,
                [shown, sharpest],
                figure,
                none,
                reasoning,
            ))
        })
        .collect()
}

/// How far two instruments are apart. That either may lie is what the finding is
/// about, and stands in the graph: the observation itself needs no trust in one.
fn apart_by(
    levels: &Levels,
    x: Compared,
    [one, other]: [&Taken; 2],
    measured: Figure,
    expected: Figure,
    reasoning: Reasoning,
) -> Evaluation {
    Evaluation::of(levels, x, one, measured, expected, reasoning)
        .of_one_instrument()
        .using(&other.readings)
}
