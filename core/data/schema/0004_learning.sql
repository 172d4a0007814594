-- What is learned from confirmed causes. The verdicts themselves stay the
-- source of own counts; here stands from when they count, and what other
-- devices counted. Shipped; never edited.

CREATE TABLE learning (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    origin TEXT NOT NULL,
    counts_from TEXT
) STRICT;

CREATE TABLE learned_elsewhere (
    origin TEXT PRIMARY KEY,
    callbacks INTEGER NOT NULL CHECK (callbacks >= 0),
    confirmed TEXT NOT NULL CHECK (json_valid(confirmed)),
    imported_at TEXT NOT NULL
) STRICT;
