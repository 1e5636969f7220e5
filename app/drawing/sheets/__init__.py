"""Drawings of the Sheets page: the board of pictures, its marks, the rows of findings.

`views.py` makes its views from a check. May import what is loose in `drawing`; `app.sheets`
and cards import it.
"""
