"""Mountings and racks: parts, verdicts, files, tables, reports."""

import csv
import datetime
import pickle
from pathlib import Path

import pandas
import pint
import polars
import pyarrow
import pytest

import hubwright as hw
from hubwright._core import field_list, word_lists
from conftest import DEMO_DAY


def sound() -> dict[str, object]:
    """Parts of a mounting that every essential rule passes."""
    flange = hw.Flange(kind="relieved", diameter="80 mm", land="8 mm", recess="1.6 mm", keyed=True)
    return {
        "spindle": hw.Spindle(greatest_speed="2850 rpm", rotation="anticlockwise"),
        "wheel": hw.Wheel(shape="type-1", diameter="200 mm", hole="31.78 mm", marked_speed="3340 rpm"),
        "fixed_flange": flange,
        "loose_flange": flange,
        "fixed_blotter": hw.Blotter(present=True),
        "loose_blotter": hw.Blotter(present=True),
        "hub": hw.Hub(spigot="31.74 mm"),
        "nut": hw.Nut(thread_hand="right"),
    }


def test_a_sound_mounting_is_clear_and_one_datum_makes_it_unclear() -> None:
    assert hw.check(hw.Mounting("sound", **sound())).clear
    parts = sound() | {"nut": hw.Nut(thread_hand=hw.UNKNOWN)}
    verdict = hw.check(hw.Mounting("unsure", **parts))
    assert (verdict.clear, verdict.worst) == (False, hw.Outcome.UNKNOWN)
    finding = verdict.finding("thread-hand")
    assert finding is not None
    assert finding.missing == ["nut thread hand"]


def test_a_finding_holds_quantities_and_says_who_demands_it() -> None:
    parts = sound() | {"spindle": hw.Spindle(greatest_speed="3400 rpm", rotation="anticlockwise")}
    finding = hw.check(hw.Mounting("fast", **parts)).findings[0]
    assert (finding.rule.slug, finding.outcome) == ("over-speed", "refuse")
    assert finding.found == pint.Quantity(3400, "rpm")
    assert finding.demanded is not None and finding.demanded.m_as("rpm") == pytest.approx(3340)
    assert (finding.margin, finding.unit) == (pytest.approx(-60), "rpm")
    assert "1910.215(d)(1)" in str(finding.source)
    assert finding.advice


def test_every_field_is_an_attribute_that_gives_back_what_was_put_in() -> None:
    classes = {"fixed_flange": hw.Flange, "loose_flange": hw.Flange, "fixed_blotter": hw.Blotter, "loose_blotter": hw.Blotter}
    for place, name, _, kind, units, words, _, doc in field_list():
        cls = classes.get(place) or getattr(hw, place.capitalize())
        value: object
        if words:
            value = words[0]
        elif kind == "date":
            value = datetime.date(2027, 3, 1)
        elif kind == "plain number":
            value = 3.0 if name.endswith("_factor") else 0.25
        else:
            value = f"{3000 if kind == 'density' else 3} {units[0]}"
        part = cls(**{name: value})
        got = getattr(part, name)
        assert got is not None, (place, name)
        if words and kind != "yes or no":
            assert got == value
        elif kind in ("date", "plain number"):
            assert got == value
        assert getattr(cls(**{name: hw.UNKNOWN}), name) == hw.UNKNOWN
        assert getattr(cls(), name) is None
        assert doc and name in repr(part)


@pytest.mark.parametrize(
    ("part", "says"),
    [
        (lambda: hw.Wheel(diameter="-3 mm"), "`diameter` is -3 mm"),
        (lambda: hw.Wheel(diameter=3), "`diameter` is 3 without a unit"),
        (lambda: hw.Wheel(shape="square"), "`shape` is \"square\""),
        (lambda: hw.Wheel(use_before="1.3.2027"), "`use_before` is \"1.3.2027\""),
        (lambda: hw.Wheel(diameter="1e9 m"), "`diameter` is "),
        (lambda: hw.Spindle(greatest_speed=pint.Quantity(50, "Hz")), "`greatest_speed` is "),
        (lambda: hw.Flange(keyed="perhaps"), "`keyed` is \"perhaps\""),
        (lambda: hw.check(hw.Mounting(), laws=["mars"]), "`laws` is \"mars\""),
        (lambda: hw.check(hw.Mounting(), without=["no-such-rule"]), "`without` is \"no-such-rule\""),
        (lambda: hw.check(hw.Mounting(), today="soon"), "`today` is \"soon\""),
        (lambda: hw.check(hw.Mounting(), flange_tolerance="-1 mm"), "`flange_tolerance` is -1 mm"),
        (lambda: hw.check(hw.Mounting(), show="cm"), "`show` is \"cm\""),
    ],
)
def test_bad_input_names_the_argument_and_gives_a_hint(part: object, says: str) -> None:
    with pytest.raises(hw.HubwrightError) as caught:
        part()  # type: ignore[operator]
    assert str(caught.value).startswith(says)
    assert "\nhint: " in str(caught.value)


