"""What the window remembers: the document and its undo, settings, language, boxes, tasks.

`document.py` is the only door to the study. May import `core` alone; everything above imports it.
"""
