"""What the window makes once and every page gets: photo, plan, checks, pictures, notices.

May import `canvas`, `widgets` and all below; pages reach it through the workspace.
"""
