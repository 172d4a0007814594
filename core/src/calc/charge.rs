//! Antifreeze: dose, drain and replace, premix, concentrate, mixing.

use super::amount::{Amount, Show};
use super::error::CalcError;
use super::given::{FluidGiven, topic, words};
use crate::charge::{
    self, Adjustment, FREEZE_MARGIN, PURE_FLASH_DOUBT, Product, Sample, adjust, adjust_measured,
    flash_point, judge,
};
use crate::fluids::{Fluid, FluidKind};
use crate::model::kind_of;
use crate::records::LoopFluidKind;
use crate::text::{Language, catalog};
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{
    Density, Duration, Fraction, Number, Quantity, Temperature, TemperatureDifference, Volume,
    VolumeFlow,
};

/// What must be said beside a result.
#[derive(Debug, serde::Serialize, schemars::JsonSchema)]
pub(super) struct CautionText {
    code: &'static str,
    text: String,
}

/// A caution by its code and message.
pub(super) fn caution(code: &'static str, message: &str) -> CautionText {
    let text = catalog(Language::English).text(message);
    CautionText { code, text }
}

/// The cautions of the charge, in the order of the engine.
fn texts(cautions: &[charge::Caution]) -> Vec<CautionText> {
    use charge::Caution as C;
    let code = |c: &C| match c {
        C::FlammableProduct => "flammable-product",
        C::FlammableWhenDiluted => "flammable-when-diluted",
        C::UsePremixedAlcohol => "use-premixed-alcohol",
        C::Poisonous => "poisonous",
        C::LocalPermission => "local-permission",
        C::CatchAndDispose => "catch-and-dispose",
        C::PreventBackflow => "prevent-backflow",
        C::PumpGlycol => "pump-glycol",
        C::ThinGlycol => "thin-glycol",
        C::GlovesAndGoggles => "gloves-and-goggles",
    };
    cautions
        .iter()
        .map(|c| caution(code(c), &format!("calc-caution-{}", code(c))))
        .collect()
}

/// What is added: water, a premix or a concentrate, by the strength on its label.
#[derive(Copy, Clone, Debug, serde::Deserialize, schemars::JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct ProductGiven {
    kind: LoopFluidKind,
    /// Antifreeze by mass.
    mass_fraction: Option<Amount<Fraction>>,
    /// Volume of pure antifreeze in that of the product, both at 20 degC.
    volume_fraction: Option<Amount<Fraction>>,
}

impl ProductGiven {
    fn product(self) -> Result<Product, CalcError> {
        let kind = kind_of(self.kind);
        match (self.mass_fraction, self.volume_fraction) {
            (None, None) if kind == FluidKind::Water => Ok(Product::water()?),
            _ if kind == FluidKind::Water => {
                Err(CalcError::new("water-has-no-strength", "product", "water"))
            }
            (Some(w), None) => Ok(Product::new(kind, w.get())?),
            (None, Some(phi)) => Ok(Product::by_volume(kind, phi.get())?),
            _ => Err(CalcError::new("one-of-two", "product", "")
                .accepting("mass_fraction, volume_fraction")),
        }
    }
}

/// The wanted solution: by freeze point or strength.
fn wanted(fluid: FluidGiven) -> Result<Fluid, CalcError> {
    fluid.fluid()
}

topic! {
    /// First dose of a loop full of water.
    Dose "antifreeze-dose" by "mass-balance";
    example r#"{"volume": {"value": 60, "unit": "gal", "accuracy": {"value": 5, "unit": "gal"}}, "kind": "methanol", "lowest_leaving": {"value": 28, "unit": "degF"}, "product": {"kind": "methanol", "volume_fraction": {"value": 60, "unit": "%"}}}"#;
    asks DoseQuestion {
        /// Volume of the loop.
        volume: Amount<Volume>,
        kind: LoopFluidKind,
        /// Lowest temperature at which the fluid leaves the unit.
        lowest_leaving: Amount<Temperature>,
        /// Below that; 10 degF when left out.
        margin: Option<Amount<TemperatureDifference>>,
        /// Pure antifreeze when left out.
        product: Option<ProductGiven>,
    }
    tells DoseAnswer {
        /// Product to put in.
        add: Amount<Volume>,
        /// Water to let out first.
        drain: Amount<Volume>,
        /// What goes in more than comes out because volumes shrink on mixing.
        contraction: Amount<Volume>,
        freeze_point: Amount<Temperature>,
        mass_fraction: Amount<Fraction>,
        volume_fraction: Amount<Fraction>,
        cautions: Vec<CautionText>,
    }
    |q, show| {
        let kind = kind_of(q.kind);
        let margin = TemperatureDifference::from_si(FREEZE_MARGIN);
        let target = charge::target(kind, q.lowest_leaving.get(), q.margin.map_or(margin, Amount::get))?;
        let product = match q.product {
            Some(product) => product.product()?,
            None => Product::new(kind, Fraction::from_si(if kind == FluidKind::Water { 0.0 } else { 1.0 }))?,
        };
        let plan = adjust(q.volume.get(), Fluid::WATER, target, &product)?;
        // Every volume goes with that of the loop.
        let scaled = |part: Volume| scale(part, q.volume);
        Ok(DoseAnswer {
            add: show.with(scaled(plan.add)),
            drain: show.with(scaled(plan.drain)),
            contraction: show.with(scaled(plan.contraction)),
            freeze_point: show.by("melinder").exact(plan.freezing),
            mass_fraction: show.by("melinder").exact(target.mass_fraction()),
            volume_fraction: show.by("melinder").exact(target.volume_fraction()),
            cautions: texts(&plan.cautions),
        })
    }
}

