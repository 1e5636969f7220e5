"""Before the lesson: a folder's photos on the wall, with what each would teach; one press opens it.

What is seen of a photo, and the words for it, are `core.choosing`'s. May import `files`, `widgets`,
`drawing`, `look`, `state`; the window imports it.
"""
