"""Texts that a log can keep anywhere: no control characters, one kind of line break, not endless."""

from welds.errors import InputError
from welds.language import tr


def read_text(value: object, field: str, longest: int) -> str:
    """Return the text without blanks around it, or raise InputError."""
    if not isinstance(value, str):
        raise InputError(field, value, tr("a text"))
    text = value.replace("\r\n", "\n").replace("\r", "\n").strip()
    if len(text) > longest:
        raise InputError(field, tr("{count} characters", count=len(text)), tr("up to {most}", most=longest))
    for character in text:
        is_control = character < " " and character not in "\n\t"
        if is_control or character == "\x7f" or "\ud800" <= character <= "\udfff":
            raise InputError(
                field, tr("a control character (code {code})", code=ord(character)), tr("readable text")
            )
    return text
