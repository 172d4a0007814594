//! Liquid water at atmospheric pressure.
//!
//! IAPWS SR6-08(2011), *Revised Supplementary Release on Properties of Liquid
//! Water at 0.1 MPa*: fits to IAPWS-95 (density to 1 ppm, specific heat to
//! 0.01 %) and to the IAPWS viscosity and conductivity formulations. Vapour
//! pressure: IAPWS SR1-86(1992), *Revised Supplementary Release on Saturation
//! Properties of Ordinary Water Substance*. Used from 0 to 100 °C; pressure up
//! to 10 bar changes the density by less than 0.05 %.

/// Specific gas constant of the release, kJ/(kg·K).
const R: f64 = 0.461_518_05;
const T_REFERENCE: f64 = 10.0;
const P_REFERENCE_MPA: f64 = 0.1;

/// Terms (coefficient, exponent) in α = 10/(593 - T) and β = 10/(T - 232).
type Terms = &'static [(f64, i32)];
const V_CONSTANT: f64 = 1.937_631_57e-2;
const V_ALPHA: Terms = &[
    (6.744_584_46e3, 4),
    (-2.225_216_04e5, 5),
    (1.002_312_47e8, 7),
    (-1.635_521_18e9, 8),
    (8.322_996_58e9, 9),
];
const V_BETA: Terms = &[
    (5.785_452_92e-3, 1),
    (-1.531_956_65e-2, 2),
    (3.113_378_59e-2, 3),
    (-4.235_462_41e-2, 4),
    (3.387_135_07e-2, 5),
    (-1.199_467_61e-2, 6),
];
const P_ALPHA: Terms = &[
    (-7.524_587_8e-6, 1),
    (-1.376_741_8e-2, 3),
    (1.062_729_3e1, 5),
    (-2.045_779_5e2, 6),
    (1.203_741_4e3, 7),
];
const P_BETA: Terms = &[
    (-3.109_147_0e-6, 1),
    (2.896_491_9e-5, 3),
    (-1.311_276_3e-4, 4),
    (3.041_045_3e-4, 5),
    (-3.903_459_4e-4, 6),
    (2.340_311_7e-4, 7),
    (-4.851_010_1e-5, 9),
];
const G_ALPHA: Terms = &[
    (-1.661_470_539e5, 4),
    (2.708_781_640e6, 5),
    (-1.557_191_544e8, 7),
];
const G_BETA: Terms = &[
    (-8.237_426_256e-1, 2),
    (1.908_956_353, 3),
    (-2.017_597_384, 4),
    (8.546_361_348e-1, 5),
];
const G_LOG: f64 = -8.983_025_854;

const VISCOSITY: [(f64, f64); 4] = [
    (280.68, -1.9),
    (511.45, -7.7),
    (61.131, -19.6),
    (0.459_03, -40.0),
];
const CONDUCTIVITY: [(f64, f64); 4] = [
    (1.663_0, -1.15),
    (-1.778_1, -3.4),
    (1.156_7, -6.0),
    (-0.432_115, -7.6),
];
/// Critical temperature, K, and pressure, Pa, with the coefficients of τ = 1 - T/Tc.
const T_CRITICAL: f64 = 647.096;
const P_CRITICAL: f64 = 22.064e6;
const SATURATION: [(f64, f64); 6] = [
    (-7.859_517_83, 1.0),
    (1.844_082_59, 1.5),
    (-11.786_649_7, 3.0),
    (22.680_741_1, 3.5),
    (-15.961_871_9, 4.0),
    (1.801_225_02, 7.5),
];

fn alpha(t: f64) -> f64 {
    T_REFERENCE / (593.0 - t)
}
fn beta(t: f64) -> f64 {
    T_REFERENCE / (t - 232.0)
}
fn sum(terms: Terms, at: f64) -> f64 {
    terms.iter().map(|(c, n)| c * at.powi(*n)).sum()
}
fn sum_slope(terms: Terms, at: f64) -> f64 {
    let term = |(c, n): &(f64, i32)| f64::from(*n) * c * at.powi(n + 1);
    terms.iter().map(term).sum()
}
fn sum_curvature(terms: Terms, at: f64) -> f64 {
    let term = |(c, n): &(f64, i32)| f64::from(n * (n + 1)) * c * at.powi(n + 2);
    terms.iter().map(term).sum()
}

/// Specific volume, m³/kg, and its derivative by temperature, m³/(kg·K).
fn volume(t: f64) -> (f64, f64) {
    let (a, b) = (alpha(t), beta(t));
    let scale = R / P_REFERENCE_MPA / 1e3;
    (
        scale * T_REFERENCE * (V_CONSTANT + sum(V_ALPHA, a) + sum(V_BETA, b)),
        scale * (sum_slope(V_ALPHA, a) - sum_slope(V_BETA, b)),
    )
}

/// Density, kg/m³, at a temperature in K.
pub(super) fn density(t: f64) -> f64 {
    1.0 / volume(t).0
}
/// Volumetric expansion (∂v/∂T)/v, 1/K.
pub(super) fn expansion(t: f64) -> f64 {
    let (v, slope) = volume(t);
    slope / v
}
/// Isothermal compressibility, 1/Pa.
pub(super) fn compressibility(t: f64) -> f64 {
    let scale = R * T_REFERENCE / (P_REFERENCE_MPA * P_REFERENCE_MPA) / 1e3;
    let by_megapascal = scale * (sum(P_ALPHA, alpha(t)) + sum(P_BETA, beta(t)));
    -by_megapascal / volume(t).0 / 1e6
}
/// Isobaric specific heat, J/(kg·K).
pub(super) fn specific_heat(t: f64) -> f64 {
    let tau = t / T_REFERENCE;
    let curvature = sum_curvature(G_ALPHA, alpha(t)) + sum_curvature(G_BETA, beta(t));
    -R * 1e3 * (G_LOG + tau * curvature)
}
/// Dynamic viscosity, Pa·s.
pub(super) fn viscosity(t: f64) -> f64 {
    let t = t / 300.0;
    VISCOSITY.iter().map(|(c, n)| c * t.powf(*n)).sum::<f64>() * 1e-6
}
/// Thermal conductivity, W/(m·K).
pub(super) fn conductivity(t: f64) -> f64 {
    let t = t / 300.0;
    CONDUCTIVITY.iter().map(|(c, n)| c * t.powf(*n)).sum()
}
/// Saturation pressure, Pa.
pub(super) fn vapour_pressure(t: f64) -> f64 {
    let tau = 1.0 - t / T_CRITICAL;
    let terms: f64 = SATURATION.iter().map(|(c, n)| c * tau.powf(*n)).sum();
    P_CRITICAL * (T_CRITICAL / t * terms).exp()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(value: f64, published: f64, relative: f64) {
        assert!(
            (value / published - 1.0).abs() < relative,
            "{value} is not {published}"
        );
    }

    /// Density at 260 K: worked example of the `iapws` package, `_Liquid`.
    /// Viscosity and conductivity at 25 °C and the triple point: the values
    /// that IAPWS R12-08, R15-11 and SR1-86 state; boiling at one atmosphere:
    /// IAPWS-95.
    #[test]
    fn values_that_the_releases_state() {
        near(density(260.0), 997.068_360_271_049_2, 1e-9);
        near(viscosity(298.15), 890.02e-6, 1e-4);
        near(conductivity(298.15), 0.606_5, 1e-4);
        near(vapour_pressure(273.16), 611.657, 3e-5);
        near(vapour_pressure(373.124_3), 101_325.0, 1e-4);
    }
}
