use super::*;

fn vented(diameter: Option<f64>, level: Option<f64>) -> Sheet {
    let mut file = file();
    file.system.flow_centre = Some(FlowCentre::NonPressurised {
        reservoir_diameter: diameter.map(|inches| Measure::<Length>::new(inches, Unit::Inch)),
    });
    if let Some(inches) = level {
        read(
            &mut file,
            ReadingPoint::ReservoirLevelChange,
            inches,
            Unit::Inch,
        );
    }
    computed(&file, 12.0)
}

fn lacks(sheet: &Sheet, kind: Q) -> Option<Lack> {
    let mut lacking = sheet.lacking.iter();
    lacking
        .find(|known| known.kind == kind)
        .map(|known| known.lack)
}

#[test]
fn a_vented_reservoir_is_asked_for_no_more_suction_than_its_level_gives() {
    // ρ g h of water: 998.2·9.80665·0.3048 = 2 984 Pa = 0.433 psi a foot. The 2 ft of a low
    // reservoir give 0.87 psi and the 3 ft of a high one 1.30 psi: 3 psi would take 6.9 ft.
    let floor = value(&vented(Some(8.0), None), Q::SuctionFloor, Unit::Psi);
    assert!((0.0..0.87).contains(&floor), "{floor}");
    // Closed under pressure it is the trade's 3 psi: common practice, no source.
    near(
        value(&computed(&file(), 12.0), Q::SuctionFloor, Unit::Psi),
        3.0,
        1e-9,
    );
}

#[test]
fn what_the_reservoir_lacks_is_its_area_times_the_fall_of_the_level() {
    // π/4·8² = 50.27 in², times 12 in = 603.2 in³, over 231 in³ a gallon: 2.611 gal.
    let low = vented(Some(8.0), Some(-12.0));
    near(value(&low, Q::ReservoirFill, Unit::Gallon), 2.611, 0.002);
    let unknown = vented(None, Some(-12.0));
    assert_eq!(lacks(&unknown, Q::ReservoirFill), Some(Lack::ReservoirSize));
    let unread = vented(Some(8.0), None);
    assert_eq!(lacks(&unread, Q::ReservoirFill), Some(Lack::ReservoirLevel));
    let full = vented(Some(8.0), Some(1.0));
    assert_eq!(lacks(&full, Q::ReservoirFill), Some(Lack::NothingToDo));
}
