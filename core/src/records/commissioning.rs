//! How the loop was flushed, filled and charged, as far as it was written down.

use crate::units::{
    Duration, GaugePressure, Length, Measure, Power, Temperature, Velocity, Volume, VolumeFlow,
};
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The commissioning record.
#[derive(Clone, PartialEq, Debug, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Commissioning {
    /// Day of the work.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub date: Option<NaiveDate>,
    /// Who did it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub crew: Option<String>,
    /// Whether a written flush record exists.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub flush_recorded: Option<bool>,
    /// Whether the loop was flushed at all.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub flushed: Option<bool>,
    /// Flow reached while flushing.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub flush_flow: Option<Measure<VolumeFlow>>,
    /// Velocity reached in the smallest pipe, if it was worked out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub flush_velocity: Option<Measure<Velocity>>,
    /// How long the loop was flushed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub flush_duration: Option<Measure<Duration>>,
    /// Shaft power of the flush cart's pump.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cart_power: Option<Measure<Power>>,
    /// Whether each circuit was flushed by itself.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub circuits_flushed_singly: Option<bool>,
    /// Whether the heat pump was valved off while the ground side was flushed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub heat_pump_isolated: Option<bool>,
    /// Whether a filter bag caught the debris.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub filtered: Option<bool>,
    /// How many filter bags were used one after the other, each finer.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 1, max = 400))]
    pub filter_stages: Option<u32>,
    /// Level drop in the dead-head test.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub dead_head_drop: Option<Measure<Length>>,
    /// Whether the circulators were bled before first start.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub circulators_bled: Option<bool>,
    /// Whether the fill water was tested.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub water_tested: Option<bool>,
    /// Where the water came from.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub water_source: Option<WaterSource>,
    /// Whether the pipe was held under pressure to relax before the last charge.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pipe_relaxed: Option<bool>,
    /// Static pressure left at start-up.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub charge_pressure: Option<Measure<GaugePressure>>,
    /// Day of the last charge, if not the day of the work.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub charge_date: Option<NaiveDate>,
    /// Fluid temperature at the last charge.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub charge_temperature: Option<Measure<Temperature>>,
    /// Antifreeze put in.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub antifreeze_volume: Option<Measure<Volume>>,
    /// How long the cart mixed the charge.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mix_duration: Option<Measure<Duration>>,
    /// Whether the freeze point was checked after mixing.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub concentration_checked: Option<bool>,
}

impl Commissioning {
    /// Day of the last charge, as far as it is on record.
    pub fn charged_on(&self) -> Option<NaiveDate> {
        self.charge_date.or(self.date)
    }
}

/// Where fill water came from.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum WaterSource {
    /// A well at the site.
    Well,
    /// The public supply.
    Mains,
    /// Brought in, treated or demineralised.
    BroughtIn,
    /// Open water.
    Surface,
}
