//! A connection to an SMSC: TCP, and TLS on it where the settings say so.

use std::io::{Error, ErrorKind};
use std::path::Path;
use std::sync::Arc;
use std::time::Duration;

use tokio::io::{AsyncRead, AsyncWrite};
use tokio::net::TcpStream;
use tokio_rustls::TlsConnector;
use tokio_rustls::rustls::crypto::ring;
use tokio_rustls::rustls::pki_types::pem::PemObject;
use tokio_rustls::rustls::pki_types::{CertificateDer, ServerName};
use tokio_rustls::rustls::{ClientConfig, RootCertStore};

/// SMPP's own port.
const PORT: u16 = 2775;
/// A name that is not found and a host that does not answer cost no more than that.
const CONNECT_WAIT: Duration = Duration::from_secs(15);

/// Octets to and from somewhere.
pub(super) trait Wire: AsyncRead + AsyncWrite + Send + Unpin {}

impl<T: AsyncRead + AsyncWrite + Send + Unpin> Wire for T {}

/// Where an SMSC is.
#[derive(Clone)]
pub(super) struct Host {
    name: String,
    port: u16,
    tls: Option<TlsConnector>,
}

impl Host {
    /// From "name:port", "name", "[address]:port" or an address.
    pub(super) fn read(written: &str) -> Option<Self> {
        let (name, port) = match written.rsplit_once(':') {
            // An address of IPv6 without brackets has colons of its own.
            Some((name, _)) if name.contains(':') && !name.starts_with('[') => (written, PORT),
            Some((_, rest)) if rest.ends_with(']') => (written, PORT),
            Some((name, port)) => (name, port.parse().ok()?),
            None => (written, PORT),
        };
        let name = name.trim_start_matches('[').trim_end_matches(']');
        (!name.is_empty()).then(|| Self {
            name: name.to_owned(),
            port,
            tls: None,
        })
    }

    /// With TLS, trusting who the public authorities trust, or those in a file.
    pub(super) fn with_tls(self, authorities: Option<&Path>) -> Result<Self, String> {
        let mut roots = RootCertStore::empty();
        match authorities {
            None => roots.extend(webpki_roots::TLS_SERVER_ROOTS.iter().cloned()),
            Some(path) => {
                let shown = path.display();
                let certificates = CertificateDer::pem_file_iter(path)
                    .map_err(|error| format!("tls_ca_file {shown}: {error}"))?;
                for certificate in certificates {
                    let certificate =
                        certificate.map_err(|error| format!("tls_ca_file {shown}: {error}"))?;
                    roots
                        .add(certificate)
                        .map_err(|error| format!("tls_ca_file {shown}: {error}"))?;
                }
                if roots.is_empty() {
                    return Err(format!("tls_ca_file {shown}: it holds no certificate"));
                }
            }
        }
        let config = ClientConfig::builder_with_provider(Arc::new(ring::default_provider()))
            .with_safe_default_protocol_versions()
            .map_err(|error| error.to_string())?
            .with_root_certificates(roots)
            .with_no_client_auth();
        Ok(Self {
            tls: Some(TlsConnector::from(Arc::new(config))),
            ..self
        })
    }

    /// Connects.
    pub(super) async fn connect(&self) -> Result<Box<dyn Wire>, Error> {
        let connecting = async {
            let stream = TcpStream::connect((self.name.as_str(), self.port)).await?;
            // PDUs are small, and somebody waits for each.
            stream.set_nodelay(true)?;
            let Some(tls) = &self.tls else {
                return Ok(Box::new(stream) as Box<dyn Wire>);
            };
            let name = ServerName::try_from(self.name.clone())
                .map_err(|error| Error::new(ErrorKind::InvalidInput, error))?;
            let stream = tls.connect(name, stream).await?;
            Ok(Box::new(stream) as Box<dyn Wire>)
        };
        tokio::time::timeout(CONNECT_WAIT, connecting)
            .await
            .unwrap_or_else(|_| Err(ErrorKind::TimedOut.into()))
    }
}
