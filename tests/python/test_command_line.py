"""The command line: what it prints and how it exits."""

import re
import subprocess
import sys
from pathlib import Path

import pytest

import hubwright as hw
from hubwright._core import field_list
from hubwright.__main__ import main


def test_check_prints_verdicts_and_exits_1_on_the_demo_rack(demo: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check", str(demo / "rack.csv")]) == 1
    out = capsys.readouterr().out
    assert "12 mountings: 4 DO NOT RUN" in out
    assert out.count("Before you start it:") == 1
    assert "not checked: " in out
    # Worst first: nothing refused comes after something cautioned.
    heads = [line for line in out.splitlines() if line.startswith("row ") and ": " in line]
    assert [head.endswith("WATCH") for head in heads] == sorted(head.endswith("WATCH") for head in heads)


def test_check_exits_0_when_all_is_clear_and_2_when_it_could_not_run(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    rack = tmp_path / "rack.csv"
    rack.write_text(
        "spindle greatest speed [rpm],spindle rotation,wheel shape,wheel diameter [mm],wheel hole [mm],"
        "wheel marked speed [rpm],both flanges diameter [mm],both flanges land [mm],both blotters present,"
        "hub spigot [mm],nut thread hand,loose flange keyed\n"
        "2850,anticlockwise,type-1,200,31.78,3340,80,8,yes,31.74,right,yes\n"
    )
    assert main(["check", str(rack)]) == 0
    assert main(["check", str(tmp_path / "none.csv")]) == 2
    assert "hint:" in capsys.readouterr().err
    with pytest.raises(SystemExit) as caught:
        main(["check"])
    assert caught.value.code == 2


def test_laws_rules_left_out_and_reports(demo: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    report = tmp_path / "rack.html"
    arguments = ["check", str(demo / "rack.csv"), "--laws", "us,us-wa", "--without", "over-speed", "--report", str(report)]
    assert main(arguments) == 1
    out = capsys.readouterr().out
    assert "LEFT OUT at your word: over-speed" in out and "us, us-wa" in out
    assert "over-speed" in report.read_text()


def test_the_demo_writes_its_rack_and_report(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    folder = tmp_path / "new" / "demo"
    assert main(["demo", "--into", str(folder)]) == 0
    assert sorted(path.name for path in folder.iterdir()) == ["rack-comma.csv", "rack-inch.csv", "rack.csv", "rack.html"]
    assert str(folder) in capsys.readouterr().out


def test_the_list_of_headings_names_every_field(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["headings"]) == 0
    printed = capsys.readouterr().out
    for _, _, heading, *_ in field_list():
        assert f"{heading}: " in printed


def test_findings_are_worded_as_shown(demo: Path, capsys: pytest.CaptureFixture[str]) -> None:
    main(["check", str(demo / "rack.csv"), "--show", "in", "--without", "bushing,guard-open"])
    out = capsys.readouterr().out
    assert "the next row asks for 3 in" in out
    assert out.splitlines()[2] == "LEFT OUT at your word: bushing, guard-open."


def test_lists_of_rules_and_sources(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["rules"]) == 0
    printed = capsys.readouterr().out
    for rule in hw.rules():
        assert f"{rule.slug}{' E' if rule.essential else ''}: {rule.asks}" in printed
        assert main(["rules", rule.slug]) == 0
        manual = " ".join(capsys.readouterr().out.split())
        assert " ".join(rule.manual.split()) in manual
    assert main(["rules", "none-such"]) == 2
    capsys.readouterr()
    assert main(["sources"]) == 0
    assert "29 CFR 1910.215, Table O-6" in capsys.readouterr().out


def test_it_runs_as_a_module_without_importing_pint() -> None:
    code = "import sys, hubwright; assert 'pint' not in sys.modules"
    subprocess.run([sys.executable, "-P", "-c", code], check=True)
    done = subprocess.run([sys.executable, "-P", "-m", "hubwright", "--version"], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == f"hubwright {hw.__version__}"


def test_an_inch_shop_reads_stresses_and_torques_in_its_units(
    demo: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    tight = tmp_path / "tight.csv"
    # 1000 N m on the nut of the first mounting.
    tight.write_text((demo / "rack.csv").read_text().replace(",30,1.5,40,", ",30,1.5,1000,", 1))
    texts = []
    for show in ("mm", "in"):
        main(["check", str(tight), "--show", show])
        texts.append(capsys.readouterr().out)
    found = [re.findall(r"stresses the hub's\s+thread to ([\d.]+)\s+(\w+)", text) for text in texts]
    assert found[0] and found[1]
    (metric, megapascals), (inch, psi) = found[0][0], found[1][0]
    assert (megapascals, psi) == ("MPa", "psi")
    # A psi is 6894.757293 Pa.
    assert float(inch) == pytest.approx(float(metric) * 1e6 / 6894.757293, rel=1e-5)
    assert " MPa" not in texts[1] and " N m" not in texts[1]


def test_no_bar_is_drawn_where_there_is_no_terminal(demo: Path) -> None:
    command = [sys.executable, "-P", "-m", "hubwright", "check", str(demo / "rack.csv")]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    assert (done.returncode, done.stderr) == (1, "")
