//! The real `matone serve` with one SMPP link, in a folder of its own.

use std::fs::{self, File};
use std::io::{Read, Write};
use std::net::{SocketAddr, TcpListener, TcpStream};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use crate::folder::Folder;

/// Nothing here takes so long; a test that fails says so after it.
pub(crate) const PATIENCE: Duration = Duration::from_secs(30);

pub(crate) struct Program {
    child: Child,
    folder: Folder,
    http: SocketAddr,
}

/// English with another text for HELP: what is to be seen on the wire.
pub(crate) struct Words(Folder);

impl Words {
    pub(crate) fn with_help(help: &str) -> Self {
        let folder = Folder::new("smpp-words");
        let english = Path::new(env!("CARGO_MANIFEST_DIR")).join("locales/en");
        for file in ["lexicon.toml", "plain.txt", "reply.ftl", "checks.toml"] {
            let text = fs::read_to_string(english.join(file)).expect("a file of the language");
            let own: Vec<String> = text
                .lines()
                .map(|line| match line.strip_prefix("help = ") {
                    Some(_) if file == "reply.ftl" => format!("help = {help}"),
                    Some(_) | None => line.to_owned(),
                })
                .collect();
            folder.write(&format!("en/{file}"), &own.join("\n"));
        }
        Self(folder)
    }

    /// For the configuration.
    pub(crate) fn settings(&self) -> String {
        format!("[answers]\nlocales = {:?}", self.0.as_ref())
    }
}

/// Waits until something is so.
pub(crate) fn until<T>(what: &str, mut look: impl FnMut() -> Option<T>) -> T {
    let began = Instant::now();
    loop {
        if let Some(found) = look() {
            return found;
        }
        assert!(began.elapsed() < PATIENCE, "waited in vain for {what}");
        std::thread::sleep(Duration::from_millis(20));
    }
}

impl Program {
    /// Starts it with a link to that port; `channel` and `rest` are more TOML.
    pub(crate) fn start(smsc_port: u16, channel: &str, rest: &str) -> Self {
        let folder = Folder::new("smpp");
        // Free now; nobody else on this machine is given it so soon.
        let http = TcpListener::bind("127.0.0.1:0")
            .and_then(|listener| listener.local_addr())
            .expect("a free port");
        let config = format!(
            "{rest}\n[http]\nlisten = \"{http}\"\n\n[[channel]]\nkind = \"smpp\"\nname = \"carrier\"\n\
             host = \"localhost:{smsc_port}\"\nsystem_id = \"matone\"\n\
             password_env = \"MATONE_TEST_SMPP_PASSWORD\"\nsource = \"4321\"\n{channel}\n"
        );
        folder.write("matone.toml", &config);
        let child = Self::spawn(&folder);
        Self {
            child,
            folder,
            http,
        }
    }

    fn spawn(folder: &Folder) -> Child {
        let log = File::options()
            .create(true)
            .append(true)
            .open(folder.path("log"))
            .expect("a log");
        Command::new(env!("CARGO_BIN_EXE_matone"))
            .args(["serve", "--config"])
            .arg(folder.path("matone.toml"))
            .env("MATONE_TEST_SMPP_PASSWORD", "longer than eight")
            // At every level there is: no number and no text may stand there.
            .env("MATONE_LOG", "trace")
            .stdin(Stdio::null())
            .stdout(log.try_clone().expect("the log"))
            .stderr(log)
            .spawn()
            .expect("the program starts")
    }

    /// Starts it again in the same folder.
    pub(crate) fn start_again(&mut self) {
        self.child = Self::spawn(&self.folder);
    }

    pub(crate) fn store(&self) -> rusqlite::Connection {
        let store = rusqlite::Connection::open(self.folder.path("matone.db")).expect("the store");
        store.busy_timeout(PATIENCE).expect("it waits its turn");
        store
    }

    pub(crate) fn metric(&self, line_start: &str) -> Option<f64> {
        let page = self.page("/metrics")?;
        let line = page.lines().find(|line| line.starts_with(line_start))?;
        line.rsplit(' ').next()?.parse().ok()
    }

    pub(crate) fn wait_for_metric(&self, line_start: &str, value: f64) {
        until(&format!("{line_start} {value}"), || {
            (self.metric(line_start) == Some(value)).then_some(())
        });
    }

    fn page(&self, path: &str) -> Option<String> {
        let mut stream = TcpStream::connect(self.http).ok()?;
        stream.set_read_timeout(Some(PATIENCE)).ok()?;
        write!(
            stream,
            "GET {path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"
        )
        .ok()?;
        let mut page = String::new();
        stream.read_to_string(&mut page).ok()?;
        Some(page)
    }

    /// Tells it to end, as a service manager does.
    pub(crate) fn terminate(&self) {
        let told = Command::new("kill")
            .args(["-TERM", &self.child.id().to_string()])
            .status();
        assert!(told.is_ok_and(|status| status.success()), "it is told");
    }

    /// Waits until it has ended, which it must within ten seconds of being told.
    pub(crate) fn wait(&mut self) {
        let began = Instant::now();
        let status = until("the end of the program", || {
            assert!(began.elapsed() < Duration::from_secs(10), "it does not end");
            self.child.try_wait().expect("its state")
        });
        assert!(status.success(), "it ended with {status}");
    }

    pub(crate) fn log(&self) -> String {
        fs::read_to_string(self.folder.path("log")).unwrap_or_default()
    }
}

impl Drop for Program {
    fn drop(&mut self) {
        // It may have ended.
        let _ = self.child.kill();
        let _ = self.child.wait();
        let log = self.log();
        if std::thread::panicking() {
            let own = log.lines().filter(|line| line.contains("matone"));
            for line in own {
                let _ = writeln!(std::io::stderr(), "{line}");
            }
        } else {
            for secret in ["2557000", "bleach", "longer than eight"] {
                assert!(!log.contains(secret), "the log holds {secret:?}");
            }
        }
    }
}
