//! The purge with a cart, and the dead-head test.

use super::amount::{Amount, Show};
use super::charge::{CautionText, caution};
use super::fields::FieldGiven;
use super::given::{
    FluidGiven, Law, PartGiven, RunGiven, atmosphere, law, pump_curve, speed, state, topic,
};
use crate::hydraulics::elastic::{poisson_ratio, short_term_modulus};
use crate::hydraulics::purge::{
    self, ALLOWED_AIR, Cart, DeadHeadTest, FILTER_STAGES, PipeVolume, PurgeRules, Section,
    TankStep, dead_head,
};
use crate::pressure::belief::{Surround, Unknowns};
use crate::records::HeadPoint;
use crate::uncertainty::Uncertain;
use crate::units::{
    Area, Duration, Fraction, GaugePressure, Length, Modulus, Number, Quantity, Temperature, Unit,
    Velocity, Volume, VolumeFlow,
};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The cart and what joins it to the loop.
#[derive(Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct CartGiven {
    #[schemars(length(min = 1, max = 100))]
    curve: Vec<HeadPoint>,
    /// Relative to the curve; full when left out.
    speed: Option<Amount<Fraction>>,
    /// Each of the two hoses.
    hose: RunGiven,
    /// The filter, if one is in.
    filter: Option<PartGiven>,
}

/// A section of the loop by kind and number, counted from 1.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct SectionName {
    /// `supply`, `circuit` or `return`.
    kind: &'static str,
    number: usize,
}

fn named(section: Section) -> SectionName {
    let (kind, number) = match section {
        Section::Supply(i) => ("supply", i),
        Section::Circuit(i) => ("circuit", i),
        Section::Return(i) => ("return", i),
    };
    SectionName {
        kind,
        number: number + 1,
    }
}

/// What one section needs and gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct SectionNeed {
    section: SectionName,
    /// Flow at which it reaches the velocity.
    needed: Amount<VolumeFlow>,
    /// Velocity with every circuit open and the cart on its own curve.
    all_open: Amount<Velocity>,
    /// Best velocity over the stages.
    reached: Amount<Velocity>,
    /// Velocity that a large header asks for by its Froude number.
    #[serde(skip_serializing_if = "Option::is_none")]
    froude: Option<Amount<Velocity>>,
}

/// A stage: some circuits open, the others shut.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct StageShown {
    /// Numbers of the open circuits, counted from 1.
    open: Vec<usize>,
    flow: Amount<VolumeFlow>,
    head: Amount<Length>,
    /// Slowest open circuit over the velocity asked for.
    ratio: Amount<Number>,
    /// That is moved.
    volume: Amount<Volume>,
    duration: Amount<Duration>,
}

fn stage(stage: &purge::Stage, show: Show) -> StageShown {
    StageShown {
        open: stage.open.iter().map(|i| i + 1).collect(),
        flow: show.exact(stage.flow),
        head: show.exact(stage.head),
        ratio: show.exact(stage.ratio),
        volume: show.exact(stage.volume),
        duration: show.exact(stage.duration),
    }
}

/// A bag of the filter.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct BagShown {
    micron: u32,
    /// Else until it runs clean.
    until_no_bubbles: bool,
}

