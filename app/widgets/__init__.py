"""Small controls and displays. Each shows one thing, takes its data by one method, speaks by
signals, and knows neither the document nor the window. Run a module to see it:
`python -m app.widgets.buttons`.

May import `drawing`, `look` and `state`; pages and the window import it.
"""
