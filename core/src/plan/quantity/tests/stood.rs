//! What a pipe has stood under, and what is left where nothing speaks against it.

use super::*;
use chrono::NaiveDate;

/// Half a year after the charge, the gauge reads this much.
fn stood(psi: f64) -> VisitFile {
    let mut file = file();
    file.commissioning.date = NaiveDate::from_ymd_opt(2026, 4, 1);
    file.visit.date = NaiveDate::from_ymd_opt(2026, 9, 28);
    read(&mut file, ReadingPoint::StaticPressure, psi, Unit::Psi);
    file
}

fn of(file: &VisitFile, treats_pressure: bool) -> Sheet {
    let model = LoopModel::of(file);
    sheet(&Known {
        treats_pressure,
        purges: false,
        ..known(file, &model, conditions(12.0))
    })
}

#[test]
fn a_loop_that_is_let_down_comes_back_and_does_not_relax_afresh() {
    // 12 % a decade of time (PPI handbook, table B.1.1). 100 psi have stood for 180 days:
    // until 30 days later they relax by 12 % of log10(210/180) = 0.067 decades, 0.8 psi.
    // What was let down after half an hour comes back by 12 % of 3.16 decades = 38 % of
    // what the pipe gives way for it. Relaxed afresh the loop would read 38 % less.
    let sheet = of(&stood(100.0), true);
    let psi = |kind| value(&sheet, kind, Unit::Psi);
    let left = psi(Q::LeavePressure);
    assert!(left < 85.0, "{left}");
    let back = left - 0.8 + 0.38 * (100.0 - left);
    let (low, high) = (psi(Q::RecheckMonthLow), psi(Q::RecheckMonthHigh));
    assert!(low < back && back < high, "{low} {back} {high}");
    assert!(low > left, "{low} {left}");
    // Which is said beforehand: 38 psi in a hundred are more than a technician expects.
    let said = sheet.remarks.iter().find_map(|remark| match remark {
        Remark::ComesBack { after } => Some(Unit::Psi.from_si(after.si)),
        _ => None,
    });
    near(said.expect("a remark"), back, 0.15 * back);
    let raised = of(&stood(5.0), true);
    let says = |remark: &Remark| matches!(remark, Remark::ComesBack { .. });
    assert!(!raised.remarks.iter().any(says));
}

#[test]
fn what_nothing_speaks_against_is_left_as_it_stood() {
    // 36 psi lie between the utility's 15 psi and what is left at start-up, 70 psi. A loop
    // whose circulator is changed has no need of another pressure.
    let sheet = of(&stood(36.0), false);
    near(value(&sheet, Q::LeavePressure, Unit::Psi), 36.0, 0.5);
    // A loop that stands too low is not left so.
    let low = of(&stood(4.0), false);
    assert!(value(&low, Q::LeavePressure, Unit::Psi) > 15.0);
    // Nor one above its rating: 100 psi where none is on record.
    let high = of(&stood(121.0), false);
    assert!(value(&high, Q::LeavePressure, Unit::Psi) <= 70.0);
}

#[test]
fn the_less_is_changed_the_better() {
    // Of two loops alike the one that stands higher is left no lower, and neither needs
    // more than what serves.
    let [lower, higher] = [5.0, 95.0].map(|psi| of(&stood(psi), true));
    let left = |sheet: &Sheet| value(sheet, Q::LeavePressure, Unit::Psi);
    assert!(left(&lower) < 70.0 && left(&higher) < 95.0);
    for sheet in [&lower, &higher] {
        let least = value(sheet, Q::LeavePressureLow, Unit::Psi);
        assert!(least <= left(sheet), "{least}");
    }
}

#[test]
fn a_season_above_the_rating_is_never_passed_over_in_silence() {
    for (rating, stands) in [(100.0, 60.0), (45.0, 40.0), (40.0, 20.0), (30.0, 28.0)] {
        let mut file = stood(stands);
        let rated = Measure::<GaugePressure>::new(rating, Unit::Psi);
        file.system.heat_pump.as_mut().unwrap().maximum_pressure = Some(rated);
        for treats in [true, false] {
            let sheet = of(&file, treats);
            let says = |remark: &Remark| matches!(remark, Remark::MayPassRating { .. });
            let high = sheet.get(Q::SeasonHigh).map(|high| high.figure.si);
            let over = high.is_some_and(|high| high > Unit::Psi.to_si(rating));
            assert_eq!(sheet.remarks.iter().any(says), over, "{rating} {stands}");
            // And none is put on today.
            let most = value(&sheet, Q::LeavePressureHigh, Unit::Psi);
            assert!(most <= rating + 1e-9, "{most} {rating}");
        }
    }
}

