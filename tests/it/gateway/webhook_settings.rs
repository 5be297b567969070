//! A webhook channel whose settings say what cannot be does not open, and says why.

use super::served::Deployment;

const WHOLE: &str = "[[channel]]\nkind = \"webhook\"\nname = \"gateway\"\n\
                     secret_env = \"T_SECRET\"\nreply_url = \"http://127.0.0.1:9/send\"\n";

fn check(name: &str, channel: &str, said: &str) {
    let deployment = Deployment::new(&format!("s-{name}"), channel);
    let refused = deployment.with_secret("T_SECRET", "s").refused();
    assert!(refused.contains(said), "{said}: {refused}");
    assert_eq!(refused.lines().count(), 1, "{refused}");
}

#[test]
fn settings_that_cannot_be() {
    let with = |more: &str| format!("{WHOLE}{more}\n");
    let without = |key: &str| {
        let lines = WHOLE.lines().filter(|line| !line.starts_with(key));
        lines.collect::<Vec<_>>().join("\n")
    };
    check(
        "secret",
        &without("secret_env"),
        "neither secret_env nor secret_file",
    );
    check("url", &without("reply_url"), "reply_url is missing");
    let instead = |key: &str, line: &str| format!("{}\n{line}\n", without(key));
    check(
        "unset",
        &instead("secret_env", "secret_env = \"T_UNSET\""),
        "the environment variable T_UNSET is not set",
    );
    check(
        "ftp",
        &instead("reply_url", "reply_url = \"ftp://x.invalid\""),
        "begins with neither",
    );
    check(
        "password",
        &instead("reply_url", "reply_url = \"http://a:b@x.invalid\""),
        "a password",
    );
    check(
        "name",
        &instead("name", "name = \"two words\""),
        "its name stands in its address",
    );
    check(
        "field",
        &with("fields = { sender = \"x\" }"),
        "there is no `sender`",
    );
    check(
        "empty",
        &with("reply_fields = { to = \"\" }"),
        "the name for `to` is empty",
    );
    check(
        "crossed",
        &with("reply_fields = { to = \"sms\", text = \"sms.text\" }"),
        "`sms.text` has no place beside the others",
    );
    check(
        "header",
        &with("signature_header = \"two words\""),
        "no name of a header",
    );
    check(
        "both",
        &with("signature_header = \"X-S\"\nsecret_header = \"X-T\""),
        "only one of them",
    );
    check(
        "stamp",
        &with("timestamp_header = \"X-T\""),
        "signature_header is missing",
    );
    check(
        "window",
        &with("signature_header = \"X-S\"\ntimestamp_header = \"X-T\"\nreplay_seconds = 0"),
        "nothing arrives within 0 seconds",
    );
}

#[test]
fn an_empty_secret_proves_nothing() {
    let channel = WHOLE.replace("secret_env = \"T_SECRET\"", "secret_file = \"secret\"");
    let deployment = Deployment::new("s-empty-secret", &channel);
    std::fs::write(deployment.folder.path("secret"), "\n").expect("a file");
    assert!(deployment.refused().contains("its secret is empty"));
}
