"""The espeak-ng library of the ``espeakng-loader`` package, loaded once per process.

Its functions and constants are those of espeak-ng's own header ``speak_lib.h``, revision 12.
"""

from __future__ import annotations

import ctypes
import os
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from threading import Lock
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray

from coach.domain.fault import Fault
from coach.texts import translate

_SYNCHRONOUS: Final = 2
_DONT_EXIT: Final = 0x8000
_CHARS_UTF8: Final = 1
_POS_CHARACTER: Final = 1
RATE, VOLUME, PITCH, RANGE = 1, 2, 3, 4
"""Numbers of espeak-ng's parameters."""

_CALLBACK: Final = ctypes.CFUNCTYPE(
    ctypes.c_int, ctypes.POINTER(ctypes.c_short), ctypes.c_int, ctypes.c_void_p
)


class Library:
    """espeak-ng holds its voice and settings in global variables: one thread alone speaks."""

    def __init__(self, library: Path, data: Path) -> None:
        """Load and start the library."""
        if not (data / "phontab").is_file():
            raise Fault(
                translate(
                    "faults",
                    "The voice data are missing from {data}, so the coach goes on with "
                    "captions; install the package espeakng-loader again to hear it "
                    "speak.",
                ).format(data=data)
            )
        try:
            self._espeak: Any = ctypes.CDLL(str(library))
        except OSError as error:
            raise Fault(
                translate(
                    "faults",
                    "The voice library {library} does not load ({error}), so the coach "
                    "goes on with captions; install the package espeakng-loader again "
                    "to hear it speak.",
                ).format(library=library, error=error)
            ) from error
        # Ctrl-C is raised in the main thread's next line; in a callback there ctypes would drop it.
        self._speaking = ThreadPoolExecutor(1, "voice")
        self._parts: list[NDArray[np.int16]] = []
        self._keep_alive = _CALLBACK(self._receive)
        self._espeak.espeak_Synth.argtypes = [
            ctypes.c_char_p,
            ctypes.c_size_t,
            ctypes.c_uint,
            ctypes.c_int,
            ctypes.c_uint,
            ctypes.c_uint,
            ctypes.c_void_p,
            ctypes.c_void_p,
        ]
        self._espeak.espeak_SetVoiceByName.argtypes = [ctypes.c_char_p]
        self.rate_hz: int = self._espeak.espeak_Initialize(
            _SYNCHRONOUS, 0, os.fsencode(data), _DONT_EXIT
        )
        if self.rate_hz <= 0:
            raise Fault(
                translate(
                    "faults",
                    "The voice data in {data} cannot be opened, so the coach goes on "
                    "with captions; move the program to a folder with a shorter name to"
                    " hear it speak.",
                ).format(data=data)
            )
        self._espeak.espeak_SetSynthCallback(self._keep_alive)

    def synthesise(
        self, text: str, voices: tuple[str, ...], parameters: dict[int, int]
    ) -> NDArray[np.int16]:
        """Speak a text with the first of ``voices`` that exists; samples of shape (N,)."""
        return self._speaking.submit(self._synthesise, text, voices, parameters).result()

    def _synthesise(
        self, text: str, voices: tuple[str, ...], parameters: dict[int, int]
    ) -> NDArray[np.int16]:
        if all(self._espeak.espeak_SetVoiceByName(name.encode()) for name in voices):
            raise Fault(
                translate(
                    "faults",
                    "There is no voice for the language '{voices}', so the coach "
                    "goes on with captions; choose another language to hear it "
                    "speak.",
                ).format(voices=voices[0])
            )
        for number, value in parameters.items():
            self._espeak.espeak_SetParameter(number, value, 0)
        self._parts.clear()
        spoken = text.encode() + b"\0"
        failed = self._espeak.espeak_Synth(
            spoken, len(spoken), 0, _POS_CHARACTER, 0, _CHARS_UTF8, None, None
        )
        parts = [*self._parts, np.zeros(0, np.int16)]
        self._parts.clear()
        if failed:
            raise Fault(
                translate(
                    "faults",
                    "The voice could not say '{text}', so the coach goes on with "
                    "captions; start the program again to hear it speak.",
                ).format(text=text[:40])
            )
        return np.concatenate(parts)

    def _receive(self, samples: Any, count: int, _events: Any) -> int:
        if samples and count > 0:
            self._parts.append(np.ctypeslib.as_array(samples, (count,)).copy())
        return 0


_loaded: list[Library] = []
_loading: Final = Lock()


def library(locate: Callable[[], tuple[Path, Path]] | None = None) -> Library:
    """Load espeak-ng, or give the one that is loaded already."""
    with _loading:
        if not _loaded:
            _loaded.append(Library(*(locate or _installed)()))
        return _loaded[0]


def _installed() -> tuple[Path, Path]:
    """Find library and data of the installed package."""
    try:
        import espeakng_loader

        return Path(espeakng_loader.get_library_path()), Path(espeakng_loader.get_data_path())
    except (ImportError, RuntimeError) as error:
        raise Fault(
            translate(
                "faults",
                "The voice package espeakng-loader is not installed whole ({error}), so"
                " the coach goes on with captions; install it again to hear it speak.",
            ).format(error=error)
        ) from error
