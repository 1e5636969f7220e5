"""Gradewash's measuring and arithmetic. Nothing in here knows Qt.

From a picture to sentences: `photo` opens, `bands` reads, `reading` says what was measured,
`words` says it; `paint` plans mixes, `sheet` checks a painting; `study.py` is one exercise and
`study_file` its file; `worksheet`, `lesson` and `cards` are what the class gets; `pipeline.py`
leads from photo to check, `cli` is the command line. May import NumPy, and never `app`. The
floors between the folders stand in pyproject.toml.
"""
