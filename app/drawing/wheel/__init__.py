"""The painter's wheel: its shape, where markers and names stand, and how it is drawn.

May import `ink`, `fit` and `spread`; every other drawing may import it.
"""
