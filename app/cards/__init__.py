"""Printed cards: laid out in millimetres, drawn by the screen's painters, written as PDF.

`control.py` is the door. May import `files`, `services` and all below; the window and pages
import `control` alone.
"""
