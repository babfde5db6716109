"""What the heads of plain tables look like, in the colours of the palette, light or dark."""

HEAD_STYLE = (
    "QHeaderView { background: palette(window); border: none; }"
    "QHeaderView::section { background: palette(window); color: palette(window-text); border: none;"
    " border-bottom: 1px solid palette(dark); padding: 6px 8px; font-weight: 600; }"
)
