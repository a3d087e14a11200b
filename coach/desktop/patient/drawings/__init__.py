"""Drawings of the patient's pages to read, painted in the program's own style."""
