//! No pressure is advised above what the weakest part bears.

use proptest::prelude::*;
use proptest::test_runner::TestRunner;
use returnline_core::model::LoopModel;
use returnline_core::plan::quantity::{Conditions, QuantityKind, Remark};
use returnline_core::plan::{Basis, Library, Looked, WorkPlan, load, work_plan};
use returnline_core::records::visit_file::VisitFile;
use returnline_core::records::{
    CircuitGroup, FlowCentre, FlushCart, GroundLoop, HeatPump, LoopFluid, LoopFluidKind,
    NominalInch, Pipe, PlainMeasure, Reading, ReadingKind, ReadingPoint, Sdr,
};
use returnline_core::uncertainty::Uncertain;
use returnline_core::units::{GaugePressure, Length, Measure, Temperature, Unit};
use returnline_tests::plans::treatments;
use std::cell::Cell;
use std::sync::LazyLock;

static LIBRARY: LazyLock<Library> =
    LazyLock::new(|| load().unwrap_or_else(|problems| panic!("{problems:?}")));

/// The conservative rating where none is known: 100 psi, what the weakest usual
/// unit of the trade bears. Common practice, no source.
const CONSERVATIVE_PSI: f64 = 100.0;
/// The relief valve of a system with a tank: 3 bar. Common practice, no source.
const RELIEF_BAR: f64 = 3.0;

#[derive(Clone, Debug)]
struct System {
    unit: Option<f64>,
    cart: Option<f64>,
    centre: u8,
    fluid: u8,
    circuits: bool,
    loop_celsius: Option<f64>,
    gauge_psi: Option<f64>,
    procedures: Vec<usize>,
}

fn some_system() -> impl Strategy<Value = System> {
    let rating = || prop::option::of(8.0..250.0_f64);
    (
        rating(),
        rating(),
        0..4_u8,
        0..6_u8,
        any::<bool>(),
        prop::option::of(-15.0..60.0_f64),
        prop::option::of(0.0..120.0_f64),
        prop::collection::vec(0..LIBRARY.procedures().count(), 1..4),
    )
        .prop_map(
            |(unit, cart, centre, fluid, circuits, loop_celsius, gauge_psi, procedures)| System {
                unit,
                cart,
                centre,
                fluid,
                circuits,
                loop_celsius,
                gauge_psi,
                procedures,
            },
        )
}

impl System {
    fn file(&self) -> VisitFile {
        let psi = |value| Measure::<GaugePressure>::new(value, Unit::Psi);
        let mut file = VisitFile::default();
        file.system.heat_pump = Some(HeatPump {
            maximum_pressure: self.unit.map(psi),
            ..HeatPump::default()
        });
        file.system.flow_centre = match self.centre {
            0 => None,
            1 => Some(FlowCentre::Sealed {}),
            2 => Some(FlowCentre::SealedWithTank {
                tank_volume: None,
                pre_charge: None,
            }),
            _ => Some(FlowCentre::NonPressurised {
                reservoir_diameter: None,
            }),
        };
        let kinds = [
            LoopFluidKind::Water,
            LoopFluidKind::PropyleneGlycol,
            LoopFluidKind::EthyleneGlycol,
            LoopFluidKind::Methanol,
            LoopFluidKind::Ethanol,
        ];
        file.system.fluid = kinds.get(usize::from(self.fluid)).map(|kind| LoopFluid {
            kind: *kind,
            volume_fraction: None,
        });
        if self.circuits {
            file.system.ground = Some(GroundLoop {
                circuits: vec![CircuitGroup {
                    count: 4,
                    pipe: Pipe::IpsPe {
                        size: NominalInch::ThreeQuarter,
                        sdr: Sdr::Sdr11,
                    },
                    length: Measure::<Length>::new(500.0, Unit::Foot),
                }],
                ..GroundLoop::default()
            });
        }
        file.visit.means.cart = Some(FlushCart {
            maximum_pressure: self.cart.map(psi),
            reservoir_diameter: Some(Measure::<Length>::new(10.0, Unit::Inch)),
            ..FlushCart::default()
        });
        if let Some(value) = self.gauge_psi {
            let measure = PlainMeasure {
                value,
                unit: Unit::Psi,
            };
            let reading = Reading::new(ReadingPoint::StaticPressure, measure);
            file.visit.readings.push(reading.expect("a reading"));
        }
        file
    }

