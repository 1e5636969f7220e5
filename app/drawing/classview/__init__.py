"""Drawings of the class view: photo, lines, strip and tally, in type for the back row.

May import what lies loose in `drawing`, and `wheel`; `app.classview` imports it.
"""
