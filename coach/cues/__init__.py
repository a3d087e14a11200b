"""Events in, what to say and show out; pure."""
