"""Small makers of labels, so that every text gets its role from the style sheet."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QLayout, QSizePolicy, QWidget

from welds.gui.card_face import Figure


def label(
    text: str = "", role: str = "", *, tone: str = "", wrap: bool = False, parent: QWidget | None = None
) -> QLabel:
    """Return a label of plain text with a role and a tone that the style sheet knows."""
    made = QLabel(text, parent)
    made.setTextFormat(Qt.TextFormat.PlainText)
    if role:
        made.setProperty("role", role)
    if tone:
        made.setProperty("tone", tone)
    if wrap:
        made.setWordWrap(True)
        made.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        made.setMinimumWidth(0)
    return made


def set_text(shown: QLabel, text: str) -> None:
    """Put a text on a label; an empty one takes no room."""
    if shown.text() != text:
        shown.setText(text)
    shown.setVisible(bool(text))


def set_property(widget: QWidget, name: str, value: object) -> None:
    """Set a dynamic property and let the style sheet see it."""
    if widget.property(name) == value:
        return
    widget.setProperty(name, value)
    widget.style().unpolish(widget)
    widget.style().polish(widget)
    widget.update()


def clear_layout(layout: QLayout) -> None:
    """Take every widget out of a layout and let it go once control returns to Qt."""
    while (item := layout.takeAt(0)) is not None:
        widget = item.widget()
        if widget is not None:
            widget.hide()
            widget.deleteLater()


def show_grade(chip: QLabel, figure: Figure) -> None:
    """Put a figure's grade in words on its chip: dashed where no document stands behind the figure."""
    set_text(chip, figure.grade)
    set_property(chip, "tone", "" if figure.is_published else "warn")
    chip.setToolTip(figure.grade_meaning)
    chip.setAccessibleName(f"{figure.label}: {figure.grade}, {figure.grade_meaning}")
