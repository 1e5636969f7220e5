"""`python -m app PHOTO` is the same as `gradewash PHOTO`; the build to hand out starts here too."""

import sys
from multiprocessing import freeze_support

from app.main import main

if __name__ == "__main__":
    # In a build without Python, worker processes start as this program does.
    freeze_support()
    sys.exit(main())
