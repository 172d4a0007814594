//! What stands under a signature, and whether it changed since.

use super::row::{damaged, document, named, to_document};
use super::visits::visit;
use super::{Store, StoreError, attachments};
use crate::exchange::{CountsSigned, Digest, Signed, Words, text};
use crate::records::visit_file::{VisitFile, write_visit};
use crate::records::{Signature, SignatureRole, VisitId};
use chrono::{DateTime, Utc};
use rusqlite::{Connection, params};
use std::collections::BTreeMap;

impl Store {
    /// Keeps a signature with what it is given for; one of the same role is
    /// replaced.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn put_signature(
        &mut self,
        visit: VisitId,
        signature: &Signature,
        learned: &CountsSigned,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        let file = self.record(visit)?.file;
        self.change(visit, now, |connection| {
            // A second signature is given for what the first was given for.
            let before = signed(connection, visit)?.and_then(|before| before.learned);
            let learned = before.unwrap_or_else(|| learned.clone());
            let digest = digest(connection, visit)?;
            let given_for = Signed::of(&file, Some(learned), digest);
            attachments::put_signature(connection, visit, signature, Some(&given_for))
        })
    }

    /// What a visit was signed for; none while nobody signed.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn signed(&self, visit: VisitId) -> Result<Option<Signed>, StoreError> {
        signed(&self.connection, visit)
    }

    /// The signatures that were given before the visit was changed.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn signed_before_a_change(&self, id: VisitId) -> Result<Vec<SignatureRole>, StoreError> {
        let mut changed = Vec::new();
        let mut now = None;
        for (role, given_for) in by_role(&self.connection, id)? {
            let Some(then) = given_for.visit else {
                continue;
            };
            let now = match now {
                Some(now) => now,
                None => *now.insert(digest(&self.connection, id)?),
            };
            if now.to_string() != then {
                changed.push(role);
            }
        }
        Ok(changed)
    }

    /// A visit's site, system and commissioning as they are now, signed or not.
    ///
    /// # Errors
    /// [`StoreError::NotFound`] among others.
    pub fn unsigned(&self, id: VisitId) -> Result<VisitFile, StoreError> {
        let (of, visit) = visit(&self.connection, id)?;
        Ok(super::visits::around(&self.connection, of, visit)?.1)
    }
}

/// What a visit was signed for first.
pub(super) fn signed(
    connection: &Connection,
    visit: VisitId,
) -> Result<Option<Signed>, StoreError> {
    Ok(by_role(connection, visit)?.into_values().next())
}

/// What each signature was given for, in the order of the roles.
pub(super) fn by_role(
    connection: &Connection,
    visit: VisitId,
) -> Result<BTreeMap<SignatureRole, Signed>, StoreError> {
    let key = visit.to_string();
    let mut statement = connection.prepare_cached(
        "SELECT role, signed FROM signature WHERE visit_id = ?1 AND signed IS NOT NULL",
    )?;
    let mut rows = statement.query([&key])?;
    let mut found = BTreeMap::new();
    while let Some(row) = rows.next()? {
        let role: String = row.get(0)?;
        let written: String = row.get(1)?;
        found.insert(
            named("signature", &key, &role)?,
            document("signature", &key, &written)?,
        );
    }
    Ok(found)
}

/// The document kept with a signature.
pub(super) fn written(
    visit: VisitId,
    given_for: Option<&Signed>,
) -> Result<Option<String>, StoreError> {
    let key = visit.to_string();
    given_for
        .map(|given_for| to_document("signature", &key, given_for))
        .transpose()
}

/// A digest of everything that was entered during a visit, and of its photos.
fn digest(connection: &Connection, id: VisitId) -> Result<Digest, StoreError> {
    let (_, entered) = visit(connection, id)?;
    let key = id.to_string();
    let words = text(&Words::of(&entered)).map_err(|detail| damaged("visit", &key, &detail))?;
    let mut said = format!("{}{words}", write_visit(&entered));
    let mut statement = connection.prepare_cached(
        "SELECT id, phase, coalesce(caption, '') FROM photo WHERE visit_id = ?1 ORDER BY id",
    )?;
    let mut rows = statement.query(params![key])?;
    while let Some(row) = rows.next()? {
        let photo: [String; 3] = [row.get(0)?, row.get(1)?, row.get(2)?];
        said.push_str(&photo.join("\n"));
    }
    Ok(Digest::of(said.as_bytes()))
}
