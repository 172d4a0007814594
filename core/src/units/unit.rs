//! The units that the trade writes, with their factors to SI.
//!
//! Factors: NIST Special Publication 811 (2008), appendix B; exact where the
//! definition is exact. "ton" is the ton of refrigeration, 12 000 Btu(IT)/h.

use super::quantity::ZERO_CELSIUS_K;
use std::fmt;

/// What a unit measures.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
#[allow(missing_docs)] // the names are the meaning
pub enum Dimension {
    Temperature,
    TemperatureDifference,
    Pressure,
    VolumeFlow,
    Volume,
    Length,
    Area,
    Velocity,
    Power,
    Duration,
    Density,
    Viscosity,
    SpecificHeat,
    Conductivity,
    Conductance,
    ThermalResistance,
    PressureSlope,
    VolumeGive,
    Expansion,
    Compressibility,
    Fraction,
    Current,
    ElectricalConductivity,
    MassConcentration,
    Number,
}

struct Row {
    unit: Unit,
    symbol: &'static str,
    display: &'static str,
    aliases: &'static [&'static str],
    dimension: Dimension,
    /// SI = value · factor + offset.
    factor: f64,
    offset: f64,
    /// Decimals that a field reading in this unit deserves.
    decimals: usize,
}

macro_rules! units {
    ($($unit:ident $symbol:literal $display:literal [$($alias:literal)*] $dimension:ident $factor:expr, $offset:expr, $decimals:literal;)*) => {
        /// A unit of measure.
        #[derive(Copy, Clone, PartialEq, Eq, Debug, Hash)]
        #[allow(missing_docs)] // the names are the meaning; the table below says the rest
        pub enum Unit { $($unit),* }

        const TABLE: &[Row] = &[$(Row {
            unit: Unit::$unit, symbol: $symbol, display: $display, aliases: &[$($alias),*],
            dimension: Dimension::$dimension, factor: $factor, offset: $offset, decimals: $decimals,
        }),*];
    };
}

const PSI: f64 = 6_894.757_293_168;
const GALLON: f64 = 3.785_411_784e-3;
const BTU_PER_HOUR: f64 = 0.293_071_070_172_222_2;

