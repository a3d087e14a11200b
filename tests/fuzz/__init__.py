"""Every reader of what comes from outside, under real documents that were changed at random.

``python -m tests.fuzz READER [--runs N | --seconds S]``; ``all`` stands for every reader.
"""
