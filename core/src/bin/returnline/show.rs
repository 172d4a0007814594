//! What the program prints.

use super::failure::Failure;
use returnline_core::api::types::{AssessmentView, CauseView, PlanView, ReasonView};
use returnline_core::api::{Call, CauseSheet, LinkSheet, Wording};
use returnline_core::text::{Args, Catalog, catalog};
use serde::Serialize;
use std::io::{self, BufWriter, Write};

/// Causes that are listed; the JSON answer has all of them.
const CAUSES_SHOWN: usize = 5;
/// Causes this probable have their reasons printed beside those of the first.
const LIKELY: f64 = 0.5;
/// Reasons that are listed for one cause.
const REASONS_SHOWN: usize = 8;
/// Reasons that are listed for a doubted instrument.
const REASONS_OF_DOUBT: usize = 3;
/// Reasons weaker than this are left to the JSON answer, bits.
const WEIGHTY_BITS: f64 = 0.3;
/// Checks that are listed.
const CHECKS_SHOWN: usize = 3;
/// Mechanisms between a cause and what is shown of it, unless all is asked for.
const NEAR: usize = 1;
/// The verdict that nothing is to be corrected.
const NORMAL: &str = "normal";

/// A document, pretty, with a line feed at its end.
pub fn json(document: &impl Serialize) -> Result<(), Failure> {
    let mut out = BufWriter::new(io::stdout().lock());
    serde_json::to_writer_pretty(&mut out, document).map_err(io::Error::from)?;
    writeln!(out)?;
    out.flush()?;
    Ok(())
}

/// A call: causes, reasons, next checks, plan.
pub fn call(call: &Call, wording: Wording) -> Result<(), Failure> {
    let catalog = catalog(wording.language);
    let mut out = BufWriter::new(io::stdout().lock());
    let answer = call.answer();
    assessment(&mut out, &answer.assessment, catalog)?;
    if let Some(plan) = &answer.plan {
        self::plan(&mut out, plan, catalog)?;
    }
    out.flush()?;
    Ok(())
}

/// A cause of the graph: what it starts from, what it does itself and through the
/// mechanisms next to it; through all of them if `whole`.
pub fn cause(sheet: &CauseSheet, whole: bool, wording: Wording) -> Result<(), Failure> {
    let catalog = catalog(wording.language);
    let mut out = BufWriter::new(io::stdout().lock());
    writeln!(out, "{}\n{}", sheet.title, sheet.homeowner)?;
    let prior = Args::new()
        .text("share", format!("{:.1} %", 100.0 * sheet.prior))
        .text("source", sheet.source.clone());
    writeln!(out, "{}", catalog.fill("program-prior", &prior))?;
    if let Some(procedure) = &sheet.procedure {
        writeln!(out, "{}: {procedure}", catalog.text("program-plan"))?;
    }
    if !sheet.context.is_empty() {
        heading(&mut out, catalog, "program-facts")?;
    }
    for shift in &sheet.context {
        let (yes, no) = (shift.odds, shift.odds_if_false);
        writeln!(out, "  × {yes:.2} / × {no:.2}  {}", shift.fact)?;
        writeln!(out, "      {} [{}]", shift.why, shift.source)?;
    }
    let shown = |link: &&LinkSheet| whole || link.depth <= NEAR;
    let mut from = "";
    for link in sheet.links.iter().filter(shown) {
        if link.from != from {
            from = &link.from;
            let args = Args::new().text("from", from);
            writeln!(out, "\n{}", catalog.fill("program-links", &args))?;
        }
        writeln!(out, "  {}  {}", link.strength, link.to)?;
        writeln!(out, "      {} [{}]", link.why, link.source)?;
    }
    let left = sheet.links.iter().filter(|link| !shown(link)).count();
    if left > 0 {
        let args = Args::new().text("count", left.to_string());
        writeln!(out, "\n{}", catalog.fill("program-links-left", &args))?;
    }
    out.flush()?;
    Ok(())
}

/// All causes by identifier and title.
pub fn causes(causes: &[(String, String)]) -> Result<(), Failure> {
    let widest = causes.iter().map(|(id, _)| id.len()).max().unwrap_or(0);
    let mut out = BufWriter::new(io::stdout().lock());
    for (id, title) in causes {
        writeln!(out, "{id:widest$}  {title}")?;
    }
    out.flush()?;
    Ok(())
}

fn assessment(out: &mut impl Write, view: &AssessmentView, catalog: &Catalog) -> io::Result<()> {
    writeln!(out, "{}", view.headline)?;
    heading(out, catalog, "program-causes")?;
    for cause in view.causes.iter().take(CAUSES_SHOWN) {
        writeln!(out, "  {:>6}  {}", cause.shown, cause.title)?;
    }
    if let Some(pair) = &view.pair {
        writeln!(out, "  {:>6}  {}", pair.shown, pair.words)?;
    }
    if !view.doubted.is_empty() {
        heading(out, catalog, "program-doubted")?;
    }
    for doubt in &view.doubted {
        writeln!(out, "  {:>6}  {}", doubt.shown, doubt.title)?;
        said(out, doubt.reasons.iter().take(REASONS_OF_DOUBT), catalog)?;
    }
    for cause in reasoned(view) {
        let args = Args::new().text("cause", cause.title.clone());
        writeln!(out, "\n{}", catalog.fill("program-reasons", &args))?;
        reasons(out, cause, catalog)?;
    }
    listed(out, catalog, "program-sound", &view.sound)?;
    listed(out, catalog, "program-unexplained", &view.unexplained)?;
    listed(out, catalog, "program-unused", &view.unused)?;
    checks(out, view, catalog)?;
    listed(out, catalog, "program-records", &view.records)?;
    listed(out, catalog, "program-assumed", &view.assumptions)
}