units! {
    Celsius "degC" "°C" ["°c" "c" "deg c" "celsius"] Temperature 1.0, ZERO_CELSIUS_K, 1;
    Fahrenheit "degF" "°F" ["°f" "f" "deg f" "fahrenheit"] Temperature 1.0 / 1.8, ZERO_CELSIUS_K - 32.0 / 1.8, 1;
    Kelvin "K" "K" ["kelvin"] Temperature 1.0, 0.0, 1;
    DifferenceKelvin "K" "K" ["kelvin" "degc" "°c" "c" "deg c"] TemperatureDifference 1.0, 0.0, 1;
    DifferenceFahrenheit "degF" "°F" ["°f" "f" "deg f"] TemperatureDifference 1.0 / 1.8, 0.0, 1;
    Psi "psi" "psi" ["psig" "psia" "lb/in2" "lbf/in2" "pounds"] Pressure PSI, 0.0, 1;
    Bar "bar" "bar" ["barg" "bara" "bars"] Pressure 1e5, 0.0, 2;
    Kilopascal "kPa" "kPa" ["kpag" "kpaa"] Pressure 1e3, 0.0, 0;
    Pascal "Pa" "Pa" [] Pressure 1.0, 0.0, 0;
    Megapascal "MPa" "MPa" ["mpa"] Pressure 1e6, 0.0, 0;
    Ksi "ksi" "ksi" [] Pressure 1e3 * PSI, 0.0, 1;
    FootOfWater "ftH2O" "ft of water" ["ft of water" "fth2o" "ft h2o" "ftwc" "ft wc" "ft head" "feet of water"] Pressure 2_989.066_92, 0.0, 1;
    MetreOfWater "mH2O" "m of water" ["m of water" "mh2o" "m h2o" "mwc" "mws" "metres of water"] Pressure 9_806.65, 0.0, 2;
    InchOfMercury "inHg" "inHg" ["in hg" "inches of mercury"] Pressure 3_386.389, 0.0, 1;
    GallonPerMinute "gpm" "gpm" ["gal/min" "usgpm" "us gpm"] VolumeFlow GALLON / 60.0, 0.0, 1;
    LitrePerSecond "L/s" "L/s" ["lps"] VolumeFlow 1e-3, 0.0, 2;
    LitrePerMinute "L/min" "L/min" ["lpm"] VolumeFlow 1e-3 / 60.0, 0.0, 1;
    GallonPerDay "gal/d" "gal/d" [] VolumeFlow GALLON / 86_400.0, 0.0, 2;
    LitrePerDay "L/d" "L/d" [] VolumeFlow 1e-3 / 86_400.0, 0.0, 1;
    CubicMetrePerHour "m3/h" "m³/h" ["m³/h" "cmh"] VolumeFlow 1.0 / 3_600.0, 0.0, 2;
    CubicMetrePerSecond "m3/s" "m³/s" ["m³/s"] VolumeFlow 1.0, 0.0, 6;
    Gallon "gal" "gal" ["gallon" "gallons" "us gal" "gals"] Volume GALLON, 0.0, 1;
    Litre "L" "L" ["l" "liter" "litre" "liters" "litres"] Volume 1e-3, 0.0, 1;
    Millilitre "mL" "mL" ["ml" "cc"] Volume 1e-6, 0.0, 0;
    CubicMetre "m3" "m³" ["m³"] Volume 1.0, 0.0, 3;
    Foot "ft" "ft" ["foot" "feet" "'"] Length 0.304_8, 0.0, 1;
    Inch "in" "in" ["inch" "inches" "\""] Length 0.025_4, 0.0, 2;
    Metre "m" "m" ["meter" "metre" "meters" "metres"] Length 1.0, 0.0, 2;
    Millimetre "mm" "mm" [] Length 1e-3, 0.0, 0;
    Micrometre "um" "µm" ["µm" "μm" "micron" "microns"] Length 1e-6, 0.0, 0;
    Centimetre "cm" "cm" [] Length 1e-2, 0.0, 1;
    SquareMetre "m2" "m²" ["m²"] Area 1.0, 0.0, 3;
    SquareFoot "ft2" "ft²" ["ft²" "sq ft"] Area 0.092_903_04, 0.0, 1;
    FootPerSecond "ft/s" "ft/s" ["fps"] Velocity 0.304_8, 0.0, 2;
    MetrePerSecond "m/s" "m/s" [] Velocity 1.0, 0.0, 2;
    Watt "W" "W" ["watt" "watts"] Power 1.0, 0.0, 0;
    Kilowatt "kW" "kW" [] Power 1e3, 0.0, 2;
    BtuPerHour "Btu/h" "Btu/h" ["btu/hr" "btuh"] Power BTU_PER_HOUR, 0.0, 0;
    Ton "ton" "ton" ["tons" "ton of refrigeration" "tr"] Power 12_000.0 * BTU_PER_HOUR, 0.0, 1;
    Horsepower "hp" "hp" [] Power 745.699_871_582_270_2, 0.0, 2;
    Second "s" "s" ["sec" "second" "seconds"] Duration 1.0, 0.0, 0;
    Minute "min" "min" ["minute" "minutes"] Duration 60.0, 0.0, 0;
    Hour "h" "h" ["hr" "hrs" "hour" "hours"] Duration 3_600.0, 0.0, 1;
    Day "d" "d" ["day" "days"] Duration 86_400.0, 0.0, 0;
    KilogramPerCubicMetre "kg/m3" "kg/m³" ["kg/m³"] Density 1.0, 0.0, 1;
    PascalSecond "Pa.s" "Pa·s" ["pa·s"] Viscosity 1.0, 0.0, 5;
    MillipascalSecond "mPa.s" "mPa·s" ["mpa·s" "cp" "centipoise"] Viscosity 1e-3, 0.0, 2;
    JoulePerKilogramKelvin "J/(kg.K)" "J/(kg·K)" ["j/(kg·k)"] SpecificHeat 1.0, 0.0, 0;
    WattPerMetreKelvin "W/(m.K)" "W/(m·K)" ["w/(m·k)"] Conductivity 1.0, 0.0, 3;
    WattPerKelvin "W/K" "W/K" [] Conductance 1.0, 0.0, 0;
    KilowattPerKelvin "kW/K" "kW/K" [] Conductance 1e3, 0.0, 2;
    BtuPerHourFahrenheit "Btu/(h.degF)" "Btu/(h·°F)" ["btu/(h·°f)"] Conductance BTU_PER_HOUR * 1.8, 0.0, 0;
    KelvinPerWatt "K/W" "K/W" [] ThermalResistance 1.0, 0.0, 6;
    KelvinPerKilowatt "K/kW" "K/kW" [] ThermalResistance 1e-3, 0.0, 3;
    FahrenheitHourPerBtu "degF.h/Btu" "°F·h/Btu" ["°f·h/btu"] ThermalResistance 1.0 / (1.8 * BTU_PER_HOUR), 0.0, 6;
    PascalPerKelvin "Pa/K" "Pa/K" [] PressureSlope 1.0, 0.0, 0;
    BarPerKelvin "bar/K" "bar/K" [] PressureSlope 1e5, 0.0, 3;
    PsiPerFahrenheit "psi/degF" "psi/°F" ["psi/°f"] PressureSlope 1.8 * PSI, 0.0, 2;
    CubicMetrePerPascal "m3/Pa" "m³/Pa" ["m³/pa"] VolumeGive 1.0, 0.0, 12;
    LitrePerBar "L/bar" "L/bar" [] VolumeGive 1e-8, 0.0, 3;
    GallonPerPsi "gal/psi" "gal/psi" [] VolumeGive GALLON / PSI, 0.0, 4;
    PerKelvin "1/K" "1/K" ["1/°c" "1/degc"] Expansion 1.0, 0.0, 6;
    PerFahrenheit "1/degF" "1/°F" ["1/°f"] Expansion 1.8, 0.0, 6;
    PerPascal "1/Pa" "1/Pa" [] Compressibility 1.0, 0.0, 12;
    PerBar "1/bar" "1/bar" [] Compressibility 1e-5, 0.0, 7;
    PerPsi "1/psi" "1/psi" [] Compressibility 1.0 / PSI, 0.0, 8;
    Percent "%" "%" ["percent" "pct"] Fraction 0.01, 0.0, 1;
    One "1" "" [] Fraction 1.0, 0.0, 3;
    Ampere "A" "A" ["amp" "amps" "ampere"] Current 1.0, 0.0, 2;
    MicrosiemensPerCentimetre "uS/cm" "µS/cm" ["µs/cm" "μs/cm"] ElectricalConductivity 1e-4, 0.0, 0;
    SiemensPerMetre "S/m" "S/m" [] ElectricalConductivity 1.0, 0.0, 4;
    MilligramPerLitre "mg/L" "mg/L" ["ppm"] MassConcentration 1e-3, 0.0, 1;
    Plain "1" "" ["ph" "sg"] Number 1.0, 0.0, 3;
}

