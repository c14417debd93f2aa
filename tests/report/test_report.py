"""The report says what the record holds, escapes what people typed, and is written whole."""

import csv
import io
import re
import subprocess
import unicodedata
from collections.abc import Callable
from dataclasses import replace
from html.parser import HTMLParser
from pathlib import Path
from shutil import which

import pytest

from co2vent.errors import StoreError
from co2vent.guidance.events import Event, EventKind
from co2vent.readings.reading import Reading
from co2vent.report import values
from co2vent.report.facts import LogFacts, ReportFacts, thin_runs
from co2vent.report.holds_csv import holds_csv, plain_text
from co2vent.report.html import SIMULATED, report_html, write_html
from co2vent.report.pdf import report_pdf, write_pdf
from co2vent.report.trace import draw_trace
from co2vent.store.job_record import JobRecord


class _Balance(HTMLParser):
    """Checks that every element is closed in its order."""

    VOID = frozenset({"meta", "br", "img"})

    def __init__(self) -> None:
        super().__init__()
        self.open: list[str] = []
        self.words: list[str] = []
        self.links: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.links += [value or "" for name, value in attrs if name in ("src", "href")]
        if tag not in self.VOID:
            self.open.append(tag)

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.links += [value or "" for name, value in attrs if name in ("src", "href")]

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag

    def handle_data(self, data: str) -> None:
        self.words.append(data)


def words_of(html: str) -> str:
    parser = _Balance()
    parser.feed(html)
    assert parser.open == []
    assert parser.links == [], "the file needs nothing outside it"
    return " ".join(" ".join(parser.words).split())


def pdf_words(data: bytes, tmp_path: Path, *options: str) -> str:
    path = tmp_path / "read.pdf"
    path.write_bytes(data)
    read = subprocess.run(
        ["pdftotext", *options, str(path), "-"], capture_output=True, check=True, text=True
    )
    return unicodedata.normalize("NFKC", read.stdout)  # fi and ff may be set as one letter


needs_poppler = pytest.mark.skipif(which("pdftotext") is None, reason="poppler-utils not here")


def test_the_first_page_has_verdict_numbers_and_bounds(facts: ReportFacts) -> None:
    words = words_of(report_html(facts))
    for expected in (
        "4.18 bar g",  # triple point 5.1795 bar a less 0.99891 bar
        "60.6 psig",
        "5.21 bar g",
        "120 m (given)",
        "±0.5 % = ±0.30 bar",
        "+0.020 bar, subtracted",
        "4.1 kg (3.2 kg to 5 kg), computed",
        "0:05:20, of which 0:00:00 before vapour only was shown",
        "0 g (0 g to 7.1 g)",
        "no upper bound",
        "Late slope 0.72 mbar/min",  # 1.2 Pa/s = 0.012 mbar/s
        "Reason of hold 1 <&> with 12 mbar/min.",
        "running at the end",
        "sha256 " + "ab" * 32,
        "A readings log alone is not signed",
        "co2vent 9.9",
        "-38.1 °C (-36.7 °F)",
        "812 ppm",
        "Hold 1 starts",
        "pressure 'OL': over range",
    ):
        assert expected in words, expected


def test_what_people_typed_is_text_and_nothing_else(job_facts: ReportFacts) -> None:
    html = report_html(job_facts)
    assert "<script" not in html
    assert "Strainer 4 <north> & south" in words_of(html)
    assert "default-src 'none'" in html


def test_a_job_shows_all_its_parts(job_facts: ReportFacts) -> None:
    words = words_of(report_html(job_facts))
    record = job_facts.record
    assert record is not None
    for expected in (
        "Ada Berg, technician, R744-118",
        "SN-4471",
        "2026-01-15",
        "V-101 liquid feed shut 7 7",
        "SKIPPED: proved on the morning round",
        "read off by Bo Lund",
        "fuse F13, not F12",
        "Standing-pressure and vacuum tests",
        "gas nitrogen, loss mbar per h 1.25 (-3 to 18)",
        "from memory of EN 378-4 / ISO 5149-4 style logs",
        "Changes and replaced components (m) not recorded",
        f"over {record.signatures[0].over[:16]}",
        record.chain.digest,
        "every entry matches its digest",
        "does not prove who typed the name",
    ):
        assert expected in words, expected


