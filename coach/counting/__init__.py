"""Readings in, holds and repetitions out; pure."""

from coach.counting.machine import advance, begin, count, finish
from coach.counting.state import State
from coach.counting.task import Task, task_of

__all__ = ["State", "Task", "advance", "begin", "count", "finish", "task_of"]
