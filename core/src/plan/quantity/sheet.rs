//! All quantities of one system together.

use super::{QuantityKind, Remark, dead_head, dose, purge, running, static_pressure};
use crate::figures::{Authority, Figure, Reasoning};
use crate::model::{Assumption, LoopModel};
use crate::named::named;
use crate::pressure::belief::Belief;
use crate::pressure::year::Year;
use crate::records::visit_file::VisitFile;
use crate::records::{FlowCentre, Instrument, OperatingMode, Phase, Reading, ReadingPoint};
use crate::uncertainty::Uncertain;
use crate::units::{GaugePressure, Quantity, Temperature, Unit};
use std::collections::BTreeSet;

/// What the day brings.
#[derive(Clone, Debug)]
pub struct Conditions {
    /// Mean temperature of the loop now.
    pub loop_temperature: Uncertain<Temperature>,
    /// Lowest water that will leave the heat pump, if something better than the
    /// usual is known.
    pub lowest_leaving: Option<Uncertain<Temperature>>,
    /// The loop's temperature through the year, and today's place in it; the
    /// usual seasons where it is not known.
    pub year: Option<(Year, f64)>,
    /// What earlier readings taught of pipe and ground.
    pub learned: Option<Belief>,
    /// Instruments that the diagnosis doubts.
    pub doubted: BTreeSet<Instrument>,
}

impl Conditions {
    /// A day of which only the loop temperature is known.
    #[must_use]
    pub fn at(loop_temperature: Uncertain<Temperature>) -> Self {
        Self {
            loop_temperature,
            lowest_leaving: None,
            year: None,
            learned: None,
            doubted: BTreeSet::new(),
        }
    }
}

/// Everything that quantities are computed from.
#[derive(Clone, Debug)]
pub struct Known<'a> {
    /// The records.
    pub file: &'a VisitFile,
    /// What is believed of the system.
    pub model: &'a LoopModel,
    /// The day.
    pub conditions: Conditions,
    /// Whether the loop is filled afresh with water before the dose.
    pub refilled: bool,
    /// Whether the pressure is set on this visit.
    pub charges: bool,
    /// Whether the pressure is itself what is wrong, or a leak is looked for: what the loop
    /// stands at is then no pattern for what to leave.
    pub treats_pressure: bool,
    /// Whether the loop is purged, so that air may stay in it.
    pub purges: bool,
    /// Whether a leak is looked for.
    pub seeks_leak: bool,
}

impl Known<'_> {
    /// The last reading of a point as it was met, with its uncertainty; one by an
    /// instrument in doubt only where there is no other.
    pub(super) fn read<Q: Quantity>(&self, point: ReadingPoint) -> Option<Uncertain<Q>> {
        self.read_where(point, |_| true)
    }
    /// The same, of those in one mode of operation.
    pub(super) fn read_in<Q: Quantity>(
        &self,
        point: ReadingPoint,
        mode: OperatingMode,
    ) -> Option<Uncertain<Q>> {
        self.read_where(point, |reading| reading.mode == Some(mode))
    }
    /// Whether nobody read what stands in a loop that is not vented.
    pub(in crate::plan) fn gauge_unread(&self) -> bool {
        let vented = matches!(
            self.model.flow_centre,
            Some(FlowCentre::NonPressurised { .. })
        );
        !vented
            && self
                .read::<GaugePressure>(ReadingPoint::StaticPressure)
                .is_none()
    }
    fn read_where<Q: Quantity>(
        &self,
        point: ReadingPoint,
        counts: impl Fn(&Reading) -> bool,
    ) -> Option<Uncertain<Q>> {
        let of = |reading: &&Reading| {
            reading.point() == point && reading.phase == Phase::Found && counts(reading)
        };
        let trusted = |reading: &&Reading| {
            let instrument = reading.instrument_or_usual();
            !self.conditions.doubted.contains(&instrument)
        };
        let quantity = |reading: &Reading| {
            let value = reading.quantity::<Q>()?;
            Some(Uncertain::new(value, reading.standard_uncertainty()))
        };
        let found = || self.file.visit.readings.iter().rev().filter(of);
        let mut sound = found().filter(trusted).filter_map(quantity);
        sound.next().or_else(|| found().find_map(quantity))
    }
    /// What the gauge read when the loop was left, on the day of the visit: what is read
    /// on a later day carries its time.
    pub(super) fn left_at(&self) -> Option<GaugePressure> {
        let readings = self.file.visit.readings.iter().rev();
        let mut left = readings.filter(|reading| {
            let day = reading.taken_at.map(|at| at.date_naive());
            reading.point() == ReadingPoint::StaticPressure
                && reading.phase == Phase::Left
                && (day.is_none() || day == self.file.visit.date)
        });
        left.find_map(|reading| reading.quantity::<GaugePressure>())
    }
    /// A temperature at which the fluid has properties.
    pub(super) fn computable(&self) -> Uncertain<Temperature> {
        let now = self.conditions.loop_temperature;
        Uncertain::new(self.model.fluid.computable(now.value()), now.standard())
    }
}

