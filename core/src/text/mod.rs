//! Message catalogs: every text that a person reads.
