//! The pipe and what it holds.

use super::{Assumption, Demand};
use crate::hydraulics::pipe::{Pipe, PipeError, PipeSeries};
use crate::records::{self, NominalInch, PipeRun, Sdr, System};
use crate::uncertainty::Uncertain;
use crate::units::{Length, Quantity, Unit, Volume};

/// Fluid in ground loop and indoor pipe per ton where nothing is recorded, gal:
/// 300 ft of bore with a 3/4 in U-bend hold 18 gal, a 1 in one 28 gal.
/// Derived from ASTM D3035 diameters; the length is common practice, no source.
const VOLUME_PER_TON_GAL: f64 = 21.0;
const VOLUME_PER_TON_SPREAD: f64 = 0.40;
/// Average walls are about 6 % over the least wall, so the bore is smaller than
/// the tables say; and lengths are rarely measured. Judgement.
const VOLUME_FROM_TABLE: f64 = 0.975;
const VOLUME_SPREAD: f64 = 0.04;
/// Headers and indoor pipe hold this share of the circuits when unrecorded. Judgement.
const UNRECORDED_SHARE: f64 = 0.15;
const UNRECORDED_SPREAD: f64 = 0.10;
/// Fluid in the exchanger and flow centre, gal per ton. Judgement.
const UNIT_VOLUME_PER_TON_GAL: f64 = 0.5;
/// Share by which what the exchanger holds is uncertain. Judgement.
const INDOOR_SPREAD: f64 = 0.3;
/// Ratio of outside diameter to wall that most loops have. Common practice, no source.
const USUAL_DIAMETER_RATIO: f64 = 11.0;

/// A number of equal lengths of pipe.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Section {
    /// How many.
    pub count: u32,
    /// The pipe.
    pub pipe: Pipe,
    /// Length of each.
    pub length: Length,
    /// Whether the wall gives like plastic.
    pub plastic: bool,
}

impl Section {
    /// What all of them hold, by the published least wall.
    pub fn volume(&self) -> Volume {
        self.pipe.volume(self.length) * f64::from(self.count)
    }
}

/// The pipe and what it holds.
#[derive(Clone, PartialEq, Debug)]
pub struct Piping {
    /// Circuits, grouped; empty when unknown.
    pub circuits: Vec<Section>,
    /// Headers, run by run; empty when unknown.
    pub headers: Vec<Section>,
    /// Indoor pipe; empty when unknown.
    pub indoor: Vec<Section>,
    /// Everything the loop holds.
    pub volume: Uncertain<Volume>,
    /// What indoor pipe and exchanger hold of it; none where the pipe is unknown.
    pub indoor_volume: Option<Uncertain<Volume>>,
    /// The part of it in plastic pipe.
    pub plastic_volume: Volume,
    /// Outside diameter over wall of most of the plastic pipe.
    pub diameter_ratio: f64,
}