/// To which part of the system a quantity belongs.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Part {
    /// The whole.
    Whole,
    /// Circuits of one kind, by their place in the records, from 0.
    Circuits(usize),
    /// The header on the supply side.
    SupplyHeader,
    /// The header on the return side.
    ReturnHeader,
    /// All circuits open at once.
    AllOpen,
    /// A group of circuits purged together, from 0.
    Group(usize),
}

/// A quantity with its reasons.
#[derive(Clone, PartialEq, Debug)]
pub struct Computed {
    /// What it is.
    pub kind: QuantityKind,
    /// Of which part.
    pub part: Part,
    /// Its value.
    pub figure: Figure,
    /// How it came about.
    pub reasoning: Reasoning,
}

named! {
    /// Why a quantity cannot be computed. Of what is unknown `plan-lack-<id>` is the
    /// clause behind a “because”, else a sentence of its own.
    #[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
    pub enum Lack {
        /// The circuits are not known.
        Circuits = "circuits",
        /// The indoor pipe is not known.
        IndoorPipe = "indoor-pipe",
        /// The kind of fluid is not known.
        FluidKind = "fluid-kind",
        /// No freeze point was read with an instrument that can tell this fluid.
        FreezePointSample = "freeze-point-sample",
        /// The cart's pump curve is not known.
        CartCurve = "cart-curve",
        /// The diameter of the cart's tank is not known.
        CartTank = "cart-tank",
        /// The exchanger's curve is not known.
        ExchangerCurve = "exchanger-curve",
        /// The rating of the heat pump is so little known that no band of the change follows.
        UnitRating = "unit-rating",
        /// The nameplates of the circulators are not known.
        Nameplates = "nameplates",
        /// The pressure at rest has not been read.
        StaticReading = "static-reading",
        /// So little stands on the gauge that a leak would hardly move it.
        GaugeTooLow = "gauge-too-low",
        /// So little is known of pipe, ground and seasons that the band holds everything.
        TooLittleKnown = "too-little-known",
        /// Volume or pre-charge of the expansion tank is not known.
        TankData = "tank-data",
        /// The reservoir's diameter is not known.
        ReservoirSize = "reservoir-size",
        /// The reservoir's level was not read.
        ReservoirLevel = "reservoir-level",
        /// It is a limit of heating, and the unit cools.
        Cooling = "cooling",
        /// There is no such thing on this kind of flow centre.
        FlowCentre = "flow-centre",
        /// The fluid is already as strong, or as weak, as it should be.
        NothingToDo = "nothing-to-do",
        /// The values lie outside what the model covers.
        OutsideModel = "outside-model",
    }
}

impl Lack {
    /// Whether the quantity has no meaning here, so that nothing is said of it.
    pub fn is_beside_the_point(self) -> bool {
        matches!(self, Self::FlowCentre | Self::Cooling)
    }
    /// Whether it is something that is not known, not something that has no meaning.
    pub fn is_unknown(self) -> bool {
        !matches!(self, Self::FlowCentre | Self::NothingToDo | Self::Cooling)
    }
}

/// A quantity that could not be computed.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Lacking {
    /// The quantity.
    pub kind: QuantityKind,
    /// What it lacks.
    pub lack: Lack,
}

/// Quantities of one system, what could not be computed, and remarks.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Sheet {
    /// The quantities, parts of one kind together.
    pub computed: Vec<Computed>,
    /// Those that could not be computed.
    pub lacking: Vec<Lacking>,
    /// What is to be said beside them.
    pub remarks: Vec<Remark>,
}

impl Sheet {
    /// The quantity of the whole system.
    pub fn get(&self, kind: QuantityKind) -> Option<&Computed> {
        self.all(kind)
            .find(|computed| computed.part == Part::Whole)
            .or_else(|| self.all(kind).next())
    }
    /// The quantity for every part.
    pub fn all(&self, kind: QuantityKind) -> impl Iterator<Item = &Computed> {
        self.computed
            .iter()
            .filter(move |computed| computed.kind == kind)
    }
    /// Value of a quantity of the whole system, SI.
    pub(super) fn si(&self, kind: QuantityKind) -> Option<f64> {
        self.get(kind).map(|computed| computed.figure.si)
    }

