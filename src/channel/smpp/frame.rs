//! PDUs out of a stream of octets, and commands into one.
//!
//! In: octets as they come, in pieces of any size.
//! Out: PDUs, each with its header read and its body as it is.
//! Promises bounded memory whatever length is claimed, and that what stands in one PDU's body never
//! moves the start of the next. The codec of `rusmpp` promises neither: it ends the session over a
//! body that it cannot read, and the other side would bring the same message again for ever.
//! Follows SMPP 3.4, section 3.2.

use rusmpp::encode::Length;
use rusmpp::encode::owned::Encode;
use rusmpp::{Command, CommandId, CommandStatus, Pdu as Body};
use tokio_util::bytes::{Buf, Bytes, BytesMut};

/// Octets of a header.
const HEADER_OCTETS: usize = 16;
/// The largest body that is of use is a `message_payload` of 64 KiB, with other fields beside it.
const PDU_OCTETS_MAX: usize = 80 * 1024;
/// What is read at once.
const READ_OCTETS: usize = 16 * 1024;

/// A PDU whose body has not been read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Pdu {
    /// What it is.
    pub id: CommandId,
    /// How what it answers went.
    pub status: CommandStatus,
    /// What it answers, or is answered by.
    pub sequence: u32,
    /// Its body.
    pub body: Bytes,
}

/// Why a stream can no longer be cut into PDUs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum FrameError {
    /// A PDU claims to be longer than any that is of use.
    #[error("a PDU of {0} octets was announced")]
    TooLong(u32),
    /// A PDU claims to be shorter than its header.
    #[error("a PDU of {0} octets was announced, which is less than a header")]
    TooShort(u32),
}

/// A stream as far as it has come.
#[derive(Debug, Default)]
pub struct Frames {
    octets: BytesMut,
}

impl Frames {
    /// Where the next octets are put. To be asked for only when [`Self::next`] has nothing: then
    /// less than one PDU is held.
    pub fn space(&mut self) -> &mut BytesMut {
        self.octets.reserve(READ_OCTETS);
        &mut self.octets
    }

    /// The next PDU, if it is all there.
    ///
    /// # Errors
    /// [`FrameError`] when the stream is of no more use.
    #[expect(clippy::should_implement_trait, reason = "it can go on after nothing")]
    pub fn next(&mut self) -> Result<Option<Pdu>, FrameError> {
        let Some((length, _)) = self.octets.split_first_chunk::<4>() else {
            return Ok(None);
        };
        let announced = u32::from_be_bytes(*length);
        let length = usize::try_from(announced).unwrap_or(usize::MAX);
        if length < HEADER_OCTETS {
            return Err(FrameError::TooShort(announced));
        }
        if length > PDU_OCTETS_MAX {
            return Err(FrameError::TooLong(announced));
        }
        if self.octets.len() < length {
            return Ok(None);
        }
        let mut pdu = self.octets.split_to(length).freeze();
        // The length is known to be that of a header at least.
        let _ = pdu.get_u32();
        Ok(Some(Pdu {
            id: pdu.get_u32().into(),
            status: pdu.get_u32().into(),
            sequence: pdu.get_u32(),
            body: pdu,
        }))
    }
}

/// A command, made.
#[must_use]
pub fn command(status: CommandStatus, sequence: u32, body: impl Into<Body>) -> Command {
    Command::new(status, sequence, body)
}

/// Puts a command's octets behind others.
pub fn write(command: &Command, out: &mut BytesMut) {
    let length = command.length().saturating_add(4);
    out.reserve(length);
    // What we write has fields of bounded length.
    out.extend_from_slice(&u32::try_from(length).unwrap_or(u32::MAX).to_be_bytes());
    command.encode(out);
}
