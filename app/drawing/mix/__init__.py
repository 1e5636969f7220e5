"""Drawings of the Mix page: parts, swatches, strips, ladders, meetings."""
