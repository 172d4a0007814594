//! What can go wrong while a report becomes a file.

use std::path::PathBuf;

use thiserror::Error;

/// Failures while pages are laid out or turned into PDF bytes.
#[derive(Debug, Error)]
pub enum ReportError {
    /// A font program in the build cannot be parsed.
    #[error("font program {face} is damaged")]
    Font {
        /// PostScript name of the face.
        face: &'static str,
    },
    /// The used glyphs could not be taken out of a font program.
    #[error("font program {face} cannot be subset: {source}")]
    Subset {
        /// PostScript name of the face.
        face: &'static str,
        /// What the subsetter said.
        source: subsetter::Error,
    },
    /// The PDF structure could not be completed or written.
    #[error("PDF structure: {source}")]
    Structure {
        /// What the PDF library said.
        #[from]
        source: lopdf::Error,
    },
    /// The PDF bytes could not be collected.
    #[error("PDF bytes: {source}")]
    Bytes {
        /// The underlying error.
        #[from]
        source: std::io::Error,
    },
}

/// Why a picture cannot be used as a photo.
#[derive(Debug, Error)]
pub enum PhotoError {
    /// Neither JPEG nor PNG.
    #[error("neither a JPEG nor a PNG picture")]
    UnknownFormat,
    /// The file is larger than a photo of a visit ever is.
    #[error("picture file of {bytes} bytes is over the limit")]
    TooManyBytes {
        /// Size of the file.
        bytes: usize,
    },
    /// More pixels than a photo of a visit ever has.
    #[error("picture of {width} x {height} pixels is over the limit")]
    TooLarge {
        /// Width in pixels.
        width: u32,
        /// Height in pixels.
        height: u32,
    },
    /// The picture data is damaged or of an unsupported kind.
    #[error("picture cannot be read: {source}")]
    Damaged {
        /// What the decoder said.
        source: image::ImageError,
    },
}

impl PhotoError {
    /// Stable code, the key of its message.
    #[must_use]
    pub fn code(&self) -> &'static str {
        match self {
            Self::UnknownFormat => "photo-format",
            Self::TooManyBytes { .. } | Self::TooLarge { .. } => "photo-too-large",
            Self::Damaged { .. } => "photo-damaged",
        }
    }
}

/// Why a file was not written. Nothing is left behind in any of these cases.
#[derive(Debug, Error)]
pub enum WriteError {
    /// The path has no usable file name.
    #[error("{} names no file", path.display())]
    NoFileName {
        /// The path asked for.
        path: PathBuf,
    },
    /// The folder does not exist.
    #[error("folder {} does not exist", folder.display())]
    FolderMissing {
        /// The folder.
        folder: PathBuf,
    },
    /// What should be the folder is something else.
    #[error("{} is not a folder", folder.display())]
    NotAFolder {
        /// The path that is not a folder.
        folder: PathBuf,
    },
    /// The target is a folder.
    #[error("{} is a folder", path.display())]
    IsAFolder {
        /// The path asked for.
        path: PathBuf,
    },
    /// The target is a device, a pipe or a socket, which must not be replaced.
    #[error("{} is not a file that can be replaced", path.display())]
    NotAFile {
        /// The path asked for.
        path: PathBuf,
    },
    /// The folder may not be written, or its file system is read-only.
    #[error("folder {} cannot be written", folder.display())]
    NotWritable {
        /// The folder.
        folder: PathBuf,
        /// The underlying error.
        source: std::io::Error,
    },
    /// No room left: disk or quota full, or the file over the size limit.
    #[error("no room left in {}", folder.display())]
    NoRoom {
        /// The folder.
        folder: PathBuf,
        /// The underlying error.
        source: std::io::Error,
    },
    /// Anything else the system reported.
    #[error("{} was not written: {source}", path.display())]
    Other {
        /// The path asked for.
        path: PathBuf,
        /// The underlying error.
        source: std::io::Error,
    },
}
