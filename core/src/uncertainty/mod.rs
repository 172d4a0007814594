//! Values with a standard uncertainty, and how it propagates.
