"""Cameras and video files; the only place that knows OpenCV."""
