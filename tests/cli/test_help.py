"""The help names only options that there are."""

import re

import pytest

from co2vent.cli.main import COMMANDS, build_parser, main


def _options(command: str) -> tuple[str, set[str]]:
    """Return the whole help of a command, and the options it defines."""
    commands = build_parser(command)._subparsers
    assert commands is not None
    parser = commands._group_actions[0].choices[command]
    own = {name for action in parser._actions for name in action.option_strings}
    return " ".join(parser.format_help().split()), own


@pytest.mark.parametrize("command", sorted(set(COMMANDS) - {"job", "benchmark"}))
def test_help_names_no_option_that_the_command_lacks(
    command: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("COLUMNS", "2000")  # argparse breaks names at their hyphens
    words, own = _options(command)
    for other, named in re.findall(r"co2vent (\w+) (--[a-z][\w-]*)", words):
        assert named in _options(other)[1], (command, named)
    words = re.sub(r"co2vent \w+ --[a-z][\w-]*", "", words)
    assert set(re.findall(r"--[a-z][\w-]*", words)) <= own


def test_help_of_simulate_says_where_the_sizes_are(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("COLUMNS", "2000")
    with pytest.raises(SystemExit) as ended:
        main(["simulate", "--help"])
    assert ended.value.code == 0
    assert "co2vent plan --list-sizes" in " ".join(capsys.readouterr().out.split())
    assert main(["plan", "--list-sizes"]) == 0
