//! What lies between two nodes, and its loss of pressure.

use crate::hydraulics::component::{FluidState, LOSS_COEFFICIENT, LossCurve};
use crate::hydraulics::friction::FrictionLaw;
use crate::hydraulics::pipe::LENGTH;
use crate::hydraulics::pipe::Pipe;
use crate::hydraulics::pump::{PumpCurve, SPEED};
use crate::units::{
    Length, Number, OutOfRange, PressureDifference, Quantity, STANDARD_GRAVITY, VolumeFlow,
};
use std::f64::consts::PI;

/// Resistance against the direction of a check valve, Pa/(m³/s): a hundred
/// thousand pascal push a ten-thousandth of a millilitre a second.
const CHECK_RESISTANCE: f64 = 1e15;

/// How a pump stands in the loop.
#[derive(Copy, Clone, PartialEq, Debug)]
pub enum PumpState {
    /// It runs, at a speed relative to its curve.
    Running(Number),
    /// It stands still and is in the way.
    Dead,
    /// It runs against the direction of its link.
    TurnedRound(Number),
}

/// What lies between two nodes.
#[derive(Clone, PartialEq, Debug)]
pub enum Link {
    /// A length of pipe, with the loss coefficients of its fittings summed.
    Pipe {
        /// The pipe.
        pipe: Pipe,
        /// Its length.
        length: Length,
        /// Σ K of the fittings in it.
        fittings: Number,
    },
    /// A part with its own curve. `one_way`: with a check valve in it.
    Part {
        /// Its curve.
        curve: LossCurve,
        /// Whether flow can only go from the first node to the second.
        one_way: bool,
    },
    /// A pump.
    Pump {
        /// Its curve.
        curve: PumpCurve,
        /// Whether it runs, and how.
        state: PumpState,
    },
}

/// A link prepared for one fluid: loss of pressure (Pa) and its slope.
#[derive(Clone, Debug)]
pub(super) enum Law<'a> {
    Pipe {
        law: FrictionLaw,
        /// Re per flow.
        reynolds: f64,
        roughness: f64,
        /// Δp = (friction f + minor) Q².
        friction: f64,
        minor: f64,
    },
    Power {
        coefficient: f64,
        exponent: f64,
        one_way: bool,
    },
    Pump {
        curve: &'a PumpCurve,
        speed: f64,
        /// +1 with the link, -1 against it.
        direction: f64,
        /// ρg.
        weight: f64,
    },
}

impl Link {
    /// Loss of pressure from the first node to the second at a flow.
    pub fn loss(
        &self,
        flow: VolumeFlow,
        fluid: FluidState,
        law: FrictionLaw,
    ) -> PressureDifference {
        PressureDifference::from_si(self.law(fluid, law).loss(flow.si()).0)
    }
    /// Checks what a person can get wrong: length, fittings, speed.
    pub(super) fn check(&self) -> Result<(), OutOfRange> {
        match self {
            Self::Pipe {
                length, fittings, ..
            } => {
                LENGTH.check(*length)?;
                LOSS_COEFFICIENT.check(*fittings)?;
            }
            Self::Pump {
                state: PumpState::Running(speed) | PumpState::TurnedRound(speed),
                ..
            } => {
                SPEED.check(*speed)?;
            }
            Self::Pump { .. } | Self::Part { .. } => {}
        }
        Ok(())
    }
    pub(super) fn law(&self, fluid: FluidState, friction: FrictionLaw) -> Law<'_> {
        let density = fluid.density.si();
        let weight = density * STANDARD_GRAVITY;
        match self {
            Self::Pipe {
                pipe,
                length,
                fittings,
            } => {
                let (d, area) = (pipe.bore().si(), pipe.area().si());
                let dynamic = 0.5 * density / (area * area);
                Law::Pipe {
                    law: friction,
                    reynolds: 4.0 * density / (PI * d * fluid.viscosity.si()),
                    roughness: pipe.roughness().si() / d,
                    friction: dynamic * length.si() / d,
                    minor: dynamic * fittings.si(),
                }
            }
            Self::Part { curve, one_way } => Law::Power {
                coefficient: curve.coefficient(fluid),
                exponent: curve.exponent().si(),
                one_way: *one_way,
            },
            Self::Pump { curve, state } => match state {
                PumpState::Dead => Law::Power {
                    coefficient: weight * curve.idle_loss(),
                    exponent: 2.0,
                    one_way: false,
                },
                PumpState::Running(speed) | PumpState::TurnedRound(speed) => Law::Pump {
                    curve,
                    speed: speed.si(),
                    direction: match state {
                        PumpState::TurnedRound(_) => -1.0,
                        _ => 1.0,
                    },
                    weight,
                },
            },
        }
    }
    /// A flow to begin with: half a metre a second in a pipe.
    pub(super) fn first_guess(&self) -> f64 {
        match self {
            Self::Pipe { pipe, .. } => 0.5 * pipe.area().si(),
            Self::Part { .. } => 3e-4,
            Self::Pump { curve, .. } => 0.5 * curve.free_flow().si(),
        }
    }
}

impl Law<'_> {
    /// Loss of pressure from the first node to the second at a flow, and its
    /// slope; the loss only rises with flow.
    pub fn loss(&self, flow: f64) -> (f64, f64) {
        match self {
            Self::Pipe {
                law,
                reynolds,
                roughness,
                friction,
                minor,
            } => {
                let size = flow.abs();
                let re = reynolds * size;
                if re < 1.0 {
                    // Laminar without the division by zero: f Q² = 64 Q/Re′.
                    let linear = 64.0 * friction / reynolds;
                    return (
                        linear * flow + minor * size * flow,
                        linear + 2.0 * minor * size,
                    );
                }
                let (f, slope) = law.factor(re, *roughness);
                let total = friction * f + minor;
                (
                    total * size * flow,
                    2.0 * total * size + friction * slope * re * size,
                )
            }
            Self::Power { one_way: true, .. } if flow < 0.0 => {
                (CHECK_RESISTANCE * flow, CHECK_RESISTANCE)
            }
            Self::Power {
                coefficient,
                exponent,
                ..
            } => {
                let slope = coefficient * flow.abs().powf(exponent - 1.0);
                (slope * flow, exponent * slope)
            }
            Self::Pump {
                curve,
                speed,
                direction,
                weight,
            } => {
                let (head, slope) = curve.at_speed(flow * direction, *speed);
                (-direction * weight * head, -weight * slope)
            }
        }
    }
}
