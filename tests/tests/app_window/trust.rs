//! What the window must refuse, and the way back from a damaged database.

use std::{fs, net::TcpListener};

use serde_json::{Value, json};

use crate::window::Window;

#[tokio::test]
async fn a_damaged_database_is_told_and_its_newest_backup_brings_the_visits_back() {
    let window = Window::open().await;
    window.new_visit("Invented dairy").await;
    window.tap("[data-step=causes]").await;
    window.tap("a[href='#/visits']").await;
    window.find("[data-visit]").await;
    // The first start with a visit makes the automatic backup.
    let window = Window::open_on(window.close().await).await;
    window.find("[data-visit]").await;
    let desk = window.close().await;
    let database = desk.path().join("data/returnline.db");
    let mut bytes = fs::read(&database).expect("the database");
    bytes.iter_mut().for_each(|byte| *byte = !*byte);
    fs::write(&database, &bytes).expect("damaged");
    // A sound log would bring every page back, which is as it should be.
    let log = desk.path().join("data/returnline.db-wal");
    if log.exists() {
        fs::write(&log, "no log either").expect("damaged");
    }

    let window = Window::open_on(desk).await;
    let told = window.text("[data-test=closed]").await;
    assert!(!told.is_empty());
    assert_eq!(window.count("[data-test=new-visit]").await, 0);
    let newest = window.text("[data-backup]").await;
    assert!(newest.contains("one visit"), "{newest:?}");
    window.tap("[data-backup] [data-test=restore]").await;
    window.tap("[data-test=restore-now]").await;
    let visits = window.text("[data-visit]").await;
    assert!(visits.contains("Invented dairy"), "{visits:?}");
    let desk = window.close().await;
    // What stood there is kept aside, byte for byte.
    let aside = fs::read_dir(desk.path().join("data")).expect("listed");
    let aside = aside
        .filter_map(Result::ok)
        .map(|entry| entry.path())
        .find(|path| path.to_string_lossy().contains(".aside-"))
        .expect("the damaged one is kept");
    assert_eq!(fs::read(aside).expect("read"), bytes);
}

/// Runs in the page: tries `attempt`, and says what came of it and which rule of
/// the content security policy was broken.
const TRY: &str = "
    const [name, argument, done] = arguments;
    const broken = [];
    document.addEventListener('securitypolicyviolation', (event) =>
        broken.push(event.effectiveDirective));
    const attempts = {
        fetch: (address) => fetch(address).then((answer) => 'answered ' + answer.status),
        socket: (address) => new Promise((yes, no) => {
            const socket = new WebSocket(address);
            socket.onopen = () => yes('answered');
            socket.onerror = () => no('closed');
        }),
        picture: (address) => new Promise((yes, no) => {
            const picture = new Image();
            picture.onload = () => yes('shown');
            picture.onerror = () => no('not shown');
            picture.src = address;
        }),
        inline: (text) => {
            const script = document.createElement('script');
            script.textContent = text;
            document.body.append(script);
            return new Promise((yes, no) =>
                setTimeout(() => window.ran ? yes('ran') : no('did not run'), 200));
        },
        frame: (address) => new Promise((yes, no) => {
            const frame = document.createElement('iframe');
            frame.src = address;
            document.body.append(frame);
            setTimeout(() => no(frame.contentDocument?.body?.innerText || 'empty'), 300);
        }),
        host: ({ command, input }) =>
            window.__TAURI_INTERNALS__.invoke(command, input).then((answer) => JSON.stringify(answer)),
    };
    const end = (came) => setTimeout(() => done({ came, broken }), 200);
    Promise.resolve()
        .then(() => attempts[name](argument))
        .then((answer) => end('allowed: ' + answer))
        .catch((error) => end('refused: ' + error));
";

