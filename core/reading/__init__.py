"""The reading: what was measured of a colour, in the painter's terms, units and scales.

May import `colour`; everything that measures or speaks imports it.
"""
