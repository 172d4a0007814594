//! An invented system as it was designed, before anything went wrong.
//!
//! Sizes are those of residential practice (common practice, no source): 3 gpm
//! a ton, a circuit of small pipe a ton, circulators chosen for the flow.

use crate::invented::Dice;
use returnline_core::fluids::{Fluid, FluidKind};
use returnline_core::hydraulics::component::{FluidState, LossCurve};
use returnline_core::hydraulics::pipe::Pipe;
use returnline_core::model::pipe_of;
use returnline_core::records::{self, NominalInch, Sdr};
use returnline_core::units::{
    Fraction, Length, PressureDifference, Quantity, Temperature, Unit, VolumeFlow,
};

/// What holds the pressure.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Centre {
    /// Sealed, the pipe is the spring.
    Sealed,
    /// Sealed with an expansion tank.
    Tank,
    /// Vented reservoir.
    Vented,
}

/// How the pipe lies.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Ground {
    /// Bores.
    Vertical,
    /// Trenches.
    Horizontal,
    /// A pond.
    Pond,
}

/// A run of pipe.
#[derive(Copy, Clone, Debug)]
pub struct Run {
    /// The pipe.
    pub pipe: Pipe,
    /// Its nominal size, as written in records.
    pub size: &'static str,
    /// Length, m.
    pub length: f64,
    /// Sum of loss coefficients.
    pub fittings: f64,
}

/// The system as designed.
#[derive(Clone, Debug)]
pub struct Plant {
    /// Cooling capacity, tons.
    pub tons: f64,
    /// Heating capacity at 0 °C entering, W.
    pub heating: f64,
    /// Cooling capacity, W.
    pub cooling: f64,
    /// Rated coefficients of performance, heating and cooling.
    pub cop: (f64, f64),
    /// Flow the unit asks for, m³/s.
    pub rated_flow: f64,
    /// Whether the exchanger is of brazed plates, else coaxial.
    pub plate: bool,
    /// Exchanger's drop at rated flow with water, Pa.
    pub exchanger_drop: f64,
    /// Exchanger's curve.
    pub exchanger: LossCurve,
    /// The flow centre.
    pub centre: Centre,
    /// How the pipe lies.
    pub ground: Ground,
    /// One of the circuits, which are alike.
    pub circuit: Run,
    /// How many.
    pub circuits: usize,
    /// Headers there and back.
    pub header: Run,
    /// Indoor pipe.
    pub indoor: Run,
    /// Kind of fluid.
    pub fluid: FluidKind,
    /// Its strength as ordered, by volume.
    pub strength: f64,
    /// How many circulators in series.
    pub circulators: usize,
    /// Shut-off head of all together, Pa.
    pub shut_off: f64,
    /// Flow at which their head is nothing, m³/s.
    pub free_flow: f64,
    /// Electric input of all together at the design point, W.
    pub pump_power: f64,
    /// A strainer stands in the loop.
    pub strainer: bool,
    /// Each circulator has a check valve.
    pub check_valves: bool,
    /// Whether the unit heats at the visit.
    pub heating_now: bool,
    /// Undisturbed ground, °C.
    pub ground_temperature: f64,
    /// Thermal resistance between ground and fluid, K/W.
    pub resistance: f64,
}

/// Exponent of a circulator's curve, H = H₀ (1 - (Q/Q₀)ⁿ). Judgement.
pub const CURVE: f64 = 1.8;

/// The pipe of a nominal size of SDR 11 polyethylene.
fn polyethylene(size: NominalInch) -> Pipe {
    let pipe = records::Pipe::IpsPe {
        size,
        sdr: Sdr::Sdr11,
    };
    pipe_of(&pipe).expect("a size of the standard")
}

/// Litres per second and so on are not used here: gallons per minute to m³/s.
pub fn gpm(flow: f64) -> f64 {
    Unit::GallonPerMinute.to_si(flow)
}

