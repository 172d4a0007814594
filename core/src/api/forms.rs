//! Facts and questions as forms.

use super::Engine;
use super::types::{ChoiceView, FieldGroupView, FieldKindView, FieldView, UnitView};
use crate::records::field::{self, Field, FieldGroup, FieldKind, FieldValue, TABLE};
use crate::records::visit_file::VisitFile;
use crate::text::Catalog;
use crate::units::{Dimension, Unit, UnitSystem};

impl Engine {
    pub(super) fn field_groups(&self, file: &VisitFile) -> Vec<FieldGroupView> {
        let catalog = self.wording.catalog();
        FieldGroup::ALL
            .into_iter()
            .map(|group| FieldGroupView {
                id: group.id().to_owned(),
                label: catalog.text(&format!("group-{}", group.id())),
                fields: TABLE
                    .iter()
                    .filter(|field| field.group == group)
                    .map(|field| self.field_view(field, file))
                    .collect(),
            })
            .collect()
    }

    fn field_view(&self, field: &Field, file: &VisitFile) -> FieldView {
        let value = field.read(file);
        FieldView {
            id: field.id.to_owned(),
            label: self
                .wording
                .catalog()
                .text(&format!("field-{}", field.id.replace('.', "-"))),
            quick: field.quick,
            kind: self.kind_view(field),
            shown: value
                .as_ref()
                .map(|value| value_text(value, self.wording.catalog())),
            unit: match &value {
                Some(FieldValue::Measure(measure)) => Some(measure.unit.symbol().to_owned()),
                _ => None,
            },
            value: value.map(editable),
        }
    }

    fn kind_view(&self, field: &Field) -> FieldKindView {
        match field.kind {
            FieldKind::Text => FieldKindView::Text,
            FieldKind::Flag => FieldKindView::Flag,
            FieldKind::Date => FieldKindView::Date,
            FieldKind::Count => FieldKindView::Count,
            FieldKind::Measure(dimension) => FieldKindView::Measure {
                units: units_offered(usual_unit(field.id, dimension, self.wording.units)),
                signed: matches!(
                    dimension,
                    Dimension::Temperature | Dimension::TemperatureDifference
                ),
            },
            FieldKind::Choice(names) => FieldKindView::Choice {
                choices: names
                    .iter()
                    .map(|name| ChoiceView {
                        value: (*name).to_owned(),
                        label: self.wording.catalog().text(&field::choice_key(name)),
                    })
                    .collect(),
            },
        }
    }
}

/// The units of what this one measures, this one first.
pub(super) fn units_offered(usual: Unit) -> Vec<UnitView> {
    let others = Unit::of(usual.dimension()).filter(|unit| *unit != usual);
    std::iter::once(usual)
        .chain(others)
        .map(|unit| UnitView {
            symbol: unit.symbol().to_owned(),
            label: unit.display().to_owned(),
        })
        .collect()
}

/// The unit that stands on the nameplate or is said in the trade, where that is
/// not the one that such quantities are otherwise shown in. Common practice, no source.
fn usual_unit(field: &str, dimension: Dimension, system: UnitSystem) -> Unit {
    match (field, system) {
        ("unit.cooling_capacity", UnitSystem::Us) => Unit::Ton,
        ("commissioning.cart_power", UnitSystem::Us) => Unit::Horsepower,
        ("circulator.rated_power", _) => Unit::Watt,
        ("means.reservoir_diameter", UnitSystem::Us) => Unit::Inch,
        ("means.reservoir_diameter", UnitSystem::Si) => Unit::Centimetre,
        _ => system.unit(dimension),
    }
}

/// The value of a field as it is shown.
pub(super) fn value_text(value: &FieldValue, catalog: &Catalog) -> String {
    match value {
        FieldValue::Text(text) => text.clone(),
        FieldValue::Flag(flag) => catalog.text(if *flag { "answer-yes" } else { "answer-no" }),
        FieldValue::Date(date) => date.to_string(),
        FieldValue::Count(count) => count.to_string(),
        FieldValue::Measure(measure) => measure.text(),
        FieldValue::Choice(name) => catalog.text(&field::choice_key(name)),
    }
}

/// A value as it is edited: numbers without unit.
fn editable(value: FieldValue) -> String {
    match value {
        FieldValue::Text(text) | FieldValue::Choice(text) => text,
        FieldValue::Flag(true) => "yes".to_owned(),
        FieldValue::Flag(false) => "no".to_owned(),
        FieldValue::Date(date) => date.to_string(),
        FieldValue::Count(count) => count.to_string(),
        FieldValue::Measure(measure) => measure.value.to_string(),
    }
}
