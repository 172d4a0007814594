//! Purging a loop of air with a cart.
//!
//! [`plan`] tells, for a field and a cart: the flow that every section needs,
//! the section that decides, the head at that flow, what the cart really
//! reaches on its own curve, and in how few groups of circuits it can be done
//! if it does not reach it with all of them open.

mod dead_head;
mod groups;
mod rig;

pub use dead_head::{
    ALLOWED_AIR, DeadHead, DeadHeadError, DeadHeadTest, PipeVolume, TankStep, dead_head,
};
pub use rig::{Cart, Section};

use super::component::FluidState;
use super::friction::FrictionLaw;
use super::network::SolveError;
use super::network::ground_loop::LoopField;
use super::pump::{PumpError, SPEED};
use crate::units::{
    Bound, Duration, Length, Number, OutOfRange, Quantity, STANDARD_GRAVITY, Velocity, Volume,
    VolumeFlow,
};
use rig::Rig;
use thiserror::Error;

/// Transport velocities that can be asked for.
pub const TRANSPORT_VELOCITY: Bound<Velocity> = Bound::si("transport velocity", 0.1, 3.0);
/// Turnovers that can be asked for.
pub const TURNOVERS: Bound<Number> = Bound::si("turnovers", 0.0, 1_000.0);
/// Least times that can be asked for, up to a week.
pub const LEAST_TIME: Bound<Duration> = Bound::si("least time", 0.0, 604_800.0);
/// Outside diameter from which a header is called large: 3 in nominal, 90 mm.
const LARGE_HEADER: f64 = 0.085;
/// Froude number v/√(gd) that carries air down: the upper textbook figure (from
/// memory); laboratory work on small pipe found similar values.
const CARRYING_FROUDE: f64 = 0.9;

/// What a purge has to reach.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct PurgeRules {
    /// Velocity in every section.
    pub velocity: Velocity,
    /// Times that the volume of a stage passes the cart.
    pub turnovers: Number,
    /// Least time of each stage.
    pub stage_minimum: Duration,
    /// Least time of all stages together.
    pub whole_minimum: Duration,
}

impl Default for PurgeRules {
    /// 2 ft/s in every section and 15 min at that velocity: ENERGY STAR Homes
    /// Northwest, ground-source heat pump standard (2005), § 1.8; the
    /// velocity also in UFGS-15741N. Two hours for the whole loop and ten
    /// turnovers: common practice, no source.
    fn default() -> Self {
        Self {
            velocity: Velocity::from_si(2.0 * 0.3048),
            turnovers: Number::from_si(10.0),
            stage_minimum: Duration::from_si(900.0),
            whole_minimum: Duration::from_si(7_200.0),
        }
    }
}

/// Bags through which the purge runs, in order: how fine, and until when.
/// Common practice, no source.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct FilterStage {
    /// Fineness, micrometres.
    pub micron: u32,
    /// Whether it stays until no more bubbles show (else: until it runs clean).
    pub until_no_bubbles: bool,
}

/// The two bags of a purge, coarse first.
pub const FILTER_STAGES: [FilterStage; 2] = [
    FilterStage {
        micron: 100,
        until_no_bubbles: true,
    },
    FilterStage {
        micron: 1,
        until_no_bubbles: false,
    },
];

/// What one section needs and gets.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct SectionNeed {
    /// The section.
    pub section: Section,
    /// Flow at which it reaches the transport velocity.
    pub needed: VolumeFlow,
    /// Velocity in it with every circuit open and the cart on its own curve.
    pub all_open: Velocity,
    /// Best velocity in it over the stages of the plan.
    pub reached: Velocity,
    /// Velocity that a large header needs by its Froude number, where that is
    /// more than the transport velocity.
    pub froude: Option<Velocity>,
}

/// One stage: some circuits open, the others shut.
#[derive(Clone, PartialEq, Debug)]
pub struct Stage {
    /// Circuits that are open, by their number.
    pub open: Vec<usize>,
    /// Flow of the cart, on its own curve.
    pub flow: VolumeFlow,
    /// Head of the cart at that flow.
    pub head: Length,
    /// Slowest velocity of an open circuit over the transport velocity.
    pub ratio: Number,
    /// Volume that is moved: open circuits, headers, hoses.
    pub volume: Volume,
    /// Time that the stage takes.
    pub duration: Duration,
}

