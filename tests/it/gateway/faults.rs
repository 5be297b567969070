//! The program killed, and its disk full: what it acknowledged is answered, once.

use std::collections::{BTreeMap, BTreeSet};
use std::io::Write;
use std::process::Command;
use std::sync::{Arc, Mutex};
use std::time::{Duration, SystemTime, UNIX_EPOCH};

use super::fake_gateway::FakeGateway;
use super::served::{Deployment, Served, eventually};
use super::webhook::{SECRET, message, signature, signed, signing};

/// Another one each time; what it was is told where a test fails.
fn seed() -> u64 {
    let now = SystemTime::now().duration_since(UNIX_EPOCH);
    now.map_or(1, |now| now.as_nanos() as u64) | 1
}

/// Xorshift: good enough to be unforeseen.
fn random(state: &mut u64) -> u64 {
    *state ^= *state << 13;
    *state ^= *state >> 7;
    *state ^= *state << 17;
    *state
}

/// Hands messages in until the program is gone: which were acknowledged, and which was not.
async fn sender(
    client: reqwest::Client,
    url: String,
    name: u64,
    acknowledged: Arc<Mutex<Vec<u64>>>,
) -> Option<u64> {
    for n in 0.. {
        let person = name * 100_000 + n;
        let body = message(&person.to_string(), &phone(person), "20 L cloudy bleach 5%");
        let request = client
            .post(&url)
            .header("X-Signature", signature(&body))
            .body(body);
        match request.send().await {
            Ok(response) if response.status().is_success() => {
                acknowledged.lock().expect("the list").push(person);
            }
            Ok(_) => {}
            // It may be in the inbox and may not: the gateway brings it again.
            Err(_) => return Some(person),
        }
    }
    None
}

fn phone(person: u64) -> String {
    format!("+2557{person:08}")
}

#[tokio::test]
async fn killed_at_any_moment_it_answers_what_it_acknowledged_once() {
    const ROUNDS: u64 = 5;
    const SENDERS: u64 = 8;
    let seed = seed();
    let mut state = seed;
    let gateway = FakeGateway::start().await;
    let mut deployment =
        Deployment::new("w-killed", &signing(&gateway, "")).with_secret("T_SECRET", SECRET);
    let acknowledged = Arc::new(Mutex::new(Vec::new()));
    let mut again = Vec::new();
    for round in 0..ROUNDS {
        let served = deployment.serve().await;
        let senders: Vec<_> = (0..SENDERS)
            .map(|n| {
                tokio::spawn(sender(
                    reqwest::Client::new(),
                    served.url("/in/gateway"),
                    round * SENDERS + n,
                    Arc::clone(&acknowledged),
                ))
            })
            .collect();
        tokio::time::sleep(Duration::from_millis(20 + random(&mut state) % 400)).await;
        deployment = served.kill();
        for sender in senders {
            again.extend(sender.await.expect("it ran"));
        }
    }
    let served = deployment.serve().await;
    for person in again {
        let body = message(&person.to_string(), &phone(person), "20 L cloudy bleach 5%");
        let (status, _) = signed(&served, "/in/gateway", &body).await;
        assert_eq!(status, 200, "seed {seed}");
        acknowledged.lock().expect("the list").push(person);
    }
    let wanted: BTreeSet<String> = {
        let acknowledged = acknowledged.lock().expect("the list");
        acknowledged.iter().map(|person| phone(*person)).collect()
    };
    assert!(
        wanted.len() > 20,
        "too few to tell anything: {}",
        wanted.len()
    );
    let answers = || {
        let mut answers: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
        for taken in gateway.taken() {
            let ids = answers.entry(taken.json("/to")).or_default();
            ids.insert(taken.json("/id"));
        }
        answers
    };
    eventually("every acknowledged message is answered", async || {
        let answers = answers();
        wanted
            .iter()
            .all(|to| answers.contains_key(to))
            .then_some(())
    })
    .await;
    for (to, ids) in answers() {
        assert_eq!(ids.len(), 1, "{to} has two answers (seed {seed})");
    }
    // The ledger says the same as the two sides.
    let store = rusqlite::Connection::open(served.store()).expect("the store");
    let count = |sql: &str| -> i64 { store.query_row(sql, [], |row| row.get(0)).expect("a count") };
    let people = i64::try_from(wanted.len()).expect("a few");
    assert_eq!(count("SELECT count(*) FROM inbox"), people, "seed {seed}");
    assert_eq!(count("SELECT count(*) FROM inbox WHERE state <> 1"), 0);
    assert_eq!(count("SELECT count(*) FROM question"), people);
    assert_eq!(count("SELECT count(*) FROM outbox"), people);
}

