//! An invented fleet, to see whether the board finds what was put into it and
//! nothing else. No person, company or place in it exists.
//!
//! Everything is drawn independently: crew, season, fluid, flow centre, pipe and
//! each habit. Each cause comes to each system by itself, after an exponential
//! time. Three effects are planted ([`PLANTED`]); nothing else matters.

use super::{Dimension, Habit};
use crate::exchange::FollowUp;
use crate::records::{
    CircuitGroup, Commissioning, FlowCentre, GroundKind, GroundLoop, LoopFluid, LoopFluidKind,
    NominalInch, Outcome, Pipe, Sdr, Site, SiteId, System, SystemId, Verdict, Visit, VisitId,
};
use crate::units::{Measure, Unit};
use chrono::{Days, NaiveDate};
use uuid::Uuid;

/// Causes and how probable each is within two years of commissioning, where
/// nothing is planted. Invented.
pub const CAUSES: [(&str, f64); 15] = [
    ("air-left-in-circuit", 0.035),
    ("charge-left-too-low", 0.030),
    ("debris-left-in-loop", 0.020),
    ("pipe-never-relaxed", 0.020),
    ("flush-too-weak", 0.020),
    ("antifreeze-too-weak", 0.020),
    ("antifreeze-unmixed", 0.015),
    ("scaling-fill-water", 0.015),
    ("leak-indoors", 0.015),
    ("strainer-loaded", 0.015),
    ("flow-switch-or-sensor-fault", 0.015),
    ("circulators-not-bled", 0.010),
    ("isolation-valve-part-closed", 0.010),
    ("dial-gauge-lies", 0.010),
    ("loop-too-short", 0.006),
];

/// Names of the invented crews.
pub const CREWS: [&str; 8] = [
    "Crew Alder",
    "Crew Birch",
    "Crew Cedar",
    "Crew Elm",
    "Crew Hazel",
    "Crew Larch",
    "Crew Maple",
    "Crew Rowan",
];

/// How many times as fast the planted causes come.
pub const TIMES: f64 = 4.0;

/// What is planted: the dimension, the group as a word, and the cause that comes
/// faster. For a habit the group is the one that did not keep it.
pub const PLANTED: [(Dimension, &str, &str); 3] = [
    (Dimension::Crew, "Crew Hazel", "debris-left-in-loop"),
    (
        Dimension::Habit(Habit::WaterTested),
        "",
        "scaling-fill-water",
    ),
    (Dimension::Fluid, "ethanol", "antifreeze-unmixed"),
];

/// Systems are commissioned within these days, and looked at until the last.
const FIRST: i32 = 2016;
const YEARS: u32 = 10;
/// Days from the last commissioning to the end of the records.
const AFTER: u32 = 180;

/// A system with everything that happened at it.
#[derive(Clone, PartialEq, Debug)]
pub struct InventedSystem {
    /// Its site.
    pub site_id: SiteId,
    /// Its identifier.
    pub system_id: SystemId,
    /// Where it stands.
    pub site: Site,
    /// The system.
    pub system: System,
    /// How it was commissioned.
    pub commissioning: Commissioning,
    /// Its visits, in order of days.
    pub visits: Vec<(VisitId, Visit)>,
    /// What was found out later about fixes.
    pub follow_ups: Vec<(Uuid, FollowUp)>,
}

/// Numbers that look random and are the same for the same seed everywhere.
/// SplitMix64: G. L. Steele et al., *Fast splittable pseudorandom number
/// generators*, OOPSLA 2014 (from memory).
struct Dice(u64);

impl Dice {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }
    /// Between 0 and 1, never 0.
    fn share(&mut self) -> f64 {
        ((self.next() >> 11) as f64 + 0.5) / (1_u64 << 53) as f64
    }
    fn chance(&mut self, share: f64) -> bool {
        self.share() < share
    }
    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.share()
    }
    fn below(&mut self, count: u32) -> u32 {
        (self.share() * f64::from(count)) as u32
    }
    fn pick<'a, T>(&mut self, from: &'a [T]) -> &'a T {
        &from[self.below(from.len() as u32) as usize]
    }
    /// Days until something that comes with this probability in two years.
    fn days(&mut self, in_two_years: f64, times: f64) -> f64 {
        let rate = -(1.0 - in_two_years).ln() / 730.0 * times;
        -self.share().ln() / rate
    }
    fn id(&mut self) -> Uuid {
        let bytes = (u128::from(self.next()) << 64 | u128::from(self.next())).to_be_bytes();
        uuid::Builder::from_random_bytes(bytes).into_uuid()
    }
    /// A flag that is sometimes unknown.
    fn known(&mut self, share: f64) -> Option<bool> {
        let kept = self.chance(share);
        (!self.chance(0.1)).then_some(kept)
    }
}