impl Plant {
    /// Invents a system.
    #[must_use]
    pub fn new(dice: &mut Dice) -> Self {
        let tons = [2.0, 3.0, 3.0, 4.0, 4.0, 5.0, 6.0][dice.below(7)];
        let ground = match dice.below(10) {
            0..=5 => Ground::Vertical,
            6..=8 => Ground::Horizontal,
            _ => Ground::Pond,
        };
        let centre = match dice.below(20) {
            0..=11 => Centre::Sealed,
            12..=15 => Centre::Tank,
            _ => Centre::Vented,
        };
        let (fluid, strength) = match dice.below(20) {
            0..=10 => (FluidKind::PropyleneGlycol, dice.between(0.20, 0.27)),
            11..=14 => (FluidKind::Methanol, dice.between(0.15, 0.20)),
            15..=16 => (FluidKind::Ethanol, dice.between(0.18, 0.24)),
            17 => (FluidKind::EthyleneGlycol, dice.between(0.20, 0.25)),
            _ => (FluidKind::Water, 0.0),
        };
        let wide = dice.chance(0.2) && tons >= 4.0;
        let circuits = if wide { tons / 2.0 } else { tons } as usize;
        let per_ton = match ground {
            Ground::Vertical => dice.between(310.0, 400.0),
            Ground::Horizontal => dice.between(450.0, 600.0),
            Ground::Pond => dice.between(280.0, 350.0),
        };
        let (size, name) = if wide {
            (NominalInch::OneAndQuarter, "1-1/4")
        } else {
            (NominalInch::ThreeQuarter, "3/4")
        };
        let feet = Unit::Foot.to_si(1.0);
        let circuit = Run {
            pipe: polyethylene(size),
            size: name,
            length: per_ton * tons / circuits as f64 * feet,
            fittings: 4.0,
        };
        let (size, name) = if tons < 4.5 {
            (NominalInch::OneAndQuarter, "1-1/4")
        } else {
            (NominalInch::Two, "2")
        };
        let header = Run {
            pipe: polyethylene(size),
            size: name,
            length: dice.between(40.0, 160.0) * feet,
            fittings: 6.0,
        };
        let indoor = Run {
            pipe: polyethylene(size),
            size: name,
            length: dice.between(15.0, 40.0) * feet,
            fittings: 8.0,
        };
        let rated_flow = gpm(dice.between(2.6, 3.1) * tons);
        let exchanger_drop = Unit::Psi.to_si(dice.between(2.5, 5.0));
        let water = FluidState::of(Fluid::WATER, Temperature::from_celsius(15.0)).expect("water");
        let points: Vec<_> = [0.6, 1.0, 1.3]
            .iter()
            .map(|share: &f64| {
                (
                    VolumeFlow::from_si(share * rated_flow),
                    PressureDifference::from_si(exchanger_drop * share.powf(1.8)),
                )
            })
            .collect();
        let heating_now = dice.chance(0.55);
        let (winter, summer) = match ground {
            Ground::Vertical => (dice.between(9.5, 14.0), dice.between(10.5, 16.0)),
            Ground::Horizontal => (dice.between(6.0, 9.0), dice.between(15.0, 19.0)),
            Ground::Pond => (dice.between(5.5, 7.5), dice.between(19.0, 22.0)),
        };
        let cooling = Unit::Ton.to_si(tons);
        let heating = cooling * dice.between(0.75, 0.95);
        let cop = (dice.between(3.4, 4.0), dice.between(4.3, 5.2));
        let mut plant = Self {
            tons,
            heating,
            cooling,
            cop,
            rated_flow,
            plate: dice.chance(0.4),
            exchanger_drop,
            exchanger: LossCurve::through(&points, water).expect("a curve"),
            centre,
            ground,
            circuit,
            circuits,
            header,
            indoor,
            fluid,
            strength,
            circulators: if tons >= 4.0 || dice.chance(0.3) {
                2
            } else {
                1
            },
            shut_off: 0.0,
            free_flow: 0.0,
            pump_power: 0.0,
            strainer: dice.chance(0.6),
            check_valves: dice.chance(0.65),
            heating_now,
            ground_temperature: if heating_now { winter } else { summer },
            resistance: 0.0,
        };
        plant.choose_circulators(dice);
        plant.lay_loop(dice);
        plant
    }

    /// The fluid as ordered.
    #[must_use]
    pub fn ordered(&self) -> Fluid {
        solution(self.fluid, self.strength)
    }

    fn choose_circulators(&mut self, dice: &mut Dice) {
        let cold = if self.fluid == FluidKind::Water {
            6.0
        } else {
            0.0
        };
        let state =
            FluidState::of(self.ordered(), Temperature::from_celsius(cold)).expect("liquid");
        let flow = self.rated_flow * dice.between(1.0, 1.15);
        let run = |run: &Run, flow| super::network::pipe_drop(run, flow, state);
        let drop = run(&self.circuit, flow / self.circuits as f64)
            + run(&self.header, flow)
            + run(&self.indoor, flow)
            + self
                .exchanger
                .pressure_drop(VolumeFlow::from_si(flow), state)
                .si()
            + Unit::Psi.to_si(0.5);
        let share = dice.between(0.5, 0.65_f64);
        self.free_flow = flow / share;
        self.shut_off = drop / (1.0 - share.powf(CURVE));
        // A quarter of the input becomes hydraulic power; common practice, no source.
        self.pump_power = flow * drop / dice.between(0.2, 0.3);
    }

    /// Chooses how well the ground takes heat, so that a sound loop runs at
    /// usual entering water.
    fn lay_loop(&mut self, dice: &mut Dice) {
        let (wanted, heat) = if self.heating_now {
            let wanted = match self.fluid {
                FluidKind::Water => dice.between(6.5, 9.0),
                _ => dice.between(0.5, 6.5),
            };
            (wanted, self.heating * (1.0 - 1.0 / self.cop.0) * 1.08)
        } else {
            (
                dice.between(20.5, 30.0),
                self.cooling * (1.0 + 1.0 / self.cop.1),
            )
        };
        let away = (self.ground_temperature - wanted).abs().max(1.5);
        self.ground_temperature = if self.heating_now {
            wanted + away
        } else {
            wanted - away
        };
        self.resistance = away / heat;
    }

    /// Fluid in the plastic pipe, m³.
    #[must_use]
    pub fn volume(&self) -> f64 {
        let of = |run: &Run| run.pipe.area().si() * run.length;
        of(&self.circuit) * self.circuits as f64 + of(&self.header) + of(&self.indoor)
    }
}

/// A solution of so much by volume.
#[must_use]
pub fn solution(kind: FluidKind, by_volume: f64) -> Fluid {
    if kind == FluidKind::Water || by_volume < 0.01 {
        return Fluid::WATER;
    }
    Fluid::from_volume_fraction(kind, Fraction::from_si(by_volume)).expect("a loop fluid")
}

/// Length in feet, for the records.
#[must_use]
pub fn feet(metres: f64) -> f64 {
    Unit::Foot.from_si(Length::from_si(metres).si())
}
