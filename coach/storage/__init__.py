"""Session files, journal and store; the only place that writes to disk."""
