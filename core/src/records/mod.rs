//! Domain records: site, system, commissioning, visit, and the visit file.
//!
//! Everything may be unknown, so almost every field is an `Option`; nothing
//! here computes engineering. Records depend on `units` and on nothing else.

pub mod attachment;
mod commissioning;
pub mod field;
mod id;
mod instrument;
mod point;
mod reading;
mod settings;
mod site;
mod system;
mod visit;
pub mod visit_file;
mod written;

pub use attachment::{AttachmentError, Photo, PhotoPhase, Picture, Signature, SignatureRole};
pub use commissioning::*;
pub use id::*;
pub use instrument::*;
pub use point::*;
pub use reading::*;
pub use settings::*;
pub use site::*;
pub use system::*;
pub use visit::*;
pub(crate) use written::{name_of, of_name};
