//! The band, what narrows it, and the pressure to leave.

use super::PressureError;
use super::balance::{PlasticPart, SealedLoop};
use super::band::Place;
use super::belief::{Belief, Charge, Moment, Reading, Surround, Unknown, Unknowns};
use super::leave::{Demand, Outcome, Today};
use super::modulus::Resin;
use crate::fluids::{Fluid, FluidKind};
use crate::hydraulics::elastic::Axial;
use crate::uncertainty::Uncertain;
use crate::units::{
    AbsolutePressure, Duration, Fraction, GaugePressure, Number, Quantity, Temperature, Unit,
    Volume,
};

const DAY: f64 = 86_400.0;
const PSI: f64 = 6_894.757_293_168;

fn psi(p: f64, doubt: f64) -> Uncertain<GaugePressure> {
    Uncertain::new(GaugePressure::from_si(p * PSI), doubt * PSI)
}
fn warm(fahrenheit: f64, doubt: f64) -> Uncertain<Temperature> {
    Uncertain::new(Temperature::from_fahrenheit(fahrenheit), doubt / 1.8)
}
fn moment(days: f64, fahrenheit: f64) -> Moment {
    Moment {
        elapsed: Duration::from_si(days * DAY),
        temperature: warm(fahrenheit, 2.0),
    }
}
fn belief() -> Belief {
    let system = SealedLoop {
        plastic: vec![PlasticPart {
            volume: Volume::from_si(0.4),
            ratio: Number::from_si(11.0),
        }],
        rigid: Volume::from_si(0.01),
        resin: Resin::Pe4xxx,
        axial: Axial::Held,
        fluid: Fluid::new(FluidKind::PropyleneGlycol, Fraction::from_si(0.22)).unwrap(),
        atmosphere: AbsolutePressure::standard_atmosphere(),
        vessel: None,
    };
    let charge = Charge {
        pressure: psi(55.0, 1.0),
        temperature: warm(45.0, 3.0),
        held: Duration::from_si(1_800.0),
        air: None,
        earlier: None,
    };
    Belief::prior(system, Unknowns::typical(Surround::Trench), charge).unwrap()
}
/// What the gauge shows if this belief's middle were the truth with another modulus.
fn reading(days: f64, fahrenheit: f64, shown: f64) -> Reading {
    Reading {
        moment: moment(days, fahrenheit),
        pressure: psi(shown, 0.5),
    }
}

#[test]
fn the_band_says_what_makes_it_wide_and_the_parts_make_one() {
    let band = belief().band(&moment(180.0, 65.0)).unwrap();
    assert!(band.low < band.median && band.median < band.high);
    assert!(band.width() > 5.0 * PSI);
    let sum: f64 = band.causes.iter().map(|(_, part)| part).sum();
    assert!((sum - 1.0).abs() < 1e-9);
    assert_eq!(band.widest(), Some(band.causes[0].0));
    assert!(band.causes.windows(2).all(|pair| pair[0].1 >= pair[1].1));
    // A band of 20 °F of season on a thermometer of unknown place: not the gauge.
    assert_ne!(band.widest(), Some(Unknown::Model));
}

#[test]
fn summer_reads_lower_than_winter() {
    let summer = belief().band(&moment(150.0, 65.0)).unwrap();
    let winter = belief().band(&moment(150.0, 38.0)).unwrap();
    assert!(summer.median < winter.median);
    assert!(summer.high < winter.median);
}

#[test]
fn earlier_readings_narrow_the_band_and_move_it_their_way() {
    let prior = belief();
    let at = moment(300.0, 65.0);
    let before = prior.band(&at).unwrap();
    // This loop reads higher than the middle by some psi each time.
    let readings: Vec<Reading> = [(30.0, 48.0), (120.0, 62.0), (200.0, 55.0)]
        .iter()
        .map(|&(days, f)| {
            let middle = prior.expected(&moment(days, f)).unwrap().si() / PSI;
            reading(days, f, middle + 4.0)
        })
        .collect();
    let after = prior.after(&readings).unwrap();
    let narrowed = after.band(&at).unwrap();
    assert!(narrowed.width() < 0.7 * before.width());
    assert!(narrowed.median > before.median);
    // One by one narrows every time.
    let mut last = before.width();
    for count in 1..=readings.len() {
        let now = prior.after(&readings[..count]).unwrap().band(&at).unwrap();
        assert!(now.width() < last);
        last = now.width();
    }
    // Nothing read, nothing learnt.
    let same = prior.after(&[]).unwrap().band(&at).unwrap();
    assert!((same.width() / before.width() - 1.0).abs() < 1e-9);
}

