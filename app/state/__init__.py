"""What the window remembers: the document and its undo, settings, language, boxes, tasks."""
