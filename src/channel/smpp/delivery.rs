//! A `deliver_sm` as it came.
//!
//! In: the body of a PDU.
//! Out: its fields, or nothing where they cannot be told apart.
//! Follows SMPP 3.4, sections 4.6 and 5.3.2.

use super::fields::{Fields, number, text};

/// `user_message_reference`.
const USER_MESSAGE_REFERENCE: u16 = 0x0204;
const RECEIPTED_MESSAGE_ID: u16 = 0x001e;
const SAR_MSG_REF_NUM: u16 = 0x020c;
const SAR_TOTAL_SEGMENTS: u16 = 0x020e;
const SAR_SEGMENT_SEQNUM: u16 = 0x020f;
const MESSAGE_PAYLOAD: u16 = 0x0424;
const MESSAGE_STATE: u16 = 0x0427;

/// Octets of a message that are kept: the inbox cuts its text at half of that.
const MESSAGE_OCTETS_MAX: usize = 16 * 1024;

/// What an ESME is brought.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Delivery {
    /// Type of number of who sent it.
    pub source_ton: u8,
    /// Who sent it.
    pub source: String,
    /// The number that was written to.
    pub destination: String,
    /// What kind of message it is.
    pub esm_class: u8,
    /// How its octets are to be read.
    pub data_coding: u8,
    /// `schedule_delivery_time` and `validity_period`: should be empty; some put the time of the
    /// message there.
    pub times: [String; 2],
    /// The message.
    pub message: Vec<u8>,
    /// The sender's own number of it.
    pub user_message_reference: Option<u64>,
    /// Reference, number of parts, and which this is.
    pub sar: Option<(u64, u64, u64)>,
    /// Of which message of ours it tells.
    pub receipted_message_id: Option<String>,
    /// What became of that.
    pub message_state: Option<u64>,
}

impl Delivery {
    /// Reads a body.
    #[must_use]
    pub fn read(body: &[u8]) -> Option<Self> {
        let mut fields = Fields::of(body);
        let _service_type = fields.c_octets()?;
        let source_ton = fields.octet()?;
        let _source_npi = fields.octet()?;
        let source = text(fields.c_octets()?);
        let _destination_ton = fields.octet()?;
        let _destination_npi = fields.octet()?;
        let destination = text(fields.c_octets()?);
        let esm_class = fields.octet()?;
        let _protocol_id = fields.octet()?;
        let _priority_flag = fields.octet()?;
        let times = [text(fields.c_octets()?), text(fields.c_octets()?)];
        let _registered_delivery = fields.octet()?;
        let _replace_if_present_flag = fields.octet()?;
        let data_coding = fields.octet()?;
        let _sm_default_msg_id = fields.octet()?;
        let length = fields.octet()?;
        let short_message = fields.octets(usize::from(length))?;
        let mut delivery = Self {
            source_ton,
            source,
            destination,
            esm_class,
            data_coding,
            times,
            message: short_message.to_vec(),
            ..Self::default()
        };
        delivery.read_optional(fields);
        Some(delivery)
    }

    fn read_optional(&mut self, fields: Fields<'_>) {
        let (mut reference, mut total, mut part) = (None, None, None);
        for tlv in fields.tlvs() {
            match tlv.tag {
                USER_MESSAGE_REFERENCE => self.user_message_reference = Some(number(tlv.value)),
                RECEIPTED_MESSAGE_ID => self.receipted_message_id = Some(text(tlv.value)),
                SAR_MSG_REF_NUM => reference = Some(number(tlv.value)),
                SAR_TOTAL_SEGMENTS => total = Some(number(tlv.value)),
                SAR_SEGMENT_SEQNUM => part = Some(number(tlv.value)),
                // It stands in the place of a short_message, which is then empty.
                MESSAGE_PAYLOAD if self.message.is_empty() => {
                    let kept = tlv.value.len().min(MESSAGE_OCTETS_MAX);
                    self.message
                        .extend_from_slice(tlv.value.get(..kept).unwrap_or_default());
                }
                MESSAGE_STATE => self.message_state = Some(number(tlv.value)),
                _ => {}
            }
        }
        self.sar = reference
            .zip(total)
            .zip(part)
            .map(|((reference, total), part)| (reference, total, part));
    }
}
