"""One file for each version; a step once released is never changed."""
