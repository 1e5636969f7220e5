"""A lesson before the class: which band is asked about, what was answered, and its words."""
