//! Domain records: site, system, commissioning, visit.
