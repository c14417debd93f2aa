"""What is loaded when: numba costs half a second and is not needed to show a start page."""

import subprocess
import sys


def test_numba_is_loaded_when_a_run_starts_and_not_before() -> None:
    code = (
        "import sys\n"
        "import co2vent.section_model.population, co2vent.practice.exercises\n"
        "import co2vent.practice.live_section, co2vent.cli.simulate\n"
        "co2vent.practice.exercises.exercises()\n"
        "assert 'numba' not in sys.modules\n"
    )
    subprocess.run([sys.executable, "-c", code], check=True, timeout=60)
