"""What Help says at length: the three everyday uses, and how a figure is made and how good it is."""

from welds.language import tr


def guide_text() -> str:
    """Return the three everyday uses, step by step."""
    return "\n\n".join(
        (
            tr(
                "SET UP BEFORE WELDING ALUMINIUM CORNERS\n"
                "1. Page Set-up: choose the metal, type the thickness as you would say it (0.080, 14"
                " ga, 2 mm), click the joint.\n"
                "2. Tick whatever may be on the metal, and what the part belongs to. Read what comes"
                " up on top; a red one has to be ticked before the card is ready.\n"
                "3. Set the machine to the large figures; the range beside each is where to look if"
                " the first bead does not please. Why says where a figure comes from.\n"
                "4. Print (Ctrl+P) puts it on one page; F9 shows the main figures across the bench.\n"
                "5. Run a bead on scrap of the same sheet first.",
            ),
            tr(
                "LOG A SUCCESSFUL SETTING\n"
                "1. With the card in front press Log this weld (Ctrl+L). It is filled in from the"
                " card.\n"
                "2. Put right what you changed at the machine, add a picture if you like.\n"
                "3. Press how it came out: that logs it, and the page Log can take it back. The next"
                " card for a like joint shows the weld and has learned from it.",
            ),
            tr(
                "COMPARE JOINT TYPES SIDE BY SIDE\n"
                "1. Page Side by side (Ctrl+2) starts with the card you came from.\n"
                "2. Add columns: another joint, metal, thickness or process. Rows that differ stand"
                " out and say why.\n"
                "3. Move the thickness slider: all columns follow, and the curve shows current over"
                " thickness.\n"
                "4. A column can be opened as a card, logged or printed.",
            ),
            tr(
                "WHEN A BEAD WENT WRONG\n"
                "Press What went wrong (F7), pick what it looks like, read the cause, and let the"
                " card take the change. Ctrl+K leads anywhere: type 5052 corner, bench, or undercut.",
            ),
        )
    )


def method_text() -> str:
    """Return how figures are made and how far they can be trusted."""
    return "\n\n".join(
        (
            tr(
                "WHERE A FIGURE COMES FROM\n"
                "Schedules out of handbooks and standards are brought to one case and pooled: better"
                " grades count more, each document has one vote, and the band is what the documents"
                " print for themselves together with how far they lie apart. Factors for joint,"
                " position, alloy and hand follow, each a line under Why. Then come your log, and the"
                " limits of your machine, wire and tungsten.",
            ),
            tr(
                "GRADES\n"
                "Printed: read in the document itself. Quoted: read where another document cites it."
                " Worked out: computed from such figures. Shop practice: common, with no published"
                " source. From memory: to be checked against print. The last two have a dashed edge.",
            ),
            tr(
                "HOW GOOD IT IS\n"
                "The starting current lies within 4 % of the schedule rows at the median and within"
                " 13 % for nine in ten; a document left out and predicted from the others, within 6"
                " and 17 %. Many MIG rows for thin sheet are from memory. The heat picture carries its"
                " own error as a band. The method, its assumptions and all scores stand in"
                " DEVELOPERS.md.",
            ),
            tr(
                "WHAT IT IS NOT\n"
                "It is no welding procedure. Local codes, the equipment's and the vehicle's own"
                " manuals and your test pieces come first; what can hurt someone when it fails belongs"
                " to a qualified welder.",
            ),
        )
    )
