"""The swatch card in the window: asked for and printed, and its picture read into the box.

May import `cards`, `files`, `services` and what stands below; the Mix page opens it.
"""
