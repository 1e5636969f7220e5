"""The paint: its edges, strokes, blooms and pale corners, from how much of it is where.

May import result and options; `match`, `findings` and `check` import it.
"""
