//! What the board groups a system by. The thresholds of good practice are those
//! of the diagnosis, so that board and answer never disagree.

use crate::evidence::facts;
use crate::fleet::Habit;
use crate::model::LoopModel;
use crate::records::field::{FieldValue, field};
use crate::records::visit_file::VisitFile;
use crate::store::BoardFacts;
use chrono::NaiveDate;

/// Habits whose neglect is a fact of the diagnosis.
const NEGLECT: [(&str, Habit); 8] = [
    ("flush-too-slow", Habit::VelocityReached),
    ("flush-too-short", Habit::FlushedLongEnough),
    ("no-filter", Habit::Filtered),
    ("heat-pump-not-isolated-in-flush", Habit::UnitIsolated),
    ("water-not-tested", Habit::WaterTested),
    ("pipe-not-relaxed", Habit::PipeRelaxed),
    ("circulators-not-bled", Habit::CirculatorsBled),
    ("concentration-not-checked", Habit::FreezePointChecked),
];

/// Filter bags from which on there are stages.
const STAGES: u32 = 2;

/// What the board groups a system by.
pub(super) fn board_facts(file: &VisitFile) -> BoardFacts {
    let record = &file.commissioning;
    let started = record.date.or(file.system.installed_on);
    let choice = |id: &str| match field(id)?.read(file)? {
        FieldValue::Choice(name) => Some(name),
        _ => None,
    };
    let mut result = BoardFacts {
        started,
        charged: record.charged_on(),
        crew: record.crew.clone(),
        fluid: choice("fluid.kind"),
        centre: choice("flow_centre"),
        pipe: choice("ground.pipe"),
        ..BoardFacts::default()
    };
    let mut set = |habit: Habit, kept: bool| {
        result.known |= habit.bit();
        if kept {
            result.kept |= habit.bit();
        }
    };
    let known = facts(
        file,
        &LoopModel::of(file),
        started.unwrap_or(NaiveDate::MIN),
    );
    let fact = |name: &str| {
        let found = known.iter().find(|(id, _)| id.as_str() == name);
        found.map(|(_, value)| *value)
    };
    for (name, habit) in NEGLECT {
        if let Some(neglected) = fact(name) {
            set(habit, !neglected);
        }
    }
    match (record.filter_stages, record.filtered) {
        (Some(stages), _) => set(Habit::TwoFilterStages, stages >= STAGES),
        (None, Some(false)) => set(Habit::TwoFilterStages, false),
        (None, _) => {}
    }
    if let Some(high) = fact("charged-high") {
        let low = fact("charged-low") == Some(true);
        set(Habit::ChargeInBand, !high && !low);
    }
    result
}
