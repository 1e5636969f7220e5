"""The study as a file: opened, saved, kept aside, recovered; and every way a picture gets in.

`study_files.py` is the door for studies, `opening.py` for pictures. May import `services` and all
below; pages reach it through the workspace.
"""
