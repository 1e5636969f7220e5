"""A lesson before the class: which band is asked about, what was answered, and its words.

May import `paint`, `words`, `reading`; the class view imports it.
"""
