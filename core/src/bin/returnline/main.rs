//! The headless program `returnline`.
fn main() {}
