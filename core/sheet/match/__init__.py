"""The match: which stretch of the sheet is which band of the reference, and where the lines are.

May import `painted`; `findings` and `check` import it.
"""