/// A part of the loop, uncertain as the loop's volume is.
fn scale(part: Volume, whole: Amount<Volume>) -> Uncertain<Volume> {
    let whole = whole.uncertain();
    let relative = whole.standard() / whole.value().si();
    Uncertain::relative(part, relative)
}

topic! {
    /// Drain and replace, or dilute, from what is in the loop.
    DrainAndReplace "drain-and-replace" by "mass-balance";
    example r#"{"volume": {"value": 60, "unit": "gal", "accuracy": {"value": 5, "unit": "gal"}}, "in_loop": {"kind": "propylene_glycol", "freeze_point": {"value": 24, "unit": "degF", "accuracy": {"value": 1, "unit": "degF"}}}, "wanted": {"kind": "propylene_glycol", "freeze_point": {"value": 15, "unit": "degF"}}, "product": {"kind": "propylene_glycol", "volume_fraction": {"value": 95, "unit": "%"}}}"#;
    asks DrainAndReplaceQuestion {
        volume: Amount<Volume>,
        /// What is in the loop now, best by its measured freeze point.
        in_loop: FluidGiven,
        /// What shall be in it.
        wanted: FluidGiven,
        /// What is put in: concentrate or premix, or water to dilute.
        product: ProductGiven,
    }
    tells DrainAndReplaceAnswer {
        /// Solution to let out.
        drain: Amount<Volume>,
        /// Product to put in.
        add: Amount<Volume>,
        contraction: Amount<Volume>,
        freeze_point: Amount<Temperature>,
        mass_fraction: Amount<Fraction>,
        volume_fraction: Amount<Fraction>,
        cautions: Vec<CautionText>,
    }
    |q, show| {
        let (target, product) = (wanted(q.wanted)?, q.product.product()?);
        let kind = q.in_loop.kind();
        let strength = q.in_loop.strength()?;
        let (plan, drain, add): (Adjustment, _, _) = if let Some(freezing) = q.in_loop.freeze_point {
            let found = adjust_measured(q.volume.uncertain(), freezing.uncertain(), kind, target, &product)?;
            (found.plan, found.drain.result, found.add.result)
        } else {
            let inputs = (q.volume.uncertain(), strength);
            let at = |v: Volume, w: Fraction| adjust(v, Fluid::new(kind, w)?, target, &product);
            let drain = propagate(inputs, |(v, w)| at(v, w).map(|plan| plan.drain))?.result;
            let add = propagate(inputs, |(v, w)| at(v, w).map(|plan| plan.add))?.result;
            (at(q.volume.get(), strength.value())?, drain, add)
        };
        Ok(DrainAndReplaceAnswer {
            drain: show.with(drain),
            add: show.with(add),
            contraction: show.exact(plan.contraction),
            freeze_point: show.by("melinder").exact(plan.freezing),
            mass_fraction: show.by("melinder").exact(plan.result.mass_fraction()),
            volume_fraction: show.by("melinder").exact(plan.result.volume_fraction()),
            cautions: texts(&plan.cautions),
        })
    }
}

topic! {
    /// Concentrate and water for an amount of premix.
    Premix "premix" by "mass-balance" and spreads;
    example r#"{"volume": {"value": 50, "unit": "gal"}, "wanted": {"kind": "ethanol", "volume_fraction": {"value": 30, "unit": "%"}}, "product": {"kind": "ethanol", "volume_fraction": {"value": 95, "unit": "%"}}}"#;
    asks PremixQuestion {
        /// Of the premix.
        volume: Amount<Volume>,
        wanted: FluidGiven,
        product: ProductGiven,
    }
    tells PremixAnswer {
        concentrate: Amount<Volume>,
        water: Amount<Volume>,
        /// Volume lost on mixing.
        contraction: Amount<Volume>,
        freeze_point: Amount<Temperature>,
        cautions: Vec<CautionText>,
    }
    |q, show| {
        let target = wanted(q.wanted)?;
        let mix = charge::premix(q.volume.get(), target, &q.product.product()?)?;
        Ok(PremixAnswer {
            concentrate: show.exact(mix.concentrate),
            water: show.exact(mix.water),
            contraction: show.exact(mix.contraction),
            freeze_point: show.by("melinder").exact(target.freezing_point()),
            cautions: texts(&mix.cautions),
        })
    }
}

