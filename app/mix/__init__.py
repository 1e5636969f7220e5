"""The Mix page: the box, a row of mixes beside the sky, and the plan.

`page.py` is the door. May import `workspace` and all below, no other page.
"""
