//! What crosses the boundary. TypeScript is generated from these types.

mod assessment;
mod attachment;
mod backup;
mod fleet;
mod learned;
mod picture;
mod plan;
mod records;
mod settings;

pub use assessment::*;
pub use attachment::*;
pub use backup::*;
pub use fleet::*;
pub use learned::*;
pub use picture::*;
pub use plan::*;
pub use records::*;
pub use settings::*;
