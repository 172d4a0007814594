//! Aqueous solutions of one antifreeze: two-dimensional polynomials in
//! concentration and temperature.
//!
//! With x in mass percent, t in °C, and both taken from a mean point,
//! f = Σ cᵢⱼ (x - x_m)ⁱ (t - t_m)ʲ over the eighteen pairs with i + j ≤ 5, i ≤ 5,
//! j ≤ 3; density in kg/m³, specific heat in J/(kg·K), conductivity in
//! W/(m·K), and the natural logarithm of the viscosity in mPa·s. The freezing
//! point in °C is a polynomial of the fifth degree in x alone.
//! Source: see [`super::melinder_table`].

pub(super) struct Correlation {
    pub x_mean: f64,
    pub t_mean: f64,
    pub density: [f64; 18],
    pub specific_heat: [f64; 18],
    pub conductivity: [f64; 18],
    pub log_viscosity: [f64; 18],
    pub freezing: [f64; 6],
}

/// How many powers of temperature go with each power of concentration.
const TERMS: [usize; 6] = [4, 4, 4, 3, 2, 1];

fn horner(coefficients: impl DoubleEndedIterator<Item = f64>, at: f64) -> f64 {
    coefficients.rev().fold(0.0, |sum, c| sum * at + c)
}

impl Correlation {
    /// One property at a mass percentage and a temperature in °C.
    pub fn at(&self, table: &[f64; 18], x: f64, t: f64) -> f64 {
        let rows = rows(table).map(|row| horner(row.iter().copied(), t - self.t_mean));
        horner(rows.into_iter(), x - self.x_mean)
    }
    /// Its derivative by temperature.
    pub fn slope(&self, table: &[f64; 18], x: f64, t: f64) -> f64 {
        let rows = rows(table).map(|row| {
            let terms = row.iter().enumerate().skip(1);
            horner(terms.map(|(j, c)| j as f64 * c), t - self.t_mean)
        });
        horner(rows.into_iter(), x - self.x_mean)
    }
    /// Freezing point in °C at a mass percentage. The fit ends a few hundredths
    /// of a kelvin off at zero; it is held at the freezing point of water there.
    pub fn freezing(&self, x: f64) -> f64 {
        horner(self.freezing.iter().copied(), x - self.x_mean).min(0.0)
    }
}

fn rows(table: &[f64; 18]) -> [&[f64]; 6] {
    let mut start = 0;
    TERMS.map(|length| {
        start += length;
        &table[start - length..start]
    })
}
