//! Figures of the running app: how soon it can be used, how much memory it holds.
//! Prints them and holds none of them to a number: `make app-figures`.

use std::{
    collections::BTreeMap,
    fs,
    time::{Duration, Instant},
};

use crate::{call::read, window::Window};

/// Opens counted for the start; the first, with nothing in the file cache, is one of them.
const OPENS: usize = 5;

#[tokio::test]
#[ignore = "measures; make app-figures runs it on the release build"]
async fn start_and_memory() {
    let mut starts = Vec::new();
    for _ in 0..OPENS {
        let window = Window::open().await;
        starts.push(window.usable_after().await);
        window.close().await;
    }
    println!("start to first screen, one after the other: {starts:.0?}");

    let window = Window::open().await;
    window.find("[data-test=new-visit]").await;
    tokio::time::sleep(Duration::from_secs(3)).await;
    told("at rest", &window);

    window.new_visit("Invented barn").await;
    for symptom in ["gurgling", "low-flow-lockout"] {
        window.answer(symptom, "yes").await;
    }
    read(&window, "pressure", "static_pressure", "12.5", "idle").await;
    window.tap("[data-step=causes]").await;
    window.find("[data-test=causes] [data-cause]").await;
    let path = window.desk().join("Barn report.pdf");
    window.tap("[data-step=report]").await;
    window.tap("[data-test=save-report]").await;
    window.answer_dialog("Save the report", &path);
    window.find("[data-test=saved]").await;
    told("in a full call, its report saved", &window);
    window.close().await;
}

/// Prints what each program of the app holds: resident, and its share of it when
/// pages that several programs hold are divided among them.
fn told(when: &str, window: &Window) {
    let held = memory(window.group());
    assert!(
        held.keys().any(|name| name.starts_with("returnline")),
        "the app is not among {held:?}"
    );
    println!("{when}:");
    let mut sum = 0.0;
    for (name, [resident, share]) in &held {
        println!("  {name:<18} {resident:>6.1} MB resident, {share:>6.1} MB its share");
        sum += share;
    }
    println!("  together {sum:.1} MB");
}

/// Megabytes of each program of a process group that draws or computes for the app:
/// the driver and its kind are left out.
fn memory(group: u32) -> BTreeMap<String, [f64; 2]> {
    let mut held: BTreeMap<String, [f64; 2]> = BTreeMap::new();
    for entry in fs::read_dir("/proc").expect("Linux").flatten() {
        let read = |file: &str| fs::read_to_string(entry.path().join(file)).unwrap_or_default();
        let stat = read("stat");
        let (Some(from), Some(to)) = (stat.find('('), stat.rfind(')')) else {
            continue;
        };
        let name = stat[from + 1..to].to_owned();
        let own_group = stat[to + 1..].split_whitespace().nth(2);
        if own_group != Some(&group.to_string()) || name.contains("Driver") {
            continue;
        }
        let megabytes = |text: &str, key: &str| {
            let line = text.lines().find(|line| line.starts_with(key));
            let number = line.and_then(|line| line.split_whitespace().nth(1));
            number.and_then(|n| n.parse().ok()).unwrap_or(0.0) * 1024.0 / 1e6
        };
        let sums = held.entry(name).or_default();
        sums[0] += megabytes(&read("status"), "VmRSS:");
        sums[1] += megabytes(&read("smaps_rollup"), "Pss:");
    }
    held
}

impl Window {
    /// From the moment the app was started to the moment its first screen stands.
    async fn usable_after(&self) -> Duration {
        let started: Instant = self.started();
        self.find_soon("[data-test=new-visit]").await;
        started.elapsed()
    }
}
