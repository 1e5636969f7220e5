"""The search: which parts of which paints come nearest to a colour, and how near.

May import `pigment`.
"""
