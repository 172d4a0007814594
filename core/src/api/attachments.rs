//! Photos and signatures of a visit.

use super::types::{
    AttachmentsView, ChoiceView, NewPhoto, PhotoEntry, PhotoView, SignatureEntry, SignatureView,
};
use super::{ApiError, Engine, Wording};
use crate::exchange::CountsSigned;
use crate::records::attachment::{caption, limits};
use crate::records::{
    AttachmentError, Photo, PhotoId, PhotoPhase, Picture, Signature, SignatureRole,
};
use crate::report::{PhotoError, photo};
use crate::store::StoreError;
use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use chrono::{DateTime, FixedOffset};

/// Makes a picture file ready to be kept. Needs no store, so that entries made
/// meanwhile do not wait for it.
///
/// # Errors
/// [`ApiError`] of code `photo-format`, `photo-too-large` or `photo-damaged`.
pub fn read_picture(bytes: &[u8], wording: Wording) -> Result<Picture, ApiError> {
    photo::picture(bytes).map_err(|error| refused(&error, wording))
}

/// The same for a file that comes as base 64 text or as a `data:` address.
///
/// # Errors
/// As [`read_picture`].
pub fn read_picture_text(text: &str, wording: Wording) -> Result<Picture, ApiError> {
    let text = text.rsplit_once(',').map_or(text, |(_, data)| data).trim();
    let most = limits::PHOTO_FILE_BYTES;
    // Four letters hold three bytes.
    if text.len() / 4 * 3 > most + 3 {
        let bytes = text.len() / 4 * 3;
        return Err(refused(&PhotoError::TooManyBytes { bytes }, wording));
    }
    let bytes = STANDARD
        .decode(text)
        .map_err(|_| refused(&PhotoError::UnknownFormat, wording))?;
    read_picture(&bytes, wording)
}

fn refused(error: &PhotoError, wording: Wording) -> ApiError {
    let size = match error {
        PhotoError::TooManyBytes { bytes } => {
            format!("{:.1} MB", *bytes as f64 / 1024.0 / 1024.0)
        }
        PhotoError::TooLarge { width, height } => format!("{width} × {height}"),
        PhotoError::UnknownFormat | PhotoError::Damaged { .. } => String::new(),
    };
    let megabytes = (limits::PHOTO_FILE_BYTES / 1024 / 1024).to_string();
    let megapixels = (limits::PHOTO_PIXELS / 1_000_000).to_string();
    let context = [
        ("detail", error.to_string()),
        ("size", size),
        ("megabytes", megabytes),
        ("megapixels", megapixels),
    ];
    let context = context
        .each_ref()
        .map(|(name, value)| (*name, value.as_str()));
    ApiError::new(error.code(), &context, wording)
}