def test_a_changed_job_is_reported_as_such(
    tmp_path: Path, facts: ReportFacts, job_maker: Callable[..., JobRecord]
) -> None:
    from co2vent.store.job_record import read_job

    job_maker(tmp_path / "job")
    path = tmp_path / "job" / "job.jsonl"
    path.write_bytes(path.read_bytes().replace(b"fuse F12", b"fuse F99"))
    changed = replace(facts, record=read_job(tmp_path / "job"))
    assert "entry 2 was changed after it was written" in words_of(report_html(changed))


def test_no_report_says_safe_to_open(facts: ReportFacts, job_facts: ReportFacts) -> None:
    for one in (facts, job_facts):
        assert not re.search(r"safe\s+to\s+open", report_html(one), re.IGNORECASE)


def test_without_a_hold_nothing_is_said_to_be_known(facts: ReportFacts) -> None:
    log = facts.logs[0]
    view = replace(log.view, holds=(), running_hold=None, vapor_only_since_s=None)
    words = words_of(report_html(replace(facts, logs=(replace(log, view=view),))))
    assert "At the end of the record: Not known." in words


def test_simulated_is_on_every_page(
    simulated_facts: ReportFacts, tmp_path: Path, job_maker: Callable[..., JobRecord]
) -> None:
    html = report_html(simulated_facts)
    assert SIMULATED in words_of(html)
    assert "table-header-group" in html, "a printing browser repeats the head"
    facts = replace(simulated_facts, record=job_maker(tmp_path / "job", simulated=True))
    assert "never signed" in words_of(report_html(facts))


@needs_poppler
@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_every_pdf_page_of_practice_says_so(
    paper: str, simulated_facts: ReportFacts, tmp_path: Path, job_maker: Callable[..., JobRecord]
) -> None:
    facts = replace(simulated_facts, record=job_maker(tmp_path / "job", simulated=True))
    pages = pdf_words(report_pdf(facts, paper), tmp_path).split("\f")[:-1]
    assert len(pages) >= 3
    for number, page in enumerate(pages, 1):
        assert SIMULATED in page
        assert f"page {number} of {len(pages)}" in page


@needs_poppler
@pytest.mark.parametrize(("paper", "points"), [("a4", (595, 842)), ("letter", (612, 792))])
def test_the_pdf_has_the_paper_asked_for(
    paper: str, points: tuple[int, int], facts: ReportFacts, tmp_path: Path
) -> None:
    """ISO 216 A4 is 210 x 297 mm; US letter 8.5 x 11 in; a point is 1/72 in."""
    path = tmp_path / "r.pdf"
    write_pdf(facts, path, paper)
    found = subprocess.run(["pdfinfo", str(path)], capture_output=True, check=True, text=True)
    size = re.search(r"Page size:\s+([\d.]+) x ([\d.]+)", found.stdout)
    assert size is not None
    assert [round(float(value)) for value in size.groups()] == list(points)


@needs_poppler
def test_the_first_pdf_page_holds_the_whole_summary(facts: ReportFacts, tmp_path: Path) -> None:
    first = " ".join(pdf_words(report_pdf(facts), tmp_path, "-l", "1").split())
    for expected in ("At the end of the record", "5.21 bar g", "bar g", "psig", "Signatures"):
        assert expected in first
    assert "What was assumed" not in first


@needs_poppler
def test_no_heading_is_lost_or_left_alone_in_the_pdf(
    job_facts: ReportFacts, tmp_path: Path
) -> None:
    headings = re.findall(r"<h2[^>]*>(.*?)</h2>", report_html(job_facts))
    assert len(headings) > 10
    pages = pdf_words(report_pdf(job_facts), tmp_path, "-layout").split("\f")
    found = [
        [" ".join(line.split()) for line in page.splitlines() if line.strip()] for page in pages
    ]
    for heading in headings:
        plain = " ".join(heading.split())
        on = [lines for lines in found if plain in lines]
        assert on, heading
        assert on[0].index(plain) < len(on[0]) - 2, f"{heading} stands alone above the foot"


