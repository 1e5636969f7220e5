"""The Sheets page: the sky beside both sheets, level, and what was found of them."""
