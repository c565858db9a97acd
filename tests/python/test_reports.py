"""Workbooks in, reports and templates out: what is written, and that nothing in it runs."""

import csv
import html
import json
import os
import subprocess
import sys
import zipfile
from pathlib import Path
from xml.etree import ElementTree

import jsonschema
import openpyxl
import pandas
import pytest

import hubwright as hw
from conftest import DEMO_DAY
from hubwright._core import field_list, report_schema
from hubwright.__main__ import main

# Formulas, markup, right-to-left and combining text: what a cell may hold and nothing may run.
NASTY = [
    '=HYPERLINK("http://example.invalid","x")',
    "+1+cmd|' /C calc'!A0",
    "-2+3",
    "@SUM(A1)",
    "\t=1+1",
    "<script>alert(1)</script>",
    "\"><img src=x onerror=alert(1)>",
    "]]><svg onload=alert(1)>",
    "&lt;b&gt; & 'quotes'",
    "{{7*7}}${7*7}",
    "\u202ekcar\u202c right to left: \u05d2\u05dc\u05d2\u05dc",
    "a\u0301\u0323\u0327 combining",
    "two\nlines",
    "--><!--",
]


def summary(rack: hw.Checked) -> list[tuple[int, str, str | None]]:
    return [(row.number, row.name, row.worst) for row in rack]


@pytest.fixture
def nasty(tmp_path: Path) -> Path:
    """A rack whose names, headings and own columns are all hostile."""
    path = tmp_path / "nasty.csv"
    with path.open("w", newline="", encoding="utf-8") as file:
        writer = csv.writer(file)
        writer.writerow(["name", "spindle greatest speed [rpm]", "wheel marked speed [rpm]", *NASTY])
        for text in NASTY:
            writer.writerow([text, 3400, 2850, *NASTY])
    return path


def test_the_workbook_gives_the_rows_back_as_they_came_with_their_verdicts(demo: Path, tmp_path: Path) -> None:
    rack = hw.check_file(demo / "rack.csv", today=DEMO_DAY)
    report = tmp_path / "report.xlsx"
    rack.report(report)
    book = openpyxl.load_workbook(report)
    assert book.sheetnames == ["read first", "rack", "findings"]
    rows = list(book["rack"].iter_rows(values_only=True))
    with (demo / "rack.csv").open(newline="", encoding="utf-8") as file:
        came = list(csv.reader(file))
    assert list(rows[0][:5]) == [f"hubwright {word}" for word in ("row", "mounting", "verdict", "because", "advice")]
    assert rows[0][-1] == "hubwright judged by"
    for given, cells in zip(came, rows, strict=True):
        assert [cell or "" for cell in cells[5:-1]] == given
    assert [row[2] for row in rows[1:4]] == ["OK", "WATCH", "DO NOT RUN"]
    assert [row[0] for row in rows[1:]] == [row.number for row in rack]
    findings = list(book["findings"].iter_rows(values_only=True))
    worth = [f for row in rack if row.verdict is not None for f in row.verdict.findings if f.outcome not in ("pass", "not_checked")]
    assert len(findings) == 1 + len(worth) + rack.counts.unreadable
    speed = next(row for row in findings if row[3] == "over-speed")
    assert speed[5:9] == (2850, 2600, -250, "rpm")
    said = "\n".join(row[0] or "" for row in book["read first"].iter_rows(values_only=True))
    for part in (hw.__version__, "tables ", "us.", DEMO_DAY, "Before you start it", "competent person"):
        assert part in said


def test_a_report_can_be_checked_again_and_says_the_same(demo: Path, tmp_path: Path) -> None:
    rack = hw.check_file(demo / "rack-inch.csv", today=DEMO_DAY)
    for name in ("again.xlsx", "again.csv"):
        rack.report(tmp_path / name)
        again = hw.check_file(tmp_path / name, today=DEMO_DAY)
        assert summary(again) == summary(rack)
        assert again.unread == rack.unread
        # Once more: what was added the first time is not added twice.
        again.report(tmp_path / f"twice-{name}")
        assert summary(hw.check_file(tmp_path / f"twice-{name}", today=DEMO_DAY)) == summary(rack)


