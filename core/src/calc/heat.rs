//! Flow three ways, heat, approach, conductance, saturation.

use super::amount::Amount;
use super::given::{FluidGiven, PartGiven, atmosphere, pump_curve, topic, words};
use crate::heat::exchange::{self, Duty};
use crate::heat::flow;
use crate::heat::reconcile::{self, Agreement, reconcile};
use crate::heat::saturation::{self, Line};
use crate::hydraulics::component::{CurveTrust, flow_from_drop};
use crate::records::{HeadPoint, Refrigerant};
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{
    AbsolutePressure, Conductance, Fraction, GaugePressure, Length, Number, Power,
    PressureDifference, Quantity, Temperature, TemperatureDifference, ThermalResistance,
    VolumeFlow,
};

words! {
    /// A way to the flow.
    Way = reconcile::Way { ExchangerDrop, PumpCurve, HeatBalance, Meter }
    /// Which way the heat goes.
    Mode = Duty { Heating, Cooling }
    /// Where boiling begins (bubble) or condensing begins (dew).
    SaturationLine = Line { Bubble, Dew }
}

/// The engine's name of a refrigerant.
fn refrigerant(given: Refrigerant) -> saturation::Refrigerant {
    use saturation::Refrigerant as Engine;
    match given {
        Refrigerant::R410A => Engine::R410A,
        Refrigerant::R32 => Engine::R32,
        Refrigerant::R454B => Engine::R454B,
        Refrigerant::R407C => Engine::R407C,
        Refrigerant::R134a => Engine::R134a,
        Refrigerant::R22 => Engine::R22,
    }
}

topic! {
    /// Flow by the drop over an exchanger.
    FlowByExchanger "flow-by-exchanger" by "loss-curve";
    example r#"{"part": {"curve": [{"flow": {"value": 6, "unit": "gpm"}, "drop": {"value": 1.5, "unit": "psi"}}, {"flow": {"value": 12, "unit": "gpm"}, "drop": {"value": 5.2, "unit": "psi"}}]}, "drop": {"value": 3, "unit": "psi", "accuracy": {"value": 0.3, "unit": "psi"}}, "fluid": {"kind": "methanol", "volume_fraction": {"value": 20, "unit": "%", "accuracy": {"value": 2, "unit": "%"}}}, "temperature": {"value": 38, "unit": "degF"}}"#;
    asks FlowByExchangerQuestion {
        part: PartGiven,
        drop: Amount<PressureDifference>,
        fluid: FluidGiven,
        temperature: Amount<Temperature>,
    }
    tells FlowByExchangerAnswer { flow: Amount<VolumeFlow> }
    |q, show| {
        let found = flow_from_drop(
            &q.part.loss_curve()?,
            CurveTrust::default(),
            q.drop.uncertain(),
            q.fluid.kind(),
            q.fluid.strength()?,
            q.temperature.uncertain(),
        )?;
        Ok(FlowByExchangerAnswer { flow: show.with(found.result) })
    }
}

topic! {
    /// Flow by the rise over a pump.
    FlowByPump "flow-by-pump" by "affinity";
    example r#"{"curve": [{"flow": {"value": 0, "unit": "gpm"}, "head": {"value": 30, "unit": "ft"}}, {"flow": {"value": 20, "unit": "gpm"}, "head": {"value": 18, "unit": "ft"}}, {"flow": {"value": 35, "unit": "gpm"}, "head": {"value": 0, "unit": "ft"}}], "rise": {"value": 9, "unit": "psi", "accuracy": {"value": 0.5, "unit": "psi"}}, "fluid": {"kind": "water"}, "temperature": {"value": 50, "unit": "degF"}}"#;
    asks FlowByPumpQuestion {
        #[schemars(length(min = 1, max = 100))]
        curve: Vec<HeadPoint>,
        /// Relative to the curve; full when left out.
        speed: Option<Amount<Fraction>>,
        rise: Amount<PressureDifference>,
        fluid: FluidGiven,
        temperature: Amount<Temperature>,
    }
    tells FlowByPumpAnswer { flow: Amount<VolumeFlow> }
    |q, show| {
        let speed = q.speed.map_or(Uncertain::exact(Number::ONE), |speed| {
            let speed = speed.uncertain();
            Uncertain::new(Number::from_si(speed.value().si()), speed.standard())
        });
        let curve = pump_curve(&q.curve)?;
        let found = flow::by_pump(&curve, speed, q.rise.uncertain(), q.fluid.fluid()?, q.temperature.get())?;
        Ok(FlowByPumpAnswer { flow: show.with(found.result) })
    }
}

