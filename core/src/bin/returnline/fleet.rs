//! `returnline fleet`: the board without a screen, and an invented fleet.

use super::exchange::{open, open_existing};
use super::failure::Failure;
use super::show;
use returnline_core::api::types::{BoardView, FleetFilter, FleetGroup, FleetQuery};
use returnline_core::api::{Wording, trial};
use returnline_core::report::file::write_whole;
use returnline_core::text::catalog;
use std::io::Write;
use std::path::PathBuf;

/// Words after `returnline fleet`.
#[derive(clap::Subcommand)]
pub enum Command {
    /// Causes, repeats, waiting times, rates and differences over all visits.
    #[command(after_help = "Examples:\n  returnline fleet board --db office.db\n  \
        returnline fleet board --db office.db --group crew=\"Crew Elm\" --from 2025-01-01\n  \
        returnline fleet board --db office.db --changed-on 2024-06-01 --csv tables\n\n\
        Groups: crew, year, season, fluid, centre, pipe, or a habit with kept or not-kept.")]
    Board(Board),
    /// Fill a new database with an invented fleet.
    #[command(
        after_help = "Everything in it is invented: systems, crews and calls. Crew, season, \
        fluid, flow centre, pipe and every habit are drawn independently. Three effects are \
        planted, each making one cause come four times as fast: “Crew Hazel” leaves debris in the \
        loop; where the fill water was not tested, it scales; with ethanol, the antifreeze is not \
        mixed. Nothing else makes any difference.\n\n\
        Example:\n  returnline fleet demo --visits 100000 --db invented.db"
    )]
    Demo {
        /// At least so many visits.
        #[arg(long, default_value_t = 5_000)]
        visits: usize,
        /// The database to make.
        #[arg(long, value_name = "FILE")]
        db: PathBuf,
        /// Another number makes another fleet.
        #[arg(long, default_value_t = 1)]
        seed: u64,
    },
    /// Make invented fleets of many seeds and count what the board finds in them.
    Trial {
        /// Visits of each.
        #[arg(long, default_value_t = 100_000)]
        visits: usize,
        /// Seeds from 1 up.
        #[arg(long, default_value_t = 20)]
        seeds: u64,
    },
}

/// Words after `returnline fleet board`.
#[derive(clap::Args)]
pub struct Board {
    /// The database.
    #[arg(long, value_name = "FILE")]
    db: PathBuf,
    /// Only systems of this group; may be given more than once.
    #[arg(long, value_name = "BY=GROUP", value_parser = group)]
    group: Vec<FleetGroup>,
    /// Only this cause, by its identifier.
    #[arg(long)]
    cause: Option<String>,
    /// First day of visits, YYYY-MM-DD.
    #[arg(long, value_name = "DAY")]
    from: Option<String>,
    /// Last day of visits.
    #[arg(long, value_name = "DAY")]
    to: Option<String>,
    /// Days within which the same cause counts as come back.
    #[arg(long, default_value_t = 365)]
    repeat_days: i32,
    /// Days from commissioning over which systems are compared.
    #[arg(long, default_value_t = 730)]
    watch_days: i32,
    /// Day of a change of practice.
    #[arg(long, value_name = "DAY")]
    changed_on: Option<String>,
    /// Write every part as a table into this folder.
    #[arg(long, value_name = "FOLDER")]
    csv: Option<PathBuf>,
    /// Print the whole board as one JSON document.
    #[arg(long)]
    json: bool,
}

fn group(text: &str) -> Result<FleetGroup, String> {
    let (dimension, group) = text.split_once('=').ok_or("write BY=GROUP")?;
    Ok(FleetGroup {
        dimension: dimension.to_owned(),
        group: group.to_owned(),
    })
}

