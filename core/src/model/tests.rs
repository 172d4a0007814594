use super::*;
use crate::fluids::FluidKind;
use crate::records::visit_file::VisitFile;
use crate::records::{
    CircuitGroup, GroundLoop, HeatPump, LoopFluid, LoopFluidKind, NominalInch, Pipe, PlainMeasure,
    Reading, ReadingPoint, Sdr, System,
};
use crate::units::{Fraction, Length, Measure, Power};

fn known() -> VisitFile {
    let pipe = Pipe::IpsPe {
        size: NominalInch::ThreeQuarter,
        sdr: Sdr::Sdr11,
    };
    VisitFile {
        system: System {
            heat_pump: Some(HeatPump {
                cooling_capacity: Some(Measure::<Power>::new(4.0, Unit::Ton)),
                ..HeatPump::default()
            }),
            ground: Some(GroundLoop {
                circuits: vec![CircuitGroup {
                    count: 4,
                    pipe,
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
    }
}

#[test]
fn nothing_known_is_a_wide_model_and_not_an_error() {
    let model = LoopModel::of(&VisitFile::default());
    let volume = model.piping.volume;
    assert!(volume.standard() > 0.4 * volume.value().si());
    assert!(model.assumptions.contains(&Assumption::CircuitsUnknown));
    assert!(model.fluid.kind.is_none());
}

#[test]
fn the_volume_of_known_circuits_follows_the_published_bore() {
    // 3/4 in SDR 11: outside 1.050 in (ASME B36.10M), wall 1.050/11 in, so 3.01 gal
    // per 100 ft; 2000 ft hold 60.2 gal, of which the average wall takes 2.5 %.
    let model = LoopModel::of(&known());
    let circuits = Unit::Gallon.from_si(model.piping.plastic_volume.si());
    assert!((circuits - 60.2 * 0.975).abs() < 0.2, "{circuits}");
    assert_eq!(model.piping.circuit_count(), Some(4));
    assert!(model.piping.volume.value() > model.piping.plastic_volume);
}

#[test]
fn three_gpm_per_ton_stand_in_for_an_unknown_flow() {
    let flow = LoopModel::of(&known()).demand.flow;
    assert!((Unit::GallonPerMinute.from_si(flow.value().si()) - 12.0).abs() < 1e-9);
}

#[test]
fn a_freeze_point_sample_outweighs_the_record() {
    let mut file = known();
    let value = PlainMeasure {
        value: 28.0,
        unit: Unit::Fahrenheit,
    };
    let reading = Reading::new(ReadingPoint::FreezePointSupply, value).expect("possible");
    file.visit.readings.push(reading);
    let fluid = LoopModel::of(&file).fluid;
    assert_eq!(fluid.kind, Some(FluidKind::PropyleneGlycol));
    assert_eq!(fluid.concentration, Concentration::Measured);
    // Lange's Handbook, 15th ed., table 5.13: 10 % by volume freezes at 28 °F.
    let share = fluid.volume_fraction.value().si();
    assert!((share - 0.10).abs() < 0.03, "{share}");
}

#[test]
fn the_pressure_limit_is_the_lowest_known_rating() {
    let mut file = known();
    let psi = |value| Some(Measure::<GaugePressure>::new(value, Unit::Psi));
    assert!(!LoopModel::of(&file).pressure_limit(&file).1);
    if let Some(unit) = file.system.heat_pump.as_mut() {
        unit.maximum_pressure = psi(60.0);
    }
    let (limit, known) = LoopModel::of(&file).pressure_limit(&file);
    assert!(known && (Unit::Psi.from_si(limit.si()) - 60.0).abs() < 1e-9);
}

#[test]
fn a_gauge_that_no_reservoir_holds_up_shows_a_closed_loop() {
    let shown = |psi: f64| {
        let mut file = VisitFile::default();
        let value = PlainMeasure {
            value: psi,
            unit: Unit::Psi,
        };
        let reading = Reading::new(ReadingPoint::StaticPressure, value).expect("possible");
        file.visit.readings.push(reading);
        LoopModel::of(&file)
    };
    assert_eq!(shown(27.0).is_pressurised, Some(true));
    let assumed = shown(27.0).assumptions;
    assert!(assumed.contains(&Assumption::FlowCentreClosed));
    // 3 psi is 7 ft of water, as a reservoir on the floor above gives: it may be either.
    assert_eq!(shown(3.0).is_pressurised, None);
    assert!(
        shown(3.0)
            .assumptions
            .contains(&Assumption::FlowCentreUnknown)
    );
    let mut vented = VisitFile::default();
    vented.system.flow_centre = Some(FlowCentre::NonPressurised {
        reservoir_diameter: None,
    });
    assert_eq!(LoopModel::of(&vented).is_pressurised, Some(false));
}