async fn attempt(window: &Window, name: &str, argument: Value) -> (String, Vec<String>) {
    let outcome = window.run(TRY, vec![json!(name), argument]).await;
    let broken = outcome["broken"].as_array().cloned().unwrap_or_default();
    let broken = broken.iter().filter_map(Value::as_str).map(str::to_owned);
    (
        outcome["came"].as_str().unwrap_or_default().to_owned(),
        broken.collect(),
    )
}

#[tokio::test]
async fn the_page_can_reach_no_network_no_file_and_run_no_script_of_others() {
    let window = Window::open().await;
    window.find("[data-test=new-visit]").await;
    // A listener that would answer, so that a refusal is the policy's and not the
    // network's.
    let listener = TcpListener::bind(("127.0.0.1", 0)).expect("a free port");
    listener.set_nonblocking(true).expect("does not wait");
    let port = listener.local_addr().expect("its number").port();
    let secret = window.desk().join("outside.txt");
    fs::write(&secret, "outside").expect("written");
    let file = format!("file://{}", secret.display());

    for (name, argument, rule) in [
        ("fetch", format!("http://127.0.0.1:{port}/"), "connect-src"),
        ("socket", format!("ws://127.0.0.1:{port}/"), "connect-src"),
        (
            "picture",
            format!("http://127.0.0.1:{port}/a.png"),
            "img-src",
        ),
        ("fetch", file.clone(), "connect-src"),
        ("inline", "window.ran = true".to_owned(), "script-src-elem"),
    ] {
        let (came, broken) = attempt(&window, name, json!(argument)).await;
        assert!(came.starts_with("refused"), "{name} {argument}: {came}");
        let named = |one: &String| one.starts_with(rule.trim_end_matches("-elem"));
        assert!(broken.iter().any(named), "{name} {argument}: {broken:?}");
    }
    let (came, _) = attempt(&window, "frame", json!(file)).await;
    assert!(!came.contains("outside"), "{came}");
    // Nobody knocked.
    let knocked = listener.accept();
    assert!(knocked.is_err(), "{knocked:?}");

    // Commands that no capability grants.
    let path = secret.to_str().expect("a path in words");
    for (command, input) in [
        ("plugin:fs|read_text_file", json!({ "path": path })),
        ("plugin:fs|read_file", json!({ "path": path })),
        ("plugin:fs|read_dir", json!({ "path": "/" })),
        ("plugin:fs|remove", json!({ "path": path })),
        ("plugin:opener|open_path", json!({ "path": path })),
        (
            "plugin:opener|open_url",
            json!({ "url": "https://example.invalid" }),
        ),
        ("plugin:dialog|open", json!({ "options": {} })),
        ("plugin:shell|execute", json!({ "program": "id" })),
    ] {
        let input = json!({ "command": command, "input": input });
        let (came, _) = attempt(&window, "host", input).await;
        assert!(came.starts_with("refused"), "{command}: {came}");
        assert!(!came.contains("outside\""), "{command}: {came}");
    }
    assert!(secret.is_file());
    // The same way lets through what the app may ask.
    let input = json!({ "command": "about", "input": {} });
    let (came, _) = attempt(&window, "host", input).await;
    assert!(came.starts_with("allowed"), "{came}");
    window.close().await;
}

#[tokio::test]
async fn a_script_in_a_note_is_only_text() {
    let window = Window::open().await;
    let note = "<script>window.ran=1</script><img src=x onerror=\"window.ran=2\">";
    window.tap("[data-test=new-visit]").await;
    window.write("#field-site-name", note).await;
    window.write("#field-visit-complaint", note).await;
    window.tap("[data-step=causes]").await;
    window.tap("a[href='#/visits']").await;
    let shown = window.text("[data-visit]").await;
    assert_eq!(shown.matches(note).count(), 2, "{shown:?}");
    assert_eq!(
        window.count("[data-visit] img, [data-visit] script").await,
        0
    );
    let ran = "arguments[0](window.ran ?? null)";
    assert_eq!(window.run(ran, Vec::new()).await, Value::Null);
    window.close().await;
}
