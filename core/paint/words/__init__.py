"""The plan in words: everything a page, a card or the command line says of mixes.

May import every other folder of `core.paint`; none of them imports it.
"""
