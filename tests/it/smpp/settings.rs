//! Settings that cannot be.

use matone::channel::smpp::Smpp;
use matone::channel::{Channel, ChannelError};
use matone::config::SmppSettings;

use crate::folder::Folder;

/// A file with a password.
struct Password(Folder);

impl Password {
    fn of(password: &str) -> Self {
        let folder = Folder::new("smpp-settings");
        folder.write("password", password);
        Self(folder)
    }

    fn setting(&self) -> String {
        format!("password_file = {:?}", self.0.path("password"))
    }
}

fn open(lines: &[&str]) -> Result<Smpp, ChannelError> {
    let mut text = "name = \"carrier\"\nsystem_id = \"matone\"\n".to_owned();
    let given = |key: &str| lines.iter().any(|line| line.starts_with(key));
    for (key, line) in [
        ("host", "host = \"localhost\""),
        ("source", "source = \"4321\""),
    ] {
        if !given(&format!("{key} ")) {
            text.push_str(line);
            text.push('\n');
        }
    }
    text.push_str(&lines.join("\n"));
    let settings: SmppSettings = toml::from_str(&text).expect("settings");
    Smpp::open(&settings)
}

#[test]
fn what_is_left_out_has_a_default() {
    let password = Password::of("a password of more than eight characters\n");
    let smpp = open(&[&password.setting()]).expect("a link");
    assert_eq!(smpp.name().as_str(), "carrier");
    assert_eq!(smpp.places(), 64);
}

#[test]
fn what_cannot_be_is_told() {
    let password = Password::of("secret");
    for (line, told) in [
        ("window = 0", "window"),
        ("window = 1000000", "window"),
        ("source = \"\"", "source"),
        ("source = \"123456789012345678901\"", "source"),
        ("system_type = \"é\"", "system_type"),
        ("enquire_link_seconds = 0", "enquire_link_seconds"),
        ("country_code = \"+255\"", "country_code"),
        ("host = \"\"", "host"),
        ("host = \"localhost:port\"", "host"),
        ("tls = true\ntls_ca_file = \"/nowhere.pem\"", "tls_ca_file"),
    ] {
        match open(&[&password.setting(), line]) {
            Err(error @ ChannelError::Setting { .. }) => {
                let text = error.to_string();
                assert!(text.contains(told) && text.contains("carrier"), "{text}");
            }
            Err(other) => panic!("{line}: {other}"),
            Ok(_) => panic!("{line} is taken"),
        }
    }
}

#[test]
fn hosts_are_names_and_addresses_with_and_without_a_port() {
    let password = Password::of("secret");
    for host in [
        "localhost",
        "localhost:2775",
        "127.0.0.1",
        "127.0.0.1:2775",
        "::1",
        "[::1]",
        "[::1]:2775",
    ] {
        let line = format!("host = {host:?}");
        assert!(open(&[&password.setting(), &line]).is_ok(), "{host}");
    }
}

#[test]
fn a_password_is_needed_and_told_of_when_it_is_not_there() {
    assert!(matches!(open(&[]), Err(ChannelError::NoSecret { .. })));
    let nowhere = "password_file = \"/nowhere/at/all\"";
    assert!(matches!(
        open(&[nowhere]),
        Err(ChannelError::SecretFile { .. })
    ));
    let unset = "password_env = \"MATONE_TEST_NEVER_SET\"";
    assert!(matches!(
        open(&[unset]),
        Err(ChannelError::NoVariable { .. })
    ));
    let odd = Password::of("sécret");
    let refused = open(&[&odd.setting()]);
    assert!(refused.is_err_and(|error| !error.to_string().contains("sécret")));
}
