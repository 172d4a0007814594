//! The fluid: properties, strength by every instrument, vapour and air pressure.

use super::amount::{Amount, Show};
use super::error::CalcError;
use super::given::{FluidGiven, topic, words};
use crate::fluids::{
    self, Fluid, FluidError, HydrometerScale, RefractometerScale, atmospheric_pressure, hydrometer,
    refractive_index, refractometer,
};
use crate::model::kind_of;
use crate::records::LoopFluidKind;
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{
    AbsolutePressure, Compressibility, Density, DynamicViscosity, Fraction, Length, Number,
    Quantity, SpecificHeat, Temperature, ThermalConductivity, ThermalExpansion,
};

words! {
    /// How well an instrument tells the strength of a fluid.
    Suitability = fluids::Suitability { Good, Coarse, Ambiguous, Useless }
}

/// The correlation behind a property of a fluid.
fn source(fluid: Fluid) -> &'static str {
    if fluid.mass_fraction() == Fraction::ZERO {
        "iapws"
    } else {
        "melinder"
    }
}

/// A property over temperature and strength, with the spread of the correlation.
fn property<Q: Quantity>(
    fluid: FluidGiven,
    t: Amount<Temperature>,
    spread: f64,
    of: impl Fn(Fluid, Temperature) -> Result<Q, FluidError>,
) -> Result<Uncertain<Q>, CalcError> {
    let kind = fluid.kind();
    let of = |w: Fraction, t: Temperature| of(Fluid::new(kind, w)?, t);
    let inputs = (fluid.strength()?, t.uncertain());
    let read = propagate(inputs, |(w, t)| of(w, t))?.result;
    let doubt = read.value().si() * spread;
    Ok(Uncertain::new(read.value(), read.standard().hypot(doubt)))
}

topic! {
    /// Properties at a temperature.
    Properties "fluid-properties" by "melinder";
    example r#"{"fluid": {"kind": "propylene_glycol", "volume_fraction": {"value": 20, "unit": "%"}}, "temperature": {"value": 40, "unit": "degF"}}"#;
    asks PropertiesQuestion {
        fluid: FluidGiven,
        temperature: Amount<Temperature>,
    }
    tells PropertiesAnswer {
        density: Amount<Density>,
        specific_heat: Amount<SpecificHeat>,
        conductivity: Amount<ThermalConductivity>,
        viscosity: Amount<DynamicViscosity>,
        expansion: Amount<ThermalExpansion>,
        compressibility: Amount<Compressibility>,
        vapour_pressure: Amount<AbsolutePressure>,
        refractive_index: Amount<Number>,
        freeze_point: Amount<Temperature>,
        mass_fraction: Amount<Fraction>,
        volume_fraction: Amount<Fraction>,
    }
    |q, show| {
        let fluid = q.fluid.fluid()?;
        let (f, t, spread) = (q.fluid, q.temperature, fluid.spread());
        let show = show.by(source(fluid));
        Ok(PropertiesAnswer {
            density: show.with(property(f, t, spread.density, Fluid::density)?),
            specific_heat: show.with(property(f, t, spread.specific_heat, Fluid::specific_heat)?),
            conductivity: show.with(property(f, t, spread.conductivity, Fluid::conductivity)?),
            viscosity: show.with(property(f, t, spread.viscosity, Fluid::viscosity)?),
            expansion: show.with(property(f, t, 0.0, Fluid::expansion)?),
            compressibility: show.with(property(f, t, 0.0, Fluid::compressibility)?),
            vapour_pressure: vapour(f, t, show)?,
            refractive_index: show.by("lorentz-lorenz").with(property(f, t, 0.0, refractive_index)?),
            freeze_point: show.exact(fluid.freezing_point()),
            mass_fraction: show.exact(fluid.mass_fraction()),
            volume_fraction: show.exact(fluid.volume_fraction()),
        })
    }
}

topic! {
    /// Every way to say how strong.
    Strength "strength" by "melinder";
    example r#"{"fluid": {"kind": "methanol", "freeze_point": {"value": 15, "unit": "degF", "accuracy": {"value": 2, "unit": "degF"}}}}"#;
    asks StrengthQuestion {
        /// With mass fraction, volume fraction or freeze point: the others are answered.
        fluid: FluidGiven,
    }
    tells StrengthAnswer {
        mass_fraction: Amount<Fraction>,
        volume_fraction: Amount<Fraction>,
        freeze_point: Amount<Temperature>,
    }
    |q, show| {
        strength(q.fluid.kind(), q.fluid.strength()?, show)
    }
}

fn strength(
    kind: fluids::FluidKind,
    w: Uncertain<Fraction>,
    show: Show,
) -> Result<StrengthAnswer, CalcError> {
    let volume = propagate((w,), |(w,)| Fluid::new(kind, w).map(Fluid::volume_fraction))?;
    let freezing = propagate((w,), |(w,)| Fluid::new(kind, w).map(Fluid::freezing_point))?;
    Ok(StrengthAnswer {
        mass_fraction: show.with(w),
        volume_fraction: show.with(volume.result),
        freeze_point: show.with(freezing.result),
    })
}

topic! {
    /// Freeze point of a solution.
    FreezePoint "freeze-point" by "melinder";
    example r#"{"fluid": {"kind": "ethanol", "volume_fraction": {"value": 25, "unit": "%", "accuracy": {"value": 2, "unit": "%"}}}}"#;
    asks FreezePointQuestion { fluid: FluidGiven }
    tells FreezePointAnswer { freeze_point: Amount<Temperature> }
    |q, show| {
        let freeze_point = strength(q.fluid.kind(), q.fluid.strength()?, show)?.freeze_point;
        Ok(FreezePointAnswer { freeze_point })
    }
}

