//! Typed SI quantities.
//!
//! One newtype over `f64` for each kind; the arithmetic between kinds is
//! written out where it has a meaning and absent where it has none.

use super::unit::Dimension;
use std::ops::{Add, AddAssign, Div, Mul, Neg, Sub};

/// Standard atmosphere, Pa. Source: ISO 2533:1975, CODATA.
pub const STANDARD_ATMOSPHERE_PA: f64 = 101_325.0;
/// Standard acceleration of gravity, m/s². Source: CGPM 1901, NIST SP 811.
pub const STANDARD_GRAVITY: f64 = 9.806_65;
/// 0 °C in kelvin. Source: definition of the Celsius scale, NIST SP 811.
pub const ZERO_CELSIUS_K: f64 = 273.15;

/// A kind of physical quantity, stored in its coherent SI unit.
pub trait Quantity: Copy + Clone + PartialEq + PartialOrd + std::fmt::Debug {
    /// The dimension, which says which units may be written for it.
    const DIMENSION: Dimension;
    /// Name of the kind for messages and schemas, for example `gauge pressure`.
    const NAME: &'static str;
    /// From a value in the coherent SI unit.
    fn from_si(value: f64) -> Self;
    /// The value in the coherent SI unit.
    fn si(self) -> f64;
}

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $dimension:ident, $label:literal) => {
        $(#[$doc])*
        #[derive(Copy, Clone, PartialEq, PartialOrd, Debug)]
        pub struct $name(f64);

        impl Quantity for $name {
            const DIMENSION: Dimension = Dimension::$dimension;
            const NAME: &'static str = $label;
            fn from_si(value: f64) -> Self { Self(value) }
            fn si(self) -> f64 { self.0 }
        }
    };
}

/// Kinds that add, subtract and scale like ordinary numbers.
macro_rules! linear {
    ($($name:ident),*) => {$(
        impl $name {
            /// Zero of this kind.
            pub const ZERO: Self = Self(0.0);
        }
        impl Add for $name { type Output = Self; fn add(self, o: Self) -> Self { Self(self.0 + o.0) } }
        impl AddAssign for $name { fn add_assign(&mut self, o: Self) { self.0 += o.0; } }
        impl Sub for $name { type Output = Self; fn sub(self, o: Self) -> Self { Self(self.0 - o.0) } }
        impl Neg for $name { type Output = Self; fn neg(self) -> Self { Self(-self.0) } }
        impl Mul<f64> for $name { type Output = Self; fn mul(self, k: f64) -> Self { Self(self.0 * k) } }
        impl Mul<$name> for f64 { type Output = $name; fn mul(self, q: $name) -> $name { $name(self * q.0) } }
        impl Div<f64> for $name { type Output = Self; fn div(self, k: f64) -> Self { Self(self.0 / k) } }
        impl Div for $name { type Output = f64; fn div(self, o: Self) -> f64 { self.0 / o.0 } }
        impl std::iter::Sum for $name {
            fn sum<I: Iterator<Item = Self>>(items: I) -> Self { Self(items.map(|q| q.0).sum()) }
        }
    )*};
}

quantity!(/// Thermodynamic temperature, K.
    Temperature, Temperature, "temperature");
quantity!(/// Difference of two temperatures, K.
    TemperatureDifference, TemperatureDifference, "temperature difference");
quantity!(/// Pressure above the surrounding atmosphere, Pa. May be negative down to vacuum.
    GaugePressure, Pressure, "gauge pressure");
quantity!(/// Pressure above vacuum, Pa.
    AbsolutePressure, Pressure, "absolute pressure");
quantity!(/// Difference of two pressures, Pa.
    PressureDifference, Pressure, "pressure difference");
quantity!(/// Volume flow rate, m³/s.
    VolumeFlow, VolumeFlow, "flow");
quantity!(/// Volume, m³.
    Volume, Volume, "volume");
quantity!(/// Length, m.
    Length, Length, "length");
quantity!(/// Area, m².
    Area, Area, "area");
quantity!(/// Velocity, m/s.
    Velocity, Velocity, "velocity");
quantity!(/// Power or heat flow rate, W.
    Power, Power, "power");
quantity!(/// Duration, s.
    Duration, Duration, "duration");
quantity!(/// Density, kg/m³.
    Density, Density, "density");
quantity!(/// Dynamic viscosity, Pa·s.
    DynamicViscosity, Viscosity, "dynamic viscosity");
quantity!(/// Isobaric specific heat, J/(kg·K).
    SpecificHeat, SpecificHeat, "specific heat");
quantity!(/// Thermal conductivity, W/(m·K).
    ThermalConductivity, Conductivity, "thermal conductivity");
quantity!(/// Thermal conductance of an exchanger (UA), W/K.
    Conductance, Conductance, "thermal conductance");
quantity!(/// Thermal resistance, K/W.
    ThermalResistance, ThermalResistance, "thermal resistance");
quantity!(/// Change of pressure with temperature, Pa/K.
    PressureSlope, PressureSlope, "pressure change by temperature");
quantity!(/// Volume that a loop takes by pressure, m³/Pa.
    VolumeGive, VolumeGive, "volume change by pressure");
quantity!(/// Volumetric thermal expansion coefficient, 1/K.
    ThermalExpansion, Expansion, "thermal expansion");
quantity!(/// Relative volume change by pressure (compressibility, elastic compliance), 1/Pa.
    Compressibility, Compressibility, "compressibility");
quantity!(/// Elastic modulus, Pa.
    Modulus, Pressure, "elastic modulus");
