"""The parts of the Worksheet page: scales, written answers, and what was measured."""
