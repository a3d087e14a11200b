"""How fast the program is, against the bare pose model in the same run."""
