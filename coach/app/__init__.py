"""Puts the parts together for each command."""
