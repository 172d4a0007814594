//! Static pressure of a closed loop over time and season.
