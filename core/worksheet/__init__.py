"""The worksheet: what the student says of the two sheets, before anything measured is shown.

May import `sheet` and all below; cards, the command line and the window import it.
"""
