"""What the window makes once and every page gets: photo, plan, checks, pictures, notices."""
