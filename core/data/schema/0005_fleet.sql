-- What many devices and the whole fleet need. Shipped; never edited.

-- Time and cost of a visit, as written.
ALTER TABLE visit ADD COLUMN time_spent_value REAL;
ALTER TABLE visit ADD COLUMN time_spent_unit TEXT;
ALTER TABLE visit ADD COLUMN cost REAL;

-- Whether the fix of a cause, made at a visit, was found to hold on a later day.
CREATE TABLE follow_up (
    id TEXT PRIMARY KEY,
    visit_id TEXT NOT NULL REFERENCES visit (id),
    cause TEXT NOT NULL,
    held INTEGER NOT NULL CHECK (held IN (0, 1)),
    day TEXT NOT NULL,
    changed_at TEXT NOT NULL
) STRICT;
CREATE INDEX follow_up_by_visit ON follow_up (visit_id);

-- This device, as others know it: one row, made on first need.
CREATE TABLE device (
    one INTEGER PRIMARY KEY CHECK (one = 1),
    id TEXT NOT NULL
) STRICT;

-- The latest states of records, one row each unless devices disagree. The one
-- shown stands in the tables above and has no content here.
CREATE TABLE revision (
    kind TEXT NOT NULL,
    record_id TEXT NOT NULL,
    id BLOB NOT NULL CHECK (length(id) = 16),
    past BLOB NOT NULL,
    digest BLOB NOT NULL,
    content TEXT,
    made_at TEXT NOT NULL,
    device TEXT NOT NULL,
    PRIMARY KEY (kind, record_id, id)
) STRICT, WITHOUT ROWID;
CREATE INDEX revision_not_shown ON revision (kind, record_id) WHERE content IS NOT NULL;

-- Records changed here since their last revision was noted, and rows of the
-- board that are out of date. Kept by triggers, so that no way of writing can
-- forget it. In a trigger, OR IGNORE would give way to the outer statement.
CREATE TABLE unnoted (
    kind TEXT NOT NULL,
    record_id TEXT NOT NULL,
    PRIMARY KEY (kind, record_id)
) STRICT, WITHOUT ROWID;
CREATE TABLE uncounted (
    kind TEXT NOT NULL,
    record_id TEXT NOT NULL,
    PRIMARY KEY (kind, record_id)
) STRICT, WITHOUT ROWID;

-- The board's own rows: facts of systems and visits as small numbers.
CREATE TABLE board_word (
    number INTEGER PRIMARY KEY,
    sort TEXT NOT NULL,
    word TEXT NOT NULL COLLATE NOCASE,
    UNIQUE (sort, word)
) STRICT;
CREATE TABLE board_system (
    number INTEGER PRIMARY KEY,
    system_id TEXT NOT NULL UNIQUE,
    started INTEGER,
    charged INTEGER,
    crew INTEGER NOT NULL,
    fluid INTEGER NOT NULL,
    centre INTEGER NOT NULL,
    pipe INTEGER NOT NULL,
    known INTEGER NOT NULL,
    kept INTEGER NOT NULL
) STRICT;
CREATE TABLE board_visit (
    number INTEGER PRIMARY KEY,
    visit_id TEXT NOT NULL UNIQUE,
    system INTEGER NOT NULL,
    day INTEGER,
    minutes REAL NOT NULL,
    cost REAL NOT NULL,
    callback INTEGER NOT NULL,
    causes BLOB NOT NULL,
    follow_ups BLOB NOT NULL
) STRICT;