#[test]
fn a_gauge_nobody_read_is_read_first() {
    let says = |sheet: &Sheet| sheet.remarks.contains(&Remark::ReadGaugeFirst);
    assert!(says(&of(&file(), false)));
    assert!(!says(&of(&stood(36.0), false)));
}

fn kept(sheet: &Sheet) -> (Option<f64>, Stood) {
    let mut remarks = sheet.remarks.iter();
    let kept = remarks.find_map(|remark| match remark {
        Remark::PressureKept { inside, stood } => Some((inside.map(|inside| inside.si), *stood)),
        _ => None,
    });
    kept.unwrap_or_else(|| panic!("{:?}", sheet.remarks))
}

/// A loop of which nothing is recorded but what it reads.
fn hardly_recorded() -> VisitFile {
    let mut file = VisitFile::default();
    read(&mut file, ReadingPoint::StaticPressure, 41.0, Unit::Psi);
    file
}

#[test]
fn a_pressure_that_is_kept_tells_a_probability_only_where_it_says_something() {
    // Hardly anything is known: a chance worse than a coin's is no news of the loop.
    let (inside, stood) = kept(&of(&hardly_recorded(), false));
    assert_eq!((inside, stood), (None, Stood::Unknown));
    // Whatever is told is better than that.
    for psi in [20.0, 28.0, 36.0, 44.0, 52.0] {
        for remark in of(&self::stood(psi), false).remarks {
            if let Remark::PressureKept { inside, .. } = remark {
                assert!(inside.is_none_or(|inside| inside.si >= 0.5), "{psi}");
            }
        }
    }
}

#[test]
fn how_long_a_kept_pressure_has_stood_is_told_as_it_is_on_record() {
    let day = |year, month, day| NaiveDate::from_ymd_opt(year, month, day).unwrap();
    let mut file = hardly_recorded();
    file.visit.date = Some(day(2026, 9, 28));
    let told = |file: &VisitFile| kept(&of(file, false)).1;
    assert_eq!(told(&file), Stood::Unknown);
    file.system.installed_on = Some(day(2019, 5, 2));
    assert_eq!(told(&file), Stood::EverySeason(day(2019, 5, 2)));
    // The last charge counts, not the installation.
    file.commissioning.charge_date = Some(day(2026, 4, 1));
    assert_eq!(told(&file), Stood::Since(day(2026, 4, 1)));
    // A day after the visit is a slip of the pen.
    file.commissioning.charge_date = Some(day(2027, 4, 1));
    assert_eq!(told(&file), Stood::Unknown);
    // And fluid that was put in since is another charge.
    file.commissioning.charge_date = Some(day(2020, 4, 1));
    read(&mut file, ReadingPoint::TopUpVolume, 1.0, Unit::Gallon);
    assert_eq!(told(&file), Stood::Unknown);
}

#[test]
fn a_pressure_that_is_kept_needs_no_fluid() {
    let sheet = of(&hardly_recorded(), false);
    for kind in [Q::MissingVolume, Q::ReleaseVolume] {
        assert!(sheet.get(kind).is_none());
        let mut lacking = sheet.lacking.iter().filter(|lacking| lacking.kind == kind);
        assert_eq!(lacking.next().map(|one| one.lack), Some(Lack::NothingToDo));
        assert!(lacking.next().is_none());
    }
}

#[test]
fn a_band_over_the_seasons_that_is_wide_says_for_what_unknown() {
    let unsure = |sheet: &Sheet| {
        let mut remarks = sheet.remarks.iter();
        remarks.find_map(|remark| match remark {
            Remark::SeasonsUnsure { width, widest } => Some((*width, *widest)),
            _ => None,
        })
    };
    let (width, widest) = unsure(&of(&hardly_recorded(), false)).expect("a wide band");
    assert!(Unit::Psi.from_si(width.si) >= 30.0, "{width:?}");
    assert!(widest.is_some());
    // What one week leaves open is part of what all seasons span.
    for psi in [20.0, 36.0, 52.0] {
        let sheet = of(&stood(psi), false);
        let span = value(&sheet, Q::SeasonHigh, Unit::Psi) - value(&sheet, Q::SeasonLow, Unit::Psi);
        let told = unsure(&sheet).map(|(width, _)| Unit::Psi.from_si(width.si));
        assert!(
            told.is_none_or(|told| told <= span + 1e-9),
            "{told:?} {span}"
        );
    }
}
