"""Session documents in, trends and the report's content out; pure."""
