//! Systems and visits as small numbers, so that a hundred thousand are counted
//! in the blink of an eye.

use crate::named::named;
use std::collections::HashMap;
use std::ops::Range;

named! {
    /// Something that is done at commissioning or not, in the order of the work;
    /// the labels are `habit-<id>` and `habit-<id>.not`.
    #[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
    #[allow(missing_docs)] // the labels in the catalog say what each means
    pub enum Habit {
        VelocityReached = "velocity-reached",
        FlushedLongEnough = "flushed-long-enough",
        Filtered = "filtered",
        TwoFilterStages = "two-filter-stages",
        UnitIsolated = "unit-isolated",
        WaterTested = "water-tested",
        PipeRelaxed = "pipe-relaxed",
        CirculatorsBled = "circulators-bled",
        ChargeInBand = "charge-in-band",
        FreezePointChecked = "freeze-point-checked",
    }
}

impl Habit {
    /// Its place in a set of habits.
    #[must_use]
    pub fn bit(self) -> u32 {
        1 << self as u32
    }
}

named! {
    /// Sorts of word that rows refer to by number.
    #[derive(Copy, Clone, PartialEq, Eq, Hash, Debug)]
    #[allow(missing_docs)] // the names are the meaning
    pub enum WordSort {
        Crew = "crew",
        Fluid = "fluid",
        Centre = "centre",
        Pipe = "pipe",
        Cause = "cause",
    }
}

/// A system. Days count from the start of the common era; word 0 is unknown.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Default)]
pub struct SystemRow {
    /// Day of commissioning.
    pub started: Option<i32>,
    /// Day of the last charge.
    pub charged: Option<i32>,
    /// Who commissioned it.
    pub crew: u32,
    /// Its fluid.
    pub fluid: u32,
    /// Its kind of flow centre.
    pub centre: u32,
    /// The pipe of its circuits.
    pub pipe: u32,
    /// Habits of which it is known whether they were kept.
    pub known: u32,
    /// Habits that were kept, among those known.
    pub kept: u32,
}

impl SystemRow {
    /// Whether a habit was kept, if known.
    #[must_use]
    pub fn habit(&self, habit: Habit) -> Option<bool> {
        (self.known & habit.bit() != 0).then_some(self.kept & habit.bit() != 0)
    }
}

/// A visit.
#[derive(Copy, Clone, PartialEq, Debug, Default)]
pub struct VisitRow {
    /// What the keeper of the rows calls it.
    pub number: i64,
    /// Place of its system.
    pub system: u32,
    /// Its day.
    pub day: Option<i32>,
    /// Working time, min; 0 when not written down.
    pub minutes: f64,
    /// Cost; 0 when not written down.
    pub cost: f64,
    /// Whether somebody called because of trouble.
    pub callback: bool,
    pub(crate) causes: (u32, u32),
    pub(crate) follow_ups: (u32, u32),
}

/// What was found out later about the fix of a cause.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct FollowUpRow {
    /// The cause.
    pub cause: u32,
    /// Whether the fix still held.
    pub held: bool,
    /// On which day that was seen.
    pub day: i32,
}

/// All rows. Visits stand together by system, in order of days.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Fleet {
    /// Systems.
    pub systems: Vec<SystemRow>,
    /// Visits.
    pub visits: Vec<VisitRow>,
    causes: Vec<u32>,
    follow_ups: Vec<FollowUpRow>,
    words: HashMap<u32, (WordSort, String)>,
    /// The last day on which anything is known.
    pub last_day: Option<i32>,
}

impl Fleet {
    /// The confirmed causes of a visit.
    #[must_use]
    pub fn causes(&self, visit: &VisitRow) -> &[u32] {
        let (start, end) = visit.causes;
        &self.causes[start as usize..end as usize]
    }

    /// What was found out later about the fixes of a visit.
    #[must_use]
    pub fn follow_ups(&self, visit: &VisitRow) -> &[FollowUpRow] {
        let (start, end) = visit.follow_ups;
        &self.follow_ups[start as usize..end as usize]
    }

    /// A word; nothing for an unknown number.
    #[must_use]
    pub fn word(&self, number: u32) -> &str {
        self.words.get(&number).map_or("", |(_, word)| word)
    }

    /// The number of a word.
    #[must_use]
    pub fn number(&self, sort: WordSort, word: &str) -> Option<u32> {
        let same = |known: &(WordSort, String)| known.0 == sort && known.1 == word;
        let found = self.words.iter().find(|(_, known)| same(known));
        found.map(|(number, _)| *number)
    }

    /// Every word of a sort, by number.
    #[must_use]
    pub fn words(&self, sort: WordSort) -> Vec<u32> {
        let mut numbers: Vec<u32> = self
            .words
            .iter()
            .filter(|(_, known)| known.0 == sort)
            .map(|(number, _)| *number)
            .collect();
        numbers.sort_unstable();
        numbers
    }

    /// Visits of each system: pieces of [`Fleet::visits`].
    pub fn by_system(&self) -> impl Iterator<Item = (&SystemRow, &[VisitRow])> {
        self.visits
            .chunk_by(|a, b| a.system == b.system)
            .filter_map(|visits| {
                let system = self.systems.get(visits.first()?.system as usize)?;
                Some((system, visits))
            })
    }
}

/// Puts rows together.
#[derive(Default)]
pub struct Builder {
    fleet: Fleet,
    numbers: HashMap<(WordSort, String), u32>,
}

impl Builder {
    /// The number of a word, given on first need; nothing said is 0.
    pub fn number(&mut self, sort: WordSort, word: Option<&str>) -> u32 {
        let Some(word) = word.map(str::trim).filter(|word| !word.is_empty()) else {
            return 0;
        };
        let next = self.numbers.len() as u32 + 1;
        let key = (sort, word.to_owned());
        let number = *self.numbers.entry(key).or_insert(next);
        self.word(number, sort, word);
        number
    }

    /// A word that has its number already.
    pub fn word(&mut self, number: u32, sort: WordSort, word: &str) {
        let entry = self.fleet.words.entry(number);
        entry.or_insert_with(|| (sort, word.to_owned()));
    }

    /// Adds a system and says its place.
    pub fn system(&mut self, row: SystemRow) -> u32 {
        self.fleet.systems.push(row);
        self.fleet.systems.len() as u32 - 1
    }

    /// Adds a visit with its confirmed causes and what was found out later.
    pub fn visit(&mut self, mut row: VisitRow, causes: &[u32], follow_ups: &[FollowUpRow]) {
        row.causes = range(&mut self.fleet.causes, causes);
        row.follow_ups = range(&mut self.fleet.follow_ups, follow_ups);
        let seen = follow_ups.iter().map(|one| one.day).chain(row.day).max();
        self.fleet.last_day = self.fleet.last_day.max(seen);
        self.fleet.visits.push(row);
    }

    /// The rows in their order.
    #[must_use]
    pub fn finish(mut self) -> Fleet {
        let order = |visit: &VisitRow| (visit.system, visit.day, visit.number);
        self.fleet.visits.sort_unstable_by_key(order);
        self.fleet
    }
}

fn range<T: Copy>(all: &mut Vec<T>, more: &[T]) -> (u32, u32) {
    let Range { start, end } = all.len()..all.len() + more.len();
    all.extend_from_slice(more);
    (start as u32, end as u32)
}
