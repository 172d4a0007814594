//! The band as a chart, a table and words.

use super::{MONTHS, Range, Season, Start};
use crate::api::Call;
use crate::api::types::{FigureView, QuantityView};
use crate::figures::Figure;
use crate::plan::WorkPlan;
use crate::plan::quantity::QuantityKind;
use crate::records::{Phase, ReadingPoint};
use crate::report::chart::{Band, LineChart, Role, Series, SeriesMark};
use crate::report::fonts::Typesetter;
use crate::report::parts::ChartPart;
use crate::units::{Dimension, GaugePressure, Quantity, Temperature, UnitSystem, format};
use std::sync::Arc;

impl Call {
    /// The band as a chart, with the key of its caption and what the keys
    /// for its reader begin with.
    pub(in crate::api::report) fn season_chart(
        &self,
        season: &Season,
        (words, reader): (&str, &str),
        (width, height): (f32, f32),
    ) -> Option<ChartPart> {
        let mut set = Typesetter::new().ok()?;
        let unit = self.wording.units.unit(Dimension::Pressure);
        let shown = |pressure: GaugePressure| unit.from_si(pressure.si());
        let title = self.say("service-chart-season");
        let months = f64::from(MONTHS);
        let start = match season.start {
            Start::Left => "left",
            Start::Planned => "planned",
            Start::Found => "found",
        };
        // Today's mark needs its room; so does the end of the axis.
        let marks = season.marks.iter();
        let marks = marks.filter(|(at, _)| (0.8..=months).contains(at));
        let marks = marks.map(|(at, name)| (*at, self.say(&format!("season-{name}"))));
        let today = std::iter::once((0.0, self.say("season-today")));
        let points = season.points.iter();
        let middle = points.clone().map(|(at, range)| (*at, shown(range.middle)));
        let band = points.map(|(at, range)| (*at, shown(range.low), shown(range.high)));
        // One name for both lines.
        let names = [self.say("season-limits"), String::new()];
        let limits = season.limits.into_iter().map(shown).zip(names).collect();
        let before = self.gauge_history(season.start).into_iter();
        let before = before.map(|(day, read)| (self.months_ahead(day), shown(read)));
        let before: Vec<_> = before.collect();
        let chart = LineChart {
            width,
            height,
            description: title.clone(),
            x_label: String::new(),
            y_label: self.fill("season-pressure", &[("unit", unit.display())]),
            x_marks: today.chain(marks).collect(),
            series: vec![
                Series {
                    name: self.say(&format!("{reader}-start-{start}")),
                    points: vec![(0.0, shown(season.left))],
                    mark: SeriesMark::Dots,
                    role: Role::Measured,
                },
                Series {
                    name: self.say("season-middle"),
                    points: middle.collect(),
                    mark: SeriesMark::Line,
                    role: Role::Primary,
                },
                Series {
                    name: if before.is_empty() {
                        String::new()
                    } else {
                        self.say("season-before")
                    },
                    points: before,
                    mark: SeriesMark::Rings,
                    role: Role::Measured,
                },
            ],
            bands: vec![Band {
                name: self.say(&format!("{reader}-band")),
                points: band.collect(),
            }],
            limits,
        };
        let (low, high) = season.ends();
        let temperature = |at: Temperature| Figure::exact(at).text(self.wording.units);
        let [cold, warm] = season.temperatures;
        let basis = if season.read { "read" } else { "usual" };
        let since = season.since.map(|day| {
            let day = day.to_string();
            format!("{} ", self.fill("season-since", &[("day", &day)]))
        });
        let since = since.unwrap_or_default();
        let beyond = self.beyond(season);
        let caption = self.fill(
            words,
            &[
                ("low", &self.pressure(low)),
                ("high", &self.pressure(high)),
                ("left", &self.pressure(season.left)),
                ("start", &self.say(&format!("{reader}-from-{start}"))),
                ("winter", &self.range(&season.winter)),
                ("summer", &self.range(&season.summer)),
                ("cold", &temperature(cold)),
                ("warm", &temperature(warm)),
                ("basis", &self.say(&format!("season-by-{basis}"))),
                ("since", &since),
                ("beyond", &beyond),
            ],
        );
        Some(ChartPart {
            title,
            drawing: Arc::new(chart.draw(&mut set)),
            caption: caption + &self.gauge_history_words(season.start),
        })
    }