/// Runs `returnline fleet`.
pub fn run(command: Command) -> Result<(), Failure> {
    match command {
        Command::Board(words) => board(words),
        Command::Demo { visits, db, seed } => {
            if db.exists() {
                let args =
                    returnline_core::text::Args::new().text("path", db.display().to_string());
                let catalog = catalog(Wording::default().language);
                return Err(Failure::Io(catalog.fill("program-already-there", &args)));
            }
            let made = open(&db)?.invent_fleet(visits, seed);
            let (visits, systems) = made.map_err(|error| Failure::api(&error))?;
            let args = returnline_core::text::Args::new()
                .text("visits", visits.to_string())
                .text("systems", systems.to_string())
                .text("path", db.display().to_string());
            let catalog = catalog(Wording::default().language);
            let line = catalog.fill("program-invented", &args);
            writeln!(std::io::stdout().lock(), "{line}")?;
            Ok(())
        }
        Command::Trial { visits, seeds } => {
            let mut out = std::io::stdout().lock();
            writeln!(out, "seed,visits,tests,discovered,planted,others")?;
            let (mut planted, mut others) = (0, 0);
            for seed in 1..=seeds {
                let one = trial(visits, seed, FleetQuery::default().watch_days);
                planted += one.planted;
                others += one.others;
                writeln!(
                    out,
                    "{seed},{},{},{},{},{}",
                    one.visits, one.tests, one.discovered, one.planted, one.others
                )?;
            }
            writeln!(out, "all,,,,{planted},{others}")?;
            Ok(())
        }
    }
}

fn board(words: Board) -> Result<(), Failure> {
    let mut engine = open_existing(&words.db)?;
    let query = FleetQuery {
        filter: FleetFilter {
            from: words.from,
            to: words.to,
            groups: words.group,
            cause: words.cause,
            ..FleetFilter::default()
        },
        repeat_days: words.repeat_days,
        watch_days: words.watch_days,
        changed_on: words.changed_on,
    };
    let board = engine.board(&query).map_err(|error| Failure::api(&error))?;
    if let Some(folder) = &words.csv {
        std::fs::create_dir_all(folder).map_err(|error| Failure::file(folder, &error))?;
        for table in engine.board_tables(&board) {
            let path = folder.join(&table.name);
            let written = write_whole(&path, table.csv.as_bytes());
            written.map_err(|error| Failure::Io(error.to_string()))?;
        }
    }
    if words.json {
        show::json(&board)
    } else {
        print(&board)
    }
}

fn print(board: &BoardView) -> Result<(), Failure> {
    let catalog = catalog(Wording::default().language);
    let mut out = std::io::BufWriter::new(std::io::stdout().lock());
    writeln!(out, "{}", board.headline)?;
    for note in &board.notes {
        writeln!(out, "  {note}")?;
    }
    writeln!(out, "\n{}", catalog.text("program-board-causes"))?;
    for line in &board.causes {
        let (title, shown) = (&line.title, &line.shown);
        writeln!(
            out,
            "  {title}: {shown}, {:.0} h, {:.0}",
            line.hours, line.cost
        )?;
    }
    writeln!(out, "\n{}", catalog.text("program-board-repeats"))?;
    for line in board.repeats.iter().filter(|line| line.count > 0) {
        writeln!(out, "  {}: {}", line.title, line.shown)?;
    }
    writeln!(out, "\n{}", catalog.text("program-board-waiting"))?;
    writeln!(out, "  {}", board.waiting.words)?;
    writeln!(out, "\n{}", catalog.text("program-board-rates"))?;
    for part in &board.rates {
        writeln!(out, "  {}", part.label)?;
        for row in &part.rows {
            writeln!(out, "    {}: {}", row.label, row.shown)?;
        }
    }
    writeln!(out, "\n{}", catalog.text("program-board-differences"))?;
    writeln!(out, "  {}", board.differences.words)?;
    for line in &board.differences.lines {
        writeln!(out, "  - {}", line.words)?;
    }
    writeln!(out, "\n{}", catalog.text("program-board-fixes"))?;
    for line in &board.fixes {
        writeln!(out, "  {}: {}", line.label, line.shown)?;
    }
    if let Some(practice) = &board.practice {
        writeln!(out, "\n{}", practice.words)?;
    }
    out.flush()?;
    Ok(())
}
