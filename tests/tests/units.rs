//! Unit factors against the general-purpose crate `uom` and against NIST
//! Special Publication 811 (2008), appendix B.8.

use returnline_core::units::{Dimension, Unit, parse};
use uom::si::f64::{Length, Power, Pressure, ThermodynamicTemperature, Volume, VolumeRate};
use uom::si::{length, power, pressure, thermodynamic_temperature, volume, volume_rate};

fn agrees(unit: Unit, value: f64, reference: f64, relative: f64) {
    let own = unit.to_si(value);
    assert!(
        (own - reference).abs() <= relative * reference.abs(),
        "{}: {own} against {reference}",
        unit.symbol()
    );
    assert!((unit.from_si(own) - value).abs() <= 1e-12 * value.abs().max(1.0));
}

#[test]
fn factors_agree_with_the_units_crate() {
    // The crate rounds some factors to seven digits.
    let pascal = |p: Pressure| p.get::<pressure::pascal>();
    agrees(
        Unit::Psi,
        55.0,
        pascal(Pressure::new::<pressure::psi>(55.0)),
        1e-6,
    );
    agrees(
        Unit::Bar,
        1.5,
        pascal(Pressure::new::<pressure::bar>(1.5)),
        1e-12,
    );
    agrees(
        Unit::Kilopascal,
        300.0,
        pascal(Pressure::new::<pressure::kilopascal>(300.0)),
        1e-12,
    );
    let kelvin = |t: ThermodynamicTemperature| t.get::<thermodynamic_temperature::kelvin>();
    let fahrenheit = ThermodynamicTemperature::new::<thermodynamic_temperature::degree_fahrenheit>;
    agrees(Unit::Fahrenheit, 41.0, kelvin(fahrenheit(41.0)), 1e-9);
    let celsius = ThermodynamicTemperature::new::<thermodynamic_temperature::degree_celsius>;
    agrees(Unit::Celsius, -10.0, kelvin(celsius(-10.0)), 1e-12);
    let cubic = |v: Volume| v.get::<volume::cubic_meter>();
    agrees(
        Unit::Gallon,
        12.0,
        cubic(Volume::new::<volume::gallon>(12.0)),
        1e-6,
    );
    agrees(
        Unit::Litre,
        12.0,
        cubic(Volume::new::<volume::liter>(12.0)),
        1e-12,
    );
    let rate = |q: VolumeRate| q.get::<volume_rate::cubic_meter_per_second>();
    let gpm = VolumeRate::new::<volume_rate::gallon_per_minute>;
    agrees(Unit::GallonPerMinute, 9.0, rate(gpm(9.0)), 1e-6);
    let metre = |l: Length| l.get::<length::meter>();
    agrees(
        Unit::Foot,
        500.0,
        metre(Length::new::<length::foot>(500.0)),
        1e-9,
    );
    agrees(
        Unit::Inch,
        1.25,
        metre(Length::new::<length::inch>(1.25)),
        1e-9,
    );
    let watt = |p: Power| p.get::<power::watt>();
    agrees(
        Unit::Kilowatt,
        3.5,
        watt(Power::new::<power::kilowatt>(3.5)),
        1e-12,
    );
}

#[test]
fn factors_agree_with_nist_sp_811() {
    // Appendix B.8, as printed there.
    agrees(Unit::Psi, 1.0, 6.894_757e3, 1e-6);
    agrees(Unit::FootOfWater, 1.0, 2.989_067e3, 1e-6);
    agrees(Unit::InchOfMercury, 1.0, 3.386_389e3, 1e-6);
    agrees(Unit::GallonPerMinute, 1.0, 6.309_020e-5, 1e-6);
    agrees(Unit::GallonPerDay, 1.0, 4.381_264e-8, 1e-6);
    agrees(Unit::Gallon, 1.0, 3.785_412e-3, 1e-6);
    agrees(Unit::BtuPerHour, 1.0, 2.930_711e-1, 1e-6);
    // Ton of refrigeration, 12 000 Btu(IT)/h.
    agrees(Unit::Ton, 1.0, 3.516_853e3, 1e-6);
    agrees(Unit::Horsepower, 1.0, 7.456_999e2, 1e-6);
}

#[test]
fn what_people_write_is_read_and_what_is_mistaken_is_refused() {
    let read = |text: &str, dimension| parse::plain(text, dimension, None);
    let si = |text: &str, dimension| {
        let (value, unit) = read(text, dimension).expect(text);
        unit.to_si(value)
    };
    let close = |a: f64, b: f64| assert!((a - b).abs() < 1e-9 * b.abs().max(1.0), "{a} {b}");
    close(si("1,5 bar", Dimension::Pressure), 1.5e5);
    close(si("55psi", Dimension::Pressure), 55.0 * 6_894.757_293_168);
    close(si("1 1/4 in", Dimension::Length), 0.031_75);
    close(si("12' 6\"", Dimension::Length), 3.81);
    close(
        si("−3 °F", Dimension::Temperature),
        (-3.0 - 32.0) / 1.8 + 273.15,
    );
    close(
        si("1,234.5 gal", Dimension::Volume),
        1_234.5 * 3.785_411_784e-3,
    );
    for (text, dimension) in [
        ("1,500 psi", Dimension::Pressure),
        ("5 gpm", Dimension::Pressure),
        ("12", Dimension::VolumeFlow),
        ("about 5 psi", Dimension::Pressure),
        ("1/0 in", Dimension::Length),
        ("", Dimension::Length),
    ] {
        assert!(read(text, dimension).is_err(), "{text}");
    }
}

/// A leak's rate is shown by the day; nobody reads a flow meter so.
#[test]
fn a_rate_by_the_day_is_shown_and_never_offered() {
    for unit in [Unit::GallonPerDay, Unit::LitrePerDay] {
        assert!(Unit::of(unit.dimension()).all(|offered| offered != unit));
    }
}