    /// What the screen says of the band; its numbers stand beside.
    pub(in crate::api::report) fn season_words(&self, season: &Season) -> String {
        let basis = if season.read { "read" } else { "usual" };
        let basis = self.say(&format!("season-by-{basis}"));
        let since = season.since.map(|day| {
            let day = day.to_string();
            format!(" {}", self.fill("season-since", &[("day", &day)]))
        });
        let words = self.fill("picture-season-words", &[("basis", &basis)]);
        let beyond = self.beyond(season);
        words + &since.unwrap_or_default() + &beyond + &self.gauge_history_words(season.start)
    }

    /// How far the model goes beyond the limits, where it does.
    fn beyond(&self, season: &Season) -> String {
        if season.vague {
            return format!(" {}", self.say("season-vague"));
        }
        let said = season.beyond.map(|(low, high)| {
            let ends = [self.pressure(low), self.pressure(high)];
            let named = [("low", ends[0].as_str()), ("high", &ends[1])];
            format!(" {}", self.fill("season-beyond", &named))
        });
        said.unwrap_or_default()
    }

    /// The band's numbers, each with where it comes from.
    pub(in crate::api::report) fn season_figures(
        &self,
        season: &Season,
        plan: Option<&WorkPlan>,
    ) -> Vec<QuantityView> {
        let read = |phase| self.latest(ReadingPoint::StaticPressure, Some(phase));
        let planned = plan.and_then(|plan| plan.sheet.get(QuantityKind::LeavePressure));
        let start = match season.start {
            Start::Left => read(Phase::Left).map(|reading| self.read_figure(reading)),
            Start::Found => read(Phase::Found).map(|reading| self.read_figure(reading)),
            Start::Planned => planned.map(|planned| self.quantity(planned)),
        };
        let starts = self.pressure(season.left);
        let turns = [&season.winter, &season.summer];
        let turns = turns.into_iter().zip(season.temperatures);
        let turns = turns.zip(["winter", "summer"]).map(|((range, at), name)| {
            let at = Figure::exact(at).text(self.wording.units);
            QuantityView {
                label: self.fill(&format!("picture-season-{name}"), &[("temperature", &at)]),
                value: self.range(range),
                why: Some(FigureView {
                    measured: None,
                    expected: None,
                    formula: self.say("why-season-band"),
                    inputs: vec![
                        (self.say("input-season-start"), starts.clone()),
                        (self.say("input-plan-loop-temperature"), at),
                    ],
                    source: self.say("source-ppi-handbook"),
                }),
            }
        });
        start.into_iter().chain(turns).collect()
    }

    /// Loop temperatures, and what the gauge should read at each in half a year; nothing
    /// where that cannot be foretold.
    pub(in crate::api::report) fn gauge_by_temperature(
        &self,
        season: &Season,
    ) -> Vec<(String, String)> {
        let lines = season.by_temperature.iter();
        lines
            .filter(|_| !season.vague)
            .map(|(at, range)| {
                let at = Figure::exact(*at).text(self.wording.units);
                (at, self.range(range))
            })
            .collect()
    }

    /// Both ends of a range in the reader's unit, no finer than a gauge is read.
    pub(in crate::api::report) fn range(&self, range: &Range) -> String {
        let unit = self.wording.units.unit(Dimension::Pressure);
        let [low, high] = [range.low, range.high].map(|pressure| self.as_read(pressure));
        let named = [("low", &low), ("high", &high)].map(|(name, text)| (name, text.as_str()));
        let ends = self.fill("season-range", &named);
        format!("{ends} {}", unit.display())
    }

    /// A pressure in the reader's unit, no finer than a gauge is read.
    pub(in crate::api::report) fn pressure(&self, pressure: GaugePressure) -> String {
        let unit = self.wording.units.unit(Dimension::Pressure);
        format!("{} {}", self.as_read(pressure), unit.display())
    }

    fn as_read(&self, pressure: GaugePressure) -> String {
        let decimals = match self.wording.units {
            UnitSystem::Us => 0,
            UnitSystem::Si => 1,
        };
        let unit = self.wording.units.unit(Dimension::Pressure);
        format::number(unit.from_si(pressure.si()), decimals)
    }
}
