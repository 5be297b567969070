//! What a `command_status` means for the message that it answers.
//!
//! Follows SMPP 3.4, section 5.1.3. What an operator can mend on the other side while the message
//! waits, a wrong sender or a closed account, is not the message's end.

use rusmpp::CommandStatus;

/// What is to become of a segment.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Verdict {
    /// The SMSC has it.
    Accepted,
    /// It will never take it, and why.
    Never(String),
    /// It does not take it now, and why.
    NotNow(String),
    /// It has too many waiting, for this person or for all.
    QueueFull,
    /// It takes no more for a moment.
    Throttled,
}

/// Those that people who run a link know by name.
const NAMES: [(CommandStatus, &str); 17] = [
    (CommandStatus::EsmeRinvmsglen, "ESME_RINVMSGLEN"),
    (CommandStatus::EsmeRinvbndsts, "ESME_RINVBNDSTS"),
    (CommandStatus::EsmeRalybnd, "ESME_RALYBND"),
    (CommandStatus::EsmeRsyserr, "ESME_RSYSERR"),
    (CommandStatus::EsmeRinvsrcadr, "ESME_RINVSRCADR"),
    (CommandStatus::EsmeRinvdstadr, "ESME_RINVDSTADR"),
    (CommandStatus::EsmeRbindfail, "ESME_RBINDFAIL"),
    (CommandStatus::EsmeRinvpaswd, "ESME_RINVPASWD"),
    (CommandStatus::EsmeRinvsysid, "ESME_RINVSYSID"),
    (CommandStatus::EsmeRmsgqful, "ESME_RMSGQFUL"),
    (CommandStatus::EsmeRsubmitfail, "ESME_RSUBMITFAIL"),
    (CommandStatus::EsmeRinvsrcton, "ESME_RINVSRCTON"),
    (CommandStatus::EsmeRinvsrcnpi, "ESME_RINVSRCNPI"),
    (CommandStatus::EsmeRinvdstton, "ESME_RINVDSTTON"),
    (CommandStatus::EsmeRinvdstnpi, "ESME_RINVDSTNPI"),
    (CommandStatus::EsmeRinvsystyp, "ESME_RINVSYSTYP"),
    (CommandStatus::EsmeRthrottled, "ESME_RTHROTTLED"),
];

/// Tells what a status means.
#[must_use]
#[expect(
    clippy::wildcard_enum_match_arm,
    reason = "the list is the standard's and open: what is not known may pass"
)]
pub fn verdict(status: CommandStatus) -> Verdict {
    match status {
        CommandStatus::EsmeRok => Verdict::Accepted,
        CommandStatus::EsmeRmsgqful => Verdict::QueueFull,
        CommandStatus::EsmeRthrottled => Verdict::Throttled,
        CommandStatus::EsmeRinvdstadr
        | CommandStatus::EsmeRinvdstton
        | CommandStatus::EsmeRinvdstnpi
        | CommandStatus::EsmeRinvmsglen
        | CommandStatus::EsmeRinvdcs
        | CommandStatus::EsmeRxPAppn
        | CommandStatus::EsmeRxRAppn => Verdict::Never(name(status)),
        _ => Verdict::NotNow(name(status)),
    }
}

/// A status by the standard's name, or its figure.
#[must_use]
pub fn name(status: CommandStatus) -> String {
    match NAMES.iter().find(|(named, _)| *named == status) {
        Some((_, name)) => (*name).to_owned(),
        None => format!("command_status 0x{:08x}", u32::from(status)),
    }
}
