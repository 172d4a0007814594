//! Which systems and visits a figure counts.

use super::{Fleet, Habit, SystemRow, VisitRow};
use crate::named::named;
use chrono::{Datelike, NaiveDate};

named! {
    /// Quarters of the year as the weather has them, the site taken to lie on the
    /// northern hemisphere.
    #[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
    #[allow(missing_docs)] // the names are the meaning
    pub enum Season {
        Winter = "winter",
        Spring = "spring",
        Summer = "summer",
        Autumn = "autumn",
    }
}

impl Season {
    /// The season of a day.
    #[must_use]
    pub fn of(day: i32) -> Option<Self> {
        let month = NaiveDate::from_num_days_from_ce_opt(day)?.month();
        Some(Self::ALL[(month % 12 / 3) as usize])
    }
}

/// Something by which systems are grouped.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
#[allow(missing_docs)] // the labels in the catalog say what each means
pub enum Dimension {
    Crew,
    Year,
    Season,
    Fluid,
    Centre,
    Pipe,
    Habit(Habit),
}

impl Dimension {
    /// Every dimension, habits last.
    pub fn all() -> impl Iterator<Item = Self> {
        [
            Self::Crew,
            Self::Year,
            Self::Season,
            Self::Fluid,
            Self::Centre,
            Self::Pipe,
        ]
        .into_iter()
        .chain(Habit::ALL.into_iter().map(Self::Habit))
    }

    /// Stable identifier.
    #[must_use]
    pub fn id(self) -> &'static str {
        match self {
            Self::Crew => "crew",
            Self::Year => "year",
            Self::Season => "season",
            Self::Fluid => "fluid",
            Self::Centre => "centre",
            Self::Pipe => "pipe",
            Self::Habit(habit) => habit.id(),
        }
    }

    /// The group of a system as a number: of a word, a year, a season, or 0 and 1
    /// for a habit not kept and kept. None when unknown.
    #[must_use]
    pub fn group(self, system: &SystemRow) -> Option<u32> {
        let word = |number: u32| (number != 0).then_some(number);
        match self {
            Self::Crew => word(system.crew),
            Self::Fluid => word(system.fluid),
            Self::Centre => word(system.centre),
            Self::Pipe => word(system.pipe),
            Self::Year => year(system.started?),
            Self::Season => {
                Season::of(system.charged.or(system.started)?).map(|season| season as u32)
            }
            Self::Habit(habit) => system.habit(habit).map(u32::from),
        }
    }
}

fn year(day: i32) -> Option<u32> {
    let date = NaiveDate::from_num_days_from_ce_opt(day)?;
    u32::try_from(date.year()).ok()
}

/// Which visits among those of the chosen systems.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Default)]
pub enum Aspect {
    /// Every visit.
    #[default]
    All,
    /// Calls because of trouble.
    Callbacks,
    /// The first such call after commissioning.
    FirstCallbacks,
    /// Calls with the same cause as a call not more days before.
    Repeats(i32),
    /// Calls whose fix did not hold so many days.
    NotHeld(i32),
    /// Causes found within so many days of commissioning.
    Early(i32),
}

/// What is counted.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Filter {
    /// First day of visits.
    pub from: Option<i32>,
    /// Last day of visits.
    pub to: Option<i32>,
    /// Groups that systems must be in.
    pub groups: Vec<(Dimension, u32)>,
    /// Systems commissioned on this day or later.
    pub started_from: Option<i32>,
    /// Systems commissioned on this day or earlier.
    pub started_to: Option<i32>,
    /// The confirmed cause.
    pub cause: Option<u32>,
    /// Which visits.
    pub aspect: Aspect,
}

impl Filter {
    /// Whether a system counts.
    #[must_use]
    pub fn system(&self, system: &SystemRow) -> bool {
        let mut groups = self.groups.iter();
        groups.all(|(dimension, group)| dimension.group(system) == Some(*group))
            && self
                .started_from
                .is_none_or(|from| system.started.is_some_and(|day| day >= from))
            && self
                .started_to
                .is_none_or(|to| system.started.is_some_and(|day| day <= to))
    }

    /// Whether a day lies in the period; a visit without day only where no
    /// period is asked for.
    #[must_use]
    pub fn day(&self, day: Option<i32>) -> bool {
        self.from
            .is_none_or(|from| day.is_some_and(|day| day >= from))
            && self.to.is_none_or(|to| day.is_some_and(|day| day <= to))
    }

    /// Whether a visit counts by its day and cause.
    #[must_use]
    pub fn visit(&self, fleet: &Fleet, visit: &VisitRow) -> bool {
        self.day(visit.day)
            && self
                .cause
                .is_none_or(|cause| fleet.causes(visit).contains(&cause))
    }

    /// The same, narrowed to a group. A group of the same dimension is replaced.
    #[must_use]
    pub fn with_group(&self, dimension: Dimension, group: u32) -> Self {
        let mut narrowed = self.clone();
        narrowed.groups.retain(|(known, _)| *known != dimension);
        narrowed.groups.push((dimension, group));
        narrowed
    }

    /// The same, narrowed to a cause.
    #[must_use]
    pub fn with_cause(&self, cause: u32) -> Self {
        Self {
            cause: Some(cause),
            ..self.clone()
        }
    }

    /// The same, other visits.
    #[must_use]
    pub fn with_aspect(&self, aspect: Aspect) -> Self {
        Self {
            aspect,
            ..self.clone()
        }
    }

    /// The visits that count, by the numbers of their rows, latest day first.
    #[must_use]
    pub fn visits(&self, fleet: &Fleet) -> Vec<i64> {
        let mut found = Vec::new();
        for (system, visits) in fleet.by_system() {
            if !self.system(system) {
                continue;
            }
            let chosen = visits.iter().enumerate().filter(|(place, visit)| {
                self.visit(fleet, visit) && self.has_aspect(fleet, system, visits, *place)
            });
            found.extend(chosen.map(|(_, visit)| (visit.day, visit.number)));
        }
        found.sort_unstable_by(|a, b| b.cmp(a));
        found.into_iter().map(|(_, number)| number).collect()
    }

    fn has_aspect(
        &self,
        fleet: &Fleet,
        system: &SystemRow,
        visits: &[VisitRow],
        place: usize,
    ) -> bool {
        let visit = &visits[place];
        let wanted = |cause: &&u32| self.cause.is_none_or(|only| only == **cause);
        match self.aspect {
            Aspect::All => true,
            Aspect::Callbacks => visit.callback,
            Aspect::FirstCallbacks => {
                let first = super::board::first_callback(self, fleet, system, visits);
                first.is_some_and(|first| first.number == visit.number)
            }
            Aspect::Repeats(window) => fleet
                .causes(visit)
                .iter()
                .filter(wanted)
                .any(|cause| super::board::repeats(fleet, visits, place, *cause, window)),
            Aspect::NotHeld(horizon) => fleet.causes(visit).iter().filter(wanted).any(|cause| {
                super::board::held(fleet, visits, place, *cause, horizon) == Some(false)
            }),
            Aspect::Early(days) => {
                let age = system
                    .started
                    .zip(visit.day)
                    .map(|(start, day)| day - start);
                age.is_some_and(|age| (0..=days).contains(&age))
                    && fleet.causes(visit).iter().any(|cause| wanted(&cause))
            }
        }
    }
}
