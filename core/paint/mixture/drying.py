"""Wet paint looks darker: by how much, for the sentence that says so.

The measured samples are dry, so every chip shows what a wash dries to. Measured over 75 paints
at full strength, drying lightened them by 2.3 L* on average, a quarter of a Munsell step (B.
MacEvoy, handprint.com, drying shift); weaker washes shift more.
"""

DRYING_STEPS = 0.25
"""Munsell steps a wash lightens while it dries, unless the class says otherwise."""
