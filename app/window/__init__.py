"""The window that holds the pages: menus, header, preferences, first run, help.

`window.py` puts it together, `pages.py` names the pages. May import everything but `start` and
`main`, which alone import it.
"""
