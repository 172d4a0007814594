//! Pipe: dimensions, volume, loss, stretch.

use super::amount::Amount;
use super::given::{FluidGiven, Law, PartGiven, RunGiven, law, pipe, state, topic, words};
use crate::fluids::Fluid;
use crate::hydraulics::component::FluidState;
use crate::hydraulics::elastic::{
    Axial, compliance, modulus_multiplier, poisson_ratio, short_term_modulus, thermal_growth,
};
use crate::hydraulics::friction::{self, POOR_HEAT_BELOW, Regime as EngineRegime, friction_factor};
use crate::hydraulics::network::Link;
use crate::pressure::modulus::{Resin, apparent};
use crate::records;
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{
    Area, Compressibility, Duration, Fraction, Length, Modulus, Number, PressureDifference,
    Quantity, Temperature, ThermalExpansion, Unit, Velocity, Volume, VolumeFlow,
};

words! {
    /// Regime of the flow in a pipe.
    Regime = friction::Regime { Laminar, Transition, Turbulent }
    /// Whether the pipe can move lengthwise; buried pipe is held.
    Lengthwise = Axial { Free, Held }
    /// Resin of the pipe, by the designation printed on it: PE3408 and PE3608, or PE4710 and PE100.
    ResinClass = Resin { Pe3xxx, Pe4xxx }
}

topic! {
    /// Dimensions of a pipe, and what a length holds.
    PipeSize "pipe-size" by "pipe-standards";
    example r#"{"pipe": {"standard": "ips_pe", "size": "3/4", "sdr": "11"}, "length": {"value": 500, "unit": "ft"}}"#;
    asks PipeSizeQuestion {
        pipe: records::Pipe,
        length: Option<Amount<Length>>,
    }
    tells PipeSizeAnswer {
        outside_diameter: Amount<Length>,
        inside_diameter: Amount<Length>,
        wall: Amount<Length>,
        diameter_ratio: Amount<Number>,
        roughness: Amount<Length>,
        area: Amount<Area>,
        volume: Option<Amount<Volume>>,
    }
    |q, show| {
        let pipe = pipe(&q.pipe)?;
        let inch = |q: Length| show.small(Uncertain::exact(q), Unit::Inch, Unit::Millimetre);
        let volume = match q.length {
            Some(length) => {
                crate::hydraulics::pipe::LENGTH.check(length.get())?;
                let length = length.uncertain();
                let area = pipe.area();
                Some(show.with(Uncertain::new(area * length.value(), area.si() * length.standard())))
            }
            None => None,
        };
        Ok(PipeSizeAnswer {
            outside_diameter: inch(pipe.outside()),
            inside_diameter: inch(pipe.bore()),
            wall: inch(pipe.wall()),
            diameter_ratio: show.exact(pipe.diameter_ratio()),
            roughness: inch(pipe.roughness()),
            area: show.exact(pipe.area()),
            volume,
        })
    }
}

