"""The installed command as another program runs it: processes, files, pipes."""

import contextlib
import io
import json
import math
import os
import random
import subprocess
import sys
import time
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Any

from co2vent.cli.main import main

Json = dict[str, Any]
BESIDE = Path(sys.executable).with_name("co2vent")
COMMAND = [str(BESIDE)] if BESIDE.exists() else [sys.executable, "-m", "co2vent"]
HEADER = "elapsed_s,pressure_bar_g,line_temperature_degC,vent_valve"


def run(
    *words: object, cwd: Path, stdin: str | None = None, env: Mapping[str, str] | None = None
) -> subprocess.CompletedProcess[str]:
    """Run the command to its end in `cwd`."""
    return subprocess.run(
        [*COMMAND, *map(str, words)],
        cwd=cwd,
        input=stdin,
        stdin=subprocess.DEVNULL if stdin is None else None,
        capture_output=True,
        text=True,
        timeout=90,
        check=False,
        env={**os.environ, **(env or {})},
    )


def call(*words: object, cwd: Path) -> subprocess.CompletedProcess[str]:
    """Run the command in this process, which spares its start; not for streams and signals."""
    out, err = io.StringIO(), io.StringIO()
    with (
        contextlib.chdir(cwd),
        contextlib.redirect_stdout(out),
        contextlib.redirect_stderr(err),
    ):
        try:
            status = main([str(word) for word in words])
        except SystemExit as ended:
            status = ended.code if isinstance(ended.code, int) else int(bool(ended.code))
    return subprocess.CompletedProcess(words, status, out.getvalue(), err.getvalue())


def strict(text: str) -> Json:
    """Parse JSON by RFC 8259: NaN and Infinity are no JSON."""

    def refuse(word: str) -> float:
        raise AssertionError(f"{word} is no JSON")

    value: Json = json.loads(text, parse_constant=refuse)
    return value


def assess(cwd: Path, *words: object) -> Json:
    """The JSON of one log that must be accepted."""
    done = call("assess", "--json", *words, cwd=cwd)
    assert done.returncode == 0, done.stderr
    assert not done.stderr, done.stderr
    return strict(done.stdout)


def assess_all(cwd: Path, *words: object) -> list[Json]:
    """The JSON lines of several logs that must all be accepted."""
    done = run("assess", "--json", *words, cwd=cwd)
    assert done.returncode == 0, done.stderr
    assert not done.stderr, done.stderr
    return [strict(line) for line in done.stdout.splitlines()]


def refused(done: subprocess.CompletedProcess[str]) -> str:
    """The one line of a refusal: exit status 2, one line on stderr, no traceback."""
    assert done.returncode == 2, (done.returncode, done.stdout[-300:], done.stderr[-2000:])
    assert len(done.stderr.splitlines()) == 1, done.stderr
    assert "Traceback" not in done.stderr
    return done.stderr.strip()


def vent_rows(step_s: float = 1.0, hold_s: float = 300.0, seed: int = 1) -> list[list[str]]:
    """A closed section, a vent and a wet hold; numbers with a gauge's noise, no physics."""
    noise = random.Random(seed)
    rows, pressure, at_s = [], 19.0, 0.0
    end = 90.0 + hold_s
    while at_s <= end:
        is_open = 30 <= at_s < 90
        if is_open:
            shown = 19.0 - 13.4 * (at_s - 30) / 60
        elif at_s >= 90:
            shown = 7.5 - 1.9 * math.exp(-(at_s - 90) / 60)
        else:
            shown = pressure
        rows.append(
            [
                f"{at_s:.1f}",
                f"{shown + noise.gauss(0, 0.002):.3f}",
                f"{-20.0 - (0 if at_s < 30 else min(at_s - 30, 60) / 2):.2f}",
                "open" if is_open else "closed",
            ]
        )
        at_s += step_s
    return rows


def write_log(
    path: Path, rows: list[list[str]] | None = None, header: str = HEADER, **metadata: str
) -> Path:
    """Write a readings log."""
    lines = [f"# {key}: {value}" for key, value in metadata.items()]
    lines.append(header)
    lines += [",".join(row) for row in (vent_rows() if rows is None else rows)]
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return path


def wait_until(what: Callable[[], bool], seconds: float, why: str) -> None:
    """Wait for something that happens in another process."""
    end = time.monotonic() + seconds
    while not what():
        assert time.monotonic() < end, why
        time.sleep(0.05)
