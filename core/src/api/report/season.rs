//! What the gauge should read over the seasons, from what is left today.

use super::super::Call;
use crate::figures::Figure;
use crate::plan::WorkPlan;
use crate::plan::quantity::{
    LEAST_PSI, MOST_PSI, QuantityKind, SEASON_DAYS, SEASONS, TANK_LEAST_BAR, TANK_MOST_BAR,
};
use crate::pressure::belief::{Belief, Charge, Moment};
use crate::records::{FlowCentre, Phase, ReadingPoint};
use crate::report::chart::{Band, LineChart};
use crate::report::fonts::Typesetter;
use crate::report::parts::ChartPart;
use crate::uncertainty::Uncertain;
use crate::units::{Dimension, Duration, GaugePressure, Quantity, Temperature, Unit};
use std::sync::Arc;

/// How long a pipe has been under pressure when it is read at a call, days.
/// Judgement: relaxing goes with the logarithm of time, so half a year or two
/// make little difference.
const STANDING_DAYS: f64 = 182.0;
/// How long a pipe is held when it is charged anew, minutes: 20 to 30, common
/// practice, no source.
const CHARGED_MINUTES: f64 = 30.0;
/// Standard uncertainty of the gauge, psi: a dial gauge in ordinary repair.
const GAUGE_PSI: f64 = 1.0;
/// Points from the coldest to the warmest time of the year.
const STEPS: usize = 5;

/// The band over a year.
pub(super) struct Season {
    /// What it starts from.
    pub left: GaugePressure,
    /// Place in the year (0 winter, 2 summer, 4 winter), low end, high end.
    pub points: Vec<(f64, GaugePressure, GaugePressure)>,
}

impl Season {
    /// The part of the band between two limits; none where nothing is left.
    fn between(self, least: f64, most: f64) -> Option<Self> {
        let cut =
            |pressure: GaugePressure| GaugePressure::from_si(pressure.si().clamp(least, most));
        let meets = |(_, low, high): &(f64, GaugePressure, GaugePressure)| {
            low.si() < most && high.si() > least
        };
        if !self.points.iter().all(meets) {
            return None;
        }
        let points = self.points.into_iter();
        Some(Self {
            left: self.left,
            points: points
                .map(|(at, low, high)| (at, cut(low), cut(high)))
                .collect(),
        })
    }

    /// Lowest and highest of the year.
    pub fn ends(&self) -> (GaugePressure, GaugePressure) {
        let low = self.points.iter().map(|point| point.1.si());
        let high = self.points.iter().map(|point| point.2.si());
        (
            GaugePressure::from_si(low.fold(f64::INFINITY, f64::min)),
            GaugePressure::from_si(high.fold(f64::NEG_INFINITY, f64::max)),
        )
    }
}

impl Call {
    /// The band over a year for the pressure as left, else as the plan leaves
    /// it, else as found. None for a vented loop, without any pressure, or
    /// outside the model.
    pub(super) fn season(&self, plan: Option<&WorkPlan>) -> Option<Season> {
        let read = |phase: Phase| {
            let mut readings = self.file.visit.readings.iter().rev();
            let found =
                readings.find(|r| r.point() == ReadingPoint::StaticPressure && r.phase == phase)?;
            Some((
                found.quantity::<GaugePressure>()?,
                found.standard_uncertainty(),
            ))
        };
        let planned =
            plan.and_then(|plan| Some(plan.sheet.get(QuantityKind::LeavePressure)?.figure.si));
        let gauge = Unit::Psi.to_si(GAUGE_PSI);
        let minutes = Duration::from_si(Unit::Minute.to_si(CHARGED_MINUTES));
        let (left, spread, held) = match (read(Phase::Left), planned) {
            (Some((left, spread)), _) => (left, spread, minutes),
            (None, Some(planned)) => (GaugePressure::from_si(planned), gauge, minutes),
            (None, None) => {
                let (found, spread) = read(Phase::Found)?;
                let standing = Duration::from_si(Unit::Day.to_si(STANDING_DAYS));
                (found, spread, standing)
            }
        };
        let ground = self.file.system.ground.as_ref();
        let unknowns = self.model.unknowns(ground.and_then(|ground| ground.kind));
        let now = self.conditions().loop_temperature;
        let computable = |temperature| self.model.fluid.computable(temperature);
        let charge = Charge {
            pressure: Uncertain::new(left, spread),
            temperature: Uncertain::new(computable(now.value()), now.standard()),
            held,
            air: None,
            earlier: None,
        };
        let belief = Belief::prior(self.model.sealed_loop()?, unknowns, charge).ok()?;
        let [(cold, cold_spread), (warm, warm_spread)] = SEASONS;
        let mut half = Vec::new();
        for step in 0..STEPS {
            #[allow(clippy::cast_precision_loss)]
            let part = step as f64 / (STEPS - 1) as f64;
            // The ground's temperature goes through the year as a cosine.
            let warmth = 0.5 - 0.5 * (part * std::f64::consts::PI).cos();
            let mean = Temperature::from_celsius(cold + warmth * (warm - cold));
            let spread = cold_spread + warmth * (warm_spread - cold_spread);
            let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
            for day in SEASON_DAYS {
                let moment = Moment {
                    elapsed: Duration::from_si(Unit::Day.to_si(day)),
                    temperature: Uncertain::new(computable(mean), spread),
                };
                let band = belief.band(&moment).ok()?;
                low = low.min(band.low.si());
                high = high.max(band.high.si());
            }
            let ends = [low, high].map(GaugePressure::from_si);
            half.push((2.0 * part, ends[0], ends[1]));
        }
        let back = half
            .iter()
            .rev()
            .skip(1)
            .map(|(at, low, high)| (4.0 - at, *low, *high));
        let points = half.iter().copied().chain(back).collect();
        Some(Season { left, points })
    }

