"""How the program looks: colours, type, grid and icons, in one place.

Use it so::

    from app.look import look           # the look in force: look().theme, look().type
    from app.look import apply_look     # put another one in force

Everything on screen is measured from here; nothing else holds a colour or a text size.

May import `fonts` alone; everything above imports it.
"""

from app.look.current import Look, apply_look, look
from app.look.theme import DARK, LIGHT, Theme, theme_for
from app.look.type import TypeScale

__all__ = ["DARK", "LIGHT", "Look", "Theme", "TypeScale", "apply_look", "look", "theme_for"]
