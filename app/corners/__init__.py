"""Setting the corners of a sheet by hand: its whole photo, four rings, a magnifier.

`editor.py` is the door: photo, and what stands beside it. It knows no document: the Sheets page
and the Class page show it, and turn what it asks into edits of their own. `standing.py` says which
corners are shown and where they come from.

May import `widgets`, `drawing` and what stands below; pages import it.
"""
