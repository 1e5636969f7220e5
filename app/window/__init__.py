"""The window that holds the pages: menus, header, preferences, first run, help."""
