use super::*;
use crate::figures::Figure;
use crate::plan::quantity::Sheet;
use crate::plan::{
    Basis, CautionId, Hazard, Observation, Origin, ProofTime, Side, Stage, StepId, TimerKind,
};
use crate::records::{GateEntry, Phase, ReadingPoint};
use crate::units::TemperatureDifference;
use chrono::FixedOffset;

const QUARTER: f64 = 900.0;

fn limit(seconds: f64) -> Limit {
    Limit {
        value: Figure::exact(Duration::from_si(seconds)),
        basis: Basis::Fixed(Origin::CommonPractice),
    }
}

/// Purge for a quarter of an hour, until no bubble is seen for as long.
fn step() -> PlannedStep {
    PlannedStep {
        number: 2,
        id: StepId::new("purge"),
        stage: Stage::Purge,
        side: Side::Loop,
        serves: Vec::new(),
        hazards: Vec::new(),
        cautions: Vec::new(),
        acknowledge: false,
        condition: None,
        tools: Vec::new(),
        materials: Vec::new(),
        timers: vec![PlannedTimer {
            kind: TimerKind::Purge,
            time: limit(QUARTER),
        }],
        quantities: Vec::new(),
        gate: vec![Gate {
            looked: Looked::Observation(Observation::BubbleFreeTime),
            rule: Rule::AtLeast,
            limit: limit(QUARTER),
            return_to: 1,
        }],
    }
}

fn at(seconds: i64) -> DateTime<Utc> {
    DateTime::from_timestamp(1_788_000_000 + seconds, 0).expect("a time")
}

fn taken_up(bubble_free_minutes: Option<f64>, ran: Option<i64>) -> Action {
    let entry = |value| GateEntry {
        looked: "bubble-free-time".to_owned(),
        value,
        unit: "min".to_owned(),
    };
    let timer = |seconds| StartedTimer {
        kind: "purge".to_owned(),
        started_at: at(0),
        stopped_at: Some(at(seconds)),
    };
    Action {
        done: true,
        gates: bubble_free_minutes.map(entry).into_iter().collect(),
        timers: ran.map(timer).into_iter().collect(),
        ..Action::default()
    }
}

#[test]
fn a_step_is_done_when_its_gate_passes_and_its_timer_has_run() {
    for (entered, ran, progress) in [
        (Some(15.0), Some(900), Progress::Done),
        (Some(20.0), Some(5000), Progress::Done),
        (None, Some(900), Progress::Unmet),
        (Some(3.0), Some(900), Progress::Unmet),
        (Some(15.0), None, Progress::Unmet),
        (Some(15.0), Some(899), Progress::Unmet),
        (Some(15.0), Some(-60), Progress::Unmet),
    ] {
        let action = taken_up(entered, ran);
        assert_eq!(step().progress(&action), progress, "{entered:?} {ran:?}");
        let without = Action {
            without: Some("The owner has to leave".to_owned()),
            ..action.clone()
        };
        let excused = match progress {
            Progress::Unmet => Progress::Excused,
            other => other,
        };
        assert_eq!(step().progress(&without), excused);
        let open = Action {
            done: false,
            ..action
        };
        assert_eq!(step().progress(&open), Progress::Open);
    }
}

/// A step of a stage with nothing to want, and what can hurt at it.
fn bare(number: usize, stage: Stage, hazards: &[Hazard]) -> PlannedStep {
    PlannedStep {
        number,
        id: StepId::new(&format!("step-{number}")),
        stage,
        hazards: hazards.to_vec(),
        timers: Vec::new(),
        gate: Vec::new(),
        ..step()
    }
}

