"""Which photo of a folder will teach well? What each sky holds, and what speaks against it.

Nothing is scored: `look.py` looks at one photo, `through.py` at a folder's, `words.py` says
in a line what was seen. May import everything of `core` but `class_set` and `cli`.
"""
