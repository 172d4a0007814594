-- What is typed into the settings and not kept yet, as `draft` has it for a visit.
-- Shipped; never edited.

CREATE TABLE setting_draft (
    -- Where it is typed: a name of the interface.
    place TEXT PRIMARY KEY,
    text TEXT NOT NULL
) STRICT, WITHOUT ROWID;
