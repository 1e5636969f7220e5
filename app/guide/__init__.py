"""The guide that F1 opens: what each page does, the trade's words, the keys, and the sources.

May import `widgets` and all below; the window imports it.
"""
