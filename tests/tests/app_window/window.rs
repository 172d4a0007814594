//! One app window on a display, a port and a data folder of its own.

use std::{
    env,
    fs::File,
    io::{BufRead, BufReader},
    net::TcpListener,
    os::unix::process::CommandExt,
    path::{Path, PathBuf},
    process::{Child, Command, Stdio},
    sync::atomic::{AtomicU32, Ordering},
    time::{Duration, Instant},
};

use fantoccini::{Client, ClientBuilder, Locator, elements::Element, error::CmdError};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Map, Value, json};
use tempfile::TempDir;

/// Names the app to drive, instead of the one in the target folder.
const APP: &str = "RETURNLINE_APP";
/// A phone held upright.
const SIZE: (u32, u32) = (390, 844);
/// Longest wait for anything a person would wait for.
const PATIENCE: Duration = Duration::from_secs(90);

/// A running app that ends with its test.
pub struct Window {
    client: Client,
    data: TempDir,
    display: String,
    started: Instant,
    taps: AtomicU32,
    // In this order: the driver and its app go before the display they draw on.
    driver: Group,
    _screen: Group,
}

impl Window {
    /// Opens the app on an empty data folder.
    pub async fn open() -> Self {
        let data = tempfile::tempdir().expect("a folder for the app's data");
        Self::open_on(data).await
    }

    /// Opens the app on what an earlier window left.
    pub async fn open_on(data: TempDir) -> Self {
        let app = app();
        let shown = data.path().join("shown");
        let bin = viewer(data.path(), &shown);
        let (screen, display) = screen(data.path());
        let port = free_port();
        let driver = Group::start(
            Command::new("WebKitWebDriver")
                .arg(format!("--port={port}"))
                .arg("--host=127.0.0.1")
                .env("DISPLAY", &display)
                .env("TAURI_WEBVIEW_AUTOMATION", "true")
                .env("RETURNLINE_DATA", data.path().join("data"))
                .env("XDG_DATA_HOME", data.path().join("xdg"))
                .env("XDG_CACHE_HOME", data.path().join("cache"))
                .env("XDG_CONFIG_HOME", data.path().join("config"))
                .env("PATH", bin)
                .env_remove("WAYLAND_DISPLAY"),
            &data.path().join("driver.log"),
        );

        let mut capabilities = Map::new();
        capabilities.insert(
            "webkitgtk:browserOptions".to_owned(),
            json!({ "binary": app, "args": [] }),
        );
        let mut builder = ClientBuilder::new(HttpConnector::new());
        builder.capabilities(capabilities);
        let address = format!("http://127.0.0.1:{port}");
        let begun = Instant::now();
        let (client, started) = loop {
            // The driver starts the app when it takes the session.
            let started = Instant::now();
            match builder.connect(&address).await {
                Ok(client) => break (client, started),
                Err(error) if begun.elapsed() > PATIENCE => {
                    let log = std::fs::read_to_string(data.path().join("driver.log"));
                    panic!(
                        "no session with the app: {error}\n{}",
                        log.unwrap_or_default()
                    );
                }
                Err(_) => tokio::time::sleep(Duration::from_millis(50)).await,
            }
        };
        let window = Self {
            client,
            data,
            display,
            started,
            taps: AtomicU32::new(0),
            driver,
            _screen: screen,
        };
        window
            .client
            .set_window_size(SIZE.0, SIZE.1)
            .await
            .expect("the window takes the size of a phone");
        window
    }

    /// Closes the window and hands back its data folder.
    pub async fn close(self) -> TempDir {
        let Self {
            client,
            data,
            driver: _driver,
            _screen,
            ..
        } = self;
        client.close().await.expect("the window closes");
        data
    }

    /// Kills the app and its driver without a chance to save anything.
    pub fn kill(self) -> TempDir {
        self.data
    }

    /// When the app was started.
    pub fn started(&self) -> Instant {
        self.started
    }

    /// The process group of the driver, the app and its web processes.
    pub fn group(&self) -> u32 {
        self.driver.0.id()
    }

    /// Waits for what `css` names, asking often enough to measure by.
    pub async fn find_soon(&self, css: &str) {
        let wait = self.client.wait().at_most(PATIENCE);
        let often = wait.every(Duration::from_millis(10));
        let found = often.for_element(Locator::Css(css)).await;
        found.expect("the screen appears");
    }

    /// A folder a person could save to.
    pub fn desk(&self) -> &Path {
        self.data.path()
    }

