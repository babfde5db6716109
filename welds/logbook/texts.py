"""Texts that a log can keep anywhere: no control characters, one kind of line break, not endless."""

from welds.errors import InputError


def read_text(value: object, field: str, longest: int) -> str:
    """Return the text without blanks around it, or raise InputError."""
    if not isinstance(value, str):
        raise InputError(field, value, "a text")
    text = value.replace("\r\n", "\n").replace("\r", "\n").strip()
    if len(text) > longest:
        raise InputError(field, f"{len(text)} characters", f"up to {longest}")
    for character in text:
        is_control = character < " " and character not in "\n\t"
        if is_control or character == "\x7f" or "\ud800" <= character <= "\udfff":
            raise InputError(field, f"a control character (code {ord(character)})", "readable text")
    return text
