"""The choice: what a teacher would mix for a band, and why; all bands chosen together.

`classroom` builds a hue from its neighbours on the wheel, `closest_plan` takes what comes nearest,
`runs` chooses all bands at once, `band_plan` puts one band's plan together. May import every other
folder of `core.paint` but `words`.
"""
