"""Files that somebody damaged, by accident or not: each gives a result or one sentence, soon.

`seeds` makes sound files of every kind the program opens, `mutators` damages them, `targets`
opens them as the program does, `runner` does that in a child process and counts what came of it.

    python -m tests.fuzz.run --pictures 10000 --studies 3000 --boxes 2500 --classes 500 --seed 1

`test_fuzz.py` is the short run of the same.
"""
