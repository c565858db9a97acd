"""The command line: `hubwright` and `python -m hubwright`.

Exit codes: 0 everything is clear, 1 a mounting is refused, unknown or unreadable, 2 could not run.
"""

import argparse
import io
import sys
import textwrap
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path

from hubwright import HubwrightError, Law, TextError, __version__, check_file, rules, sources
from hubwright._core import check_report_name, field_list, report_schema, write_demo, write_template

CLEAR, NOT_CLEAR, COULD_NOT_RUN = 0, 1, 2


@contextmanager
def _bar() -> Iterator[Callable[[float], None]]:
    """A progress bar on work over a second, on a terminal only."""
    from tqdm import tqdm

    # `disable=None` is tqdm's word for "unless this is a terminal".
    with tqdm(total=100, unit="%", delay=1, disable=None, leave=False, file=sys.stderr) as bar:

        def tell(share: float) -> None:
            bar.update(round(share * 100) - bar.n)

        yield tell


def _mapping(pairs: Sequence[str]) -> dict[str, str]:
    """Headings of theirs and ours from `theirs=ours`; the last `=` parts them."""
    mapping = {}
    for pair in pairs:
        theirs, separator, ours = pair.rpartition("=")
        if not separator:
            raise TextError(
                f"`--map` is {pair!r}, without a =\nhint: write it like --map \"Scheibe=wheel diameter [mm]\"", "text"
            )
        mapping[theirs] = ours
    return mapping


def _check(args: argparse.Namespace) -> int:
    for path in args.report:
        check_report_name(path)
    with _bar() as tell:
        checked = check_file(
            args.file,
            sheet=args.sheet,
            mapping=_mapping(args.map),
            decimal=args.decimal,
            most_megabytes=args.most_megabytes,
            laws=args.laws,
            without=[slug for slugs in args.without for slug in slugs.split(",")],
            show=args.show,
            progress=tell,
        )
    print(checked, end="")
    for path in args.report:
        with _bar() as tell:
            checked.report(path, progress=tell)
        print(f"report: {path}")
    return CLEAR if checked.clear else NOT_CLEAR


def _demo(args: argparse.Namespace) -> int:
    written, today = write_demo(args.into)
    checked = check_file(written[0], today=today)
    report = Path(args.into) / "rack.html"
    checked.report(report)
    print(checked, end="")
    print(f"\nThe demo rack (invented, judged as of {today}) is in {args.into}:")
    for path in [*written, report]:
        print(f"  {path}")
    print(f"Check it yourself, or a rack of your own: hubwright check {written[0]}")
    return CLEAR


def _template(args: argparse.Namespace) -> int:
    write_template(args.file, show=args.show)
    print(f"{args.file}: write over the example, then: hubwright check {args.file}")
    return CLEAR


def _schema(_args: argparse.Namespace) -> int:
    print(report_schema(), end="")
    return CLEAR


def _paragraph(lead: str, text: str) -> None:
    later = " " * (4 + min(len(lead), 12))
    print(textwrap.fill(text, 100, initial_indent=f"    {lead}", subsequent_indent=later, break_on_hyphens=False))


def _rules(args: argparse.Namespace) -> int:
    chosen = [rule for rule in rules() if args.slug in (None, rule.slug)]
    if not chosen:
        print(f"there is no rule {args.slug!r}\nhint: `hubwright rules` lists them", file=sys.stderr)
        return COULD_NOT_RUN
    for rule in chosen:
        reaches = ", ".join(rule.reaches)
        mark = " E" if rule.essential else ""
        print(f"{rule.slug}{mark}: {rule.asks}\n    can come out as {reaches}")
        if args.slug is None:
            continue
        print()
        _paragraph("", " ".join(rule.manual.split()))
        print()
        _paragraph("needs: ", ", ".join(rule.needs))
        if rule.uses:
            _paragraph("uses: ", ", ".join(rule.uses))
        for source in rule.sources:
            _paragraph("source: ", str(source))
        _paragraph("advice: ", rule.advice)
    if args.slug is None:
        print("\nE: every mounting must pass it, so that missing data come out as unknown.")
        print("`hubwright rules SLUG` prints the manual of one.")
    return CLEAR


def _headings(_args: argparse.Namespace) -> int:
    for _, _, heading, kind, units, words, none, doc in field_list():
        takes = f"one of: {', '.join(words)}" if words else f"{kind} [{units[0]}]" if units else kind
        said = " 'none' is no." if kind == "yes or no" else _NONE.get(none, "")
        _paragraph(f"{heading}: ", f"{doc} Takes {takes}.{said}")
    _paragraph("wheel marking: ", _MARKING)
    print("\nA heading states its unit, like 'wheel diameter [mm]' or 'wheel diameter (in)'; a cell may carry")
    print("its own, like '7 in'. 'both flanges ...' and 'both blotters ...' fill both places. A heading asks:")
    print("where there is one and the cell is blank, the rules that need it can't tell.")
    return CLEAR


