-- Sites, systems, commissioning and visits. Shipped; never edited.
-- Numbers stand as they were written, with their unit.

CREATE TABLE site (
    id TEXT PRIMARY KEY,
    name TEXT NOT NULL,
    address TEXT,
    contact TEXT,
    elevation_value REAL,
    elevation_unit TEXT,
    notes TEXT,
    changed_at TEXT NOT NULL,
    CHECK ((elevation_value IS NULL) = (elevation_unit IS NULL))
) STRICT;

CREATE TABLE system (
    id TEXT PRIMARY KEY,
    site_id TEXT NOT NULL REFERENCES site (id),
    document TEXT NOT NULL CHECK (json_valid(document)),
    changed_at TEXT NOT NULL
) STRICT;
CREATE INDEX system_by_site ON system (site_id);

CREATE TABLE commissioning (
    system_id TEXT PRIMARY KEY REFERENCES system (id),
    document TEXT NOT NULL CHECK (json_valid(document)),
    changed_at TEXT NOT NULL
) STRICT;

CREATE TABLE visit (
    id TEXT PRIMARY KEY,
    system_id TEXT NOT NULL REFERENCES system (id),
    date TEXT,
    technician TEXT,
    complaint TEXT,
    means TEXT NOT NULL CHECK (json_valid(means)),
    outcome TEXT,
    notes TEXT,
    started_at TEXT NOT NULL,
    changed_at TEXT NOT NULL
) STRICT;
CREATE INDEX visit_by_system ON visit (system_id, started_at);
CREATE INDEX visit_by_change ON visit (changed_at);

CREATE TABLE answer (
    visit_id TEXT NOT NULL REFERENCES visit (id) ON DELETE CASCADE,
    finding TEXT NOT NULL,
    level TEXT NOT NULL,
    PRIMARY KEY (visit_id, finding)
) STRICT, WITHOUT ROWID;

CREATE TABLE reading (
    id TEXT PRIMARY KEY,
    visit_id TEXT NOT NULL REFERENCES visit (id) ON DELETE CASCADE,
    point TEXT NOT NULL,
    value REAL NOT NULL,
    unit TEXT NOT NULL,
    accuracy_value REAL,
    accuracy_unit TEXT,
    instrument TEXT,
    mode TEXT,
    taken_at TEXT,
    phase TEXT NOT NULL,
    circuit INTEGER,
    note TEXT,
    CHECK ((accuracy_value IS NULL) = (accuracy_unit IS NULL))
) STRICT;
CREATE INDEX reading_by_visit ON reading (visit_id);

CREATE TABLE verdict (
    visit_id TEXT NOT NULL REFERENCES visit (id) ON DELETE CASCADE,
    cause TEXT NOT NULL,
    confirmed INTEGER NOT NULL CHECK (confirmed IN (0, 1)),
    by_check TEXT,
    PRIMARY KEY (visit_id, cause)
) STRICT, WITHOUT ROWID;

CREATE TABLE action (
    visit_id TEXT NOT NULL REFERENCES visit (id) ON DELETE CASCADE,
    position INTEGER NOT NULL,
    document TEXT NOT NULL CHECK (json_valid(document)),
    PRIMARY KEY (visit_id, position)
) STRICT, WITHOUT ROWID;
