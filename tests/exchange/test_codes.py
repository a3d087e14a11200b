from __future__ import annotations

import pytest

from coach.domain.fault import Fault
from coach.exchange.codes import codes, parse_codes, written

LINES = """
[[code]]
name = "a"
system = "http://loinc.org"
code = "72514-3"
display = "Pain"
"""


def luhn(digits: str) -> int:
    """The check digit of LOINC (mod 10, LOINC Users' Guide): every other digit is doubled."""
    doubled = "".join(
        str(int(d) * (2 if i % 2 == 0 else 1)) for i, d in enumerate(reversed(digits))
    )
    return -sum(map(int, doubled)) % 10


def test_the_check_digit_of_every_loinc_code_is_right():
    loinc = [c.code for c in codes().values() if c.system == "http://loinc.org"]
    assert len(loinc) == 10
    for code in loinc:
        digits, _, check = code.partition("-")
        assert luhn(digits) == int(check), code


def test_active_and_passive_ranges_are_withheld_and_nothing_else_is():
    for name, code in codes().items():
        names_a_kind = "Active" in code.display or "Passive" in code.display
        assert (code.withheld is not None) == names_a_kind, name


def test_a_withheld_or_unknown_code_is_not_written():
    with pytest.raises(Fault, match="names an active range"):
        written("active-flexion-left")
    with pytest.raises(Fault, match="never confirmed"):
        written("active-abduction-right")


@pytest.mark.parametrize(
    "text",
    [
        LINES,  # not confirmed
        LINES + 'confirmed = ""',
        (LINES + 'confirmed = "seen"\n') * 2,
        LINES + 'confirmed = "seen"\nused = true',
        "[[code",
        "\xff",
    ],
)
def test_a_file_with_an_unconfirmed_code_is_refused(text):
    with pytest.raises(Fault):
        parse_codes(text.encode("latin-1"))
