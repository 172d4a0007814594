//! Flash point of alcohol in water.

use crate::fluids::FluidKind;
use crate::units::{Fraction, Quantity, Temperature};

/// Standard uncertainty of the pure flash points and of this estimate, K.
pub const PURE_FLASH_DOUBT: f64 = 4.0;

/// Molar mass g/mol; Antoine A, B, C for log₁₀(p/bar), T in K (NIST Chemistry WebBook, from
/// memory); van Laar A, B with water (Gmehling and Onken, DECHEMA collection, from memory);
/// flash point of the pure liquid, °C (closed cup, from memory of safety data).
struct Alcohol {
    molar_mass: f64,
    antoine: [f64; 3],
    laar: [f64; 2],
    flash: f64,
}
const METHANOL: Alcohol = Alcohol {
    molar_mass: 32.041_9,
    antoine: [5.204_09, 1_581.341, -33.50],
    laar: [0.804_1, 0.561_9],
    flash: 11.0,
};
const ETHANOL: Alcohol = Alcohol {
    molar_mass: 46.068_4,
    antoine: [5.246_77, 1_598.673, -46.424],
    laar: [1.679_8, 0.922_7],
    flash: 13.0,
};
const WATER_MOLAR_MASS: f64 = 18.015_28;

/// Flash point of a solution of an alcohol by mass fraction; none for water and the glycols,
/// whose solutions have no flash point that matters here.
///
/// The vapour above the solution has the alcohol pressure that it has at the flash point of
/// the pure liquid: x γ p(T) = p(T_pure), γ by van Laar (lean limit taken as independent of
/// temperature; Liaw and Chiu, *J. Hazard. Mater.* 137 (2006), from memory). Within about
/// ±4 K. Below a mass fraction of 1 % none is given.
pub fn flash_point(kind: FluidKind, mass_fraction: Fraction) -> Option<Temperature> {
    let mass_fraction = mass_fraction.si();
    let alcohol = match kind {
        FluidKind::Methanol => &METHANOL,
        FluidKind::Ethanol => &ETHANOL,
        _ => return None,
    };
    if !(0.01..=1.0).contains(&mass_fraction) {
        return None;
    }
    let moles = mass_fraction / alcohol.molar_mass;
    let x = moles / (moles + (1.0 - mass_fraction) / WATER_MOLAR_MASS);
    let [a12, a21] = alcohol.laar;
    let activity = if x >= 1.0 {
        1.0
    } else {
        (a12 / (1.0 + a12 * x / (a21 * (1.0 - x))).powi(2)).exp()
    };
    let [a, b, c] = alcohol.antoine;
    let lean = a - b / (Temperature::from_celsius(alcohol.flash).si() + c);
    // log₁₀ p(T) = lean − log₁₀(x γ), solved for T.
    let needed = lean - (x * activity).log10();
    Some(Temperature::from_si(b / (a - needed) - c))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Ethanol 10, 20, 30 % by volume about 45, 34, 29 °C; methanol 56, 41, 33 °C: an
    /// independent estimate by the same principle, ±4 K.
    #[test]
    fn solutions_lie_where_an_independent_estimate_has_them() {
        for (kind, volumes) in [
            (FluidKind::Ethanol, [(0.1, 45.0), (0.2, 34.0), (0.3, 29.0)]),
            (FluidKind::Methanol, [(0.1, 56.0), (0.2, 41.0), (0.3, 33.0)]),
        ] {
            for (phi, celsius) in volumes {
                let rho = kind.pure_density().si();
                let w = phi * rho / (phi * rho + (1.0 - phi) * 998.2);
                let found = flash_point(kind, Fraction::from_si(w)).unwrap().celsius();
                assert!((found - celsius).abs() < 4.0, "{kind:?} {phi}: {found}");
            }
        }
    }

    #[test]
    fn pure_alcohol_has_its_own_and_glycol_none() {
        let pure = flash_point(FluidKind::Ethanol, Fraction::from_si(1.0)).unwrap();
        assert!((pure.celsius() - 13.0).abs() < 1e-9);
        assert_eq!(
            flash_point(FluidKind::PropyleneGlycol, Fraction::from_si(0.5)),
            None
        );
        let mut last = f64::INFINITY;
        for percent in 2..=100 {
            let now = flash_point(
                FluidKind::Methanol,
                Fraction::from_si(f64::from(percent) / 100.0),
            )
            .unwrap();
            assert!(now.celsius() <= last, "{percent}");
            last = now.celsius();
        }
    }
}