topic! {
    /// Loss of a run of pipe or hose.
    HeadLoss "head-loss" by "friction" and spreads;
    example r#"{"run": {"pipe": {"standard": "ips_pe", "size": "3/4", "sdr": "11"}, "length": {"value": 500, "unit": "ft"}, "fittings": [{"kind": "u_bend", "count": 1}, {"kind": "elbow90", "count": 4}]}, "flow": {"value": 3, "unit": "gpm", "accuracy": {"value": 0.2, "unit": "gpm"}}, "fluid": {"kind": "water"}, "temperature": {"value": 50, "unit": "degF"}}"#;
    asks HeadLossQuestion {
        run: RunGiven,
        flow: Amount<VolumeFlow>,
        fluid: FluidGiven,
        temperature: Amount<Temperature>,
        law: Option<Law>,
    }
    tells HeadLossAnswer {
        velocity: Amount<Velocity>,
        reynolds: Amount<Number>,
        regime: Regime,
        /// Laminar or nearly so: the pipe gives heat poorly.
        poor_for_heat: bool,
        pressure_drop: Amount<PressureDifference>,
        head_loss: Amount<Length>,
        /// Least friction factor that fits the regime; differs in transition only.
        least_friction_factor: Amount<Number>,
        most_friction_factor: Amount<Number>,
        friction_factor: Amount<Number>,
        loss_coefficient: Amount<Number>,
    }
    |q, show| {
        crate::hydraulics::pump::FLOW.check(q.flow.get())?;
        let (run, law, kind) = (q.run.run()?, law(q.law), q.fluid.kind());
        let fluid = state(q.fluid, q.temperature)?;
        let (pipe, fittings) = (run.pipe, run.fittings);
        let inputs = (q.flow.uncertain(), q.run.length.uncertain(), q.fluid.strength()?, q.temperature.uncertain());
        let loss = propagate(inputs, |(flow, length, w, t)| {
            let fluid = FluidState::of(Fluid::new(kind, w)?, t)?;
            let link = Link::Pipe { pipe, length, fittings };
            Ok::<_, crate::fluids::FluidError>(link.loss(flow, fluid, law))
        })?.result;
        let reynolds = fluid.reynolds(pipe, q.flow.get());
        let rough = Number::from_si(pipe.roughness() / pipe.bore());
        let at = Number::from_si(reynolds.si().max(1.0));
        let (least, most) = friction::band(at, rough)?;
        let weight = PressureDifference::from_si(1.0).head(fluid.density);
        Ok(HeadLossAnswer {
            velocity: show.exact(q.flow.get() / pipe.area()),
            reynolds: show.exact(reynolds),
            regime: EngineRegime::at(reynolds.si()).into(),
            poor_for_heat: reynolds.si() < POOR_HEAT_BELOW,
            pressure_drop: show.with(loss),
            head_loss: show.with(Uncertain::new(loss.value().head(fluid.density), loss.standard() * weight.si())),
            least_friction_factor: show.exact(least),
            most_friction_factor: show.exact(most),
            friction_factor: show.exact(friction_factor(law, at, rough)?),
            loss_coefficient: show.by("fittings").exact(run.fittings),
        })
    }
}

topic! {
    /// Darcy friction factor.
    FrictionFactor "friction-factor" by "friction";
    example r#"{"reynolds": {"value": 10000, "unit": "1"}, "relative_roughness": {"value": 0.00007, "unit": "1"}}"#;
    asks FrictionFactorQuestion {
        reynolds: Amount<Number>,
        relative_roughness: Amount<Number>,
        law: Option<Law>,
    }
    tells FrictionFactorAnswer {
        friction_factor: Amount<Number>,
        least: Amount<Number>,
        most: Amount<Number>,
        regime: Regime,
    }
    |q, show| {
        let law = law(q.law);
        let factor = propagate(
            (q.reynolds.uncertain(), q.relative_roughness.uncertain()),
            |(re, rough)| friction_factor(law, re, rough),
        )?;
        let (least, most) = friction::band(q.reynolds.get(), q.relative_roughness.get())?;
        Ok(FrictionFactorAnswer {
            friction_factor: show.with(factor.result),
            least: show.exact(least),
            most: show.exact(most),
            regime: EngineRegime::at(q.reynolds.get().si()).into(),
        })
    }
}

