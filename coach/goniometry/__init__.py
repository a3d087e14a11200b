"""Poses in, shoulder angles with their error or a doubt out; pure."""
