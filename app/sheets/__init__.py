"""The Sheets page: the sky beside both sheets, level, and what was found of them.

`page.py` is the door. May import `workspace` and all below, no other page.
"""
