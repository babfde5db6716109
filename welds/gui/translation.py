"""The window's language: the same words as everywhere else, and Qt's own for its dialogs."""

# Imported before the first paint: an English window reads no catalogue and nothing to read one with.

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from welds import language
from welds.language import mark

NEXT_START = mark("From its next start on the window speaks this language.")


class Words(QTranslator):
    """Answers Qt's `tr` with what `welds.language` says, whatever class asks."""

    def isEmpty(self) -> bool:
        return False

    def translate(self, _context: str, text: str, _comment: str | None = None, _number: int = -1) -> str:
        return language.tr(text)


def speak(application: QCoreApplication, asked: str = "") -> None:
    """Let the window speak `asked`, or the system's language where nothing was asked for."""
    language.use(known_or_system(asked))
    locale = _locale_of(language.code())
    QLocale.setDefault(locale)
    if language.code() == language.ENGLISH:
        return
    application.installTranslator(Words(application))
    of_qt = QTranslator(application)
    if of_qt.load(locale, "qtbase", "_", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)):
        application.installTranslator(of_qt)  # asked first, as it came last; it knows nothing of ours


def known_or_system(asked: str) -> str:
    """Return a language of ours: the one asked for, or the system's where none was asked for."""
    return language.known(asked or QLocale.system().name()[:2])


def said_later(asked: str) -> str:
    """Return, in the language asked for, that the next start speaks it; nothing where this one does."""
    code = known_or_system(asked)
    return "" if code == language.code() else language.said_in(code, NEXT_START)


def _locale_of(code: str) -> QLocale:
    """Return the system's own way of writing numbers and dates where it speaks this language too."""
    system = QLocale.system()
    return system if system.name()[:2] == code else QLocale(code)
