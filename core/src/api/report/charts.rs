//! Charts of the service report.

use super::super::Call;
use super::super::readings::reading_why;
use super::super::types::{AssessmentView, QuantityView, WhyQuestion};
use super::season::Season;
use crate::figures::{Authority, Figure, Reasoning};
use crate::hydraulics::pump::PumpCurve;
use crate::hydraulics::purge::PurgeRules;
use crate::plan::WorkPlan;
use crate::plan::quantity::QuantityKind;
use crate::records::{Circulator, CirculatorPiping, Phase, Reading, ReadingPoint};
use crate::report::chart::{Bar, BarChart, LineChart, Role, Series, SeriesMark};
use crate::report::fonts::Typesetter;
use crate::report::parts::ChartPart;
use crate::units::{Dimension, Length, Number, Quantity, VolumeFlow};
use std::sync::Arc;

/// Width of a chart, points: two stand beside each other on the narrower paper.
pub(super) const WIDTH: f32 = 262.0;
/// Height of a chart with axes.
const HEIGHT: f32 = 168.0;
/// Causes in the chart.
const CAUSES: usize = 6;
/// Points of a curve.
const POINTS: u8 = 24;

/// A chart with what the screen tells of it.
pub(in crate::api) struct Charted {
    pub part: ChartPart,
    /// Its words where the numbers stand beside them.
    pub words: Option<String>,
    /// The numbers, each with where it comes from.
    pub figures: Vec<QuantityView>,
}

impl Call {
    /// The charts of a call, so many points wide.
    pub(in crate::api) fn charts(
        &self,
        view: &AssessmentView,
        plan: Option<&WorkPlan>,
        season: Option<&Season>,
        width: f32,
    ) -> Vec<Charted> {
        let Ok(mut set) = Typesetter::new() else {
            return Vec::new();
        };
        let season = season.and_then(|season| {
            let words = ("service-chart-season-words", "season");
            Some(Charted {
                part: self.season_chart(season, words, (width, HEIGHT))?,
                words: Some(self.season_words(season)),
                figures: self.season_figures(season, plan),
            })
        });
        [
            self.cause_chart(view, width, &mut set),
            season,
            plan.and_then(|plan| self.velocity_chart(plan, width, &mut set)),
            self.pump_chart(plan, width, &mut set),
        ]
        .into_iter()
        .flatten()
        .collect()
    }

    fn cause_chart(
        &self,
        view: &AssessmentView,
        width: f32,
        set: &mut Typesetter,
    ) -> Option<Charted> {
        if view.causes.is_empty() {
            return None;
        }
        let title = self.say("service-chart-causes");
        let figures = view.causes.iter().take(CAUSES).map(|cause| QuantityView {
            label: cause.title.clone(),
            value: cause.shown.clone(),
            why: self
                .explain(&WhyQuestion::Probability {
                    cause: cause.id.clone(),
                })
                .ok(),
        });
        let figures = figures.collect();
        let bars = view.causes.iter().take(CAUSES).enumerate();
        let bars = bars.map(|(index, cause)| Bar {
            label: cause.title.clone(),
            value: cause.probability,
            text: cause.shown.clone(),
            interval: None,
            strong: index == 0,
        });
        let chart = BarChart {
            width,
            description: title.clone(),
            bars: bars.collect(),
            full: Some(1.0),
        };
        Some(Charted {
            part: ChartPart {
                title,
                drawing: Arc::new(chart.draw(set)),
                caption: self.say("service-chart-causes-words"),
            },
            words: None,
            figures,
        })
    }

    /// Velocity the cart reaches in each part, against the one that is needed.
    fn velocity_chart(&self, plan: &WorkPlan, width: f32, set: &mut Typesetter) -> Option<Charted> {
        let units = self.wording.units;
        let needed = Figure::exact(PurgeRules::default().velocity);
        let reached: Vec<_> = plan.sheet.all(QuantityKind::CartVelocity).collect();
        let first = reached.first()?;
        let unit = first.figure.unit(units);
        let named = reached
            .iter()
            .map(|computed| {
                let label = self.quantity_label(computed.kind, computed.part);
                (
                    label,
                    computed.figure.in_unit(units).0,
                    computed.figure.text(units),
                )
            })
            .collect::<Vec<_>>();
        let mut bars: Vec<Bar> = named
            .iter()
            .map(|(label, value, text)| Bar {
                label: label.clone(),
                value: *value,
                text: text.clone(),
                ..Bar::default()
            })
            .collect();
        bars.push(Bar {
            label: self.say("service-chart-needed"),
            value: unit.from_si(needed.si),
            text: needed.text(units),
            strong: true,
            ..Bar::default()
        });
        let mut figures: Vec<QuantityView> = reached.iter().map(|one| self.quantity(one)).collect();
        let fixed = Reasoning::new("plan-fixed", Authority::Published("ghp-northwest"));
        figures.push(QuantityView {
            label: self.say("service-chart-needed"),
            value: needed.text(units),
            why: Some(self.why(&fixed)),
        });
        let title = self.say("service-chart-velocity");
        let list: Vec<String> = named
            .iter()
            .map(|(label, _, text)| format!("{label}: {text}"))
            .collect();
        let chart = BarChart {
            width,
            description: title.clone(),
            bars,
            full: None,
        };
        let words = [("needed", needed.text(units)), ("list", list.join("; "))];
        let words = words
            .each_ref()
            .map(|(name, value)| (*name, value.as_str()));
        Some(Charted {
            part: ChartPart {
                title,
                drawing: Arc::new(chart.draw(set)),
                caption: self.fill("service-chart-velocity-words", &words),
            },
            words: Some(self.say("picture-velocity-words")),
            figures,
        })
    }

