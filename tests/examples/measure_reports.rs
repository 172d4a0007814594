//! Measures reports and prints the figures; asserts none. Build it in release.
//!
//! First: a service report of about six pages, laid out and made into a PDF
//! file, the fastest and the middle of many runs. Then: twelve photos of twelve
//! megapixels read one by one, a report with all of them, and the most memory
//! that the process ever held (`VmHWM`).

use std::time::Instant;

use returnline_core::api::{Reader, Wording, photo_part, read_picture};
use returnline_core::report::document::PageSize;
use returnline_tests::pages::{call, issue, jpeg_bytes};
use returnline_tests::program::sample;

const RUNS: usize = 21;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let wording = Wording::default();
    // The photo is made first, in a process of its own, so that making it does
    // not count.
    let photo = std::env::args().nth(1);
    let Some(photo) = photo else {
        return Err("usage: measure_reports PHOTO.jpg (made if it is not there)".into());
    };
    if !std::path::Path::new(&photo).exists() {
        std::fs::write(&photo, jpeg_bytes(4000, 3000, 6))?;
        println!("{photo} made; run again to measure");
        return Ok(());
    }
    let name = "pressure-lost-over-summer";
    let call = call(&std::fs::read_to_string(sample(name))?, wording);
    call.answer();
    for reader in Reader::ALL {
        let issue = issue(PageSize::Letter, false);
        let mut times: Vec<f64> = Vec::new();
        let mut bytes = Vec::new();
        for _ in 0..RUNS {
            let start = Instant::now();
            bytes = call.report(reader, &issue)?;
            times.push(start.elapsed().as_secs_f64() * 1e3);
        }
        times.sort_by(f64::total_cmp);
        println!(
            "{}: {} bytes, {:.1} ms at best, {:.1} ms in the middle",
            reader.id(),
            bytes.len(),
            times[0],
            times[RUNS / 2]
        );
    }
    println!("memory so far: {}", high_water());
    let mut issue = issue(PageSize::Letter, false);
    let start = Instant::now();
    for number in 1..=12 {
        let picture = read_picture(&std::fs::read(&photo)?, wording)?;
        let caption = Some(format!("Photo {number}"));
        let part = photo_part(&picture.jpeg, "before", caption, None, wording)?;
        issue.photos.push(part);
    }
    println!(
        "twelve photos read in {:.0} ms",
        start.elapsed().as_secs_f64() * 1e3
    );
    let bytes = call.report(Reader::Technician, &issue)?;
    println!("report with twelve photos: {} bytes", bytes.len());
    println!("memory at most: {}", high_water());
    Ok(())
}

/// The most memory this process ever held, as Linux tells it.
fn high_water() -> String {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status.lines().find(|line| line.starts_with("VmHWM"));
    line.unwrap_or("not told by this system").to_owned()
}
