//! Photos and signatures as the exchange carries them.

use crate::exchange::{Signed, read, text};
use crate::records::attachment::{caption, limits};
use crate::records::{Photo, PhotoId, PhotoPhase, Picture, Signature, SignatureRole, VisitId};
use crate::store::StoreError;
use crate::store::attachments::add_photo;
use crate::store::row::{damaged, named};
use crate::store::visits::{parse_id, visit};
use base64::Engine as _;
use base64::prelude::BASE64_STANDARD;
use chrono::{DateTime, FixedOffset};
use rusqlite::{Connection, OptionalExtension};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

/// A photo with its picture. A photo that was taken away is `null`.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct PhotoContent {
    visit: VisitId,
    phase: PhotoPhase,
    taken_at: DateTime<FixedOffset>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    caption: Option<String>,
    width: u32,
    height: u32,
    jpeg: String,
    thumbnail: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct SignatureContent {
    role: SignatureRole,
    name: String,
    aspect: f32,
    strokes: Vec<Vec<[f32; 2]>>,
    signed_at: DateTime<FixedOffset>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    signed: Option<Signed>,
}

impl SignatureContent {
    fn signature(self) -> Result<Signature, String> {
        let printed = self.name;
        Signature::new(
            self.role,
            &printed,
            self.aspect,
            self.strokes,
            self.signed_at,
        )
        .map_err(|error| error.to_string())
        .and_then(|made| match made.name() == printed {
            true => Ok(made),
            false => Err("a name has blanks around it".to_owned()),
        })
    }
}

/// Whether this can be a photo.
pub(super) fn check_photo(written: &str) -> Result<(), String> {
    let Some(photo) = read::<Option<PhotoContent>>(written)? else {
        return Ok(());
    };
    let said = photo.caption.as_deref().unwrap_or_default();
    if caption(said).map_err(|error| error.to_string())? != photo.caption {
        return Err("a caption has blanks around it".to_owned());
    }
    let size = 1..=limits::PHOTO_EDGE;
    if !size.contains(&photo.width) || !size.contains(&photo.height) {
        return Err("a photo is larger than any that is kept".to_owned());
    }
    for picture in [&photo.jpeg, &photo.thumbnail] {
        // JPEG files begin with the marker SOI, ITU-T T.81, B.1.1.3.
        if !decode(picture)?.starts_with(&[0xff, 0xd8]) {
            return Err("a picture is no JPEG file".to_owned());
        }
    }
    Ok(())
}

/// Whether these can be the signatures of a visit.
pub(super) fn check_signatures(written: &str) -> Result<(), String> {
    let contents = read::<Vec<SignatureContent>>(written)?;
    let mut signed = contents.iter().filter_map(|given| given.signed.as_ref());
    signed.try_for_each(Signed::check)?;
    let signatures = contents.into_iter().map(SignatureContent::signature);
    let signatures = signatures.collect::<Result<Vec<_>, _>>()?;
    match signatures.is_sorted_by(|a, b| a.role() < b.role()) {
        true => Ok(()),
        false => Err("signatures stand in the wrong order".to_owned()),
    }
}

fn decode(picture: &str) -> Result<Vec<u8>, String> {
    BASE64_STANDARD
        .decode(picture)
        .map_err(|error| error.to_string())
}

/// What a photo says; `null` when it is not, or no longer, there.
pub(super) fn photo(connection: &Connection, id: Uuid) -> Result<String, StoreError> {
    let key = id.to_string();
    let bad = |detail: String| damaged("photo", &key, &detail);
    let found = connection
        .prepare_cached(
            "SELECT visit_id, phase, taken_at, caption, width, height, jpeg, thumbnail \
             FROM photo JOIN picture ON picture.photo_id = photo.id WHERE photo.id = ?1",
        )?
        .query_row([&key], |row| {
            let texts: [String; 3] = [row.get(0)?, row.get(1)?, row.get(2)?];
            let size: [u32; 2] = [row.get(4)?, row.get(5)?];
            let pictures: [Vec<u8>; 2] = [row.get(6)?, row.get(7)?];
            Ok((texts, row.get(3)?, size, pictures))
        })
        .optional()?;
    let content = match found {
        None => None,
        Some(([visit, phase, taken_at], caption, [width, height], [jpeg, thumbnail])) => {
            Some(PhotoContent {
                visit: VisitId(parse_id("visit", &visit)?),
                phase: named("photo", &key, &phase)?,
                taken_at: named("photo", &key, &taken_at)?,
                caption,
                width,
                height,
                jpeg: BASE64_STANDARD.encode(jpeg),
                thumbnail: BASE64_STANDARD.encode(thumbnail),
            })
        }
    };
    text(&content).map_err(bad)
}

/// Brings a photo to what is written.
pub(super) fn put_photo(
    connection: &Connection,
    id: Uuid,
    written: &str,
) -> Result<(), StoreError> {
    let key = id.to_string();
    let bad = |detail: String| damaged("photo", &key, &detail);
    connection
        .prepare_cached("DELETE FROM photo WHERE id = ?1")?
        .execute([&key])?;
    let Some(content) = read::<Option<PhotoContent>>(written).map_err(bad)? else {
        return Ok(());
    };
    visit(connection, content.visit)?;
    let photo = Photo {
        id: PhotoId(id),
        phase: content.phase,
        taken_at: content.taken_at,
        caption: content.caption,
        width: content.width,
        height: content.height,
    };
    let picture = Picture {
        jpeg: decode(&content.jpeg).map_err(bad)?,
        thumbnail: decode(&content.thumbnail).map_err(bad)?,
        width: content.width,
        height: content.height,
    };
    add_photo(connection, content.visit, &photo, &picture)
}

/// The signatures of a visit.
pub(super) fn signatures(connection: &Connection, visit: Uuid) -> Result<String, StoreError> {
    let signatures = crate::store::attachments::signatures(connection, VisitId(visit))?;
    let mut given_for = crate::store::signed::by_role(connection, VisitId(visit))?;
    let contents: Vec<SignatureContent> = signatures
        .iter()
        .map(|signature| SignatureContent {
            role: signature.role(),
            name: signature.name().to_owned(),
            aspect: signature.aspect(),
            strokes: signature.strokes().to_vec(),
            signed_at: signature.signed_at(),
            signed: given_for.remove(&signature.role()),
        })
        .collect();
    text(&contents).map_err(|detail| damaged("signature", &visit.to_string(), &detail))
}

/// Brings the signatures of a visit to what is written.
pub(super) fn put_signatures(
    connection: &Connection,
    id: Uuid,
    written: &str,
) -> Result<(), StoreError> {
    let key = id.to_string();
    let bad = |detail: String| damaged("signature", &key, &detail);
    visit(connection, VisitId(id))?;
    connection
        .prepare_cached("DELETE FROM signature WHERE visit_id = ?1")?
        .execute([&key])?;
    for content in read::<Vec<SignatureContent>>(written).map_err(bad)? {
        let given_for = content.signed.clone();
        let signature = content.signature().map_err(bad)?;
        crate::store::attachments::put_signature(
            connection,
            VisitId(id),
            &signature,
            given_for.as_ref(),
        )?;
    }
    Ok(())
}
