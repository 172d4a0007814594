//! How a thick plastic pipe gives under pressure and grows with temperature.

use crate::uncertainty::Uncertain;
use crate::units::{
    Bound, Compressibility, Modulus, Number, OutOfRange, Quantity, Temperature, ThermalExpansion,
};

/// Ratio of outside diameter to wall for which the closed forms are used.
pub const DIAMETER_RATIO: Bound<Number> = Bound::si("outside diameter over wall (SDR)", 4.0, 60.0);
/// Elastic moduli of pipe materials, soft plastic to steel.
pub const ELASTIC_MODULUS: Bound<Modulus> = Bound::si("elastic modulus", 1e7, 3e11);
/// Poisson ratios.
pub const POISSON_RATIO: Bound<Number> = Bound::si("Poisson ratio", 0.0, 0.5);
/// Temperatures of the table of moduli, 20 to 140 °F.
pub const MODULUS_TEMPERATURE: Bound<Temperature> =
    Bound::si("temperature of the pipe", 266.483_333, 333.15);

/// What the surroundings let the pipe do along its axis.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
pub enum Axial {
    /// Free to lengthen; closed ends pull it.
    Free,
    /// Held at its length, by soil or by anchors.
    Held,
}

/// Relative growth of the bore's volume by inside pressure, (∂V/∂p)/V, 1/Pa.
///
/// Lamé's thick wall with k = SDR/(SDR - 2), modulus E, Poisson ratio ν:
/// free with closed ends [2(1+ν)k² + 3(1-2ν)]/[E(k²-1)];
/// held 2(1+ν)(k² + 1 - 2ν)/[E(k²-1)].
/// Derivation: with p inside, σ_r + σ_θ = 2p/(k²-1) everywhere and
/// σ_θ - σ_r = 2pk²/(k²-1) at the bore; volume strain 2ε_θ + ε_z by Hooke's
/// law, with σ_z = p/(k²-1) free or ε_z = 0 held. (S. Timoshenko and
/// J. Goodier, *Theory of Elasticity*, § 28.)
/// Worked example: SDR 11, E = 800 MPa, ν = 0.45, free: 1.17e-8 /Pa = 8.1e-5 /psi.
///
/// # Errors
/// [`OutOfRange`] outside [`DIAMETER_RATIO`], [`ELASTIC_MODULUS`], [`POISSON_RATIO`].
pub fn compliance(
    sdr: Number,
    modulus: Modulus,
    poisson: Number,
    axial: Axial,
) -> Result<Compressibility, OutOfRange> {
    let sdr = DIAMETER_RATIO.check(sdr)?.si();
    let modulus = ELASTIC_MODULUS.check(modulus)?.si();
    let nu = POISSON_RATIO.check(poisson)?.si();
    let k2 = (sdr / (sdr - 2.0)).powi(2);
    let volume_strain = match axial {
        Axial::Free => 2.0 * (1.0 + nu) * k2 + 3.0 * (1.0 - 2.0 * nu),
        Axial::Held => 2.0 * (1.0 + nu) * (k2 + 1.0 - 2.0 * nu),
    };
    Ok(Compressibility::from_si(
        volume_strain / (modulus * (k2 - 1.0)),
    ))
}

/// Relative growth of the bore's volume by temperature, 1/K, from the linear
/// expansion α of the material: 3α free, 2(1+ν)α held (the hindered length
/// turns into girth).
///
/// # Errors
/// [`OutOfRange`] outside [`POISSON_RATIO`].
pub fn thermal_growth(
    linear: ThermalExpansion,
    poisson: Number,
    axial: Axial,
) -> Result<ThermalExpansion, OutOfRange> {
    let nu = POISSON_RATIO.check(poisson)?.si();
    Ok(linear
        * match axial {
            Axial::Free => 3.0,
            Axial::Held => 2.0 * (1.0 + nu),
        })
}

/// Multiplier of the modulus of polyethylene against that at 73.4 °F (23 °C),
/// by temperature in °F. From memory of the PPI *Handbook of Polyethylene
/// Pipe*, ch. 3, table B.1.2.
const MULTIPLIERS: [(f64, f64); 11] = [
    (20.0, 1.81),
    (30.0, 1.65),
    (40.0, 1.49),
    (50.0, 1.32),
    (60.0, 1.18),
    (73.4, 1.00),
    (80.0, 0.93),
    (90.0, 0.82),
    (100.0, 0.73),
    (120.0, 0.58),
    (140.0, 0.43),
];

