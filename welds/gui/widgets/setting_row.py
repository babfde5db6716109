"""One setting of a group on a line, with its reasons below when asked."""

from collections.abc import Collection

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QGridLayout, QVBoxLayout, QWidget

from welds.gui.card_face import Figure, FigureGroup
from welds.gui.widgets.fold import FoldButton
from welds.gui.widgets.reason_list import ReasonList
from welds.gui.widgets.texts import label, set_property, set_text, show_grade

LABEL_COLUMN_PX = 140
LONGEST_FIGURE = 24
"""Longer starts are sentences and are not set bold."""


class SettingRow(QWidget):
    """Label, start, range, grade and "why"; words that are long wrap."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.figure: Figure | None = None
        self._name = label(role="soft", wrap=True, parent=self)
        self._start = label(role="value", wrap=True, parent=self)
        self._below = label(role="small", wrap=True, parent=self)
        self._grade = label(role="chip", parent=self)
        self.why = FoldButton(self.tr("Why"), parent=self)
        self.why.toggled.connect(self._on_toggled)
        self._reasons: ReasonList | None = None
        named = QVBoxLayout()
        named.setSpacing(1)
        named.addWidget(self._name)
        named.addWidget(self._grade, 0, Qt.AlignmentFlag.AlignLeft)
        named.addStretch(1)
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(self._start)
        words.addWidget(self._below)
        words.addStretch(1)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(10)
        self._grid.setVerticalSpacing(2)
        self._grid.setColumnStretch(1, 1)
        self._grid.setColumnMinimumWidth(0, LABEL_COLUMN_PX)
        self._grid.addLayout(named, 0, 0)
        self._grid.addLayout(words, 0, 1)
        self._grid.addWidget(self.why, 0, 2, Qt.AlignmentFlag.AlignTop)

    def show_figure(self, figure: Figure) -> None:
        """Show this setting."""
        self.figure = figure
        self.setAccessibleName(f"{figure.label}: {figure.start} {figure.unit}".strip())
        self.why.setAccessibleName(self.tr("Why {label}").format(label=figure.label))
        set_text(self._name, figure.label)
        set_property(self._start, "role", "" if len(figure.start) > LONGEST_FIGURE else "value")
        set_text(self._start, f"{figure.start} {figure.unit}".strip())
        set_text(self._below, "  ·  ".join(text for text in (figure.range, figure.second) if text))
        show_grade(self._grade, figure)
        if self.why.isChecked():
            self._on_toggled(on=True)

    def _on_toggled(self, on: bool) -> None:
        if on and self._reasons is None:
            self._reasons = ReasonList(self)
            self._grid.addWidget(self._reasons, 1, 0, 1, 3)
        if self._reasons is not None:
            if on and self.figure is not None:
                self._reasons.show_figure(self.figure)
            self._reasons.setVisible(on)


class SettingGroup(QFrame):
    """A titled list of settings on a sheet."""

    def __init__(
        self, group: FigureGroup, opened: Collection[str] = (), parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setProperty("panel", "sheet")
        layout = QVBoxLayout(self)
        layout.setContentsMargins(14, 10, 8, 8)
        layout.setSpacing(7)
        self._title = label(role="heading", parent=self)
        layout.addWidget(self._title)
        self.rows = [SettingRow(self) for _ in group.figures]
        for row in self.rows:
            layout.addWidget(row)
        layout.addStretch(1)
        self.show_group(group)
        for row in self.rows:
            row.why.setChecked(row.figure is not None and row.figure.name in opened)

    def show_group(self, group: FigureGroup) -> None:
        """Show a group of the same settings."""
        self.setAccessibleName(group.title)
        self._title.setText(group.title)
        for row, figure in zip(self.rows, group.figures, strict=True):
            row.show_figure(figure)

    def opened(self) -> set[str]:
        """Return the names whose reasons are on show."""
        return {row.figure.name for row in self.rows if row.figure and row.why.isChecked()}
