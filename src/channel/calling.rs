//! Calling services over HTTP.
//!
//! In: addresses as operators write them, and what went wrong with a call.
//! Out: addresses to call; clients; reasons without an address, which may hold a secret.

use std::error::Error;
use std::net::IpAddr;

use reqwest::{Client, ClientBuilder, Url};

/// Reads an address; why it is none, to go behind the setting's name.
pub(super) fn address(written: &str) -> Result<Url, String> {
    let url = Url::parse(written).map_err(|error| format!("is no address: {error}"))?;
    if matches!(url.scheme(), "http" | "https") {
        Ok(url)
    } else {
        Err("begins with neither http:// nor https://".to_owned())
    }
}

/// Whether what is sent to an address can be read on the way.
pub(super) fn is_open_to_others(url: &Url) -> bool {
    url.scheme() == "http" && !is_loopback(url)
}

fn is_loopback(url: &Url) -> bool {
    let host = url.host_str().unwrap_or_default();
    let host = host.trim_start_matches('[').trim_end_matches(']');
    host == "localhost" || host.parse::<IpAddr>().is_ok_and(|ip| ip.is_loopback())
}

/// A client for an address. It follows nobody elsewhere: what is sent is for that address, and so
/// are the secrets that go with it.
pub(super) fn client(builder: ClientBuilder, url: &Url) -> Result<Client, String> {
    let builder = builder.redirect(reqwest::redirect::Policy::none());
    // A proxy of the machine's does not know the machine itself.
    let builder = if is_loopback(url) {
        builder.no_proxy()
    } else {
        builder
    };
    builder
        .build()
        .map_err(|error| format!("cannot be called: {}", error.without_url()))
}

/// What went wrong with a call to somebody, and the deepest cause of it. The error itself tells
/// the address; what it comes from does not.
pub(super) fn reason(whom: &str, error: &reqwest::Error) -> String {
    let what = if error.is_timeout() {
        "does not answer in time"
    } else if error.is_connect() {
        "cannot be reached"
    } else {
        "broke off"
    };
    let Some(mut cause) = error.source() else {
        return format!("{whom} {what}");
    };
    while let Some(deeper) = cause.source() {
        cause = deeper;
    }
    format!("{whom} {what}: {cause}")
}

#[cfg(test)]
mod tests {
    use super::{address, is_open_to_others};

    #[test]
    fn addresses() {
        for (written, open) in [
            ("http://127.0.0.1:9000/send", false),
            ("http://[::1]:9000", false),
            ("http://localhost", false),
            ("https://gateway.invalid/a?b=c", false),
            ("http://gateway.invalid/", true),
            ("http://10.0.0.7/", true),
        ] {
            let url = address(written).expect("an address");
            assert_eq!(is_open_to_others(&url), open, "{written}");
        }
        for wrong in [
            "",
            "gateway",
            "ftp://gateway.invalid",
            "http://",
            "mailto:a@b.invalid",
        ] {
            assert!(address(wrong).is_err(), "{wrong}");
        }
    }
}
