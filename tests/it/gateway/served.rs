//! The real program, serving in a folder of its own.

use std::fs::File;
use std::net::TcpListener;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, ExitStatus, Stdio};
use std::time::{Duration, Instant};

/// What is not there by then does not come; nothing here takes a tenth of it.
const LIMIT: Duration = Duration::from_secs(60);
const LOOK_EVERY: Duration = Duration::from_millis(20);

/// A folder that is removed at the end.
pub(crate) struct Folder(PathBuf);

impl Folder {
    pub(crate) fn new(name: &str) -> Self {
        let path = std::env::temp_dir().join(format!("matone-it-{}-{name}", std::process::id()));
        let _ = std::fs::remove_dir_all(&path);
        std::fs::create_dir_all(&path).expect("a folder");
        Self(path)
    }

    pub(crate) fn path(&self, name: &str) -> PathBuf {
        self.0.join(name)
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        let _ = std::fs::remove_dir_all(&self.0);
    }
}

/// A port that nobody listens on.
pub(crate) fn free_port() -> u16 {
    let listener = TcpListener::bind("127.0.0.1:0").expect("a port");
    listener.local_addr().expect("its address").port()
}

/// A configuration to serve.
pub(crate) struct Deployment {
    pub(crate) folder: Folder,
    port: u16,
    secrets: Vec<(&'static str, &'static str)>,
    log_level: &'static str,
}

impl Deployment {
    /// One in a folder of its own, with these channels.
    pub(crate) fn new(name: &str, channels: &str) -> Self {
        let folder = Folder::new(name);
        let port = free_port();
        let config = format!("[http]\nlisten = \"127.0.0.1:{port}\"\n\n{channels}");
        std::fs::write(folder.path("matone.toml"), config).expect("a configuration");
        Self {
            folder,
            port,
            secrets: Vec::new(),
            log_level: "matone=debug",
        }
    }

    /// With a secret in the environment.
    pub(crate) fn with_secret(mut self, variable: &'static str, value: &'static str) -> Self {
        self.secrets.push((variable, value));
        self
    }

    /// Logging all that it can.
    pub(crate) fn telling_all(mut self) -> Self {
        self.log_level = "trace";
        self
    }

    fn command(&self) -> Command {
        let mut command = Command::new(env!("CARGO_BIN_EXE_matone"));
        command
            .args(["serve", "--config"])
            .arg(self.folder.path("matone.toml"))
            .env("MATONE_LOG", self.log_level)
            .envs(self.secrets.iter().copied())
            .stdin(Stdio::null());
        command
    }

    /// Starts where nothing should start: what it says.
    pub(crate) fn refused(&self) -> String {
        let mut child = self
            .command()
            .stdout(Stdio::null())
            .stderr(Stdio::piped())
            .spawn()
            .expect("the program starts");
        let began = Instant::now();
        while child.try_wait().expect("a child").is_none() {
            if began.elapsed() > LIMIT {
                let _ = child.kill();
                panic!("it serves what it should refuse");
            }
            std::thread::sleep(LOOK_EVERY);
        }
        let output = child.wait_with_output().expect("its output");
        assert_eq!(output.status.code(), Some(1));
        String::from_utf8(output.stderr).expect("UTF-8")
    }

    /// Starts, and waits until it listens.
    pub(crate) async fn serve(self) -> Served {
        let log = File::options()
            .create(true)
            .append(true)
            .open(self.folder.path("log"))
            .expect("a log");
        let errors = log.try_clone().expect("a log");
        let child = self
            .command()
            .stdout(log)
            .stderr(errors)
            .spawn()
            .expect("the program starts");
        let served = Served {
            child,
            deployment: Some(self),
        };
        eventually("it listens", async || {
            let health = reqwest::get(served.url("/healthz")).await;
            health.is_ok().then_some(())
        })
        .await;
        served
    }
}

/// The program while it serves; killed at the end.
pub(crate) struct Served {
    child: Child,
    deployment: Option<Deployment>,
}

impl Served {
    fn deployment(&self) -> &Deployment {
        self.deployment.as_ref().expect("a deployment")
    }

    pub(crate) fn address(&self) -> (&'static str, u16) {
        ("127.0.0.1", self.deployment().port)
    }

    pub(crate) fn url(&self, path: &str) -> String {
        format!("http://127.0.0.1:{}{path}", self.deployment().port)
    }

    pub(crate) fn store(&self) -> PathBuf {
        self.deployment().folder.path("matone.db")
    }

    /// What it has logged.
    pub(crate) fn log(&self) -> String {
        std::fs::read_to_string(self.deployment().folder.path("log")).expect("a log")
    }

    /// A page of its own.
    pub(crate) async fn page(&self, path: &str) -> (u16, String) {
        let response = reqwest::get(self.url(path)).await.expect("an answer");
        let status = response.status().as_u16();
        (status, response.text().await.expect("a page"))
    }

    /// Waits until its figures have this line.
    pub(crate) async fn figure(&self, line: &str) {
        eventually(line, async || {
            let (_, page) = self.page("/metrics").await;
            page.lines().any(|shown| shown == line).then_some(())
        })
        .await;
    }

    /// The states of the replies in its store, in their order.
    pub(crate) fn replies(&self) -> Vec<i64> {
        let store = rusqlite::Connection::open(self.store()).expect("the store");
        let mut rows = store
            .prepare("SELECT state FROM outbox ORDER BY id")
            .expect("a statement");
        let states = rows.query_map([], |row| row.get(0)).expect("rows");
        states.map(|state| state.expect("a state")).collect()
    }

    /// Whether neither its log nor its figures tell any of these.
    pub(crate) async fn tells_none_of(&self, secrets: &[&str]) {
        let told = self.log() + &self.page("/metrics").await.1;
        for secret in secrets {
            assert!(!told.contains(secret), "`{secret}` in {told}");
        }
    }

    /// Asks it to end, and waits for that.
    pub(crate) async fn end(mut self) -> (ExitStatus, Deployment) {
        let id = self.child.id().to_string();
        let told = Command::new("kill").args(["-TERM", &id]).status();
        assert!(told.expect("kill").success());
        let began = Instant::now();
        let child = &mut self.child;
        let status = eventually("it ends", async || child.try_wait().expect("a child")).await;
        assert!(
            began.elapsed() < Duration::from_secs(10),
            "it takes too long to end"
        );
        (status, self.deployment.take().expect("a deployment"))
    }

    /// Kills it.
    pub(crate) fn kill(mut self) -> Deployment {
        self.child.kill().expect("killed");
        self.child.wait().expect("ended");
        self.deployment.take().expect("a deployment")
    }
}

impl Drop for Served {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

/// Looks again and again until there is something.
pub(crate) async fn eventually<T>(what: &str, mut look: impl AsyncFnMut() -> Option<T>) -> T {
    let began = Instant::now();
    loop {
        if let Some(seen) = look().await {
            return seen;
        }
        assert!(began.elapsed() < LIMIT, "never: {what}");
        tokio::time::sleep(LOOK_EVERY).await;
    }
}

/// Keeps everybody else from writing into a store.
pub(crate) struct Locked(rusqlite::Connection);

impl Locked {
    pub(crate) fn store(path: &Path) -> Self {
        let connection = rusqlite::Connection::open(path).expect("the store");
        connection
            .busy_timeout(Duration::from_secs(5))
            .and_then(|()| connection.execute_batch("BEGIN IMMEDIATE"))
            .expect("a lock");
        Self(connection)
    }

    pub(crate) fn unlock(self) {
        self.0.execute_batch("ROLLBACK").expect("unlocked");
    }
}
