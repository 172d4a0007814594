//! The procedure files that ship with the program, embedded at build time.

use super::library::{Library, SourceText};
use super::validate::Problem;

macro_rules! files {
    ($($name:literal),* $(,)?) => {
        /// The shipped files. A file added to `core/data/procedures/` is added here.
        pub const FILES: &[SourceText<'_>] = &[$(SourceText {
            name: $name,
            text: include_str!(concat!("../../data/procedures/", $name)),
        }),*];
    };
}

files![
    "common.toml",
    "flow.toml",
    "fluid.toml",
    "pressure.toml",
    "instruments.toml",
    "hand-over.toml",
];

/// Reads the shipped procedures.
///
/// # Errors
/// The problems found in the shipped files; a test holds that there are none.
pub fn load() -> Result<Library, Vec<Problem>> {
    Library::load(FILES)
}
