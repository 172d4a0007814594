use super::*;
use crate::pressure::belief::Unknown;

#[test]
fn the_dead_head_limit_is_stretch_plus_the_air_allowed() {
    // Loop 4 × 500 ft of 3.01 gal/100 ft = 60.2 gal less 2.5 % for the average
    // wall = 58.7 gal plastic; the model adds 15 % for headers and 2 gal for the
    // unit. Short-term modulus 110 to 130 ksi at 73.4 °F, times 1.32 at 50 °F
    // (PPI handbook, table B.1.2, from memory): 158 ksi. Thick wall (Lamé) with k =
    // 11/9, ν 0.40: free (2.8·1.494 + 0.6)/0.494 = 9.69/E, held 2.8·1.694/0.494 =
    // 9.60/E; 9.65·40/158 000 = 0.244 % of 58.7 gal = 0.143 gal, times 0.8 for a
    // trench that holds a fifth = 0.115 gal. Liquid 4.5e-10 /Pa·276 kPa = 0.0124 %
    // of 69.6 gal = 0.009 gal. Air 0.2 % of 69.6 gal = 0.139 gal, squeezed by
    // 1 − 24.7/64.7 = 0.618: 0.086 gal. Together 0.210 gal; a 10 in round tank holds
    // 78.5 in² = 0.340 gal/in: 0.617 in.
    let sheet = computed(&file(), 10.0);
    near(value(&sheet, Q::LoopVolume, Unit::Gallon), 69.6, 0.5);
    near(value(&sheet, Q::DeadHeadAir, Unit::Gallon), 0.139, 0.003);
    near(value(&sheet, Q::DeadHeadLimit, Unit::Inch), 0.617, 0.02);
    let limit = sheet.get(Q::DeadHeadLimit).unwrap();
    assert!(limit.figure.standard > 0.0);
}

#[test]
fn no_pressure_is_advised_above_the_lowest_rating() {
    let mut low = file();
    let rating = Measure::<GaugePressure>::new(30.0, Unit::Psi);
    low.system.heat_pump.as_mut().unwrap().maximum_pressure = Some(rating);
    let mut cart = file();
    cart.visit.means.cart.as_mut().unwrap().maximum_pressure = Some(rating);
    for file in [low, cart] {
        for celsius in [2.0, 12.0, 25.0] {
            let sheet = computed(&file, celsius);
            near(value(&sheet, Q::LowestRating, Unit::Psi), 30.0, 1e-9);
            for kind in [
                Q::DeadHeadPressure,
                Q::StretchPressure,
                Q::LeavePressure,
                Q::LeavePressureLow,
                Q::LeavePressureHigh,
            ] {
                let psi = value(&sheet, kind, Unit::Psi);
                assert!(psi <= 30.0 + 1e-9, "{kind:?} {psi}");
            }
        }
    }
    let unknown = computed(&file(), 12.0);
    near(value(&unknown, Q::LowestRating, Unit::Psi), 100.0, 1e-9);
    assert!(unknown.remarks.contains(&Remark::RatingUnknown));
}

#[test]
fn more_is_left_in_a_cold_loop_than_in_a_warm_one() {
    // Warming lowers the pressure of a loop of plastic: a loop charged cold needs
    // the summer's fall on top.
    let cold = computed(&file(), 3.0);
    let warm = computed(&file(), 22.0);
    let leave = |sheet: &Sheet| value(sheet, Q::LeavePressure, Unit::Psi);
    assert!(
        leave(&cold) > leave(&warm) + 3.0,
        "{} {}",
        leave(&cold),
        leave(&warm)
    );
    for sheet in [&cold, &warm] {
        let (low, high) = (
            value(sheet, Q::LeavePressureLow, Unit::Psi),
            value(sheet, Q::LeavePressureHigh, Unit::Psi),
        );
        assert!(low <= leave(sheet) && leave(sheet) <= high);
        assert!(value(sheet, Q::SeasonLow, Unit::Psi) < value(sheet, Q::SeasonHigh, Unit::Psi));
    }
}

