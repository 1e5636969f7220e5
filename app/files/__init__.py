"""The study as a file: opened, saved, kept aside, recovered; and every way a picture gets in."""
