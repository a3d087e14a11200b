"""What is said when the picture or the program fails while the window is open."""

from __future__ import annotations

from coach.texts import translate


def black() -> str:
    """Say that the camera sees nothing but black."""
    return translate(
        "faults",
        "The camera's picture is black: open its cover, or switch on a light. Then go on.",
    )


def paused(fault: str) -> str:
    """Add to a camera's fault that the exercise waits for it."""
    return translate(
        "faults", "{fault} The exercise is paused until it is back; what was done is kept."
    ).format(fault=fault)


def other_camera() -> str:
    """Say that pictures of another size came back."""
    return translate(
        "faults",
        "The camera came back with pictures of another size, as another camera does; what was "
        "recorded so far is kept: close the program and start it again.",
    )


def unexpected() -> str:
    """Say that something failed which nobody foresaw."""
    return translate(
        "faults",
        "Something inside the program went wrong; what was recorded so far is kept: "
        "close the program and start it again.",
    )