@needs_poppler
def test_many_holds_leave_the_first_page_whole(facts: ReportFacts, tmp_path: Path) -> None:
    log = facts.logs[0]
    many = tuple(replace(log.view.holds[0], number=number) for number in range(1, 30))
    busy = replace(facts, logs=(replace(log, view=replace(log.view, holds=many)),))
    pages = pdf_words(report_pdf(busy), tmp_path, "-layout").split("\f")
    first, rest = pages[0], "".join(pages[1:])
    assert "Signatures and digests" in first
    assert re.search(r"Before them 2\d holds \(2\d × vapour only\)", first)
    assert "A readings log alone is not signed" in first
    assert "All holds of vent-1.csv" in rest
    assert len(re.findall(r"^\s*\d+\s+0:09:20", rest, re.MULTILINE)) == 29


@needs_poppler
def test_the_trace_in_the_pdf_is_drawn_not_a_picture(facts: ReportFacts, tmp_path: Path) -> None:
    path = tmp_path / "r.pdf"
    write_pdf(facts, path)
    found = subprocess.run(
        ["pdfimages", "-list", str(path)], capture_output=True, check=True, text=True
    )
    assert len(found.stdout.splitlines()) == 2, "only the head of the list"
    assert "stop 5.21 bar g" in pdf_words(path.read_bytes(), tmp_path)


@pytest.mark.parametrize("write", [write_html, write_pdf])
def test_an_unwritable_path_is_told_and_leaves_the_old_file(
    write: Callable[[ReportFacts, Path], None], facts: ReportFacts, tmp_path: Path
) -> None:
    with pytest.raises(StoreError, match="choose another folder"):
        write(facts, tmp_path / "nowhere" / "r.out")
    folder = tmp_path / "is a folder"
    folder.mkdir()
    with pytest.raises(StoreError):
        write(facts, folder)
    assert folder.is_dir()
    assert [path.name for path in tmp_path.iterdir()] == ["is a folder"], "nothing half-written"


def test_the_lines_differ_without_colour(facts: ReportFacts) -> None:
    drawing = draw_trace(facts.logs[0])
    wide = [stroke for stroke in drawing.strokes if stroke.width >= 0.35]
    assert len({(stroke.dash, stroke.width) for stroke in wide}) >= 5
    assert all(0.0 <= stroke.grey <= 1.0 for stroke in drawing.strokes)
    for label in drawing.labels:
        assert 0 <= label.x <= drawing.width
        assert 0 <= label.y <= drawing.height


def test_the_pressure_is_drawn_where_its_axis_says(facts: ReportFacts) -> None:
    """The two limit lines and the trace share one scale: checked from their printed numbers."""
    drawing = draw_trace(facts.logs[0])
    ticks: dict[float, float] = {}
    for label in drawing.labels:  # the pressure axis comes before that of the temperatures
        if label.anchor == "end" and label.x < 16 and re.fullmatch(r"[\d.]+", label.text):
            ticks.setdefault(float(label.text), label.y - 0.9)
    low, high = ticks[0.0], ticks[10.0]
    trace = next(stroke for stroke in drawing.strokes if stroke.width == 0.5)
    first = (trace.points[0][1] - low) / (high - low) * 10.0
    assert first == pytest.approx(19.0, abs=0.05)
    stop = next(stroke for stroke in drawing.strokes if stroke.dash == (3.0, 1.2))
    assert (stop.points[0][1] - low) / (high - low) * 10 == pytest.approx(5.21, abs=0.02)


def test_thinning_keeps_a_short_dip_and_a_gap_stays_a_gap() -> None:
    readings = [Reading(float(at_s), 6e5) for at_s in range(20_000)]
    readings[7_777] = Reading(7_777.0, 4e5)
    del readings[9_000:9_030]
    runs = thin_runs(readings, len(readings), 1.0)
    kept = [reading.pressure_pa for run in runs for reading in run]
    assert len(kept) < 4_000
    assert min(kept) == 4e5
    assert len(runs) == 2
    assert (runs[0][-1].at_s, runs[1][0].at_s) == (8_999.0, 9_030.0)