    /// The circulators' curve with the loop's curve through the flow read.
    fn pump_chart(
        &self,
        plan: Option<&WorkPlan>,
        width: f32,
        set: &mut Typesetter,
    ) -> Option<Charted> {
        let pumps = Pumps::of(self)?;
        let units = self.wording.units;
        let [flow_unit, head_unit] =
            [Dimension::VolumeFlow, Dimension::Length].map(|dimension| units.unit(dimension));
        let shown = |(flow, head): (f64, f64)| (flow_unit.from_si(flow), head_unit.from_si(head));
        let steps = || (0..=POINTS).map(|step| f64::from(step) / f64::from(POINTS));
        let free = pumps.free_flow();
        let curve: Vec<(f64, f64)> = steps()
            .filter_map(|part| Some((part * free, pumps.head(part * free)?)))
            .filter(|(_, head)| *head >= 0.0)
            .map(shown)
            .collect();
        let mut series = vec![Series {
            name: self.say("service-chart-pump-line"),
            points: curve,
            mark: SeriesMark::Line,
            role: Role::Primary,
        }];
        let (flow, reading) = self
            .read_flow()
            .filter(|(flow, _)| (0.0..free).contains(flow) && *flow > 0.0)?;
        let head = pumps.head(flow).filter(|head| *head > 0.0)?;
        let highest = pumps.head(0.0)?;
        let by_squares = steps()
            .map(|part| part * free)
            .map(|at| (at, head * (at / flow).powi(2)))
            .filter(|(_, head)| *head <= highest)
            .map(shown);
        series.push(Series {
            name: self.say("service-chart-loop-line"),
            points: by_squares.collect(),
            mark: SeriesMark::Dashes,
            role: Role::Secondary,
        });
        series.push(Series {
            name: self.say("service-chart-point"),
            points: vec![shown((flow, head))],
            mark: SeriesMark::Dots,
            role: Role::Measured,
        });
        let title = self.say("service-chart-pump");
        let axis = |key: &str, unit: &str| self.fill(key, &[("unit", unit)]);
        let chart = LineChart {
            width,
            height: HEIGHT,
            description: title.clone(),
            x_label: axis("service-chart-flow", flow_unit.display()),
            y_label: axis("service-chart-head", head_unit.display()),
            series,
            ..LineChart::default()
        };
        let asks = Figure::uncertain(self.model.demand.flow).text(units);
        let pump = self.fill("service-chart-pump-needed", &[("flow", &asks)]);
        let read = Figure::exact(VolumeFlow::from_si(flow)).text(units);
        let needed = plan.and_then(|plan| plan.sheet.get(QuantityKind::NeededFlow));
        let mut figures: Vec<QuantityView> =
            needed.into_iter().map(|flow| self.quantity(flow)).collect();
        figures.push(self.read_figure(reading));
        Some(Charted {
            part: ChartPart {
                title,
                drawing: Arc::new(chart.draw(set)),
                caption: self.fill(
                    "service-chart-pump-words",
                    &[("pump", &pump), ("flow", &read)],
                ),
            },
            words: Some(self.say("picture-pump-words")),
            figures,
        })
    }

    /// A reading with whose word its accuracy is.
    pub(super) fn read_figure(&self, reading: &Reading) -> QuantityView {
        QuantityView {
            label: self.say(&format!("point-{}", reading.point().id())),
            value: reading.text(),
            why: Some(reading_why(reading, self.wording)),
        }
    }

    /// The flow as left, else as found, m³/s.
    fn read_flow(&self) -> Option<(f64, &Reading)> {
        let read = |phase: Phase| {
            let found = self.latest(ReadingPoint::Flow, Some(phase))?;
            Some((found.quantity::<VolumeFlow>()?.si(), found))
        };
        read(Phase::Left).or_else(|| read(Phase::Found))
    }
}

/// All circulators together.
struct Pumps {
    curves: Vec<(PumpCurve, Number)>,
    parallel: bool,
}

impl Pumps {
    /// None unless the curve of every circulator is known.
    fn of(call: &Call) -> Option<Self> {
        let system = &call.file.system;
        let curve = |circulator: &Circulator| {
            let points: Vec<(VolumeFlow, Length)> = circulator
                .curve
                .iter()
                .map(|point| (point.flow.get(), point.head.get()))
                .collect();
            let speed = circulator.speed.map_or(1.0, |speed| speed.get().si());
            Some((PumpCurve::through(&points).ok()?, Number::from_si(speed)))
        };
        let curves: Option<Vec<_>> = system.circulators.iter().map(curve).collect();
        let curves = curves.filter(|curves| !curves.is_empty())?;
        Some(Self {
            curves,
            parallel: system.circulator_piping == Some(CirculatorPiping::Parallel),
        })
    }

    /// Head at a flow, m; side by side each takes its equal part.
    fn head(&self, flow: f64) -> Option<f64> {
        #[allow(clippy::cast_precision_loss)]
        let count = self.curves.len() as f64;
        let each = if self.parallel { flow / count } else { flow };
        let mut heads = 0.0;
        for (curve, speed) in &self.curves {
            heads += curve.head(VolumeFlow::from_si(each), *speed).ok()?.si();
        }
        Some(if self.parallel { heads / count } else { heads })
    }

    /// Flow at which the least of them gives no head any more, m³/s.
    fn free_flow(&self) -> f64 {
        #[allow(clippy::cast_precision_loss)]
        let count = if self.parallel {
            self.curves.len() as f64
        } else {
            1.0
        };
        let free = |(curve, speed): &(PumpCurve, Number)| curve.free_flow().si() * speed.si();
        count * self.curves.iter().map(free).fold(f64::INFINITY, f64::min)
    }
}
