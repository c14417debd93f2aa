"""`co2vent report FILE --out FILE`: the record of a vent or of a whole job, to print and keep."""

import argparse
from datetime import UTC, datetime
from pathlib import Path

from co2vent.cli.files import log_path
from co2vent.cli.metadata_options import add_metadata_options, column_names, metadata_overrides
from co2vent.errors import RefusedInputError


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Add the options of `report`."""
    parser.add_argument("file", metavar="FILE", help="a readings log (CSV) or a job's folder")
    parser.add_argument("--out", required=True, metavar="FILE", help="FILE.pdf or FILE.html")
    parser.add_argument("--paper", choices=("a4", "letter"), default="a4", help="page size")
    parser.add_argument("--holds-csv", metavar="FILE", help="the holds as a table as well")
    add_metadata_options(parser)


def run(args: argparse.Namespace) -> int:
    """Write the report, and the holds where asked."""
    out = Path(args.out)
    kind = out.suffix.lower()
    if kind not in (".pdf", ".html", ".htm"):
        raise RefusedInputError(f"{out}: give a name that ends in .pdf or .html")
    if out.is_dir() or not out.parent.is_dir():
        raise RefusedInputError(f"{out}: give a file in a folder that exists")

    from co2vent.report.from_files import report_facts
    from co2vent.report.holds_csv import write_holds_csv
    from co2vent.report.html import write_html

    now = datetime.now(UTC).astimezone()
    facts = report_facts(log_path(args.file), now, column_names(args), metadata_overrides(args))
    if kind == ".pdf":
        from co2vent.report.pdf import write_pdf

        write_pdf(facts, out, args.paper)
    else:
        write_html(facts, out, args.paper)
    if args.holds_csv:
        write_holds_csv(facts, Path(args.holds_csv))
    return 0
