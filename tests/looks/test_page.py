"""The printed page in a real browser: nothing runs, nothing is said, nothing is cut off."""

import re
import struct
import subprocess
from pathlib import Path

import pytest

import hubwright as hw
from conftest import DEMO_DAY, Browser

# Width, height and switches of each way in which the page is looked at.
VIEWS = {
    "desk": (1100, 5200, []),
    "phone": (390, 8000, []),
    "dark": (1100, 5200, ["--force-dark-mode", "--blink-settings=preferredColorScheme=0"]),
}
KEPT = Path(__file__).parents[2] / "target" / "looks"


@pytest.fixture(scope="module")
def page(demo: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("page") / "rack.html"
    hw.check_file(demo / "rack.csv", today=DEMO_DAY).report(path)
    KEPT.mkdir(parents=True, exist_ok=True)
    return path


def test_nothing_in_it_can_run_or_call_home(page: Path) -> None:
    text = page.read_text(encoding="utf-8")
    for mark in ("<script", "javascript:", "http:", "https:", "@import", "url(", "<link", "<iframe", "<img", "src="):
        assert mark not in text.replace("http://www.w3.org/2000/svg", ""), mark
    assert not re.search(r"\son[a-z]+\s*=", text)


@pytest.mark.parametrize("view", VIEWS)
def test_the_browser_shows_it_without_a_word(page: Path, browser: Browser, view: str) -> None:
    width, height, switches = VIEWS[view]
    shot = KEPT / f"{view}.png"
    shot.unlink(missing_ok=True)
    log = browser.run(page, *switches, f"--window-size={width},{height}", f"--screenshot={shot}")
    assert "CONSOLE" not in log, log
    picture = shot.read_bytes()
    assert struct.unpack(">II", picture[16:24]) == (width, height)
    # A blank or broken page would be a few kilobytes.
    assert len(picture) > 60_000


def test_it_is_no_wider_than_a_phone(page: Path, browser: Browser, tmp_path: Path) -> None:
    # The width is measured by a script of the test's own, in a frame around the page.
    around = tmp_path / "around.html"
    around.write_text(
        f"""<iframe id="page" src="{page.as_uri()}" width="390" height="800"></iframe>
<script>document.getElementById("page").onload = event => {{
  const inside = event.target.contentDocument.documentElement;
  document.title = "width " + inside.scrollWidth;
  document.body.append(document.title);
}};</script>"""
    )
    dom = browser.run(around, "--allow-file-access-from-files", "--dump-dom")
    found = re.search(r"width (\d+)", dom)
    assert found and int(found.group(1)) <= 390, dom[-500:]


@pytest.mark.parametrize(("paper", "points"), [("A4", (595, 842)), ("Letter", (612, 792))])
def test_it_prints(page: Path, browser: Browser, tmp_path: Path, paper: str, points: tuple[int, int]) -> None:
    sized = tmp_path / "sized.html"
    sized.write_text(page.read_text(encoding="utf-8").replace("@page {", f"@page {{ size: {paper};"), encoding="utf-8")
    printed = KEPT / f"{paper}.pdf"
    browser.run(sized, "--no-pdf-header-footer", f"--print-to-pdf={printed}")
    told = subprocess.run(["pdfinfo", str(printed)], capture_output=True, text=True, check=True).stdout
    width, height = map(float, re.search(r"Page size:\s+([\d.]+) x ([\d.]+)", told).groups())  # type: ignore[union-attr]
    assert (round(width), round(height)) == points
    text = subprocess.run(["pdftotext", "-layout", str(printed), "-"], capture_output=True, text=True, check=True).stdout
    for part in ("DO NOT RUN", "CAN'T TELL", "unreadable", "WATCH", "over-speed", "Before you start it", "scale 1:2"):
        assert part in text, part