words! {
    /// What the scale of a refractometer shows.
    IndexScale = IndexKind { RefractiveIndex, Brix, FreezePoint }
}
/// The kinds of scale.
pub(super) enum IndexKind {
    RefractiveIndex,
    Brix,
    FreezePoint,
}

topic! {
    /// Strength by refractometer.
    Refractometer "refractometer" by "lorentz-lorenz";
    example r#"{"kind": "propylene_glycol", "scale": "brix", "reading": {"value": 18.5, "unit": "1", "accuracy": {"value": 0.3, "unit": "1"}}, "sample": {"value": 68, "unit": "degF"}}"#;
    asks RefractometerQuestion {
        /// What is in the loop.
        kind: LoopFluidKind,
        scale: IndexScale,
        /// Fluid for which a freeze-point scale is printed.
        scale_for: Option<LoopFluidKind>,
        /// The reading of an index or Brix scale.
        reading: Option<Amount<Number>>,
        /// The reading of a freeze-point scale.
        freeze_point: Option<Amount<Temperature>>,
        /// Temperature of the sample, if the instrument does not compensate.
        sample: Option<Amount<Temperature>>,
    }
    tells RefractometerAnswer {
        suitability: Suitability,
        mass_fraction: Amount<Fraction>,
        volume_fraction: Amount<Fraction>,
        freeze_point: Amount<Temperature>,
    }
    |q, show| {
        let kind = kind_of(q.kind);
        let (scale, reading) = match (q.scale, q.reading, q.freeze_point) {
            (IndexScale::RefractiveIndex, Some(n), None) => {
                (RefractometerScale::RefractiveIndex, n.uncertain())
            }
            (IndexScale::Brix, Some(n), None) => (RefractometerScale::Brix, n.uncertain()),
            (IndexScale::FreezePoint, None, Some(t)) => {
                let scale_kind = q.scale_for.map_or(kind, kind_of);
                let t = t.uncertain();
                let reading = Uncertain::new(Number::from_si(t.value().celsius()), t.standard());
                (RefractometerScale::FreezingPoint(scale_kind), reading)
            }
            _ => return Err(CalcError::new("reading-fits-scale", "reading", "")),
        };
        let w = refractometer(kind, scale, reading, q.sample.map(Amount::uncertain))?;
        let StrengthAnswer { mass_fraction, volume_fraction, freeze_point } = strength(kind, w, show)?;
        let suitability = kind.refractometer_suitability().into();
        Ok(RefractometerAnswer { suitability, mass_fraction, volume_fraction, freeze_point })
    }
}

topic! {
    /// Strength by hydrometer.
    Hydrometer "hydrometer" by "melinder";
    example r#"{"kind": "ethylene_glycol", "specific_gravity": {"value": 1.035, "unit": "1", "accuracy": {"value": 0.001, "unit": "1"}}, "sample": {"value": 60, "unit": "degF"}}"#;
    asks HydrometerQuestion {
        kind: LoopFluidKind,
        specific_gravity: Amount<Number>,
        /// Temperature of the sample.
        sample: Amount<Temperature>,
        /// Temperature for which the hydrometer is made; 60 degF when left out.
        reference: Option<Amount<Temperature>>,
    }
    tells HydrometerAnswer {
        suitability: Suitability,
        mass_fraction: Amount<Fraction>,
        volume_fraction: Amount<Fraction>,
        freeze_point: Amount<Temperature>,
    }
    |q, show| {
        let kind = kind_of(q.kind);
        let usual = HydrometerScale::default();
        let reference = q.reference.map_or(usual.reference, Amount::get);
        let scale = HydrometerScale { reference };
        let w = hydrometer(kind, scale, q.specific_gravity.uncertain(), q.sample.uncertain())?;
        let StrengthAnswer { mass_fraction, volume_fraction, freeze_point } = strength(kind, w, show)?;
        let suitability = kind.hydrometer_suitability().into();
        Ok(HydrometerAnswer { suitability, mass_fraction, volume_fraction, freeze_point })
    }
}

fn vapour(
    fluid: FluidGiven,
    t: Amount<Temperature>,
    show: Show,
) -> Result<Amount<AbsolutePressure>, CalcError> {
    let source = if fluid.kind().is_flammable() {
        "antoine"
    } else {
        "iapws"
    };
    Ok(show
        .by(source)
        .with(property(fluid, t, 0.0, Fluid::vapour_pressure)?))
}

topic! {
    /// Vapour pressure.
    VapourPressure "vapour-pressure" by "iapws";
    example r#"{"fluid": {"kind": "water"}, "temperature": {"value": 25, "unit": "degC"}, "units": "si"}"#;
    asks VapourPressureQuestion { fluid: FluidGiven, temperature: Amount<Temperature> }
    tells VapourPressureAnswer {
        /// Absolute; for a solution an upper bound.
        vapour_pressure: Amount<AbsolutePressure>,
    }
    |q, show| {
        Ok(VapourPressureAnswer { vapour_pressure: vapour(q.fluid, q.temperature, show)? })
    }
}

topic! {
    /// Air pressure by altitude.
    Atmosphere "air-pressure" by "iso-2533";
    example r#"{"altitude": {"value": 1500, "unit": "m"}, "units": "si"}"#;
    asks AtmosphereQuestion {
        /// Above sea level.
        altitude: Amount<Length>,
    }
    tells AtmosphereAnswer {
        /// Absolute.
        air_pressure: Amount<AbsolutePressure>,
    }
    |q, show| {
        let pressure = propagate((q.altitude.uncertain(),), |(h,)| atmospheric_pressure(h))?;
        Ok(AtmosphereAnswer { air_pressure: show.with(pressure.result) })
    }
}
