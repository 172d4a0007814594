//! What the PDF library leaves open, set on the document structure.

use chrono::{DateTime, FixedOffset, Offset};
use lopdf::{Dictionary, Document, Object, ObjectId, StringFormat, dictionary, text_string};

use crate::report::{
    document::Meta,
    error::ReportError,
    fonts::{Face, FaceSet},
    layout::display::{Bookmark, Pages},
};

/// Name of the program in the file's properties.
const CREATOR: &str = "Returnline";

pub(super) fn finish(
    pdf: &mut Document,
    pages: &Pages,
    meta: &Meta,
    faces: &FaceSet,
) -> Result<(), ReportError> {
    let page_ids: Vec<ObjectId> = pdf.get_pages().into_values().collect();
    for id in &page_ids {
        tidy_page(pdf, *id)?;
    }
    describe_fonts(pdf, faces);
    let outline = outline(pdf, pages, &page_ids);
    let catalog = pdf.catalog_mut()?;
    catalog.set("Lang", text_string(&meta.language));
    catalog.set(
        "ViewerPreferences",
        dictionary! { "DisplayDocTitle" => true },
    );
    if let Some(outline) = outline {
        catalog.set("Outlines", outline);
        catalog.set("PageMode", Object::Name(b"UseOutlines".to_vec()));
    }
    // The library's own properties claim conformance to a print standard.
    let properties = properties(meta);
    if let Ok(id) = pdf.trailer.get(b"Info").and_then(Object::as_reference) {
        pdf.objects.insert(id, Object::Dictionary(properties));
    }
    pdf.version = "1.7".to_owned();
    pdf.compress();
    identify(pdf, meta)?;
    Ok(())
}

fn tidy_page(pdf: &mut Document, id: ObjectId) -> Result<(), ReportError> {
    let page = pdf.get_dictionary_mut(id)?;
    page.remove(b"TrimBox");
    page.remove(b"CropBox");
    if page
        .get(b"Annots")
        .and_then(Object::as_array)
        .is_ok_and(Vec::is_empty)
    {
        page.remove(b"Annots");
    }
    Ok(())
}

/// Capital height and slant, for readers that have to replace a font.
fn describe_fonts(pdf: &mut Document, faces: &FaceSet) {
    for object in pdf.objects.values_mut() {
        visit(object, &mut |dictionary| {
            let Ok(name) = dictionary.get(b"FontName").and_then(Object::as_name) else {
                return;
            };
            let name = String::from_utf8_lossy(name).into_owned();
            let face = Face::ALL.into_iter().find(|face| {
                name.split_once('+')
                    .is_some_and(|(_, name)| name == face.post_script_name())
            });
            if let Some(face) = face {
                let metrics = faces.get(face).metrics();
                dictionary.set("CapHeight", i64::from(metrics.cap_height));
                dictionary.set("ItalicAngle", i64::from(metrics.italic_angle));
                // Symbolic, since codes are glyph numbers; italic where it leans.
                let italic = if metrics.italic_angle == 0 { 0 } else { 1 << 6 };
                dictionary.set("Flags", (1 << 2) | italic);
            }
        });
    }
}

fn visit(object: &mut Object, act: &mut impl FnMut(&mut Dictionary)) {
    match object {
        Object::Array(items) => items.iter_mut().for_each(|item| visit(item, act)),
        Object::Dictionary(dictionary) => {
            act(dictionary);
            for (_, value) in dictionary.iter_mut() {
                visit(value, act);
            }
        }
        _ => {}
    }
}

fn properties(meta: &Meta) -> Dictionary {
    let date = Object::String(stamp(meta.date).into_bytes(), StringFormat::Literal);
    dictionary! {
        "Title" => text_string(&meta.title),
        "Author" => text_string(&meta.author),
        "Subject" => text_string(&meta.subject),
        "Creator" => text_string(CREATOR),
        "Producer" => text_string(CREATOR),
        "CreationDate" => date.clone(),
        "ModDate" => date,
    }
}

/// A moment as ISO 32000-1, 7.9.4 writes it.
fn stamp(date: DateTime<FixedOffset>) -> String {
    let minutes = date.offset().fix().local_minus_utc() / 60;
    let sign = if minutes < 0 { '-' } else { '+' };
    let (hours, rest) = (minutes.abs() / 60, minutes.abs() % 60);
    format!(
        "{}{sign}{hours:02}'{rest:02}'",
        date.format("D:%Y%m%d%H%M%S")
    )
}

