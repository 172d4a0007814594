//! Where a field stands in the records.

use super::FieldValue;
use crate::records::visit_file::VisitFile;
use crate::records::{
    CircuitGroup, FlowCentre, GroundLoop, LoopFluid, LoopFluidKind, NominalInch, Pipe,
    PlainMeasure, Sdr, name_of, of_name,
};
use crate::units::{Length, Measure, Quantity, Unit};
use chrono::NaiveDate;
use serde::Serialize;
use serde::de::DeserializeOwned;

type Get = fn(&mut VisitFile) -> Option<FieldValue>;
/// False when the value does not fit the place.
type Set = fn(&mut VisitFile, Option<FieldValue>) -> bool;

/// How to read and change one field.
pub(super) struct Place {
    pub(super) get: Get,
    pub(super) set: Set,
}

impl Place {
    pub(super) fn read(&self, file: &mut VisitFile) -> Option<FieldValue> {
        (self.get)(file)
    }
    pub(super) fn write(&self, file: &mut VisitFile, value: Option<FieldValue>) -> bool {
        (self.set)(file, value)
    }
}

/// A value that a field can hold.
pub(super) trait Held: Sized {
    fn show(&self) -> Option<FieldValue>;
    fn take(value: FieldValue) -> Option<Self>;
}

impl Held for String {
    fn show(&self) -> Option<FieldValue> {
        (!self.is_empty()).then(|| FieldValue::Text(self.clone()))
    }
    fn take(value: FieldValue) -> Option<Self> {
        match value {
            FieldValue::Text(text) => Some(text),
            _ => None,
        }
    }
}
impl Held for bool {
    fn show(&self) -> Option<FieldValue> {
        Some(FieldValue::Flag(*self))
    }
    fn take(value: FieldValue) -> Option<Self> {
        match value {
            FieldValue::Flag(flag) => Some(flag),
            _ => None,
        }
    }
}
impl Held for u32 {
    fn show(&self) -> Option<FieldValue> {
        Some(FieldValue::Count(*self))
    }
    fn take(value: FieldValue) -> Option<Self> {
        match value {
            FieldValue::Count(count) => Some(count),
            _ => None,
        }
    }
}
impl Held for NaiveDate {
    fn show(&self) -> Option<FieldValue> {
        Some(FieldValue::Date(*self))
    }
    fn take(value: FieldValue) -> Option<Self> {
        match value {
            FieldValue::Date(date) => Some(date),
            _ => None,
        }
    }
}
impl<Q: Quantity> Held for Measure<Q> {
    fn show(&self) -> Option<FieldValue> {
        Some(FieldValue::Measure(PlainMeasure {
            value: self.value(),
            unit: self.unit(),
        }))
    }
    fn take(value: FieldValue) -> Option<Self> {
        match value {
            FieldValue::Measure(measure) if measure.unit.dimension() == Q::DIMENSION => {
                Some(Self::new(measure.value, measure.unit))
            }
            _ => None,
        }
    }
}

/// Reads a place that holds the value itself.
pub(super) fn show<T: Held>(place: &Option<T>) -> Option<FieldValue> {
    place.as_ref().and_then(Held::show)
}

/// Changes a place that holds the value itself.
pub(super) fn take<T: Held>(place: &mut Option<T>, value: Option<FieldValue>) -> bool {
    match value {
        None => {
            *place = None;
            true
        }
        Some(value) => match T::take(value) {
            Some(held) => {
                *place = Some(held);
                true
            }
            None => false,
        },
    }
}

/// Reads a place that holds an enumeration, by its written name.
pub(super) fn show_choice<T: Serialize>(place: &Option<T>) -> Option<FieldValue> {
    name_of(place.as_ref()?).map(FieldValue::Choice)
}

/// Changes a place that holds an enumeration, by its written name.
pub(super) fn take_choice<T: DeserializeOwned>(
    place: &mut Option<T>,
    value: Option<FieldValue>,
) -> bool {
    match value {
        None => {
            *place = None;
            true
        }
        Some(FieldValue::Choice(name)) => match of_name(&name) {
            Ok(held) => {
                *place = Some(held);
                true
            }
            Err(_) => false,
        },
        Some(_) => false,
    }
}

/// A place given by one expression that ends in a mutable option.
macro_rules! place {
    (|$file:ident| $place:expr) => {
        $crate::records::field::place::Place {
            get: |$file| $crate::records::field::place::show(&$place),
            set: |$file, value| $crate::records::field::place::take(&mut $place, value),
        }
    };
    (choice |$file:ident| $place:expr) => {
        $crate::records::field::place::Place {
            get: |$file| $crate::records::field::place::show_choice(&$place),
            set: |$file, value| $crate::records::field::place::take_choice(&mut $place, value),
        }
    };
}
pub(super) use place;

/// The name of a site is text that is always there.
pub(super) const SITE_NAME: Place = Place {
    get: |file| file.site.name.show(),
    set: |file, value| {
        let mut name = None;
        let fits = take(&mut name, value);
        if fits {
            file.site.name = name.unwrap_or_default();
        }
        fits
    },
};

