"""The findings: what differs from the reference, what it scores, and what is said of it.

May import every other folder of `core.sheet`; none of them imports it.
"""