/// Systems one after the other, without end.
pub struct Fleet {
    dice: Dice,
    count: u32,
}

impl Fleet {
    /// The fleet of a seed.
    #[must_use]
    pub fn new(seed: u64) -> Self {
        // Neighbouring seeds must not give neighbouring sequences.
        Self {
            dice: Dice(Dice(seed).next()),
            count: 0,
        }
    }
}

impl Iterator for Fleet {
    type Item = InventedSystem;

    fn next(&mut self) -> Option<InventedSystem> {
        self.count += 1;
        let dice = &mut self.dice;
        let begin = NaiveDate::from_ymd_opt(FIRST, 1, 1)?;
        let span = YEARS * 365;
        let start = begin + Days::new(u64::from(dice.below(span)));
        let end = begin + Days::new(u64::from(span + AFTER));
        let commissioning = commissioning(dice, start);
        let system = system(dice, start);
        let site = Site {
            name: format!("Invented site {}", self.count),
            ..Site::default()
        };
        let (site_id, system_id) = (SiteId(dice.id()), SystemId(dice.id()));
        let mut events = events(dice, &system, &commissioning, start, end);
        events.sort_by_key(|(day, _)| *day);
        let mut made = InventedSystem {
            site_id,
            system_id,
            site,
            system,
            commissioning,
            visits: Vec::new(),
            follow_ups: Vec::new(),
        };
        for (day, cause) in events {
            let id = VisitId(dice.id());
            made.visits.push((id, visit(dice, day, cause)));
            let asked = cause.is_some_and(|cause| !cause.is_empty()) && dice.chance(0.5);
            if let Some(cause) = cause.filter(|_| asked) {
                let seen = day + Days::new(u64::from(30 + dice.below(300)));
                let follow_up = FollowUp {
                    visit: id,
                    cause: cause.to_owned(),
                    held: true,
                    day: seen.min(end),
                };
                made.follow_ups.push((dice.id(), follow_up));
            }
        }
        // Nobody says that a fix holds on a day when it had failed.
        let came_back = |one: &FollowUp| {
            let same = |visit: &Visit| visit.verdicts.iter().any(|found| found.cause == one.cause);
            let after = made
                .visits
                .iter()
                .skip_while(|(id, _)| *id != one.visit)
                .skip(1);
            after
                .into_iter()
                .any(|(_, visit)| same(visit) && visit.date <= Some(one.day))
        };
        let kept: Vec<_> = made
            .follow_ups
            .iter()
            .filter(|(_, one)| !came_back(one))
            .cloned()
            .collect();
        made.follow_ups = kept;
        Some(made)
    }
}

fn commissioning(dice: &mut Dice, start: NaiveDate) -> Commissioning {
    let velocity = dice.known(0.7);
    let long = dice.known(0.7);
    let in_band = dice.known(0.75);
    let stages = dice.below(100);
    let filtered = (!dice.chance(0.1)).then_some(stages >= 15);
    Commissioning {
        date: Some(start),
        crew: Some((*dice.pick(&CREWS)).to_owned()),
        flush_velocity: velocity.map(|reached| {
            let (low, high) = if reached { (2.1, 3.0) } else { (1.0, 1.7) };
            Measure::new(tenth(dice.between(low, high)), Unit::FootPerSecond)
        }),
        flush_duration: long.map(|long| {
            let (low, high) = if long { (2.5, 5.0) } else { (0.5, 1.5) };
            Measure::new(tenth(dice.between(low, high)), Unit::Hour)
        }),
        filtered,
        filter_stages: filtered
            .filter(|used| *used)
            .map(|_| if stages >= 55 { 2 } else { 1 }),
        heat_pump_isolated: dice.known(0.8),
        water_tested: dice.known(0.7),
        pipe_relaxed: dice.known(0.6),
        circulators_bled: dice.known(0.8),
        charge_pressure: in_band.map(|kept| {
            let (low, high) = if kept { (45.0, 65.0) } else { (75.0, 95.0) };
            Measure::new(dice.between(low, high).round(), Unit::Psi)
        }),
        concentration_checked: dice.known(0.7),
        ..Commissioning::default()
    }
}