_MARKING = (
    "What is written on the wheel, like 40A 60 K 7 V A1 35 m/s. It fills what the row leaves blank: shape, diameter, "
    "thickness, nominal hole, abrasive, bond and speeds. Of two speeds the lower counts. 'none' where there is none."
)
_NONE = {"zero": " 'none' is 0.", "absent": " 'none' where there is none."}


def _sources(_args: argparse.Namespace) -> int:
    for source in sources():
        print(f"{source.key:28} {source}")
    return CLEAR


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="hubwright",
        description="Checks grinding wheels mounted on hubs against the rules of safe mounting.",
        epilog="The wheel's own marking, the machine's manual, local law and a competent person come first.",
    )
    parser.add_argument("--version", action="version", version=f"hubwright {__version__}")
    commands = parser.add_subparsers(required=True, metavar="COMMAND")

    check = commands.add_parser(
        "check",
        help="check a rack kept in a workbook or a CSV file",
        description="Checks a rack of mountings: one row each, headings such as 'wheel diameter [mm]'. "
        "Exit 0 when all is clear, 1 when a mounting is refused, unknown or unreadable, 2 when it could not run.",
    )
    check.add_argument("file", metavar="FILE", help="an .xlsx, .ods or CSV file; where its headings are is found out")
    check.add_argument("--sheet", metavar="NAME", help="sheet of a workbook (the one with headings that are known)")
    check.add_argument(
        "--map",
        metavar="THEIRS=OURS",
        action="append",
        default=[],
        help="take a heading of the file for one of ours, like 'Scheibe=wheel diameter [mm]'; for none after a bare =",
    )
    check.add_argument("--decimal", choices=["point", "comma"], help="decimal mark of texts, where the file leaves it open")
    check.add_argument(
        "--most-megabytes", type=int, default=256, metavar="N", help="most that a workbook may unpack to (256)"
    )
    check.add_argument("--laws", metavar="LAW,LAW…", help=f"laws you work under: {', '.join(Law)} (us when left out)")
    check.add_argument(
        "--without",
        metavar="SLUG",
        action="append",
        default=[],
        help="leave a rule out; may come again, or with commas; the verdicts say so",
    )
    check.add_argument("--show", choices=["mm", "in"], help="units of the findings (those of most headings)")
    check.add_argument(
        "--report",
        metavar="PATH",
        action="append",
        default=[],
        help="write a report too: .html, .xlsx, .csv, .json or .txt; may come again",
    )
    check.set_defaults(run=_check)

    demo = commands.add_parser(
        "demo",
        help="write and check the demo rack",
        description="Writes the demo rack, an invented tool room's, checks it and writes its report.",
    )
    demo.add_argument("--into", metavar="DIR", default="demo-rack", help="folder to write into (demo-rack)")
    demo.set_defaults(run=_demo)

    blank = commands.add_parser(
        "template",
        help="write an empty rack to fill in",
        description="Writes a workbook with every heading, its unit, words to choose from, a note and an example.",
    )
    blank.add_argument("file", metavar="FILE", help="a new .xlsx file")
    blank.add_argument("--show", choices=["mm", "in"], default="mm", help="its units (mm)")
    blank.set_defaults(run=_template)

    listing = commands.add_parser("rules", help="list the rules, or print the manual of one")
    listing.add_argument("slug", metavar="SLUG", nargs="?", help="a rule")
    listing.set_defaults(run=_rules)

    known = commands.add_parser("headings", help="list the headings a rack can have, with units and words")
    known.set_defaults(run=_headings)

    schema = commands.add_parser("schema", help="print the JSON Schema of .json reports")
    schema.set_defaults(run=_schema)

    cited = commands.add_parser("sources", help="list the sources cited, and how each was obtained")
    cited.set_defaults(run=_sources)
    return parser


def main(argv: Sequence[str] | None = None) -> int:
    """Run the command line and give back its exit code."""
    args = _parser().parse_args(argv)
    for stream in (sys.stdout, sys.stderr):
        # A terminal that lacks a letter shows a question mark; the verdict counts.
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="replace")
    try:
        return int(args.run(args))
    except HubwrightError as error:
        print(f"hubwright: {error}", file=sys.stderr)
    except KeyboardInterrupt:
        print("hubwright: stopped", file=sys.stderr)
    except BrokenPipeError:
        # Whoever read the output has seen enough.
        sys.stderr.close()
    return COULD_NOT_RUN


if __name__ == "__main__":
    sys.exit(main())
