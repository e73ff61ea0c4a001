//! The units, one table a quantity.

use std::ops::{Add, Div, Mul, Neg, Sub};

use super::Quantity;

/// A unit a quantity can be written in: `base = number × factor + offset`.
#[derive(Debug, PartialEq)]
pub struct Unit {
    /// What it measures.
    pub dimension: Dimension,
    /// How it is shown: `µm`.
    pub symbol: &'static str,
    /// How it is read aloud: `micrometres`.
    pub name: &'static str,
    /// Other ways of writing it that are understood.
    pub also: &'static [&'static str],
    /// Size of the unit in the base unit.
    pub factor: f64,
    /// Zero of the unit in the base unit (temperatures only).
    pub offset: f64,
}

impl Unit {
    /// Whether `text` is a way of writing this unit.
    pub fn is_written(&self, text: &str) -> bool {
        text == self.symbol || self.also.contains(&text) || text.eq_ignore_ascii_case(self.name)
    }

    /// A number in this unit as one in another; `None` where no factor leads from one to the other.
    pub fn convert(&self, number: f64, to: &Self) -> Option<f64> {
        let by_factor = self.dimension == to.dimension && self.dimension != Dimension::Hardness;
        by_factor.then(|| (number * self.factor + self.offset - to.offset) / to.factor)
    }
}