/// The causes whose reasons are printed: the first, and what is likely beside it. Where
/// nothing is to be corrected only ordinary behaviour has reasons worth reading.
fn reasoned(view: &AssessmentView) -> impl Iterator<Item = &CauseView> {
    let nothing = view.verdict == NORMAL;
    let ranked = view.causes.iter().enumerate();
    let told = ranked.filter(move |(at, cause)| {
        let is_likely = cause.probability >= LIKELY;
        if nothing {
            cause.kind == NORMAL && is_likely
        } else {
            *at == 0 || is_likely
        }
    });
    told.map(|(_, cause)| cause)
}

/// What to do next: that enough is known, if it is, and what could be looked at.
fn checks(out: &mut impl Write, view: &AssessmentView, catalog: &Catalog) -> io::Result<()> {
    if let Some(stop) = &view.stop {
        writeln!(out, "\n{stop}")?;
    }
    if view.checks.is_empty() {
        return Ok(());
    }
    let title = match view.stop {
        Some(_) => "program-could-check",
        None => "program-next",
    };
    heading(out, catalog, title)?;
    for check in view.checks.iter().take(CHECKS_SHOWN) {
        writeln!(out, "  {} ({})", check.title, check.shown)?;
        writeln!(out, "      {}", check.how)?;
        if !check.tools.is_empty() {
            let tools = check.tools.join(" · ");
            writeln!(out, "      {}: {tools}", catalog.text("program-tools"))?;
        }
        if let Some(licence) = &check.licence {
            writeln!(out, "      {licence}")?;
        }
        for caution in &check.cautions {
            writeln!(out, "      ⚠ {caution}")?;
        }
    }
    Ok(())
}

/// Lines under a heading, if there are any.
fn listed(
    out: &mut impl Write,
    catalog: &Catalog,
    title: &str,
    lines: &[String],
) -> io::Result<()> {
    if !lines.is_empty() {
        heading(out, catalog, title)?;
    }
    lines.iter().try_for_each(|line| writeln!(out, "  {line}"))
}

fn reasons(out: &mut impl Write, cause: &CauseView, catalog: &Catalog) -> io::Result<()> {
    for line in &cause.context {
        writeln!(out, "  · {}", line.whole())?;
    }
    let reasons = cause.reasons.iter();
    let weighty = reasons.filter(|reason| reason.bits.abs() >= WEIGHTY_BITS);
    said(out, weighty.take(REASONS_SHOWN), catalog)
}

fn said<'a>(
    out: &mut impl Write,
    reasons: impl Iterator<Item = &'a ReasonView>,
    catalog: &Catalog,
) -> io::Result<()> {
    for reason in reasons {
        writeln!(out, "  {:>10}  {}", reason.shown, reason.found)?;
        for step in &reason.path {
            writeln!(out, "              {step}")?;
        }
        if let Some(figures) = &reason.figures {
            for text in figures.said(catalog) {
                writeln!(out, "              {text}")?;
            }
        }
    }
    Ok(())
}

fn plan(out: &mut impl Write, plan: &PlanView, catalog: &Catalog) -> io::Result<()> {
    heading(out, catalog, "program-plan")?;
    let remarks = plan.remarks.iter().map(|remark| &remark.words);
    for line in plan.treats.iter().chain(remarks) {
        writeln!(out, "  {line}")?;
    }
    let mut stage = "";
    for (index, step) in plan.steps.iter().enumerate() {
        if step.stage != stage {
            stage = &step.stage;
            writeln!(out, "  {stage}")?;
        }
        writeln!(out, "  {:>3}. {}", index + 1, step.text)?;
        for caution in &step.cautions {
            writeln!(out, "       ⚠ {}", caution.text)?;
        }
        for quantity in &step.quantities {
            writeln!(out, "       {}: {}", quantity.label, quantity.value)?;
        }
        for timer in step.timers.iter().filter(|timer| !timer.told) {
            writeln!(out, "       {}: {}", timer.label, timer.shown)?;
        }
        if let Some(gate) = &step.gate {
            writeln!(out, "       → {}", gate.pass)?;
            writeln!(out, "       ← {}", gate.otherwise)?;
        }
    }
    if !plan.proof.is_empty() {
        heading(out, catalog, "program-proof")?;
        for line in &plan.proof {
            let expected = line.expected.as_deref().unwrap_or("–");
            writeln!(out, "  {}: {expected}", line.label)?;
        }
    }
    Ok(())
}

fn heading(out: &mut impl Write, catalog: &Catalog, key: &str) -> io::Result<()> {
    writeln!(out, "\n{}", catalog.text(key))
}
