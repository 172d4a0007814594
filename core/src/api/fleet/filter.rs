//! Filters between words and numbers.

use crate::api::types::{FleetFilter, FleetGroup};
use crate::api::{ApiError, Wording};
use crate::fleet::{Aspect, Dimension, Filter, Fleet, Habit, Season, WordSort};
use crate::records::field::choice_key;
use chrono::{Datelike, NaiveDate};

/// A number that no word has: a filter by a name that is not there finds nothing.
const NOWHERE: u32 = u32::MAX;

pub(super) fn day(text: &str, wording: Wording) -> Result<i32, ApiError> {
    let date: Result<NaiveDate, _> = text.parse();
    let date = date.map_err(|_| {
        let context = [
            ("field", "day"),
            ("found", text),
            ("accepted", "YYYY-MM-DD"),
        ];
        ApiError::new("not-accepted", &context, wording)
    })?;
    Ok(date.num_days_from_ce())
}

fn date(day: i32) -> Option<String> {
    NaiveDate::from_num_days_from_ce_opt(day).map(|date| date.to_string())
}

fn sort(dimension: Dimension) -> Option<WordSort> {
    match dimension {
        Dimension::Crew => Some(WordSort::Crew),
        Dimension::Fluid => Some(WordSort::Fluid),
        Dimension::Centre => Some(WordSort::Centre),
        Dimension::Pipe => Some(WordSort::Pipe),
        Dimension::Year | Dimension::Season | Dimension::Habit(_) => None,
    }
}

/// The dimension with this identifier.
fn dimension(id: &str) -> Option<Dimension> {
    Dimension::all().find(|known| known.id() == id)
}

/// A group as a word to come back with.
pub(super) fn group_id(fleet: &Fleet, dimension: Dimension, group: u32) -> String {
    match dimension {
        Dimension::Year => group.to_string(),
        Dimension::Season => season(group).map_or("", Season::id).to_owned(),
        Dimension::Habit(_) if group == 0 => "not-kept".to_owned(),
        Dimension::Habit(_) => "kept".to_owned(),
        _ => fleet.word(group).to_owned(),
    }
}

/// A group as it is shown.
pub(super) fn group_label(
    fleet: &Fleet,
    dimension: Dimension,
    group: u32,
    wording: Wording,
) -> String {
    let catalog = wording.catalog();
    match dimension {
        Dimension::Crew | Dimension::Year => group_id(fleet, dimension, group),
        Dimension::Season => {
            let season = season(group).map_or("", Season::id);
            catalog.text(&format!("fleet-season-{season}"))
        }
        Dimension::Habit(habit) => habit_label(habit, group, wording),
        Dimension::Fluid | Dimension::Centre | Dimension::Pipe => {
            let word = fleet.word(group);
            let key = choice_key(word);
            if catalog.has(&key) {
                catalog.text(&key)
            } else {
                word.to_owned()
            }
        }
    }
}

fn habit_label(habit: Habit, group: u32, wording: Wording) -> String {
    let side = if group == 0 { ".not" } else { "" };
    wording
        .catalog()
        .text(&format!("habit-{}{side}", habit.id()))
}

fn season(group: u32) -> Option<Season> {
    Season::ALL.get(group as usize).copied()
}

/// The title of a cause; a cause that this program does not know shows as it is.
pub(super) fn cause_title(cause: &str, wording: Wording) -> String {
    let key = format!("cause-{cause}");
    if wording.catalog().has(&key) {
        wording.catalog().text(&key)
    } else {
        cause.to_owned()
    }
}

/// A filter as numbers.
pub(super) fn read(
    fleet: &Fleet,
    filter: &FleetFilter,
    wording: Wording,
) -> Result<Filter, ApiError> {
    let days = |text: &Option<String>| text.as_deref().map(|text| day(text, wording)).transpose();
    let cause = filter.cause.as_deref();
    let groups = filter.groups.iter().map(|one| group(fleet, one, wording));
    Ok(Filter {
        from: days(&filter.from)?,
        to: days(&filter.to)?,
        started_from: days(&filter.started_from)?,
        started_to: days(&filter.started_to)?,
        groups: groups.collect::<Result<_, _>>()?,
        cause: cause.map(|cause| fleet.number(WordSort::Cause, cause).unwrap_or(NOWHERE)),
        aspect: match &filter.aspect {
            None => Aspect::All,
            Some(text) => aspect(text).ok_or_else(|| unknown("aspect", text, wording))?,
        },
    })
}

fn unknown(field: &str, found: &str, wording: Wording) -> ApiError {
    ApiError::new(
        "no-such-name",
        &[("field", field), ("found", found)],
        wording,
    )
}

fn group(fleet: &Fleet, one: &FleetGroup, wording: Wording) -> Result<(Dimension, u32), ApiError> {
    let dimension =
        dimension(&one.dimension).ok_or_else(|| unknown("dimension", &one.dimension, wording))?;
    let text = one.group.as_str();
    let found = match dimension {
        Dimension::Year => text.parse().ok(),
        Dimension::Season => Season::from_id(text).map(|season| season as u32),
        Dimension::Habit(_) => match text {
            "kept" => Some(1),
            "not-kept" => Some(0),
            _ => None,
        },
        _ => sort(dimension).map(|sort| fleet.number(sort, text).unwrap_or(NOWHERE)),
    };
    let found = found.ok_or_else(|| unknown(dimension.id(), text, wording))?;
    Ok((dimension, found))
}

fn aspect(text: &str) -> Option<Aspect> {
    let (name, days) = match text.split_once(':') {
        Some((name, days)) => (name, days.parse().ok()?),
        None => (text, 0),
    };
    Some(match name {
        "callbacks" => Aspect::Callbacks,
        "first-callbacks" => Aspect::FirstCallbacks,
        "repeats" => Aspect::Repeats(days),
        "not-held" => Aspect::NotHeld(days),
        "early" => Aspect::Early(days),
        _ => return None,
    })
}

/// A filter as words.
pub(super) fn write(fleet: &Fleet, filter: &Filter) -> FleetFilter {
    FleetFilter {
        from: filter.from.and_then(date),
        to: filter.to.and_then(date),
        started_from: filter.started_from.and_then(date),
        started_to: filter.started_to.and_then(date),
        groups: filter
            .groups
            .iter()
            .map(|(dimension, group)| FleetGroup {
                dimension: dimension.id().to_owned(),
                group: group_id(fleet, *dimension, *group),
            })
            .collect(),
        cause: filter.cause.map(|cause| fleet.word(cause).to_owned()),
        aspect: match filter.aspect {
            Aspect::All => None,
            Aspect::Callbacks => Some("callbacks".to_owned()),
            Aspect::FirstCallbacks => Some("first-callbacks".to_owned()),
            Aspect::Repeats(days) => Some(format!("repeats:{days}")),
            Aspect::NotHeld(days) => Some(format!("not-held:{days}")),
            Aspect::Early(days) => Some(format!("early:{days}")),
        },
    }
}
