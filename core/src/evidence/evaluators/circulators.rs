//! The circulators of a system as a set on its published curves.

use crate::evidence::call::Call;
use crate::hydraulics::network::PumpState;
use crate::hydraulics::network::ground_loop::{FlowPump, PumpSet};
use crate::hydraulics::pump::PumpCurve;
use crate::records::CirculatorPiping;
use crate::uncertainty::{Uncertain, propagate};
use crate::units::{Density, Length, Number, PressureDifference, Quantity, VolumeFlow};

/// Relative standard uncertainty of the head of a new circulator against its
/// published curve: makers allow about a tenth. Common practice, no source.
const CURVE_SPREAD: f64 = 0.06;
/// The same of a circulator whose speed nobody noted, taken as full. Judgement.
const SPEED_SPREAD: f64 = 0.12;

/// The circulators of a system by their published curves.
pub(super) struct Circulators {
    pumps: Vec<(PumpCurve, Number)>,
    parallel: bool,
    /// Relative standard uncertainty of the head.
    pub spread: f64,
}

impl Circulators {
    /// None unless every circulator has a curve.
    pub fn of(call: &Call<'_>) -> Option<Self> {
        let system = &call.file.system;
        let mut spread = CURVE_SPREAD;
        let mut pumps = Vec::new();
        for circulator in &system.circulators {
            let points: Vec<(VolumeFlow, Length)> = circulator
                .curve
                .iter()
                .map(|point| (point.flow.get(), point.head.get()))
                .collect();
            let speed = match circulator.speed {
                Some(speed) => speed.get().si(),
                None => {
                    spread = CURVE_SPREAD.hypot(SPEED_SPREAD);
                    1.0
                }
            };
            pumps.push((PumpCurve::through(&points).ok()?, Number::from_si(speed)));
        }
        // Two circulators of unknown piping stand in series: common practice, no source.
        let parallel = system.circulator_piping == Some(CirculatorPiping::Parallel);
        (!pumps.is_empty()).then_some(Self {
            pumps,
            parallel,
            spread,
        })
    }

    /// Head of the set at a flow. Side by side each takes an even share.
    pub fn head(&self, flow: VolumeFlow) -> Option<Length> {
        let n = self.pumps.len() as f64;
        let each = if self.parallel { flow / n } else { flow };
        let sum: f64 = self
            .pumps
            .iter()
            .map(|(curve, speed)| curve.head(each, *speed).map(Quantity::si).ok())
            .sum::<Option<f64>>()?;
        let head = if self.parallel { sum / n } else { sum };
        head.is_finite().then_some(Length::from_si(head))
    }

    /// How many they are.
    pub fn count(&self) -> usize {
        self.pumps.len()
    }

    /// As parts of a network, all running.
    pub fn into_set(self) -> PumpSet {
        let pumps = self
            .pumps
            .into_iter()
            .map(|(curve, speed)| FlowPump {
                curve,
                state: PumpState::Running(speed),
                check_valve: None,
            })
            .collect();
        if self.parallel {
            PumpSet::Parallel(pumps)
        } else {
            PumpSet::Series(pumps)
        }
    }

    /// Flow at which the set gives a head, by halving; none above shut-off.
    pub fn flow_at(&self, head: Length) -> Option<VolumeFlow> {
        let (mut low, mut high) = (0.0, 1e-4);
        if self.head(VolumeFlow::ZERO)? < head {
            return None;
        }
        while self.head(VolumeFlow::from_si(high))? > head {
            high *= 2.0;
            if high > 1.0 {
                return None;
            }
        }
        for _ in 0..50 {
            let middle = 0.5 * (low + high);
            if self.head(VolumeFlow::from_si(middle))? > head {
                low = middle;
            } else {
                high = middle;
            }
        }
        Some(VolumeFlow::from_si(0.5 * (low + high)))
    }
}

/// Density of what is pumped, and its relative standard uncertainty.
pub(super) fn density(call: &Call<'_>) -> Option<(Density, f64)> {
    let (temperature, _) = call.loop_temperature();
    let at = call.model.fluid.computable(temperature.value());
    let unknown = if call.model.fluid.kind.is_none() {
        0.02
    } else {
        0.005
    };
    Some((call.fluid().density(at).ok()?, unknown))
}

/// Pressure rise of the set at a flow, with its uncertainty.
pub(super) fn expected_rise(
    call: &Call<'_>,
    set: &Circulators,
    flow: Uncertain<VolumeFlow>,
) -> Option<Uncertain<PressureDifference>> {
    let (density, unknown) = density(call)?;
    let rise = |flow| set.head(flow).map(|head| head.pressure(density)).ok_or(());
    let by_flow = propagate((flow,), |(flow,)| rise(flow)).ok()?.result;
    let own = by_flow.value().si() * set.spread.hypot(unknown);
    Some(Uncertain::new(
        by_flow.value(),
        by_flow.standard().hypot(own),
    ))
}
