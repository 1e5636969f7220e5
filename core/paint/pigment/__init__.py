"""The pigment: what was measured of each paint, and the film that turns K and S into a colour.

May import nothing of `core.paint`.
"""
