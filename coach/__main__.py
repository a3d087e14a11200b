"""The command line: ``coach``, ``coach review``, ``coach demo``, ``coach measure``."""
