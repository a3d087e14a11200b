"""Readings in, faults of form out; pure."""

from coach.form.faults import Usual, faults_of
from coach.form.limits import default_limits
from coach.form.watch import FormEvent, FormMended, FormNoticed, Watch, advance, begin

__all__ = [
    "FormEvent",
    "FormMended",
    "FormNoticed",
    "Usual",
    "Watch",
    "advance",
    "begin",
    "default_limits",
    "faults_of",
]
