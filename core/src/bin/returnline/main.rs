//! The headless program `returnline`: the engine for scripts and servers.

mod calc;
mod diagnose;
mod exchange;
mod failure;
mod fleet;
mod graph;
mod learned;
mod report;
mod show;

use clap::{Parser, Subcommand};
use mimalloc::MiMalloc;
use std::path::PathBuf;
use std::process::ExitCode;

/// An answer takes and gives back a megabyte in small and large pieces; the
/// system's allocator hands the large ones back to the system every time.
#[global_allocator]
static ALLOCATOR: MiMalloc = MiMalloc;

/// Diagnose ground-loop callbacks without a screen.
#[derive(Parser)]
#[command(
    version,
    about = "Traces the symptoms and readings of a ground-loop callback to the likely commissioning fault.",
    after_help = "Exit codes: 0 done, 1 could not read or write, 2 wrong words, 3 the input is not acceptable."
)]
struct Arguments {
    #[command(subcommand)]
    command: Command,
}

#[derive(Subcommand)]
enum Command {
    /// Rank the causes of a call, plan the correction, write the report.
    #[command(after_help = "Examples:\n  returnline diagnose call.json\n  \
        returnline diagnose call.json --pdf report.pdf\n  \
        returnline diagnose call.json --json > answer.json\n  \
        returnline diagnose call.json --keep calls.db --units si")]
    Diagnose(diagnose::Arguments),
    /// Write a report of a call, or the manager's report of many, as PDF.
    #[command(
        after_help = "Examples:\n  returnline report call.json --for technician --out report.pdf\n  \
        returnline report call.json --for homeowner --out page.pdf --paper a4 --units si\n  \
        returnline report call.json --for technician --out report.pdf --photo strainer.jpg --photo gauge.jpg\n  \
        returnline report --fleet office.db --out callbacks.pdf --from 2026-01-01 --to 2026-06-30"
    )]
    Report(report::Arguments),
    /// Check a visit file and report every fault.
    #[command(after_help = "Example:\n  returnline check call.json")]
    Check {
        /// The visit file; `-` reads standard input.
        visit: PathBuf,
    },
    /// The rule graph: check its files, export it, show a cause.
    #[command(subcommand)]
    Graph(graph::Command),
    /// What confirmed causes have taught: show, export, import, reset.
    #[command(after_help = "Examples:\n  returnline learned show --db calls.db\n  \
        returnline learned export --db calls.db > counts.json\n  \
        returnline learned import --db other.db counts.json")]
    Learned(learned::Arguments),
    /// Compute any quantity of the physics: one JSON object a line in, one a line out.
    #[command(after_help = "Examples:\n  returnline calc --list\n  \
        returnline calc head-loss --schema\n  \
        returnline calc head-loss --example | returnline calc head-loss\n  \
        returnline calc strength samples.jsonl --units si")]
    Calc(calc::Arguments),
    /// Print the JSON Schema of the visit file.
    #[command(after_help = "Example:\n  returnline schema > visit.schema.json")]
    Schema,
    /// Carry records between devices as files.
    #[command(subcommand)]
    Exchange(exchange::Command),
    /// See which causes keep coming back, over all visits.
    #[command(subcommand)]
    Fleet(fleet::Command),
}

fn main() -> ExitCode {
    let arguments = Arguments::parse();
    let done = match arguments.command {
        Command::Diagnose(arguments) => diagnose::run(&arguments),
        Command::Report(arguments) => report::run(&arguments),
        Command::Check { visit } => diagnose::check(&visit),
        Command::Exchange(command) => exchange::run(command),
        Command::Fleet(command) => fleet::run(command),
        Command::Graph(command) => graph::run(&command),
        Command::Learned(arguments) => learned::run(&arguments),
        Command::Calc(arguments) => calc::run(&arguments),
        Command::Schema => show::json(&returnline_core::records::visit_file::schema()),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(failure) => failure.report(),
    }
}