    /// The part of the band that may stay as it is: what the loop may do by the
    /// model and what it should not do whatever the model says are two things,
    /// and a layperson shall call at the nearer of both.
    pub(super) fn season_to_keep(&self, plan: Option<&WorkPlan>) -> Option<Season> {
        let tank = matches!(
            self.file.system.flow_centre,
            Some(FlowCentre::SealedWithTank { .. })
        );
        let (least, most) = if tank {
            let [least, most] = [TANK_LEAST_BAR, TANK_MOST_BAR];
            (Unit::Bar.to_si(least), Unit::Bar.to_si(most))
        } else {
            (Unit::Psi.to_si(LEAST_PSI), Unit::Psi.to_si(MOST_PSI))
        };
        let (rating, _) = self.model.pressure_limit(&self.file);
        let most = most.min(rating.si());
        if least >= most {
            return None;
        }
        self.season(plan)?.between(least, most)
    }

    /// The band as a chart; `words` is the key of the caption.
    pub(super) fn season_chart(
        &self,
        season: &Season,
        words: &str,
        (width, height): (f32, f32),
    ) -> Option<ChartPart> {
        let mut set = Typesetter::new().ok()?;
        let unit = self.wording.units.unit(Dimension::Pressure);
        let shown = |pressure: GaugePressure| unit.from_si(pressure.si());
        let title = self.say("service-chart-season");
        let marks = ["winter", "spring", "summer", "autumn", "winter"];
        let marks = (0_u8..).zip(marks).map(|(at, name)| {
            let name = self.say(&format!("season-{name}"));
            (f64::from(at), name)
        });
        let chart = LineChart {
            width,
            height,
            description: title.clone(),
            x_label: String::new(),
            y_label: self.fill("season-pressure", &[("unit", unit.display())]),
            x_marks: marks.collect(),
            series: Vec::new(),
            bands: vec![Band {
                name: self.say("season-band"),
                points: season
                    .points
                    .iter()
                    .map(|(at, low, high)| (*at, shown(*low), shown(*high)))
                    .collect(),
            }],
            limits: Vec::new(),
        };
        let (low, high) = season.ends();
        let temperature = |celsius: f64| {
            let figure = Figure::exact(Temperature::from_celsius(celsius));
            figure.text(self.wording.units)
        };
        Some(ChartPart {
            title,
            drawing: Arc::new(chart.draw(&mut set)),
            caption: self.fill(
                words,
                &[
                    ("low", &self.pressure(low)),
                    ("high", &self.pressure(high)),
                    ("left", &self.pressure(season.left)),
                    ("cold", &temperature(SEASONS[0].0)),
                    ("warm", &temperature(SEASONS[1].0)),
                ],
            ),
        })
    }

    /// A pressure in the reader's unit.
    pub(super) fn pressure(&self, pressure: GaugePressure) -> String {
        Figure::exact(pressure).text(self.wording.units)
    }
}
