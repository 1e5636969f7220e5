"""The parts of the Mix page: the box, the rows, the plan. Each takes a view and speaks by signals."""
