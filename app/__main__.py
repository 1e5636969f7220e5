"""`python -m app PHOTO` is the same as `gradewash PHOTO`."""

import sys

from app.main import main

sys.exit(main())
