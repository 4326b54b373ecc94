"""AIS messages packed apart from the package, with what they say: one JSON object a line, for check-ais.mjs.

Bit tables of ITU-R M.1371-6 Annex 7, messages 1 to 5, 9, 11, 18, 19, 21, 24 and 27, from memory; the lengths add up to
those published for each message. Bits are packed by bitstring, a general bit-field library (Debian: python3-bitstring).
Run with Debian's python3.
"""

import json
import random
from datetime import datetime, timezone

import bitstring

HEAD = "message:6 repeat:2 mmsi:30"
PLACE = "accuracy:1 longitude:i28 latitude:i27"
SIZE = "bow:9 stern:9 port:6 starboard:6"
RADIO = "raim:1 radio:19"
CLASS_A = (
    f"{HEAD} status:4 turn:i8 speed:10 {PLACE} course:12 heading:9 second:6 manoeuvre:2 spare:3 {RADIO}"
)
TIME = f"{HEAD} year:14 month:4 day:5 hour:5 minute:6 utcSecond:6 {PLACE} fixing:4 long:1 spare:9 {RADIO}"
CLASS_B = f"{HEAD} regional:8 speed:10 {PLACE} course:12 heading:9 second:6"
TABLES = {
    1: (168, CLASS_A),
    2: (168, CLASS_A),
    3: (168, CLASS_A),
    4: (168, TIME),
    11: (168, TIME),
    5: (
        424,
        f"{HEAD} version:2 imo:30 callSign:t7 name:t20 type:8 {SIZE} fixing:4"
        " etaMonth:4 etaDay:5 etaHour:5 etaMinute:6 draught:8 destination:t20 dte:1 spare:1",
    ),
    9: (
        168,
        f"{HEAD} altitude:12 knots:10 {PLACE} course:12 second:6 sensor:1 spare:7 dte:1 spare:3 assigned:1"
        f" {RADIO.replace('radio:19', 'radio:20')}",
    ),
    18: (
        168,
        f"{CLASS_B} spare:2 unit:1 display:1 dsc:1 band:1 channels:1 assigned:1 raim:1 radio:20",
    ),
    19: (312, f"{CLASS_B} spare:4 name:t20 type:8 {SIZE} fixing:4 raim:1 dte:1 assigned:1 spare:4"),
    21: (
        272,
        f"{HEAD} type:5 name:t20 {PLACE} {SIZE} fixing:4 second:6 offPosition:1 status:8 raim:1"
        " virtual:1 assigned:1 spare:1",
    ),
    24: (160, f"{HEAD} part:2 name:t20"),
    # Message 24, part B.
    124: (168, f"{HEAD} part:2 type:8 vendor:t7 callSign:t7 {SIZE} fixing:4 spare:2"),
    27: (
        96,
        f"{HEAD} accuracy:1 raim:1 status:4 coarseLongitude:i18 coarseLatitude:i17 coarseSpeed:6"
        " coarseCourse:9 latency:1 spare:1",
    ),
}
STATUSES = {
    0: "under-way-using-engine",
    1: "at-anchor",
    2: "not-under-command",
    3: "restricted-manoeuvrability",
    4: "constrained-by-draught",
    5: "moored",
    6: "aground",
    7: "fishing",
    8: "under-way-sailing",
    11: "towing-astern",
    12: "pushing-or-towing-alongside",
    14: "locating-device-active",
}
# Six-bit characters: 0 to 31 are @ to underscore, 32 to 63 are space to question mark.
SIX_BITS = [chr(code + 64) for code in range(32)] + [chr(code) for code in range(32, 64)]

random.seed(1371)


def possible(name, width):
    """A value of a field: any, the ends of its range, or the one that stands for nothing."""
    if name == "mmsi":
        return random.choice([0, 970999123, 2329990, 999999999, random.randrange(10**9)])
    nothing = {
        "speed": 1023,
        "knots": 1023,
        "course": 3600,
        "heading": 511,
        "second": 60,
        "altitude": 4095,
        "longitude": 181 * 600000,
        "latitude": 91 * 600000,
        "coarseSpeed": 63,
        "coarseCourse": 511,
        "coarseLongitude": 181 * 600,
        "coarseLatitude": 91 * 600,
    }
    most = {"longitude": 108000000, "latitude": 54000000, "coarseLongitude": 108000, "coarseLatitude": 54000}
    ranges = {"year": (1900, 2200), "month": (1, 12), "day": (1, 28), "hour": (0, 23), "imo": (0, 2**30 - 1)}
    if name in nothing and random.random() < 0.1:
        return nothing[name]
    if name in most:
        return random.choice([0, most[name], -most[name], random.randint(-most[name], most[name])])
    low, high = ranges.get(name, (0, 59) if name in ("minute", "utcSecond") else (0, 2**width - 1))
    return random.randint(low, high)