topic! {
    /// Flow by the heat it carries.
    FlowByHeat "flow-by-heat" by "heat-balance";
    example r#"{"heat": {"value": 27000, "unit": "Btu/h", "accuracy": {"value": 1500, "unit": "Btu/h"}}, "entering": {"value": 45, "unit": "degF", "accuracy": {"value": 0.5, "unit": "degF"}}, "leaving": {"value": 39, "unit": "degF", "accuracy": {"value": 0.5, "unit": "degF"}}, "fluid": {"kind": "water"}}"#;
    asks FlowByHeatQuestion {
        /// Taken from the loop (heating) or given to it (cooling), above zero either way.
        heat: Amount<Power>,
        entering: Amount<Temperature>,
        leaving: Amount<Temperature>,
        fluid: FluidGiven,
    }
    tells FlowByHeatAnswer { flow: Amount<VolumeFlow> }
    |q, show| {
        let found = flow::by_heat(q.heat.uncertain(), q.entering.uncertain(), q.leaving.uncertain(), q.fluid.fluid()?)?;
        Ok(FlowByHeatAnswer { flow: show.with(found.result) })
    }
}

/// A flow found one way.
#[derive(Copy, Clone, Debug, serde::Deserialize, schemars::JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct FlowFound {
    way: Way,
    /// With its accuracy.
    flow: Amount<VolumeFlow>,
}

/// How one way lies to the mean of all.
#[derive(Debug, serde::Serialize, schemars::JsonSchema)]
pub(super) struct Residual {
    way: Way,
    /// Distance from the mean over its standard uncertainty.
    normalised: Amount<Number>,
}

topic! {
    /// Several determinations of one flow.
    ReconcileFlow "reconcile-flow" by "least-squares";
    example r#"{"ways": [{"way": "exchanger_drop", "flow": {"value": 9.1, "unit": "gpm", "accuracy": {"value": 0.9, "unit": "gpm"}}}, {"way": "pump_curve", "flow": {"value": 9.6, "unit": "gpm", "accuracy": {"value": 1.2, "unit": "gpm"}}}, {"way": "heat_balance", "flow": {"value": 6.2, "unit": "gpm", "accuracy": {"value": 1.0, "unit": "gpm"}}}]}"#;
    asks ReconcileFlowQuestion {
        #[schemars(length(min = 1, max = 20))]
        ways: Vec<FlowFound>,
    }
    tells ReconcileFlowAnswer {
        flow: Amount<VolumeFlow>,
        chi_squared: Amount<Number>,
        /// Of at least that much scatter if the stated accuracies hold.
        probability: Amount<Fraction>,
        /// `single`, `agree`, `odd` or `cannot_tell`.
        agreement: &'static str,
        /// The way that does not fit the others.
        odd: Option<Way>,
        residuals: Vec<Residual>,
    }
    |q, show| {
        let ways: Vec<_> = q.ways.iter().map(|w| (w.way.into(), w.flow.uncertain())).collect();
        let found = reconcile(&ways)?;
        let (agreement, odd) = match found.agreement {
            Agreement::Single => ("single", None),
            Agreement::Agree => ("agree", None),
            Agreement::Odd(way) => ("odd", Some(way.into())),
            Agreement::CannotTell => ("cannot_tell", None),
        };
        Ok(ReconcileFlowAnswer {
            flow: show.with(found.flow),
            chi_squared: show.number(found.chi_squared),
            probability: show.share(found.probability),
            agreement,
            odd,
            residuals: found.residuals.iter().map(|r| Residual {
                way: r.way.into(),
                normalised: show.number(r.normalised),
            }).collect(),
        })
    }
}

