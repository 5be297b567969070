"""Makes pdus.jsonl: messages as others write and read them.

Needs Python 3.11 and, from PyPI: smspdudecoder 2.2.0, bitstring below 5, python-messaging 0.5.13.

    MATONE_WRITE_SUBMITS=/tmp/submits.jsonl cargo test --test it modem::pdus
    python make_pdus.py /tmp/submits.jsonl > pdus.jsonl

Messages that come in are encoded by python-messaging and the time by smspdudecoder; what they say
is what both decoders read. Messages that go out are ours, and what is kept of them is what both
decoders read.
"""

import json
import sys
from datetime import datetime, timedelta, timezone
from io import StringIO

from messaging.sms import SmsDeliver, SmsSubmit
from smspdudecoder.codecs import GSM
from smspdudecoder.elements import Date
from smspdudecoder.fields import SMSDeliver, SMSSubmit

CENTRE = "07915225000000F9"
EAST = timezone(timedelta(hours=3))
WEST = timezone(-timedelta(hours=4, minutes=30))
MORNING = datetime(2026, 3, 1, 8, 0, 5, tzinfo=EAST)

SEVEN = "2 gallons cloudy 1% bleach"
ARABIC = "كم من الكلور 5% لعشرين لترا من الماء العكر"
HINDI = "20 लीटर पानी में कितना ब्लीच"
KREYOL = "konbyen klò pou 5 galon dlo twoub? Mèsi [anpil] {~}"
LONG = (
    "We are at the clinic by the river and the well is brown after the rain. We have 2 jerrycans "
    "of 20 L, a bottle of bleach that says 5%, and a cloth. How much do we put in, and how long do "
    "we wait before the children drink it?"
)
LONG_ARABIC = ARABIC + " " + ARABIC


def both(pdu, text=None):
    """What both decoders read of a message that came in, and which of them do; `text` is what is in
    it where that is known. smspdudecoder shows the spare bits behind a text with escape pairs."""
    one = SMSDeliver.decode(StringIO(pdu))
    number = one["sender"]["number"]
    if one["sender"]["toa"]["ton"] == "international":
        number = "+" + number
    data = one["user_data"]
    part = None
    for element in (data["header"] or {}).get("elements", []):
        if element["iei"] in (0, 8):
            e = element["data"]
            part = [e["reference"], e["parts_count"], e["part_number"]]
    read = {
        "from": number,
        "text": data["data"],
        "part": part,
        "sent_at": one["scts"].strftime("%Y-%m-%dT%H:%M:%SZ"),
    }
    by = []
    if text is None or read["text"] == text:
        by.append("smspdudecoder 2.2.0")
    else:
        read["text"] = text
    try:
        two = SmsDeliver(pdu)
    except Exception as error:  # it has limits of its own
        print("not by python-messaging:", error, file=sys.stderr)
        return read, by
    same = (
        two.text == read["text"]
        and two.number == read["from"]
        and two.date.strftime("%Y-%m-%dT%H:%M:%SZ") == read["sent_at"]
    )
    concat = two.udh.concat if two.udh is not None else None
    if concat is not None:
        same = same and [concat.ref, concat.cnt, concat.seq] == part
    if same:
        by.append("python-messaging 0.5.13")
    else:
        print("read otherwise by python-messaging:", two.data, read, file=sys.stderr)
    return read, by


def address(number):
    digits = number.lstrip("+")
    padded = digits + "F" * (len(digits) % 2)
    swapped = "".join(padded[i + 1] + padded[i] for i in range(0, len(padded), 2))
    return f"{len(digits):02X}" + ("91" if number.startswith("+") else "81") + swapped


def name(text):
    packed = GSM.encode(text)
    return f"{-(-len(text) * 7 // 4):02X}D0" + packed


def bodies(text, reference):
    """Data coding and user data of each part, by python-messaging's encoder."""
    submit = SmsSubmit("+255700000001", text)
    submit.rand_id = reference
    for pdu in submit.to_pdu():
        head = len("00" + "01" + "00") + len(address("+255700000001"))
        yield pdu.pdu[2:4], pdu.pdu[head + 2 : head + 4], pdu.pdu[head + 4 :]


def deliver(sender, text, at=MORNING, reference=0x5A, coding=None):
    oa = address(sender) if sender.lstrip("+").isdigit() else name(sender)
    for first, dcs, user_data in bodies(text, reference):
        first = 0x04 | (int(first, 16) & 0x40)
        yield CENTRE + f"{first:02X}" + oa + "00" + (coding or dcs) + Date.encode(at).upper() + user_data


