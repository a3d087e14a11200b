"""The types that cross from one package to the next: frozen, without behaviour of their own."""
