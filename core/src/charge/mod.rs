//! Antifreeze dose, dilution, and reading its concentration.
