"""The Read page: the photo with its lines, and what each band reads.

`page.py` is the door. May import `workspace` and all below, no other page.
"""
