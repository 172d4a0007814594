use super::*;

#[test]
fn the_freeze_point_lies_ten_degrees_below_the_lowest_leaving_water() {
    // Usual lowest entering −1 °C. Heat of extraction 4 ton = 14.07 kW·(1 − 1/3.6)
    // = 10.16 kW; 12 gpm = 0.757 L/s of 25 % glycol at 4 °C (1028 kg/m³,
    // 3.85 kJ/kg·K, Melinder): 10.16/(0.757·1.028·3.85) = 3.39 K. So −4.4 °C leave,
    // 24.1 °F, and the fluid should freeze at 14.1 °F.
    let sheet = computed(&file(), 5.0);
    near(
        value(&sheet, Q::LowestLeavingWater, Unit::Fahrenheit),
        24.1,
        0.3,
    );
    near(
        value(&sheet, Q::TargetFreezePoint, Unit::Fahrenheit),
        14.1,
        0.3,
    );
    let mut asked = file();
    asked.visit.means.wanted_freeze_point =
        Some(Measure::<Temperature>::new(18.0, Unit::Fahrenheit));
    let asked = computed(&asked, 5.0);
    near(
        value(&asked, Q::TargetFreezePoint, Unit::Fahrenheit),
        18.0,
        1e-9,
    );
}

#[test]
fn the_dose_follows_lange_s_table() {
    // Lange's Handbook, 15th ed., table 5.13: 10 vol % freezes at 28 °F, 25 vol %
    // at 16 °F. To get from 10 to 25 % in 69.6 gal with pure glycol, replace
    // (25 − 10)/(100 − 10) = 1/6 of the volume: 11.6 gal.
    let mut weak = file();
    read(
        &mut weak,
        ReadingPoint::FreezePointSupply,
        28.0,
        Unit::Fahrenheit,
    );
    weak.visit.means.wanted_freeze_point =
        Some(Measure::<Temperature>::new(16.0, Unit::Fahrenheit));
    let sheet = computed(&weak, 5.0);
    near(value(&sheet, Q::AntifreezeDose, Unit::Gallon), 11.6, 1.2);
    near(value(&sheet, Q::DrainVolume, Unit::Gallon), 11.6, 1.2);
    assert!(sheet.get(Q::DilutionVolume).is_none());
    let add = sheet.get(Q::AntifreezeDose).unwrap();
    assert!(add.figure.standard > 0.03 * add.figure.si);
}

#[test]
fn a_strong_loop_is_thinned_and_a_refilled_one_dosed_from_water() {
    // Melinder's table (from memory): propylene glycol 30 % by mass freezes at
    // −12.8 °C, 20 % at −7.2 °C. To thin 30 to 20 %, replace a third of the mass:
    // the 69.6 gal end with 0.2·1.017·69.6 of glycol, which is in 0.2·1.017·69.6/
    // (0.3·1.024) = 46.1 gal of the old: drain 23.5 gal (Lange: SG 1.017, 1.024).
    let mut strong = file();
    let freeze = ReadingPoint::FreezePointSupply;
    read(&mut strong, freeze, -12.8, Unit::Celsius);
    strong.visit.means.wanted_freeze_point = Some(Measure::<Temperature>::new(-7.2, Unit::Celsius));
    let sheet1 = computed(&strong, 5.0);
    near(value(&sheet1, Q::DilutionVolume, Unit::Gallon), 23.5, 1.0);
    assert!(sheet1.get(Q::AntifreezeDose).is_none());
    // From water to 20 % by mass: 0.20·1.017·69.6 gal/1.036 (pure glycol, Lange)
    // = 13.7 gal.
    let model = LoopModel::of(&strong);
    let fresh = sheet(&Known {
        file: &strong,
        model: &model,
        conditions: conditions(5.0),
        refilled: true,
        charges: true,
        treats_pressure: true,
        purges: true,
        seeks_leak: false,
    });
    near(value(&fresh, Q::AntifreezeDose, Unit::Gallon), 13.7, 0.4);
}

