//! A display list as PDF bytes.
//!
//! printpdf writes the page streams and fonts; what it leaves open (nested
//! bookmarks, language, identifiers, version) is completed by [`finish`] on the
//! document structure before it is saved. Same pages and same [`Meta`] give the
//! same bytes: nothing here asks for the time or for chance.

mod finish;
mod font;
mod paint;

use printpdf::{PdfDocument, PdfPage, PdfSaveOptions, Pt, Rect};

use super::{
    document::{Document, Meta},
    error::ReportError,
    fonts::FaceSet,
    layout::{display::Pages, lay_out},
    words::Words,
};
use font::Fonts;
use paint::Pictures;

/// Lays a document out and returns it as PDF bytes.
///
/// # Errors
/// [`ReportError`] when the build's fonts are damaged or the PDF library fails;
/// no content makes this fail.
pub fn to_pdf(document: &Document, words: &Words) -> Result<Vec<u8>, ReportError> {
    let pages = lay_out(document, words)?;
    paint_pages(&pages, &document.meta)
}

/// Pages as PDF bytes.
///
/// # Errors
/// See [`to_pdf`].
pub fn paint_pages(pages: &Pages, meta: &Meta) -> Result<Vec<u8>, ReportError> {
    let faces = FaceSet::shared()?;
    let fonts = Fonts::used_in(pages, faces)?;
    let mut pictures = Pictures::default();
    let mut pdf = PdfDocument::new("");
    fonts.register(&mut pdf.resources.fonts);
    for page in &pages.pages {
        let ops = paint::page(page, pages.height, &fonts, &mut pictures);
        // Set in points: through millimetres the paper grows by a hair, and a
        // reader rounds that up to a pixel.
        let paper = Rect::from_wh(Pt(pages.width), Pt(pages.height));
        let (media_box, trim_box, crop_box) = (paper.clone(), paper.clone(), paper);
        pdf.pages.push(PdfPage {
            media_box,
            trim_box,
            crop_box,
            ops,
        });
    }
    pictures.register(&mut pdf.resources.xobjects);

    let options = PdfSaveOptions {
        subset_fonts: false,
        image_optimization: None,
        ..Default::default()
    };
    let mut structure = pdf.to_lopdf_document(&options, &mut Vec::new());
    finish::finish(&mut structure, pages, meta, faces)?;
    let mut bytes = Vec::new();
    structure.save_to(&mut bytes)?;
    Ok(bytes)
}
