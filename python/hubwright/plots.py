"""Pictures of verdicts, with matplotlib (`pip install "hubwright[plots]"`)."""

from typing import TYPE_CHECKING

from hubwright._core import Checked
from hubwright.words import Outcome

if TYPE_CHECKING:
    from matplotlib.axes import Axes

# Told apart by shape as well as by colour, for print and for colour-blind eyes.
_MARKS = {
    Outcome.REFUSE: ("X", "#a3191f", "DO NOT RUN"),
    Outcome.UNKNOWN: ("$?$", "#6a3d9a", "CAN'T TELL"),
    Outcome.CAUTION: ("^", "#b8860b", "WATCH"),
    Outcome.PASS: ("o", "#226b3a", "OK"),
}


def rack(checked: Checked, ax: "Axes | None" = None) -> "Axes":
    """Draw a rack as a grid: a row a mounting, a column a rule, a mark an outcome.

    Rules that were checked on no mounting are left out; a mounting that could not be read has a
    grey bar. Empty places were not checked.

    Args:
        checked: What `check_file` or `check_rows` gave back, up to 60 rows of it.
        ax: Axes to draw on; a new figure when left out.

    Returns:
        The axes.

    Examples:
        >>> import hubwright as hw
        >>> from hubwright import plots
        >>> ax = plots.rack(hw.check_rows([{"wheel diameter [mm]": 200, "fixed flange diameter [mm]": 60}]))
    """
    import matplotlib.pyplot as plt

    rows = list(checked)[:60]
    cells = {
        (row.number, finding.rule.slug): finding.outcome
        for row in rows
        if row.verdict is not None
        for finding in row.verdict.findings
        if finding.outcome != Outcome.NOT_CHECKED
    }
    used = {slug for _, slug in cells}
    slugs = [finding for finding in _slugs() if finding in used]
    if ax is None:
        inches = (2.5 + 0.32 * max(len(slugs), 1), 2.2 + 0.32 * len(rows))
        _, ax = plt.subplots(figsize=inches, layout="constrained")
    for y, row in enumerate(rows):
        if row.verdict is None:
            ax.axhspan(y - 0.3, y + 0.3, color="0.85", zorder=0)
            ax.text((len(slugs) - 1) / 2, y, "unreadable", ha="center", va="center", color="0.3")
    for outcome, (mark, colour, label) in _MARKS.items():
        at = [
            (slugs.index(slug), y)
            for y, row in enumerate(rows)
            for slug in slugs
            if cells.get((row.number, slug)) == outcome
        ]
        xs, ys = zip(*at, strict=True) if at else ((), ())
        size = 22 if outcome == Outcome.PASS else 80
        ax.scatter(xs, ys, marker=mark, c=colour, s=size, label=label, linewidths=0)
    ax.set_xticks(range(len(slugs)), slugs, rotation=60, ha="right")
    ax.set_yticks(range(len(rows)), [row.name for row in rows])
    ax.set_xlim(-0.6, max(len(slugs), 1) - 0.4)
    ax.set_ylim(len(rows) - 0.4, -0.6)
    ax.grid(color="0.92")
    ax.set_axisbelow(True)
    ax.spines[:].set_visible(False)
    ax.tick_params(length=0)
    ax.legend(ncols=4, loc="lower left", bbox_to_anchor=(0, 1), frameon=False)
    return ax


def _slugs() -> list[str]:
    from hubwright._core import rules

    return [rule.slug for rule in rules()]
