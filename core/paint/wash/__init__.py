"""The wash on the sheet: how much of it, in which order, and what happens where two meet.

May import `mixture`, `box` and `pigment`.
"""
