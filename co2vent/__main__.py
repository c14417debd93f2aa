"""`python -m co2vent`."""

from co2vent.cli.main import main

raise SystemExit(main())
