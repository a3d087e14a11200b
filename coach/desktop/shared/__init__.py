"""Painting and widgets that both windows use."""
