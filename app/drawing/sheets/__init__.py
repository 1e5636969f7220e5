"""Drawings of the Sheets page: the board of pictures, its marks, the rows of findings."""
