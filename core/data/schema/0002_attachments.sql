-- Photos and signatures of a visit. Shipped; never edited.
-- Pictures stand apart from what is said of them, so that a list reads none.

CREATE TABLE photo (
    id TEXT PRIMARY KEY,
    visit_id TEXT NOT NULL REFERENCES visit (id) ON DELETE CASCADE,
    phase TEXT NOT NULL,
    taken_at TEXT NOT NULL,
    caption TEXT,
    width INTEGER NOT NULL CHECK (width > 0),
    height INTEGER NOT NULL CHECK (height > 0)
) STRICT;
CREATE INDEX photo_by_visit ON photo (visit_id);

CREATE TABLE picture (
    photo_id TEXT PRIMARY KEY REFERENCES photo (id) ON DELETE CASCADE,
    jpeg BLOB NOT NULL,
    thumbnail BLOB NOT NULL
) STRICT;

CREATE TABLE signature (
    visit_id TEXT NOT NULL REFERENCES visit (id) ON DELETE CASCADE,
    role TEXT NOT NULL,
    name TEXT NOT NULL,
    aspect REAL NOT NULL,
    strokes TEXT NOT NULL CHECK (json_valid(strokes)),
    signed_at TEXT NOT NULL,
    PRIMARY KEY (visit_id, role)
) STRICT, WITHOUT ROWID;
