//! Just enough of JPEG (ITU-T T.81) to pass a file on without its metadata.

use super::Orientation;

/// A JPEG file without application segments and comments.
pub(super) struct Plain {
    pub bytes: Vec<u8>,
    pub width: u32,
    pub height: u32,
    pub components: u8,
    pub orientation: Orientation,
    /// Whether a PDF reader shows it as it is meant: 8 bits, Huffman coding,
    /// one component or three in the usual colour space.
    pub passes_through: bool,
}

/// Walks the segments up to the scan. `None` where the file is not built as it
/// should be; the decoder then has the word.
pub(super) fn strip(bytes: &[u8]) -> Option<Plain> {
    let mut out = vec![0xff, 0xd8];
    let mut at = 2;
    let mut frame: Option<(u32, u32, u8, bool)> = None;
    let mut orientation = Orientation::UPRIGHT;
    let mut plain_colours = true;
    loop {
        let marker = *bytes.get(at + 1).filter(|_| bytes.get(at) == Some(&0xff))?;
        if marker == 0xff {
            // Fill byte.
            at += 1;
            continue;
        }
        let length = usize::from(u16::from_be_bytes([
            *bytes.get(at + 2)?,
            *bytes.get(at + 3)?,
        ]));
        let end = at + 2 + length;
        let segment = bytes.get(at..end)?;
        let payload = segment.get(4..)?;
        match marker {
            0xda => {
                out.extend_from_slice(bytes.get(at..)?);
                let (width, height, components, usual) = frame?;
                return Some(Plain {
                    bytes: out,
                    width,
                    height,
                    components,
                    orientation,
                    passes_through: usual && plain_colours && matches!(components, 1 | 3),
                });
            }
            // Application segments: EXIF is read, the Adobe colour transform
            // kept (a reader needs it), the rest dropped.
            0xe1 => {
                if let Some(found) = payload.strip_prefix(b"Exif\0\0").and_then(exif_orientation) {
                    orientation = found;
                }
            }
            0xee if payload.starts_with(b"Adobe") => {
                plain_colours = payload.get(11) == Some(&1);
                out.extend_from_slice(segment);
            }
            0xe0 if payload.starts_with(b"JFIF\0") => out.extend_from_slice(segment),
            0xe0..=0xef | 0xfe => {}
            _ => {
                // SOF0 to SOF2: baseline, extended, progressive, all Huffman.
                if matches!(marker, 0xc0..=0xcf) && !matches!(marker, 0xc4 | 0xc8 | 0xcc) {
                    let [precision, h1, h2, w1, w2, components, ..] = *payload else {
                        return None;
                    };
                    let height = u32::from(u16::from_be_bytes([h1, h2]));
                    let width = u32::from(u16::from_be_bytes([w1, w2]));
                    let usual = precision == 8 && marker <= 0xc2 && width > 0 && height > 0;
                    frame = Some((width, height, components, usual));
                }
                out.extend_from_slice(segment);
            }
        }
        at = end;
    }
}

/// Value of the orientation tag in the first directory of a TIFF structure.
fn exif_orientation(tiff: &[u8]) -> Option<Orientation> {
    let little = match tiff.get(..4)? {
        b"II*\0" => true,
        b"MM\0*" => false,
        _ => return None,
    };
    let short = |at: usize| {
        let pair = [*tiff.get(at)?, *tiff.get(at + 1)?];
        Some(if little {
            u16::from_le_bytes(pair)
        } else {
            u16::from_be_bytes(pair)
        })
    };
    let long = |at: usize| {
        let (first, second) = (u32::from(short(at)?), u32::from(short(at + 2)?));
        Some(if little {
            second << 16 | first
        } else {
            first << 16 | second
        })
    };
    let directory = usize::try_from(long(4)?).ok()?;
    let count = usize::from(short(directory)?);
    (0..count)
        .map(|index| directory + 2 + 12 * index)
        .find_map(|entry| {
            (short(entry)? == 0x0112)
                .then(|| short(entry + 8).map(Orientation::from_exif))
                .flatten()
        })
}
