//! Circulators: suction, shut-off, head, operating point, efficiency.

use super::amount::Amount;
use super::given::{FluidGiven, pump_curve, speed, topic, words};
use crate::hydraulics::circulator::{self, Condition, SystemCurve};
use crate::hydraulics::suction::{self, Needed};
use crate::records::HeadPoint;
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{
    Fraction, GaugePressure, Length, Number, Power, PressureDifference, Quantity, Temperature,
    VolumeFlow,
};

topic! {
    /// Suction head against vapour pressure and against the pump's need.
    SuctionMargin "suction-margin" by "suction";
    example r#"{"suction": {"value": 5, "unit": "psi", "accuracy": {"value": 1, "unit": "psi"}}, "altitude": {"value": 5000, "unit": "ft"}, "fluid": {"kind": "water"}, "temperature": {"value": 95, "unit": "degF"}, "needed_head": {"value": 8, "unit": "ft"}}"#;
    asks SuctionMarginQuestion {
        /// Gauge reading on the suction side.
        suction: Amount<GaugePressure>,
        altitude: Option<Amount<Length>>,
        /// Height of the gauge above the inlet of the pump.
        gauge_above_inlet: Option<Amount<Length>>,
        /// Lost between gauge and inlet.
        loss: Option<Amount<PressureDifference>>,
        fluid: FluidGiven,
        temperature: Amount<Temperature>,
        /// Net positive suction head that the pump's data ask for.
        needed_head: Option<Amount<Length>>,
        /// Or the least suction pressure that they ask for.
        needed_pressure: Option<Amount<GaugePressure>>,
    }
    tells SuctionMarginAnswer {
        /// Net positive suction head available.
        available: Amount<Length>,
        above_vapour: Amount<PressureDifference>,
        /// Over what the pump needs; below zero it starves.
        margin: Amount<Length>,
        probability_enough: Amount<Fraction>,
        /// The need is the trade's, not the pump's.
        by_trade: bool,
    }
    |q, show| {
        let needed = match (q.needed_head, q.needed_pressure) {
            (Some(head), _) => Needed::Head(head.get()),
            (None, Some(pressure)) => Needed::Pressure(pressure.get()),
            (None, None) => Needed::Unknown,
        };
        let found = suction::margin(
            q.suction.uncertain(),
            q.altitude.map_or(Length::ZERO, Amount::get),
            q.gauge_above_inlet.map_or(Length::ZERO, Amount::get),
            q.loss.map_or(Uncertain::exact(PressureDifference::ZERO), Amount::uncertain),
            q.fluid.fluid()?,
            q.temperature.get(),
            needed,
        )?;
        Ok(SuctionMarginAnswer {
            available: show.with(found.available),
            above_vapour: show.exact(found.above_vapour),
            margin: show.with(found.margin),
            probability_enough: show.share(found.probability_enough),
            by_trade: found.by_trade,
        })
    }
}

words! {
    /// What the shut-off test says of the pump.
    ShutOffVerdict = circulator::ShutOffVerdict { Sound, Low, High }
}

/// A pump that should run.
#[derive(Clone, Debug, serde::Deserialize, schemars::JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct RunningPump {
    #[schemars(length(min = 1, max = 100))]
    curve: Vec<HeadPoint>,
    /// Relative to the curve; full when left out.
    speed: Option<Amount<Fraction>>,
}

topic! {
    /// Rise with the discharge closed against the curve.
    ShutOffHead "shut-off-head" by "iso-9906";
    example r#"{"running": [{"curve": [{"flow": {"value": 0, "unit": "gpm"}, "head": {"value": 30, "unit": "ft"}}, {"flow": {"value": 20, "unit": "gpm"}, "head": {"value": 18, "unit": "ft"}}, {"flow": {"value": 35, "unit": "gpm"}, "head": {"value": 0, "unit": "ft"}}]}], "rise": {"value": 12.5, "unit": "psi", "accuracy": {"value": 0.5, "unit": "psi"}}, "fluid": {"kind": "water"}, "temperature": {"value": 50, "unit": "degF"}}"#;
    asks ShutOffHeadQuestion {
        /// The pumps in series that should run.
        #[schemars(length(min = 1, max = 10))]
        running: Vec<RunningPump>,
        /// Rise of pressure over them.
        rise: Amount<PressureDifference>,
        fluid: FluidGiven,
        temperature: Amount<Temperature>,
    }
    tells ShutOffHeadAnswer {
        expected: Amount<PressureDifference>,
        /// Measured over expected.
        ratio: Amount<Fraction>,
        probability_low: Amount<Fraction>,
        verdict: ShutOffVerdict,
        caution: super::charge::CautionText,
    }
    |q, show| {
        let mut curves = Vec::new();
        for pump in &q.running {
            curves.push((pump_curve(&pump.curve)?, speed(pump.speed)));
        }
        let running: Vec<_> = curves.iter().map(|(curve, speed)| (curve, *speed)).collect();
        let density = q.fluid.fluid()?.density(q.temperature.get())?;
        let test = circulator::shut_off(&running, q.rise.uncertain(), density)?;
        Ok(ShutOffHeadAnswer {
            expected: show.exact(test.expected),
            ratio: show.with(test.ratio),
            probability_low: show.share(test.probability_low),
            verdict: test.verdict.into(),
            caution: super::charge::caution("seconds-only", "caution-seconds-only"),
        })
    }
}

