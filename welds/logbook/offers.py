"""What can be done about a log that cannot be used; the words on the button and behind the message."""

from welds.language import mark

RESTORE = mark("restore a backup (welds log restore)")
OPEN_READ_ONLY = mark("open it to read only (--read-only)")
TRY_AGAIN = mark("try again")
UPDATE = mark("use the newer version of the program")
GO_ON = mark("bring it up to date")
CHOOSE = mark("name another log (--log)")
