-- What is typed into a visit and not kept yet, so that a dead battery takes
-- nothing along. It stays on this device. Shipped; never edited.

CREATE TABLE draft (
    visit_id TEXT NOT NULL REFERENCES visit (id) ON DELETE CASCADE,
    -- Where it is typed: a name of the interface.
    place TEXT NOT NULL,
    text TEXT NOT NULL,
    PRIMARY KEY (visit_id, place)
) STRICT, WITHOUT ROWID;
