//! What a person does to the page with a finger and the keys.

use std::{
    path::Path,
    sync::atomic::Ordering,
    time::{Duration, Instant},
};

use fantoccini::error::CmdError;

use super::{PATIENCE, Window};

impl Window {
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
}
