"""The one style sheet: spacing, borders, focus ring and the scale of the type.

Widgets say what a text is through the dynamic property `role`; the sizes stand here and nowhere else.
"""

from welds.gui.colours import Colours

INPUT_HEIGHT_PX = 36
"""Inputs are worked with gloves on: never lower than 34 px."""

TYPE_SCALE = {
    "hero": 5.6,
    "hero-unit": 2.0,
    "figure": 1.75,
    "words": 1.3,
    "title": 1.3,
    "heading": 1.0,
    "value": 1.12,
    "small": 0.88,
}


def stylesheet(colours: Colours, base_px: int) -> str:
    """Return the application's style sheet in these colours, for this size of plain text in pixels."""
    c = colours
    sizes = "\n".join(
        f'QLabel[role="{role}"] {{ font-size: {round(base_px * scale)}px; }}'
        for role, scale in TYPE_SCALE.items()
    )
    return f"""
* {{ font-size: {base_px}px; }}
{sizes}
QLabel[role="hero"], QLabel[role="figure"], QLabel[role="words"],
QLabel[role="title"], QLabel[role="value"] {{
    font-weight: 600;
}}
QLabel[role="heading"] {{ font-weight: 600; color: {c.soft_ink}; }}
QLabel[role="small"], QLabel[role="hero-unit"], QLabel[role="soft"] {{ color: {c.soft_ink}; }}
QLabel[tone="stop"] {{ color: {c.stop}; }}
QLabel[role="heading"][tone="stop"] {{ color: {c.stop}; }}
QLabel[tone="warn"] {{ color: {c.warn}; }}
QLabel[tone="good"] {{ color: {c.good}; font-weight: 600; }}
QLabel:disabled {{ color: {c.faded_ink}; }}

QLabel[role="chip"] {{
    font-size: {round(base_px * 0.82)}px; color: {c.soft_ink}; border: 1px solid {c.edge};
    border-radius: 3px; padding: 1px 6px;
}}
QLabel[role="chip"][tone="warn"] {{
    color: {c.warn}; background: {c.warn_paper}; border: 1px dashed {c.warn}; font-weight: normal;
}}
QLabel[role="chip"]:disabled {{ color: {c.faded_ink}; border-color: {c.faded_ink}; background: transparent; }}

QFrame[panel="sheet"] {{ background: {c.sheet}; border: 1px solid {c.line}; border-radius: 6px; }}
QFrame[panel="raised"] {{ background: {c.raised}; border: 1px solid {c.line}; border-radius: 6px; }}
QFrame[panel="stop"] {{ background: {c.stop_paper}; border: 2px solid {c.stop}; border-radius: 6px; }}
QFrame[panel="warn"] {{ background: {c.warn_paper}; border: 1px solid {c.warn}; border-radius: 6px; }}
QFrame[panel="good"] {{ background: {c.good_paper}; border: 1px solid {c.good}; border-radius: 6px; }}
QFrame[panel="refusal"] {{ background: {c.warn_paper}; border: 2px solid {c.warn}; border-radius: 6px; }}
QScrollArea, QScrollArea > QWidget > QWidget[scrolled="true"] {{ background: transparent; border: none; }}

QLineEdit, QComboBox {{
    min-height: {INPUT_HEIGHT_PX - 4}px; padding: 0 8px; background: {c.sheet}; color: {c.ink};
    border: 1px solid {c.edge}; border-radius: 4px; margin: 1px;
    selection-background-color: {c.accent}; selection-color: {c.on_accent};
}}
QLineEdit:focus, QComboBox:focus {{ border: 2px solid {c.accent}; margin: 0; }}
QLineEdit[invalid="true"] {{ border: 2px solid {c.stop}; margin: 0; background: {c.stop_paper}; }}
QLineEdit:disabled, QComboBox:disabled {{ color: {c.faded_ink}; border-color: {c.line}; }}
QComboBox::drop-down {{ width: 30px; border: none; }}
QComboBox::down-arrow {{ image: none; }}
QComboBox QAbstractItemView {{
    background: {c.sheet}; color: {c.ink}; border: 1px solid {c.edge}; outline: none;
}}
QAbstractItemView::item {{ min-height: {INPUT_HEIGHT_PX - 4}px; padding: 0 6px; }}
QAbstractItemView::item:hover {{ background: {c.accent_paper}; }}
QAbstractItemView::item:disabled, QAbstractItemView::item:disabled:hover {{
    color: {c.soft_ink}; background: {c.raised}; font-weight: 600;
}}
QAbstractItemView::item:selected {{ background: {c.accent}; color: {c.on_accent}; }}

QPushButton, QToolButton {{
    min-height: {INPUT_HEIGHT_PX - 4}px; padding: 0 12px; background: {c.raised}; color: {c.ink};
    border: 1px solid {c.edge}; border-radius: 4px; margin: 1px;
}}
QPushButton:hover, QToolButton:hover {{ background: {c.accent_paper}; }}
QPushButton:focus, QToolButton:focus {{ border: 2px solid {c.accent}; margin: 0; }}
QPushButton:pressed, QToolButton:pressed {{ background: {c.line}; }}
QPushButton:checked, QToolButton:checked {{
    background: {c.accent}; color: {c.on_accent}; border-color: {c.accent};
}}
QPushButton:checked:focus, QToolButton:checked:focus {{ border: 2px solid {c.ink}; }}
QPushButton:disabled, QToolButton:disabled {{ color: {c.faded_ink}; border-color: {c.line}; }}
QPushButton[kind="main"] {{
    background: {c.accent}; color: {c.on_accent}; border-color: {c.accent}; font-weight: 600;
}}
QPushButton[kind="main"]:focus {{ border: 2px solid {c.ink}; }}
QPushButton[kind="state"] {{ font-weight: 600; }}
QPushButton[kind="state"][tone="stop"] {{ background: {c.stop}; color: {c.sheet}; border-color: {c.stop}; }}
QPushButton[kind="state"][tone="warn"] {{
    background: {c.warn_paper}; color: {c.warn}; border: 2px dashed {c.warn};
}}
QPushButton[kind="state"][tone="good"] {{
    background: {c.good_paper}; color: {c.good}; border-color: {c.good};
}}
QPushButton[kind="state"]:focus {{ border: 2px solid {c.ink}; margin: 0; }}
QToolButton[kind="fold"] {{
    background: transparent; border-color: transparent; padding: 0 6px; color: {c.accent};
}}
QToolButton[kind="fold"]:hover {{ background: {c.accent_paper}; }}
QToolButton[kind="fold"]:checked {{ color: {c.accent}; }}
QToolButton[kind="fold"]:focus {{ border: 2px solid {c.accent}; }}
QToolButton[kind="fold"]:disabled {{ color: {c.faded_ink}; }}

QFrame[panel="top"] {{ background: {c.paper}; border: none; border-bottom: 1px solid {c.line}; }}
QFrame[panel="top"] QPushButton, QFrame[panel="top"] QToolButton {{ padding: 0 6px; }}
QMenuBar {{ background: transparent; color: {c.ink}; }}
QMenuBar::item {{ padding: 10px 10px; background: transparent; }}
QMenuBar::item:selected {{ background: {c.accent}; color: {c.on_accent}; }}
QMenu {{ background: {c.sheet}; color: {c.ink}; border: 1px solid {c.edge}; }}
QMenu::item {{ padding: 7px 28px 7px 28px; }}
QMenu::item:selected {{ background: {c.accent}; color: {c.on_accent}; }}
QMenu::item:disabled {{ color: {c.faded_ink}; }}
QMenu::separator {{ height: 1px; background: {c.line}; margin: 4px 8px; }}
QStatusBar {{ background: {c.paper}; color: {c.soft_ink}; }}
QSplitter::handle {{ background: {c.line}; }}
QToolTip {{ background: {c.sheet}; color: {c.ink}; border: 1px solid {c.edge}; padding: 4px; }}
QScrollBar:vertical {{ background: transparent; width: 14px; margin: 0; }}
QScrollBar::handle:vertical {{ background: {c.edge}; border-radius: 5px; min-height: 40px; margin: 2px; }}
QScrollBar::add-line, QScrollBar::sub-line {{ height: 0; width: 0; }}
"""
