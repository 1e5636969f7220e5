"""Where every start begins: `gradewash`, `python -m app`, and the build to hand out.

Ctrl+C ends the program at once and without a word, also while its parts are still being
imported, when Python would print where it was. Nothing is lost by that: files are written aside
and put in place in one step, and unsaved work is kept apart.
"""

from __future__ import annotations

import signal
import sys


def main() -> int:
    """Run the program with the arguments it was started with; gives its exit status."""
    signal.signal(signal.SIGINT, signal.SIG_DFL)
    from multiprocessing import freeze_support  # deferred: so that Ctrl+C is quiet meanwhile

    # In a build without Python, worker processes start as this program does.
    freeze_support()
    from app.main import main as run  # deferred: so that Ctrl+C is quiet meanwhile

    return run()


if __name__ == "__main__":
    sys.exit(main())