/// Kinds of flow centre, by the written name of the record.
pub(super) const FLOW_CENTRE: Place = Place {
    get: |file| {
        let name = match file.system.flow_centre.as_ref()? {
            FlowCentre::Sealed {} => "sealed",
            FlowCentre::SealedWithTank { .. } => "sealed_with_tank",
            FlowCentre::NonPressurised { .. } => "non_pressurised",
        };
        Some(FieldValue::Choice(name.to_owned()))
    },
    set: |file, value| {
        let kind = match value {
            None => None,
            Some(FieldValue::Choice(name)) => match name.as_str() {
                "sealed" => Some(FlowCentre::Sealed {}),
                "sealed_with_tank" => Some(FlowCentre::SealedWithTank {
                    tank_volume: None,
                    pre_charge: None,
                }),
                "non_pressurised" => Some(FlowCentre::NonPressurised {
                    reservoir_diameter: None,
                }),
                _ => return false,
            },
            Some(_) => return false,
        };
        // Keeping the same kind keeps what is known of it.
        let same =
            |a: &FlowCentre, b: &FlowCentre| std::mem::discriminant(a) == std::mem::discriminant(b);
        let unchanged = match (&kind, &file.system.flow_centre) {
            (Some(new), Some(old)) => same(new, old),
            _ => false,
        };
        if !unchanged {
            file.system.flow_centre = kind;
        }
        true
    },
};

/// The kind of fluid; the strength stays with it.
pub(super) const FLUID_KIND: Place = Place {
    get: |file| show_choice(&file.system.fluid.map(|fluid| fluid.kind)),
    set: |file, value| {
        let mut kind: Option<LoopFluidKind> = None;
        let fits = take_choice(&mut kind, value);
        if fits {
            let volume_fraction = file.system.fluid.and_then(|fluid| fluid.volume_fraction);
            file.system.fluid = kind.map(|kind| LoopFluid {
                kind,
                volume_fraction,
            });
        }
        fits
    },
};

/// The strength of the fluid; a strength without a kind has no place.
pub(super) const FLUID_STRENGTH: Place = Place {
    get: |file| show(&file.system.fluid.and_then(|fluid| fluid.volume_fraction)),
    set: |file, value| match file.system.fluid.as_mut() {
        Some(fluid) => take(&mut fluid.volume_fraction, value),
        None => value.is_none(),
    },
};

/// Pipes that loops are made of, as one choice.
pub(super) const PIPES: &[&str] = &[
    "ips_pe:3/4:11",
    "ips_pe:1:11",
    "ips_pe:1-1/4:11",
    "ips_pe:1-1/2:11",
    "ips_pe:2:11",
    "ips_pe:3/4:9",
    "ips_pe:1:9",
    "ips_pe:1-1/4:13.5",
    "metric_pe:25:11",
    "metric_pe:32:11",
    "metric_pe:40:11",
    "metric_pe:50:11",
    "metric_pe:32:17",
    "metric_pe:40:17",
];

/// The pipe of the first group of circuits.
pub(super) const CIRCUIT_PIPE: Place = Place {
    get: |file| {
        let pipe = first_circuit(file)?.pipe.clone();
        let name = match pipe {
            Pipe::IpsPe { size, sdr: ratio } => {
                format!("ips_pe:{}:{}", name_of(&size)?, name_of(&ratio)?)
            }
            Pipe::MetricPe { outside_mm, sdr } => {
                format!("metric_pe:{outside_mm}:{}", name_of(&sdr)?)
            }
            _ => return None,
        };
        Some(FieldValue::Choice(name))
    },
    set: |file, value| match value {
        None => {
            if let Some(ground) = file.system.ground.as_mut() {
                ground.circuits.clear();
            }
            true
        }
        Some(FieldValue::Choice(name)) => match pipe_named(&name) {
            Some(pipe) => {
                circuit_or_new(file).pipe = pipe;
                true
            }
            None => false,
        },
        Some(_) => false,
    },
};

/// How many circuits the first group has.
pub(super) const CIRCUIT_COUNT: Place = Place {
    get: |file| first_circuit(file).map(|circuit| FieldValue::Count(circuit.count)),
    set: |file, value| match value {
        Some(FieldValue::Count(count)) => {
            circuit_or_new(file).count = count;
            true
        }
        None => (CIRCUIT_PIPE.set)(file, None),
        Some(_) => false,
    },
};

/// Length of one circuit of the first group.
pub(super) const CIRCUIT_LENGTH: Place = Place {
    get: |file| first_circuit(file).and_then(|circuit| circuit.length.show()),
    set: |file, value| match value {
        None => (CIRCUIT_PIPE.set)(file, None),
        Some(value) => match Measure::<Length>::take(value) {
            Some(length) => {
                circuit_or_new(file).length = length;
                true
            }
            None => false,
        },
    },
};

fn first_circuit(file: &mut VisitFile) -> Option<&mut CircuitGroup> {
    file.system.ground.as_mut()?.circuits.first_mut()
}

/// The first group of circuits; a new one is the commonest: one circuit of
/// 3/4 in SDR 11 pipe, 600 ft (common practice, no source), shown at once so
/// that it can be put right.
fn circuit_or_new(file: &mut VisitFile) -> &mut CircuitGroup {
    let circuits = &mut file
        .system
        .ground
        .get_or_insert_with(GroundLoop::default)
        .circuits;
    if circuits.is_empty() {
        circuits.push(CircuitGroup {
            count: 1,
            pipe: Pipe::IpsPe {
                size: NominalInch::ThreeQuarter,
                sdr: Sdr::Sdr11,
            },
            length: Measure::new(600.0, Unit::Foot),
        });
    }
    // Not empty: filled just above.
    &mut circuits[0]
}

fn pipe_named(name: &str) -> Option<Pipe> {
    let mut parts = name.split(':');
    let (standard, size, sdr) = (parts.next()?, parts.next()?, parts.next()?);
    let sdr: Sdr = of_name(sdr).ok()?;
    match standard {
        "ips_pe" => Some(Pipe::IpsPe {
            size: of_name(size).ok()?,
            sdr,
        }),
        "metric_pe" => Some(Pipe::MetricPe {
            outside_mm: size.parse().ok()?,
            sdr,
        }),
        _ => None,
    }
}
