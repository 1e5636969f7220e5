"""Toning down: which paint tones a mix, and the ladder of steps towards dull.

May import `mixture`, `box` and `pigment`.
"""
