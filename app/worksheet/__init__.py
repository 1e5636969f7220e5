"""The Worksheet page: scales, written answers, and what was measured."""