def test_the_json_report_keeps_to_its_schema_and_to_the_rack(demo: Path, nasty: Path, tmp_path: Path) -> None:
    schema = json.loads(report_schema())
    jsonschema.Draft202012Validator.check_schema(schema)
    for path in (demo / "rack.csv", nasty):
        rack = hw.check_file(path, laws="us,us-mi", without="bushing", today=DEMO_DAY)
        rack.report(tmp_path / "report.json")
        report = json.loads((tmp_path / "report.json").read_text(encoding="utf-8"))
        jsonschema.validate(report, schema)
        assert report["laws"] == ["us", "us-mi"] and report["left_out"] == ["bushing"]
        assert [(row["row"], row["mounting"], row["outcome"]) for row in report["rows"]] == [
            (row.number, row.name, row.worst or "unreadable") for row in rack
        ]
        for row, said in zip(rack, report["rows"], strict=True):
            assert len(said["cells"]) == len(report["headings"])
            if row.verdict is not None:
                assert [f["says"] for f in said["findings"]] == [f.says for f in row.verdict.findings]
    assert report["rows"][3]["cells"][3:] == NASTY
    assert main(["schema"]) == 0


def test_rows_of_a_program_come_back_in_reports_too(tmp_path: Path) -> None:
    frame = pandas.DataFrame({"name": ["a", "b"], "wheel diameter [mm]": [200.0, None], "bought": pandas.to_datetime(["2026-01-02", None])})
    rack = hw.check_rows(frame)
    rack.report(tmp_path / "rows.json")
    report = json.loads((tmp_path / "rows.json").read_text())
    assert report["headings"] == ["name", "wheel diameter [mm]", "bought"]
    assert report["rows"][0]["cells"] == ["a", 200, "2026-01-02"]
    assert report["rows"][1]["cells"] == ["b", None, None]


def test_nothing_in_a_workbook_is_a_formula(nasty: Path, tmp_path: Path) -> None:
    report = tmp_path / "nasty.xlsx"
    hw.check_file(nasty).report(report)
    book = openpyxl.load_workbook(report)
    for sheet in book:
        for row in sheet.iter_rows():
            assert all(cell.data_type != "f" for cell in row)
    rack = list(book["rack"].iter_rows(values_only=True))
    assert [row[5] for row in rack[1:]] == NASTY
    assert list(rack[0][8:-1]) == [" ".join(text.split()) for text in NASTY]
    with zipfile.ZipFile(report) as package:
        parts = package.namelist()
        assert not any("externalLink" in part or "vba" in part.lower() for part in parts)
        for part in parts:
            text = package.read(part).decode("utf-8", "replace")
            assert "<f>" not in text and 'TargetMode="External"' not in text


def test_nothing_in_a_csv_report_is_taken_for_a_formula(nasty: Path, tmp_path: Path) -> None:
    report = tmp_path / "nasty-report.csv"
    hw.check_file(nasty).report(report)
    with report.open(newline="", encoding="utf-8-sig") as file:
        rows = list(csv.reader(file))
    for row in rows:
        for cell in row:
            risky = cell.lstrip().startswith(("=", "+", "-", "@"))
            assert not risky or cell.lstrip("-").replace(".", "").isdigit(), cell
    # Numbers below zero stay numbers.
    rack = hw.check_rows([{"name": "a", "machine guard start [deg]": -15}])
    rack.report(report)
    assert ",-15," in report.read_text(encoding="utf-8-sig")


def test_nothing_in_a_page_is_markup_of_somebody_elses(nasty: Path, tmp_path: Path) -> None:
    for rack in (hw.check_file(nasty), hw.check_rows([{"name": text, "wheel diameter [mm]": text} for text in NASTY])):
        rack.report(tmp_path / "nasty.html")
        page = (tmp_path / "nasty.html").read_text(encoding="utf-8")
        for tag in ("<script", "<img", "onerror=alert(1)>", "<svg onload", "<b>", "href=\"http"):
            assert tag not in page, tag
        shown = html.unescape(page)
        assert all(text.split("\n")[0].strip() in shown for text in NASTY)
        # Every drawing is XML on its own.
        for piece in page.split("<svg")[1:]:
            ElementTree.fromstring("<svg" + piece.split("</svg>")[0] + "</svg>")
        for row in rack:
            if row.verdict is not None:
                assert "<script" not in row.verdict._repr_html_() and "<img" not in row.verdict._repr_html_()


