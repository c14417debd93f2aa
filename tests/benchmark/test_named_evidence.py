"""DEVELOPERS.md names tests and commands as evidence: each of them exists."""

import re
from importlib import import_module
from pathlib import Path

import pytest

from co2vent.cli.main import build_parser

ROOT = Path(__file__).parents[2]
TABLE = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8").partition("## When things fail")[2]
ROWS = [line for line in TABLE.partition("\n## ")[0].splitlines() if line.startswith("| ")][2:]


def test_there_is_a_table() -> None:
    assert len(ROWS) >= 20


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row.split("|")[1].strip())
def test_what_is_named_as_evidence_exists(row: str) -> None:
    _, _, evidence, measured, _ = row.split("|")
    assert measured.strip()
    named = re.findall(r"(tests/[\w/]+\.py)((?: -k \w+)?)", evidence)
    commands = re.findall(r"co2vent benchmark (\w+)", evidence)
    assert named or commands
    for path, word in named:
        tests = re.findall(r"^def (test_\w+)", (ROOT / path).read_text(encoding="utf-8"), re.M)
        assert any(word.removeprefix(" -k ") in test for test in tests), (path, word)
    for command in commands:
        assert build_parser("benchmark").parse_args(["benchmark", command]).command == "benchmark"
        assert import_module("co2vent.cli.benchmark")
