"""Examples in docstrings, the README and the notebooks run."""

import contextlib
import doctest
import io
import os
import re
from pathlib import Path

import nbclient
import nbformat
import pytest

import hubwright as hw
from conftest import ROOT
from hubwright import _core, plots


def test_the_examples_in_the_docstrings_run() -> None:
    finder = doctest.DocTestFinder(exclude_empty=True)
    runner = doctest.DocTestRunner(optionflags=doctest.ELLIPSIS | doctest.IGNORE_EXCEPTION_DETAIL)
    # A compiled module hides where its functions come from, so each is named.
    named = [getattr(_core, name) for name in dir(_core) if not name.startswith("__")]
    for thing in [*named, plots.rack]:
        for test in finder.find(thing, getattr(thing, "__name__", "thing"), globs={}):
            runner.run(test)
    assert runner.tries > 20
    assert runner.failures == 0


def test_public_functions_are_documented() -> None:
    for module in (hw, hw.gauge, hw.joint, hw.wheel):
        for name in module.__all__:
            assert getattr(module, name).__doc__, name


def test_the_python_of_the_readme_runs(demo: Path) -> None:
    readme = (ROOT / "README.md").read_text()
    blocks = re.findall(r"```python\n(.*?)```", readme, re.S)
    assert len(blocks) > 1
    said, names = io.StringIO(), dict[str, object]()
    with contextlib.redirect_stdout(said):
        for block in blocks:
            exec(block.replace("demo-rack/", f"{demo}/"), names)
    assert said.getvalue().startswith("unknown False\nCAN'T TELL  flanges-unlike: blank: loose flange land")


@pytest.mark.parametrize("path", sorted((ROOT / "python" / "notebooks").glob("*.ipynb")), ids=lambda path: path.stem)
def test_the_notebooks_run(path: Path, tmp_path: Path) -> None:
    notebook = nbformat.read(path, as_version=4)
    assert all(not cell.get("outputs") for cell in notebook.cells), "clear the outputs before you commit"
    # The notebook draws inside itself, whatever the tests were told.
    os.environ.pop("MPLBACKEND", None)
    client = nbclient.NotebookClient(notebook, timeout=300, kernel_name="python3", resources={"metadata": {"path": str(tmp_path)}})
    client.execute()
    shown = [output for cell in notebook.cells for output in cell.get("outputs", [])]
    assert any("image/png" in output.get("data", {}) for output in shown), "a notebook has a picture"
    assert not any(output.output_type == "error" for output in shown)
