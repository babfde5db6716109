"""Welds: TIG and MIG set-ups for small workshops, with reasons and sources."""

__version__ = "0.1.0"
