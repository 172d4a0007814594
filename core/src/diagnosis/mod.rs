//! The rule graph and its inference: from findings to causes.
