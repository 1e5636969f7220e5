"""The class set that is open, and all that is under way with it; reached by `desk.ClassDesk`.

| question | module |
|---|---|
| what does the class set say, and how is it undone? | `document` |
| how does it reach the disk? | `keeper`: one thread, in the order asked for |
| how do pictures come in, and how are they checked? | `bringer`, `checker` |
| what of it can be seen? | `pictures` (small images, made in a worker) |

May import what `services` may.
"""
