"""Characters that no text for people may hold, whoever wrote it."""

from __future__ import annotations

import re

UNSHOWN = re.compile(
    "[\x00-\x1f\x7f-\x9f"  # control characters: line ends, and what steers a terminal
    "\ud800-\udfff"  # halves of characters, as undecodable file names have them
    "\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069"  # turn the rest of a line around
    "\u2028\u2029"  # ends of lines and paragraphs
    "\xad\u180e\u200b\u2060-\u2065\u206a-\u206f\ufeff\ufff9-\ufffb\U000e0000-\U000e007f]"  # unseen
)
"""Unicode TR36, 2.10 and TR39, 3.1: controls, bidirectional controls, and what is not seen at all.

The joiners U+200C and U+200D stay allowed: writing Persian, or a family of emoji, needs them.
"""


def shown_text(text: str) -> str:
    """Give a text in which every such character is seen as its escape, on one line."""
    return UNSHOWN.sub(lambda found: found[0].encode("unicode_escape").decode("ascii"), text)
