"""Gradewash's window and everything else that needs Qt.

Each page is a folder of its own (`read`, `mix`, `sheets`, `worksheet`, `classview`) on
`workspace.py`, which says what a page is and what it works with. `window` holds the pages;
`cards` prints, `guide` explains, `files` opens and saves, `services` is made once by the window,
`canvas` and `widgets` are what pages are built of, `drawing` paints, `look` is colours and type,
`state` is what is remembered. May import `core`; `core` never imports it. The floors between the
folders stand in pyproject.toml.
"""
