"""The job record from a log and from a job, as PDF and as HTML; windows without a display."""

import contextlib
import subprocess
from collections.abc import Callable
from pathlib import Path

import pytest

from tests.contract.command import call, refused, run, write_log

BEGINS = {"pdf": b"%PDF-", "html": b"<!DOCTYPE html>"}


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A log, and a job that has read it."""
    path = tmp_path_factory.mktemp("reports")
    write_log(path / "log.csv", section_name="strainer 3", simulated="yes", altitude_m="120")
    for words in (
        ("begin", "--folder", "work", "--site", "cold store 2", "--section", "strainer 3",
         "--simulated"),
        ("read", "work", "log.csv"),
        ("note", "work", "hose moved"),
    ):  # fmt: skip
        done = call("job", *words, cwd=path)
        assert done.returncode == 0, (words, done.stderr)
    return path


@pytest.mark.parametrize("kind", ["pdf", "html"])
@pytest.mark.parametrize("what", ["log.csv", "work"])
def test_a_log_and_a_job_become_a_record(kind: str, what: str, folder: Path) -> None:
    out = folder / f"{what}-out.{kind}"
    done = run("report", what, "--out", out.name, cwd=folder)
    assert done.returncode == 0, done.stderr
    assert out.read_bytes().startswith(BEGINS[kind])
    if kind == "html":
        text = out.read_text(encoding="utf-8")
        assert "simulated" in text.lower()
        assert "strainer 3" in text
        assert ("cold store 2" in text) == (what == "work")
        assert ("hose moved" in text) == (what == "work")
        assert "safe to open" not in text.lower()
    else:
        assert out.read_bytes().rstrip().endswith(b"%%EOF")


def test_what_cannot_be_reported_is_one_line_and_leaves_nothing(folder: Path) -> None:
    (folder / "bad.csv").write_text("elapsed_s,pressure\n0,19\n1,19\n")
    (folder / "empty").mkdir(exist_ok=True)
    for what, out in (
        ("log.csv", "x.txt"), ("log.csv", "x"), ("missing.csv", "x.pdf"), ("bad.csv", "x.html"),
        ("empty", "x.pdf"), ("log.csv", "no/such/x.pdf"),
    ):  # fmt: skip
        refused(call("report", what, "--out", out, cwd=folder))
        assert not (folder / out).exists()


def test_a_simulated_job_is_never_signed(folder: Path) -> None:
    done = call("job", "sign", "work", "--help", cwd=folder)
    assert done.returncode == 0
    names = ("--by", "A. Person") if "--by" in done.stdout else ()
    said = refused(call("job", "sign", "work", *names, cwd=folder))
    assert "simulated" in said.lower() or "practice" in said.lower()


def test_windows_without_a_display_say_so(folder: Path) -> None:
    bare = {"DISPLAY": "", "WAYLAND_DISPLAY": "", "QT_QPA_PLATFORM": ""}
    for words in ((), ("replay", "log.csv"), ("watch", "--source", "log.csv")):
        refused(run(*words, cwd=folder, env=bare))
    refused(run("replay", "log.csv", cwd=folder, env={**bare, "QT_QPA_PLATFORM": "xcb"}))
    refused(call("replay", "missing.csv", cwd=folder))
    refused(call("replay", "log.csv", "--speed", 0, cwd=folder))


def test_replay_and_the_start_page_open_a_window(
    folder: Path, start: Callable[..., subprocess.Popen[str]]
) -> None:
    offscreen = {"QT_QPA_PLATFORM": "offscreen"}
    words = ("replay", "log.csv", "--speed", 20, "--screenshot", "replay.png", "--at", 0.5)
    done = run(*words, cwd=folder, env=offscreen)
    assert done.returncode == 0, done.stderr
    assert (folder / "replay.png").read_bytes().startswith(b"\x89PNG")
    alone = start(env=offscreen)
    with contextlib.suppress(subprocess.TimeoutExpired):
        alone.wait(4)  # a busy machine takes a while to start
    assert alone.poll() is None, alone.communicate()
    alone.terminate()
    assert alone.wait(10) == 0


COMMANDS = ("watch", "record", "replay", "assess", "plan", "simulate", "emulate", "report")


def test_every_command_has_help_and_a_mistake_is_one_line(folder: Path) -> None:
    helped = call("--help", cwd=folder)
    assert helped.returncode == 0
    for command in COMMANDS:
        assert command in helped.stdout
        done = call(command, "--help", cwd=folder)
        assert done.returncode == 0, command
        assert "usage" in done.stdout
        refused(call(command, "--no-such-option", cwd=folder))
    refused(call("no-such-command", cwd=folder))
