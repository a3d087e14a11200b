"""One step from a frame to what is shown, said and written down."""
