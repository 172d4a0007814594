-- What belongs to the invented demonstration company, so that one action takes
-- all of it away and nothing else. Shipped; never edited.

CREATE TABLE demo_visit (
    visit_id TEXT PRIMARY KEY REFERENCES visit (id) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
CREATE TABLE demo_system (
    system_id TEXT PRIMARY KEY REFERENCES system (id) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- A record that is gone is neither noted nor counted any more, whoever took it away.
CREATE TRIGGER site_delete_forgotten AFTER DELETE ON site BEGIN
    DELETE FROM unnoted WHERE kind IN ('site', 'household') AND record_id = OLD.id;
    DELETE FROM revision WHERE kind IN ('site', 'household') AND record_id = OLD.id;
END;
CREATE TRIGGER system_delete_forgotten AFTER DELETE ON system BEGIN
    DELETE FROM unnoted WHERE kind = 'system' AND record_id = OLD.id;
    DELETE FROM revision WHERE kind = 'system' AND record_id = OLD.id;
    DELETE FROM uncounted WHERE kind = 'system' AND record_id = OLD.id;
    DELETE FROM board_system WHERE system_id = OLD.id;
END;
CREATE TRIGGER commissioning_delete_forgotten AFTER DELETE ON commissioning BEGIN
    DELETE FROM unnoted WHERE kind = 'commissioning' AND record_id = OLD.system_id;
    DELETE FROM revision WHERE kind = 'commissioning' AND record_id = OLD.system_id;
END;
CREATE TRIGGER follow_up_delete_forgotten AFTER DELETE ON follow_up BEGIN
    DELETE FROM unnoted WHERE kind = 'follow_up' AND record_id = OLD.id;
    DELETE FROM revision WHERE kind = 'follow_up' AND record_id = OLD.id;
    INSERT INTO uncounted VALUES ('visit', OLD.visit_id) ON CONFLICT DO NOTHING;
END;
CREATE TRIGGER visit_delete_forgotten AFTER DELETE ON visit BEGIN
    DELETE FROM unnoted WHERE kind IN ('visit', 'words', 'signatures') AND record_id = OLD.id;
    DELETE FROM revision WHERE kind IN ('visit', 'words', 'signatures') AND record_id = OLD.id;
    DELETE FROM uncounted WHERE kind = 'visit' AND record_id = OLD.id;
    DELETE FROM board_visit WHERE visit_id = OLD.id;
END;