def test_a_vacuum_log_is_drawn_in_microns(facts: ReportFacts) -> None:
    """500 micron is 66.7 Pa (1 micron = 0.13332 Pa); one decade is one step of the scale."""
    pump = [
        Reading(float(at_s), 100.0, vacuum_pa=0.133322 * (100_000.0 * 0.9**at_s + 400.0))
        for at_s in range(200)
    ]
    log = replace(facts.logs[0], runs=thin_runs(pump, len(pump), 1.0))
    drawing = draw_trace(log)
    words = {label.text for label in drawing.labels}
    assert {"micron", "Pa", "500", "66.7", "1000", "vacuum"} <= words
    assert not any("stop" in word for word in words)
    at = {label.text: label.y for label in drawing.labels if label.anchor == "end"}
    assert at["1000"] - at["10000"] == pytest.approx(at["10000"] - at["100000"], rel=1e-6)


def test_the_first_page_shows_the_vent_not_the_newest_log(facts: ReportFacts) -> None:
    vent = facts.logs[0]
    later = replace(
        vent,
        name="break.csv",
        view=replace(vent.view, holds=(replace(vent.view.holds[0], number=0),)),
    )
    assert replace(facts, logs=(vent, later)).vent_log is vent


def test_a_plans_figures_have_units(
    job_facts: ReportFacts,
) -> None:
    record = job_facts.record
    assert record is not None
    plan = {
        "stop_pressure_pa_gauge": 521_000.0,
        "saturation_pressure_pa": 2_648_700.0,
        "charge_temperature_k": 263.15,
        "dry_ice_kg": 0.05,
        "vent_to_stop_s": 3720,
        "boil_off_energy_j": 1_125_000.0,
        "trapped_liquid_bar_per_k": 8.94,
        "room_ppm_all_vented": 22_970.0,
        "warnings": ["lead the vent outdoors"],
    }
    words = words_of(report_html(replace(job_facts, record=replace(record, plan=plan))))
    for expected in (
        "5.21 bar g (75.6 psig)",
        "26.49 bar a (384.2 psia)",
        "-10.0 °C (14.0 °F)",
        "50 g",
        "1:02:00",
        "1125 kJ",
        "8.94 bar/K",
        "22970",
        "lead the vent outdoors",
    ):
        assert expected in words, expected


def test_one_reading_or_none_makes_no_trace_and_no_failure(facts: ReportFacts) -> None:
    for runs in ((), ((Reading(0.0, 6e5),),)):
        bare = replace(facts, logs=(replace(facts.logs[0], runs=runs),))
        assert "fewer than two readings" in words_of(report_html(bare))
        assert report_pdf(bare).startswith(b"%PDF-")


def test_the_holds_as_csv_are_the_holds(facts: ReportFacts) -> None:
    rows = list(csv.DictReader(io.StringIO(holds_csv(facts))))
    assert [row["number"] for row in rows] == ["1", "2"]
    assert float(rows[0]["liquid_kg_upper"]) == 0.0071
    assert rows[0]["dry_ice_kg_upper"] == "", "no bound is an empty cell, not a number"
    assert rows[0]["charge"] == "vapor_only"
    assert rows[0]["simulated"] == "no"


@pytest.mark.parametrize(
    "text", ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "  =cmd|' /C calc'!A0"]
)
def test_a_text_can_not_run_as_a_formula(text: str, facts: ReportFacts) -> None:
    """First characters after OWASP, CSV Injection."""
    assert plain_text(text).startswith("'")
    log: LogFacts = replace(facts.logs[0], name=text)
    row = next(iter(csv.DictReader(io.StringIO(holds_csv(replace(facts, logs=(log,)))))))
    assert row["log"].startswith("'")


def test_events_are_printed_in_words_not_in_the_names_of_files():
    verdict = Event(9.0, EventKind.VERDICT, "hold 1: two_phase. Liquid: still rising.")
    assert values.event_words(verdict) == "Hold 1: liquid and vapour. Liquid: still rising."
    prompt = Event(9.0, EventKind.PROMPT, "close_and_hold: Close and hold: 5.2 bar g.")
    assert values.event_words(prompt) == "Prompt: Close and hold: 5.2 bar g."
    note = Event(9.0, EventKind.NOTE, "=two_phase? said Ada")
    assert values.event_words(note) == "Note: =two_phase? said Ada"
