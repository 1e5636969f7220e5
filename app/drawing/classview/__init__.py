"""Drawings of the class view: photo, lines, strip and tally, in type for the back row.

May import what is loose in `drawing`, and `wheel`; `app.classview` imports it.
"""
