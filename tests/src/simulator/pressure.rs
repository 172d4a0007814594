//! The gauge at rest, by the balance of a sealed loop.

use super::plant::{Centre, Ground, Plant};
use super::state::{Habits, State};
use crate::invented::Dice;
use returnline_core::fluids::FluidKind;
use returnline_core::hydraulics::elastic::Axial;
use returnline_core::pressure::balance::{
    ChargeState, PlasticPart, Properties, SealedLoop, balance,
};
use returnline_core::pressure::gas::Vessel;
use returnline_core::pressure::modulus::Resin;
use returnline_core::units::{
    AbsolutePressure, Duration, Fraction, GaugePressure, Number, Quantity, Temperature,
    ThermalExpansion, Unit, Volume,
};

/// Size and pre-charge of the tanks that are fitted, gal and psi.
pub const TANK: (f64, f64) = (4.5, 18.0);
/// Minutes under pressure of a pipe that was held, and of one that was not.
const HELD: (f64, f64) = (25.0, 4.0);

/// What nobody measures about pipe and surround.
#[must_use]
pub fn properties(plant: &Plant, dice: &mut Dice) -> Properties {
    let held = match plant.ground {
        Ground::Pond => 0.0,
        Ground::Horizontal => dice.between(0.05, 0.4),
        Ground::Vertical => dice.between(0.1, 0.6),
    };
    Properties {
        modulus_scale: 1.0 + 0.12 * dice.normal(),
        expansion: ThermalExpansion::from_si(1.55e-4 + 0.12e-4 * dice.normal()),
        restraint: Fraction::from_si(held),
        fluid_scale: 1.0 + 0.06 * dice.normal(),
    }
}

/// Gauge of a tight loop so many days after its charge at a loop temperature, psi.
#[must_use]
pub fn tight(
    plant: &Plant,
    state: &State,
    habits: &Habits,
    properties: &Properties,
    days: f64,
    celsius: f64,
) -> Option<f64> {
    let indoors = Temperature::from_celsius(18.0);
    let vessel = (plant.centre == Centre::Tank && !state.waterlogged).then(|| Vessel {
        volume: Volume::from_si(Unit::Gallon.to_si(TANK.0)),
        precharge: GaugePressure::from_si(Unit::Psi.to_si((TANK.1 + state.pre_charge).max(1.0))),
        set_at: indoors,
        gas: indoors,
    });
    let system = SealedLoop {
        plastic: vec![PlasticPart {
            volume: Volume::from_si(plant.volume()),
            ratio: Number::from_si(11.0),
        }],
        rigid: Volume::from_si(0.004),
        resin: Resin::Pe4xxx,
        axial: Axial::Held,
        fluid: state.fluid,
        atmosphere: AbsolutePressure::standard_atmosphere(),
        vessel,
    };
    let lowest = if state.fluid.kind() == FluidKind::Water {
        0.5
    } else {
        -8.0
    };
    let held = if habits.relaxed { HELD.0 } else { HELD.1 };
    let charge = ChargeState {
        pressure: GaugePressure::from_si(Unit::Psi.to_si(habits.charge)),
        temperature: Temperature::from_celsius(habits.charge_temperature.max(lowest)),
        held: Duration::from_si(60.0 * held),
        air: None,
        earlier: None,
    };
    let elapsed = Duration::from_si(86_400.0 * days.max(0.2));
    let now = Temperature::from_celsius(celsius.max(lowest));
    let balance = balance(&system, properties, &charge, elapsed, now).ok()?;
    Some(Unit::Psi.from_si(balance.pressure().si()))
}

/// The charge that leads to a pressure within a range today, by trying charges
/// of a range: a crew that charges sensibly, or one that does not.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Wanted {
    /// Charges tried, psi.
    pub charge: (f64, f64),
    /// Pressures of today that are accepted, psi.
    pub today: (f64, f64),
    /// Least fall since the charge, psi.
    pub fallen: f64,
}

impl Wanted {
    /// What a loop in order is charged to and shows.
    #[must_use]
    pub fn sound(plant: &Plant) -> Self {
        if plant.centre == Centre::Tank {
            Self {
                charge: (20.0, 34.0),
                today: (13.0, 42.0),
                fallen: -90.0,
            }
        } else {
            Self {
                charge: (40.0, 68.0),
                today: (17.0, 66.0),
                fallen: -90.0,
            }
        }
    }
}

/// Pressure of today, with the charge noted in the habits. None if no charge does it.
#[allow(clippy::too_many_arguments)] // each is a part of the plant of its own
pub fn settle(
    plant: &Plant,
    state: &State,
    habits: &mut Habits,
    properties: &Properties,
    days: f64,
    celsius: f64,
    wanted: &Wanted,
    dice: &mut Dice,
) -> Option<f64> {
    (0..30).find_map(|_| {
        habits.charge = dice.between(wanted.charge.0, wanted.charge.1);
        let today = tight(plant, state, habits, properties, days, celsius)?;
        let inside = (wanted.today.0..=wanted.today.1).contains(&today);
        (inside && habits.charge - today >= wanted.fallen).then_some(today)
    })
}
