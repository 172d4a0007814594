//! Checks of numbers: which fields an entry has, and the range of each.

use std::collections::{HashMap, HashSet};

use super::{Fault, Findings, Parsed};
use crate::diagnosis::graph::LevelsEntry;

/// A range of numbers with its name in messages.
struct Range {
    label: &'static str,
    holds: fn(f64) -> bool,
}

const OPEN_UNIT: Range = Range {
    label: "(0, 1)",
    holds: |x| x > 0.0 && x < 1.0,
};
const BELOW_ONE: Range = Range {
    label: "[0, 1)",
    holds: |x| (0.0..1.0).contains(&x),
};
const RELIABILITY: Range = Range {
    label: "(0.5, 1]",
    holds: |x| x > 0.5 && x <= 1.0,
};
const ODDS: Range = Range {
    label: "[0.001, 1000]",
    holds: |x| (0.001..=1000.0).contains(&x),
};
const MINUTES: Range = Range {
    label: "(0, 480]",
    holds: |x| x > 0.0 && x <= 480.0,
};

pub(super) fn fields_fit_the_scale(parsed: &Parsed, out: &mut Findings) {
    let mut graded = HashMap::new();
    for (file, finding) in parsed.located(|file| &file.findings) {
        let is_graded = finding.levels == LevelsEntry::Graded;
        graded.insert(finding.id.as_str(), is_graded);
        let fields = [
            ("leak", finding.leak.is_some(), !is_graded, true),
            ("normal", finding.normal.is_some(), !is_graded, false),
            ("leak_low", finding.leak_low.is_some(), is_graded, true),
            ("leak_high", finding.leak_high.is_some(), is_graded, true),
        ];
        for (field, given, has_meaning, needed) in fields {
            if given && !has_meaning {
                out.add(file, &finding.id, Fault::UselessField { field });
            } else if !given && has_meaning && needed {
                out.add(file, &finding.id, Fault::MissingField { field });
            }
        }
    }
    let mechanisms: HashSet<&str> = parsed
        .each(|file| &file.mechanisms)
        .map(|entry| entry.id.as_str())
        .collect();
    for (file, link) in parsed.located(|file| &file.links) {
        let subject = format!("{} -> {}", link.from, link.to);
        let to = link.to.as_str();
        let Some(&is_graded) = graded
            .get(to)
            .or_else(|| mechanisms.contains(to).then_some(&false))
        else {
            continue;
        };
        let directions = link.low.is_some() || link.high.is_some();
        if is_graded {
            if link.strength.is_some() {
                out.add(file, &subject, Fault::UselessField { field: "strength" });
            }
            if !directions {
                out.add(
                    file,
                    &subject,
                    Fault::MissingField {
                        field: "low or high",
                    },
                );
            }
        } else {
            if directions {
                out.add(
                    file,
                    &subject,
                    Fault::UselessField {
                        field: "low or high",
                    },
                );
            }
            if link.strength.is_none() {
                out.add(file, &subject, Fault::MissingField { field: "strength" });
            }
        }
    }
}

/// What the one entry about calls is named in messages; it has no id.
pub(super) const CALL: &str = "call";

/// The graph says once, in one file, how a call comes about; a cause that
/// speaks of calls leans on it.
pub(super) fn call_said_once(parsed: &Parsed, out: &mut Findings) {
    let said: Vec<_> = parsed.located(|file| &file.calls).collect();
    for (file, _) in said.iter().skip(1) {
        out.add(file, CALL, Fault::SaidTwice);
    }
    if said.is_empty() {
        for (file, cause) in parsed.located(|file| &file.causes) {
            if cause.calls.is_some() {
                out.add(file, &cause.id, Fault::UselessField { field: "calls" });
            }
        }
    }
}

pub(super) fn numbers_in_range(parsed: &Parsed, out: &mut Findings) {
    let mut within = |file: &str, subject: &str, field: &'static str, value: f64, range: &Range| {
        if !(range.holds)(value) {
            let range = range.label;
            out.add(
                file,
                subject,
                Fault::OutOfRange {
                    field,
                    value,
                    range,
                },
            );
        }
    };
    for (file, call) in parsed.located(|file| &file.calls) {
        within(file, CALL, "leak", call.leak, &OPEN_UNIT);
        let by_kind = [
            ("loop", call.by_loop),
            ("unit", call.unit),
            ("normal", call.normal),
            ("instrument", call.instrument),
        ];
        for (field, value) in by_kind {
            within(file, CALL, field, value, &BELOW_ONE);
        }
    }
    for (file, cause) in parsed.located(|file| &file.causes) {
        within(file, &cause.id, "prior", cause.prior, &OPEN_UNIT);
        let calls = cause.calls.unwrap_or(0.0);
        within(file, &cause.id, "calls", calls, &BELOW_ONE);
        for shift in &cause.context {
            within(file, &cause.id, "odds", shift.odds, &ODDS);
            within(file, &cause.id, "odds_if_false", shift.odds_if_false, &ODDS);
        }
    }
    for (file, mechanism) in parsed.located(|file| &file.mechanisms) {
        within(file, &mechanism.id, "leak", mechanism.leak, &BELOW_ONE);
    }
    for (file, finding) in parsed.located(|file| &file.findings) {
        let id = &finding.id;
        let leaks = [
            ("leak", finding.leak),
            ("leak_low", finding.leak_low),
            ("leak_high", finding.leak_high),
        ];
        for (field, value) in leaks {
            within(file, id, field, value.unwrap_or(0.0), &BELOW_ONE);
        }
        let both = finding.leak_low.unwrap_or(0.0) + finding.leak_high.unwrap_or(0.0);
        within(file, id, "leak_low + leak_high", both, &BELOW_ONE);
        within(file, id, "reliability", finding.reliability, &RELIABILITY);
    }
    for (file, link) in parsed.located(|file| &file.links) {
        let subject = format!("{} -> {}", link.from, link.to);
        let strengths = [
            ("strength", link.strength),
            ("low", link.low),
            ("high", link.high),
        ];
        for (field, value) in strengths {
            if let Some(value) = value {
                within(file, &subject, field, value, &OPEN_UNIT);
            }
        }
        let both = link.low.unwrap_or(0.0) + link.high.unwrap_or(0.0);
        within(file, &subject, "low + high", both, &BELOW_ONE);
    }
    for (file, check) in parsed.located(|file| &file.checks) {
        within(file, &check.id, "minutes", check.minutes, &MINUTES);
    }
}