topic! {
    /// Heat carried between two temperatures.
    CarriedHeat "carried-heat" by "heat-balance";
    example r#"{"flow": {"value": 9, "unit": "gpm", "accuracy": {"value": 0.5, "unit": "gpm"}}, "entering": {"value": 45, "unit": "degF", "accuracy": {"value": 0.5, "unit": "degF"}}, "leaving": {"value": 39, "unit": "degF", "accuracy": {"value": 0.5, "unit": "degF"}}, "fluid": {"kind": "methanol", "volume_fraction": {"value": 20, "unit": "%"}}}"#;
    asks CarriedHeatQuestion {
        flow: Amount<VolumeFlow>,
        /// Into the unit.
        entering: Amount<Temperature>,
        leaving: Amount<Temperature>,
        fluid: FluidGiven,
    }
    tells CarriedHeatAnswer {
        /// Extraction from the loop; negative for rejection.
        heat: Amount<Power>,
        /// True factor in Btu/h per gpm and degF, beside the trade's 500 and 485.
        factor: Amount<Number>,
        by_500: Amount<Power>,
        by_485: Amount<Power>,
    }
    |q, show| {
        let found = exchange::carried(q.flow.uncertain(), q.entering.uncertain(), q.leaving.uncertain(), q.fluid.fluid()?)?;
        let trade = show.by("common-practice");
        Ok(CarriedHeatAnswer {
            heat: show.with(found.heat.result),
            factor: show.exact(found.factor),
            by_500: trade.exact(found.by_trade_water),
            by_485: trade.exact(found.by_trade_antifreeze),
        })
    }
}

topic! {
    /// Heat of extraction or rejection from capacity and electric input.
    UnitHeat "unit-heat" by "energy-balance";
    example r#"{"mode": "heating", "capacity": {"value": 36000, "unit": "Btu/h", "accuracy": {"value": 1800, "unit": "Btu/h"}}, "input": {"value": 2.7, "unit": "kW"}}"#;
    asks UnitHeatQuestion {
        mode: Mode,
        /// Delivered to (heating) or taken from (cooling) the building.
        capacity: Amount<Power>,
        /// Electric input of the compressor.
        input: Amount<Power>,
    }
    tells UnitHeatAnswer {
        /// Taken from the loop (heating) or given to it (cooling).
        loop_heat: Amount<Power>,
    }
    |q, show| {
        let (capacity, input) = (q.capacity.uncertain(), q.input.uncertain());
        Ok(UnitHeatAnswer {
            loop_heat: show.with(match q.mode {
                Mode::Heating => flow::extraction(capacity, input),
                Mode::Cooling => flow::rejection(capacity, input),
            }),
        })
    }
}

topic! {
    /// Approach of leaving water and saturation.
    Approach "approach" by "refrigerants";
    example r#"{"refrigerant": "R-410A", "mode": "heating", "pressure": {"value": 105, "unit": "psi", "accuracy": {"value": 2, "unit": "psi"}}, "leaving": {"value": 38, "unit": "degF", "accuracy": {"value": 0.5, "unit": "degF"}}}"#;
    asks ApproachQuestion {
        refrigerant: Refrigerant,
        mode: Mode,
        /// Gauge: suction in heating, liquid in cooling.
        pressure: Amount<GaugePressure>,
        /// Water leaving the loop-side exchanger.
        leaving: Amount<Temperature>,
        altitude: Option<Amount<Length>>,
    }
    tells ApproachAnswer {
        approach: Amount<TemperatureDifference>,
        saturation: Amount<Temperature>,
        caution: super::charge::CautionText,
    }
    |q, show| {
        let (kind, duty, air) = (refrigerant(q.refrigerant), q.mode.into(), atmosphere(q.altitude)?);
        let found = exchange::approach(kind, duty, q.pressure.uncertain(), air, q.leaving.uncertain())?;
        let saturated = propagate((q.pressure.uncertain(),), |(p,)| exchange::saturation(kind, duty, p, air))?;
        Ok(ApproachAnswer {
            approach: show.with(found.result),
            saturation: show.with(saturated.result),
            caution: super::charge::caution("certified-only", "caution-certified-only"),
        })
    }
}

topic! {
    /// Conductance of the loop-side exchanger against clean.
    ExchangerCondition "exchanger-condition" by "effectiveness";
    example r#"{"flow": {"value": 9, "unit": "gpm", "accuracy": {"value": 0.5, "unit": "gpm"}}, "entering": {"value": 45, "unit": "degF", "accuracy": {"value": 0.5, "unit": "degF"}}, "leaving": {"value": 39, "unit": "degF", "accuracy": {"value": 0.5, "unit": "degF"}}, "saturation": {"value": 30, "unit": "degF", "accuracy": {"value": 1, "unit": "degF"}}, "fluid": {"kind": "water"}, "clean": {"value": 3000, "unit": "Btu/(h.degF)", "accuracy": {"value": 300, "unit": "Btu/(h.degF)"}}}"#;
    asks ExchangerConditionQuestion {
        flow: Amount<VolumeFlow>,
        entering: Amount<Temperature>,
        leaving: Amount<Temperature>,
        /// Of the refrigerant.
        saturation: Amount<Temperature>,
        fluid: FluidGiven,
        /// Conductance of the clean exchanger at about this flow.
        clean: Amount<Conductance>,
    }
    tells ExchangerConditionAnswer {
        conductance: Amount<Conductance>,
        share_of_clean: Amount<Fraction>,
        /// Resistance that was added.
        fouling: Amount<ThermalResistance>,
        probability_fouled: Amount<Fraction>,
    }
    |q, show| {
        let found = exchange::exchanger(
            q.flow.uncertain(),
            q.entering.uncertain(),
            q.leaving.uncertain(),
            q.saturation.uncertain(),
            q.fluid.fluid()?,
            q.clean.uncertain(),
        )?;
        Ok(ExchangerConditionAnswer {
            conductance: show.with(found.conductance.result),
            share_of_clean: show.with(found.share_of_clean),
            fouling: show.with(found.fouling),
            probability_fouled: show.share(found.probability_fouled),
        })
    }
}

