"""Gradewash's measuring and arithmetic. Nothing in here knows Qt."""
