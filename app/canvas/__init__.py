"""The photo on its wall, with the lines that cut its sky into bands."""
