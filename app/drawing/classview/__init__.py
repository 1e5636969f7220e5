"""Drawings of the class view: photo, lines, strip and tally, in type for the back row."""
