"""The class view: one band at a time before the whole class, answers only when asked for."""
