"""Text to sound; the only place that knows espeak-ng."""
