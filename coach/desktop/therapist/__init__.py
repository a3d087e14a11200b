"""The therapist's window."""
