"""Drawings that only the printed cards use."""
