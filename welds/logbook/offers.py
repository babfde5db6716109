"""What can be done about a log that cannot be used; the words on the button and behind the message."""

RESTORE = "restore a backup (welds log restore)"
OPEN_READ_ONLY = "open it to read only (--read-only)"
TRY_AGAIN = "try again"
UPDATE = "use the newer version of the program"
CHOOSE = "name another log (--log)"
