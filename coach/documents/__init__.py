"""Plan, session and landmark documents to and from bytes; pure."""
