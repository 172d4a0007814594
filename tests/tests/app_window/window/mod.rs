//! One app window on a display, a port and a data folder of its own.

mod dialogs;
mod hand;
mod host;

use std::{
    path::Path,
    process::Command,
    sync::atomic::AtomicU32,
    time::{Duration, Instant},
};

use fantoccini::{Client, ClientBuilder, Locator, elements::Element};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Map, Value, json};
use tempfile::TempDir;

use host::Group;

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
        let app = host::app();
        let shown = data.path().join("shown");
        let bin = host::viewer(data.path(), &shown);
        let (screen, display) = host::screen(data.path());
        let port = host::free_port();
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
        self.driver.id()
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
}
