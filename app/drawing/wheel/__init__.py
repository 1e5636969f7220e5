"""The painter's wheel: its shape, where markers and names stand, and how it is drawn."""