    /// Waits for what `css` names.
    pub async fn find(&self, css: &str) -> Element {
        match self
            .client
            .wait()
            .at_most(PATIENCE)
            .for_element(Locator::Css(css))
            .await
        {
            Ok(element) => element,
            Err(error) => {
                let page = self.client.source().await.unwrap_or_default();
                panic!("{css} is not there: {error}\n{page}");
            }
        }
    }

    /// The visible text of what `css` names.
    pub async fn text(&self, css: &str) -> String {
        self.find(css).await.text().await.expect("its text")
    }

    /// How many elements there are that `css` names.
    pub async fn count(&self, css: &str) -> usize {
        let all = self.client.find_all(Locator::Css(css)).await;
        all.expect("the page answers").len()
    }

    /// Waits until there are so many elements that `css` names.
    pub async fn wait_for_count(&self, css: &str, count: usize) {
        let started = Instant::now();
        while self.count(css).await != count {
            assert!(
                started.elapsed() < PATIENCE,
                "{css} does not become {count} in number"
            );
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
    }

    /// Waits until this stands in the field that `css` names.
    pub async fn wait_for_value(&self, css: &str, value: &str) {
        let started = Instant::now();
        while self.value(css).await != value {
            assert!(
                started.elapsed() < PATIENCE,
                "{css} does not become {value:?}"
            );
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
    }

    /// An attribute of each element that `css` names.
    pub async fn attributes(&self, css: &str, name: &str) -> Vec<String> {
        let all = self.client.find_all(Locator::Css(css)).await;
        let mut values = Vec::new();
        for element in all.expect("the page answers") {
            values.extend(element.attr(name).await.expect("the page answers"));
        }
        values
    }

    /// What the system's viewer was asked to show, once it was.
    pub async fn shown(&self) -> String {
        let file = self.data.path().join("shown");
        let started = Instant::now();
        loop {
            match std::fs::read_to_string(&file) {
                Ok(text) if !text.trim().is_empty() => return text.trim().to_owned(),
                _ => assert!(started.elapsed() < PATIENCE, "nothing was shown"),
            }
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
    }

    /// An attribute of what `css` names.
    pub async fn attribute(&self, css: &str, name: &str) -> String {
        let value = self
            .find(css)
            .await
            .attr(name)
            .await
            .expect("the page answers");
        value.unwrap_or_default()
    }

    /// Taps of a finger so far, those into fields included.
    pub fn taps(&self) -> u32 {
        self.taps.load(Ordering::Relaxed)
    }

    /// Taps what `css` names.
    pub async fn tap(&self, css: &str) {
        self.taps.fetch_add(1, Ordering::Relaxed);
        let started = Instant::now();
        loop {
            // The page may be redrawn between finding and tapping.
            match self.try_tap(css).await {
                Ok(()) => return,
                Err(error) if started.elapsed() > PATIENCE => {
                    panic!("{css} cannot be tapped: {error}")
                }
                Err(_) => tokio::time::sleep(Duration::from_millis(50)).await,
            }
        }
    }

    async fn try_tap(&self, css: &str) -> Result<(), CmdError> {
        let element = self.find(css).await;
        // As a thumb would scroll it: clear of the bars at the top and bottom.
        let to_middle = "arguments[0].scrollIntoView({ block: 'center', behavior: 'instant' })";
        let target = serde_json::to_value(&element)?;
        self.client.execute(to_middle, vec![target]).await?;
        element.click().await
    }

    /// Types into what `css` names, in place of what stands there, and leaves it.
    pub async fn write(&self, css: &str, text: &str) {
        self.taps.fetch_add(1, Ordering::Relaxed);
        let field = self.find(css).await;
        field.clear().await.expect("the field empties");
        field.send_keys(text).await.expect("the field takes keys");
        let target = serde_json::to_value(&field).expect("a reference to the field");
        self.client
            .execute("arguments[0].blur()", vec![target])
            .await
            .expect("the field is left");
    }

    /// Types into the field that has the keys already: no tap.
    pub async fn type_into_focused(&self, id: &str, text: &str) {
        let started = Instant::now();
        loop {
            // Without a window manager the page is never in front, so `:focus` says nothing.
            let field = self
                .client
                .active_element()
                .await
                .expect("the page answers");
            if field.attr("id").await.expect("the page answers").as_deref() == Some(id) {
                field.send_keys(text).await.expect("the field takes keys");
                return;
            }
            assert!(started.elapsed() < PATIENCE, "{id} does not get the keys");
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
    }

    /// Chooses a file from the disk in the field that `css` names.
    pub async fn pick_file(&self, css: &str, path: &Path) {
        self.taps.fetch_add(1, Ordering::Relaxed);
        let path = path.to_str().expect("a path the driver can send");
        let field = self.find(css).await;
        field.send_keys(path).await.expect("the file is chosen");
    }

    /// Chooses the option with this value.
    pub async fn choose(&self, css: &str, value: &str) {
        let list = self.find(css).await;
        list.select_by_value(value)
            .await
            .expect("the option is there");
    }

    /// What stands in the field that `css` names.
    pub async fn value(&self, css: &str) -> String {
        let value = self.find(css).await.prop("value").await.expect("its value");
        value.unwrap_or_default()
    }

    /// Runs a script in the page and waits until it calls its last argument.
    pub async fn run(&self, script: &str, arguments: Vec<Value>) -> Value {
        let outcome = self.client.execute_async(script, arguments).await;
        outcome.expect("the page answers")
    }

    /// Begins a visit at a site of this name.
    pub async fn new_visit(&self, site: &str) {
        self.tap("[data-test=new-visit]").await;
        self.write("#field-site-name", site).await;
    }

    /// Gives an answer to a finding and waits until it shows as given.
    pub async fn answer(&self, finding: &str, value: &str) {
        self.tap(&format!(
            "[data-answer={finding}] label:has([value={value}])"
        ))
        .await;
        self.find(&format!("[data-answer={finding}] [value={value}]:checked"))
            .await;
    }

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

/// A process and everything it started, ended together when dropped.
///
/// The driver starts the app, which starts web processes: ending the driver
/// alone would leave the others holding the display.
struct Group(Child);

impl Group {
    fn start(command: &mut Command, log: &Path) -> Self {
        let program = command.get_program().to_owned();
        let log = File::create(log).expect("a file for the log");
        let child = command
            .process_group(0)
            .stdin(Stdio::null())
            .stderr(log)
            .stdout(Stdio::piped())
            .spawn();
        match child {
            Ok(child) => Self(child),
            Err(error) => panic!("{} does not start: {error}", program.display()),
        }
    }
}

impl Drop for Group {
    fn drop(&mut self) {
        let group = format!("-{}", self.0.id());
        let _ = Command::new("kill").args(["-KILL", "--", &group]).status();
        let _ = self.0.wait();
    }
}

/// Stands in for the system's viewer: notes what it was asked to show. Answers
/// the search path on which it comes first.
fn viewer(folder: &Path, shown: &Path) -> std::ffi::OsString {
    let bin = folder.join("bin");
    std::fs::create_dir_all(&bin).expect("a folder for the viewer");
    let script = bin.join("xdg-open");
    let text = format!("#!/bin/sh\necho \"$1\" > '{}'\n", shown.display());
    std::fs::write(&script, text).expect("the viewer is written");
    let may_run = std::os::unix::fs::PermissionsExt::from_mode(0o755);
    std::fs::set_permissions(&script, may_run).expect("the viewer may run");
    let mut path = bin.into_os_string();
    path.push(":");
    path.push(env::var_os("PATH").unwrap_or_default());
    path
}

/// Starts a display of its own and says its name.
fn screen(folder: &Path) -> (Group, String) {
    let mut screen = Group::start(
        Command::new("Xvfb").args([
            "-displayfd",
            "1",
            "-screen",
            "0",
            "1400x1000x24",
            "-nolisten",
            "tcp",
        ]),
        &folder.join("screen.log"),
    );
    let mut number = String::new();
    if let Some(out) = screen.0.stdout.take() {
        BufReader::new(out)
            .read_line(&mut number)
            .expect("Xvfb says its number");
    }
    let number = number.trim();
    assert!(!number.is_empty(), "Xvfb did not open a display");
    let display = format!(":{number}");
    (screen, display)
}

/// The app to drive: named by `RETURNLINE_APP`, or the debug build of this workspace.
fn app() -> PathBuf {
    let path = match env::var_os(APP) {
        Some(path) => PathBuf::from(path),
        None => {
            let target = env::var_os("CARGO_TARGET_DIR").map_or_else(
                || Path::new(env!("CARGO_MANIFEST_DIR")).join("../target"),
                PathBuf::from,
            );
            target.join("debug/returnline-app")
        }
    };
    assert!(
        path.is_file(),
        "there is no app at {}: build it first with \
         `cargo build -p returnline-app --features tauri/custom-protocol`, or name it in {APP}",
        path.display()
    );
    path
}

fn free_port() -> u16 {
    let listener = TcpListener::bind(("127.0.0.1", 0)).expect("a free port");
    listener.local_addr().expect("its number").port()
}
