"""A class's own paints: fitted to the fields of a painted swatch card, and how well they are known.

May import `box` and `pigment`.
"""