def test_the_page_says_by_what_it_was_judged_and_how_the_table_was_read(demo: Path, tmp_path: Path) -> None:
    rack = hw.check_file(demo / "rack-comma.csv", laws="us,us-wa", without="over-speed", today=DEMO_DAY)
    rack.report(tmp_path / "rack.html")
    page = (tmp_path / "rack.html").read_text(encoding="utf-8")
    assert rack.notes == ["Numbers are read with a decimal comma."]
    for part in (hw.__version__, "tables ", "us, us-wa", "LEFT OUT at your word: over-speed", rack.notes[0], "shelf", DEMO_DAY):
        assert part in html.unescape(page), part
    assert page.count("<svg") > 12


def test_a_report_is_written_whole_or_not_at_all(demo: Path, tmp_path: Path) -> None:
    rack = hw.check_file(demo / "rack.csv", today=DEMO_DAY)
    for ending in ("html", "xlsx", "csv", "json", "txt"):
        gone = tmp_path / "no-such-folder" / f"rack.{ending}"
        with pytest.raises(hw.FileError, match="could not be written"):
            rack.report(gone)
    with pytest.raises(hw.TextError, match=r"\.html, \.xlsx, \.csv, \.json, \.txt"):
        rack.report(tmp_path / "rack.doc")
    stopped = tmp_path / "stopped.csv"
    many = hw.check_rows([{"name": "a", "wheel diameter [mm]": 200}] * 3000)

    def stop(share: float) -> None:
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        many.report(stopped, progress=stop)
    assert not any(tmp_path.iterdir())


