"""Drawings that only the printed cards use.

May import what is loose in `drawing`, and `wheel`; `app.cards` imports it.
"""