def test_words_are_those_of_the_compiled_part() -> None:
    for name, words in word_lists():
        assert [str(word) for word in getattr(hw, name)] == words, name


def test_unknown_is_one_value_that_pickles() -> None:
    assert pickle.loads(pickle.dumps(hw.UNKNOWN)) == hw.UNKNOWN
    assert repr(hw.UNKNOWN) == "UNKNOWN"


def test_a_verdict_is_neither_true_nor_false() -> None:
    with pytest.raises(TypeError, match="clear"):
        bool(hw.check(hw.Mounting()))


def test_what_was_left_out_and_the_laws_are_printed() -> None:
    verdict = hw.check(hw.Mounting("m", **sound()), laws=["us", "us-mi"], without=["guard-open"])
    assert (verdict.laws, verdict.left_out) == (["us", "us-mi"], ["guard-open"])
    assert "LEFT OUT at your word: guard-open" in str(verdict)
    assert verdict.finding("guard-open") is None
    assert "us, us-mi" in verdict._repr_html_()


def outcomes(checked: hw.Checked) -> list[object]:
    """Every outcome of every row by its name, unreadable rows as None."""
    return [
        (row.name, None if row.verdict is None else {f.rule.slug: f.outcome for f in row.verdict.findings})
        for row in checked
    ]


def test_the_demo_rack_shows_every_outcome_and_its_dialects_agree(demo: Path) -> None:
    racks = [hw.check_file(demo / name, today=DEMO_DAY) for name in ("rack.csv", "rack-comma.csv", "rack-inch.csv")]
    first = outcomes(racks[0])
    assert all(outcomes(rack) == first for rack in racks)
    assert [row.number for row in racks[0]] == [row.number for row in racks[1]] == list(range(2, 14))
    seen = {outcome for _, row in first if row for outcome in row.values()}
    assert seen == set(hw.Outcome)
    counts = racks[0].counts
    assert counts.passed + counts.cautioned + counts.refused + counts.unknown + counts.unreadable == len(racks[0]) == 12
    assert [problem.number for problem in racks[0].problems] == [13]
    assert not racks[0].clear
    # An inch shop reads inches.
    assert " in" in str(racks[2]) and " mm" not in str(racks[2]).split("Before you start")[0].replace("[mm]", "")


def as_dicts(path: Path) -> list[dict[str, object]]:
    with path.open(newline="") as file:
        return [dict(row) for row in csv.DictReader(file)]


def numbers(rows: list[dict[str, object]]) -> list[dict[str, object]]:
    """The same rows with numbers as numbers and blanks as None."""

    def one(value: object) -> object:
        try:
            return float(str(value))
        except ValueError:
            return value or None

    return [{key: one(value) for key, value in row.items()} for row in rows]


def test_tables_of_other_programs_agree_with_the_file(demo: Path) -> None:
    path = demo / "rack.csv"
    expected = outcomes(hw.check_file(path, today=DEMO_DAY))
    dicts = as_dicts(path)
    tables = {
        "dicts of text": dicts,
        "dicts of numbers": numbers(dicts),
        "pandas": pandas.read_csv(path, keep_default_na=False),
        "polars": polars.read_csv(path, infer_schema_length=0),
        "pyarrow": pyarrow.Table.from_pylist(dicts),
        "categories": pandas.DataFrame(dicts).astype("category"),
    }
    for name, table in tables.items():
        assert outcomes(hw.check_rows(table, today=DEMO_DAY)) == expected, name


def test_null_and_nan_both_mean_blank() -> None:
    column = "spindle greatest speed [rpm]"
    marked = {"wheel marked speed [rpm]": [2850.0, 2850.0, 2850.0]}
    frame = pandas.DataFrame({column: [2000.0, float("nan"), None], **marked})
    rack = hw.check_rows(frame)
    found = [row.verdict.finding("over-speed").outcome for row in rack]  # type: ignore[union-attr]
    assert found == ["pass", "unknown", "unknown"]


def test_dates_and_truths_of_tables_are_read_and_units_may_be_stated_apart() -> None:
    table = pyarrow.table(
        {
            "wheel use before": pyarrow.array([datetime.date(2026, 1, 1), datetime.date(2030, 1, 1)]),
            "fixed blotter present": pyarrow.array([True, False]),
            "wheel diameter": pyarrow.array([200, 8]),
        }
    )
    rack = hw.check_rows(table, units={"wheel diameter": "mm"}, today="2026-11-25")
    found = [row.verdict.finding("wheel-too-old").outcome for row in rack]  # type: ignore[union-attr]
    assert found == ["caution", "pass"]
    with pytest.raises(hw.TableError, match="is not a heading of the table"):
        hw.check_rows(table, units={"wheel dia": "mm"})