/// A small disk over a folder, taken away at the end.
struct SmallDisk(std::path::PathBuf);

impl SmallDisk {
    /// Nothing where this user may not mount.
    fn over(folder: &std::path::Path) -> Option<Self> {
        let mounted = Command::new("mount")
            .args(["-t", "tmpfs", "-o", "size=1536k", "tmpfs"])
            .arg(folder)
            .stderr(std::process::Stdio::null())
            .status();
        mounted
            .is_ok_and(|status| status.success())
            .then(|| Self(folder.to_owned()))
    }
}

impl Drop for SmallDisk {
    fn drop(&mut self) {
        let _ = Command::new("umount").arg("-l").arg(&self.0).status();
    }
}

/// Fills the disk to the last octet.
fn fill(path: &std::path::Path) {
    let mut file = std::fs::File::create(path).expect("a file");
    for piece in [64 * 1024, 1024, 1] {
        let octets = vec![0_u8; piece];
        while file.write_all(&octets).is_ok() {}
    }
}

async fn hand_in(served: &Served, id: u64) -> u16 {
    let body = message(&id.to_string(), &phone(id), "20 L cloudy bleach 5%");
    signed(served, "/in/gateway", &body).await.0
}

#[tokio::test]
async fn a_full_disk_is_told_and_costs_nothing_that_was_taken() {
    let gateway = FakeGateway::start().await;
    let deployment =
        Deployment::new("w-full", &signing(&gateway, "")).with_secret("T_SECRET", SECRET);
    let folder = deployment.folder.path("");
    let config = std::fs::read(deployment.folder.path("matone.toml")).expect("a configuration");
    let Some(disk) = SmallDisk::over(&folder) else {
        let _ = writeln!(
            std::io::stderr(),
            "skipped: gateway::faults, the full disk, because this user may not mount a tmpfs"
        );
        return;
    };
    std::fs::write(folder.join("matone.toml"), config).expect("a configuration");
    let served = deployment.serve().await;
    assert_eq!(hand_in(&served, 1).await, 200);
    gateway.request(0).await;

    fill(&folder.join("filler"));
    // What still fits into the log's own room may be taken; then no more.
    let refused = eventually("a refusal", async || {
        static NEXT: std::sync::atomic::AtomicU64 = std::sync::atomic::AtomicU64::new(2);
        let id = NEXT.fetch_add(1, std::sync::atomic::Ordering::Relaxed);
        let status = hand_in(&served, id).await;
        (status != 200).then_some((id, status))
    })
    .await;
    assert_eq!(refused.1, 503);
    let (status, reason) = served.page("/healthz").await;
    assert_eq!(status, 503);
    assert!(reason.contains("full"), "{reason}");

    std::fs::remove_file(folder.join("filler")).expect("removed");
    assert_eq!(hand_in(&served, refused.0).await, 200);
    eventually("all are answered", async || {
        let people: BTreeSet<String> = gateway.taken().iter().map(|t| t.json("/to")).collect();
        (1..=refused.0)
            .all(|id| people.contains(&phone(id)))
            .then_some(())
    })
    .await;
    eventually("it is well again", async || {
        (served.page("/healthz").await.0 == 200).then_some(())
    })
    .await;
    drop(served);
    drop(disk);
}
