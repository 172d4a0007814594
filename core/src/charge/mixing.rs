//! Whether a charge is mixed: two samples, the turnovers and the time between them.

use super::ChargeError;
use crate::uncertainty::Uncertain;
use crate::units::{
    Bound, Duration, Number, Quantity, Temperature, TemperatureDifference, Volume, VolumeFlow,
};

/// Two samples tell something when taken at least this long apart, s. Common practice, no
/// source: 15 minutes.
pub const LEAST_APART: f64 = 900.0;
/// Turnovers of the loop after the last dose before equal samples mean anything. Judgement:
/// a plug of concentrate passes the sampling port once a turnover until it has spread.
pub const FEWEST_TURNOVERS: f64 = 3.0;

const FLOW: Bound<VolumeFlow> = Bound::si("flow of the cart", 1e-6, 1.0);
const VOLUME: Bound<Volume> = Bound::si("loop volume", 1e-3, 1e3);

/// A sample of the loop.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Sample {
    /// When, since the last dose went in.
    pub at: Duration,
    /// Freeze point measured.
    pub freezing: Uncertain<Temperature>,
}

/// What the samples say.
#[derive(Copy, Clone, PartialEq, Debug)]
pub enum Mixing {
    /// The same within the instrument, after enough turnovers: mixed.
    Mixed,
    /// They differ beyond the instrument: keep circulating.
    NotMixed,
    /// They agree, but it is too soon: come back when the loop has turned over.
    TooSoon,
    /// They were taken too close together to be two samples.
    TooClose,
    /// The instrument is too coarse: a difference that matters would not show.
    InstrumentTooCoarse,
}

/// A judgement with what it stands on.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct MixingJudged {
    /// The verdict.
    pub verdict: Mixing,
    /// Difference of the freeze points with its uncertainty.
    pub difference: Uncertain<TemperatureDifference>,
    /// Turnovers of the loop at the later sample.
    pub turnovers: Number,
    /// Time the cart still needs to run for enough turnovers.
    pub still: Duration,
}

/// Judges two samples of a loop of volume V circulated at Q: turnovers Q t / V, difference
/// against twice its standard uncertainty. A difference of 2 K is what must show.
///
/// # Errors
/// [`ChargeError::OutOfRange`].
pub fn judge(
    volume: Volume,
    flow: VolumeFlow,
    first: &Sample,
    second: &Sample,
) -> Result<MixingJudged, ChargeError> {
    let turnover = VOLUME.check(volume)? / FLOW.check(flow)?;
    let (early, late) = if first.at <= second.at {
        (first, second)
    } else {
        (second, first)
    };
    let difference = late.freezing.value() - early.freezing.value();
    let doubt = late.freezing.standard().hypot(early.freezing.standard());
    let turnovers = late.at / turnover;
    let verdict = if difference.si().abs() > 2.0 * doubt {
        Mixing::NotMixed
    } else if doubt > 1.0 {
        Mixing::InstrumentTooCoarse
    } else if (late.at - early.at).si() < LEAST_APART {
        Mixing::TooClose
    } else if turnovers < FEWEST_TURNOVERS {
        Mixing::TooSoon
    } else {
        Mixing::Mixed
    };
    let still = turnover * (FEWEST_TURNOVERS - turnovers).max(0.0);
    Ok(MixingJudged {
        verdict,
        difference: Uncertain::new(difference, doubt),
        turnovers: Number::from_si(turnovers),
        still,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn judged(minutes: [f64; 2], celsius: [f64; 2], doubt: f64) -> Mixing {
        let sample = |i: usize| Sample {
            at: Duration::from_si(60.0 * minutes[i]),
            freezing: Uncertain::new(Temperature::from_celsius(celsius[i]), doubt),
        };
        let (volume, flow) = (Volume::from_si(0.4), VolumeFlow::from_si(1e-3));
        judge(volume, flow, &sample(0), &sample(1)).unwrap().verdict
    }

    /// 400 L at 1 L/s turn over in 6 min 40 s: three turnovers take 20 min.
    #[test]
    fn agreement_counts_only_after_turnovers_and_time() {
        assert_eq!(judged([20.0, 40.0], [-9.0, -9.2], 0.3), Mixing::Mixed);
        assert_eq!(judged([20.0, 40.0], [-9.0, -11.0], 0.3), Mixing::NotMixed);
        assert_eq!(judged([2.0, 18.0], [-9.0, -9.2], 0.3), Mixing::TooSoon);
        assert_eq!(judged([30.0, 40.0], [-9.0, -9.2], 0.3), Mixing::TooClose);
        assert_eq!(
            judged([20.0, 40.0], [-9.0, -9.2], 1.5),
            Mixing::InstrumentTooCoarse
        );
    }
}
