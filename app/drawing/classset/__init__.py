"""What the Class page draws: the wall of all sheets, a row of places, two sheets large.

May import what `app.drawing` names below it.
"""
