"""The photo on its wall, with the lines that cut its sky into bands.

May import `drawing`, `look` and `state`; pages import it.
"""
