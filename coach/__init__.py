"""Home exercise coach for stiff shoulders that measures joint angles with a webcam."""

__version__ = "0.1.0"
