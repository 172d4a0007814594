//! The work plan: steps, quantities, cautions and gates for a cause.
