"""What several tests use: the demo rack, written once."""

from pathlib import Path

import pytest

from hubwright._core import write_demo

ROOT = Path(__file__).parents[2]
DEMO_DAY = "2026-11-25"


@pytest.fixture(scope="session")
def demo(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of the demo rack."""
    folder = tmp_path_factory.mktemp("demo")
    write_demo(folder)
    return folder
