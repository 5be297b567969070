//! Timestamps in semi-octets with a time zone (TS 23.040 section 9.2.3.11).

use jiff::Timestamp;
use jiff::civil::DateTime;
use jiff::tz::Offset;

use super::PduError;
use super::octets::Octets;

const SECONDS_IN_QUARTER_HOUR: i32 = 15 * 60;
/// The sign of the time zone.
const WEST: u8 = 0x08;

/// Reads seven octets; nothing for a time that there is not, which a service centre without a
/// clock writes.
pub(super) fn timestamp(octets: &mut Octets<'_>) -> Result<Option<Timestamp>, PduError> {
    let octets = octets.take(7)?;
    Ok(read(octets))
}

fn read(octets: &[u8]) -> Option<Timestamp> {
    let [year, month, day, hour, minute, second, zone] = octets else {
        return None;
    };
    let two = |octet: u8| -> Option<i8> {
        let (tens, ones) = (octet & 0xf, octet >> 4);
        (tens <= 9 && ones <= 9)
            .then(|| i8::try_from(tens * 10 + ones).ok())
            .flatten()
    };
    let local = DateTime::new(
        2000 + i16::from(two(*year)?),
        two(*month)?,
        two(*day)?,
        two(*hour)?,
        two(*minute)?,
        two(*second)?,
        0,
    )
    .ok()?;
    let quarters = i32::from(two(zone & !WEST)?);
    let east = match zone & WEST {
        0 => quarters,
        _ => -quarters,
    };
    let offset = Offset::from_seconds(east * SECONDS_IN_QUARTER_HOUR).ok()?;
    offset.to_timestamp(local).ok()
}
