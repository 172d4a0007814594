//! Quantities of one invented loop against numbers derived by hand.

mod dosing;
mod pressures;
mod purging;
mod stood;
mod vented;

use super::*;
use crate::figures::Authority;
use crate::model::LoopModel;
use crate::plan::quantity::QuantityKind as Q;
use crate::records::visit_file::VisitFile;
use crate::records::{
    CircuitGroup, FlowCentre, FlushCart, GroundKind, GroundLoop, HeadPoint, HeatPump, LoopFluid,
    LoopFluidKind, NominalInch, Pipe, PipeRun, PlainMeasure, Reading, ReadingPoint, Sdr, System,
};
use crate::text::{Language, catalog};
use crate::uncertainty::Uncertain;
use crate::units::{
    Fraction, GaugePressure, Length, Measure, Power, Temperature, Unit, Volume, VolumeFlow,
};

/// Four circuits of 500 ft of 3/4 in SDR 11 on a 4 ton unit, 25 % propylene
/// glycol by volume on record, 10 ft of 1 1/4 in hose each way.
fn file() -> VisitFile {
    let pipe = |size| Pipe::IpsPe {
        size,
        sdr: Sdr::Sdr11,
    };
    let mut file = VisitFile {
        system: System {
            heat_pump: Some(HeatPump {
                cooling_capacity: Some(Measure::<Power>::new(4.0, Unit::Ton)),
                heating_capacity: Some(Measure::<Power>::new(4.0, Unit::Ton)),
                rated_flow: Some(Measure::<VolumeFlow>::new(12.0, Unit::GallonPerMinute)),
                ..HeatPump::default()
            }),
            flow_centre: Some(FlowCentre::Sealed {}),
            ground: Some(GroundLoop {
                kind: Some(GroundKind::Horizontal),
                circuits: vec![CircuitGroup {
                    count: 4,
                    pipe: pipe(NominalInch::ThreeQuarter),
                    length: Measure::<Length>::new(500.0, Unit::Foot),
                }],
                ..GroundLoop::default()
            }),
            fluid: Some(LoopFluid {
                kind: LoopFluidKind::PropyleneGlycol,
                volume_fraction: Some(Measure::<Fraction>::new(25.0, Unit::Percent)),
            }),
            ..System::default()
        },
        ..VisitFile::default()
    };
    file.visit.means.cart = Some(FlushCart {
        curve: [(0.0, 110.0), (20.0, 90.0), (40.0, 40.0)]
            .map(|(gpm, feet)| HeadPoint {
                flow: Measure::<VolumeFlow>::new(gpm, Unit::GallonPerMinute),
                head: Measure::<Length>::new(feet, Unit::Foot),
            })
            .to_vec(),
        reservoir_diameter: Some(Measure::<Length>::new(10.0, Unit::Inch)),
        hose: Some(PipeRun {
            pipe: Pipe::Hose {
                size: NominalInch::OneAndQuarter,
            },
            length: Measure::<Length>::new(20.0, Unit::Foot),
        }),
        ..FlushCart::default()
    });
    file
}

fn conditions(celsius: f64) -> Conditions {
    Conditions::at(Uncertain::new(Temperature::from_celsius(celsius), 1.0))
}

/// A loop that is purged and charged because its pressure is wrong.
fn known<'a>(file: &'a VisitFile, model: &'a LoopModel, conditions: Conditions) -> Known<'a> {
    Known {
        file,
        model,
        conditions,
        refilled: false,
        charges: true,
        treats_pressure: true,
        purges: true,
        seeks_leak: false,
    }
}

fn computed(file: &VisitFile, celsius: f64) -> Sheet {
    let model = LoopModel::of(file);
    sheet(&known(file, &model, conditions(celsius)))
}

fn read(file: &mut VisitFile, point: ReadingPoint, value: f64, unit: Unit) {
    let reading = Reading::new(point, PlainMeasure { value, unit }).unwrap();
    file.visit.readings.push(reading);
}

fn value(sheet: &Sheet, kind: Q, unit: Unit) -> f64 {
    let found = sheet.get(kind);
    let found = found.unwrap_or_else(|| panic!("{kind:?} {:?}", sheet.lacking));
    unit.from_si(found.figure.si)
}

fn near(found: f64, expected: f64, within: f64) {
    assert!((found - expected).abs() <= within, "{found} {expected}");
}

#[test]
fn an_unknown_system_still_has_its_safe_numbers_and_says_what_it_lacks() {
    let file = VisitFile::default();
    let sheet = computed(&file, 12.0);
    near(value(&sheet, Q::LowestRating, Unit::Psi), 100.0, 1e-9);
    for (kind, lack) in [
        (Q::PurgeFlow, Lack::Circuits),
        (Q::DeadHeadLimit, Lack::CartTank),
        (Q::AntifreezeDose, Lack::FluidKind),
        (Q::MissingVolume, Lack::StaticReading),
        (Q::ExchangerDropHigh, Lack::ExchangerCurve),
    ] {
        assert!(sheet.get(kind).is_none());
        assert!(sheet.lacking.contains(&Lacking { kind, lack }), "{kind:?}");
    }
}

#[test]
fn every_quantity_is_computed_or_says_what_it_lacks() {
    let vented = {
        let mut file = file();
        file.system.flow_centre = Some(FlowCentre::NonPressurised {
            reservoir_diameter: None,
        });
        file
    };
    let tank = {
        let mut file = file();
        file.system.flow_centre = Some(FlowCentre::SealedWithTank {
            tank_volume: Some(Measure::<Volume>::new(8.0, Unit::Litre)),
            pre_charge: Some(Measure::<GaugePressure>::new(0.8, Unit::Bar)),
        });
        file
    };
    for file in [file(), vented, tank, VisitFile::default()] {
        let sheet = computed(&file, 8.0);
        for kind in Q::ALL {
            let has = sheet.get(kind).is_some();
            let lacks = sheet.lacking.iter().any(|lacking| lacking.kind == kind);
            assert!(has != lacks, "{kind:?}: computed {has}, lacking {lacks}");
        }
        for computed in &sheet.computed {
            assert!(computed.figure.si.is_finite(), "{computed:?}");
            assert!(computed.figure.standard.is_finite(), "{computed:?}");
        }
    }
}

#[test]
fn every_why_has_its_words() {
    let mut full = file();
    read(&mut full, ReadingPoint::StaticPressure, 8.0, Unit::Psi);
    read(
        &mut full,
        ReadingPoint::FreezePointSupply,
        28.0,
        Unit::Fahrenheit,
    );
    let mut strong = file();
    read(
        &mut strong,
        ReadingPoint::FreezePointSupply,
        -5.0,
        Unit::Fahrenheit,
    );
    let catalog = catalog(Language::English);
    for file in [full, strong, VisitFile::default()] {
        for computed in computed(&file, 8.0).computed {
            let why = &computed.reasoning;
            assert!(
                catalog.has(&format!("why-{}", why.formula)),
                "{}",
                why.formula
            );
            for (name, _) in &why.inputs {
                assert!(catalog.has(&format!("input-{name}")), "{name}");
            }
            if let Authority::Published(id) | Authority::FromMemory(id) = why.authority {
                assert!(catalog.has(&format!("source-{id}")), "{id}");
            }
        }
    }
}