    pub(super) fn add(&mut self, kind: QuantityKind, figure: Figure, reasoning: Reasoning) {
        self.add_part(kind, Part::Whole, figure, reasoning);
    }
    pub(super) fn add_part(
        &mut self,
        kind: QuantityKind,
        part: Part,
        figure: Figure,
        reasoning: Reasoning,
    ) {
        debug_assert_eq!(figure.dimension, kind.dimension());
        let figure = match kind.units() {
            Some((us, si)) => figure.shown_in(us, si),
            None => figure,
        };
        self.computed.push(Computed {
            kind,
            part,
            figure,
            reasoning,
        });
    }
    pub(super) fn lack(&mut self, kinds: &[QuantityKind], lack: Lack) {
        self.lacking
            .extend(kinds.iter().map(|kind| Lacking { kind: *kind, lack }));
    }
}

/// Highest pressure on a system with an expansion tank whose relief valve
/// nobody read: 3 bar, common practice, no source.
const TANK_RELIEF_BAR: f64 = 3.0;

/// Every quantity that can be computed for a system.
pub fn sheet(known: &Known<'_>) -> Sheet {
    let mut sheet = Sheet::default();
    rating(known, &mut sheet);
    volume(known, &mut sheet);
    running::compute(known, &mut sheet);
    purge::compute(known, &mut sheet);
    dead_head::compute(known, &mut sheet);
    dose::compute(known, &mut sheet);
    static_pressure::compute(known, &mut sheet);
    sheet
}

/// The lowest rating that is known, and never above the conservative one.
fn rating(known: &Known<'_>, sheet: &mut Sheet) {
    let unit = known.file.system.heat_pump.as_ref();
    let unit = unit.and_then(|unit| unit.maximum_pressure);
    let (conservative, rated) = known.model.pressure_limit(known.file);
    let mut reasoning = Reasoning::new("plan-lowest-rating", Authority::CommonPractice)
        .with("plan-conservative-limit", Figure::exact(conservative));
    let mut lowest = conservative;
    if let Some(unit) = unit {
        reasoning = reasoning.with("plan-unit-rating", Figure::written(unit));
    }
    if !rated {
        sheet.remarks.push(Remark::RatingUnknown);
    }
    let cart = known.file.visit.means.cart.as_ref();
    if let Some(cart) = cart.and_then(|cart| cart.maximum_pressure) {
        reasoning = reasoning.with("plan-cart-rating", Figure::written(cart));
        if cart.get() < lowest {
            lowest = cart.get();
        }
    }
    if has_tank(known) {
        let relief = GaugePressure::from_si(Unit::Bar.to_si(TANK_RELIEF_BAR));
        reasoning = reasoning.with("plan-usual-relief", Figure::exact(relief));
        if relief < lowest {
            lowest = relief;
        }
    }
    sheet.add(QuantityKind::LowestRating, Figure::exact(lowest), reasoning);
}

/// Whether the flow centre has an expansion tank.
pub(super) fn has_tank(known: &Known<'_>) -> bool {
    matches!(
        known.model.flow_centre,
        Some(FlowCentre::SealedWithTank { .. })
    )
}

fn volume(known: &Known<'_>, sheet: &mut Sheet) {
    let piping = &known.model.piping;
    let assumed = known
        .model
        .assumptions
        .contains(&Assumption::VolumeByCapacity);
    let reasoning = if assumed {
        Reasoning::new("plan-volume-by-capacity", Authority::Judgement).with(
            "plan-capacity",
            Figure::uncertain(known.model.demand.capacity),
        )
    } else {
        Reasoning::new(
            "plan-volume-by-pipe",
            Authority::Published("pipe-standards"),
        )
        .with("plan-plastic-volume", Figure::exact(piping.plastic_volume))
    };
    match piping.indoor_volume {
        None => sheet.lack(&[QuantityKind::IndoorVolume], Lack::IndoorPipe),
        Some(indoor) => sheet.add(
            QuantityKind::IndoorVolume,
            Figure::uncertain(indoor),
            Reasoning::new("plan-indoor-volume", Authority::Published("pipe-standards")),
        ),
    }
    sheet.add(
        QuantityKind::LoopVolume,
        Figure::uncertain(piping.volume),
        reasoning,
    );
}
