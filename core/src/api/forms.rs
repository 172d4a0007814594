//! Facts and questions as forms.

use super::Engine;
use super::types::{ChoiceView, FieldGroupView, FieldKindView, FieldView, UnitView};
use crate::records::field::{self, Field, FieldGroup, FieldKind, FieldValue, TABLE};
use crate::records::visit_file::VisitFile;
use crate::text::Catalog;
use crate::units::{Dimension, Unit, format};

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
            kind: self.kind_view(field.kind),
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

    fn kind_view(&self, kind: FieldKind) -> FieldKindView {
        match kind {
            FieldKind::Text => FieldKindView::Text,
            FieldKind::Flag => FieldKindView::Flag,
            FieldKind::Date => FieldKindView::Date,
            FieldKind::Count => FieldKindView::Count,
            FieldKind::Measure(dimension) => FieldKindView::Measure {
                units: self.units_offered(dimension),
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

    /// The units of a dimension, the person's own first.
    pub(super) fn units_offered(&self, dimension: Dimension) -> Vec<UnitView> {
        let own = self.wording.units.unit(dimension);
        let others = Unit::of(dimension).filter(|unit| *unit != own);
        std::iter::once(own)
            .chain(others)
            .map(|unit| UnitView {
                symbol: unit.symbol().to_owned(),
                label: unit.display().to_owned(),
            })
            .collect()
    }
}

/// The value of a field as it is shown.
pub(super) fn value_text(value: &FieldValue, catalog: &Catalog) -> String {
    match value {
        FieldValue::Text(text) => text.clone(),
        FieldValue::Flag(flag) => catalog.text(if *flag { "answer-yes" } else { "answer-no" }),
        FieldValue::Date(date) => date.to_string(),
        FieldValue::Count(count) => count.to_string(),
        FieldValue::Measure(measure) => format::plus_minus(measure.value, 0.0, measure.unit),
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
