//! Any set of corrections, merged into one visit, keeps the rules of safe work.

use proptest::prelude::*;
use returnline_core::fluids::FluidKind;
use returnline_core::plan::rules::violations;
use returnline_core::plan::{FlowCentreKind, Library, Situation, Treatment, assemble, load};
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
        centre in 0..4usize,
        fluid in 0..6usize,
    ) {
        let treatments: Vec<Treatment> = picks
            .iter()
            .filter_map(|pick| LIBRARY.procedures().nth(*pick))
            .map(|procedure| Treatment {
                cause: format!("cause-of-{}", procedure.id),
                procedure: procedure.id.clone(),
            })
            .collect();
        let situation = Situation {
            flow_centre: FlowCentreKind::ALL.get(centre).copied(),
            is_pressurised: false,
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
