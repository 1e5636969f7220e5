"""Bands: proposing the lines of a sky, editing them, and reading what is between them.

May import `photo`, `reading` and `colour`.
"""
