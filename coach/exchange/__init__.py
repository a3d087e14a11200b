"""A patient's record in, documents for other systems out."""
