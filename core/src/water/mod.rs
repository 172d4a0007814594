//! Fill-water quality: indices and guideline verdicts.

mod guideline;
mod index;
mod verdict;

pub use guideline::{GUIDELINES, Guideline, Limit, Mark, Parameter, Source, Use};
pub use index::{
    ALKALINITY, CALCIUM, DISSOLVED_SOLIDS, INDEX_DOUBT, PH, SaturationIndices, ScaleTendency,
    WATER_TEMPERATURE, WaterSample, indices,
};
pub use verdict::{
    Action, Evidence, Finding, Sign, SignOf, Verdict, WaterTest, Words, WordsFor, judge,
};
