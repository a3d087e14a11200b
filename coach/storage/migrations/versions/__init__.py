"""One file for each version of the store; a step once released is never changed.

A new version raises ``STORE_VERSION`` and leaves a dump of the one before in
``tests/documents/golden``.
"""
