//! Measures the engine and prints one table; asserts nothing. Build it in release.
//!
//! Every line is a kind of work at one size, worked out again and again: the
//! median, the quartiles, and how it grew from the line above. With
//! `RETURNLINE_PYTHON` naming a Python that has the packages of
//! `tests/reference/requirements.txt`, a library well known for such work does
//! the same in the same run (`tests/reference/bench.py`), and the last column is
//! its median over ours: above one, it takes longer.
//!
//!     cargo run --release -p returnline-tests --example bench_table -- [--visits 100000]

mod board;
mod diagnosis;
mod paper;
mod physics;
mod reference;
mod start;
mod timing;

use mimalloc::MiMalloc;
use reference::{Answer, Reference};
use std::error::Error;
use timing::{Timing, shown};

/// The allocator of the programs.
#[global_allocator]
static ALLOCATOR: MiMalloc = MiMalloc;

type Rows = Result<Vec<Row>, Box<dyn Error>>;

/// One line of the table.
struct Row {
    what: &'static str,
    work: String,
    own: Timing,
    beside: Option<(&'static str, Answer)>,
}

fn main() -> Result<(), Box<dyn Error>> {
    let visits = visits()?;
    if cfg!(debug_assertions) {
        eprintln!("this is a debug build: its times say little");
    }
    let reference = Reference::find()?;
    println!(
        "{:<27} {:<30} {:>9} {:>19} {:>7}  {:<38} {:>9} {:>7}",
        "work", "size", "median", "quartiles", "growth", "beside it", "median", "ratio"
    );
    print(&diagnosis::rows(&reference)?);
    print(&physics::rows(&reference)?);
    print(&paper::rows(&reference)?);
    print(&board::rows(&reference, visits)?);
    print(&start::rows(&reference)?);
    println!("{}", reference.note());
    Ok(())
}

/// Visits of the largest board.
fn visits() -> Result<usize, Box<dyn Error>> {
    let words: Vec<String> = std::env::args().skip(1).collect();
    match words.iter().map(String::as_str).collect::<Vec<_>>()[..] {
        [] => Ok(100_000),
        ["--visits", number] => Ok(number.parse()?),
        _ => Err("usage: bench_table [--visits NUMBER]".into()),
    }
}

fn print(rows: &[Row]) {
    let mut above: Option<&Row> = None;
    for row in rows {
        let growth = above
            .filter(|above| above.what == row.what)
            .map_or_else(String::new, |above| {
                format!("x {:.1}", row.own.median / above.own.median)
            });
        let (library, time, ratio) = match &row.beside {
            None => ("", String::new(), String::new()),
            Some((library, Answer::Seconds(seconds))) => {
                let ratio = seconds / row.own.median;
                let digits = if ratio < 10.0 { 1 } else { 0 };
                (*library, shown(*seconds), format!("{ratio:.digits$}"))
            }
            Some((library, Answer::None(why))) => (*library, why.clone(), String::new()),
        };
        println!(
            "{:<27} {:<30} {:>9} {:>19} {growth:>7}  {library:<38} {time:>9} {ratio:>7}",
            row.what,
            row.work,
            shown(row.own.median),
            format!("{} to {}", shown(row.own.low), shown(row.own.high)),
        );
        above = Some(row);
    }
}
