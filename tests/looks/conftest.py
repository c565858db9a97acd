"""Office program and browser: found here or the tests fail, since the CI installs them."""

import shutil
import subprocess
from pathlib import Path

import pytest

from hubwright._core import write_demo

DEMO_DAY = "2026-11-25"


@pytest.fixture(scope="session")
def demo(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of the demo rack."""
    folder = tmp_path_factory.mktemp("demo")
    write_demo(folder)
    return folder


class Office:
    """An office program without a window, with a profile of its own."""

    def __init__(self, profile: Path, country: str) -> None:
        settings = profile / "user" / "registrymodifications.xcu"
        settings.parent.mkdir()
        settings.write_text(
            f"""<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema">
<item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" oor:op="fuse"><value>{country}</value></prop></item>
</oor:items>
"""
        )
        program = shutil.which("soffice")
        assert program, "an office program is needed: apt-get install libreoffice-calc"
        self.command = [program, "--headless", f"-env:UserInstallation=file://{profile}"]

    def save(self, path: Path, kind: str, into: Path, reading: str = "") -> Path:
        """Open a file and save it as another kind, `xlsx` or `csv:…` with the options of a filter."""
        into.mkdir(exist_ok=True)
        arguments = [f"--infilter={reading}"] if reading else []
        done = subprocess.run(
            [*self.command, *arguments, "--convert-to", kind, "--outdir", str(into), str(path)],
            capture_output=True,
            text=True,
            timeout=180,
            check=True,
        )
        saved = into / f"{path.stem}.{kind.split(':')[0]}"
        assert saved.exists(), done.stdout + done.stderr
        return saved


@pytest.fixture(scope="session")
def office(tmp_path_factory: pytest.TempPathFactory) -> Office:
    """The office program where points part decimals."""
    return Office(tmp_path_factory.mktemp("profile"), "en-GB")


@pytest.fixture(scope="session")
def german_office(tmp_path_factory: pytest.TempPathFactory) -> Office:
    """The office program where commas do."""
    return Office(tmp_path_factory.mktemp("profile"), "de-DE")


class Browser:
    """A browser without a window."""

    def __init__(self, profile: Path) -> None:
        program = next(filter(None, map(shutil.which, ("chromium", "chromium-browser", "google-chrome"))), None)
        assert program, "a browser is needed: apt-get install chromium"
        self.command = [
            program,
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--no-first-run",
            "--disable-background-networking",
            "--hide-scrollbars",
            "--enable-logging=stderr",
            f"--user-data-dir={profile}",
        ]

    def run(self, page: Path, *arguments: str) -> str:
        """Open a page and give back what the browser wrote to its log."""
        done = subprocess.run(
            [*self.command, *arguments, page.as_uri()], capture_output=True, text=True, timeout=180, check=True
        )
        return done.stderr + done.stdout


@pytest.fixture(scope="session")
def browser(tmp_path_factory: pytest.TempPathFactory) -> Browser:
    """The browser."""
    return Browser(tmp_path_factory.mktemp("browser"))
