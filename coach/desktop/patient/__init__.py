"""The patient's window."""
