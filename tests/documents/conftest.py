from __future__ import annotations

from pathlib import Path

import pytest


@pytest.fixture(scope="session")
def golden() -> bytes:
    """What this version of the program wrote; golden/make_session_v4.py says from what."""
    return (Path(__file__).parent / "golden" / "session_v4.shoulder.zip").read_bytes()


@pytest.fixture(scope="session")
def golden_3() -> bytes:
    """What version 3 of the program wrote."""
    return (Path(__file__).parent / "golden" / "session_v3.shoulder.zip").read_bytes()


@pytest.fixture(scope="session")
def golden_2() -> bytes:
    """What version 2 of the program wrote."""
    return (Path(__file__).parent / "golden" / "session_v2.shoulder.zip").read_bytes()


@pytest.fixture(scope="session")
def golden_1() -> bytes:
    """What version 1 of the program wrote."""
    return (Path(__file__).parent / "golden" / "session_v1.shoulder.zip").read_bytes()
