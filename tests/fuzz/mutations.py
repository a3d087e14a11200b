"""Real documents, changed so that they nearly stay what they were: values, tables, bytes."""

from __future__ import annotations

import json
import zlib
from collections.abc import Callable
from random import Random
from typing import Any

Mutate = Callable[[bytes, Random], bytes]

MOST_BYTES = 200_000
"""Of a changed document: what grows without end tests patience alone."""


_MOST_NUMBER = 2**1000
"""An integer that is larger has no half."""

_RAW, _AGAIN = "\ue000", "\ue001"
"""Stand in a tree for a token that JSON's own writer would not write, and for a key given again."""


ODD_TEXTS = (
    "", " ", "x" * 65, "x" * 201, "x" * 5_000, "\x00", "\x1b[2J", "\n", "a. B.", "\x85", "\u2028",
    "\u202etxt.exe", "\u2066x", "\u200b", "\u200d", "\ufeff", "\ud800", "e\u0301" * 30,
    "\U0001f600", "<b>x</b>", "<img src='/etc/passwd'>", "&lt;", "=1+1", "@SUM(A1)", "+1", "-1",
    "../../x", "/etc/passwd", "C:\\x", "%s%n", "{0}", "'; DROP TABLE sessions; --", "NaN", "null",
    "0001-01-01", "9999-12-31", "2026-02-30", "1969-12-31", "0001-01-01T00:00:00+14:00",
    "9999-12-31T23:59:59-14:00", "9999-12-31T23:59:59Z", "0001-01-01T00:00:00Z",
    "2026-03-29T02:30:00+02:00", "2026-01-05T18:30:00+99:99", "2026-01-05T24:00:00Z",
    "2026-01-05T18:30:60Z", "2026-01-05T18:30:00+23:59", "age1" + "q" * 58, "f" * 32, "0" * 64,
    "left", "right", "flexion", "hand-behind-back", "supine", "foot", "back", "pendulum", "deg",
    "ratio", "completed", "opened", "repetition",
)  # fmt: skip
ODD_TOKENS = (
    "0", "-0", "1", "-1", "2", "7", "39", "40", "41", "1e-300", "5e-324", "1e300", "-1e300", "0.5",
    "0.4999", "86400", "86400.001", "360", "-180", "179.999", "2147483647", "2147483648",
    "9007199254740993", "9223372036854775808", "1e15", "3.0", "3e0", "1e400", "-1e400", "NaN",
    "Infinity", "-Infinity", "01", "0x10", "1_000", "+1", ".5", "1.", "1" * 39, "1" * 41,
    "1" * 4_400, "true", "false", "null", "[]", "{}", '""', "[[]]", '{"":null}', "[null]",
)  # fmt: skip


def changed_bytes(data: bytes, chance: Random) -> bytes:
    """Change, cut, repeat or put in a few bytes anywhere."""
    found = bytearray(data)
    for _ in range(chance.choice((1, 1, 1, 2, 4, 16))):
        place = chance.randrange(len(found) + 1)
        match chance.randrange(7):
            case 0 if found:
                found[place % len(found)] ^= 1 << chance.randrange(8)
            case 1 if found:
                found[place % len(found)] = chance.choice(
                    (0, 1, 0x7F, 0x80, 0xFF, 0x0A, 0x22, 0x5D)
                )
            case 2:
                del found[place : place + chance.choice((1, 1, 2, 8, 64, 1_000))]
            case 3:
                found[place:place] = chance.randbytes(chance.choice((1, 2, 4, 40)))
            case 4:
                piece = found[place : place + chance.choice((1, 4, 32, 256))]
                found[place:place] = piece * chance.choice((1, 2, 50))
            case 5:
                del found[place:]
            case _:
                size = chance.choice((1, 2, 4, 8))
                value = chance.choice((0, 1, 2**31 - 1, 2**31, 2**32 - 1, 2**63, 0xFFFF, 100))
                order = chance.choice(("little", "big"))
                word = (value % 256**size).to_bytes(size, order)
                found[place : place + size] = word
    return bytes(found[:MOST_BYTES])


def changed_json(data: bytes, chance: Random) -> bytes:
    """Change values, keys and the build of a JSON document; now and then its bytes."""
    try:
        holder = [json.loads(data)]
    except (ValueError, RecursionError):
        return changed_bytes(data, chance)
    tokens: list[str] = []
    for _ in range(chance.choice((1, 1, 1, 2, 3, 8))):
        if holder:
            _change_value(*_place(holder, chance), holder, tokens, chance)
    text = json.dumps(holder[0]) if holder else ""
    for number, token in enumerate(tokens):
        text = text.replace(f'"\\ue000{number}"', token)
    text = text.replace("\\ue001", "")
    if not chance.randrange(30):
        text = "\ufeff" + text
    written = text.encode("utf-8", "surrogatepass")
    return changed_bytes(written, chance) if not chance.randrange(8) else written[:MOST_BYTES]


def _place(holder: list[Any], chance: Random) -> tuple[Any, Any]:
    """Walk down to a value; give the list or object that it is in and its place there."""
    inside: Any = holder
    while True:
        at = (
            chance.randrange(len(inside))
            if isinstance(inside, list)
            else chance.choice(list(inside))
        )
        value = inside[at]
        if not isinstance(value, list | dict) or not value or not chance.randrange(6):
            return inside, at
        inside = value