topic! {
    /// Drop over an exchanger, strainer or filter by its own curve.
    PartLoss "part-loss" by "loss-curve";
    example r#"{"part": {"curve": [{"flow": {"value": 6, "unit": "gpm"}, "drop": {"value": 1.5, "unit": "psi"}}, {"flow": {"value": 12, "unit": "gpm"}, "drop": {"value": 5.2, "unit": "psi"}}]}, "flow": {"value": 9, "unit": "gpm"}, "fluid": {"kind": "propylene_glycol", "volume_fraction": {"value": 20, "unit": "%"}}, "temperature": {"value": 35, "unit": "degF"}}"#;
    asks PartLossQuestion {
        part: PartGiven,
        flow: Amount<VolumeFlow>,
        fluid: FluidGiven,
        temperature: Amount<Temperature>,
    }
    tells PartLossAnswer {
        pressure_drop: Amount<PressureDifference>,
        head_loss: Amount<Length>,
        exponent: Amount<Number>,
    }
    |q, show| {
        crate::hydraulics::pump::FLOW.check(q.flow.get())?;
        let (curve, fluid) = (q.part.loss_curve()?, state(q.fluid, q.temperature)?);
        let drop = propagate((q.flow.uncertain(),), |(flow,)| {
            Ok::<_, std::convert::Infallible>(curve.pressure_drop(flow, fluid))
        });
        let drop = drop.unwrap_or_else(|never| match never {}).result;
        let weight = PressureDifference::from_si(1.0).head(fluid.density);
        Ok(PartLossAnswer {
            pressure_drop: show.with(drop),
            head_loss: show.with(Uncertain::new(drop.value().head(fluid.density), drop.standard() * weight.si())),
            exponent: show.exact(curve.exponent()),
        })
    }
}

/// A number of equal runs.
#[derive(Clone, Debug, serde::Deserialize, schemars::JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct RunCount {
    #[schemars(range(min = 1, max = 10000))]
    count: u32,
    pipe: records::Pipe,
    /// Length of each; of a circuit out and back.
    length: Amount<Length>,
}

topic! {
    /// What the whole loop holds.
    LoopVolume "loop-volume" by "pipe-standards";
    example r#"{"runs": [{"count": 3, "pipe": {"standard": "ips_pe", "size": "3/4", "sdr": "11"}, "length": {"value": 600, "unit": "ft", "accuracy": {"value": 30, "unit": "ft"}}}, {"count": 2, "pipe": {"standard": "ips_pe", "size": "1-1/4", "sdr": "11"}, "length": {"value": 40, "unit": "ft"}}], "others": [{"value": 1.5, "unit": "gal"}]}"#;
    asks LoopVolumeQuestion {
        #[schemars(length(min = 1, max = 1000))]
        runs: Vec<RunCount>,
        /// Exchanger, flow centre, cart: whatever else holds fluid.
        #[serde(default)]
        #[schemars(length(max = 100))]
        others: Vec<Amount<Volume>>,
    }
    tells LoopVolumeAnswer {
        volume: Amount<Volume>,
        /// Of that, in plastic pipe.
        plastic: Amount<Volume>,
    }
    |q, show| {
        let (mut total, mut plastic, mut variance) = (Volume::ZERO, Volume::ZERO, 0.0);
        for run in &q.runs {
            let section = pipe(&run.pipe)?;
            crate::hydraulics::pipe::LENGTH.check(run.length.get())?;
            let holds = section.volume(run.length.get()) * f64::from(run.count);
            // The runs of one row are measured alike and err together.
            variance += (section.area().si() * run.length.uncertain().standard() * f64::from(run.count)).powi(2);
            total += holds;
            if matches!(run.pipe, records::Pipe::IpsPe { .. } | records::Pipe::MetricPe { .. }) {
                plastic += holds;
            }
        }
        for other in &q.others {
            total += other.get();
            variance += other.uncertain().standard().powi(2);
        }
        Ok(LoopVolumeAnswer {
            volume: show.with(Uncertain::new(total, variance.sqrt())),
            plastic: show.exact(plastic),
        })
    }
}

