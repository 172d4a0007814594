//! The system's own dialogs, which no driver of web pages reaches.

use std::{
    path::Path,
    process::Command,
    time::{Duration, Instant},
};

use super::{PATIENCE, Window};

impl Window {
    /// Answers the system's own dialog whose title contains `title` by typing `path`.
    pub fn answer_dialog(&self, title: &str, path: &Path) {
        self.enter_dialog(title);
        let path = path.to_str().expect("a path xdotool can type");
        self.xdotool(&["key", "ctrl+a"]);
        self.xdotool(&["type", "--delay", "5", path]);
        self.xdotool(&["key", "Return"]);
    }

    /// Answers the system's own dialog that opens a file: it lists files, and asks
    /// for a path only when told to.
    pub fn choose_in_dialog(&self, title: &str, path: &Path) {
        self.enter_dialog(title);
        let path = path.to_str().expect("a path xdotool can type");
        self.xdotool(&["key", "ctrl+l"]);
        std::thread::sleep(Duration::from_millis(500));
        self.xdotool(&["key", "ctrl+a"]);
        self.xdotool(&["type", "--delay", "5", path]);
        std::thread::sleep(Duration::from_millis(500));
        self.xdotool(&["key", "Return"]);
    }

    /// Leaves the system's own dialog whose title contains `title` without an answer.
    pub fn cancel_dialog(&self, title: &str) {
        self.enter_dialog(title);
        self.xdotool(&["key", "Escape"]);
    }

    fn enter_dialog(&self, title: &str) {
        let started = Instant::now();
        let dialog = loop {
            let found = self.xdotool(&["search", "--onlyvisible", "--name", title]);
            if let Some(id) = found.lines().next_back() {
                break id.to_owned();
            }
            assert!(
                started.elapsed() < PATIENCE,
                "no dialog named {title:?} opened"
            );
            std::thread::sleep(Duration::from_millis(100));
        };
        // There is no window manager to give it the keys. It takes them only
        // once it is drawn.
        self.xdotool(&["windowfocus", "--sync", &dialog]);
        std::thread::sleep(Duration::from_millis(500));
    }

    fn xdotool(&self, arguments: &[&str]) -> String {
        let output = Command::new("xdotool")
            .args(arguments)
            .env("DISPLAY", &self.display)
            .output()
            .expect("xdotool runs");
        String::from_utf8_lossy(&output.stdout).into_owned()
    }
}
