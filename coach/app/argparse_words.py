"""The command line's own words, which argparse takes from gettext, from our tables instead."""

from __future__ import annotations

import argparse
from collections.abc import Mapping

from coach.texts import translate


def translate_argparse() -> None:
    """Let argparse speak the chosen language from here on."""
    vars(argparse).update(_=_said, ngettext=_counted)


def _said(message: str) -> str:
    return words().get(message, message)


def _counted(one: str, many: str, count: int) -> str:
    return _said(one if count == 1 else many)


def words() -> Mapping[str, str]:
    """Give argparse's messages that a person can cause, in English and in the chosen language."""
    return {
        "usage: ": translate("command", "usage: "),
        "positional arguments": translate("command", "positional arguments"),
        "options": translate("command", "options"),
        "show this help message and exit": translate("command", "show this help and exit"),
        "%(prog)s: error: %(message)s\n": translate("command", "%(prog)s: %(message)s") + "\n",
        "argument %(argument_name)s: %(message)s": "%(argument_name)s: %(message)s",
        "unrecognized arguments: %s": translate("command", "unknown arguments: %s"),
        "ambiguous option: %(option)s could match %(matches)s": translate(
            "command", "%(option)s may be any of %(matches)s; write it out"
        ),
        "invalid choice: %(value)r (choose from %(choices)s)": translate(
            "command", "%(value)r is not one of %(choices)s; name one of these"
        ),
        "invalid %(type)s value: %(value)r": translate(
            "command", "%(value)r is no number; write one"
        ),
        "expected one argument": translate("command", "needs a value after it"),
        "expected at most one argument": translate("command", "takes one value at most"),
        "expected at least one argument": translate("command", "needs at least one value after it"),
        "the following arguments are required: %s": translate("command", "still needed: %s"),
        "one of the arguments %s is required": translate("command", "one of these is needed: %s"),
        "not allowed with argument %s": translate("command", "cannot be together with %s"),
        "ignored explicit argument %r": translate("command", "takes no value, but was given %r"),
    }
