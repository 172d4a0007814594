use super::*;

fn log(readings: &[(f64, f64)]) -> Vec<HoldReading> {
    readings
        .iter()
        .map(|(minutes, psi)| HoldReading {
            at: Duration::from_si(minutes * MINUTE),
            pressure: Uncertain::new(GaugePressure::from_si(psi * PSI), 0.3 * PSI),
        })
        .collect()
}
fn astm(hours: f64, watch: &[(f64, f64)]) -> HoldVerdict {
    let test = AstmTest {
        design: GaugePressure::from_si(80.0 * PSI),
        expansion: Duration::from_si(hours * HOUR),
        test: GaugePressure::from_si(100.0 * PSI),
        watch: log(watch),
    };
    astm_f2164(&test).unwrap().verdict
}

#[test]
fn the_hour_is_passed_within_five_per_cent() {
    assert_eq!(astm(4.0, &[(0.0, 90.0), (60.0, 85.6)]), HoldVerdict::Pass);
    let fell = HoldVerdict::Fail(FailReason::PressureFell);
    assert_eq!(astm(4.0, &[(0.0, 90.0), (60.0, 85.4)]), fell);
    assert_eq!(astm(4.0, &[(0.0, 90.0), (60.0, 91.0)]), HoldVerdict::Pass);
}

#[test]
fn a_test_not_done_by_the_method_says_nothing() {
    let void = HoldVerdict::Void;
    assert_eq!(
        astm(3.0, &[(0.0, 90.0), (60.0, 90.0)]),
        void(VoidReason::TooShort)
    );
    assert_eq!(
        astm(4.0, &[(0.0, 90.0), (40.0, 90.0)]),
        void(VoidReason::TooShort)
    );
    assert_eq!(
        astm(7.5, &[(0.0, 90.0), (60.0, 90.0)]),
        void(VoidReason::TooLong)
    );
    assert_eq!(
        astm(4.0, &[(0.0, 99.0), (60.0, 99.0)]),
        void(VoidReason::NotReduced)
    );
}

/// By hand: 1.2 · 0.4 m³ · 80 kPa · (4.6e-10 + 9/800e6) 1/Pa = 0.4497 L.
#[test]
fn released_water_shows_air() {
    let mut test = EnTest {
        volume: Volume::from_si(0.4),
        squeeze: Compressibility::from_si(4.6e-10),
        ratio: Number::from_si(11.0),
        modulus: Modulus::from_si(800e6),
        relaxed: Duration::from_si(HOUR),
        isolated: Duration::from_si(HOUR),
        isolated_from_to: (GaugePressure::from_si(7e5), GaugePressure::from_si(6.2e5)),
        lowered_by: Fraction::from_si(0.13),
        lowered: PressureDifference::from_si(8e4),
        released: Volume::from_si(4.4e-4),
        watch: log(&[(0.0, 78.0), (30.0, 78.5)]),
    };
    assert!((released_limit(&test).si() - 4.496_64e-4).abs() < 1e-8);
    assert_eq!(en_805(&test).unwrap().verdict, HoldVerdict::Pass);
    test.released = Volume::from_si(4.6e-4);
    let air = HoldVerdict::Fail(FailReason::TooMuchReleased);
    assert_eq!(en_805(&test).unwrap().verdict, air);
    test.isolated_from_to.1 = GaugePressure::from_si(4.8e5);
    let fell = HoldVerdict::Void(VoidReason::FellTooFar);
    assert_eq!(en_805(&test).unwrap().verdict, fell);
}

#[test]
fn the_state_rule_asks_for_seventy_five() {
    let at = |readings: &[(f64, f64)]| {
        let operating = GaugePressure::from_si(40.0 * PSI);
        minnesota(operating, &log(readings)).unwrap().verdict
    };
    assert_eq!(at(&[(0.0, 76.0), (15.0, 75.8)]), HoldVerdict::Pass);
    assert_eq!(
        at(&[(0.0, 60.0), (15.0, 60.0)]),
        HoldVerdict::Void(VoidReason::TooLow)
    );
    let fell = HoldVerdict::Fail(FailReason::PressureFell);
    assert_eq!(at(&[(0.0, 76.0), (15.0, 73.0)]), fell);
}

#[test]
fn order_and_number_are_checked() {
    let one = log(&[(0.0, 80.0)]);
    let back = log(&[(10.0, 80.0), (0.0, 80.0)]);
    let operating = GaugePressure::from_si(0.0);
    assert!(minnesota(operating, &one).is_err());
    assert_eq!(minnesota(operating, &back), Err(PressureError::NotInOrder));
}
