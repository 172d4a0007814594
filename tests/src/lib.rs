//! Shared pieces of the outside checks.

pub mod handed;
pub mod invented;
pub mod loops;
pub mod networks;
pub mod pages;
pub mod plans;
pub mod practice;
pub mod program;
pub mod simulator;
pub mod spoil;

/// Rows of a committed reference table: comment lines and the header line left out, cells
/// split at commas.
pub fn rows(table: &'static str) -> impl Iterator<Item = Vec<&'static str>> {
    table
        .lines()
        .filter(|line| !line.starts_with('#') && !line.is_empty())
        .skip(1)
        .map(|line| line.split(',').collect())
}
