//! The work plan of a call, in the person's words.

use super::Call;
use super::types::PlanView;

impl Call {
    /// What to do; none when there is nothing to treat.
    pub(super) fn plan(&self) -> Option<PlanView> {
        None
    }
}