topic! {
    /// Head of a pump at a flow and speed.
    PumpHead "pump-head" by "affinity";
    example r#"{"curve": [{"flow": {"value": 0, "unit": "gpm"}, "head": {"value": 30, "unit": "ft"}}, {"flow": {"value": 20, "unit": "gpm"}, "head": {"value": 18, "unit": "ft"}}, {"flow": {"value": 35, "unit": "gpm"}, "head": {"value": 0, "unit": "ft"}}], "flow": {"value": 12, "unit": "gpm"}, "speed": {"value": 80, "unit": "%"}}"#;
    asks PumpHeadQuestion {
        #[schemars(length(min = 1, max = 100))]
        curve: Vec<HeadPoint>,
        flow: Amount<VolumeFlow>,
        /// Relative to the curve; full when left out.
        speed: Option<Amount<Fraction>>,
    }
    tells PumpHeadAnswer {
        head: Amount<Length>,
        /// Head at no flow, at full speed.
        shut_off_head: Amount<Length>,
        /// Flow at no head, at full speed.
        free_flow: Amount<VolumeFlow>,
    }
    |q, show| {
        let (curve, speed) = (pump_curve(&q.curve)?, speed(q.speed));
        let head = propagate((q.flow.uncertain(),), |(flow,)| curve.head(flow, speed))?;
        Ok(PumpHeadAnswer {
            head: show.with(head.result),
            shut_off_head: show.exact(curve.shut_off()),
            free_flow: show.exact(curve.free_flow()),
        })
    }
}

/// How a pump in the series stands.
#[derive(Copy, Clone, Debug, PartialEq, serde::Deserialize, schemars::JsonSchema)]
#[serde(rename_all = "snake_case")]
pub(super) enum Stands {
    Running,
    Dead,
    TurnedRound,
}

/// A pump in the series.
#[derive(Clone, Debug, serde::Deserialize, schemars::JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct SeriesPump {
    #[schemars(length(min = 1, max = 100))]
    curve: Vec<HeadPoint>,
    /// Running when left out.
    stands: Option<Stands>,
    /// Relative to the curve; full when left out.
    speed: Option<Amount<Fraction>>,
}

topic! {
    /// Operating point of circulators in series on a system.
    OperatingPoint "operating-point" by "affinity";
    example r#"{"pumps": [{"curve": [{"flow": {"value": 0, "unit": "gpm"}, "head": {"value": 30, "unit": "ft"}}, {"flow": {"value": 20, "unit": "gpm"}, "head": {"value": 18, "unit": "ft"}}, {"flow": {"value": 35, "unit": "gpm"}, "head": {"value": 0, "unit": "ft"}}]}, {"stands": "dead", "curve": [{"flow": {"value": 0, "unit": "gpm"}, "head": {"value": 30, "unit": "ft"}}, {"flow": {"value": 20, "unit": "gpm"}, "head": {"value": 18, "unit": "ft"}}, {"flow": {"value": 35, "unit": "gpm"}, "head": {"value": 0, "unit": "ft"}}]}], "known_flow": {"value": 12, "unit": "gpm"}, "known_head": {"value": 28, "unit": "ft"}, "exponent": {"value": 1.8, "unit": "1"}}"#;
    asks OperatingPointQuestion {
        #[schemars(length(min = 1, max = 10))]
        pumps: Vec<SeriesPump>,
        /// A flow at which the head lost in the rest of the loop is known.
        known_flow: Amount<VolumeFlow>,
        known_head: Amount<Length>,
        /// Exponent of the flow: 2 for fittings, 1.75 for smooth pipe; 1.8 when left out.
        exponent: Option<Amount<Number>>,
    }
    tells OperatingPointAnswer {
        flow: Amount<VolumeFlow>,
        /// Head lost in the rest of the loop.
        head: Amount<Length>,
    }
    |q, show| {
        let mut curves = Vec::new();
        for pump in &q.pumps {
            let speed = speed(pump.speed);
            let condition = match pump.stands.unwrap_or(Stands::Running) {
                Stands::Running => Condition::Running(speed),
                Stands::Dead => Condition::Dead,
                Stands::TurnedRound => Condition::TurnedRound(speed),
            };
            curves.push((pump_curve(&pump.curve)?, condition));
        }
        let pumps: Vec<_> = curves.iter().map(|(curve, c)| (curve, *c)).collect();
        let exponent = q.exponent.map_or(Number::from_si(1.8), Amount::get);
        let inputs = (q.known_flow.uncertain(), q.known_head.uncertain());
        let at = |flow, head| circulator::series(&pumps, &SystemCurve { flow, head, exponent });
        Ok(OperatingPointAnswer {
            flow: show.with(propagate(inputs, |(q, h)| at(q, h).map(|p| p.flow))?.result),
            head: show.with(propagate(inputs, |(q, h)| at(q, h).map(|p| p.head))?.result),
        })
    }
}

topic! {
    /// Hydraulic power over electric input.
    PumpEfficiency "pump-efficiency" by "common-practice";
    example r#"{"flow": {"value": 12, "unit": "gpm"}, "rise": {"value": 10, "unit": "psi"}, "input": {"value": 240, "unit": "W", "accuracy": {"value": 10, "unit": "W"}}}"#;
    asks PumpEfficiencyQuestion {
        flow: Amount<VolumeFlow>,
        rise: Amount<PressureDifference>,
        /// Electric input.
        input: Amount<Power>,
    }
    tells PumpEfficiencyAnswer { efficiency: Amount<Fraction> }
    |q, show| {
        let found = circulator::efficiency(q.flow.uncertain(), q.rise.uncertain(), q.input.uncertain())?;
        Ok(PumpEfficiencyAnswer { efficiency: show.with(found.result) })
    }
}
