//! Who binds, and as what.
//!
//! Follows SMPP 3.4, section 4.1.5.

use rusmpp::types::AnyOctetString;
use rusmpp::{CommandId, Pdu as Body};
use secrecy::{ExposeSecret, SecretString};

const VERSION_3_4: u8 = 0x34;

/// Who binds.
#[derive(Debug, Clone)]
pub struct Credentials {
    /// Our name.
    pub system_id: String,
    /// Our password.
    pub password: SecretString,
    /// What kind of system we are, if the operator wants to know.
    pub system_type: String,
}

/// `bind_transceiver`. The library's own allows eight characters for a password, as the standard
/// does; operators give out longer ones.
#[must_use]
pub fn bind(credentials: &Credentials) -> Body {
    let mut body = Vec::new();
    for field in [
        credentials.system_id.as_str(),
        credentials.password.expose_secret(),
        credentials.system_type.as_str(),
    ] {
        body.extend_from_slice(field.as_bytes());
        body.push(0);
    }
    let (addr_ton, addr_npi, address_range) = (0, 0, 0);
    body.extend([VERSION_3_4, addr_ton, addr_npi, address_range]);
    Body::Other {
        command_id: CommandId::BindTransceiver,
        body: AnyOctetString::from_vec(body),
    }
}
