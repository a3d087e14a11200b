"""Makes the text of Qt's PDF files searchable as it was written.

Qt (seen in 6.11) shows a tab by the glyph of a space, and its map from glyphs back to text names
the first character of a glyph: every space would be read back as a tab. The maps lie open in the
file and the two codes are of one length, so they are put right in place.
"""

from __future__ import annotations

import re

_MAP = re.compile(rb"begincmap.*?endcmap", re.DOTALL)


def with_true_spaces(data: bytes) -> bytes:
    """Give the file with spaces where its maps from glyphs to text say tabs."""
    return _MAP.sub(lambda found: found[0].replace(b"<0009>", b"<0020>"), data)