/// A purge plan.
#[derive(Clone, PartialEq, Debug)]
pub struct PurgePlan {
    /// Every section with its need.
    pub sections: Vec<SectionNeed>,
    /// Flow of the cart at which every section reaches the velocity, all open.
    pub needed_flow: VolumeFlow,
    /// The section that decides it.
    pub controlling: Section,
    /// Head of the cart at that flow: field, hoses and filter.
    pub needed_head: Length,
    /// The cart on its own curve with every circuit open.
    pub all_open: Stage,
    /// Stages to go through; one with all circuits if the cart is large enough.
    pub stages: Vec<Stage>,
    /// No plan has fewer stages than this: exact for up to eight circuits, a bound
    /// for more (see `groups`).
    pub fewest_possible: usize,
    /// Sections that reach the velocity in no stage: the cart is too small for them.
    pub short: Vec<Section>,
}

/// Why there is no plan.
#[derive(Clone, Debug, PartialEq, Error)]
pub enum PurgeError {
    /// No circuit is open.
    #[error("no circuit of the field is open")]
    NoCircuit,
    /// The network has no solution.
    #[error(transparent)]
    Solve(#[from] SolveError),
    /// A value is out of range.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
    /// The cart's pump has no curve.
    #[error(transparent)]
    Pump(#[from] PumpError),
}

/// Plans the purge of a field with a cart.
///
/// Circuits that are shut or wholly blocked in the field stay so. The fewest
/// groups are found by trying every way for up to eight circuits; for more, by
/// filling groups with circuits of like resistance, and
/// [`PurgePlan::fewest_possible`] says how far that can be from the best at most.
///
/// # Errors
/// [`PurgeError`].
pub fn plan(
    field: &LoopField,
    cart: &Cart,
    rules: PurgeRules,
    fluid: FluidState,
    law: FrictionLaw,
) -> Result<PurgePlan, PurgeError> {
    let target = TRANSPORT_VELOCITY.check(rules.velocity)?.si();
    TURNOVERS.check(rules.turnovers)?;
    LEAST_TIME.check(rules.stage_minimum)?;
    LEAST_TIME.check(rules.whole_minimum)?;
    SPEED.check(cart.speed)?;
    let mut rig = Rig::new(field, cart, fluid, law)?;
    let usable = rig.usable();
    if usable.is_empty() {
        return Err(PurgeError::NoCircuit);
    }
    let (needed_flow, controlling) = rig.needed_flow(target)?;
    let needed_head = rig.head_at(needed_flow)?;
    let everything = rig.run(&usable)?;
    let (groups, fewest_possible) = if rig.ratio(&everything, &usable, target) >= 1.0 {
        (vec![usable.clone()], 1)
    } else {
        groups::fewest(&mut rig, &usable, target)?
    };
    let mut runs = Vec::new();
    for group in &groups {
        runs.push(rig.run(group)?);
    }
    let sections: Vec<SectionNeed> = rig
        .sections()
        .iter()
        .map(|&(section, run)| {
            let area = run.pipe.area();
            let speed = |solution| Velocity::from_si(rig.velocity(solution, section).abs());
            let reached = runs
                .iter()
                .map(speed)
                .fold(Velocity::from_si(0.0), |a, b| if b > a { b } else { a });
            let carrying = CARRYING_FROUDE * (STANDARD_GRAVITY * run.pipe.bore().si()).sqrt();
            let large = run.pipe.outside().si() >= LARGE_HEADER;
            SectionNeed {
                section,
                needed: rules.velocity * area,
                all_open: speed(&everything),
                reached,
                froude: (large && carrying > target).then(|| Velocity::from_si(carrying)),
            }
        })
        .collect();
    let stage = |open: &[usize], solution: &super::network::Solution| {
        let flow = rig.cart_flow(solution);
        let volume = rig.volume(open);
        let turnover = rules.turnovers.si() * volume.si() / flow.max(1e-9);
        Stage {
            open: open.to_vec(),
            flow: VolumeFlow::from_si(flow),
            head: rig.cart_head(solution),
            ratio: Number::from_si(rig.ratio(solution, open, target)),
            volume,
            duration: Duration::from_si(turnover.max(rules.stage_minimum.si())),
        }
    };
    let all_open = stage(&usable, &everything);
    let mut stages: Vec<Stage> = groups
        .iter()
        .zip(&runs)
        .map(|(group, run)| stage(group, run))
        .collect();
    let whole: f64 = stages.iter().map(|s| s.duration.si()).sum();
    let stretch = (rules.whole_minimum.si() / whole.max(1.0)).max(1.0);
    for stage in &mut stages {
        stage.duration = stage.duration * stretch;
    }
    let short = sections
        .iter()
        .filter(|s| s.reached.si() < target * (1.0 - 1e-9))
        .map(|s| s.section)
        .collect();
    Ok(PurgePlan {
        sections,
        needed_flow,
        controlling,
        needed_head,
        all_open,
        stages,
        fewest_possible,
        short,
    })
}

#[cfg(test)]
mod tests;