impl Engine {
    /// Photos and signatures of a visit.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn attachments(&self, visit: &str) -> Result<AttachmentsView, ApiError> {
        let id = self.visit_id(visit)?;
        let photos = self.store.photos(id).map_err(|error| self.failed(&error))?;
        let signatures = self.store.signatures(id);
        let signatures = signatures.map_err(|error| self.failed(&error))?;
        let changed = self.store.signed_before_a_change(id);
        let changed = changed.map_err(|error| self.failed(&error))?;
        let choice = |kind: &str, id: &str| ChoiceView {
            value: id.to_owned(),
            label: self.label(kind, id),
        };
        Ok(AttachmentsView {
            photos_left: limits::PHOTOS.saturating_sub(photos.len()),
            photos: photos
                .iter()
                .map(|(photo, thumbnail)| self.photo_view(photo, thumbnail))
                .collect(),
            signatures: signatures
                .iter()
                .map(|signature| {
                    let changed = changed.contains(&signature.role());
                    self.signature_view(signature, changed)
                })
                .collect(),
            phases: PhotoPhase::ALL
                .iter()
                .map(|phase| choice("photo", phase.id()))
                .collect(),
            roles: SignatureRole::ALL
                .iter()
                .map(|role| choice("signature", role.id()))
                .collect(),
        })
    }

    /// Keeps a photo; it is kept when this returns.
    ///
    /// # Errors
    /// [`ApiError`] of code `too-many-photos`, `caption-too-long` and others;
    /// the visit is unchanged then.
    pub fn add_photo(
        &mut self,
        visit: &str,
        new: &NewPhoto,
        picture: &Picture,
    ) -> Result<AttachmentsView, ApiError> {
        let id = self.visit_id(visit)?;
        let taken_at = match &new.taken_at {
            None => self.surroundings.here(),
            Some(text) => {
                DateTime::parse_from_rfc3339(text).map_err(|_| self.unnamed("date", text))?
            }
        };
        let photo = Photo {
            id: PhotoId(self.surroundings.new_id()),
            phase: self.phase(&new.phase)?,
            taken_at,
            caption: self.caption(new.caption.as_deref())?,
            width: picture.width,
            height: picture.height,
        };
        let now = self.surroundings.now();
        self.store
            .put_photo(id, &photo, picture, now)
            .map_err(|error| self.failed(&error))?;
        self.attachments(visit)
    }

    /// Changes what is said of a photo.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn describe_photo(
        &mut self,
        visit: &str,
        entry: &PhotoEntry,
    ) -> Result<AttachmentsView, ApiError> {
        let id = self.visit_id(visit)?;
        let photo_id = self.photo_id(&entry.id)?;
        let photos = self.store.photos(id).map_err(|error| self.failed(&error))?;
        let mut found = photos.into_iter().map(|(photo, _)| photo);
        let mut photo = found
            .find(|photo| photo.id == photo_id)
            .ok_or_else(|| self.no_photo(&entry.id))?;
        photo.phase = self.phase(&entry.phase)?;
        photo.caption = self.caption(entry.caption.as_deref())?;
        let now = self.surroundings.now();
        self.store
            .change_photo(id, &photo, now)
            .map_err(|error| self.failed(&error))?;
        self.attachments(visit)
    }

    /// Takes a photo away.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn remove_photo(&mut self, visit: &str, photo: &str) -> Result<AttachmentsView, ApiError> {
        let id = self.visit_id(visit)?;
        let photo = self.photo_id(photo)?;
        let now = self.surroundings.now();
        self.store
            .remove_photo(id, photo, now)
            .map_err(|error| self.failed(&error))?;
        self.attachments(visit)
    }

    /// A photo in full, as a `data:` address.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn photo(&self, photo: &str) -> Result<String, ApiError> {
        let jpeg = self.store.picture(self.photo_id(photo)?);
        Ok(address(&jpeg.map_err(|error| self.failed(&error))?))
    }

    /// Keeps a signature; one of the same role is replaced.
    ///
    /// # Errors
    /// [`ApiError`] of code `signature-no-name`, `signature-empty` and others;
    /// the visit is unchanged then.
    pub fn set_signature(
        &mut self,
        visit: &str,
        entry: &SignatureEntry,
    ) -> Result<AttachmentsView, ApiError> {
        let id = self.visit_id(visit)?;
        let role = self.role(&entry.role)?;
        let here = self.surroundings.here();
        let strokes = entry.strokes.clone();
        let signature = Signature::new(role, &entry.name, entry.aspect, strokes, here);
        let signature = signature.map_err(|error| self.not_taken(&error))?;
        let now = self.surroundings.now();
        let learned = self.learned_for(Some(id))?;
        let confirmed = learned.all_confirmed();
        let learned = CountsSigned {
            callbacks: learned.callbacks(),
            confirmed: confirmed
                .map(|(cause, count)| (cause.as_str().to_owned(), count))
                .collect(),
        };
        self.store
            .put_signature(id, &signature, &learned, now)
            .map_err(|error| self.failed(&error))?;
        // What stood before may not come back under the signature.
        self.undo = super::undo::Entries::default();
        self.attachments(visit)
    }

    /// Takes a signature away.
    ///
    /// # Errors
    /// [`ApiError`].
    pub fn clear_signature(
        &mut self,
        visit: &str,
        role: &str,
    ) -> Result<AttachmentsView, ApiError> {
        let id = self.visit_id(visit)?;
        let role = self.role(role)?;
        let now = self.surroundings.now();
        self.store
            .remove_signature(id, role, now)
            .map_err(|error| self.failed(&error))?;
        self.attachments(visit)
    }

    fn photo_view(&self, photo: &Photo, thumbnail: &[u8]) -> PhotoView {
        PhotoView {
            id: photo.id.to_string(),
            phase: photo.phase.id().to_owned(),
            phase_label: self.label("photo", photo.phase.id()),
            caption: photo.caption.clone(),
            taken_at: moment(photo.taken_at),
            width: photo.width,
            height: photo.height,
            thumbnail: address(thumbnail),
        }
    }

    fn signature_view(&self, signature: &Signature, changed: bool) -> SignatureView {
        SignatureView {
            role: signature.role().id().to_owned(),
            role_label: self.label("signature", signature.role().id()),
            name: signature.name().to_owned(),
            aspect: signature.aspect(),
            strokes: signature.strokes().to_vec(),
            signed_at: moment(signature.signed_at()),
            changed: changed.then(|| self.wording.catalog().text("signature-before-change")),
        }
    }

    fn label(&self, kind: &str, id: &str) -> String {
        self.wording.catalog().text(&format!("{kind}-{id}"))
    }

    fn phase(&self, text: &str) -> Result<PhotoPhase, ApiError> {
        PhotoPhase::from_id(text).ok_or_else(|| self.unnamed("phase", text))
    }

    fn role(&self, text: &str) -> Result<SignatureRole, ApiError> {
        SignatureRole::from_id(text).ok_or_else(|| self.unnamed("role", text))
    }

    fn unnamed(&self, field: &str, found: &str) -> ApiError {
        let context = [("field", field), ("found", found)];
        ApiError::new("no-such-name", &context, self.wording)
    }

    fn photo_id(&self, text: &str) -> Result<PhotoId, ApiError> {
        text.parse().map_err(|_| self.no_photo(text))
    }

    fn no_photo(&self, id: &str) -> ApiError {
        let id = id.to_owned();
        self.failed(&StoreError::NotFound { kind: "photo", id })
    }

    fn caption(&self, text: Option<&str>) -> Result<Option<String>, ApiError> {
        caption(text.unwrap_or_default()).map_err(|error| self.not_taken(&error))
    }

    fn not_taken(&self, error: &AttachmentError) -> ApiError {
        let most = match error {
            AttachmentError::CaptionTooLong(_) => limits::CAPTION,
            _ => limits::NAME,
        };
        ApiError::new(error.code(), &[("most", &most.to_string())], self.wording)
    }
}

/// Day and time as they are shown.
pub(super) fn moment(at: DateTime<FixedOffset>) -> String {
    at.format("%Y-%m-%d %H:%M").to_string()
}

fn address(jpeg: &[u8]) -> String {
    format!("data:image/jpeg;base64,{}", STANDARD.encode(jpeg))
}

#[cfg(test)]
mod tests;
