"""Files that a real office program saved, and what it makes of ours."""

import zipfile
from pathlib import Path

import openpyxl
import pytest

import hubwright as hw
from conftest import DEMO_DAY, Office

# Separator, quote and character set as their codes, the first row, formats by column, the
# language (1033: English, 1031: German), quoting all texts, detecting numbers, saving as shown.
COMMA = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,true"
SEMICOLON = "csv:Text - txt - csv (StarCalc):59,34,76,1,,0,false,true,true"
READ_POINT = "Text - txt - csv (StarCalc):44,34,76,1,,1033,false,true"
READ_COMMA = "Text - txt - csv (StarCalc):59,34,76,1,,1031,false,true"


def told(rack: hw.Checked) -> list[tuple[int, str, str | None, str]]:
    return [(row.number, row.name, row.worst, row.verdict.headline if row.verdict is not None else "") for row in rack]


def saved_by(path: Path) -> str:
    """The program that a workbook says it was saved by."""
    with zipfile.ZipFile(path) as package:
        part = "docProps/app.xml" if "docProps/app.xml" in package.namelist() else "meta.xml"
        return package.read(part).decode()


@pytest.mark.parametrize("kind", ["xlsx", "ods", COMMA, SEMICOLON], ids=["xlsx", "ods", "comma", "semicolon"])
def test_the_rack_saved_by_an_office_program_gets_equal_verdicts(
    demo: Path, office: Office, german_office: Office, tmp_path: Path, kind: str
) -> None:
    rack = hw.check_file(demo / "rack.csv", today=DEMO_DAY)
    program = german_office if kind == SEMICOLON else office
    saved = program.save(demo / "rack.csv", kind, tmp_path / "saved", READ_POINT)
    if kind in ("xlsx", "ods"):
        assert "LibreOffice" in saved_by(saved)
    else:
        text = saved.read_text(encoding="utf-8-sig")
        assert ("31,78" in text) == (kind == SEMICOLON), "the numbers are of that country"
    again = hw.check_file(saved, today=DEMO_DAY)
    assert told(again) == told(rack)
    assert again.counts == rack.counts and again.unread == rack.unread


def test_a_rack_with_commas_is_the_same_rack_in_a_workbook(demo: Path, office: Office, tmp_path: Path) -> None:
    rack = hw.check_file(demo / "rack-comma.csv", today=DEMO_DAY)
    for kind in ("xlsx", "ods"):
        saved = office.save(demo / "rack-comma.csv", kind, tmp_path / kind, READ_COMMA)
        assert told(hw.check_file(saved, today=DEMO_DAY)) == told(rack)


@pytest.mark.parametrize("kind", ["xlsx", "ods"])
@pytest.mark.parametrize("show", ["mm", "in"])
def test_the_template_goes_through_an_office_program(office: Office, tmp_path: Path, kind: str, show: str) -> None:
    template = tmp_path / "template.xlsx"
    hw.write_template(template, show=show)
    saved = office.save(template, kind, tmp_path / "saved")
    assert "LibreOffice" in saved_by(saved)
    assert told(hw.check_file(saved, today=DEMO_DAY)) == told(hw.check_file(template, today=DEMO_DAY))
    # Lists and notes are still there when it comes back.
    back = office.save(saved, "xlsx", tmp_path / "back") if kind == "ods" else saved
    ours, theirs = (openpyxl.load_workbook(path)["rack"] for path in (template, back))
    assert ours.freeze_panes == "B2"
    noted = [cell.comment.text.strip() for cell in ours[1] if cell.comment]
    assert len(noted) == len(list(ours[1]))
    assert [cell.comment.text.strip() for cell in theirs[1] if cell.comment] == noted
    choices = {choice.formula1.replace("'", "") for choice in theirs.data_validations.dataValidation}
    assert {choice.formula1.lstrip("=") for choice in ours.data_validations.dataValidation} <= {
        choice.replace("$words.", "words!").lstrip("=") for choice in choices
    }


def test_the_workbook_report_goes_through_an_office_program(demo: Path, office: Office, tmp_path: Path) -> None:
    rack = hw.check_file(demo / "rack.csv", today=DEMO_DAY)
    report = tmp_path / "report.xlsx"
    rack.report(report)
    for kind in ("xlsx", "ods"):
        saved = office.save(report, kind, tmp_path / kind)
        assert told(hw.check_file(saved, today=DEMO_DAY)) == [(at + 2, *row[1:]) for at, row in enumerate(told(rack))]
    book = openpyxl.load_workbook(tmp_path / "xlsx" / "report.xlsx")
    assert book.sheetnames == ["read first", "rack", "findings"]
    assert "Before you start it" in "\n".join(str(row[0]) for row in book["read first"].iter_rows(values_only=True))


def test_a_formula_like_name_is_no_formula_to_the_office_program(office: Office, tmp_path: Path) -> None:
    nasty = ["=1+1", "+1+1", "-1+cmd", "@SUM(1)"]
    rack = hw.check_rows([{"name": name, "wheel diameter [mm]": 200} for name in nasty])
    for ending in ("xlsx", "csv"):
        report = tmp_path / f"nasty.{ending}"
        rack.report(report)
        saved = office.save(report, "xlsx", tmp_path / ending, READ_POINT if ending == "csv" else "")
        # What it would come to, were it a formula.
        book = openpyxl.load_workbook(saved, data_only=True)
        headings, *rows = book["rack" if ending == "xlsx" else book.sheetnames[0]].iter_rows(values_only=True)
        names = [row[headings.index("name")] for row in rows]
        assert [name.lstrip("'") for name in names] == nasty
