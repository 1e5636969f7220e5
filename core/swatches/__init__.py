"""The swatch card: which paints go on it, where its fields are, and what a picture of it shows.

May import `core.paint` and what stands below it; the fit itself is in `core.paint.own`.
"""
