//! Writes sample documents into `out/`, to be looked at.

use std::{error::Error, fs, path::Path, time::Instant};

use returnline_core::report::{document::PageSize, file::write_whole, to_pdf};
use returnline_tests::pages;

fn main() -> Result<(), Box<dyn Error>> {
    let folder = Path::new("out");
    fs::create_dir_all(folder)?;
    let photos = pages::photos();
    let documents = [
        ("usual-letter", pages::usual(PageSize::Letter, &photos)),
        ("usual-a4", pages::usual(PageSize::A4, &[])),
        ("hard-letter", pages::hard(PageSize::Letter)),
        ("empty-a4", pages::empty(PageSize::A4)),
    ];
    for (name, document) in documents {
        let start = Instant::now();
        let bytes = to_pdf(&document, &pages::words())?;
        let time = start.elapsed();
        let path = folder.join(format!("{name}.pdf"));
        write_whole(&path, &bytes)?;
        println!(
            "{} {} kB, made in {:.0?}",
            path.display(),
            bytes.len() / 1000,
            time
        );
    }
    Ok(())
}
