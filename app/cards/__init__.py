"""Printed cards: laid out in millimetres, drawn by the screen's painters, written as PDF."""
