"""The tests; a package of its own, since an installed one may bring another of this name."""
