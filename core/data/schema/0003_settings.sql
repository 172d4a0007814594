-- What the company and the technician chose once. Shipped; never edited.

CREATE TABLE setting (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    document TEXT NOT NULL CHECK (json_valid(document)),
    logo BLOB,
    changed_at TEXT NOT NULL
) STRICT;
