"""The pose model; the only place that knows MediaPipe."""
