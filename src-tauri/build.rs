//! Reads the app's configuration and capabilities for the shell.
fn main() {
    tauri_build::build();
}
