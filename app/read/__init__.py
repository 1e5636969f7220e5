"""The Read page: the photo with its lines, and what each band reads."""