def test_a_report_never_takes_the_place_of_the_rack_itself(
    demo: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "own.csv"
    came = (demo / "rack.csv").read_bytes()
    path.write_bytes(came)
    monkeypatch.chdir(tmp_path)
    for name in ("own.csv", "./own.csv", str(path)):
        assert main(["check", "own.csv", "--report", name]) == 2
        assert "it is the rack itself" in capsys.readouterr().err
    assert path.read_bytes() == came
    # A name that no report can have is told before the work.
    assert main(["check", "own.csv", "--report", "own.pdf"]) == 2
    said = capsys.readouterr()
    assert said.out == "" and ".html, .xlsx" in said.err


def test_a_terminal_that_lacks_a_letter_still_shows_the_verdict(tmp_path: Path) -> None:
    path = tmp_path / "rack.csv"
    path.write_text("name,spindle greatest speed [rpm],wheel marked speed [rpm]\nŁódź 砥石,3400,2850\n", encoding="utf-8")
    command = [sys.executable, "-P", "-m", "hubwright", "check", str(path)]
    done = subprocess.run(command, capture_output=True, env=os.environ | {"PYTHONIOENCODING": "ascii"}, check=False)
    assert (done.returncode, done.stderr) == (1, b"")
    assert b"DO NOT RUN" in done.stdout


@pytest.mark.skipif(sys.platform == "win32", reason="limits the size of files as Unix does")
@pytest.mark.parametrize(("ending", "times"), [("html", 1), ("xlsx", 1), ("xlsx", 1000), ("csv", 1), ("json", 1), ("txt", 1)])
def test_a_full_disk_leaves_the_old_report_as_it_was(demo: Path, tmp_path: Path, ending: str, times: int) -> None:
    # A long rack goes through passing files, which find no room either.
    report = tmp_path / f"rack.{ending}"
    report.write_text("the old report")
    code = f"""
import csv, resource, signal, hubwright as hw
signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
with open({str(demo / "rack.csv")!r}) as file:
    headings, *rows = csv.reader(file)
rack = hw.check_rows([dict(zip(headings, row)) for row in rows] * {times}, today={DEMO_DAY!r})
resource.setrlimit(resource.RLIMIT_FSIZE, (2000, 2000))
try:
    rack.report({str(report)!r})
except hw.FileError as error:
    print(error)
"""
    done = subprocess.run([sys.executable, "-P", "-c", code], capture_output=True, text=True, check=True)
    assert "could not be written" in done.stdout and "an older file is as it was" in done.stdout
    assert report.read_text() == "the old report"
    assert [path.name for path in tmp_path.iterdir()] == [report.name]


@pytest.mark.parametrize("show", ["mm", "in"])
def test_the_template_asks_for_everything_and_its_example_is_clear(tmp_path: Path, show: str) -> None:
    path = tmp_path / "rack.xlsx"
    assert main(["template", str(path), "--show", show]) == 0
    rack = hw.check_file(path, today=DEMO_DAY)
    assert (len(rack), rack.clear, rack.unread) == (1, True, [])
    assert rack[0].worst in ("pass", "caution")
    verdict = rack[0].verdict
    assert verdict is not None
    book = openpyxl.load_workbook(path)
    sheet = book["rack"]
    headings = [cell.value for cell in sheet[1]]
    assert headings[:2] == ["mounting", "wheel marking"]
    assert len(headings) == 2 + len(field_list())
    for cell, (_, _, heading, _, units, words, _, doc) in zip(sheet[1][2:], field_list(), strict=True):
        assert cell.value.startswith(heading)
        assert bool(units) == cell.value.endswith("]")
        assert cell.comment is not None and doc.strip(". ")[:20] in cell.comment.text
        if words:
            assert all(word in cell.comment.text for word in words)
    assert ("wheel diameter [in]" if show == "in" else "wheel diameter [mm]") in headings
    # Every heading with words has its list to choose from, on 1,000 rows.
    choices = {str(area) for choice in sheet.data_validations.dataValidation for area in choice.sqref.ranges}
    assert len(choices) == sum(bool(words) for *_, words, _, _ in field_list())
    assert all(area.endswith("1001") for area in choices)
    # Nobody loses a rack that is there already.
    with pytest.raises(hw.FileError, match="there already"):
        hw.write_template(path)
    with pytest.raises(hw.TextError, match=r"\.xlsx"):
        hw.write_template(tmp_path / "rack.ods")


def test_headings_of_their_own_are_mapped(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "eigene.csv"
    path.write_text("Name,Scheibe (mm),Drehzahl,Drehzahl neu\na,200,3400,9\n", encoding="utf-8")
    arguments = ["--map", "Scheibe (mm)=wheel diameter", "--map", "Drehzahl=spindle greatest speed [rpm]", "--map", "Drehzahl neu="]
    assert main(["check", str(path), *arguments]) == 1
    assert "Columns not read" not in capsys.readouterr().out
    mapping = {"Scheibe (mm)": "wheel diameter", "Drehzahl": "spindle greatest speed [rpm]", "Drehzahl neu": ""}
    rows = [{"Name": "a", "Scheibe (mm)": 200, "Drehzahl": 3400, "Drehzahl neu": 9}]
    for rack in (hw.check_file(path, mapping=mapping), hw.check_rows(rows, mapping=mapping)):
        assert (rack.unread, rack.problems) == ([], [])
    with pytest.raises(hw.TableError, match="did you mean"):
        hw.check_file(path, mapping={"Scheibe (mm)": "wheel diametre"})
    with pytest.raises(hw.TableError, match="not a heading of the table"):
        hw.check_file(path, mapping={"Teller": "wheel diameter"})
    assert main(["check", str(path), "--map", "Scheibe"]) == 2
    assert "without a =" in capsys.readouterr().err


def test_a_sheet_is_chosen_by_name(tmp_path: Path) -> None:
    path = tmp_path / "two.xlsx"
    book = openpyxl.Workbook()
    book.active.title = "cover"
    book.active.append(["The rack of the tool room"])
    for name, speed in (("old rack", 2000), ("new rack", 5000)):
        sheet = book.create_sheet(name)
        sheet.append(["name", "spindle greatest speed [rpm]", "wheel marked speed [rpm]"])
        sheet.append(["a", speed, 2850])
    book.save(path)
    # Two racks: neither may pass for all there is.
    with pytest.raises(hw.TableError, match='several sheets: "old rack", "new rack"'):
        hw.check_file(path)
    rack = hw.check_file(path, sheet="old rack")
    assert rack.counts.refused == 0
    assert rack.notes == ['The sheet "old rack" was read, not: "cover", "new rack".']
    assert hw.check_file(path, sheet="new rack").counts.refused == 1
    # A hidden sheet is not asked about where one is shown, and said to be there.
    book["old rack"].sheet_state = "hidden"
    book.save(path)
    rack = hw.check_file(path)
    assert rack.counts.refused == 1
    assert rack.notes == ['The sheet "new rack" was read, not: "cover", "old rack".']
    with pytest.raises(hw.TableError, match="cover, old rack, new rack"):
        hw.check_file(path, sheet="rack")


def test_the_cap_on_memory_can_be_raised_and_lowered(demo: Path) -> None:
    with pytest.raises(hw.TableError, match="over the cap"):
        hw.check_file(demo / "rack.csv", most_megabytes=0)
    assert len(hw.check_file(demo / "rack.csv", most_megabytes=1)) == 12


