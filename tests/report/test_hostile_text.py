"""Names that are markup, formulas or control characters: the report shows them as text."""

import csv
import io
from dataclasses import replace

from hypothesis import given, settings
from hypothesis import strategies as st

from co2vent.readings.log_writer import one_line, quoted
from co2vent.report.facts import ReportFacts
from co2vent.report.holds_csv import holds_csv, plain_text
from co2vent.report.html import report_html
from co2vent.report.markup import text
from tests.report.test_report import words_of

# first characters after OWASP, CSV Injection; markup after the HTML standard's own special ones
HOSTILE = st.text(max_size=20) | st.sampled_from(
    ["<script>alert(1)</script>", "</td></table>", "<img src=x onerror=y>", "&lt;b&gt;",
     '"><a href=z>', "=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", " =1", "\0=1",
     "\x1b[2J", "\u202e", "\ufeff=1", "\uff1d1+1", "\udcff"]
)  # fmt: skip


def test_no_name_becomes_markup(facts: ReportFacts) -> None:
    log = facts.logs[0]

    @given(HOSTILE, HOSTILE)
    @settings(max_examples=60)
    def check(name: str, file: str) -> None:
        setup = replace(log.view.setup, section_name=name)
        view = replace(log.view, setup=setup)
        html = report_html(replace(facts, logs=(replace(log, name=file, view=view),)))
        words_of(html)  # balanced, and nothing outside the file is named
        assert html.encode()  # as it is written: no half a character of a file name
        assert "<script" not in html
        assert "<img" not in html
        assert "<a " not in html
        assert not any(ord(c) < 32 and c not in "\n\t" for c in html)

    check()


@given(HOSTILE)
def test_no_text_becomes_a_formula(words: str) -> None:
    for cell in (plain_text(words), quoted(words).strip('"')):
        seen = "".join(c for c in cell if c.isprintable()).strip()
        assert not seen.startswith(("=", "+", "-", "@", "\uff1d", "\uff0b", "\uff0d", "\uff20"))


def test_a_log_name_is_one_cell_of_the_exported_holds(facts: ReportFacts) -> None:
    @given(HOSTILE)
    @settings(max_examples=60)
    def check(name: str) -> None:
        log = replace(facts.logs[0], name=name)
        table = io.StringIO(holds_csv(replace(facts, logs=(log,))), newline="")
        rows = list(csv.reader(table))
        assert len({len(row) for row in rows}) == 1
        assert len(rows) == 1 + len(log.view.holds)

    check()


@given(HOSTILE)
def test_a_text_of_a_log_stays_on_its_line(words: str) -> None:
    for made in (one_line(words), quoted(words)):
        assert len(made.splitlines()) <= 1
    assert "<" not in text(words)
