//! Lines of every sort come back in order, however many there are.

use super::{answers, near, number, start};
use returnline_core::calc::MAX_LINE;
use serde_json::Value;
use std::io::{BufRead, BufReader, Read, Write};

const GOOD: &str =
    r#"{"pipe":{"standard":"ips_pe","size":"1","sdr":"11"},"length":{"value":LENGTH,"unit":"ft"}}"#;

/// A line of the mixture, and the code of its error if it is a bad one.
fn mixed(i: usize) -> (String, Option<&'static str>) {
    match i % 9 {
        0 => (GOOD.replace("LENGTH", "-5"), Some("out-of-range")),
        1 => (GOOD.replace("LENGTH", "1e999"), Some("not-json-line")),
        2 => (GOOD.replace("LENGTH", "\"NaN\""), Some("wrong-type")),
        3 => (GOOD.replace("\"length\"", "\"lenght\""), Some("unknown")),
        4 => (GOOD.replace("\"ft\"", "\"furlong\""), Some("not-accepted")),
        5 => ("[[[[[".repeat(50), Some("not-json-line")),
        6 => (
            GOOD.replace('{', "{\"units\":\"si\",\"units\":\"us\","),
            Some("duplicate-field"),
        ),
        _ => (GOOD.replace("LENGTH", &i.to_string()), None),
    }
}

/// Most memory that a run of so many lines took, KiB; the answers are checked
/// on the way.
#[cfg(target_os = "linux")]
fn peak_of(lines: usize) -> u64 {
    let mut child = start(&["calc", "pipe-size"]);
    let mut stdin = child.stdin.take().expect("piped");
    let writer = std::thread::spawn(move || {
        for i in 0..lines {
            // Blank lines have no answer.
            let blank = if i % 50 == 0 { "\n  \n" } else { "" };
            writeln!(stdin, "{}{blank}", mixed(i).0.replace("LENGTH", "7")).expect("written");
        }
        stdin
    });
    let mut out = BufReader::new(child.stdout.take().expect("piped"));
    for i in 0..lines {
        let mut line = String::new();
        out.read_line(&mut line).expect("an answer");
        let answer: Value = serde_json::from_str(&line).expect("JSON");
        match mixed(i).1 {
            Some(code) => {
                let error = &answer["error"];
                assert_eq!(error["code"], code, "line {i}: {answer}");
                assert!(error["remedy"].as_str().is_some_and(|text| text.len() > 10));
            }
            None => {
                // 1 in SDR 11: inside 1.315 in less 2/11 (ASTM D3035): 1.0759 in, by hand
                // 0.047 23 gal a foot.
                let gallons = number(&answer, "volume", "gal");
                near(gallons / i as f64, 0.047_23, 2e-5);
            }
        }
    }
    let stdin = writer.join().expect("no panic");
    // Everything is answered and the program still waits: its peak can be read.
    let status = std::fs::read_to_string(format!("/proc/{}/status", child.id())).expect("Linux");
    let peak = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
    let peak = peak.and_then(|text| text.trim().strip_suffix(" kB"));
    let peak = peak
        .and_then(|text| text.trim().parse().ok())
        .expect("a number");
    drop(stdin);
    let mut rest = String::new();
    out.read_to_string(&mut rest).expect("read");
    assert!(rest.is_empty(), "more answers than lines: {rest}");
    assert!(child.wait().expect("it ends").success());
    peak
}

/// Ten thousand lines take no more memory than a hundred (4 MiB allowed for the
/// allocator).
#[cfg(target_os = "linux")]
#[test]
fn ten_thousand_mixed_lines_come_back_in_order_in_constant_memory() {
    let (few, many) = (peak_of(100), peak_of(10_000));
    assert!(many <= few + 4 * 1024, "{few} KiB, then {many} KiB");
}

#[test]
fn a_line_too_long_costs_only_its_own_answer() {
    let good = GOOD.replace("LENGTH", "100");
    let mut input = format!("{good}\n{}\n{good}\n", "x".repeat(3 * MAX_LINE)).into_bytes();
    input.extend(b"\xff\xfe\x00 not text\n");
    input.extend(good.as_bytes());
    let found = answers("pipe-size", input);
    assert_eq!(found.len(), 5);
    assert_eq!(found[1]["error"]["code"], "line-too-long");
    assert_eq!(found[3]["error"]["code"], "not-json-line");
    assert!(
        found[0] == found[2] && found[2] == found[4],
        "the last line needs no line feed"
    );
    assert!(answers("pipe-size", Vec::new()).is_empty());
}

#[test]
fn a_reader_that_goes_away_is_no_error() {
    let mut child = start(&["calc", "pipe-size"]);
    drop(child.stdout.take());
    let mut stdin = child.stdin.take().expect("piped");
    let line = GOOD.replace("LENGTH", "100");
    for _ in 0..2_000 {
        if writeln!(stdin, "{line}").is_err() {
            break;
        }
    }
    drop(stdin);
    assert!(child.wait().expect("it ends").success());
}
