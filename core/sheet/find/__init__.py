"""Finding: where in the picture the painted rectangle lies, and how sure that is."""
