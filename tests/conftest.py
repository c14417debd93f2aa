"""Shared by all tests: Qt without a screen, settings apart from the person's own."""

import os
import tempfile

from hypothesis import settings

# a busy machine is no failure: what must be quick has tests of its own
settings.register_profile("co2vent", deadline=None)
settings.load_profile("co2vent")
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["CO2VENT_CONFIG_DIR"] = tempfile.mkdtemp(prefix="co2vent-test-settings-")
