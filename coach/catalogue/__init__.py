"""The exercises, their words, doses and stop rules as data; pure."""

from coach.catalogue.load import Catalogue, catalogue, parse, shipped
from coach.catalogue.names import exercise_title
from coach.catalogue.safety import Rule, Safety, When, parse_safety, safety

__all__ = [
    "Catalogue",
    "Rule",
    "Safety",
    "When",
    "catalogue",
    "exercise_title",
    "parse",
    "parse_safety",
    "safety",
    "shipped",
]
