"""Commands that go on running beside a test."""

import os
import signal
import subprocess
from collections.abc import Callable, Iterator, Mapping
from pathlib import Path

import pytest

from tests.contract.command import COMMAND


@pytest.fixture
def start(tmp_path: Path) -> Iterator[Callable[..., subprocess.Popen[str]]]:
    """Start the command; what still runs at the end of the test is ended."""
    started: list[subprocess.Popen[str]] = []

    def begin(
        *words: object, cwd: Path = tmp_path, env: Mapping[str, str] | None = None
    ) -> subprocess.Popen[str]:
        process = subprocess.Popen(
            [*COMMAND, *map(str, words)],
            cwd=cwd,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
            bufsize=1,
            env={**os.environ, **(env or {})},
        )
        started.append(process)
        return process

    yield begin
    for process in started:
        if process.poll() is None:
            process.send_signal(signal.SIGTERM)
            try:
                process.wait(5)
            except subprocess.TimeoutExpired:
                process.kill()
        process.wait()
        for stream in (process.stdin, process.stdout, process.stderr):
            if stream is not None and not stream.closed:
                stream.close()