topic! {
    /// A purge planned for a cart.
    PurgePlan "purge-plan" by "purge-rules" and spreads;
    example r#"{"field": {"circuits": [{"run": {"pipe": {"standard": "ips_pe", "size": "3/4", "sdr": "11"}, "length": {"value": 500, "unit": "ft"}}}, {"run": {"pipe": {"standard": "ips_pe", "size": "3/4", "sdr": "11"}, "length": {"value": 550, "unit": "ft"}}}, {"run": {"pipe": {"standard": "ips_pe", "size": "3/4", "sdr": "11"}, "length": {"value": 600, "unit": "ft"}}}], "supply": [{"pipe": {"standard": "ips_pe", "size": "1-1/4", "sdr": "11"}, "length": {"value": 40, "unit": "ft"}}], "returns": [{"pipe": {"standard": "ips_pe", "size": "1-1/4", "sdr": "11"}, "length": {"value": 40, "unit": "ft"}}]}, "cart": {"curve": [{"flow": {"value": 0, "unit": "gpm"}, "head": {"value": 100, "unit": "ft"}}, {"flow": {"value": 30, "unit": "gpm"}, "head": {"value": 75, "unit": "ft"}}, {"flow": {"value": 55, "unit": "gpm"}, "head": {"value": 10, "unit": "ft"}}], "hose": {"pipe": {"standard": "hose", "size": "1"}, "length": {"value": 10, "unit": "ft"}}}, "fluid": {"kind": "water"}, "temperature": {"value": 55, "unit": "degF"}}"#;
    asks PurgePlanQuestion {
        field: FieldGiven,
        cart: CartGiven,
        fluid: FluidGiven,
        temperature: Amount<Temperature>,
        /// In every section; 2 ft/s when left out.
        velocity: Option<Amount<Velocity>>,
        /// Ten when left out.
        turnovers: Option<Amount<Number>>,
        /// Least time of a stage; 15 min when left out.
        stage_minimum: Option<Amount<Duration>>,
        /// Least time of all stages; two hours when left out.
        whole_minimum: Option<Amount<Duration>>,
        law: Option<Law>,
    }
    tells PurgePlanAnswer {
        sections: Vec<SectionNeed>,
        /// Flow of the cart at which every section reaches the velocity, all open.
        needed_flow: Amount<VolumeFlow>,
        /// The section that decides it.
        controlling: SectionName,
        /// Head at that flow: field, hoses and filter.
        needed_head: Amount<Length>,
        /// The cart on its own curve with every circuit open.
        all_open: StageShown,
        stages: Vec<StageShown>,
        /// No plan has fewer stages.
        fewest_possible: usize,
        /// Sections that reach the velocity in no stage.
        short: Vec<SectionName>,
        filter_bags: Vec<BagShown>,
        caution: CautionText,
    }
    |q, show| {
        let usual = PurgeRules::default();
        let rules = PurgeRules {
            velocity: q.velocity.map_or(usual.velocity, Amount::get),
            turnovers: q.turnovers.map_or(usual.turnovers, Amount::get),
            stage_minimum: q.stage_minimum.map_or(usual.stage_minimum, Amount::get),
            whole_minimum: q.whole_minimum.map_or(usual.whole_minimum, Amount::get),
        };
        let hose = q.cart.hose.run()?;
        let cart = Cart {
            pump: pump_curve(&q.cart.curve)?,
            speed: speed(q.cart.speed),
            hoses: [hose, hose],
            filter: q.cart.filter.as_ref().map(PartGiven::loss_curve).transpose()?,
        };
        let plan = purge::plan(&q.field.field()?, &cart, rules, state(q.fluid, q.temperature)?, law(q.law))?;
        Ok(PurgePlanAnswer {
            sections: plan.sections.iter().map(|need| SectionNeed {
                section: named(need.section),
                needed: show.exact(need.needed),
                all_open: show.exact(need.all_open),
                reached: show.exact(need.reached),
                froude: need.froude.map(|v| show.exact(v)),
            }).collect(),
            needed_flow: show.exact(plan.needed_flow),
            controlling: named(plan.controlling),
            needed_head: show.exact(plan.needed_head),
            all_open: stage(&plan.all_open, show),
            stages: plan.stages.iter().map(|s| stage(s, show)).collect(),
            fewest_possible: plan.fewest_possible,
            short: plan.short.iter().copied().map(named).collect(),
            filter_bags: FILTER_STAGES.iter().map(|bag| BagShown {
                micron: bag.micron,
                until_no_bubbles: bag.until_no_bubbles,
            }).collect(),
            caution: caution("lowest-rating", "plan-caution-never-above-lowest-rating"),
        })
    }
}

/// Pipe of one kind.
#[derive(Copy, Clone, Debug, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct PipeVolumeGiven {
    volume: Amount<Volume>,
    /// Outside diameter over wall of polyethylene; left out for copper and what does not give.
    diameter_ratio: Option<Amount<Number>>,
}

/// Freedom of pipe in a trench.
fn usual_freedom() -> Uncertain<Fraction> {
    let held = Unknowns::typical(Surround::Trench).restraint;
    Uncertain::new(Fraction::from_si(1.0 - held.value().si()), held.standard())
}

