//! The timed hold test, by a named published method.

use super::amount::Amount;
use super::charge::{CautionText, caution};
use super::given::{topic, words};
use crate::pressure::hold_test::{
    self, AstmTest, EnTest, FailReason, HoldReading, HoldVerdict, Method, VoidReason, astm_f2164,
    en_805, minnesota, released_limit,
};
use crate::units::{
    Compressibility, Duration, Fraction, GaugePressure, Modulus, Number, PressureDifference, Volume,
};

words! {
    /// Why a test says nothing.
    WhyVoid = VoidReason { TooHigh, TooLow, TooShort, TooLong, NotReduced, FellTooFar, GaugeTooCoarse }
    /// Why a test failed.
    WhyFailed = FailReason { PressureFell, TooMuchReleased }
}

/// A reading of the watch.
#[derive(Copy, Clone, Debug, serde::Deserialize, schemars::JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct WatchReading {
    /// From the start of the watch.
    at: Amount<Duration>,
    /// With the accuracy of the gauge.
    pressure: Amount<GaugePressure>,
}

/// A test with what its method asks for.
// Read once a line and never kept in numbers: its size does not matter.
#[allow(clippy::large_enum_variant)]
#[derive(Clone, Debug, serde::Deserialize, schemars::JsonSchema)]
#[serde(deny_unknown_fields, tag = "kind", rename_all = "snake_case")]
pub(super) enum TestGiven {
    /// ASTM F2164.
    AstmF2164 {
        design_pressure: Amount<GaugePressure>,
        /// Of the expansion with make-up water.
        expansion: Amount<Duration>,
        test_pressure: Amount<GaugePressure>,
        #[schemars(length(min = 1, max = 10000))]
        watch: Vec<WatchReading>,
    },
    /// EN 805:2000, A.27.
    En805 {
        volume: Amount<Volume>,
        /// Compressibility of water.
        squeeze: Amount<Compressibility>,
        /// Outside diameter over wall.
        diameter_ratio: Amount<Number>,
        modulus: Amount<Modulus>,
        /// Time at zero pressure before.
        relaxed: Amount<Duration>,
        isolated: Amount<Duration>,
        isolated_from: Amount<GaugePressure>,
        isolated_to: Amount<GaugePressure>,
        lowered_share: Amount<Fraction>,
        lowered: Amount<PressureDifference>,
        /// Water that came out with it.
        released: Amount<Volume>,
        #[schemars(length(min = 1, max = 10000))]
        watch: Vec<WatchReading>,
    },
    /// Minnesota Rules 4725.7050.
    Minnesota {
        operating_pressure: Amount<GaugePressure>,
        #[schemars(length(min = 1, max = 10000))]
        watch: Vec<WatchReading>,
    },
}

topic! {
    /// A hold test judged.
    HoldTest "hold-test" by "hold-method";
    example r#"{"test": {"kind": "minnesota", "operating_pressure": {"value": 50, "unit": "psi"}, "watch": [{"at": {"value": 0, "unit": "min"}, "pressure": {"value": 76, "unit": "psi", "accuracy": {"value": 0.5, "unit": "psi"}}}, {"at": {"value": 16, "unit": "min"}, "pressure": {"value": 75.8, "unit": "psi", "accuracy": {"value": 0.5, "unit": "psi"}}}]}}"#;
    asks HoldTestQuestion { test: TestGiven }
    tells HoldTestAnswer {
        /// The method, as it is cited.
        method: &'static str,
        method_from_memory: bool,
        /// `pass`, `fail` or `void`.
        verdict: &'static str,
        failed: Option<WhyFailed>,
        void: Option<WhyVoid>,
        fall: Amount<PressureDifference>,
        allowed: Amount<PressureDifference>,
        probability_within: Amount<Fraction>,
        rest_before_repeat: Option<Amount<Duration>>,
        /// Most water that pipe and water give back (EN 805).
        released_limit: Option<Amount<Volume>>,
        caution: CautionText,
    }
    |q, show| {
        let readings = |watch: &[WatchReading]| -> Vec<HoldReading> {
            watch.iter().map(|r| HoldReading { at: r.at.get(), pressure: r.pressure.uncertain() }).collect()
        };
        let mut limit = None;
        let result: hold_test::HoldResult = match &q.test {
            TestGiven::AstmF2164 { design_pressure, expansion, test_pressure, watch } => astm_f2164(&AstmTest {
                design: design_pressure.get(),
                expansion: expansion.get(),
                test: test_pressure.get(),
                watch: readings(watch),
            })?,
            TestGiven::En805 { volume, squeeze, diameter_ratio, modulus, relaxed, isolated, isolated_from, isolated_to, lowered_share, lowered, released, watch } => {
                crate::hydraulics::elastic::DIAMETER_RATIO.check(diameter_ratio.get())?;
                crate::hydraulics::elastic::ELASTIC_MODULUS.check(modulus.get())?;
                let test = EnTest {
                    volume: volume.get(),
                    squeeze: squeeze.get(),
                    ratio: diameter_ratio.get(),
                    modulus: modulus.get(),
                    relaxed: relaxed.get(),
                    isolated: isolated.get(),
                    isolated_from_to: (isolated_from.get(), isolated_to.get()),
                    lowered_by: lowered_share.get(),
                    lowered: lowered.get(),
                    released: released.get(),
                    watch: readings(watch),
                };
                limit = Some(released_limit(&test));
                en_805(&test)?
            }
            TestGiven::Minnesota { operating_pressure, watch } => minnesota(operating_pressure.get(), &readings(watch))?,
        };
        let (verdict, failed, void) = match result.verdict {
            HoldVerdict::Pass => ("pass", None, None),
            HoldVerdict::Fail(reason) => ("fail", Some(reason.into()), None),
            HoldVerdict::Void(reason) => ("void", None, Some(reason.into())),
        };
        let method: Method = result.method;
        Ok(HoldTestAnswer {
            method: method.citation(),
            method_from_memory: method.from_memory(),
            verdict,
            failed,
            void,
            fall: show.exact(result.fall),
            allowed: show.exact(result.allowed),
            probability_within: show.share(result.probability_within),
            rest_before_repeat: result.rest_before_repeat.map(|d| show.exact(d)),
            released_limit: limit.map(|v| show.exact(v)),
            caution: caution("stand-clear", "calc-caution-stand-clear"),
        })
    }
}