impl Piping {
    pub(super) fn of(system: &System, demand: &Demand, assumptions: &mut Vec<Assumption>) -> Self {
        let ground = system.ground.as_ref();
        let circuits: Vec<Section> = ground
            .into_iter()
            .flat_map(|ground| &ground.circuits)
            .filter_map(|group| section(group.count, &group.pipe, group.length.get()))
            .collect();
        let run = |run: &PipeRun| section(1, &run.pipe, run.length.get());
        let headers: Vec<Section> = ground
            .into_iter()
            .flat_map(|ground| &ground.headers)
            .filter_map(run)
            .collect();
        let indoor: Vec<Section> = system.indoor.iter().filter_map(run).collect();
        let tons = Unit::Ton.from_si(demand.capacity.value().si());
        let gallons = |gallons: f64| Volume::from_si(Unit::Gallon.to_si(gallons));
        let all = |sections: &[Section]| sections.iter().map(Section::volume).sum::<Volume>();
        let in_circuits = all(&circuits) * VOLUME_FROM_TABLE;
        let unit = system
            .heat_pump
            .as_ref()
            .and_then(|unit| unit.exchanger.as_ref());
        let unit = unit
            .and_then(|exchanger| exchanger.volume)
            .map_or(gallons(UNIT_VOLUME_PER_TON_GAL * tons), |volume| {
                volume.get()
            });
        let indoor_volume = (!indoor.is_empty()).then(|| {
            let in_pipe = all(&indoor) * VOLUME_FROM_TABLE;
            let spread = (VOLUME_SPREAD * in_pipe.si()).hypot(INDOOR_SPREAD * unit.si());
            Uncertain::new(in_pipe + unit, spread)
        });
        let volume = if circuits.is_empty() {
            assumptions.push(Assumption::CircuitsUnknown);
            assumptions.push(Assumption::VolumeByCapacity);
            let relative = demand.capacity.standard() / demand.capacity.value().si();
            let spread = VOLUME_PER_TON_SPREAD.hypot(relative);
            Uncertain::relative(gallons(VOLUME_PER_TON_GAL * tons), spread)
        } else {
            let mut total = in_circuits + (all(&headers) + all(&indoor)) * VOLUME_FROM_TABLE;
            let mut spread = VOLUME_SPREAD * total.si();
            if headers.is_empty() && indoor.is_empty() {
                assumptions.push(Assumption::HeadersUnknown);
                total += in_circuits * UNRECORDED_SHARE;
                spread = spread.hypot(UNRECORDED_SPREAD * in_circuits.si());
            }
            total += unit;
            Uncertain::new(total, spread)
        };
        let plastic: Vec<&Section> = circuits
            .iter()
            .chain(&headers)
            .chain(&indoor)
            .filter(|section| section.plastic)
            .collect();
        let plastic_volume = if plastic.is_empty() {
            volume.value()
        } else {
            plastic
                .iter()
                .map(|section| section.volume())
                .sum::<Volume>()
                * VOLUME_FROM_TABLE
        };
        let largest = plastic
            .iter()
            .max_by(|a, b| a.volume().si().total_cmp(&b.volume().si()));
        let diameter_ratio = largest.map(|section| section.pipe.diameter_ratio().si());
        if diameter_ratio.is_none() {
            assumptions.push(Assumption::PipeRatioUsual);
        }
        Self {
            circuits,
            headers,
            indoor,
            indoor_volume,
            volume,
            plastic_volume,
            diameter_ratio: diameter_ratio.unwrap_or(USUAL_DIAMETER_RATIO),
        }
    }

    /// How many circuits there are, if known.
    pub fn circuit_count(&self) -> Option<u32> {
        let count = self.circuits.iter().map(|section| section.count).sum();
        (count > 0).then_some(count)
    }
}

fn section(count: u32, pipe: &records::Pipe, length: Length) -> Option<Section> {
    let plastic = matches!(
        pipe,
        records::Pipe::IpsPe { .. } | records::Pipe::MetricPe { .. } | records::Pipe::Plain { .. }
    );
    Some(Section {
        count,
        pipe: pipe_of(pipe).ok()?,
        length,
        plastic,
    })
}

/// The dimensions behind a recorded pipe.
///
/// # Errors
/// [`PipeError`] when the tables do not hold it.
pub fn pipe_of(pipe: &records::Pipe) -> Result<Pipe, PipeError> {
    match pipe {
        records::Pipe::IpsPe { size, sdr } => {
            PipeSeries::IpsPolyethylene.pipe(inch(*size), ratio(*sdr))
        }
        records::Pipe::MetricPe { outside_mm, sdr } => {
            PipeSeries::MetricPolyethylene.pipe(&outside_mm.to_string(), ratio(*sdr))
        }
        records::Pipe::CopperL { size } => PipeSeries::CopperL.pipe(inch(*size), 0.0),
        records::Pipe::Hose { size } => PipeSeries::Hose.pipe(inch(*size), 0.0),
        records::Pipe::Plain { inside_diameter } => {
            // Wall of SDR 11 and a smooth bore stand for what is not said.
            let bore = inside_diameter.get();
            let outside = bore * (USUAL_DIAMETER_RATIO / (USUAL_DIAMETER_RATIO - 2.0));
            Ok(Pipe::new(outside, bore, Length::from_si(1.5e-6))?)
        }
    }
}

fn inch(size: NominalInch) -> &'static str {
    match size {
        NominalInch::Half => "1/2",
        NominalInch::ThreeQuarter => "3/4",
        NominalInch::One => "1",
        NominalInch::OneAndQuarter => "1 1/4",
        NominalInch::OneAndHalf => "1 1/2",
        NominalInch::Two => "2",
        NominalInch::Three => "3",
        NominalInch::Four => "4",
        NominalInch::Six => "6",
    }
}

fn ratio(sdr: Sdr) -> f64 {
    match sdr {
        Sdr::Sdr9 => 9.0,
        Sdr::Sdr11 => 11.0,
        Sdr::Sdr13_5 => 13.5,
        Sdr::Sdr15_5 => 15.5,
        Sdr::Sdr17 => 17.0,
    }
}
