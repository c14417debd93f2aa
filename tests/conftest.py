"""Shared by all tests: Qt without a screen, settings apart from the person's own."""

import os
import tempfile

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["CO2VENT_CONFIG_DIR"] = tempfile.mkdtemp(prefix="co2vent-test-settings-")