#[test]
fn what_was_learnt_reduces_the_doubt_of_a_property() {
    let prior = belief();
    let readings: Vec<Reading> = [(60.0, 65.0), (150.0, 38.0), (240.0, 65.0)]
        .iter()
        .map(|&(days, f)| {
            let middle = prior.expected(&moment(days, f)).unwrap().si() / PSI;
            reading(days, f, middle)
        })
        .collect();
    let (_, doubts) = prior.after(&readings).unwrap().properties();
    assert!(doubts.iter().all(|doubt| *doubt <= 1.0 + 1e-9));
    assert!(doubts.iter().any(|doubt| *doubt < 0.9), "{doubts:?}");
}

#[test]
fn a_reading_below_the_band_is_missing_fluid() {
    let belief = belief();
    let band = belief.band(&moment(180.0, 55.0)).unwrap();
    let low = band.low.si() / PSI - 10.0;
    let found = belief.assess(&reading(180.0, 55.0, low)).unwrap();
    assert_eq!(found.place, Place::Below);
    assert!(found.probability_missing > 0.95);
    let gallons = Unit::Gallon.from_si(found.missing.value().si());
    assert!((0.05..0.6).contains(&gallons), "{gallons}");
    let middle = band.median.si() / PSI;
    let right = belief.assess(&reading(180.0, 55.0, middle)).unwrap();
    assert_eq!(right.place, Place::Inside);
    assert!((right.probability_missing - 0.5).abs() < 0.1);
    let high = belief.assess(&reading(180.0, 55.0, band.high.si() / PSI + 5.0));
    assert_eq!(high.unwrap().place, Place::Above);
}

fn today() -> Today {
    Today {
        temperature: warm(50.0, 2.0),
        held: Duration::from_si(1_800.0),
        gauge: 0.5 * PSI,
        earlier: None,
    }
}
fn demand(least: f64, most: f64) -> Demand {
    Demand {
        least: GaugePressure::from_si(least * PSI),
        most: GaugePressure::from_si(most * PSI),
        limit_today: GaugePressure::from_si(100.0 * PSI),
        moments: vec![moment(60.0, 65.0), moment(240.0, 35.0), moment(425.0, 65.0)],
    }
}

#[test]
fn the_pressure_left_keeps_both_seasons_inside() {
    let wanted = demand(5.0, 100.0);
    let left = belief().leave(&wanted, &today()).unwrap();
    let Outcome::Possible { from, to } = left.outcome else {
        panic!("{left:?}");
    };
    assert!(from < left.pressure && left.pressure < to);
    for band in &left.bands {
        assert!(band.low >= wanted.least && band.high <= wanted.most);
    }
}

#[test]
fn too_narrow_a_demand_is_said_to_be_impossible() {
    let left = belief().leave(&demand(30.0, 35.0), &today()).unwrap();
    let Outcome::Impossible { short, over } = left.outcome else {
        panic!("{left:?}");
    };
    // The compromise is balanced between the two ends.
    assert!((short.si() - over.si()).abs() < 0.2 * PSI);
    assert!(short.si() > 0.0);
    let mut low = demand(40.0, 200.0);
    low.limit_today = GaugePressure::from_si(20.0 * PSI);
    let limited = belief().leave(&low, &today()).unwrap();
    assert!(matches!(limited.outcome, Outcome::LimitedToday { .. }));
    assert!(limited.pressure <= low.limit_today);
    let wrong = belief().leave(&demand(30.0, 20.0), &today());
    assert_eq!(wrong.err(), Some(PressureError::EmptyBand));
}
