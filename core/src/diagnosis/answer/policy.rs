//! The thresholds of the answers, in one place.

/// When an answer is good enough, and when a check is worth its time.
///
/// These are decisions, not facts: source of every value is judgement.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Policy {
    /// Probability at which a cause is taken as found.
    pub enough: f64,
    /// Probability of no fault at which "nothing to correct" is said.
    pub healthy: f64,
    /// The same, lower, where no single fault comes near: many faults at a
    /// little each are what nobody looked for, not a suspicion.
    pub healthy_unrivalled: f64,
    /// How many times the most probable fault that no fault must then be.
    pub rival: f64,
    /// The same from which on it is said without reservation: below, what was not
    /// looked at still hides a fault in one such call of four or five.
    pub healthy_settled: f64,
    /// Probability of a unit fault without a loop fault at which "not the loop" is said.
    pub elsewhere: f64,
    /// Expected bits below which a check is not worth doing.
    pub worth_bits: f64,
    /// Expected bits a minute below which a check is not worth its time.
    pub worth_bits_per_minute: f64,
    /// The second cause must have at least this share of the first's
    /// probability for the two to be called alike.
    pub alike: f64,
    /// The change of the odds of two causes against each other that counts as telling them apart.
    pub apart: f64,
    /// A finding is unexplained if the explanation gives what was seen less than this probability.
    pub unexplained_below: f64,
    /// Bits by which a reading must be less likely in the light of the others to be called contradictory.
    pub contradictory_bits: f64,
    /// Probability at which an instrument is doubted.
    pub doubted: f64,
}

impl Default for Policy {
    fn default() -> Self {
        Self {
            enough: 0.9,
            healthy: 0.6,
            healthy_unrivalled: 0.4,
            rival: 4.5,
            healthy_settled: 0.85,
            elsewhere: 0.7,
            worth_bits: 0.02,
            worth_bits_per_minute: 0.002,
            alike: 0.4,
            apart: 2.0,
            unexplained_below: 0.25,
            contradictory_bits: 2.0,
            doubted: 0.3,
        }
    }
}
