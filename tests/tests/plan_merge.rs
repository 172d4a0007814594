//! Any set of corrections, merged into one visit, keeps the rules of safe work.

use proptest::prelude::*;
use returnline_core::fluids::FluidKind;
use returnline_core::plan::rules::violations;
use returnline_core::plan::{FlowCentreKind, KnownCentre, Library, Situation, assemble, load};
use returnline_tests::plans::treatments;
use std::sync::LazyLock;

static LIBRARY: LazyLock<Library> =
    LazyLock::new(|| load().unwrap_or_else(|problems| panic!("{problems:?}")));

fn some_procedures() -> impl Strategy<Value = Vec<usize>> {
    prop::collection::vec(0..LIBRARY.procedures().count(), 1..7)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// In any order and in any situation.
    #[test]
    fn any_set_of_procedures_keeps_the_rules(
        picks in some_procedures(),
        centre in 0..5usize,
        fluid in 0..6usize,
    ) {
        let treatments = treatments(&LIBRARY, &picks);
        let situation = Situation {
            flow_centre: match FlowCentreKind::ALL.get(centre) {
                Some(kind) => KnownCentre::Kind(*kind),
                None if centre == FlowCentreKind::ALL.len() => KnownCentre::Closed,
                None => KnownCentre::Unknown,
            },
            fluid: FluidKind::ALL.get(fluid).copied(),
        };
        let plan = assemble(&LIBRARY, &treatments, &situation);
        prop_assert!(plan.is_ok(), "{:?}", plan);
        let plan = plan?;
        prop_assert_eq!(violations(&LIBRARY, &plan), vec![]);
        for (index, step) in plan.steps.iter().enumerate() {
            prop_assert_eq!(step.number, index + 1);
            for gate in &step.gate {
                prop_assert!(gate.limit.value.si.is_finite());
                prop_assert!(gate.return_to < step.number);
            }
        }
    }
}
