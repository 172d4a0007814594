//! What crosses the boundary. TypeScript is generated from these types.

mod assessment;
mod learned;
mod plan;
mod records;

pub use assessment::*;
pub use learned::*;
pub use plan::*;
pub use records::*;
