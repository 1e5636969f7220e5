"""The Mix page: the box, a row of mixes beside the sky, and the plan."""
