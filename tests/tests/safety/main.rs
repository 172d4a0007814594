//! Nobody is sent into harm: every step that can hurt carries its caution, in the
//! app and in the report alike, and no pressure is advised above what the weakest
//! part bears.
//!
//! What a step can do to a person is read here from the procedure files
//! themselves, not from what the program made of them.

mod cautions;
mod ratings;
mod written;
