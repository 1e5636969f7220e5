"""A build to hand out: a folder that runs without Python, a Debian package of it, and their trials.

`build.py` makes both, `clean_root.py` tries them in a Debian root that has no Python, `wheels.py`
shows that every dependency is there for Windows and macOS too.
"""
