"""Finding: where in the picture the painted rectangle is, and how sure that is.

May import result and options; `findings` and `check` import it.
"""
