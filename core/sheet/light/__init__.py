"""The light: what lamp, shadow and tape do to the picture, undone as far as the border shows it."""