def _change_value(
    inside: Any, at: Any, holder: list[Any], tokens: list[str], chance: Random
) -> None:
    value = inside[at]

    def raw(token: str) -> str:
        tokens.append(token)
        return f"{_RAW}{len(tokens) - 1}"

    match chance.randrange(10):
        case 0:
            del inside[at]
        case 1 if isinstance(inside, dict):
            inside[at + _AGAIN] = value
        case 1 | 2 if isinstance(inside, list):
            inside[at : at + 1] = [value] * chance.choice((2, 41, 201))
        case 3 if isinstance(inside, dict):
            inside[chance.choice((at + "x", "", "format", "version", *ODD_TEXTS))] = inside.pop(at)
        case 4:
            other, there = _place(holder, chance)
            inside[at] = json.loads(json.dumps(other[there]))
        case 5:
            depth = chance.choice((5, 33, 2_000))
            inside[at] = raw("[" * depth + "]" * depth)
        case 6 if isinstance(value, str):
            cut = chance.randrange(len(value) + 1)
            inside[at] = value[:cut] + chance.choice(ODD_TEXTS) + value[cut:]
        case 7 if isinstance(value, int | float) and abs(value) < _MOST_NUMBER:
            other = (value + 1, value - 1, -value, value * 1000, value / 3, value + 0.5)
            inside[at] = chance.choice(other)
        case 8:
            inside[at] = chance.choice(ODD_TEXTS)
        case _:
            inside[at] = raw(chance.choice(ODD_TOKENS))


def changed_table(data: bytes, chance: Random) -> bytes:
    """Change cells, rows and columns of a CSV table; now and then its bytes."""
    if not chance.randrange(6):
        return changed_bytes(data, chance)
    rows = [line.split(",") for line in data.decode("utf-8", "replace").split("\n")]
    for _ in range(chance.choice((1, 1, 2, 4))):
        row = chance.choice(rows)
        at = chance.randrange(len(row))
        match chance.randrange(8):
            case 0:
                del rows[chance.randrange(len(rows))]
                rows = rows or [[""]]
            case 1:
                rows.insert(chance.randrange(len(rows) + 1), list(row))
            case 2:
                for each in rows:
                    if at < len(each) > 1:
                        del each[at]
            case 3:
                for each in rows:
                    if at < len(each):
                        each.insert(at, each[at])
            case 4:
                other = chance.randrange(len(row))
                row[at], row[other] = row[other], row[at]
            case 5:
                row[at] = chance.choice(ODD_TEXTS)
            case 6:
                row[at] = "9000000001"
            case _:
                row[at] = chance.choice((*ODD_TOKENS[:36], "", "nan", "inf", " 1", "1 ", "-", "1e"))
    text = chance.choice(("\n", "\n", "\n", "\r\n", "\r")).join(",".join(row) for row in rows)
    return text.encode("utf-8", "surrogatepass")[:MOST_BYTES]


def changed_lines(data: bytes, chance: Random) -> bytes:
    """Change, drop, double and move lines of text such as TOML; now and then its bytes."""
    if not chance.randrange(5):
        return changed_bytes(data, chance)
    lines = data.decode("utf-8", "replace").split("\n")
    for _ in range(chance.choice((1, 1, 2, 4))):
        at = chance.randrange(len(lines))
        match chance.randrange(6):
            case 0 if len(lines) > 1:
                del lines[at]
            case 1:
                lines.insert(chance.randrange(len(lines) + 1), lines[at])
            case 2:
                name = lines[at].partition("=")[0]
                lines[at] = f"{name}= {json.dumps(chance.choice(ODD_TEXTS))}"
            case 3:
                name = lines[at].partition("=")[0]
                lines[at] = f"{name}= {chance.choice(ODD_TOKENS)}"
            case 4:
                lines[at] = lines[at].partition("=")[0] + "= " + "[" * 3_000
            case _:
                name, equals, value = lines[at].partition("=")
                lines[at] = chance.choice(
                    (f"[{name}]", f"{name}x{equals}{value}", f"a.{lines[at]}")
                )
    return "\n".join(lines).encode("utf-8", "surrogatepass")[:MOST_BYTES]


def changed_journal(data: bytes, chance: Random) -> bytes:
    """Change the JSON of a journal's lines under a right checksum; now and then its bytes."""
    if not chance.randrange(5):
        return changed_bytes(data, chance)
    lines = [line for line in data.split(b"\n") if line]
    for _ in range(chance.choice((1, 1, 2, 4))):
        at = chance.randrange(len(lines)) if lines else 0
        match chance.randrange(6):
            case 0 if len(lines) > 1:
                del lines[at]
            case 1 if lines:
                lines.insert(chance.randrange(len(lines) + 1), lines[at])
            case 2 if lines:
                lines.insert(0, lines.pop(at))
            case _ if lines:
                text = changed_json(lines[at].split(b" ", 2)[-1], chance)
                lines[at] = b"%08x %d %s" % (zlib.crc32(text), len(text), text)
    return b"".join(line + b"\n" for line in lines)[:MOST_BYTES]
