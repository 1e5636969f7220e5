"""Drawings of the Mix page: parts, swatches, strips, ladders, meetings.

May import what is loose in `drawing`; `app.mix`, cards and the guide import it.
"""