topic! {
    /// Modulus of polyethylene pipe.
    PipeModulus "pipe-modulus" by "ppi-handbook";
    example r#"{"resin": "pe4xxx", "temperature": {"value": 73, "unit": "degF"}, "load_time": {"value": 100, "unit": "h"}}"#;
    asks PipeModulusQuestion {
        resin: ResinClass,
        temperature: Amount<Temperature>,
        /// How long the load has been on.
        load_time: Amount<Duration>,
    }
    tells PipeModulusAnswer {
        /// Modulus after that time under load.
        apparent: Amount<Modulus>,
        /// For a load of minutes.
        short_term: Amount<Modulus>,
        /// Modulus at this temperature over that at 73.4 degF.
        temperature_factor: Amount<Number>,
        /// Under a short load.
        poisson_ratio: Amount<Number>,
    }
    |q, show| {
        let resin = Resin::from(q.resin);
        let modulus = propagate((q.temperature.uncertain(),), |(t,)| apparent(resin, q.load_time.get(), t))?;
        let ksi = |m: Uncertain<Modulus>| show.small(m, Unit::Ksi, Unit::Megapascal);
        let t = q.temperature.get();
        Ok(PipeModulusAnswer {
            apparent: ksi(modulus.result),
            short_term: ksi(short_term_modulus(t)?),
            temperature_factor: show.exact(modulus_multiplier(t)?),
            poisson_ratio: show.with(poisson_ratio()),
        })
    }
}

topic! {
    /// How the pipe gives to pressure and grows with heat.
    PipeStretch "pipe-stretch" by "elasticity";
    example r#"{"diameter_ratio": {"value": 11, "unit": "1"}, "modulus": {"value": 110, "unit": "ksi", "accuracy": {"value": 20, "unit": "ksi"}}, "lengthwise": "held", "linear_expansion": {"value": 0.00009, "unit": "1/degF"}, "volume": {"value": 60, "unit": "gal"}, "pressure_rise": {"value": 30, "unit": "psi"}}"#;
    asks PipeStretchQuestion {
        /// Outside diameter over wall (SDR).
        diameter_ratio: Amount<Number>,
        modulus: Amount<Modulus>,
        /// Between 0.35 and 0.45 when left out.
        poisson_ratio: Option<Amount<Number>>,
        lengthwise: Lengthwise,
        /// Linear expansion of the pipe.
        linear_expansion: Option<Amount<ThermalExpansion>>,
        /// Volume in the pipe, to say by how much it grows.
        volume: Option<Amount<Volume>>,
        pressure_rise: Option<Amount<PressureDifference>>,
    }
    tells PipeStretchAnswer {
        /// Relative growth of the volume inside by pressure.
        compliance: Amount<Compressibility>,
        /// Relative growth of the volume inside by temperature.
        thermal_growth: Option<Amount<ThermalExpansion>>,
        growth: Option<Amount<Volume>>,
        growth_share: Option<Amount<Fraction>>,
    }
    |q, show| {
        let axial = Axial::from(q.lengthwise);
        let poisson = q.poisson_ratio.map_or(poisson_ratio(), Amount::uncertain);
        let inputs = (q.diameter_ratio.uncertain(), q.modulus.uncertain(), poisson);
        let give = propagate(inputs, |(sdr, e, nu)| compliance(sdr, e, nu, axial))?.result;
        let thermal = match q.linear_expansion {
            Some(alpha) => {
                let growth = propagate((alpha.uncertain(), poisson), |(a, nu)| thermal_growth(a, nu, axial))?;
                Some(show.with(growth.result))
            }
            None => None,
        };
        let share = q.pressure_rise.map(|rise| {
            let (c, p) = (give, rise.uncertain());
            let (value, c, p) = (c.value().si() * p.value().si(), c.standard() * p.value().si(), p.standard() * c.value().si());
            Uncertain::new(Fraction::from_si(value), c.hypot(p))
        });
        let growth = share.zip(q.volume).map(|(share, volume)| {
            let (s, v) = (share.value().si(), volume.uncertain());
            Uncertain::new(v.value() * s, (v.standard() * s).hypot(v.value().si() * share.standard()))
        });
        Ok(PipeStretchAnswer {
            compliance: show.with(give),
            thermal_growth: thermal,
            growth: growth.map(|g| show.with(g)),
            growth_share: share.map(|s| show.with(s)),
        })
    }
}