CREATE TRIGGER site_insert_noted AFTER INSERT ON site BEGIN
    INSERT INTO unnoted VALUES ('site', NEW.id) ON CONFLICT DO NOTHING;
    INSERT INTO unnoted VALUES ('household', NEW.id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER site_update_noted AFTER UPDATE ON site BEGIN
    INSERT INTO unnoted VALUES ('site', NEW.id) ON CONFLICT DO NOTHING;
    INSERT INTO unnoted VALUES ('household', NEW.id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER system_insert_noted AFTER INSERT ON system BEGIN
    INSERT INTO unnoted VALUES ('system', NEW.id) ON CONFLICT DO NOTHING;
    INSERT INTO uncounted VALUES ('system', NEW.id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER system_update_noted AFTER UPDATE ON system BEGIN
    INSERT INTO unnoted VALUES ('system', NEW.id) ON CONFLICT DO NOTHING;
    INSERT INTO uncounted VALUES ('system', NEW.id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER commissioning_insert_noted AFTER INSERT ON commissioning BEGIN
    INSERT INTO unnoted VALUES ('commissioning', NEW.system_id) ON CONFLICT DO NOTHING;
    INSERT INTO uncounted VALUES ('system', NEW.system_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER commissioning_update_noted AFTER UPDATE ON commissioning BEGIN
    INSERT INTO unnoted VALUES ('commissioning', NEW.system_id) ON CONFLICT DO NOTHING;
    INSERT INTO uncounted VALUES ('system', NEW.system_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER visit_insert_noted AFTER INSERT ON visit BEGIN
    INSERT INTO unnoted VALUES ('visit', NEW.id) ON CONFLICT DO NOTHING;
    INSERT INTO unnoted VALUES ('words', NEW.id) ON CONFLICT DO NOTHING;
    INSERT INTO uncounted VALUES ('visit', NEW.id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER visit_update_noted AFTER UPDATE ON visit BEGIN
    INSERT INTO unnoted VALUES ('visit', NEW.id) ON CONFLICT DO NOTHING;
    INSERT INTO unnoted VALUES ('words', NEW.id) ON CONFLICT DO NOTHING;
    INSERT INTO uncounted VALUES ('visit', NEW.id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER answer_insert_noted AFTER INSERT ON answer BEGIN
    INSERT INTO unnoted VALUES ('visit', NEW.visit_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER answer_update_noted AFTER UPDATE ON answer BEGIN
    INSERT INTO unnoted VALUES ('visit', NEW.visit_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER answer_delete_noted AFTER DELETE ON answer BEGIN
    INSERT INTO unnoted VALUES ('visit', OLD.visit_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER reading_insert_noted AFTER INSERT ON reading BEGIN
    INSERT INTO unnoted VALUES ('visit', NEW.visit_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER reading_update_noted AFTER UPDATE ON reading BEGIN
    INSERT INTO unnoted VALUES ('visit', NEW.visit_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER reading_delete_noted AFTER DELETE ON reading BEGIN
    INSERT INTO unnoted VALUES ('visit', OLD.visit_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER verdict_insert_noted AFTER INSERT ON verdict BEGIN
    INSERT INTO unnoted VALUES ('visit', NEW.visit_id) ON CONFLICT DO NOTHING;
    INSERT INTO uncounted VALUES ('visit', NEW.visit_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER verdict_update_noted AFTER UPDATE ON verdict BEGIN
    INSERT INTO unnoted VALUES ('visit', NEW.visit_id) ON CONFLICT DO NOTHING;
    INSERT INTO uncounted VALUES ('visit', NEW.visit_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER verdict_delete_noted AFTER DELETE ON verdict BEGIN
    INSERT INTO unnoted VALUES ('visit', OLD.visit_id) ON CONFLICT DO NOTHING;
    INSERT INTO uncounted VALUES ('visit', OLD.visit_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER action_insert_noted AFTER INSERT ON action BEGIN
    INSERT INTO unnoted VALUES ('visit', NEW.visit_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER action_update_noted AFTER UPDATE ON action BEGIN
    INSERT INTO unnoted VALUES ('visit', NEW.visit_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER action_delete_noted AFTER DELETE ON action BEGIN
    INSERT INTO unnoted VALUES ('visit', OLD.visit_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER follow_up_insert_noted AFTER INSERT ON follow_up BEGIN
    INSERT INTO unnoted VALUES ('follow_up', NEW.id) ON CONFLICT DO NOTHING;
    INSERT INTO uncounted VALUES ('visit', NEW.visit_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER follow_up_update_noted AFTER UPDATE ON follow_up BEGIN
    INSERT INTO unnoted VALUES ('follow_up', NEW.id) ON CONFLICT DO NOTHING;
    INSERT INTO uncounted VALUES ('visit', NEW.visit_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER photo_insert_noted AFTER INSERT ON photo BEGIN
    INSERT INTO unnoted VALUES ('photo', NEW.id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER photo_update_noted AFTER UPDATE ON photo BEGIN
    INSERT INTO unnoted VALUES ('photo', NEW.id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER photo_delete_noted AFTER DELETE ON photo BEGIN
    INSERT INTO unnoted VALUES ('photo', OLD.id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER signature_insert_noted AFTER INSERT ON signature BEGIN
    INSERT INTO unnoted VALUES ('signatures', NEW.visit_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER signature_update_noted AFTER UPDATE ON signature BEGIN
    INSERT INTO unnoted VALUES ('signatures', NEW.visit_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER signature_delete_noted AFTER DELETE ON signature BEGIN
    INSERT INTO unnoted VALUES ('signatures', OLD.visit_id) ON CONFLICT DO NOTHING;
END;

-- What is there already.
INSERT INTO unnoted SELECT 'site', id FROM site;
INSERT INTO unnoted SELECT 'household', id FROM site;
INSERT INTO unnoted SELECT 'system', id FROM system;
INSERT INTO unnoted SELECT 'commissioning', system_id FROM commissioning;
INSERT INTO unnoted SELECT 'visit', id FROM visit;
INSERT INTO unnoted SELECT 'words', id FROM visit;
INSERT INTO unnoted SELECT 'photo', id FROM photo;
INSERT INTO unnoted SELECT DISTINCT 'signatures', visit_id FROM signature;
INSERT INTO uncounted SELECT 'system', id FROM system;
INSERT INTO uncounted SELECT 'visit', id FROM visit;
