//! What crosses the boundary. TypeScript is generated from these types.

mod assessment;
mod attachment;
mod backup;
mod fleet;
mod plan;
mod records;

pub use assessment::*;
pub use attachment::*;
pub use backup::*;
pub use fleet::*;
pub use plan::*;
pub use records::*;
