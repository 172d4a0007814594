//! What the system is really like on the day of the visit, how it was
//! commissioned, and how old it is.

use super::plant::{Centre, Plant, solution};
use crate::invented::Dice;
use chrono::{Datelike, Duration, NaiveDate};
use returnline_core::fluids::Fluid;

/// The true condition of the system.
#[derive(Clone, Debug)]
pub struct State {
    /// Air in the fluid, from none (0) to as much as a loop can hold and still pump (1).
    pub air: f64,
    /// Air held in the circulators, 0 to 1.
    pub pump_air: f64,
    /// Chips, sand and flakes in the fluid, 0 to 1.
    pub solids: f64,
    /// Drop of the strainer over that of a clean one.
    pub strainer_block: f64,
    /// Drop of the exchanger over that of a clean one.
    pub exchanger_block: f64,
    /// Loss of a half-shut valve, in drops of the exchanger at rated flow.
    pub valve_loss: f64,
    /// Share of the bore that is open, circuit by circuit.
    pub circuit_open: Vec<f64>,
    /// Length of each circuit over the design; those of an uneven field differ.
    pub circuit_length: Vec<f64>,
    /// Share of the flow that goes past the ground.
    pub bypass: f64,
    /// Head of the circulators over that of their curve.
    pub pump_head: f64,
    /// Speed they run at.
    pub pump_speed: f64,
    /// Electric input over that of a sound circulator at that flow.
    pub pump_input: f64,
    /// Friction in the bearings, 0 to 1.
    pub bearing: f64,
    /// The fluid that is really in it.
    pub fluid: Fluid,
    /// Difference of the strength of two samples, by volume.
    pub unmixed: f64,
    /// pH of the fluid.
    pub ph: f64,
    /// How well the ground takes heat, over the design.
    pub ground: f64,
    /// Thermal resistance of scale and slime over that of the clean exchanger.
    pub fouling: f64,
    /// Iron in the fluid, mg/L.
    pub iron: f64,
    /// Hardness and alkalinity of the fill water, mg/L as CaCO₃, and its pH.
    pub hardness: f64,
    /// Alkalinity, mg/L as CaCO₃.
    pub alkalinity: f64,
    /// pH of the fill water.
    pub water_ph: f64,
    /// Chloride, mg/L.
    pub chloride: f64,
    /// Slime, 0 to 1.
    pub slime: f64,
    /// Static pressure, psi; of a vented centre nothing.
    pub pressure: f64,
    /// What it falls by each day for want of tightness, psi.
    pub loss: f64,
    /// Fluid lost and added again since start-up, gal.
    pub added: f64,
    /// Level of the reservoir against the mark, in.
    pub level: f64,
    /// Pre-charge of the tank less the one that was set, psi.
    pub pre_charge: f64,
    /// The tank's air side is full of fluid.
    pub waterlogged: bool,
    /// Refrigerant charge over the right one.
    pub charge: f64,
    /// Expansion device: starving (-1) to flooding (1).
    pub metering: f64,
    /// Compressor or reversing valve, over a sound one.
    pub compressor: f64,
    /// Air over the coil, over the right one.
    pub airflow: f64,
}

/// How it was commissioned. Every one of these happened; whether anybody wrote
/// it down is another matter.
#[derive(Clone, Debug)]
pub struct Habits {
    /// Velocity reached in the smallest pipe, ft/s; none: never flushed.
    pub velocity: Option<f64>,
    /// Hours flushed.
    pub hours: f64,
    /// Power of the cart, hp.
    pub cart: f64,
    /// Each circuit by itself.
    pub singly: bool,
    /// The unit was valved off.
    pub isolated: bool,
    /// A bag caught the debris.
    pub filtered: bool,
    /// Circulators were bled.
    pub bled: bool,
    /// The water was tested.
    pub tested: bool,
    /// From a well rather than the mains.
    pub well: bool,
    /// The pipe was held under pressure before the last charge.
    pub relaxed: bool,
    /// Pressure left, psi.
    pub charge: f64,
    /// Fluid temperature then, °C.
    pub charge_temperature: f64,
    /// Hours mixed.
    pub mixed: f64,
    /// The freeze point was checked.
    pub checked: bool,
}

/// When things happened.
#[derive(Copy, Clone, Debug)]
pub struct Dates {
    /// First start.
    pub start: NaiveDate,
    /// The visit.
    pub visit: NaiveDate,
}

impl Dates {
    /// Days in service.
    #[must_use]
    pub fn age(&self) -> f64 {
        (self.visit - self.start).num_days() as f64
    }
}

/// How old a system is when it calls.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Age {
    /// Weeks.
    New,
    /// Its first year.
    Young,
    /// Anything.
    Any,
    /// Years.
    Old,
}

