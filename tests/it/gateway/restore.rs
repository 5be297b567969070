//! The store copied while the program runs, and the copy put in the place of a store.

use std::process::Command;

use super::fake_gateway::FakeGateway;
use super::served::Deployment;
use super::webhook::{SECRET, hand_in, signing};

const PERSON: &str = "+255700000001";

#[tokio::test]
async fn a_copy_made_while_it_runs_is_a_store_to_go_on_with() {
    let gateway = FakeGateway::start().await;
    let channel = signing(&gateway, "");
    let served = Deployment::new("w-backup", &channel)
        .with_secret("T_SECRET", SECRET)
        .serve()
        .await;
    hand_in(&served, "m-1", PERSON, "remember my bleach 4%").await;
    gateway.request(0).await;
    let folder = served.store().parent().expect("a folder").to_owned();
    let copy = folder.join("copy.db");
    // Twice: the second takes the place of the first.
    for _ in 0..2 {
        let copied = Command::new(env!("CARGO_BIN_EXE_matone"))
            .args(["backup", "--config"])
            .arg(folder.join("matone.toml"))
            .arg(&copy)
            .output()
            .expect("it runs");
        assert!(copied.status.success(), "{copied:?}");
        assert!(
            copied.stdout.is_empty() && copied.stderr.is_empty(),
            "{copied:?}"
        );
    }
    // What comes after the copy is not in it.
    hand_in(&served, "m-2", PERSON, "remember my bleach 6%").await;
    gateway.request(1).await;

    let restored = Deployment::new("w-restored", &channel).with_secret("T_SECRET", SECRET);
    std::fs::copy(&copy, restored.folder.path("matone.db")).expect("copied");
    std::fs::copy(
        folder.join("matone.key"),
        restored.folder.path("matone.key"),
    )
    .expect("copied");
    let (status, _) = served.end().await;
    assert!(status.success());
    let served = restored.serve().await;
    hand_in(&served, "m-3", PERSON, "20 L").await;
    let reply = gateway.request(2).await;
    assert!(reply.json("/text").contains("bleach 4%"), "{reply:?}");
    // A delivery that was answered before the copy is not answered again.
    hand_in(&served, "m-1", PERSON, "remember my bleach 4%").await;
    served
        .figure("matone_messages_set_aside_total{channel=\"gateway\",reason=\"duplicate\"} 1")
        .await;
}

#[test]
fn a_copy_of_nothing_says_so() {
    let deployment = Deployment::new("w-nothing", "");
    let output = Command::new(env!("CARGO_BIN_EXE_matone"))
        .args(["backup", "--config"])
        .arg(deployment.folder.path("matone.toml"))
        .arg(deployment.folder.path("copy.db"))
        .output()
        .expect("it runs");
    assert_eq!(output.status.code(), Some(1));
    let said = String::from_utf8(output.stderr).expect("UTF-8");
    assert!(said.contains("matone.db"), "{said}");
    assert_eq!(said.lines().count(), 1, "{said}");
}

/// Each sample says what a configuration can say.
#[test]
fn the_samples_can_be_read() {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/deploy");
    let mut read = 0;
    for file in std::fs::read_dir(folder).expect("the folder") {
        let path = file.expect("a file").path();
        if path
            .extension()
            .is_some_and(|extension| extension == "toml")
        {
            let config =
                matone::config::Config::read(&path).unwrap_or_else(|error| panic!("{error}"));
            assert_eq!(config.contradictions(), Vec::<String>::new());
            assert_eq!(config.channel.len(), 1, "{}", path.display());
            read += 1;
        }
    }
    assert_eq!(read, 4);
}
