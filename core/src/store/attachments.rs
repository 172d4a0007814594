//! Photos and signatures of a visit.

use super::row::{damaged, document, named, to_document};
use super::visits::parse_id;
use super::{Store, StoreError};
use crate::exchange::Signed;
use crate::records::attachment::limits;
use crate::records::{Photo, PhotoId, Picture, Signature, SignatureRole, VisitId};
use chrono::{DateTime, Utc};
use rusqlite::{Connection, OptionalExtension, Row, params};

/// The columns of a photo, in the order of `photo`.
const PHOTO_COLUMNS: &str = "photo.id, phase, taken_at, caption, width, height";

impl Store {
    /// Keeps a new photo with its picture.
    ///
    /// # Errors
    /// [`StoreError::TooManyPhotos`] among others; nothing is kept then.
    pub fn put_photo(
        &mut self,
        visit: VisitId,
        photo: &Photo,
        picture: &Picture,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        self.change(visit, now, |connection| {
            let sql = "SELECT count(*) FROM photo WHERE visit_id = ?1";
            let count: i64 = connection.query_row(sql, [visit.to_string()], |row| row.get(0))?;
            if usize::try_from(count).is_ok_and(|count| count >= limits::PHOTOS) {
                return Err(StoreError::TooManyPhotos);
            }
            add_photo(connection, visit, photo, picture)
        })
    }

    /// Changes what is said of a photo; the picture stays.
    ///
    /// # Errors
    /// [`StoreError::NotFound`] among others.
    pub fn change_photo(
        &mut self,
        visit: VisitId,
        photo: &Photo,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        self.change(visit, now, |connection| {
            let key = photo.id.to_string();
            let sql = "UPDATE photo SET phase = ?3, caption = ?4 WHERE id = ?1 AND visit_id = ?2";
            let values = params![key, visit.to_string(), photo.phase.id(), photo.caption];
            match connection.execute(sql, values)? {
                0 => Err(super::sites::not_found("photo", &key)),
                _ => Ok(()),
            }
        })
    }

    /// Takes a photo away with its picture.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn remove_photo(
        &mut self,
        visit: VisitId,
        id: PhotoId,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        self.change(visit, now, |connection| {
            let sql = "DELETE FROM photo WHERE id = ?1 AND visit_id = ?2";
            connection.execute(sql, params![id.to_string(), visit.to_string()])?;
            Ok(())
        })
    }

    /// The photos of a visit with their thumbnails, in the order they were kept.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn photos(&self, visit: VisitId) -> Result<Vec<(Photo, Vec<u8>)>, StoreError> {
        let sql = format!(
            "SELECT {PHOTO_COLUMNS}, thumbnail FROM photo \
             JOIN picture ON picture.photo_id = photo.id \
             WHERE visit_id = ?1 ORDER BY photo.rowid"
        );
        let mut statement = self.connection.prepare_cached(&sql)?;
        let mut rows = statement.query([visit.to_string()])?;
        let mut photos = Vec::new();
        while let Some(row) = rows.next()? {
            photos.push((photo(row)?, row.get(6)?));
        }
        Ok(photos)
    }

    /// The JPEG file of a photo.
    ///
    /// # Errors
    /// [`StoreError::NotFound`] among others.
    pub fn picture(&self, id: PhotoId) -> Result<Vec<u8>, StoreError> {
        let key = id.to_string();
        self.connection
            .prepare_cached("SELECT jpeg FROM picture WHERE photo_id = ?1")?
            .query_row([&key], |row| row.get(0))
            .optional()?
            .ok_or_else(|| super::sites::not_found("photo", &key))
    }

    /// Takes a signature away.
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn remove_signature(
        &mut self,
        visit: VisitId,
        role: SignatureRole,
        now: DateTime<Utc>,
    ) -> Result<(), StoreError> {
        self.change(visit, now, |connection| {
            let sql = "DELETE FROM signature WHERE visit_id = ?1 AND role = ?2";
            connection.execute(sql, params![visit.to_string(), role.id()])?;
            Ok(())
        })
    }

    /// The signatures of a visit, in the order of [`SignatureRole::ALL`].
    ///
    /// # Errors
    /// [`StoreError`].
    pub fn signatures(&self, visit: VisitId) -> Result<Vec<Signature>, StoreError> {
        signatures(&self.connection, visit)
    }
}

/// Adds a photo with its picture to a visit.
pub(super) fn add_photo(
    connection: &Connection,
    visit: VisitId,
    photo: &Photo,
    picture: &Picture,
) -> Result<(), StoreError> {
    let key = photo.id.to_string();
    connection
        .prepare_cached(
            "INSERT INTO photo (id, visit_id, phase, taken_at, caption, width, height) \
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)",
        )?
        .execute(params![
            key,
            visit.to_string(),
            photo.phase.id(),
            photo.taken_at.to_rfc3339(),
            photo.caption,
            photo.width,
            photo.height,
        ])?;
    connection
        .prepare_cached("INSERT INTO picture (photo_id, jpeg, thumbnail) VALUES (?1, ?2, ?3)")?
        .execute(params![key, picture.jpeg, picture.thumbnail])?;
    Ok(())
}

pub(super) fn put_signature(
    connection: &Connection,
    visit: VisitId,
    signature: &Signature,
    given_for: Option<&Signed>,
) -> Result<(), StoreError> {
    let key = visit.to_string();
    connection.execute(
        "INSERT INTO signature (visit_id, role, name, aspect, strokes, signed_at, signed) \
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7) ON CONFLICT (visit_id, role) \
         DO UPDATE SET name = ?3, aspect = ?4, strokes = ?5, signed_at = ?6, signed = ?7",
        params![
            key,
            signature.role().id(),
            signature.name(),
            f64::from(signature.aspect()),
            to_document("signature", &key, &signature.strokes())?,
            signature.signed_at().to_rfc3339(),
            super::signed::written(visit, given_for)?,
        ],
    )?;
    Ok(())
}

pub(super) fn signatures(
    connection: &Connection,
    visit: VisitId,
) -> Result<Vec<Signature>, StoreError> {
    let key = visit.to_string();
    let mut statement = connection.prepare_cached(
        "SELECT role, name, aspect, strokes, signed_at FROM signature WHERE visit_id = ?1",
    )?;
    let mut rows = statement.query([&key])?;
    let mut signatures = Vec::new();
    while let Some(row) = rows.next()? {
        signatures.push(signature(row, &key)?);
    }
    signatures.sort_by_key(Signature::role);
    Ok(signatures)
}

fn photo(row: &Row<'_>) -> Result<Photo, StoreError> {
    let id: String = row.get(0)?;
    let phase: String = row.get(1)?;
    let taken_at: String = row.get(2)?;
    Ok(Photo {
        id: PhotoId(parse_id("photo", &id)?),
        phase: named("photo", &id, &phase)?,
        taken_at: named("photo", &id, &taken_at)?,
        caption: row.get(3)?,
        width: row.get(4)?,
        height: row.get(5)?,
    })
}

fn signature(row: &Row<'_>, visit: &str) -> Result<Signature, StoreError> {
    const KIND: &str = "signature";
    let role: String = row.get(0)?;
    let printed: String = row.get(1)?;
    let aspect: f64 = row.get(2)?;
    let strokes: String = row.get(3)?;
    let signed_at: String = row.get(4)?;
    Signature::new(
        named(KIND, visit, &role)?,
        &printed,
        aspect as f32,
        document(KIND, visit, &strokes)?,
        named(KIND, visit, &signed_at)?,
    )
    .map_err(|error| damaged(KIND, visit, &error.to_string()))
}
