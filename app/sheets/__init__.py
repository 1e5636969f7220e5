"""The parts of the Sheets page: each shows one thing and knows neither document nor window."""