#[test]
fn a_step_rests_on_what_makes_it_safe_and_on_every_gate_before_it() {
    let electric = [Hazard::Electric];
    let plan = WorkPlan {
        corrections: Vec::new(),
        steps: vec![
            bare(1, Stage::MakeSafe, &electric),
            bare(2, Stage::MakeSafe, &electric),
            bare(3, Stage::Inspect, &[]),
            bare(4, Stage::Open, &electric),
            PlannedStep {
                number: 5,
                ..step()
            },
            bare(6, Stage::Purge, &[]),
            bare(7, Stage::HandOver, &[]),
        ],
        tools: Vec::new(),
        materials: Vec::new(),
        proofs: Vec::new(),
        notes: Vec::new(),
        sheet: Sheet::default(),
    };
    let before = |number: usize, progress: &dyn Fn(usize) -> Progress| {
        let earlier = plan.unsettled_before(&plan.steps[number - 1], |step| progress(step.number));
        earlier.iter().map(|step| step.number).collect::<Vec<_>>()
    };
    let all_open = |_| Progress::Open;
    for (number, rests_on) in [
        (1, vec![]),
        // Of one stage neither comes first.
        (2, vec![]),
        // Nobody is hurt by reading a log.
        (3, vec![]),
        (4, vec![1, 2]),
        (5, vec![]),
        // A gate is a gate for what cannot hurt, too.
        (6, vec![5]),
        // What is handed over is told as it stands.
        (7, vec![]),
    ] {
        assert_eq!(before(number, &all_open), rests_on, "{number}");
    }
    for (progress, waits) in [
        (Progress::Open, true),
        (Progress::Unmet, true),
        (Progress::Done, false),
        (Progress::Excused, false),
        (Progress::LeftOut, false),
    ] {
        let found = before(6, &|_| progress);
        assert_eq!(!found.is_empty(), waits, "{progress:?}");
    }
}

#[test]
fn a_step_done_before_one_that_it_rests_on_is_not_as_good_as_done() {
    let mut action = taken_up(Some(15.0), Some(900));
    action.ahead_of = vec!["lock-power-off".to_owned()];
    assert_eq!(
        step().wants(&action, None),
        [Want::Earlier("lock-power-off")]
    );
    assert_eq!(step().progress(&action), Progress::Unmet);
    action.without = Some("The breaker was off".to_owned());
    assert_eq!(step().progress(&action), Progress::Excused);
}

#[test]
fn only_a_step_that_asks_for_it_waits_for_its_cautions_to_be_acknowledged() {
    let cautions = ["lock-and-prove-dead", "dry-floor"].map(CautionId::new);
    let mut step = PlannedStep {
        cautions: cautions.to_vec(),
        acknowledge: true,
        ..step()
    };
    let mut action = Action {
        acknowledged: vec!["dry-floor".to_owned()],
        ..Action::default()
    };
    assert_eq!(step.unacknowledged(&action), [&cautions[0]]);
    action.acknowledged.push("lock-and-prove-dead".to_owned());
    assert!(step.unacknowledged(&action).is_empty());
    action.acknowledged.clear();
    step.acknowledge = false;
    assert!(step.unacknowledged(&action).is_empty());
}

#[test]
fn a_step_left_out_wants_nothing_to_be_told() {
    let action = Action {
        skipped: Some("No cart on the van".to_owned()),
        ..Action::default()
    };
    assert_eq!(step().progress(&action), Progress::LeftOut);
}

#[test]
fn what_is_wanted_names_the_gate_and_the_time_that_ran() {
    let step = step();
    let gate = &step.gate[0];
    let timer = &step.timers[0];
    let found = PlainMeasure {
        value: 3.0,
        unit: Unit::Minute,
    };
    assert_eq!(
        step.wants(&taken_up(Some(3.0), Some(120)), None),
        [
            Want::Gate {
                gate,
                found: Some(found)
            },
            Want::Timer {
                timer,
                run: Run::For(Duration::from_si(120.0))
            },
        ]
    );
    assert_eq!(
        step.wants(&taken_up(None, None), Some(at(0))),
        [
            Want::Gate { gate, found: None },
            Want::Timer {
                timer,
                run: Run::NotStarted
            },
        ]
    );
}

#[test]
fn a_timer_under_way_counts_up_to_now_and_one_whose_end_is_lost_counts_nothing() {
    let mut action = taken_up(Some(15.0), Some(0));
    action.timers[0].stopped_at = None;
    for (now, met) in [(Some(at(899)), false), (Some(at(900)), true), (None, false)] {
        assert_eq!(step().wants(&action, now).is_empty(), met, "{now:?}");
    }
    // As a record reads that was kept before ends were.
    assert_eq!(step().progress(&action), Progress::Unmet);
}

#[test]
fn an_entry_in_another_measure_or_for_another_gate_is_none() {
    for (looked, unit) in [("bubble-free-time", "psi"), ("clear-return-time", "min")] {
        let mut action = taken_up(Some(15.0), Some(900));
        action.gates[0].looked = looked.to_owned();
        action.gates[0].unit = unit.to_owned();
        assert_eq!(step().progress(&action), Progress::Unmet, "{looked} {unit}");
    }
}