quantity!(/// Dimensionless fraction, 1.
    Fraction, Fraction, "fraction");
quantity!(/// Electric current, A.
    Current, Current, "electric current");
quantity!(/// Electrical conductivity of water, S/m.
    ElectricalConductivity, ElectricalConductivity, "electrical conductivity");
quantity!(/// Mass concentration in water, kg/m³.
    MassConcentration, MassConcentration, "mass concentration");
quantity!(/// A number without unit that is not a fraction of a whole (pH, specific gravity).
    Number, Number, "number");

linear!(
    TemperatureDifference,
    GaugePressure,
    PressureDifference,
    VolumeFlow,
    Volume,
    Length,
    Area,
    Velocity,
    Power,
    Duration,
    Conductance,
    ThermalExpansion,
    Compressibility,
    Modulus,
    Fraction
);

impl Temperature {
    /// From degrees Celsius.
    pub fn from_celsius(value: f64) -> Self {
        Self(value + ZERO_CELSIUS_K)
    }
    /// In degrees Celsius.
    pub fn celsius(self) -> f64 {
        self.0 - ZERO_CELSIUS_K
    }
    /// From degrees Fahrenheit.
    pub fn from_fahrenheit(value: f64) -> Self {
        Self::from_celsius((value - 32.0) / 1.8)
    }
    /// In degrees Fahrenheit.
    pub fn fahrenheit(self) -> f64 {
        self.celsius() * 1.8 + 32.0
    }
}

impl Sub for Temperature {
    type Output = TemperatureDifference;
    fn sub(self, other: Self) -> TemperatureDifference {
        TemperatureDifference(self.0 - other.0)
    }
}
impl Add<TemperatureDifference> for Temperature {
    type Output = Self;
    fn add(self, difference: TemperatureDifference) -> Self {
        Self(self.0 + difference.0)
    }
}
impl Sub<TemperatureDifference> for Temperature {
    type Output = Self;
    fn sub(self, difference: TemperatureDifference) -> Self {
        Self(self.0 - difference.0)
    }
}

impl Number {
    /// One.
    pub const ONE: Self = Self(1.0);
}

impl AbsolutePressure {
    /// What a gauge shows at this absolute pressure in a given atmosphere.
    pub fn gauge(self, atmosphere: AbsolutePressure) -> GaugePressure {
        GaugePressure(self.0 - atmosphere.0)
    }
    /// The standard atmosphere, 101 325 Pa.
    pub fn standard_atmosphere() -> Self {
        Self(STANDARD_ATMOSPHERE_PA)
    }
}
impl GaugePressure {
    /// Absolute pressure behind a gauge reading in a given atmosphere.
    pub fn absolute(self, atmosphere: AbsolutePressure) -> AbsolutePressure {
        AbsolutePressure(self.0 + atmosphere.0)
    }
    /// Difference of two gauge readings taken in the same atmosphere.
    pub fn difference(self, other: Self) -> PressureDifference {
        PressureDifference(self.0 - other.0)
    }
}
impl Sub for AbsolutePressure {
    type Output = PressureDifference;
    fn sub(self, other: Self) -> PressureDifference {
        PressureDifference(self.0 - other.0)
    }
}
impl Add<PressureDifference> for AbsolutePressure {
    type Output = Self;
    fn add(self, difference: PressureDifference) -> Self {
        Self(self.0 + difference.0)
    }
}
impl Add<PressureDifference> for GaugePressure {
    type Output = Self;
    fn add(self, difference: PressureDifference) -> Self {
        Self(self.0 + difference.0)
    }
}
impl Sub<PressureDifference> for GaugePressure {
    type Output = Self;
    fn sub(self, difference: PressureDifference) -> Self {
        Self(self.0 - difference.0)
    }
}

impl PressureDifference {
    /// Height of a column of the fluid that makes this difference.
    pub fn head(self, density: Density) -> Length {
        Length(self.0 / (density.0 * STANDARD_GRAVITY))
    }
}
impl Length {
    /// Pressure under a column of the fluid of this height.
    pub fn pressure(self, density: Density) -> PressureDifference {
        PressureDifference(self.0 * density.0 * STANDARD_GRAVITY)
    }
    /// Area of the circle with this diameter.
    pub fn circle(self) -> Area {
        Area(std::f64::consts::FRAC_PI_4 * self.0 * self.0)
    }
}

macro_rules! product {
    ($($a:ident * $b:ident = $c:ident);* $(;)?) => {$(
        impl Mul<$b> for $a { type Output = $c; fn mul(self, b: $b) -> $c { $c(self.0 * b.0) } }
        impl Mul<$a> for $b { type Output = $c; fn mul(self, a: $a) -> $c { $c(self.0 * a.0) } }
        impl Div<$a> for $c { type Output = $b; fn div(self, a: $a) -> $b { $b(self.0 / a.0) } }
        impl Div<$b> for $c { type Output = $a; fn div(self, b: $b) -> $a { $a(self.0 / b.0) } }
    )*};
}
product! {
    Velocity * Area = VolumeFlow;
    VolumeFlow * Duration = Volume;
    VolumeFlow * PressureDifference = Power;
    Area * Length = Volume;
    Velocity * Duration = Length;
    Conductance * TemperatureDifference = Power;
}

impl VolumeFlow {
    /// Heat carried by this flow of a fluid over a temperature difference.
    pub fn heat(self, rho: Density, cp: SpecificHeat, difference: TemperatureDifference) -> Power {
        Power(self.0 * rho.0 * cp.0 * difference.0)
    }
}
