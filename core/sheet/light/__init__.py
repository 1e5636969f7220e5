"""The light: what lamp, shadow and tape do to the picture, undone as far as the border shows it.

May import result and options; `findings` and `check` import it.
"""