impl Unit {
    fn row(self) -> &'static Row {
        // The enum and the table come from one macro, in one order.
        &TABLE[self as usize]
    }

    /// The symbol used in files: ASCII, stable.
    pub fn symbol(self) -> &'static str {
        self.row().symbol
    }
    /// What a person reads.
    pub fn display(self) -> &'static str {
        self.row().display
    }
    /// What it measures.
    pub fn dimension(self) -> Dimension {
        self.row().dimension
    }
    /// Decimals that a field reading in this unit deserves.
    pub fn decimals(self) -> usize {
        self.row().decimals
    }
    /// To the coherent SI unit.
    pub fn to_si(self, value: f64) -> f64 {
        value * self.row().factor + self.row().offset
    }
    /// From the coherent SI unit.
    pub fn from_si(self, si: f64) -> f64 {
        (si - self.row().offset) / self.row().factor
    }
    /// Every unit; some share a symbol (°F of a temperature and of a difference).
    pub fn all() -> impl Iterator<Item = Self> {
        TABLE.iter().map(|row| row.unit)
    }
    /// All units of a dimension, in the order they are offered.
    pub fn of(dimension: Dimension) -> impl Iterator<Item = Self> {
        TABLE
            .iter()
            .filter(move |row| row.dimension == dimension && row.unit.is_written())
            .map(|row| row.unit)
    }
    /// Whether a person writes in it: a leak's rate a day is only ever shown.
    fn is_written(self) -> bool {
        !matches!(self, Self::GallonPerDay | Self::LitrePerDay)
    }
    /// The unit with this symbol, whatever it measures.
    pub fn of_symbol(symbol: &str) -> Option<Self> {
        let mut rows = TABLE.iter();
        rows.find(|row| row.symbol == symbol).map(|row| row.unit)
    }
    /// The unit of this dimension that someone wrote, by symbol or by a usual spelling;
    /// symbols match exactly first, then spellings without regard to case.
    pub fn named(dimension: Dimension, text: &str) -> Option<Self> {
        let text = text.trim();
        let lower = text.to_lowercase();
        let rows = || TABLE.iter().filter(|row| row.dimension == dimension);
        rows()
            .find(|row| row.symbol == text || row.display == text)
            .or_else(|| {
                rows().find(|row| {
                    row.symbol.to_lowercase() == lower || row.aliases.contains(&lower.as_str())
                })
            })
            .map(|row| row.unit)
    }
}

impl fmt::Display for Unit {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.display())
    }
}
