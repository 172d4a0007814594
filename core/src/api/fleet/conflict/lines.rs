//! What one record says, line by line: its facts by the names that the forms use,
//! and each value exactly as it was written.

use super::Lines;
use crate::api::Engine;
use crate::api::attachments::moment;
use crate::api::forms::value_text;
use crate::exchange::{
    FollowUp, Household, Kind, SiteContent, SystemContent, VisitContent, Words, read,
};
use crate::records::field::{FieldGroup, FieldValue, TABLE};
use crate::records::visit_file::VisitFile;
use crate::records::{
    Action, Commissioning, Instrument, Phase, PhotoPhase, Reading, ReadingPoint, SignatureRole,
    SiteId, SystemId, name_of,
};
use crate::text::Args;
use crate::units::Unit;
use chrono::{DateTime, Utc};
use serde_json::Value;
use std::collections::BTreeMap;
use uuid::Uuid;

/// Where facts stand that have no field of their own, by the group of the form
/// that they belong to.
const AREAS: [(&str, FieldGroup); 9] = [
    ("/system/heat_pump", FieldGroup::Unit),
    ("/system/flow_centre", FieldGroup::FlowCentre),
    ("/system/circulator", FieldGroup::FlowCentre),
    ("/system/ground", FieldGroup::Ground),
    ("/system/indoor", FieldGroup::FlowCentre),
    ("/system/fluid", FieldGroup::Fluid),
    ("/system", FieldGroup::Unit),
    ("/commissioning", FieldGroup::Commissioning),
    ("/visit/means", FieldGroup::Means),
];

impl Engine {
    pub(super) fn lines(&self, kind: Kind, content: &str) -> Lines {
        match kind {
            Kind::FollowUp => self.follow_up_lines(content),
            Kind::Photo => self.photo_lines(content),
            Kind::Signatures => self.signature_lines(content),
            _ => match file_of(kind, content) {
                Ok(file) => {
                    let mut lines = self.file_lines(&file);
                    lines.extend(self.belongs_to(content));
                    lines
                }
                // Checked when it was taken in; told as it is rather than not at all.
                Err(_) => vec![(self.told("exchange-as-written"), content.to_owned())],
            },
        }
    }

    /// The site of a system, the site of the system of a visit.
    fn belongs_to(&self, content: &str) -> Option<(String, String)> {
        let content: Value = serde_json::from_str(content).ok()?;
        let id = |name: &str| content.get(name)?.as_str()?.parse::<Uuid>().ok();
        let site = match id("site") {
            Some(site) => SiteId(site),
            None => self.store.system(SystemId(id("system")?)).ok()?.0,
        };
        let site = self.store.site(site).ok()?;
        Some((self.told("group-site"), self.site_title(&site.name)))
    }

    /// Everything in the part of a call that a record holds.
    pub(super) fn file_lines(&self, file: &VisitFile) -> Lines {
        let mut lines = Lines::new();
        // The fields of the forms, written again one by one: what is then still
        // missing has no field.
        let mut again = VisitFile::default();
        for field in TABLE {
            if let Some(value) = field.read(file) {
                let name = self.told(&format!("field-{}", field.id.replace('.', "-")));
                let told = match &value {
                    FieldValue::Measure(measure) => exact(measure.value, measure.unit),
                    other => value_text(other, self.wording.catalog()),
                };
                lines.push((name, told));
                // One that cannot be written alone is told among the rest.
                let _ = field.write(&mut again, Some(value));
            }
        }
        self.further_lines(file, &again, &mut lines);
        let visit = &file.visit;
        lines.extend(visit.answers.iter().map(|answer| {
            let is = name_of(&answer.is).unwrap_or_default();
            (
                self.title_of("finding", &answer.finding),
                self.told(&format!("answer-{is}")),
            )
        }));
        lines.extend(
            visit
                .readings
                .iter()
                .map(|reading| self.reading_line(reading)),
        );
        lines.extend(visit.verdicts.iter().map(|verdict| {
            let key = if verdict.confirmed {
                "exchange-confirmed"
            } else {
                "exchange-ruled-out"
            };
            let check = verdict.by_check.as_ref();
            let check = check.map(|check| self.title_of("check", check));
            let said = [Some(self.told(key)), check];
            (
                self.title_of("cause", &verdict.cause),
                said.into_iter().flatten().collect::<Vec<_>>().join(" · "),
            )
        }));
        lines.extend(visit.actions.iter().map(|action| self.action_line(action)));
        lines
    }