    fn plan(&self) -> WorkPlan {
        let file = self.file();
        let model = LoopModel::of(&file);
        let treatments = treatments(&LIBRARY, &self.procedures);
        let celsius = self.loop_celsius.unwrap_or(13.0);
        let temperature = Uncertain::new(Temperature::from_celsius(celsius), 1.0);
        let conditions = Conditions::at(temperature);
        work_plan(&LIBRARY, &treatments, &file, &model, conditions).expect("a plan")
    }

    /// What the weakest part bears, Pa.
    fn weakest(&self) -> f64 {
        let relief = (self.centre == 2).then(|| Unit::Bar.to_si(RELIEF_BAR));
        let rated = [self.unit, self.cart].into_iter().flatten();
        rated
            .map(|psi| Unit::Psi.to_si(psi))
            .chain(relief)
            .fold(Unit::Psi.to_si(CONSERVATIVE_PSI), f64::min)
    }
}

#[test]
fn no_pressure_is_advised_above_what_the_weakest_part_bears() {
    let advised = [
        QuantityKind::DeadHeadPressure,
        QuantityKind::StretchPressure,
        QuantityKind::LeavePressure,
        QuantityKind::LeavePressureLow,
        QuantityKind::LeavePressureHigh,
        QuantityKind::TankPreCharge,
    ];
    let (computed, ends, fallbacks) = (Cell::new(0), Cell::new(0), Cell::new(0));
    let count = |of: &Cell<u32>| of.set(of.get() + 1);
    let mut runner = TestRunner::new(ProptestConfig::with_cases(120));
    let outcome = runner.run(&some_system(), |system| {
        let plan = system.plan();
        let weakest = system.weakest();
        let bears = |pascal: f64| pascal <= weakest + 1e-6;
        if let Some(rating) = plan.sheet.get(QuantityKind::LowestRating) {
            prop_assert!(
                (rating.figure.si - weakest).abs() < 1e-6,
                "{:?}",
                rating.figure
            );
            let unknown = plan.sheet.remarks.contains(&Remark::RatingUnknown);
            prop_assert_eq!(unknown, system.unit.is_none());
        }
        for kind in advised {
            for one in plan.sheet.all(kind) {
                count(&computed);
                prop_assert!(bears(one.figure.si), "{:?} {:?}", kind, one.figure);
            }
        }
        // What a reading of the loop's pressure is held to, at gates and as proof.
        let at = |point: ReadingPoint| point.kind() == ReadingKind::GaugePressure;
        let gates = plan.steps.iter().flat_map(|step| &step.gate);
        let gates = gates.filter_map(|gate| match gate.looked {
            Looked::Reading(point) if at(point) => Some(&gate.limit),
            _ => None,
        });
        let proofs = plan.proofs.iter().filter(|proof| at(proof.reading));
        let proofs = proofs.flat_map(|proof| proof.at_least.iter().chain(&proof.at_most));
        for limit in gates.chain(proofs) {
            count(&ends);
            if matches!(limit.basis, Basis::Fixed(_) | Basis::Usual(..)) {
                count(&fallbacks);
            }
            prop_assert!(bears(limit.value.si), "{:?} over {}", limit, weakest);
        }
        Ok(())
    });
    if let Err(error) = outcome {
        panic!("{error}");
    }
    // All three kinds of number have been looked at, and often.
    assert!(computed.get() > 120, "{}", computed.get());
    assert!(ends.get() > 120, "{}", ends.get());
    assert!(fallbacks.get() > 12, "{}", fallbacks.get());
}
