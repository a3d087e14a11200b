"""The course of one sitting and what is written down of it; pure."""