fn tenth(value: f64) -> f64 {
    (value * 10.0).round() / 10.0
}

fn system(dice: &mut Dice, start: NaiveDate) -> System {
    let fluid = match dice.below(100) {
        0..15 => LoopFluidKind::Ethanol,
        15..30 => LoopFluidKind::Methanol,
        30..40 => LoopFluidKind::EthyleneGlycol,
        _ => LoopFluidKind::PropyleneGlycol,
    };
    let centre = match dice.below(100) {
        0..50 => FlowCentre::Sealed {},
        50..70 => FlowCentre::SealedWithTank {
            tank_volume: None,
            pre_charge: None,
        },
        _ => FlowCentre::NonPressurised {
            reservoir_diameter: None,
        },
    };
    let size = *dice.pick(&[
        NominalInch::ThreeQuarter,
        NominalInch::One,
        NominalInch::OneAndQuarter,
    ]);
    let circuits = 2 + dice.below(5);
    System {
        installed_on: Some(start),
        flow_centre: Some(centre),
        ground: Some(GroundLoop {
            kind: Some(*dice.pick(&[GroundKind::Vertical, GroundKind::Horizontal])),
            circuits: vec![CircuitGroup {
                count: circuits,
                pipe: Pipe::IpsPe {
                    size,
                    sdr: Sdr::Sdr11,
                },
                length: Measure::new(f64::from(300 + 50 * dice.below(8)), Unit::Foot),
            }],
            ..GroundLoop::default()
        }),
        fluid: Some(LoopFluid {
            kind: fluid,
            volume_fraction: None,
        }),
        ..System::default()
    }
}

/// Whether something planted makes a cause come faster at a system.
fn times(system: &System, commissioning: &Commissioning, cause: &str) -> f64 {
    let planted = PLANTED.iter().any(|(dimension, group, planted)| {
        *planted == cause
            && match dimension {
                Dimension::Crew => commissioning.crew.as_deref() == Some(group),
                Dimension::Fluid => {
                    let ethanol = |fluid: &LoopFluid| fluid.kind == LoopFluidKind::Ethanol;
                    system.fluid.as_ref().is_some_and(ethanol)
                }
                _ => commissioning.water_tested == Some(false),
            }
    });
    if planted { TIMES } else { 1.0 }
}

type Event = (NaiveDate, Option<&'static str>);

/// Days of visits, each with its cause; an empty cause is a call that stayed
/// unexplained, and none is a check without trouble.
fn events(
    dice: &mut Dice,
    system: &System,
    commissioning: &Commissioning,
    start: NaiveDate,
    end: NaiveDate,
) -> Vec<Event> {
    let span = (end - start).num_days() as f64;
    let on = |days: f64| start + Days::new(days as u64);
    let check = dice.between(20.0, 180.0).min(span);
    let mut events: Vec<Event> = vec![(on(check), None)];
    let mut happen = |dice: &mut Dice, probability: f64, faster: f64, cause: &'static str| {
        let mut days = dice.days(probability, faster);
        while days < span {
            events.push((on(days), Some(cause)));
            // Some fixes do not hold; the others hold for good.
            if cause.is_empty() || !dice.chance(0.15) {
                break;
            }
            days += dice.between(15.0, 300.0);
        }
    };
    for (cause, probability) in CAUSES {
        happen(
            dice,
            probability,
            times(system, commissioning, cause),
            cause,
        );
    }
    happen(dice, 0.05, 1.0, "");
    events
}

fn visit(dice: &mut Dice, day: NaiveDate, cause: Option<&str>) -> Visit {
    let complaint = cause.map(|_| "Invented complaint".to_owned());
    let verdict = cause
        .filter(|cause| !cause.is_empty())
        .map(|cause| Verdict {
            cause: cause.to_owned(),
            confirmed: true,
            by_check: None,
        });
    let outcome = match cause {
        None => Outcome::NothingWrong,
        Some("") => Outcome::Open,
        Some(_) => Outcome::Fixed,
    };
    let long = cause.is_some();
    let (low, high) = if long { (60.0, 300.0) } else { (20.0, 60.0) };
    Visit {
        date: Some(day),
        complaint,
        verdicts: verdict.into_iter().collect(),
        outcome: Some(outcome),
        time_spent: Some(Measure::new(dice.between(low, high).round(), Unit::Minute)),
        cost: long.then(|| Measure::new(dice.between(120.0, 900.0).round(), Unit::Plain)),
        ..Visit::default()
    }
}
