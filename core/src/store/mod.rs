//! Durable storage of records in SQLite.