def words(count):
    kept = random.randint(0, count)
    text = "".join(random.choice(SIX_BITS[1:]) for _ in range(kept))
    return text.ljust(count, "@")


def said(text):
    """Text up to the first @, outer spaces left out; nothing when none is left."""
    return text.split("@")[0].strip() or None


def expected(values, key):
    """What the values say, by the units of the tables."""
    report = {"message": values["message"], "mmsi": f"{values['mmsi']:09d}"}
    for name, value in values.items():
        if name == "speed" and value != 1023:
            report["speed"] = value / 10
        elif name in ("knots", "coarseSpeed") and value != (1023 if name == "knots" else 63):
            report["speed"] = value
        elif name == "course" and value < 3600:
            report["course"] = value / 10
        elif name == "coarseCourse" and value < 360:
            report["course"] = value
        elif name == "heading" and value < 360:
            report["heading"] = value
        elif name == "altitude" and value != 4095:
            report["altitude"] = value
        elif name == "status" and key != 21 and value in STATUSES:
            report["status"] = STATUSES[value]
        elif name in ("name", "callSign") and said(value):
            report[name] = said(value)
        elif name == "type" and value > 0:
            report["type"] = value
        elif name == "imo" and 10**6 <= value < 10**7:
            report["imo"] = str(value)
        elif name in ("offPosition", "virtual"):
            report[name] = value == 1
    steps = 600 if "coarseLatitude" in values else 600000
    latitude = values.get("latitude", values.get("coarseLatitude"))
    longitude = values.get("longitude", values.get("coarseLongitude"))
    if latitude is not None and latitude != 91 * steps and longitude != 181 * steps:
        report["position"] = {"latitude": latitude / steps, "longitude": longitude / steps}
        report["accurate"] = values["accuracy"] == 1
        if values.get("second", 60) < 60:
            report["second"] = values["second"]
    if "year" in values:
        parts = [values[part] for part in ("year", "month", "day", "hour", "minute", "utcSecond")]
        report["instant"] = round(datetime(*parts, tzinfo=timezone.utc).timestamp() * 1000)
    return report


def packed(key):
    length, table = TABLES[key]
    bits, values = bitstring.BitArray(), {}
    for field in table.split():
        name, width = field.split(":")
        if width.startswith("t"):
            value = words(int(width[1:]))
            for character in value:
                bits.append(bitstring.Bits(uint=SIX_BITS.index(character), length=6))
        else:
            size = int(width.lstrip("i"))
            value = {"message": key % 100, "part": key // 100}.get(name)
            value = possible(name, size) if value is None else value
            kind = "int" if width.startswith("i") else "uint"
            if name == "turn":
                value -= 128
            bits.append(bitstring.Bits(**{kind: value, "length": size}))
        values[name] = value
    assert len(bits) == length, (key, len(bits))
    return bits, expected(values, key)


def sentences(bits):
    """VDM sentences with six-bit armour (IEC 61162-1): 0 to W are 0 to 39, grave accent to w are 40 to 63."""
    fill = -len(bits) % 6
    groups = (bits + bitstring.Bits(length=fill)).cut(6)
    armour = "".join(chr(group.uint + (48 if group.uint < 40 else 56)) for group in groups)
    parts = [armour[at : at + 60] for at in range(0, len(armour), 60)]
    for number, part in enumerate(parts, 1):
        several = len(parts) > 1
        last = fill if number == len(parts) else 0
        body = f"AIVDM,{len(parts)},{number},{1 if several else ''},A,{part},{last}"
        checksum = 0
        for character in body:
            checksum ^= ord(character)
        yield f"!{body}*{checksum:02X}"


for turn in range(200):
    for key in TABLES:
        bits, report = packed(key)
        print(json.dumps({"sentences": list(sentences(bits)), "report": report}))
