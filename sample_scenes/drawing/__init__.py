"""How the sample scenes are drawn: needed to draw them anew, never to use them."""