def octets(pdu):
    return len(pdu) // 2 - 1 - int(pdu[:2], 16)


def line(case, **fields):
    print(json.dumps({"case": case, **fields}, ensure_ascii=False))


def incoming():
    cases = [
        ("GSM 7-bit", deliver("+255700000001", SEVEN)),
        ("seven septets and a spare one", deliver("+255700000001", "1234567")),
        ("eight septets", deliver("+255700000001", "12345678")),
        ("extension table", deliver("+50900000001", KREYOL)),
        ("Arabic", deliver("+249100000001", ARABIC)),
        ("Devanagari", deliver("+919000000001", HINDI)),
        ("in the west", deliver("+58400000001", SEVEN, at=datetime(2026, 12, 31, 23, 59, 59, tzinfo=WEST))),
        ("as dialled", deliver("0700000001", SEVEN)),
        ("a name", deliver("MobiMoney", SEVEN)),
        ("a short code", deliver("15500", SEVEN)),
        ("general coding with a class", deliver("+255700000001", SEVEN, coding="10")),
        ("coding with a class", deliver("+255700000001", SEVEN, coding="F1")),
        ("UCS-2 with a class", deliver("+249100000001", ARABIC, coding="19")),
        ("two parts", deliver("+255700000001", LONG)),
        ("two parts in Arabic", deliver("+249100000001", LONG_ARABIC)),
    ]
    for case, pdus in cases:
        for pdu in pdus:
            read, by = both(pdu)
            line(case, kind="deliver", line=pdu, length=octets(pdu), read_by=by, **read)
    # The encoder has no surrogate pairs.
    body = "20 L 💧".encode("utf-16be").hex().upper()
    pdu = CENTRE + "04" + address("+255700000001") + "0008" + Date.encode(MORNING).upper() + f"{len(body) // 2:02X}" + body
    read, by = both(pdu)
    line("a surrogate pair", kind="deliver", line=pdu, length=octets(pdu), read_by=by, **read)
    # Two elements, the second a 16-bit reference; UCS-2, so that there is no fill.
    text = "سؤال"
    header = "09" + "240100" + "080412340201"
    body = header + text.encode("utf-16be").hex().upper()
    pdu = CENTRE + "44" + address("+249100000001") + "0008" + Date.encode(MORNING).upper() + f"{len(body) // 2:02X}" + body
    read, by = both(pdu)
    line("16-bit reference behind another element", kind="deliver", line=pdu, length=octets(pdu), read_by=by, **read)


def reports():
    for status in (0x00, 0x01, 0x20, 0x30, 0x46, 0x63):
        pdu = (
            CENTRE + "06" + "2A" + address("+255700000001") + Date.encode(MORNING).upper()
            + Date.encode(MORNING + timedelta(seconds=9)).upper() + f"{status:02X}"
        )
        read = SmsDeliver(pdu)
        line(
            "receipt", kind="report", line=pdu, length=octets(pdu), reference=read.udh.concat.ref
            if read.udh and read.udh.concat else None, status=read.sr["status"], to=read.sr["recipient"],
            read_by=["python-messaging 0.5.13"],
        )


def outgoing(path):
    for ours in map(json.loads, open(path, encoding="utf-8")):
        parts, readers = [], None
        for pdu, text in zip(ours["lines"], ours["parts"], strict=True):
            one = SMSSubmit.decode(StringIO(pdu))
            assert one["smsc"]["length"] == 0
            assert one["header"]["srr"] and one["header"]["vpf"] == 2
            assert one["validity-hours"] == 24
            number = one["recipient"]["number"]
            if one["recipient"]["toa"]["ton"] == "international":
                number = "+" + number
            assert number == ours["to"], (number, ours["to"])
            # The same octets as if they had come in, for the decoder that reads no others.
            first = 0x04 | (int(pdu[2:4], 16) & 0x40)
            oa = address(ours["to"])
            rest = pdu[6 + len(oa) :]
            turned = "00" + f"{first:02X}" + oa + rest[:4] + Date.encode(MORNING).upper() + rest[6:]
            read, by = both(turned, text)
            assert by, text
            parts.append({"text": read["text"], "part": read["part"]})
            readers = by if readers is None else [r for r in readers if r in by]
        joined = "".join(part["text"] for part in parts)
        assert joined == ours["text"], (joined, ours["text"])
        line(ours["case"], kind="submit", to=ours["to"], reference=ours["reference"], text=ours["text"],
             lines=ours["lines"], parts=parts, read_by=readers)


incoming()
reports()
outgoing(sys.argv[1])