/// Modulus of polyethylene at a temperature over that at 23 °C, straight lines
/// between the rows of the PPI handbook's table B.1.2 (from memory).
///
/// # Errors
/// [`OutOfRange`] outside [`MODULUS_TEMPERATURE`].
pub fn modulus_multiplier(t: Temperature) -> Result<Number, OutOfRange> {
    let f = MODULUS_TEMPERATURE.check(t)?.fahrenheit();
    let row = MULTIPLIERS.partition_point(|(at, _)| *at <= f);
    let ((t0, m0), (t1, m1)) = match row {
        0 => (MULTIPLIERS[0], MULTIPLIERS[1]),
        n => (
            MULTIPLIERS[n.min(MULTIPLIERS.len() - 1) - 1],
            MULTIPLIERS[n.min(MULTIPLIERS.len() - 1)],
        ),
    };
    Ok(Number::from_si(m0 + (m1 - m0) * (f - t0) / (t1 - t0)))
}

/// Modulus of polyethylene under a load of seconds to minutes, Pa: 110 to
/// 130 ksi at 23 °C, every value alike (from memory of trade literature), times
/// [`modulus_multiplier`].
///
/// # Errors
/// As [`modulus_multiplier`].
pub fn short_term_modulus(t: Temperature) -> Result<Uncertain<Modulus>, OutOfRange> {
    const KSI: f64 = 6.894_757_293_168e6;
    let multiplier = modulus_multiplier(t)?.si();
    Ok(Uncertain::between(
        Modulus::from_si(110.0 * KSI * multiplier),
        Modulus::from_si(130.0 * KSI * multiplier),
    ))
}

/// Poisson ratio of polyethylene: 0.35 at once, 0.45 under lasting load (from
/// memory of the PPI handbook), every value between alike.
pub fn poisson_ratio() -> Uncertain<Number> {
    Uncertain::between(Number::from_si(0.35), Number::from_si(0.45))
}

#[cfg(test)]
mod tests {
    use super::*;

    const PSI: f64 = 6_894.757_293_168;

    fn per_psi(sdr: f64, axial: Axial) -> f64 {
        let (e, nu) = (Modulus::from_si(800e6), Number::from_si(0.45));
        PSI * compliance(Number::from_si(sdr), e, nu, axial).unwrap().si()
    }

    /// Lamé's solution written out with integration constants, independent of
    /// the closed form: u(r) = A r + B/r from the two surface conditions.
    #[test]
    fn closed_forms_are_those_of_lame() {
        let (e, nu, p): (f64, f64, f64) = (800e6, 0.45, 1e5);
        for sdr in [9.0, 11.0, 13.5, 17.0] {
            let (b, a): (f64, f64) = (1.0, 1.0 - 2.0 / sdr); // outer and inner radius
            // σ_r = c1 - c2/r², σ_θ = c1 + c2/r²; σ_r(a) = -p, σ_r(b) = 0.
            let c2 = p / (1.0 / (a * a) - 1.0 / (b * b));
            let c1 = c2 / (b * b);
            let (radial, hoop) = (c1 - c2 / (a * a), c1 + c2 / (a * a));
            for axial in [Axial::Free, Axial::Held] {
                let along = match axial {
                    Axial::Free => p * a * a / (b * b - a * a),
                    Axial::Held => nu * (radial + hoop),
                };
                let hoop_strain = (hoop - nu * (radial + along)) / e;
                let axial_strain = (along - nu * (radial + hoop)) / e;
                let expected = (2.0 * hoop_strain + axial_strain) / p * PSI;
                assert!((per_psi(sdr, axial) / expected - 1.0).abs() < 1e-12);
            }
        }
    }

    /// Against values found by finite elements for the axially free pipe.
    #[test]
    fn published_sizes() {
        for (sdr, expected) in [
            (9.0, 6.7e-5),
            (11.0, 8.1e-5),
            (13.5, 9.8e-5),
            (17.0, 12.2e-5),
        ] {
            assert!(
                (per_psi(sdr, Axial::Free) - expected).abs() < 0.06e-5,
                "{sdr}"
            );
        }
    }

    #[test]
    fn the_table_of_multipliers_is_met_at_its_rows() {
        for (f, multiplier) in MULTIPLIERS {
            // The ends are met within the rounding of the bound.
            let t = Temperature::from_fahrenheit(f.clamp(20.000_01, 139.999_99));
            assert!((modulus_multiplier(t).unwrap().si() - multiplier).abs() < 1e-5);
        }
        assert!(modulus_multiplier(Temperature::from_fahrenheit(150.0)).is_err());
    }
}
