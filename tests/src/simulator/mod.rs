//! A forward simulator of service calls: an invented system, one fault or none,
//! what instruments and people would say, and a visit file that goes through the
//! program as any other.
//!
//! It is written from the physics of a ground loop, by the physics modules where
//! they have it (network, friction, static pressure, fluids), and from plainly
//! stated practitioner's relations elsewhere. It knows the names of causes and
//! findings, because a visit file is written with them, and nothing else of the
//! rule graph: no link, no strength, no prior.

pub mod call;
pub mod fault;
pub mod meters;
pub mod network;
pub mod plant;
pub mod pressure;
pub mod score;
pub mod seen;
pub mod signs;
pub mod state;
pub mod thermal;
pub mod trial;
pub mod truth;
pub mod written;
