"""The worksheet: what the student says of the two sheets, before anything measured is shown."""
