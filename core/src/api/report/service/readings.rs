//! The readings as found and as left.

use crate::api::Call;
use crate::api::attachments::moment;
use crate::api::report::content::written;
use crate::records::{Phase, Reading};
use crate::report::service::ReadingLine;

impl Call {
    /// The readings in the order taken; one as left joins the one as found at
    /// the same point, circuit and state of operation.
    pub(super) fn reading_lines(&self) -> Vec<ReadingLine> {
        let alike = |a: &Reading, b: &Reading| {
            a.point() == b.point() && a.circuit == b.circuit && a.mode == b.mode
        };
        let mut pairs: Vec<(Option<&Reading>, Option<&Reading>)> = Vec::new();
        for reading in &self.file.visit.readings {
            if reading.phase == Phase::Found {
                pairs.push((Some(reading), None));
                continue;
            }
            let mut open = pairs.iter_mut().rev();
            let partner = open.find(|(found, left)| {
                left.is_none() && found.is_some_and(|found| alike(found, reading))
            });
            match partner {
                Some((_, left)) => *left = Some(reading),
                None => pairs.push((None, Some(reading))),
            }
        }
        let line = |(found, left): (Option<&Reading>, Option<&Reading>)| {
            Some(self.reading_line(found.or(left)?, found, left))
        };
        pairs.into_iter().filter_map(line).collect()
    }

    fn reading_line(
        &self,
        first: &Reading,
        found: Option<&Reading>,
        left: Option<&Reading>,
    ) -> ReadingLine {
        let named = |kind: &str, id: &str| self.say(&format!("{kind}-{id}"));
        let point = named("point", first.point().id());
        let mut instruments: Vec<String> = Vec::new();
        let mut remarks = Vec::new();
        for reading in found.into_iter().chain(left) {
            let instrument = named("instrument", reading.instrument_or_usual().id());
            if !instruments.contains(&instrument) {
                instruments.push(instrument);
            }
            if reading.is_unlikely() {
                let shown = reading.value().text();
                remarks.push(self.fill("unlikely-value", &[("value", &shown)]));
            }
            let note = reading.note.as_ref();
            remarks.extend(note.filter(|note| !note.trim().is_empty()).cloned());
        }
        let mode = match first.mode {
            Some(mode) => named("mode", &written(&mode)),
            None => "–".to_owned(),
        };
        ReadingLine {
            point: match first.circuit {
                Some(circuit) => self.fill(
                    "point-of-circuit",
                    &[("point", &point), ("circuit", &circuit.to_string())],
                ),
                None => point,
            },
            found: found.map(Reading::text),
            left: left.map(Reading::text),
            instrument: instruments.join(", "),
            mode: match first.taken_at {
                Some(at) => format!("{mode}, {}", moment(at)),
                None => mode,
            },
            remarks,
        }
    }
}
