"""Plays speech on the system's sound output; without one it says so and stays silent."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray
from PyQt6.QtCore import QBuffer, QByteArray, QIODevice, QObject, pyqtSignal

from coach.domain.fault import Fault
from coach.texts import translate
from coach.voice.sound import Sound

if TYPE_CHECKING:
    from PyQt6.QtMultimedia import QAudioDevice, QAudioSink


def no_sound() -> str:
    """Say that there is no sound output, and what to do."""
    return translate(
        "faults",
        "There is no sound output, so the coach goes on with captions; "
        "connect a loudspeaker to hear it speak.",
    )


class Loudspeaker(QObject):
    """Plays one sound at a time; a new one cuts off the one before.

    ``silent`` tells that the output has played to the end, ``failed`` that it has gone, with the
    sentence to show; after that nothing is played any more. Making one raises a Fault where there
    is no output.
    """

    silent = pyqtSignal()
    failed = pyqtSignal(str)

    def __init__(self, parent: QObject | None = None) -> None:
        """Find the system's output."""
        super().__init__(parent)
        try:
            from PyQt6.QtMultimedia import QMediaDevices
        except ImportError as error:  # on Linux Qt's sound needs libpulse
            raise Fault(no_sound()) from error
        self._device: QAudioDevice = QMediaDevices.defaultAudioOutput()
        if self._device.isNull():
            raise Fault(no_sound())
        self._sink: QAudioSink | None = None
        self._buffer: QBuffer | None = None
        self._broken = False

    def play(self, sound: Sound) -> None:
        """Play a sound from its start, now."""
        from PyQt6.QtMultimedia import QAudioFormat, QAudioSink

        self.stop()
        if self._broken or not len(sound.samples):
            return
        wanted = QAudioFormat()
        wanted.setSampleRate(sound.rate_hz)
        wanted.setChannelCount(1)
        wanted.setSampleFormat(QAudioFormat.SampleFormat.Int16)
        if not self._device.isFormatSupported(wanted):
            preferred = self._device.preferredFormat()
            wanted.setSampleRate(preferred.sampleRate())
            wanted.setChannelCount(preferred.channelCount())
        samples = fitted(sound, wanted.sampleRate(), wanted.channelCount())
        self._buffer = QBuffer(self)
        self._buffer.setData(QByteArray(samples.astype("<i2").tobytes()))
        self._buffer.open(QIODevice.OpenModeFlag.ReadOnly)
        self._sink = QAudioSink(self._device, wanted, self)
        self._sink.stateChanged.connect(self._state_changed)
        self._sink.start(self._buffer)

    def stop(self) -> None:
        """Fall silent at once."""
        sink, self._sink = self._sink, None
        buffer, self._buffer = self._buffer, None
        if sink is not None:
            sink.stateChanged.disconnect()
            sink.setVolume(0.0)
            sink.stop()
            sink.deleteLater()
        if buffer is not None:
            buffer.deleteLater()

    def _state_changed(self) -> None:
        from PyQt6.QtMultimedia import QAudio

        sink = self._sink
        if sink is None:
            return
        if sink.state() is QAudio.State.IdleState and sink.error() is QAudio.Error.NoError:
            self.silent.emit()
        elif sink.error() not in (QAudio.Error.NoError, QAudio.Error.UnderrunError):
            self._broken = True
            self.failed.emit(no_sound())


def fitted(sound: Sound, rate_hz: int, channels: int) -> NDArray[np.int16]:
    """Give the samples at another rate, (N,) for one channel or (N, channels), all alike."""
    samples = sound.samples
    if rate_hz != sound.rate_hz and len(samples):
        count = round(len(samples) * rate_hz / sound.rate_hz)
        at = np.arange(count) * (sound.rate_hz / rate_hz)
        samples = np.round(np.interp(at, np.arange(len(samples)), samples)).astype(np.int16)
    if channels == 1:
        return samples
    return np.repeat(samples[:, np.newaxis], channels, axis=1)
