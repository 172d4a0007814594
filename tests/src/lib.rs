//! Shared pieces of the outside checks.
