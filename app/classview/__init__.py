"""The class view: one band at a time before the whole class, answers only when asked for.

`room.py` is the door. May import `workspace` and all below, no page; the window imports it.
"""