topic! {
    /// A product by the strength on its label.
    Concentrate "concentrate" by "mass-balance" and spreads;
    example r#"{"product": {"kind": "methanol", "volume_fraction": {"value": 50, "unit": "%"}}, "volume": {"value": 55, "unit": "gal"}}"#;
    asks ConcentrateQuestion {
        product: ProductGiven,
        volume: Option<Amount<Volume>>,
    }
    tells ConcentrateAnswer {
        /// At 20 degC.
        density: Amount<Density>,
        mass_fraction: Amount<Fraction>,
        /// Pure antifreeze in it, as volume at 20 degC.
        antifreeze: Option<Amount<Volume>>,
        flash_point: Option<Amount<Temperature>>,
        cautions: Vec<CautionText>,
    }
    |q, show| {
        let product = q.product.product()?;
        let kind = product.kind();
        let w = product.mass_fraction();
        let pure = |v: Volume| v * (w.si() * product.density().si() / kind.pure_density().si());
        Ok(ConcentrateAnswer {
            density: show.exact(product.density()),
            mass_fraction: show.exact(w),
            antifreeze: q.volume.filter(|_| kind != FluidKind::Water).map(|v| show.exact(pure(v.get()))),
            flash_point: flash(kind, w, show),
            cautions: texts(&charge::cautions(&[], kind, w, false)),
        })
    }
}

fn flash(kind: FluidKind, w: Fraction, show: Show) -> Option<Amount<Temperature>> {
    let point = flash_point(kind, w)?;
    Some(
        show.by("flash-point")
            .with(Uncertain::new(point, PURE_FLASH_DOUBT)),
    )
}

topic! {
    /// Flash point of a solution.
    FlashPoint "flash-point" by "flash-point";
    example r#"{"fluid": {"kind": "methanol", "volume_fraction": {"value": 25, "unit": "%"}}}"#;
    asks FlashPointQuestion { fluid: FluidGiven }
    tells FlashPointAnswer {
        /// None for water, glycols and traces of alcohol.
        flash_point: Option<Amount<Temperature>>,
        cautions: Vec<CautionText>,
    }
    |q, show| {
        let fluid = q.fluid.fluid()?;
        let w = fluid.mass_fraction();
        Ok(FlashPointAnswer {
            flash_point: flash(fluid.kind(), w, show),
            cautions: texts(&charge::cautions(&[fluid], fluid.kind(), w, false)),
        })
    }
}

words! {
    /// Whether the charge is mixed.
    MixingVerdict = charge::Mixing { Mixed, NotMixed, TooSoon, TooClose, InstrumentTooCoarse }
}

/// A sample of the loop.
#[derive(Copy, Clone, Debug, serde::Deserialize, schemars::JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct SampleGiven {
    /// Time since the last dose went in.
    at: Amount<Duration>,
    /// With the accuracy of the instrument.
    freeze_point: Amount<Temperature>,
}

topic! {
    /// Two samples of a charge.
    Mixing "mixing" by "common-practice";
    example r#"{"volume": {"value": 60, "unit": "gal"}, "flow": {"value": 20, "unit": "gpm"}, "first": {"at": {"value": 20, "unit": "min"}, "freeze_point": {"value": 18, "unit": "degF", "accuracy": {"value": 1, "unit": "degF"}}}, "second": {"at": {"value": 40, "unit": "min"}, "freeze_point": {"value": 17.5, "unit": "degF", "accuracy": {"value": 1, "unit": "degF"}}}}"#;
    asks MixingQuestion {
        volume: Amount<Volume>,
        /// At which the loop is circulated.
        flow: Amount<VolumeFlow>,
        first: SampleGiven,
        second: SampleGiven,
    }
    tells MixingAnswer {
        verdict: MixingVerdict,
        difference: Amount<TemperatureDifference>,
        turnovers: Amount<Number>,
        /// To circulate still, for enough turnovers.
        still: Amount<Duration>,
    }
    |q, show| {
        let sample = |s: SampleGiven| Sample { at: s.at.get(), freezing: s.freeze_point.uncertain() };
        let found = judge(q.volume.get(), q.flow.get(), &sample(q.first), &sample(q.second))?;
        Ok(MixingAnswer {
            verdict: found.verdict.into(),
            difference: show.with(found.difference),
            turnovers: show.exact(found.turnovers),
            still: show.exact(found.still),
        })
    }
}
