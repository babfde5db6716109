"""The words for every closed choice of a request."""

from PySide6.QtCore import QObject

from welds.advice.request import Coating, Goal, Hand, Joint, Part, Place, Process, Solvent, Transfer

Options = tuple[tuple[str, str], ...]


class OptionWords(QObject):
    """Lists of (value, words) in the order they are offered; an empty value means "not stated"."""

    def processes(self) -> Options:
        """TIG and MIG."""
        return ((Process.TIG, self.tr("TIG")), (Process.MIG, self.tr("MIG")))

    def joints(self) -> Options:
        """The seven joints."""
        return (
            (Joint.BUTT, self.tr("Butt")),
            (Joint.TEE, self.tr("Tee")),
            (Joint.LAP, self.tr("Lap")),
            (Joint.OUTSIDE_CORNER, self.tr("Outside corner")),
            (Joint.INSIDE_CORNER, self.tr("Inside corner")),
            (Joint.EDGE, self.tr("Edge")),
            (Joint.PLUG, self.tr("Plug")),
        )

    def coatings(self) -> Options:
        """What may be on the metal."""
        return (
            (Coating.GALVANISED, self.tr("Galvanised")),
            (Coating.ZINC_PLATED, self.tr("Zinc plate")),
            (Coating.ZINC_PRIMER, self.tr("Zinc primer")),
            (Coating.CADMIUM, self.tr("Cadmium")),
            (Coating.CHROME, self.tr("Chrome")),
            (Coating.PAINT, self.tr("Paint")),
            (Coating.OLD_PAINT, self.tr("Old paint")),
            (Coating.POWDER_COAT, self.tr("Powder coat")),
            (Coating.SEALER, self.tr("Sealer")),
            (Coating.OIL, self.tr("Oil, grease")),
            (Coating.ANODISED, self.tr("Anodised")),
            (Coating.MILL_SCALE, self.tr("Mill scale")),
            (Coating.RUST, self.tr("Rust")),
            (Coating.UNKNOWN, self.tr("Not sure")),
        )

    def solvents(self) -> Options:
        """What the part is wiped with."""
        return (
            ("", self.tr("Nothing, or water")),
            (Solvent.ACETONE, self.tr("Acetone")),
            (Solvent.ALCOHOL, self.tr("Alcohol")),
            (Solvent.CHLORINATED, self.tr("Chlorinated cleaner")),
            (Solvent.UNKNOWN, self.tr("A spray, contents unknown")),
        )

    def parts(self) -> Options:
        """What the joint belongs to."""
        return (
            ("", self.tr("Loose sheet or test piece")),
            (Part.BRACKET, self.tr("Bracket or cover")),
            (Part.VEHICLE, self.tr("On a vehicle or boat")),
            (Part.CLOSED_SECTION, self.tr("Tube or closed section")),
            (Part.TANK, self.tr("Tank or drum")),
            (Part.PRESSURE, self.tr("Holds pressure")),
            (Part.STEERING_SUSPENSION, self.tr("Steering or suspension")),
            (Part.TOWING, self.tr("Towing part")),
            (Part.LIFTING, self.tr("Lifting part")),
            (Part.ROLLOVER, self.tr("Roll-over structure")),
            (Part.SEALED_ITEM, self.tr("Sealed item, shock absorber")),
        )

    def places(self) -> Options:
        """Where the arc is struck."""
        return (
            (Place.INDOORS, self.tr("Indoors")),
            (Place.OUTDOORS, self.tr("Outdoors")),
            (Place.ENCLOSED, self.tr("Cramped, closed")),
        )

    def hands(self) -> Options:
        """How fast the torch travels."""
        return ((Hand.UNHURRIED, self.tr("Unhurried")), (Hand.BRISK, self.tr("Brisk")))

    def goals(self) -> Options:
        """What the filler should favour."""
        return (
            ("", self.tr("General work")),
            (Goal.STRENGTH, self.tr("Strength")),
            (Goal.DUCTILITY, self.tr("Bends without cracking")),
            (Goal.LEAST_CRACKING, self.tr("Least hot cracking")),
            (Goal.ANODISED_COLOUR, self.tr("Colour after anodising")),
            (Goal.WARM_SERVICE, self.tr("Warm in service")),
            (Goal.SALT_WATER, self.tr("Salt water")),
        )

    def positions(self) -> Options:
        """ISO 6947 letters with plain words."""
        return (
            ("PA", self.tr("PA  flat")),
            ("PB", self.tr("PB  fillet, one leg upright")),
            ("PC", self.tr("PC  along a wall")),
            ("PF", self.tr("PF  upwards")),
            ("PG", self.tr("PG  downwards")),
            ("PE", self.tr("PE  overhead")),
            ("PD", self.tr("PD  overhead fillet")),
        )

    def transfers(self) -> Options:
        """How metal crosses a MIG arc."""
        return (
            ("", self.tr("Let the card choose")),
            (Transfer.SHORT_CIRCUIT, self.tr("Short circuit")),
            (Transfer.GLOBULAR, self.tr("Globular")),
            (Transfer.SPRAY, self.tr("Spray")),
            (Transfer.PULSED, self.tr("Pulsed")),
        )

    def wires(self) -> Options:
        """Wire that is on the machine."""
        sizes = (
            ("0.6", "0.023"),
            ("0.8", "0.030"),
            ("0.9", "0.035"),
            ("1.0", "0.040"),
            ("1.2", "0.045"),
            ("1.6", "1/16"),
        )
        named = tuple(
            (f"{mm} mm", self.tr("{mm} mm ({inch} in)").format(mm=mm, inch=inch)) for mm, inch in sizes
        )
        return (("", self.tr("Let the card choose")), *named)
