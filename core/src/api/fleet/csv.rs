//! The board as tables for a spreadsheet.

use crate::api::Wording;
use crate::api::types::{BoardView, FleetRange, FleetTable};

/// One table in the making.
struct Table {
    name: &'static str,
    text: String,
}

impl Table {
    fn new(name: &'static str, columns: &[&str], wording: Wording) -> Self {
        let mut table = Self {
            name,
            text: String::new(),
        };
        let catalog = wording.catalog();
        table.row(
            columns
                .iter()
                .map(|column| catalog.text(&format!("fleet-column-{column}"))),
        );
        table
    }

    fn row(&mut self, cells: impl IntoIterator<Item = String>) {
        let cells: Vec<String> = cells.into_iter().map(|text| cell(&text)).collect();
        self.text.push_str(&cells.join(","));
        self.text.push_str("\r\n");
    }

    fn done(self) -> FleetTable {
        FleetTable {
            name: format!("{}.csv", self.name),
            csv: self.text,
        }
    }
}

/// A cell after RFC 4180. What a spreadsheet would take for a formula gets an
/// apostrophe before it, so that it stays text.
fn cell(text: &str) -> String {
    let number = text.parse::<f64>().is_ok();
    let formula = text.starts_with(['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠']);
    let guarded = if formula && !number {
        format!("'{text}")
    } else {
        text.to_owned()
    };
    if guarded.contains(['"', ',', '\n', '\r']) {
        format!("\"{}\"", guarded.replace('"', "\"\""))
    } else {
        guarded
    }
}

fn number(value: f64) -> String {
    format!("{value}")
}

fn ends(range: Option<FleetRange>) -> [String; 3] {
    match range {
        Some(range) => [range.value, range.low, range.high].map(number),
        None => Default::default(),
    }
}

/// Every part of the board.
pub(super) fn tables(board: &BoardView, wording: Wording) -> Vec<FleetTable> {
    let new = |name, columns: &[&str]| Table::new(name, columns, wording);
    let mut causes = new(
        "causes",
        &["cause", "count", "share", "low", "high", "hours", "cost"],
    );
    for line in &board.causes {
        let [share, low, high] = ends(Some(line.share));
        let count = line.count.to_string();
        let (hours, cost) = (number(line.hours), number(line.cost));
        causes.row([line.title.clone(), count, share, low, high, hours, cost]);
    }
    let mut repeats = new("repeats", &["cause", "count", "of", "share", "low", "high"]);
    for line in &board.repeats {
        let [share, low, high] = ends(Some(line.share));
        let counts = (line.count.to_string(), line.of.to_string());
        repeats.row([line.title.clone(), counts.0, counts.1, share, low, high]);
    }
    let mut waiting = new(
        "first-callback",
        &["days", "share", "low", "high", "at-risk"],
    );
    for point in &board.waiting.points {
        let [share, low, high] = ends(Some(point.share));
        waiting.row([
            number(point.days),
            share,
            low,
            high,
            point.at_risk.to_string(),
        ]);
    }
    let mut rates = new(
        "rates",
        &[
            "by",
            "group",
            "systems",
            "years",
            "callbacks",
            "rate",
            "low",
            "high",
        ],
    );
    for part in &board.rates {
        for row in &part.rows {
            let [rate, low, high] = ends(row.rate);
            rates.row([
                part.label.clone(),
                row.label.clone(),
                row.systems.to_string(),
                number(row.years),
                row.callbacks.to_string(),
                rate,
                low,
                high,
            ]);
        }
    }
    let mut differences = new(
        "differences",
        &[
            "words",
            "with",
            "of",
            "other-with",
            "other-of",
            "times",
            "low",
            "high",
            "p",
            "adjusted",
        ],
    );
    for line in &board.differences.lines {
        let optional = |value: Option<f64>| value.map_or(String::new(), number);
        differences.row([
            line.words.clone(),
            line.here[0].to_string(),
            line.here[1].to_string(),
            line.others[0].to_string(),
            line.others[1].to_string(),
            optional(line.ratio),
            optional(line.ratio_ends.map(|[low, _]| low)),
            optional(line.ratio_ends.map(|[_, high]| high)),
            number(line.p),
            number(line.adjusted),
        ]);
    }
    let mut fixes = new(
        "fixes",
        &[
            "days",
            "held",
            "known",
            "share",
            "low",
            "high",
            "unasked",
            "too-early",
        ],
    );
    for line in &board.fixes {
        let [share, low, high] = ends(line.share);
        let counts = [line.held, line.known].map(|count| count.to_string());
        let rest = [line.unasked, line.too_early].map(|count| count.to_string());
        let [held, known] = counts;
        let [unasked, early] = rest;
        fixes.row([
            line.days.to_string(),
            held,
            known,
            share,
            low,
            high,
            unasked,
            early,
        ]);
    }
    let mut all = vec![causes, repeats, waiting, rates, differences, fixes];
    if let Some(practice) = &board.practice {
        let mut table = new("practice", &["words", "with", "of", "share", "low", "high"]);
        let catalog = wording.catalog();
        for (key, [called, systems], share) in [
            ("fleet-before", practice.before, practice.before_share),
            ("fleet-after", practice.after, practice.after_share),
        ] {
            let [share, low, high] = ends(share);
            let counts = (called.to_string(), systems.to_string());
            table.row([catalog.text(key), counts.0, counts.1, share, low, high]);
        }
        all.push(table);
    }
    all.into_iter().map(Table::done).collect()
}

#[cfg(test)]
mod tests {
    use super::cell;

    #[test]
    fn cells_are_quoted_and_formulas_stay_text() {
        assert_eq!(cell("Crew, \"one\""), "\"Crew, \"\"one\"\"\"");
        assert_eq!(cell("=1+1"), "'=1+1");
        assert_eq!(cell("@SUM(A1)"), "'@SUM(A1)");
        assert_eq!(cell("-cmd,x"), "\"'-cmd,x\"");
        assert_eq!(cell("-0.5"), "-0.5");
    }
}
