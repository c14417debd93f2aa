"""A job killed with SIGKILL at any moment opens again with everything that was accepted."""

import signal
import subprocess
import sys
import time
from datetime import UTC, datetime
from pathlib import Path

import pytest

from co2vent.store.job_file import JobFile
from co2vent.store.job_record import read_job

# Writes notes as fast as it can; says each number once it was accepted.
WRITER = """
import sys
from datetime import UTC, datetime
from pathlib import Path
from co2vent.guidance import job_items as items
from co2vent.guidance.job import JobHead
from co2vent.guidance.procedure_text import default_procedure_text
from co2vent.store.job_file import JobFile
now = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
job = JobFile.create(Path(sys.argv[1]), JobHead(section="S"), default_procedure_text(), now)
number = 0
while True:
    job.advance(items.Note(float(number), f"note {number} " + "x" * 300, "Ada"), now)
    print(number, flush=True)
    number += 1
"""


@pytest.mark.skipif(sys.platform == "win32", reason="no SIGKILL there")
@pytest.mark.parametrize("wait_s", [0.0, 0.013, 0.051, 0.12])
def test_what_was_accepted_is_there_after_a_kill(tmp_path: Path, wait_s: float) -> None:
    folder = tmp_path / "job"
    with subprocess.Popen(
        [sys.executable, "-c", WRITER, str(folder)], stdout=subprocess.PIPE, text=True
    ) as writer:
        assert writer.stdout is not None
        writer.stdout.readline()
        time.sleep(wait_s)
        writer.send_signal(signal.SIGKILL)
        said = [0, *(int(line) for line in writer.stdout if line.endswith("\n"))]
    again = JobFile.open(folder, "Ada", datetime(2026, 3, 2, 9, 0, tzinfo=UTC))
    kept = [note.text.split()[1] for note in again.job.notes]
    assert kept == [str(number) for number in range(len(kept))]
    assert len(kept) >= said[-1] + 1, "an accepted entry is on the disk before it is reported"
    assert read_job(folder).problem == ""
