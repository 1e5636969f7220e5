"""The parts of the Mix page: box, rows, plan. Each takes a view and speaks by signals."""