    fn reading_line(&self, reading: &Reading) -> (String, String) {
        let view = self.reading_view(reading);
        let circuit = view.circuit.map(|circuit| {
            let args = Args::new().text("circuit", circuit.to_string());
            self.wording.catalog().fill("exchange-circuit", &args)
        });
        let phase = match reading.phase {
            Phase::Found => "photo-before",
            Phase::Left => "photo-after",
        };
        let name = [Some(view.label), circuit, Some(self.told(phase))];
        let measure = reading.value();
        let shown = exact(measure.value, measure.unit);
        let shown = reading.accuracy().map_or_else(
            || shown.clone(),
            |accuracy| format!("{shown} ± {}", exact(accuracy.value, accuracy.unit)),
        );
        let taken = reading.taken_at.map(moment);
        let value = [
            Some(shown),
            Some(view.instrument_label),
            view.mode_label,
            taken,
            reading.note.clone(),
        ];
        (
            name.into_iter().flatten().collect::<Vec<_>>().join(", "),
            value.into_iter().flatten().collect::<Vec<_>>().join(" · "),
        )
    }

    fn action_line(&self, action: &Action) -> (String, String) {
        let step = action.step.as_ref();
        let name = match (step, &action.text) {
            (Some(step), _) => self.title_of("plan-step", step),
            (None, Some(text)) => text.clone(),
            (None, None) => self.told("exchange-work"),
        };
        let state = match (action.done, &action.skipped) {
            (_, Some(_)) => "exchange-left-out",
            (true, None) => "exchange-done",
            (false, None) => "exchange-not-done",
        };
        let mut said = vec![self.told(state)];
        said.extend(action.skipped.clone());
        said.extend(action.without.clone());
        said.extend(action.duration.map(|took| exact(took.value(), took.unit())));
        said.extend(action.parts.clone());
        said.extend(step.and_then(|_| action.text.clone()));
        let read = action.acknowledged.iter();
        said.extend(read.map(|caution| self.title_of("plan-caution", caution)));
        said.extend(action.timers.iter().map(|timer| {
            let label = self.title_of("plan-timer", &timer.kind);
            let at = |moment: DateTime<Utc>| moment.format("%Y-%m-%d %H:%M UTC").to_string();
            let ends = std::iter::once(timer.started_at).chain(timer.stopped_at);
            format!("{label} {}", ends.map(at).collect::<Vec<_>>().join(" … "))
        }));
        said.extend(action.gates.iter().map(|gate| {
            let kind = match ReadingPoint::from_id(&gate.looked) {
                Some(_) => "point",
                None => "plan-observation",
            };
            let looked = self.title_of(kind, &gate.looked);
            format!("{looked} {} {}", gate.value, gate.unit)
        }));
        (name, said.join(" · "))
    }

    /// Facts that a file brought along and no form asks for.
    fn further_lines(&self, file: &VisitFile, known: &VisitFile, lines: &mut Lines) {
        let leaves = |file: &VisitFile| {
            let mut leaves = BTreeMap::new();
            flatten("", &crate::records::visit_file::write(file), &mut leaves);
            leaves
        };
        let known = leaves(known);
        for (place, value) in leaves(file) {
            let area = AREAS.iter().find(|(area, _)| place.starts_with(area));
            let Some((_, group)) = area.filter(|_| known.get(&place) != Some(&value)) else {
                continue;
            };
            let name = self.further_name(&place, *group);
            let value = match Instrument::from_id(&value) {
                Some(_) => self.title_of("instrument", &value),
                None => value,
            };
            match lines.iter_mut().find(|(known, _)| *known == name) {
                Some((_, told)) => *told = format!("{told} · {value}"),
                None => lines.push((name, value)),
            }
        }
    }

    /// The group of the form, and what of it where that has a name.
    fn further_name(&self, place: &str, group: FieldGroup) -> String {
        let catalog = self.wording.catalog();
        let parts = place
            .rsplit('/')
            .map(|part| format!("exchange-part-{part}"));
        let part = parts.into_iter().find(|key| catalog.has(key));
        let part = self.told(part.as_deref().unwrap_or("exchange-part-other"));
        format!("{}: {part}", self.told(&format!("group-{}", group.id())))
    }

