"""The Worksheet page: scales, written answers, and what was measured.

`page.py` is the door. May import `workspace` and all below, no other page.
"""
