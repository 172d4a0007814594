-- What a signature was given for: site, system and commissioning as they were, and
-- a digest of the visit. A system is shared by the visits to it; what was signed
-- must not change with it. Shipped; never edited.

ALTER TABLE signature ADD COLUMN signed TEXT CHECK (signed IS NULL OR json_valid(signed));

-- Signatures given before stand for what is recorded now; a merge patch takes out
-- what is null (RFC 7396).
UPDATE signature SET signed = (
    SELECT json_patch('{}', json_object(
        'site', json_object('elevation', CASE
            WHEN site.elevation_value IS NULL THEN NULL
            ELSE json_object('value', site.elevation_value, 'unit', site.elevation_unit)
        END),
        'household', json_object(
            'name', site.name, 'address', site.address,
            'contact', site.contact, 'notes', site.notes
        ),
        'system', json(system.document),
        'commissioning', json(coalesce(commissioning.document, '{}'))
    ))
    FROM visit
    JOIN system ON system.id = visit.system_id
    JOIN site ON site.id = system.site_id
    LEFT JOIN commissioning ON commissioning.system_id = system.id
    WHERE visit.id = signature.visit_id
);