topic! {
    /// Effectiveness and transfer units of a counter-flow exchanger.
    Effectiveness "effectiveness" by "effectiveness";
    example r#"{"transfer_units": {"value": 1, "unit": "1"}, "capacity_ratio": {"value": 0, "unit": "1"}}"#;
    asks EffectivenessQuestion {
        /// Or the effectiveness: the other is answered.
        transfer_units: Option<Amount<Number>>,
        effectiveness: Option<Amount<Fraction>>,
        /// Smaller over larger heat capacity rate; 0 where one side boils or condenses.
        capacity_ratio: Amount<Fraction>,
    }
    tells EffectivenessAnswer { transfer_units: Amount<Number>, effectiveness: Amount<Fraction> }
    |q, show| {
        let ratio = q.capacity_ratio.uncertain();
        match (q.transfer_units, q.effectiveness) {
            (Some(n), None) => {
                let e = propagate((n.uncertain(), ratio), |(n, c)| exchange::effectiveness(n, c))?;
                Ok(EffectivenessAnswer { transfer_units: show.with(n.uncertain()), effectiveness: show.with(e.result) })
            }
            (None, Some(e)) => {
                let n = propagate((e.uncertain(), ratio), |(e, c)| exchange::transfer_units(e, c))?;
                Ok(EffectivenessAnswer { transfer_units: show.with(n.result), effectiveness: show.with(e.uncertain()) })
            }
            _ => Err(super::error::CalcError::new("one-of-two", "transfer_units", "").accepting("transfer_units, effectiveness")),
        }
    }
}

topic! {
    /// Saturation of a refrigerant.
    Saturation "saturation" by "refrigerants";
    example r#"{"refrigerant": "R-407C", "line": "dew", "temperature": {"value": 32, "unit": "degF"}}"#;
    asks SaturationQuestion {
        refrigerant: Refrigerant,
        line: SaturationLine,
        /// Or a pressure: the other is answered.
        temperature: Option<Amount<Temperature>>,
        /// Gauge.
        pressure: Option<Amount<GaugePressure>>,
        altitude: Option<Amount<Length>>,
    }
    tells SaturationAnswer {
        temperature: Amount<Temperature>,
        /// Gauge.
        pressure: Amount<GaugePressure>,
        absolute_pressure: Amount<AbsolutePressure>,
        mildly_flammable: bool,
        caution: super::charge::CautionText,
    }
    |q, show| {
        let (kind, line, air) = (refrigerant(q.refrigerant), q.line.into(), atmosphere(q.altitude)?);
        let (t, p) = match (q.temperature, q.pressure) {
            (Some(t), None) => {
                let p = propagate((t.uncertain(),), |(t,)| saturation::pressure(kind, line, t))?;
                (t.uncertain(), p.result)
            }
            (None, Some(p)) => {
                let p = p.uncertain();
                let p = Uncertain::new(p.value().absolute(air), p.standard());
                let t = propagate((p,), |(p,)| saturation::temperature(kind, line, p))?;
                (t.result, p)
            }
            _ => return Err(super::error::CalcError::new("one-of-two", "temperature", "").accepting("temperature, pressure")),
        };
        Ok(SaturationAnswer {
            temperature: show.with(t),
            pressure: show.with(Uncertain::new(p.value().gauge(air), p.standard())),
            absolute_pressure: show.with(p),
            mildly_flammable: kind.mildly_flammable(),
            caution: super::charge::caution("certified-only", "caution-certified-only"),
        })
    }
}
