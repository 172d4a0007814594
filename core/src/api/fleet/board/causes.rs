//! What came back, how often again, and how often the work held.

use super::{Words, range, share};
use crate::api::fleet::filter::write;
use crate::api::types::{FleetCauseLine, FleetHeldLine, FleetShareLine};
use crate::fleet::{Aspect, board};

impl Words<'_> {
    pub(super) fn causes(&self) -> Vec<FleetCauseLine> {
        let figures = board::causes(self.fleet, &self.filter).into_iter();
        figures
            .map(|figure| {
                let (cause, title) = self.cause(figure.cause);
                let share = range(figure.share, figure.interval);
                let of = (figure.count as f64 / figure.share).round() as usize;
                let open = self
                    .filter
                    .with_cause(figure.cause)
                    .with_aspect(Aspect::Callbacks);
                FleetCauseLine {
                    cause,
                    title,
                    count: figure.count,
                    shown: self.share_text(figure.count, of, Some(share)),
                    share,
                    hours: figure.hours,
                    cost: figure.cost,
                    open: write(self.fleet, &open),
                }
            })
            .collect()
    }

    pub(super) fn repeats(&self, window: i32) -> Vec<FleetShareLine> {
        let figures = board::repeated(self.fleet, &self.filter, window).into_iter();
        figures
            .map(|figure| {
                let (cause, title) = self.cause(figure.cause);
                let part = figure.came_back as f64 / figure.watched as f64;
                let share = range(part, figure.interval);
                let open = self
                    .filter
                    .with_cause(figure.cause)
                    .with_aspect(Aspect::Repeats(window));
                FleetShareLine {
                    cause,
                    title,
                    of: figure.watched,
                    count: figure.came_back,
                    shown: self.share_text(figure.came_back, figure.watched, Some(share)),
                    share,
                    open: write(self.fleet, &open),
                }
            })
            .collect()
    }

    pub(super) fn fixes(&self) -> Vec<FleetHeldLine> {
        let figures = board::fixes(self.fleet, &self.filter).into_iter();
        figures
            .map(|figure| {
                let share = share(figure.held, figure.known, figure.interval);
                let open = self.filter.with_aspect(Aspect::NotHeld(figure.days));
                FleetHeldLine {
                    days: figure.days,
                    label: self
                        .wording
                        .catalog()
                        .text(&format!("fleet-held-{}", figure.days)),
                    known: figure.known,
                    held: figure.held,
                    shown: self.share_text(figure.held, figure.known, share),
                    share,
                    unasked: figure.unasked,
                    too_early: figure.too_early,
                    open: write(self.fleet, &open),
                }
            })
            .collect()
    }
}
