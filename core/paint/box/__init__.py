"""The box: the paints a class has, their names and file, and what their labels warn of.

May import `pigment`.
"""