topic! {
    /// Air left, by the dead-head test.
    DeadHead "dead-head" by "elasticity";
    example r#"{"drop": {"value": 1.5, "unit": "in", "accuracy": {"value": 0.1, "unit": "in"}}, "tank_diameter": {"value": 11, "unit": "in"}, "pipes": [{"volume": {"value": 60, "unit": "gal", "accuracy": {"value": 5, "unit": "gal"}}, "diameter_ratio": {"value": 11, "unit": "1"}}], "before": {"value": 20, "unit": "psi", "accuracy": {"value": 1, "unit": "psi"}}, "after": {"value": 50, "unit": "psi", "accuracy": {"value": 1, "unit": "psi"}}, "fluid": {"kind": "water"}, "temperature": {"value": 55, "unit": "degF"}}"#;
    asks DeadHeadQuestion {
        /// Fall of the level in the tank.
        drop: Amount<Length>,
        /// Of the tank at the level; or its area.
        tank_diameter: Option<Amount<Length>>,
        tank_area: Option<Amount<Area>>,
        #[schemars(length(min = 1, max = 100))]
        pipes: Vec<PipeVolumeGiven>,
        /// At the middle of the loop.
        before: Amount<GaugePressure>,
        /// With the return shut.
        after: Amount<GaugePressure>,
        altitude: Option<Amount<Length>>,
        fluid: FluidGiven,
        temperature: Amount<Temperature>,
        /// Under a short load; by the temperature when left out.
        modulus: Option<Amount<Modulus>>,
        /// Part of its free stretch that the ground leaves the pipe; 80 ± 24 %, as in a trench, when left out.
        freedom: Option<Amount<Fraction>>,
        /// Air that may stay, of the loop's volume; 0.2 % when left out.
        allowed_air: Option<Amount<Fraction>>,
    }
    tells DeadHeadAnswer {
        /// Volume that left the tank.
        displaced: Amount<Volume>,
        /// Of that, stretch of pipe and squeeze of liquid.
        stretch: Amount<Volume>,
        /// Air left, at the pressure before.
        air: Amount<Volume>,
        /// Fall of the level with no air at all.
        drop_without_air: Amount<Length>,
        /// Fall with as much air as may stay.
        pass_limit: Amount<Length>,
        /// Of more air than may stay.
        probability_of_air: Amount<Fraction>,
        caution: CautionText,
    }
    |q, show| {
        let area = match (q.tank_diameter, q.tank_area) {
            (Some(d), None) => {
                let d = d.uncertain();
                let slope = std::f64::consts::FRAC_PI_2 * d.value().si();
                Uncertain::new(d.value().circle(), slope * d.standard())
            }
            (None, Some(area)) => area.uncertain(),
            _ => return Err(super::error::CalcError::new("one-of-two", "tank_diameter", "").accepting("tank_diameter, tank_area")),
        };
        let temperature = q.temperature.get();
        let test = DeadHeadTest {
            tank: TankStep { drop: q.drop.uncertain(), area },
            pipes: q.pipes.iter().map(|pipe| PipeVolume {
                volume: pipe.volume.uncertain(),
                diameter_ratio: pipe.diameter_ratio.map(Amount::get),
            }).collect(),
            before: q.before.uncertain(),
            after: q.after.uncertain(),
            atmosphere: atmosphere(q.altitude)?,
            fluid: q.fluid.fluid()?,
            temperature,
            modulus: match q.modulus {
                Some(modulus) => modulus.uncertain(),
                None => short_term_modulus(temperature)?,
            },
            poisson: poisson_ratio(),
            freedom: q.freedom.map_or(usual_freedom(), Amount::uncertain),
            allowed_air: q.allowed_air.map_or(Fraction::from_si(ALLOWED_AIR), Amount::get),
        };
        let found = dead_head(&test)?;
        let inch = |length| show.small(length, Unit::Inch, Unit::Millimetre);
        Ok(DeadHeadAnswer {
            displaced: show.with(found.displaced),
            stretch: show.with(found.stretch),
            air: show.with(found.air),
            drop_without_air: inch(found.drop_without_air),
            pass_limit: inch(found.pass_limit),
            probability_of_air: show.share(found.probability_of_air),
            caution: caution("lowest-rating", "plan-caution-never-above-lowest-rating"),
        })
    }
}
