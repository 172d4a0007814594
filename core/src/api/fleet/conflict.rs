//! What devices say of a record when they do not say the same, by the names that
//! the forms use.

use crate::api::Engine;
use crate::api::types::{ConflictSide, ConflictView};
use crate::exchange::{Kind, Revision};
use crate::records::{SiteId, SystemId, VisitId};
use crate::store::Conflict;
use crate::text::Args;
use chrono::DateTime;
use serde_json::Value;
use uuid::Uuid;

mod lines;

/// What a record says: name and value, line by line.
type Lines = Vec<(String, String)>;

impl Engine {
    pub(super) fn conflict(&self, conflict: &Conflict) -> ConflictView {
        let said = |content: &str| self.lines(conflict.kind, content);
        let lines: Vec<Lines> = conflict
            .sides
            .iter()
            .map(|side| said(&side.revision.content))
            .collect();
        // Said otherwise only in what no line tells, such as an identifier.
        let alike = lines.windows(2).all(|pair| pair[0] == pair[1]);
        let sides = conflict.sides.iter().zip(&lines);
        let sides = sides.map(|(side, own)| ConflictSide {
            state: side.revision.id.to_string(),
            noted: self.noted(&side.revision),
            made_at: side.revision.made_at.clone(),
            device: side.revision.device.to_string(),
            stands: side.shown,
            differs: if alike {
                vec![[
                    self.told("exchange-as-written"),
                    side.revision.content.clone(),
                ]]
            } else {
                self.differing(own, &lines)
            },
        });
        ConflictView {
            kind: conflict.kind.id().to_owned(),
            id: conflict.id.to_string(),
            title: self.conflict_title(conflict),
            sides: sides.collect(),
        }
    }

    /// What a side says otherwise than another, and what it lacks.
    fn differing(&self, own: &Lines, all: &[Lines]) -> Vec<[String; 2]> {
        let everywhere = |line: &(String, String)| all.iter().all(|lines| lines.contains(line));
        let differs = own.iter().filter(|line| !everywhere(line));
        let mut told: Vec<[String; 2]> = differs
            .map(|(name, value)| [name.clone(), value.clone()])
            .collect();
        for (name, _) in all.iter().flatten() {
            let known = own.iter().any(|(known, _)| known == name);
            if !known && !told.iter().any(|[told, _]| told == name) {
                told.push([name.clone(), self.told("exchange-not-noted")]);
            }
        }
        told
    }

    /// When a side was noted, and whether here.
    fn noted(&self, revision: &Revision) -> String {
        let when = DateTime::parse_from_rfc3339(&revision.made_at);
        let when = when.map_or_else(
            |_| revision.made_at.clone(),
            |when| when.format("%Y-%m-%d %H:%M UTC").to_string(),
        );
        let here = self
            .store
            .this_device()
            .is_ok_and(|own| own == revision.device);
        let key = if here {
            "exchange-noted-here"
        } else {
            "exchange-noted-elsewhere"
        };
        // Enough of a random name to tell the few devices of a company apart.
        let device: String = revision.device.to_string().chars().take(4).collect();
        let args = Args::new().text("when", when).text("device", device);
        self.wording.catalog().fill(key, &args)
    }

    /// Which record it is, so that a person finds it again.
    fn conflict_title(&self, conflict: &Conflict) -> String {
        let kind = self.told(&format!("exchange-kind-{}", conflict.kind.id()));
        match self.place_of(conflict) {
            Some(place) => {
                let args = Args::new().text("kind", kind).text("place", place);
                self.wording.catalog().fill("exchange-record-at", &args)
            }
            None => kind,
        }
    }

    /// The site of a record and, for what belongs to a visit, its day.
    fn place_of(&self, conflict: &Conflict) -> Option<String> {
        let id = conflict.id;
        let site = |id| {
            let site = self.store.site(id).ok()?;
            Some(self.site_title(&site.name))
        };
        let visit = |id: Uuid| {
            let record = self.store.record(VisitId(id)).ok()?;
            let site = self.site_title(&record.file.site.name);
            Some(match record.file.visit.date {
                Some(day) => format!("{site}, {day}"),
                None => site,
            })
        };
        match conflict.kind {
            Kind::Site | Kind::Household => site(SiteId(id)),
            Kind::System | Kind::Commissioning => {
                let (at, _) = self.store.system(SystemId(id)).ok()?;
                site(at)
            }
            Kind::Visit | Kind::Words | Kind::Signatures => visit(id),
            Kind::FollowUp | Kind::Photo => {
                // A photo that was taken away names no visit; another side may.
                let mut contents = conflict.sides.iter().map(|side| &side.revision.content);
                contents.find_map(|content| {
                    let content: Value = serde_json::from_str(content).ok()?;
                    visit(content.get("visit")?.as_str()?.parse().ok()?)
                })
            }
        }
    }

    fn told(&self, key: &str) -> String {
        self.wording.catalog().text(key)
    }

    /// The title of what another program may know and this one not.
    fn title_of(&self, kind: &str, id: &str) -> String {
        let key = format!("{kind}-{id}");
        let known = self.wording.catalog().has(&key);
        if known {
            self.told(&key)
        } else {
            id.to_owned()
        }
    }
}

#[cfg(test)]
mod tests;