#[test]
fn the_missing_volume_is_the_stretch_between_two_readings() {
    // From 8 psi to the pressure to leave: apparent modulus after half an hour
    // 82 ksi (PPI handbook, table B.1.1) at 73.4 °F, times 1.0 there. Thick wall
    // (Lamé), held, k = 11/9, ν 0.45: 2.9·(1.494 + 0.1)/0.494 = 9.36/E: 10 psi give
    // 9.36·10/82 000 = 0.114 %, times 0.8 for the trench, of 58.7 gal: 0.0536 gal;
    // liquid 4.5e-10 /Pa·69 kPa of 69.6 gal: 0.0022 gal. Together 0.0558 gal.
    let mut low = file();
    read(&mut low, ReadingPoint::StaticPressure, 8.0, Unit::Psi);
    let sheet = computed(&low, 23.0);
    let tens = (value(&sheet, Q::LeavePressure, Unit::Psi) - 8.0) / 10.0;
    assert!(tens > 0.5, "{tens}");
    near(
        value(&sheet, Q::MissingVolume, Unit::Gallon),
        0.0558 * tens,
        0.03 * 0.0558 * tens,
    );
    assert!(sheet.get(Q::ReleaseVolume).is_none());
    let mut high = file();
    read(&mut high, ReadingPoint::StaticPressure, 95.0, Unit::Psi);
    let sheet = computed(&high, 23.0);
    assert!(value(&sheet, Q::ReleaseVolume, Unit::Gallon) > 0.0);
    assert!(sheet.get(Q::MissingVolume).is_none());
}

#[test]
fn the_hold_limit_is_at_least_that_of_the_published_test() {
    let sheet = computed(&file(), 12.0);
    let leave = value(&sheet, Q::LeavePressure, Unit::Psi);
    let limit = value(&sheet, Q::HoldFallLimit, Unit::Psi);
    // ASTM F2164 (from memory): within 5 %. From half an hour to an hour and a
    // half the modulus falls from 82 to about 76 ksi (table B.1.1, log-log): 8 %.
    assert!(limit >= 0.05 * leave - 1e-9, "{limit} {leave}");
    assert!(limit <= 0.2 * leave, "{limit} {leave}");
}

/// A system of which nothing is recorded, at a loop temperature known to 6 K.
fn bare() -> Sheet {
    let file = VisitFile::default();
    let model = LoopModel::of(&file);
    sheet(&Known {
        file: &file,
        model: &model,
        conditions: Conditions {
            loop_temperature: Uncertain::new(Temperature::from_celsius(12.0), 6.0),
            ..conditions(12.0)
        },
        refilled: false,
    })
}

#[test]
fn what_is_unknown_of_the_system_passes_no_leak() {
    let sheet = bare();
    let leave = value(&sheet, Q::LeavePressure, Unit::Psi);
    let limit = value(&sheet, Q::HoldFallLimit, Unit::Psi);
    // As above: the pipe itself explains a fall of 8 %, the standard allows 5 %. How
    // warm the loop is nobody knows here, but it is as warm at the end as at the start.
    assert!(limit >= 0.05 * leave - 1e-9, "{limit} {leave}");
    assert!(limit <= 0.2 * leave, "{limit} {leave}");
}

#[test]
fn no_season_of_an_unknown_system_goes_above_its_rating() {
    let sheet = bare();
    let rating = value(&sheet, Q::LowestRating, Unit::Psi);
    assert!(value(&sheet, Q::SeasonHigh, Unit::Psi) <= rating + 0.1);
    // The upper end of what is left at start-up: common practice, no source.
    assert!(value(&sheet, Q::LeavePressureHigh, Unit::Psi) <= 70.0 + 1e-9);
    let said = sheet.remarks.iter().find_map(|remark| match remark {
        Remark::NoPressureServes { widest, .. } => Some(*widest),
        _ => None,
    });
    assert_eq!(said, Some(Some(Unknown::ChargeTemperature)));
}
