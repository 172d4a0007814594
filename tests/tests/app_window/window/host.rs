//! The processes behind a window: a display, a driver, a viewer, the app.

use std::{
    env,
    ffi::OsString,
    fs::File,
    io::{BufRead, BufReader},
    net::TcpListener,
    os::unix::process::CommandExt,
    path::{Path, PathBuf},
    process::{Child, Command, Stdio},
};

/// Names the app to drive, instead of the one in the target folder.
const APP: &str = "RETURNLINE_APP";

/// A process and everything it started, ended together when dropped.
///
/// The driver starts the app, which starts web processes: ending the driver
/// alone would leave the others holding the display.
pub(super) struct Group(Child);

impl Group {
    pub(super) fn start(command: &mut Command, log: &Path) -> Self {
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

    /// The number by which the system knows the whole group.
    pub(super) fn id(&self) -> u32 {
        self.0.id()
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
pub(super) fn viewer(folder: &Path, shown: &Path) -> OsString {
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
pub(super) fn screen(folder: &Path) -> (Group, String) {
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
pub(super) fn app() -> PathBuf {
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

pub(super) fn free_port() -> u16 {
    let listener = TcpListener::bind(("127.0.0.1", 0)).expect("a free port");
    listener.local_addr().expect("its number").port()
}
