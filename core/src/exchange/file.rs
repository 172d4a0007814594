//! The file: JSON lines, packed, with a sum at its end.

use super::{
    ExchangeError as Error, FORMAT, Kind, LARGEST, LONGEST_LINE, LONGEST_PAST, MOST_RECORDS,
    MOST_REVISIONS, OLDEST, Revision, VERSION,
};
use flate2::Compression;
use flate2::bufread::GzDecoder;
use flate2::write::GzEncoder;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use sha2::{Digest as _, Sha256};
use std::collections::BTreeSet;
use std::io::{BufRead, BufReader, ErrorKind, Read, Write};
use uuid::Uuid;

/// First line.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Header {
    format: String,
    version: u64,
    /// When the file was made, UTC.
    pub made_at: String,
    /// The device that made it.
    pub device: Uuid,
    /// Whether names, addresses and free words are inside.
    pub personal: bool,
}

impl Header {
    /// A header of this version.
    #[must_use]
    pub fn new(made_at: String, device: Uuid, personal: bool) -> Self {
        Self {
            format: FORMAT.to_owned(),
            version: VERSION,
            made_at,
            device,
            personal,
        }
    }
}

/// A record with every state of it that nobody has decided against.
#[derive(Clone, PartialEq, Debug)]
pub struct Record {
    /// Its kind.
    pub kind: Kind,
    /// Its identifier.
    pub id: Uuid,
    /// Its states; never empty.
    pub revisions: Vec<Revision>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct WireRecord {
    kind: Kind,
    id: Uuid,
    states: Vec<WireRevision>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct WireRevision {
    id: super::Digest,
    #[serde(default, skip_serializing_if = "BTreeSet::is_empty")]
    past: BTreeSet<super::Digest>,
    made_at: String,
    device: Uuid,
    content: Value,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Last {
    end: End,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct End {
    records: u64,
    sha256: String,
}

/// Writes a file, record by record.
pub struct Writer<W: Write> {
    out: GzEncoder<W>,
    sum: Sha256,
    records: u64,
}

impl<W: Write> Writer<W> {
    /// Begins a file.
    ///
    /// # Errors
    /// If writing fails.
    pub fn new(out: W, header: &Header) -> Result<Self, Error> {
        let mut writer = Self {
            out: GzEncoder::new(out, Compression::default()),
            sum: Sha256::new(),
            records: 0,
        };
        writer.line(header)?;
        Ok(writer)
    }

    /// Adds a record.
    ///
    /// # Errors
    /// If writing fails.
    pub fn add(&mut self, record: &Record) -> Result<(), Error> {
        let states = record.revisions.iter().map(|revision| {
            Ok(WireRevision {
                id: revision.id,
                past: revision.past.clone(),
                made_at: revision.made_at.clone(),
                device: revision.device,
                content: serde_json::from_str(&revision.content)?,
            })
        });
        let states: Result<Vec<_>, serde_json::Error> = states.collect();
        self.line(&WireRecord {
            kind: record.kind,
            id: record.id,
            states: states.map_err(std::io::Error::from)?,
        })?;
        self.records += 1;
        Ok(())
    }

    /// Ends the file and gives back what it was written to.
    ///
    /// # Errors
    /// If writing fails.
    pub fn finish(mut self) -> Result<W, Error> {
        let end = End {
            records: self.records,
            sha256: hex(self.sum.clone()),
        };
        self.line(&Last { end })?;
        Ok(self.out.finish()?)
    }

    fn line(&mut self, line: &impl Serialize) -> Result<(), Error> {
        let mut text = serde_json::to_vec(line).map_err(std::io::Error::from)?;
        text.push(b'\n');
        if text.len() > LONGEST_LINE {
            return Err(Error::TooLarge("a record"));
        }
        self.sum.update(&text);
        self.out.write_all(&text)?;
        Ok(())
    }
}

fn hex(sum: Sha256) -> String {
    sum.finalize()
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect()
}

/// Reads a file, record by record. Nothing of it counts before [`Source::next`]
/// has given `None`: only then is the end there and the sum right.
pub struct Source<R: BufRead> {
    lines: BufReader<GzDecoder<R>>,
    /// First line.
    pub header: Header,
    sum: Sha256,
    records: u64,
    bytes: u64,
    line: u64,
    done: bool,
}

impl<R: BufRead> Source<R> {
    /// Opens a file.
    ///
    /// # Errors
    /// If it is not of this format, or of a newer version.
    pub fn open(from: R) -> Result<Self, Error> {
        let mut lines = BufReader::new(GzDecoder::new(from));
        let mut first = Vec::new();
        let limit = 64 * 1024;
        let read = (&mut lines).take(limit).read_until(b'\n', &mut first);
        match read {
            Ok(_) => {}
            Err(error) if error.kind() == ErrorKind::UnexpectedEof && !first.is_empty() => {
                return Err(Error::Cut);
            }
            Err(error) if is_content(&error) => return Err(Error::NotExchange),
            Err(error) => return Err(error.into()),
        }
        let envelope: Value = serde_json::from_slice(&first).map_err(|_| Error::NotExchange)?;
        if envelope.get("format").and_then(Value::as_str) != Some(FORMAT) {
            return Err(Error::NotExchange);
        }
        match envelope.get("version").and_then(Value::as_u64) {
            Some(found) if found > VERSION => return Err(Error::Newer { found }),
            Some(OLDEST..=VERSION) => {}
            _ => return Err(Error::NotExchange),
        }
        let header = serde_json::from_value(envelope).map_err(|error| Error::Malformed {
            line: 1,
            detail: error.to_string(),
        })?;
        Ok(Self {
            lines,
            header,
            sum: Sha256::new_with_prefix(&first),
            records: 0,
            bytes: first.len() as u64,
            line: 1,
            done: false,
        })
    }

    /// The next record; `None` at the end, when everything was as written.
    ///
    /// # Errors
    /// [`ExchangeError`](Error); then nothing of the file may be used.
    #[allow(clippy::should_implement_trait)] // an iterator would let errors be skipped
    pub fn next(&mut self) -> Result<Option<Record>, Error> {
        if self.done {
            return Ok(None);
        }
        let mut text = Vec::new();
        let limit = LONGEST_LINE as u64 + 1;
        let read = (&mut self.lines).take(limit).read_until(b'\n', &mut text);
        match read {
            Ok(_) if text.len() > LONGEST_LINE => return Err(Error::TooLarge("a line")),
            Ok(0) => return Err(Error::Cut),
            Ok(_) if text.last() != Some(&b'\n') => return Err(Error::Cut),
            Ok(_) => {}
            Err(error) if error.kind() == ErrorKind::UnexpectedEof => return Err(Error::Cut),
            Err(error) if is_content(&error) => return Err(Error::Altered(error.to_string())),
            Err(error) => return Err(error.into()),
        }
        self.line += 1;
        self.bytes += text.len() as u64;
        if self.bytes > LARGEST {
            return Err(Error::TooLarge("all lines together"));
        }
        if text.starts_with(b"{\"end\":") {
            self.end(&text)?;
            return Ok(None);
        }
        self.records += 1;
        if self.records > MOST_RECORDS {
            return Err(Error::TooLarge("the number of records"));
        }
        self.sum.update(&text);
        self.record(&text).map(Some)
    }

    /// The line reached, the header being 1.
    pub fn line(&self) -> u64 {
        self.line
    }

    fn malformed(&self, detail: &dyn ToString) -> Error {
        Error::Malformed {
            line: self.line,
            detail: detail.to_string(),
        }
    }

    fn record(&self, text: &[u8]) -> Result<Record, Error> {
        let wire: WireRecord =
            serde_json::from_slice(text).map_err(|error| self.malformed(&error))?;
        if wire.states.is_empty() || wire.states.len() > MOST_REVISIONS {
            return Err(self.malformed(&"no state, or too many"));
        }
        let mut revisions = Vec::new();
        for state in wire.states {
            if state.past.len() > LONGEST_PAST {
                return Err(self.malformed(&"too many earlier states"));
            }
            let made_at = chrono::DateTime::parse_from_rfc3339(&state.made_at);
            if made_at.is_err() {
                return Err(self.malformed(&"no time"));
            }
            let content = state.content.to_string();
            let revision = Revision::new(
                wire.kind,
                wire.id,
                state.past,
                content,
                state.made_at,
                state.device,
            );
            if revision.id != state.id {
                return Err(self.malformed(&"a state is not what its name says"));
            }
            revisions.push(revision);
        }
        Ok(Record {
            kind: wire.kind,
            id: wire.id,
            revisions,
        })
    }

    fn end(&mut self, text: &[u8]) -> Result<(), Error> {
        let Last { end } = serde_json::from_slice(text).map_err(|error| self.malformed(&error))?;
        if end.sha256 != hex(self.sum.clone()) || end.records != self.records {
            return Err(Error::Altered("its sum is another".to_owned()));
        }
        let mut rest = [0; 1];
        match self.lines.read(&mut rest) {
            Ok(0) => {}
            Ok(_) => return Err(Error::Altered("something follows its end".to_owned())),
            Err(error) if error.kind() == ErrorKind::UnexpectedEof => return Err(Error::Cut),
            Err(error) if is_content(&error) => return Err(Error::Altered(error.to_string())),
            Err(error) => return Err(error.into()),
        }
        // What follows the packed part is no part of the file either.
        let packed = self.lines.get_mut().get_mut();
        if !packed.fill_buf()?.is_empty() {
            return Err(Error::Altered("something follows its end".to_owned()));
        }
        self.done = true;
        Ok(())
    }
}

/// Whether an error comes from the bytes, not from the disk.
fn is_content(error: &std::io::Error) -> bool {
    matches!(
        error.kind(),
        ErrorKind::InvalidInput | ErrorKind::InvalidData | ErrorKind::UnexpectedEof
    )
}
