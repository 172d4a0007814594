//! The real app window, driven from outside through WebDriver.
//!
//! Needs a built app, `Xvfb`, `WebKitWebDriver` and `xdotool`.

mod call;
mod figures;
mod together;
mod trust;
mod whole;
mod window;
mod work;

use window::Window;

#[tokio::test]
async fn the_window_opens_and_says_what_it_is() {
    let window = Window::open().await;
    window.find("[data-test=new-visit]").await;
    window.tap("a[href='#/settings']").await;
    let version = window.text("[data-test=version]").await;
    assert!(
        version.contains(env!("CARGO_PKG_VERSION")),
        "the window shows {version:?}"
    );
    window.close().await;
}