/// One entry while the outline is built: its object and its place in the tree.
struct Entry {
    id: ObjectId,
    parent: Option<usize>,
    children: Vec<usize>,
}

/// The outline as a tree. A part before the first section becomes a section.
fn outline(pdf: &mut Document, pages: &Pages, page_ids: &[ObjectId]) -> Option<ObjectId> {
    let marks: Vec<(&Bookmark, ObjectId)> = pages
        .bookmarks
        .iter()
        .filter_map(|mark| page_ids.get(mark.page).map(|page| (mark, *page)))
        .collect();
    if marks.is_empty() {
        return None;
    }
    let root = pdf.new_object_id();
    let mut entries: Vec<Entry> = Vec::new();
    let mut open: Vec<(usize, usize)> = Vec::new();
    let mut top: Vec<usize> = Vec::new();
    for (index, (mark, _)) in marks.iter().enumerate() {
        open.retain(|(depth, _)| *depth < mark.depth);
        let parent = open.last().map(|(_, entry)| *entry);
        match parent.and_then(|parent| entries.get_mut(parent)) {
            Some(parent) => parent.children.push(index),
            None => top.push(index),
        }
        entries.push(Entry {
            id: pdf.new_object_id(),
            parent,
            children: Vec::new(),
        });
        open.push((mark.depth, index));
    }
    let id_of = |index: &usize| entries.get(*index).map(|entry| entry.id);
    for (index, entry) in entries.iter().enumerate() {
        let Some((mark, page)) = marks.get(index) else {
            continue;
        };
        let siblings = match entry.parent.and_then(|parent| entries.get(parent)) {
            Some(parent) => &parent.children,
            None => &top,
        };
        let place = siblings
            .iter()
            .position(|sibling| *sibling == index)
            .unwrap_or(0);
        let parent = entry.parent.as_ref().and_then(id_of).unwrap_or(root);
        let from_bottom = (pages.height - mark.y + 8.0).clamp(0.0, pages.height);
        let mut item = dictionary! {
            "Title" => text_string(&mark.title),
            "Parent" => parent,
            "Dest" => vec![
                Object::Reference(*page),
                Object::Name(b"XYZ".to_vec()),
                Object::Null,
                Object::Real(from_bottom.round()),
                Object::Null,
            ],
        };
        let mut point = |key: &str, index: Option<&usize>| {
            if let Some(id) = index.and_then(id_of) {
                item.set(key, id);
            }
        };
        point(
            "Prev",
            place.checked_sub(1).and_then(|before| siblings.get(before)),
        );
        point("Next", siblings.get(place + 1));
        point("First", entry.children.first());
        point("Last", entry.children.last());
        if !entry.children.is_empty() {
            item.set("Count", i64::try_from(entry.children.len()).unwrap_or(0));
        }
        pdf.objects.insert(entry.id, Object::Dictionary(item));
    }
    let mut list = dictionary! {
        "Type" => "Outlines",
        "Count" => i64::try_from(entries.len()).unwrap_or(0),
    };
    if let (Some(first), Some(last)) = (top.first().and_then(id_of), top.last().and_then(id_of)) {
        list.set("First", first);
        list.set("Last", last);
    }
    pdf.objects.insert(root, Object::Dictionary(list));
    Some(root)
}

/// The file identifier: first half from the report's id, second from the
/// content, as ISO 32000-1, 14.4 asks for.
fn identify(pdf: &mut Document, meta: &Meta) -> Result<(), ReportError> {
    pdf.trailer.remove(b"ID");
    let mut content = Vec::new();
    pdf.save_to(&mut content)?;
    let half = |bytes: &[u8]| {
        let mut id = fold(bytes, 0).to_be_bytes().to_vec();
        id.extend(fold(bytes, 1).to_be_bytes());
        Object::String(id, StringFormat::Hexadecimal)
    };
    pdf.trailer
        .set("ID", vec![half(meta.id.as_bytes()), half(&content)]);
    Ok(())
}

/// FNV-1a, 64 bit (draft-eastlake-fnv), with a salt for a second, different
/// value. Enough to tell files apart; not meant to withstand forgery.
pub(super) fn fold(bytes: &[u8], salt: u8) -> u64 {
    let mut hash = 0xcbf2_9ce4_8422_2325_u64;
    for byte in std::iter::once(&salt).chain(bytes) {
        hash ^= u64::from(*byte);
        hash = hash.wrapping_mul(0x0100_0000_01b3);
    }
    hash
}