impl State {
    /// In good order.
    #[must_use]
    pub fn sound(plant: &Plant, well: bool, dice: &mut Dice) -> Self {
        let alcohol = matches!(
            plant.fluid,
            returnline_core::fluids::FluidKind::Methanol
                | returnline_core::fluids::FluidKind::Ethanol
        );
        Self {
            air: 0.0,
            pump_air: 0.0,
            solids: if dice.chance(0.1) {
                dice.between(0.0, 0.2)
            } else {
                0.0
            },
            strainer_block: dice.between(0.7, 1.6),
            exchanger_block: dice.between(0.92, 1.1),
            valve_loss: 0.0,
            circuit_open: vec![1.0; plant.circuits],
            circuit_length: vec![1.0; plant.circuits],
            bypass: 0.0,
            pump_head: dice.between(0.94, 1.04),
            pump_speed: 1.0,
            pump_input: dice.between(0.9, 1.1),
            bearing: 0.0,
            fluid: solution(
                plant.fluid,
                plant.strength
                    + if plant.strength > 0.0 {
                        dice.between(-0.01, 0.02)
                    } else {
                        0.0
                    },
            ),
            unmixed: 0.0,
            ph: if alcohol {
                dice.between(7.3, 8.4)
            } else {
                dice.between(7.9, 9.4)
            },
            ground: dice.between(0.9, 1.1),
            fouling: dice.between(0.9, 1.15),
            iron: if well {
                dice.between(0.02, 0.35)
            } else {
                dice.between(0.01, 0.15)
            },
            hardness: if well {
                dice.between(60.0, 260.0)
            } else {
                dice.between(40.0, 150.0)
            },
            alkalinity: if well {
                dice.between(60.0, 220.0)
            } else {
                dice.between(40.0, 120.0)
            },
            water_ph: dice.between(6.9, 7.8),
            chloride: dice.between(5.0, 60.0),
            slime: 0.0,
            pressure: 0.0,
            loss: 0.0,
            added: 0.0,
            level: if plant.centre == Centre::Vented {
                dice.between(-2.0, 2.0)
            } else {
                0.0
            },
            pre_charge: dice.between(-1.5, 1.0),
            waterlogged: false,
            charge: dice.between(0.96, 1.03),
            metering: 0.0,
            compressor: dice.between(0.95, 1.03),
            airflow: dice.between(0.9, 1.08),
        }
    }
}

impl Habits {
    /// As trades work: mostly well.
    #[must_use]
    pub fn usual(dice: &mut Dice) -> Self {
        Self {
            velocity: (!dice.chance(0.03)).then(|| {
                if dice.chance(0.8) {
                    dice.between(2.0, 3.2)
                } else {
                    dice.between(1.3, 2.0)
                }
            }),
            hours: if dice.chance(0.75) {
                dice.between(2.0, 4.0)
            } else {
                dice.between(0.7, 2.0)
            },
            cart: [1.5, 1.5, 2.0, 2.0, 1.0][dice.below(5)],
            singly: dice.chance(0.25),
            isolated: dice.chance(0.85),
            filtered: dice.chance(0.75),
            bled: dice.chance(0.85),
            tested: dice.chance(0.5),
            well: dice.chance(0.3),
            relaxed: dice.chance(0.75),
            charge: dice.between(45.0, 65.0),
            charge_temperature: 0.0,
            mixed: if dice.chance(0.75) {
                dice.between(3.0, 5.0)
            } else {
                dice.between(1.0, 3.0)
            },
            checked: dice.chance(0.7),
        }
    }
}

/// The days of a call.
#[must_use]
pub fn dates(plant: &Plant, age: Age, dice: &mut Dice) -> Dates {
    let year = 2025;
    let months: &[u32] = if plant.heating_now {
        &[11, 12, 1, 2, 3]
    } else {
        &[6, 7, 8, 9]
    };
    let month = months[dice.below(months.len())];
    let day = 1 + dice.below(28) as u32;
    let visit = NaiveDate::from_ymd_opt(year, month, day).expect("a day");
    let any = |dice: &mut Dice| match dice.below(20) {
        0..=3 => dice.between(5.0, 31.0),
        4..=10 => dice.between(31.0, 365.0),
        11..=15 => dice.between(365.0, 1_800.0),
        _ => dice.between(1_800.0, 4_000.0),
    };
    let days = match age {
        Age::New => dice.between(4.0, 60.0),
        Age::Young => dice.between(20.0, 500.0),
        Age::Old => dice.between(700.0, 4_200.0),
        Age::Any => any(dice),
    };
    Dates {
        start: visit - Duration::days(days as i64),
        visit,
    }
}

/// Temperature of the fill at the first start: cool water and ground in winter,
/// warmer in summer. Judgement.
#[must_use]
pub fn fill_temperature(start: NaiveDate, dice: &mut Dice) -> f64 {
    let from_july = f64::from(start.ordinal()) - 205.0;
    let yearly = (from_july / 365.0 * std::f64::consts::TAU).cos();
    12.0 + 6.0 * yearly + dice.between(-2.0, 2.0)
}
