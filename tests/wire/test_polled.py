"""Instruments that answer a query, as recorded dialogues on a pseudo-terminal."""

import threading
import time
from pathlib import Path
from typing import Any

import pytest

from co2vent.errors import RefusedInputError
from co2vent.wire.link import Lines, Link
from co2vent.wire.parse import parse_source
from co2vent.wire.polled import parse_dialogue

DIALOGUE = r"""
query = "READ?\r\n"
pattern = 'P=(?P<p>\S+) BAR T=(?P<t>\S+)'

[[channel]]
field = "p"
column = "pressure_bar_g"

[[channel]]
field = "t"
column = "line_temperature_degC"
"""


@pytest.mark.parametrize(
    ("answer", "row"),
    [
        (b"P=19.02 BAR T=-19.8\r\n", b"19.02,-19.8"),
        (b"P=+1.902E1 BAR T=-19.8\r\n", b"19.02,-19.8"),
        (b"P=OL BAR T=-19.8\r\n", b"over_range,-19.8"),
        (b"P=1_9 BAR T=-19.8\r\n", b"fault,-19.8"),
        (b"P=19.02 PSI T=-19.8\r\n", b"no reading: the answer is not as the pattern says"),
        (b"P=19.02 BAR T=-19.8", b"no reading: no whole answer in time"),
        (b"\xff\xfe P=19.02 BAR T=-19.8\r\n", b"no reading: the answer is not as the pattern says"),
        (b"x" * 2000, b"no reading: no whole answer in time"),
    ],
)
def test_a_recorded_dialogue(answer: bytes, row: bytes, gauge: Any, tmp_path: Path) -> None:
    (tmp_path / "meter.toml").write_text(DIALOGUE)
    link = Link(parse_source(f"polled:{gauge.device}?map={tmp_path}/meter.toml&period_s=0.1"))
    link.open()
    asked: list[bytes] = []

    def meter() -> None:
        try:
            while True:
                asked.append(gauge.hears())
                gauge.say(answer)
        except OSError:
            return

    threading.Thread(target=meter, daemon=True).start()
    end_s = time.monotonic() + 0.5
    text = b""
    while time.monotonic() < end_s:
        text += b"".join(a.text for a in link.read(0.05) if isinstance(a, Lines))
    link.close()
    assert asked[0] == b"READ?\r\n"
    lines = text.splitlines()
    assert lines[0] == b"pressure_bar_g,line_temperature_degC"
    assert set(lines[1:]) == {row}


def test_a_late_answer_does_not_pass_for_the_next_one(gauge: Any, tmp_path: Path) -> None:
    (tmp_path / "meter.toml").write_text(DIALOGUE)
    link = Link(parse_source(f"polled:{gauge.device}?map={tmp_path}/meter.toml&period_s=0.1"))
    link.open()
    link.read(0.1)  # the header
    gauge.say(b"P=99.00 BAR T=0\r\n")  # an answer to nothing that was asked now
    time.sleep(0.1)
    threading.Timer(0.15, lambda: gauge.say(b"P=19.02 BAR T=0\r\n")).start()
    (lines,) = link.read(0.5)
    assert isinstance(lines, Lines)
    assert lines.text == b"19.02,0\n"
    link.close()


@pytest.mark.parametrize(
    ("text", "said"),
    [
        (DIALOGUE.replace("query", "question"), "unknown key 'question'"),
        (DIALOGUE.replace('"p"', '"x"'), "field must be one of the pattern's"),
        (DIALOGUE.replace(r"\S+)", r"\S+"), "pattern: "),
        (DIALOGUE.replace("pressure_bar_g", "pressure_bar"), "gauge or absolute"),
        (DIALOGUE.replace(r'"READ?\r\n"', '""'), "query must be ASCII"),
        ("query = 1", "no .*channel"),
    ],
)
def test_a_dialogue_that_is_not_certain_is_refused(text: str, said: str) -> None:
    with pytest.raises(RefusedInputError, match=said):
        parse_dialogue(text, "meter.toml")