    fn follow_up_lines(&self, content: &str) -> Lines {
        let Ok(told) = read::<FollowUp>(content) else {
            return Lines::new();
        };
        let key = if told.held {
            "fleet-fix-held"
        } else {
            "fleet-fix-failed"
        };
        let args = Args::new().text("date", told.day.to_string());
        vec![(
            self.title_of("cause", &told.cause),
            self.wording.catalog().fill(key, &args),
        )]
    }

    fn photo_lines(&self, content: &str) -> Lines {
        let content: Value = serde_json::from_str(content).unwrap_or_default();
        let text = |name: &str| content.get(name).and_then(Value::as_str);
        let there = if content.is_object() {
            "answer-yes"
        } else {
            "answer-no"
        };
        let mut lines = vec![(self.told("exchange-photo-there"), self.told(there))];
        let phase = PhotoPhase::ALL.into_iter();
        let phase = phase
            .map(PhotoPhase::id)
            .find(|id| Some(*id) == text("phase"));
        let phase = phase.map(|id| self.told(&format!("photo-{id}")));
        for (key, value) in [
            ("exchange-photo-phase", phase),
            ("exchange-photo-caption", text("caption").map(str::to_owned)),
            ("exchange-photo-time", text("taken_at").map(str::to_owned)),
            // The picture itself cannot be told in words; that it differs can.
            ("exchange-photo-picture", text("jpeg").map(size_of)),
        ] {
            lines.extend(value.map(|value| (self.told(key), value)));
        }
        lines
    }

    fn signature_lines(&self, content: &str) -> Lines {
        let content: Value = serde_json::from_str(content).unwrap_or_default();
        let signatures = content.as_array().into_iter().flatten();
        let line = |signature: &Value| {
            let text = |name: &str| signature.get(name)?.as_str();
            let role = SignatureRole::ALL.into_iter();
            let role = role
                .map(SignatureRole::id)
                .find(|id| Some(*id) == text("role"))?;
            let signed = format!("{} · {}", text("name")?, text("signed_at")?);
            Some((self.told(&format!("signature-{role}")), signed))
        };
        signatures.filter_map(line).collect()
    }
}

/// A number as it was written: rounded, two that differ might look the same.
fn exact(value: f64, unit: Unit) -> String {
    format!("{value} {}", unit.display()).trim_end().to_owned()
}

/// The part of a call that a record holds.
fn file_of(kind: Kind, content: &str) -> Result<VisitFile, String> {
    let mut file = VisitFile::default();
    match kind {
        Kind::Site => file.site.elevation = read::<SiteContent>(content)?.elevation,
        Kind::Household => {
            let told: Household = read(content)?;
            file.site.name = told.name;
            file.site.address = told.address;
            file.site.contact = told.contact;
            file.site.notes = told.notes;
        }
        Kind::System => file.system = read::<SystemContent>(content)?.system,
        Kind::Commissioning => file.commissioning = read::<Commissioning>(content)?,
        Kind::Visit => file.visit = read::<VisitContent>(content)?.visit(Words::default())?,
        Kind::Words => {
            let told: Words = read(content)?;
            file.visit.complaint = told.complaint;
            file.visit.notes = told.notes;
        }
        Kind::FollowUp | Kind::Photo | Kind::Signatures => {}
    }
    Ok(file)
}

/// How large a picture is; base 64 takes four signs for three bytes.
fn size_of(picture: &str) -> String {
    format!("{:.1} kB", picture.len() as f64 * 0.75 / 1000.0)
}

/// Every value of a document with its place; a number goes with its unit.
pub(super) fn flatten(place: &str, value: &Value, into: &mut BTreeMap<String, String>) {
    match value {
        Value::Object(fields) => {
            let unit = fields.get("unit").and_then(Value::as_str);
            let number = fields.get("value").and_then(Value::as_f64);
            if let (Some(unit), Some(number)) = (unit.and_then(Unit::of_symbol), number) {
                into.insert(place.to_owned(), exact(number, unit));
                return;
            }
            for (name, value) in fields {
                flatten(&format!("{place}/{name}"), value, into);
            }
        }
        Value::Array(items) => {
            // As many digits as keep their order.
            for (number, value) in items.iter().enumerate() {
                flatten(&format!("{place}/{number:04}"), value, into);
            }
        }
        Value::String(text) => {
            into.insert(place.to_owned(), text.clone());
        }
        other => {
            into.insert(place.to_owned(), other.to_string());
        }
    }
}
