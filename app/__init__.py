"""Gradewash's window and everything else that needs Qt."""
