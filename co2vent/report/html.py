"""The report as one HTML file that needs nothing else: styles and drawings are inside."""

from pathlib import Path

from co2vent.report.details import details
from co2vent.report.drawing import to_svg
from co2vent.report.facts import LogFacts, ReportFacts
from co2vent.report.markup import text
from co2vent.report.summary import summary
from co2vent.report.trace import draw_trace
from co2vent.store.whole_file import atomic_write

SIMULATED = "SIMULATED PRACTICE: not a record of a real section"

# The banner is a table head, which browsers repeat on every printed page.
_STYLE = """
body { font: 10pt sans-serif; color: #000; background: #fff; margin: 8mm auto; max-width: 190mm; }
h1 { font-size: 15pt; margin: 0 0 2mm; } h2 { font-size: 11.5pt; margin: 4mm 0 1mm; }
h3 { font-size: 10pt; margin: 2mm 0 0; }
p { margin: 1mm 0; } ul { margin: 1mm 0 1mm 5mm; padding: 0; }
table.grid, table.verdict { border-collapse: collapse; width: 100%; margin: 1mm 0; }
table.grid td, table.grid th { border: 0.2mm solid #555; padding: 0.6mm 1mm; text-align: left;
  vertical-align: top; font-size: 8.5pt; overflow-wrap: anywhere; }
table.verdict td { border: 0.6mm solid #000; padding: 1.5mm 2mm; }
tr { break-inside: avoid; } td.why { background: #f0f0f0; } .small { font-size: 8pt; }
p.small { overflow-wrap: anywhere; }
.banner { border: 1mm solid #000; padding: 1mm; text-align: center; font-weight: bold; }
table.page { width: 100%; border-collapse: collapse; }
table.page > thead { display: table-header-group; }
@media print { body { margin: 0; max-width: none; } @page { size: PAPER; margin: 12mm; } }
"""


def report_html(facts: ReportFacts, paper: str = "a4") -> str:
    """Return the whole file. `paper` is the page size for printing it."""

    def trace(log: LogFacts) -> str:
        return to_svg(draw_trace(log), f"Pressure and temperatures of {log.name}")

    banner = f'<div class="banner">{SIMULATED}</div>' if facts.simulated else ""
    head = f"<thead><tr><td>{banner}</td></tr></thead>" if banner else ""
    content = summary(facts, trace) + details(facts, trace)
    title = text(f"{facts.section or 'CO2 section'}: vent record")
    return (
        '<!DOCTYPE html>\n<html lang="en"><head><meta charset="utf-8">'
        # nothing may be fetched and no script run, whatever a name or note holds
        '<meta http-equiv="Content-Security-Policy" content="default-src \'none\'; '
        "style-src 'unsafe-inline'\">"
        f"<title>{title}</title><style>{_STYLE.replace('PAPER', paper)}</style></head><body>"
        f'<table class="page">{head}<tbody><tr><td>{content}</td></tr></tbody></table>'
        "</body></html>\n"
    )


def write_html(facts: ReportFacts, path: Path, paper: str = "a4") -> None:
    """Write the report to `path`, whole or not at all.

    Raises:
        StoreError: it could not be written; an older file there is untouched.
    """
    atomic_write(path, report_html(facts, paper).encode("utf-8"))