/// Declares the quantities with their units.
///
/// A unit's line is `constructor getter STATIC: factor, offset; "symbol", "name", ["also"];`. Quantities
/// add, subtract, compare and are multiplied by numbers, but for those marked `: absolute`, whose zero
/// was chosen: the sum of two of them means nothing.
macro_rules! quantities {
    ($($(#[$doc:meta])* $name:ident $(: $absolute:ident)? {
        $($from:ident $get:ident $unit:ident: $factor:expr, $offset:expr; $symbol:literal, $spoken:literal, [$($also:literal),*];)+
    })+) => {
        /// What a unit measures.
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        pub enum Dimension {
            $($(#[$doc])* $name,)+
            /// A hardness, on one of its scales; scales convert by table only.
            Hardness,
        }
        $(
            $(#[$doc])*
            #[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
            pub struct $name(f64);

            impl $name {
                $(
                    #[doc = concat!("From a number in ", $spoken, ".")]
                    pub const fn $from(number: f64) -> Self { Self(number * $factor + $offset) }
                    #[doc = concat!("The number in ", $spoken, ".")]
                    pub const fn $get(self) -> f64 { (self.0 - $offset) / $factor }
                )+
                /// The smaller of the two.
                #[must_use]
                pub const fn min(self, other: Self) -> Self { Self(self.0.min(other.0)) }
                /// The larger of the two.
                #[must_use]
                pub const fn max(self, other: Self) -> Self { Self(self.0.max(other.0)) }
            }

            sums!($name $($absolute)?);

            impl Quantity for $name {
                const DIMENSION: Dimension = Dimension::$name;
                fn from_base(number: f64) -> Self { Self(number) }
                fn base(self) -> f64 { self.0 }
            }

            $(
                #[doc = $spoken]
                pub static $unit: Unit = Unit {
                    dimension: Dimension::$name, symbol: $symbol, name: $spoken,
                    also: &[$($also),*], factor: $factor, offset: $offset,
                };
            )+
        )+
        /// Every unit of every quantity but hardness, in the order of this file.
        pub static ALL: &[&Unit] = &[$($(&$unit),+),+];
    };
}

/// What a quantity with a true zero can do.
macro_rules! sums {
    ($name:ident absolute) => {};
    ($name:ident) => {
        impl $name {
            /// None of it.
            pub const ZERO: Self = Self(0.0);
            /// Its size without the sign.
            #[must_use]
            pub const fn abs(self) -> Self {
                Self(self.0.abs())
            }
            /// Whether it is more than another, by more than the last digits in which one number written in two
            /// units (2 mil, 50.8 µm) may differ.
            #[must_use]
            pub const fn exceeds(self, other: Self) -> bool {
                self.0 - other.0 > 1e-12 * self.0.abs()
            }
        }
        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }
        impl Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }
        impl Neg for $name {
            type Output = Self;
            fn neg(self) -> Self {
                Self(-self.0)
            }
        }
        impl Mul<f64> for $name {
            type Output = Self;
            fn mul(self, number: f64) -> Self {
                Self(self.0 * number)
            }
        }
        impl Mul<$name> for f64 {
            type Output = $name;
            fn mul(self, quantity: $name) -> $name {
                $name(self * quantity.0)
            }
        }
        impl Div<f64> for $name {
            type Output = Self;
            fn div(self, number: f64) -> Self {
                Self(self.0 / number)
            }
        }
        /// How many times the other one it is.
        impl Div for $name {
            type Output = f64;
            fn div(self, other: Self) -> f64 {
                self.0 / other.0
            }
        }
        impl std::iter::Sum for $name {
            fn sum<I: Iterator<Item = Self>>(all: I) -> Self {
                all.fold(Self::ZERO, Self::add)
            }
        }
    };
}

quantities! {
    /// A length, held in millimetres.
    Length {
        from_um um UM: 1e-3, 0.0; "µm", "micrometres", ["um", "μm", "micron", "microns", "micrometre"];
        from_mm mm MM: 1.0, 0.0; "mm", "millimetres", ["millimetre"];
        from_m m M: 1e3, 0.0; "m", "metres", ["metre"];
        from_mil mil MIL: 0.0254, 0.0; "mil", "thousandths of an inch", ["mils", "thou"];
        from_inch inch INCH: 25.4, 0.0; "in", "inches", ["inch", "\"", "″"];
        from_ft ft FOOT: 304.8, 0.0; "ft", "feet", ["foot", "'", "′"];
    }
    /// A coat's mass on an area, held in grams on a square metre.
    ArealMass {
        from_g_m2 g_m2 G_M2: 1.0, 0.0; "g/m²", "grams per square metre", ["g/m2", "gsm", "g/m^2"];
        from_oz_ft2 oz_ft2 OZ_FT2: 28.349523125 / 0.09290304, 0.0; "oz/ft²", "ounces per square foot", ["oz/ft2", "oz/ft^2", "oz/sq ft", "osf"];
    }
    /// A density, held in grams on a square metre for each micrometre, which is g/cm³.
    Density {
        from_g_m2_um g_m2_um G_M2_UM: 1.0, 0.0; "g/m² per µm", "grams per square metre and micrometre", ["g/m2/um", "g/m²/µm", "g/cm³", "g/cm3"];
        from_g_cm3 g_cm3 G_CM3: 1.0, 0.0; "g/cm³", "grams per cubic centimetre", ["g/cm3", "kg/L", "kg/l"];
        from_oz_ft2_mil oz_ft2_mil OZ_FT2_MIL: 28.349523125 / 0.09290304 / 25.4, 0.0; "oz/ft² per mil", "ounces per square foot and mil", ["oz/ft2/mil", "oz/ft²/mil"];
    }
    /// An area, held in square millimetres.
    Area {
        from_mm2 mm2 MM2: 1.0, 0.0; "mm²", "square millimetres", ["mm2"];
        from_cm2 cm2 CM2: 100.0, 0.0; "cm²", "square centimetres", ["cm2"];
        from_m2 m2 M2: 1e6, 0.0; "m²", "square metres", ["m2"];
        from_in2 in2 IN2: 645.16, 0.0; "in²", "square inches", ["in2", "sq in"];
        from_ft2 ft2 FT2: 92903.04, 0.0; "ft²", "square feet", ["ft2", "sq ft"];
    }
    /// A volume, held in cubic millimetres.
    Volume {
        from_mm3 mm3 MM3: 1.0, 0.0; "mm³", "cubic millimetres", ["mm3"];
        from_cm3 cm3 CM3: 1e3, 0.0; "cm³", "cubic centimetres", ["cm3", "ml", "mL"];
        from_litre litre LITRE: 1e6, 0.0; "L", "litres", ["l", "dm³", "dm3", "litre", "liter", "liters"];
        from_m3 m3 M3: 1e9, 0.0; "m³", "cubic metres", ["m3"];
        from_in3 in3 IN3: 16387.064, 0.0; "in³", "cubic inches", ["in3", "cu in"];
        from_ft3 ft3 FT3: 28316846.592, 0.0; "ft³", "cubic feet", ["ft3", "cu ft"];
    }
    /// A mass, held in grams.
    Mass {
        from_g g G: 1.0, 0.0; "g", "grams", ["gram"];
        from_kg kg KG: 1e3, 0.0; "kg", "kilograms", ["kilo", "kilos", "kilogram"];
        from_tonne tonne TONNE: 1e6, 0.0; "t", "tonnes", ["tonne"];
        from_oz oz OZ: 28.349523125, 0.0; "oz", "ounces", ["ounce"];
        from_lb lb LB: 453.59237, 0.0; "lb", "pounds", ["lbs", "pound"];
    }
    /// A temperature, held in degrees Celsius.
    Temperature: absolute {
        from_celsius celsius CELSIUS: 1.0, 0.0; "°C", "degrees Celsius", ["C", "degC", "celsius", "ºC"];
        from_fahrenheit fahrenheit FAHRENHEIT: 5.0 / 9.0, -160.0 / 9.0; "°F", "degrees Fahrenheit", ["F", "degF", "fahrenheit", "ºF"];
        from_kelvin kelvin KELVIN: 1.0, -273.15; "K", "kelvin", [];
    }
    /// A difference of two temperatures, held in kelvin.
    TemperatureDifference {
        from_kelvin kelvin DELTA_CELSIUS: 1.0, 0.0; "°C", "degrees Celsius apart", ["K", "C", "degC"];
        from_fahrenheit fahrenheit DELTA_FAHRENHEIT: 5.0 / 9.0, 0.0; "°F", "degrees Fahrenheit apart", ["F", "degF"];
    }
    /// A stress, held in megapascals.
    Stress {
        from_mpa mpa MPA: 1.0, 0.0; "MPa", "megapascals", ["N/mm²", "N/mm2", "mpa"];
        from_ksi ksi KSI: 6.894757293168361, 0.0; "ksi", "thousand pounds per square inch", ["KSI"];
        from_psi psi PSI: 6.894757293168361e-3, 0.0; "psi", "pounds per square inch", ["PSI"];
    }
    /// A force, held in newtons.
    Force {
        from_newton newton NEWTON: 1.0, 0.0; "N", "newtons", ["newton"];
        from_kn kn KILONEWTON: 1e3, 0.0; "kN", "kilonewtons", ["KN"];
        from_lbf lbf LBF: 4.4482216152605, 0.0; "lbf", "pounds-force", ["pound-force"];
    }
    /// A time, held in seconds. A year is 365.25 days.
    Time {
        from_second second SECOND: 1.0, 0.0; "s", "seconds", ["sec", "second"];
        from_minute minute MINUTE: 60.0, 0.0; "min", "minutes", ["minute", "mins"];
        from_hour hour HOUR: 3600.0, 0.0; "h", "hours", ["hr", "hrs", "hour"];
        from_year year YEAR: 31_557_600.0, 0.0; "years", "years in service", ["year", "yr", "yrs", "a", "y"];
    }
    /// A corrosion rate, held in micrometres a year.
    Rate {
        from_um_year um_year UM_YEAR: 1.0, 0.0; "µm/year", "micrometres a year", ["um/year", "um/yr", "µm/yr", "µm/a", "um/a"];
        from_mil_year mil_year MIL_YEAR: 25.4, 0.0; "mil/year", "mils a year", ["mpy", "mil/yr"];
    }
    /// A number without a dimension; 1 or per cent.
    PlainNumber {
        from_one one ONE: 1.0, 0.0; "", "plain number", [];
        from_percent percent PERCENT: 0.01, 0.0; "%", "per cent", ["percent"];
    }
}

/// Rockwell C.
pub static HRC: Unit = hardness_unit("HRC", "Rockwell C", &["hrc", "Rc", "RC"]);
/// Rockwell B.
pub static HRB: Unit = hardness_unit("HRB", "Rockwell B", &["hrb", "Rb", "RB"]);
/// Vickers.
pub static HV: Unit = hardness_unit("HV", "Vickers", &["hv", "HV10", "HV30"]);
/// Brinell.
pub static HB: Unit = hardness_unit("HB", "Brinell", &["hb", "HBW", "BHN"]);

const fn hardness_unit(symbol: &'static str, name: &'static str, also: &'static [&'static str]) -> Unit {
    Unit { dimension: Dimension::Hardness, symbol, name, also, factor: 1.0, offset: 0.0 }
}

/// Deposition of a pollutant.
pub static MG_M2_DAY: Unit = Unit {
    dimension: Dimension::PlainNumber,
    symbol: "mg/(m²·d)",
    name: "milligrams per square metre and day",
    also: &["mg/m2/d", "mg/(m2 d)", "mg/m²/d"],
    factor: 1.0,
    offset: 0.0,
};

/// Marks the pieces of a count.
pub static PIECES: Unit = Unit {
    dimension: Dimension::PlainNumber,
    symbol: "pcs",
    name: "pieces",
    also: &["pc", "pieces", "off"],
    factor: 1.0,
    offset: 0.0,
};

/// Turns of a barrel.
pub static TURNS_MINUTE: Unit = Unit {
    dimension: Dimension::PlainNumber,
    symbol: "1/min",
    name: "turns a minute",
    also: &["rpm"],
    factor: 1.0,
    offset: 0.0,
};

/// A tempering parameter, `T (C + log10 t)` with kelvin and hours.
pub static TEMPERING_PARAMETER: Unit = Unit {
    dimension: Dimension::PlainNumber,
    symbol: "K·log h",
    name: "tempering parameter",
    also: &[],
    factor: 1.0,
    offset: 0.0,
};