fn pressure(psi: f64, day: Option<u32>) -> Reading {
    let value = PlainMeasure {
        value: psi,
        unit: Unit::Psi,
    };
    let mut reading = Reading::new(ReadingPoint::StaticPressure, value).expect("a reading");
    reading.phase = Phase::Left;
    reading.taken_at = day.map(|day| {
        let moment = NaiveDate::from_ymd_opt(2026, 8, day).and_then(|day| day.and_hms_opt(9, 0, 0));
        let here = FixedOffset::west_opt(5 * 3600).expect("a zone");
        moment
            .and_then(|moment| moment.and_local_timezone(here).single())
            .expect("a time")
    });
    reading
}

#[test]
fn a_proof_holds_a_reading_to_both_ends_of_its_band() {
    let psi = |value: f64| Limit {
        value: Figure::exact(crate::units::GaugePressure::from_si(Unit::Psi.to_si(value))),
        basis: Basis::Fixed(Origin::CommonPractice),
    };
    let mut proof = PlannedProof {
        reading: ReadingPoint::StaticPressure,
        mode: crate::records::OperatingMode::Idle,
        when: ProofTime::Now,
        at_least: Some(psi(67.5)),
        at_most: Some(psi(69.5)),
        wanted: Vec::new(),
    };
    for (read, proves) in [
        (58.0, false),
        (67.5, true),
        (68.0, true),
        (69.5, true),
        (70.0, false),
    ] {
        assert_eq!(proof.proves(&pressure(read, None)), Some(proves), "{read}");
    }
    proof.at_most = None;
    assert_eq!(proof.proves(&pressure(70.0, None)), Some(true));
    proof.at_least = None;
    assert_eq!(proof.proves(&pressure(58.0, None)), None);
}

#[test]
fn what_is_read_on_a_later_day_shows_that_it_holds_and_not_that_it_was_done() {
    let visited = NaiveDate::from_ymd_opt(2026, 8, 14).expect("a day");
    let (before_leaving, next_day) = (pressure(58.0, None), pressure(56.0, Some(15)));
    let both = [&before_leaving, &next_day];
    assert_eq!(ProofTime::Now.of(&both, visited), [&before_leaving]);
    assert_eq!(ProofTime::Rechecks.of(&both, visited), [&next_day]);
    // The next day is the first recheck, and neither of the others.
    assert_eq!(ProofTime::AfterDay.of(&both, visited), [&next_day]);
    assert!(ProofTime::AfterWeek.of(&both, visited).is_empty());
    assert!(ProofTime::AfterMonth.of(&both, visited).is_empty());
    let (week, month) = (pressure(54.0, Some(21)), pressure(53.0, Some(31)));
    let all = [&before_leaving, &week, &month];
    assert_eq!(ProofTime::AfterWeek.of(&all, visited), [&week]);
    assert_eq!(ProofTime::AfterMonth.of(&all, visited), [&month]);
    // Read before leaving only: nothing was read later.
    let only = [&before_leaving];
    assert_eq!(
        ProofTime::Rechecks.of(&only, visited),
        Vec::<&Reading>::new()
    );
    // The work was finished on the second day: that is when it was proved.
    let late = pressure(68.0, Some(15));
    assert_eq!(ProofTime::Now.of(&[&late], visited), [&late]);
    assert_eq!(ProofTime::Now.of(&[], visited), Vec::<&Reading>::new());
}

#[test]
fn the_difference_of_two_samples_is_worked_out_of_them() {
    let gate = Gate {
        looked: Looked::Observation(Observation::SampleDifference),
        rule: Rule::AtMost,
        limit: Limit {
            value: Figure::exact(TemperatureDifference::from_si(2.0 / 1.8)),
            basis: Basis::Fixed(Origin::Judgement),
        },
        return_to: 1,
    };
    let entry = |looked: &str, value: f64, unit: &str| GateEntry {
        looked: looked.to_owned(),
        value,
        unit: unit.to_owned(),
    };
    let mut action = Action {
        gates: vec![entry("freeze_point_supply", 12.5, "degF")],
        ..Action::default()
    };
    assert_eq!(gate.found(&action), None);
    // 25 F is -3.889 C: 12.5 F apart, whichever unit the other was read in.
    action
        .gates
        .push(entry("freeze_point_return", -3.8889, "degC"));
    // What somebody thinks the difference is does not count.
    action.gates.push(entry("sample-difference", 1.0, "degF"));
    let found = gate.found(&action).expect("both are there");
    assert_eq!(found.unit, Unit::DifferenceFahrenheit);
    assert!((found.value - 12.5).abs() < 0.01, "{found:?}");
    assert!(!gate.passes(&found));
    action.gates[0] = entry("freeze_point_supply", 26.5, "degF");
    assert!(gate.passes(&gate.found(&action).expect("both are there")));
}
