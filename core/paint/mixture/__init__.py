"""The mixture: paints in parts at a strength, the colour it dries to, and how far off it is.

May import `box` and `pigment`.
"""