def test_a_number_without_a_unit_spoils_its_row_only() -> None:
    rack = hw.check_rows([{"wheel diameter": 200}, {"wheel diameter": "200 mm"}, {"wheel diameter": pint.Quantity(200, "mm")}])
    assert [row.worst is None for row in rack] == [True, False, False]
    assert "state the unit in the heading" in rack.problems[0].message


def test_a_row_that_contradicts_itself_is_unreadable() -> None:
    # A diameter of 20 instead of 200 mm would hide an over-speed at the rim.
    rack = hw.check_rows([{"wheel diameter [mm]": 20, "wheel hole [mm]": 31.78}, {"wheel diameter [mm]": 200, "wheel hole [mm]": 31.78}])
    assert [row.worst is None for row in rack] == [True, False]
    assert "has a wheel hole of 31.78 mm on a wheel of 20 mm" in rack.problems[0].message
    with pytest.raises(hw.TableError, match="fixed flange diameter of 80 mm on a wheel of 20 mm"):
        hw.check(hw.Mounting(wheel=hw.Wheel(diameter="20 mm"), fixed_flange=hw.Flange(diameter="80 mm")))


def test_a_heading_with_a_slip_in_it_asks_and_its_cells_count_as_blank() -> None:
    row = {"spindle greatest speed [rpm]": 2850, "wheel marked speed [rpm]": 3340, "wheel markd rimspeed [m/s]": 20}
    rack = hw.check_rows([row])
    assert rack[0].verdict is not None
    finding = rack[0].verdict.finding("over-speed")
    assert finding is not None and finding.outcome == "unknown"
    assert finding.missing == ["wheel marked rim speed"]
    assert dict(rack.unread) == {"wheel markd rimspeed [m/s]": "wheel marked rim speed"}
    assert str(rack).splitlines()[1].startswith("Columns not read: wheel markd rimspeed")


def test_fractions_are_for_inches() -> None:
    rack = hw.check_rows([{"wheel diameter [mm]": "1-1/4"}, {"wheel diameter [mm]": "1-1/4 in"}])
    assert [row.worst is None for row in rack] == [True, False]
    assert "only inches and feet are written in fractions" in rack.problems[0].message


def test_laws_and_rules_may_come_as_one_text_and_a_misspelt_rule_is_told() -> None:
    verdict = hw.check(hw.Mounting("m", **sound()), laws="us,us-wa", without="guard-open, bushing")
    assert (verdict.laws, verdict.left_out) == (["us", "us-wa"], ["bushing", "guard-open"])
    with pytest.raises(hw.TextError, match="`slug` is"):
        verdict.finding("no-such-rule")
    with pytest.raises(hw.TextError, match="`laws` is"):
        hw.check(hw.Mounting(), laws=3)


@pytest.mark.parametrize(
    ("table", "says"),
    [
        ([], "is empty"),
        ([1], "no dict"),
        ("rack.csv", "neither an Arrow table"),
        ([{"colour": "red"}], "no heading that hubwright knows"),
        ([{"wheel diameter [kg]": 1}], "has the unit \"kg\""),
        ([{"wheel diameter [mm]": 1, "wheel dia [in]": 1}], "says the same"),
        ([{f"column {n}": n for n in range(2000)}], "2000 columns"),
    ],
)
def test_a_table_that_is_none_is_refused_whole(table: object, says: str) -> None:
    with pytest.raises(hw.TableError) as caught:
        hw.check_rows(table)
    assert says in str(caught.value)
    assert "\nhint: " in str(caught.value)


def test_an_unread_column_is_named_with_the_heading_it_may_mean() -> None:
    rack = hw.check_rows([{"wheel diameter [mm]": 200, "whel hole": 3, "shelf": "A"}])
    assert dict(rack.unread) == {"whel hole": "wheel hole", "shelf": None}
    assert "did you mean: wheel hole" in str(rack)


def test_verdicts_go_out_as_an_arrow_table(demo: Path) -> None:
    rack = hw.check_file(demo / "rack.csv", today=DEMO_DAY)
    frame = polars.DataFrame(rack.to_arrow())
    assert frame.height == 12
    assert frame.columns[:4] == ["row", "mounting", "verdict", "because"]
    assert frame.columns[4:] == [rule.slug for rule in hw.rules()]
    assert frame["verdict"].to_list() == [row.worst or "unreadable" for row in rack]
    assert pyarrow.table(rack.to_arrow()).num_rows == 12


def test_progress_is_told_and_an_exception_in_it_stops_the_work(demo: Path) -> None:
    told: list[float] = []
    hw.check_file(demo / "rack.csv", progress=told.append)
    assert told == sorted(told) and told[-1] == 1.0

    def stop(_share: float) -> None:
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        hw.check_file(demo / "rack.csv", progress=stop)