#[test]
fn without_a_sample_nothing_is_said_to_be_right() {
    // A refractometer of glycols cannot tell methanol (common practice), so its
    // reading is no sample; and a strength nobody knows gives no dose.
    let mut alcohol = file();
    let fluid = alcohol.system.fluid.as_mut().unwrap();
    fluid.kind = LoopFluidKind::Methanol;
    let freeze = ReadingPoint::FreezePointSupply;
    read(&mut alcohol, freeze, -3.0, Unit::Celsius);
    for strength in [Some(Measure::<Fraction>::new(40.0, Unit::Percent)), None] {
        alcohol.system.fluid.as_mut().unwrap().volume_fraction = strength;
        let sheet = computed(&alcohol, 5.0);
        assert!(sheet.get(Q::AntifreezeDose).is_none());
        let dose = |lacking: &&Lacking| lacking.kind == Q::AntifreezeDose;
        let lacking = sheet.lacking.iter().find(dose).expect("a reason");
        assert_eq!(lacking.lack, Lack::FreezePointSample, "{strength:?}");
    }
}

#[test]
fn the_leaving_water_has_a_lower_limit_in_heating_only_and_it_is_one_number() {
    // The usual lowest entering water, 30.2 °F, less the change of 4 tons of heat at
    // 12 gpm.
    let cold = computed(&file(), 4.0);
    let limit = cold.get(Q::LeavingWaterLimit).expect("a limit").figure;
    assert!(limit.standard.abs() < f64::EPSILON);
    let reckoned = cold.get(Q::LowestLeavingWater).expect("a temperature");
    near(limit.si, reckoned.figure.si, 1e-12);
    // That it is a usual one is told beside it, and how to know it better.
    let assumed = |sheet: &Sheet| {
        let mut remarks = sheet.remarks.iter();
        remarks.any(|remark| matches!(remark, Remark::LowestEnteringAssumed { .. }))
    };
    assert!(assumed(&cold));
    let mut logged = file();
    let lowest = ReadingPoint::LowestEnteringWater;
    read(&mut logged, lowest, 31.0, Unit::Fahrenheit);
    assert!(!assumed(&computed(&logged, 4.0)));
    // Entering at 96 °F, 35.6 °C, the unit cools: nothing freezes.
    let warm = computed(&file(), 35.6);
    assert!(warm.get(Q::LeavingWaterLimit).is_none());
    assert!(warm.lacking.contains(&Lacking {
        kind: Q::LeavingWaterLimit,
        lack: Lack::Cooling,
    }));
}

/// A sample of glycol read with the compressor heating.
fn heating(freezes: f64, leaves: f64) -> VisitFile {
    let mut file = file();
    let sample = ReadingPoint::FreezePointSupply;
    read(&mut file, sample, freezes, Unit::Fahrenheit);
    read(
        &mut file,
        ReadingPoint::LeavingWater,
        leaves,
        Unit::Fahrenheit,
    );
    file.visit.readings.last_mut().unwrap().mode = Some(crate::records::OperatingMode::Heating);
    file
}

#[test]
fn a_fluid_may_freeze_where_the_water_leaves() {
    let near_freezing = |file: &VisitFile| {
        let model = LoopModel::of(file);
        let known = known(file, &model, conditions(4.0));
        may_freeze(&known).is_some()
    };
    // 23 °F read by a refractometer and 23.6 °F by a thermometer are the same within what
    // both may be off; 10 °F below it is the trade's margin (common practice, no source).
    assert!(near_freezing(&heating(23.0, 23.6)));
    assert!(near_freezing(&heating(25.0, 23.6)));
    assert!(!near_freezing(&heating(13.6, 23.6)));
    // What must be reckoned with counts where the water of today is warm: 30.2 °F less
    // the change of some 6 °F across the unit is 24 °F.
    assert!(near_freezing(&heating(27.0, 40.0)));
    assert!(!near_freezing(&heating(20.0, 40.0)));
    // Without a sample nothing is known, and plain water is not strengthened.
    assert!(!near_freezing(&file()));
    let mut water = heating(32.0, 36.0);
    water.system.fluid = Some(LoopFluid {
        kind: LoopFluidKind::Water,
        volume_fraction: None,
    });
    assert!(!near_freezing(&water));
    // The remark goes with it.
    let mut twice = heating(23.0, 23.6);
    let sheet = computed(&twice, 4.0);
    let says = |remark: &Remark| matches!(remark, Remark::FreezesWhereItLeaves { .. });
    assert!(sheet.remarks.iter().any(says));
    twice.visit.readings.clear();
    assert!(!computed(&twice, 4.0).remarks.iter().any(says));
}
