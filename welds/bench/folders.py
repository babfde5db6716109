"""Where the person's own files live."""

from pathlib import Path


def config_folder() -> Path:
    """Return the person's configuration folder; it need not exist yet."""
    import platformdirs

    return Path(platformdirs.user_config_dir("welds", appauthor=False))


def tables_folder() -> Path:
    """Return the folder of the person's own table rows; it need not exist yet."""
    return config_folder() / "tables"
