//! Backups as they are shown.

use serde::Serialize;
use ts_rs::TS;

/// One automatic backup.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, TS)]
#[ts(export)]
pub struct BackupLine {
    /// Running number, to restore it by.
    pub number: u32,
    /// When it was made, in words.
    pub made: Option<String>,
    /// How many visits it holds; none if it is not whole.
    pub visits: Option<usize>,
    /// What is wrong with it, in words.
    pub trouble: Option<String>,
}
