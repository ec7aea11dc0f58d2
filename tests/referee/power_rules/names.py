"""What every question, answer, finding, proof and piece of work means for "may power be applied?": the referee's own table.

Written from the names' plain texts and from what is known of old computers and their supplies; the four weights are

    no         power would harm, or may well harm, boards or fingers
    not_known  nobody can tell from this: shown as do not
    remark     power may be applied, and whoever applies it is told
    nothing    says nothing about power
"""

NO, NOT_KNOWN, REMARK, NOTHING = "no", "not_known", "remark", "nothing"
ORDER = {NO: 3, NOT_KNOWN: 2, REMARK: 1, NOTHING: 0}


class Question:
    """A survey question: who is asked, what it means when nobody looked, and what each answer means."""

    def __init__(self, kinds, unlooked, fine, remark="", not_known="", no=""):
        self.kinds = kinds.split()
        self.unlooked = unlooked
        self.answers = {}
        for weight, names in ((NOTHING, fine), (REMARK, remark), (NOT_KNOWN, not_known), (NO, no)):
            for name in names.split():
                self.answers[name] = weight
        self.fine = fine.split()


QUESTIONS = {
    # What is known of its running?
    "running": Question(
        "mainboard processor coprocessor processor_adapter voltage_module memory_module cache_module "
        "video_card sound_card network_card controller_card multi_io_card riser modem optical_drive "
        "floppy_drive tape_drive power_supply keyboard pointing_device monitor clock_module other",
        NOTHING, "seen said untested", remark="faulty dead",
    ),
    # What feeds the clock and settings?
    "clock-supply": Question(
        "mainboard multi_io_card sound_card network_card controller_card",
        NOT_KNOWN, "nothing coin soldered-coin module removed lithium-thionyl", remark="pack rechargeable lithium-thionyl-spent",
        no="leaking lithium-thionyl-leaking lithium-thionyl-swollen",
    ),
    # Coin cell: holds its voltage?
    "coin-cell": Question(
        "mainboard multi_io_card",
        NOTHING, "good none", remark="low spent holder-corroded",
    ),
    # Residue round the cell?
    "leak-reach": Question(
        "mainboard multi_io_card sound_card network_card controller_card",
        NOT_KNOWN, "none old-cleaned", no="near far under-chips tracks-gone lithium-thionyl",
    ),
    # Electrolytic capacitors?
    "electrolytics": Question(
        "mainboard voltage_module video_card sound_card network_card controller_card multi_io_card modem",
        NOT_KNOWN, "sound none", remark="bad-age", not_known="missing", no="bulged leaking burst dark-glue",
    ),
    # Tantalum beads?
    "tantalums": Question(
        "mainboard video_card sound_card network_card controller_card multi_io_card modem memory_module",
        NOT_KNOWN, "none whole", no="burst",
    ),
    # Each rail to ground, unpowered?
    "rails": Question(
        "mainboard voltage_module video_card sound_card network_card controller_card multi_io_card riser "
        "modem",
        NOT_KNOWN, "clear", not_known="low", no="shorted",
    ),
    # Which supply plug does it take?
    "power-plug": Question(
        "mainboard",
        NOT_KNOWN, "two-plug atx own", not_known="unknown",
    ),
    # Core voltage setting?
    "voltage-jumpers": Question(
        "mainboard processor_adapter",
        NOT_KNOWN, "right automatic", not_known="unknown", no="wrong",
    ),
    # Jumpers: as found noted, meaning known?
    "jumpers": Question(
        "mainboard processor_adapter sound_card network_card controller_card multi_io_card modem hard_disk "
        "optical_drive floppy_drive tape_drive",
        NOTHING, "known none unknown",
    ),
    # Both faces of the board?
    "board-faces": Question(
        "mainboard processor_adapter voltage_module memory_module cache_module video_card sound_card "
        "network_card controller_card multi_io_card riser modem hard_disk",
        NOT_KNOWN, "sound warped", not_known="cut", no="cracked burnt",
    ),
    # Solder joints and earlier repairs?
    "joints": Question(
        "mainboard processor_adapter voltage_module video_card sound_card network_card controller_card "
        "multi_io_card riser modem",
        NOTHING, "sound tidy wires", remark="cracked lifted",
    ),
    # All parts there?
    "parts-present": Question(
        "mainboard processor_adapter voltage_module memory_module cache_module video_card sound_card "
        "network_card controller_card multi_io_card modem",
        NOT_KNOWN, "all", not_known="missing",
    ),
    # Sockets, slots, memory clips, levers?
    "sockets": Question(
        "mainboard processor_adapter video_card controller_card riser",
        NOT_KNOWN, "sound corroded", remark="broken", no="bent anchor",
    ),
    # Chips in sockets: seated, right way round?
    "socketed-chips": Question(
        "mainboard video_card sound_card network_card controller_card multi_io_card modem",
        NOT_KNOWN, "home none", not_known="pins", no="crept reversed",
    ),
    # Headers and ports: pins and shrouds?
    "headers": Question(
        "mainboard video_card sound_card network_card controller_card multi_io_card modem hard_disk "
        "optical_drive floppy_drive tape_drive",
        NOTHING, "sound", remark="shroud broken", not_known="bent",
    ),
    # Port shells, bracket, screws?
    "shells": Question(
        "mainboard video_card sound_card network_card controller_card multi_io_card modem",
        NOTHING, "bright rusty",
    ),
    # Keyboard port: fuse whole?
    "keyboard-port": Question(
        "mainboard",
        NOTHING, "whole open",
    ),
    # Firmware: copied, window covered?
    "firmware": Question(
        "mainboard video_card controller_card network_card firmware_chip",
        NOTHING, "saved none unsaved unsaved-socketed bare corrupt",
    ),
    # How clean is it?
    "dirt": Question(
        "mainboard processor_adapter voltage_module cooler fan video_card sound_card network_card "
        "controller_card multi_io_card riser modem power_supply case keyboard pointing_device monitor "
        "optical_drive floppy_drive tape_drive other",
        NOTHING, "clean dusty film", no="spill",
    ),
    # Edge contacts or pins?
    "edge-contacts": Question(
        "processor_adapter memory_module cache_module video_card sound_card network_card controller_card "
        "multi_io_card riser modem voltage_module",
        NOTHING, "bright dull worn", remark="green",
    ),
    # Bracket?
    "bracket": Question(
        "video_card sound_card network_card controller_card multi_io_card modem",
        NOTHING, "right bent missing",
    ),
    # Slot kind and voltage notch?
    "slot-key": Question(
        "video_card sound_card network_card controller_card",
        NOT_KNOWN, "plain right no-board", no="wrong",
    ),
    # Picture seen so far?
    "picture-seen": Question(
        "video_card",
        NOTHING, "clean untried specks",
    ),
    # Memory sockets of the card?
    "video-memory": Question(
        "video_card",
        NOTHING, "full part empty",
    ),
    # Does it need -5 V?
    "minus-five": Question(
        "sound_card modem",
        NOTHING, "no yes",
    ),
    # Jacks, ports, volume wheel?
    "jacks": Question(
        "sound_card network_card modem multi_io_card",
        NOTHING, "firm loose",
    ),
    # Leads, panels, brackets that belong to it?
    "card-leads": Question(
        "sound_card network_card controller_card multi_io_card modem",
        NOTHING, "present missing",
    ),
    # Driver and manual?
    "driver": Question(
        "video_card sound_card network_card controller_card modem",
        NOTHING, "kept missing",
    ),
    # Termination?
    "terminators": Question(
        "controller_card hard_disk tape_drive optical_drive",
        NOTHING, "right none-needed wrong",
    ),
    # Tabs, clips, hinges?
    "bezel-tabs": Question(
        "case monitor keyboard optical_drive",
        NOTHING, "whole some hold-lost",
    ),
    # Colour of the plastic?
    "yellowing": Question(
        "case keyboard pointing_device monitor",
        NOTHING, "as-made even striped",
    ),
    # Steel?
    "rust": Question(
        "case power_supply test_rig",
        NOTHING, "bright surface through",
    ),
    # Inside: dripped cell, nest, odd stains?
    "spill-inside": Question(
        "case",
        NOT_KNOWN, "none", remark="nest leak",
    ),
    # Standoffs against the board's holes?
    "standoffs": Question(
        "case",
        NOT_KNOWN, "match", remark="missing", not_known="no-board", no="stray",
    ),
    # Drive rails, cages, brackets, screws?
    "drive-rails": Question(
        "case",
        NOTHING, "there missing",
    ),
    # Blanks, feet, key, badge, knobs?
    "trim": Question(
        "case monitor",
        NOTHING, "there missing",
    ),
    # Panel leads: button, lights, speaker, number display?
    "panel-leads": Question(
        "case",
        NOTHING, "known unknown broken",
    ),
    # Scratches, marker, stickers?
    "marks": Question(
        "case keyboard pointing_device monitor",
        NOTHING, "none some",
    ),
    # Beeped through, every wire?
    "wires-through": Question(
        "cable",
        NOTHING, "through unmeasured", not_known="broken",
    ),
    # Pin 1 and key?
    "pin-one": Question(
        "cable",
        NOTHING, "marked", remark="unmarked",
    ),
    # What is it for: ends, length, twist, wiring?
    "cable-kind": Question(
        "cable",
        NOT_KNOWN, "known", remark="unknown",
    ),
    # Contacts?
    "cable-contacts": Question(
        "cable",
        NOTHING, "bright dull green",
    ),
    # Every key in a key test?
    "keys": Question(
        "keyboard",
        NOTHING, "all untried some none",
    ),
    # Mechanism under the caps?
    "mechanism": Question(
        "keyboard",
        NOTHING, "sound closed foam membrane rust",
    ),
    # Key caps?
    "caps": Question(
        "keyboard",
        NOTHING, "all missing",
    ),
    # Plug and cable entry?
    "input-plug": Question(
        "keyboard pointing_device",
        NOTHING, "sound", remark="broken",
    ),
    # Which protocol does it speak?
    "protocol": Question(
        "keyboard pointing_device",
        NOTHING, "known switchable unknown",
    ),
    # Buttons?
    "buttons": Question(
        "pointing_device",
        NOTHING, "click untried worn",
    ),
    # Ball and rollers?
    "rollers": Question(
        "pointing_device",
        NOTHING, "clean dirty missing",
    ),
    # Rubber coat?
    "coat": Question(
        "pointing_device keyboard",
        NOTHING, "dry sticky",
    ),
    # Picture tube: glass and neck, from outside?
    "tube": Question(
        "monitor",
        NOT_KNOWN, "whole flat burn-in", remark="cataract", no="cracked",
    ),
    # Scan rates it takes?
    "scan-rates": Question(
        "monitor",
        NOT_KNOWN, "known", not_known="unknown",
    ),
    # Picture, if it has been seen on?
    "monitor-picture": Question(
        "monitor",
        NOTHING, "steady untried dim", remark="unsteady", no="squeals",
    ),
    # Checked against known-good parts within a year?
    "rig-state": Question(
        "test_rig",
        NOTHING, "checked unchecked",
    ),
    # Its sockets and plugs?
    "rig-plugs": Question(
        "test_rig",
        NOT_KNOWN, "tight", remark="worn",
    ),
    # First spin, alone, on a soft dry surface?
    "first-spin": Question(
        "hard_disk",
        NOTHING, "smooth", remark="howls no-arm no-spin", no="clicks",
    ),
    # Label, geometry and bad-track list photographed?
    "disk-label": Question(
        "hard_disk",
        NOTHING, "recorded unrecorded",
    ),
    # Data on it?
    "disk-data": Question(
        "hard_disk flash_adapter media tape_drive",
        NOTHING, "none imaged wanted others",
    ),
    # Body, cover seal, gasket?
    "disk-body": Question(
        "hard_disk",
        NOTHING, "sound gasket", remark="dented",
    ),
    # Surface: bad sectors?
    "disk-surface": Question(
        "hard_disk flash_adapter",
        NOTHING, "none some growing",
    ),
    # Small capacitors on its board?
    "drive-electrolytics": Question(
        "hard_disk optical_drive floppy_drive tape_drive keyboard other",
        NOTHING, "sound", remark="bad-age", not_known="missing", no="leaking burst",
    ),
    # Size against the firmware it will work with?
    "disk-known-limits": Question(
        "hard_disk flash_adapter",
        NOTHING, "fits not-chosen larger",
    ),
    # Adapter pins and card slot?
    "adapter-pins": Question(
        "flash_adapter",
        NOT_KNOWN, "straight", remark="broken", not_known="bent",
    ),
    # How does the card report itself?
    "card-report": Question(
        "flash_adapter",
        NOTHING, "fixed removable",
    ),
    # Cylinders, heads and sectors noted?
    "card-geometry": Question(
        "flash_adapter",
        NOTHING, "noted unnoted",
    ),
    # How is the adapter fed?
    "adapter-power": Question(
        "flash_adapter",
        NOT_KNOWN, "plug connector", not_known="unknown",
    ),
    # Tray?
    "tray": Question(
        "optical_drive",
        NOTHING, "opens helped stuck",
    ),
    # Belt and rubber rollers?
    "belt": Question(
        "optical_drive floppy_drive tape_drive",
        NOTHING, "springy none slack tar",
    ),
    # Rails, worm, grease?
    "rails-grease": Question(
        "optical_drive floppy_drive tape_drive",
        NOTHING, "smooth dry gummy",
    ),
    # Gears, the one on the motor axle above all?
    "gears": Question(
        "optical_drive",
        NOTHING, "whole split",
    ),
    # Lens?
    "lens": Question(
        "optical_drive",
        NOTHING, "clear dirty",
    ),
    # Reads pressed, burnt, rewritable and audio discs?
    "disc-reading": Question(
        "optical_drive",
        NOTHING, "all untried some none",
    ),
    # Heads?
    "heads": Question(
        "floppy_drive tape_drive",
        NOTHING, "clean brown damaged",
    ),
    # Spindle or capstan, turned by hand?
    "spindle": Question(
        "floppy_drive tape_drive",
        NOTHING, "free stiff",
    ),
    # Eject, door, lever?
    "eject": Question(
        "floppy_drive tape_drive",
        NOTHING, "works broken",
    ),
    # Reads what another drive wrote?
    "exchange": Question(
        "floppy_drive tape_drive",
        NOTHING, "both untried own neither",
    ),
    # Front, button, light?
    "front": Question(
        "optical_drive floppy_drive tape_drive hard_disk",
        NOTHING, "whole none yellow broken",
    ),
    # Surface, through the window or on the edge?
    "medium-surface": Question(
        "media",
        NOTHING, "clean mould shedding",
    ),
    # Label, and what is on it?
    "medium-label": Question(
        "media",
        NOTHING, "known unknown",
    ),
    # Shell, shutter, sleeve?
    "medium-shell": Question(
        "media",
        NOTHING, "whole broken",
    ),
    # Pins or contacts?
    "chip-pins": Question(
        "processor coprocessor firmware_chip clock_module",
        NOT_KNOWN, "straight", remark="green", not_known="broken", no="bent",
    ),
    # Type, speed, size: what does the marking say?
    "chip-identity": Question(
        "processor coprocessor firmware_chip clock_module memory_module cache_module",
        NOTHING, "marked measured unknown",
    ),
    # Die or heat spreader?
    "die": Question(
        "processor",
        NOT_KNOWN, "whole", not_known="chipped", no="burnt",
    ),
    # Cooler for it?
    "cooler-with-it": Question(
        "processor voltage_module",
        NOT_KNOWN, "there not-needed", no="missing",
    ),
    # Guides, frame, posts or lugs that hold it?
    "held-in-place": Question(
        "processor processor_adapter",
        NOT_KNOWN, "right socket no-board", remark="missing wrong",
    ),
    # Thermal paste or pad?
    "old-paste": Question(
        "processor cooler video_card",
        NOTHING, "fresh", remark="hard glued", not_known="off",
    ),
    # Which voltage is it made for?
    "core-voltage": Question(
        "processor coprocessor",
        NOT_KNOWN, "printed looked-up", not_known="unknown",
    ),
    # Does the board it is meant for take it?
    "support": Question(
        "processor coprocessor processor_adapter",
        NOT_KNOWN, "manual seen no-board", remark="guess",
    ),
    # Pin 1 mark: notch, dot or cut corner seen?
    "orientation": Question(
        "coprocessor firmware_chip clock_module",
        NOT_KNOWN, "seen", not_known="gone",
    ),
    # Body: cracks, lifted corners, burns?
    "chip-body": Question(
        "coprocessor firmware_chip clock_module processor",
        NOT_KNOWN, "whole", not_known="cracked", no="burnt",
    ),
    # Label with version?
    "chip-label": Question(
        "firmware_chip",
        NOTHING, "readable none gone",
    ),
    # Cell inside: are settings kept?
    "module-cell": Question(
        "clock_module",
        NOTHING, "kept rebuilt lost",
    ),
    # Base and fins?
    "cooler-base": Question(
        "cooler",
        NOTHING, "flat", remark="bent",
    ),
    # Clip, springs, screws?
    "cooler-clip": Question(
        "cooler",
        NOT_KNOWN, "firm", not_known="tired",
    ),
    # Made for which socket or cartridge?
    "cooler-match": Question(
        "cooler retention",
        NOTHING, "known none-yet", not_known="unknown", no="wrong",
    ),
    # Fan plug: pins, voltage, direction of air?
    "fan-plug": Question(
        "fan cooler",
        NOT_KNOWN, "known none", not_known="unknown broken",
    ),
    # Frame, guard, screw holes?
    "fan-frame": Question(
        "fan",
        NOTHING, "whole cracked",
    ),
    # How does it sound cold, and after ten minutes?
    "fan-warm": Question(
        "fan cooler",
        NOTHING, "even no-fan buzzes", remark="grinds",
    ),
    # Posts, guides, latches?
    "retention-posts": Question(
        "retention",
        NOTHING, "whole", remark="broken",
    ),
    # Complete: both sides, supports for a heavy cooler, pins or screws?
    "retention-complete": Question(
        "retention",
        NOTHING, "complete", remark="missing",
    ),
    # Posts, lugs or frame for the processor and its cooler?
    "board-posts": Question(
        "mainboard",
        NOT_KNOWN, "there socket", remark="missing other-shape",
    ),
    # Which mechanism is it, by the holes that it meets?
    "retention-mechanism": Question(
        "retention",
        NOTHING, "slot-1 slot-a lugs frame unknown",
    ),
    # Second supports for a heavy cooler?
    "heavy-support": Question(
        "retention cooler",
        NOTHING, "there light", remark="missing",
    ),
    # Clips and latches: as many as it takes?
    "retention-clips": Question(
        "retention",
        NOTHING, "all none", remark="missing",
    ),
    # Screws, push pins, rivets?
    "retention-screws": Question(
        "retention",
        NOTHING, "all none missing",
    ),
    # Plastic: still springy?
    "retention-plastic": Question(
        "retention",
        NOTHING, "springy brittle",
    ),
    # Metal parts?
    "retention-steel": Question(
        "retention",
        NOTHING, "bright rusty",
    ),
    # Clean?
    "retention-dirt": Question(
        "retention cable media flash_adapter test_rig",
        NOTHING, "clean dirty",
    ),
    # Last memory test?
    "memory-result": Question(
        "memory_module cache_module",
        NOTHING, "passed untested failed",
    ),
    # Belongs to a set?
    "memory-set": Question(
        "memory_module",
        NOTHING, "set single unknown",
    ),
    # Which plugs has it, and is the wiring the standard one?
    "supply-plugs": Question(
        "power_supply",
        NOT_KNOWN, "two-plug atx own", not_known="unknown",
    ),
    # Mains selector?
    "selector": Question(
        "power_supply monitor",
        NOT_KNOWN, "right wide", no="wrong",
    ),
    # Mains suppression capacitors, seen through the slots?
    "suppression": Question(
        "power_supply monitor",
        NOT_KNOWN, "sound", no="cracked",
    ),
    # Electrolytics, as far as they can be seen?
    "supply-electrolytics": Question(
        "power_supply monitor",
        NOT_KNOWN, "sound", remark="bad-age", no="bulged leaking burst dark-glue",
    ),
    # Mains cord and inlet?
    "mains-cord": Question(
        "power_supply monitor",
        NOT_KNOWN, "sound", no="damaged inlet",
    ),
    # Earth pin to bare metal?
    "earth": Question(
        "power_supply",
        NOT_KNOWN, "connected", no="open",
    ),
    # Panel switch and its wiring?
    "panel-switch": Question(
        "power_supply case",
        NOT_KNOWN, "none covered", no="bare",
    ),
    # Smell, rattle, scorch marks?
    "smell-and-rattle": Question(
        "power_supply monitor",
        NOT_KNOWN, "none", no="rattle burnt",
    ),
    # Fan, turned with a finger or a stick?
    "fan": Question(
        "power_supply cooler fan video_card case",
        NOT_KNOWN, "free none", remark="gritty", not_known="blade", no="seized missing",
    ),
    # Plugs and lead ends?
    "plugs": Question(
        "power_supply cable",
        NOT_KNOWN, "good", remark="broken", no="scorched",
    ),
    # Leads: insulation whole?
    "insulation": Question(
        "power_supply cable keyboard pointing_device monitor fan cooler test_rig other",
        NOTHING, "whole", no="damaged broken",
    ),
    # Rating label: amperes or volts read and noted?
    "ratings": Question(
        "power_supply fan voltage_module",
        NOTHING, "noted gone",
    ),
}

# Where one kind of part differs: (question, kind, answer) -> weight.
ANSWER_BY_KIND = {
    ("running", "power_supply", "faulty"): NOT_KNOWN,
    ("running", "power_supply", "dead"): NOT_KNOWN,
    ("running", "monitor", "faulty"): NOT_KNOWN,
    ("running", "monitor", "dead"): NOT_KNOWN,
    ("dirt", "case", "spill"): REMARK,
    ("dirt", "keyboard", "spill"): REMARK,
    ("dirt", "pointing_device", "spill"): REMARK,
    ("dirt", "cooler", "spill"): NOT_KNOWN,
    ("dirt", "fan", "spill"): NOT_KNOWN,
    ("dirt", "optical_drive", "spill"): NOT_KNOWN,
    ("dirt", "floppy_drive", "spill"): NOT_KNOWN,
    ("dirt", "tape_drive", "spill"): NOT_KNOWN,
    ("dirt", "other", "spill"): NOT_KNOWN,
    ("fan", "fan", "seized"): NOT_KNOWN,
    ("fan", "video_card", "seized"): NOT_KNOWN,
    ("fan", "video_card", "missing"): NOT_KNOWN,
    ("fan", "case", "seized"): REMARK,
    ("fan", "case", "missing"): REMARK,
    ("fan", "case", "blade"): REMARK,
    ("plugs", "cable", "scorched"): NOT_KNOWN,
    ("insulation", "cable", "damaged"): NOT_KNOWN,
    ("insulation", "cable", "broken"): NOT_KNOWN,
    ("insulation", "keyboard", "damaged"): REMARK,
    ("insulation", "keyboard", "broken"): REMARK,
    ("insulation", "pointing_device", "damaged"): REMARK,
    ("insulation", "pointing_device", "broken"): REMARK,
    ("insulation", "fan", "damaged"): NOT_KNOWN,
    ("insulation", "fan", "broken"): NOT_KNOWN,
    ("insulation", "cooler", "damaged"): NOT_KNOWN,
    ("insulation", "test_rig", "damaged"): NOT_KNOWN,
    ("insulation", "test_rig", "broken"): NOT_KNOWN,
    ("insulation", "other", "damaged"): NOT_KNOWN,
    ("insulation", "other", "broken"): NOT_KNOWN,
    ("chip-identity", "processor", "unknown"): NOT_KNOWN,
    ("ratings", "power_supply", "gone"): NOT_KNOWN,
    ("ratings", "voltage_module", "gone"): NOT_KNOWN,
    ("electrolytics", "voltage_module", "missing"): NO,
}

# What a kind always has: "does not apply" says no more there than "not looked".
ALWAYS_THERE = {
    "clock-supply": "mainboard",
    "electrolytics": "mainboard voltage_module",
    "rails": " ".join(QUESTIONS["rails"].kinds),
    "power-plug": "mainboard",
    "supply-plugs": "power_supply",
    "selector": "power_supply monitor",
    "suppression": "power_supply monitor",
    "mains-cord": "power_supply monitor",
    "earth": "power_supply",
    "smell-and-rattle": "power_supply monitor",
    "adapter-power": "flash_adapter",
    "orientation": "coprocessor firmware_chip clock_module",
    "scan-rates": "monitor",
}

# Finding -> (weight while it is open, kinds that it is mostly met on).
FINDINGS = {
    "cell-leaked": (NO, "mainboard multi_io_card"),  # Leaked cell
    "cell-present": (REMARK, "mainboard multi_io_card"),  # Rechargeable cell still fitted
    "leak-residue": (NO, "mainboard multi_io_card"),  # Residue of a leaked cell
    "tracks-eaten": (NO, "mainboard multi_io_card"),  # Tracks eaten by a leak
    "coin-cell-low": (REMARK, "mainboard"),  # Coin cell low
    "coin-cell-spent": (REMARK, "mainboard"),  # Coin cell spent
    "lithium-thionyl-spent": (REMARK, "mainboard"),  # 3.6 V lithium battery low or spent
    "lithium-thionyl-leaked": (NO, "mainboard sound_card"),  # 3.6 V lithium battery leaks
    "lithium-thionyl-swollen": (NO, "mainboard sound_card"),  # 3.6 V lithium battery swollen
    "lithium-thionyl-residue": (NO, "mainboard sound_card"),  # Residue of a 3.6 V lithium battery
    "rail-low": (NOT_KNOWN, "mainboard video_card sound_card"),  # A rail of a few ohms
    "cell-holder-corroded": (REMARK, "mainboard"),  # Cell holder corroded
    "clock-module-flat": (NOTHING, "clock_module mainboard"),  # Clock module flat
    "clock-unfed": (NOTHING, "mainboard"),  # Nothing feeds the clock
    "pack-tired": (REMARK, "mainboard"),  # Outside cell pack of unknown age
    "capacitors-bulged": (NO, "mainboard video_card sound_card power_supply"),  # Bulged capacitors
    "capacitors-leaking": (NO, "mainboard sound_card power_supply hard_disk optical_drive"),  # Leaking capacitors
    "capacitors-burst": (NO, "mainboard video_card power_supply"),  # Burst capacitors
    "tantalum-burst": (NO, "mainboard video_card sound_card controller_card"),  # Burst or pinholed tantalum
    "capacitors-cracked": (NO, "power_supply"),  # Cracked suppression capacitor
    "capacitors-split": (NOT_KNOWN, "mainboard video_card"),  # Capacitor with a cracked body
    "capacitors-missing": (NOT_KNOWN, "mainboard video_card sound_card"),  # Capacitors missing
    "capacitors-reversed": (NO, "mainboard video_card sound_card"),  # Capacitor fitted the wrong way round
    "capacitors-out-of-limits": (NOT_KNOWN, "mainboard power_supply video_card"),  # Capacitors out of limits
    "capacitors-suspect": (REMARK, "mainboard power_supply video_card"),  # Capacitors of a bad age
    "glue-dark": (NO, "mainboard power_supply video_card"),  # Fixing glue gone dark
    "rail-shorted": (NO, "mainboard video_card sound_card controller_card"),  # A rail is near zero to ground
    "burnt-place": (NO, "mainboard video_card sound_card multi_io_card hard_disk"),  # Burnt place
    "voltage-setting-unknown": (NOT_KNOWN, "mainboard"),  # Voltage setting not known
    "voltage-setting-wrong": (NO, "mainboard"),  # Voltage set wrongly
    "settings-unknown": (NOTHING, "mainboard sound_card network_card controller_card modem"),  # Jumper settings not known
    "support-unknown": (REMARK, "processor"),  # Not known whether the board takes this processor
    "pinout-unknown": (NOT_KNOWN, "mainboard power_supply"),  # Supply plug of unknown pinout
    "slot-voltage-wrong": (NO, "video_card network_card"),  # Card keyed for another slot voltage
    "minus-five-needed": (NOTHING, "sound_card modem"),  # Needs -5 V
    "board-cracked": (NO, "mainboard video_card sound_card memory_module"),  # Cracked board
    "board-warped": (NOTHING, "mainboard"),  # Warped board
    "tracks-cut": (NOT_KNOWN, "mainboard video_card sound_card"),  # Cut or scratched tracks
    "joints-cracked": (REMARK, "mainboard video_card sound_card"),  # Cracked or cold joints
    "pads-lifted": (REMARK, "mainboard video_card"),  # Lifted pads
    "wires-added": (NOTHING, "mainboard video_card"),  # Wires or parts added by hand
    "parts-missing": (NOT_KNOWN, "mainboard video_card sound_card"),  # Parts missing from the board
    "chips-crept": (REMARK, "mainboard video_card"),  # Socketed chips crept out
    "chip-reversed": (NO, "mainboard video_card"),  # Chip put in the wrong way round
    "socket-broken": (REMARK, "mainboard riser"),  # Broken socket, slot or clip
    "socket-corroded": (NOTHING, "mainboard riser"),  # Corroded socket or slot contacts
    "pins-bent": (NOT_KNOWN, "processor mainboard hard_disk"),  # Bent pins
    "pins-broken": (REMARK, "mainboard hard_disk floppy_drive"),  # Broken pins
    "shroud-broken": (REMARK, "hard_disk floppy_drive mainboard"),  # Shroud or keying broken off a header
    "contacts-filmed": (NOTHING, "memory_module video_card sound_card"),  # Dull edge contacts
    "contacts-corroded": (REMARK, "memory_module video_card sound_card"),  # Corroded edge contacts
    "contacts-worn": (NOTHING, "memory_module video_card"),  # Edge contacts worn through
    "shells-rusted": (NOTHING, "mainboard video_card sound_card"),  # Rust on port shells or bracket
    "dirt": (NOTHING, "mainboard case keyboard video_card"),  # Dust and dirt
    "liquid-spilt": (NO, "mainboard video_card power_supply"),  # Traces of a spilt liquid
    "cooler-anchor-broken": (NO, "mainboard"),  # Cooler anchor or lug broken
    "keyboard-fuse-open": (NOTHING, "mainboard"),  # Keyboard port fuse open
    "firmware-unsaved": (NOTHING, "mainboard firmware_chip"),  # Firmware not saved
    "eprom-unsaved": (NOTHING, "mainboard firmware_chip"),  # Socketed firmware chip not saved
    "firmware-corrupt": (NOTHING, "firmware_chip"),  # Firmware does not read right
    "window-uncovered": (NOTHING, "firmware_chip mainboard"),  # Erasing window of a firmware chip bare
    "reported-dead": (REMARK, "mainboard video_card hard_disk power_supply"),  # Said to be dead
    "works-badly": (REMARK, "mainboard video_card floppy_drive power_supply"),  # Runs, but with faults
    "unidentified": (NOTHING, "memory_module"),  # Size, speed or type not known
    "memory-errors": (NOTHING, "memory_module"),  # Errors in a memory test
    "die-chipped": (NOT_KNOWN, "processor"),  # Chipped die
    "paste-hardened": (REMARK, "processor cooler"),  # Thermal paste or pad gone hard
    "cooler-stuck": (REMARK, "processor"),  # Cooler glued to the chip by old paste
    "cooler-missing": (NO, "processor"),  # Cooler missing
    "cooler-bent": (REMARK, "cooler"),  # Cooler base or fins damaged
    "clip-tired": (NOT_KNOWN, "cooler"),  # Cooler clip tired or missing
    "fan-gritty": (REMARK, "power_supply cooler fan video_card"),  # Fan gritty or noisy
    "fan-seized": (NO, "power_supply cooler video_card"),  # Fan seized
    "fan-missing": (NO, "power_supply cooler"),  # Fan missing
    "fan-blade-broken": (NOT_KNOWN, "power_supply cooler fan"),  # Fan blade broken
    "retention-missing": (REMARK, "processor"),  # Retention hardware missing
    "retention-wrong": (REMARK, "processor retention"),  # Retention hardware for another shape
    "retention-broken": (REMARK, "retention"),  # Retention post, lug or latch broken
    "retention-unmatched": (NOTHING, "retention"),  # Not known which board the mechanism is for
    "support-missing": (REMARK, "retention cooler"),  # Second support for a heavy cooler missing
    "clips-missing": (REMARK, "retention"),  # Retention clips missing
    "fasteners-missing": (NOTHING, "retention"),  # Retention screws or push pins missing
    "bracket-missing": (NOTHING, "video_card sound_card"),  # Bracket missing
    "bracket-bent": (NOTHING, "video_card sound_card"),  # Bracket bent
    "picture-faulty": (NOTHING, "video_card"),  # Specks, stripes or wrong colours
    "jacks-loose": (NOTHING, "sound_card modem"),  # Jacks loose or scratchy
    "leads-missing": (NOTHING, "sound_card controller_card"),  # Leads or panel missing
    "driver-missing": (NOTHING, "sound_card video_card"),  # Driver or manual still to find
    "terminators-missing": (NOTHING, "hard_disk"),  # Termination missing or wrong
    "label-unrecorded": (NOTHING, "hard_disk"),  # Label, geometry or bad-track list not on record
    "data-unsaved": (NOTHING, "hard_disk"),  # Data wanted, no image yet
    "data-of-others": (NOTHING, "hard_disk"),  # Holds somebody else's data
    "heads-stuck": (REMARK, "hard_disk"),  # Heads stuck, no spin
    "arm-stuck": (REMARK, "hard_disk"),  # Spins, but the arm never moves
    "head-clicks": (NO, "hard_disk"),  # Repeated clicks or scraping
    "bearing-howls": (REMARK, "hard_disk"),  # Bearings howl
    "bad-sectors": (NOTHING, "hard_disk"),  # Bad sectors
    "gasket-decayed": (NOTHING, "hard_disk"),  # Gasket or cover seal decayed
    "drive-dented": (NO, "hard_disk"),  # Dented or dropped
    "geometry-unknown": (NOTHING, "flash_adapter"),  # Geometry not noted
    "card-removable": (NOTHING, "flash_adapter"),  # Card reports itself as removable
    "larger-than-firmware": (NOTHING, "hard_disk flash_adapter"),  # Larger than the firmware can address
    "tray-stuck": (NOTHING, "optical_drive"),  # Tray stuck
    "belt-slack": (NOTHING, "optical_drive floppy_drive"),  # Belt slack or missing
    "rubber-melted": (NOTHING, "tape_drive"),  # Belt or roller turned to tar
    "grease-hard": (NOTHING, "floppy_drive optical_drive"),  # Grease gone hard
    "gear-split": (NOTHING, "optical_drive"),  # Split gear
    "lens-dirty": (NOTHING, "optical_drive"),  # Dirty lens
    "reads-badly": (NOTHING, "optical_drive"),  # Reads badly or not at all
    "heads-dirty": (NOTHING, "floppy_drive tape_drive"),  # Dirty heads
    "heads-damaged": (NOTHING, "floppy_drive"),  # Damaged heads
    "spindle-stiff": (NOTHING, "floppy_drive"),  # Stiff spindle
    "eject-broken": (NOTHING, "floppy_drive"),  # Eject or door does not work
    "reads-own-only": (NOTHING, "floppy_drive"),  # Reads only what it wrote itself
    "media-mouldy": (NOTHING, "media"),  # Mould on the medium
    "media-damaged": (NOTHING, "media"),  # Medium warped, shedding or scratched
    "selector-wrong": (NO, "power_supply monitor"),  # Mains selector on the wrong voltage
    "smell-burnt": (NO, "power_supply mainboard monitor"),  # Smells burnt
    "rattle": (NO, "power_supply"),  # Something rattles inside
    "plugs-scorched": (NO, "power_supply"),  # Scorched or loose plugs
    "switch-bare": (NO, "power_supply case"),  # Panel switch with bare mains contacts
    "cord-damaged": (NO, "power_supply monitor"),  # Plug-in mains cord damaged
    "inlet-damaged": (NO, "power_supply monitor"),  # Mains inlet or wired-in cord damaged
    "earth-open": (NO, "power_supply"),  # No earth connection to the metal
    "clips-broken": (NOTHING, "case keyboard"),  # Broken tabs or clips
    "yellowed": (NOTHING, "case keyboard"),  # Yellowed plastic
    "rust-surface": (NOTHING, "case power_supply"),  # Surface rust
    "rust-through": (NOTHING, "case"),  # Rusted through
    "mould-film": (NOTHING, "case keyboard"),  # Mould or smoke film
    "nest": (REMARK, "case"),  # Nest or droppings inside
    "standoff-stray": (NO, "case"),  # Standoff or screw where the board has no hole
    "standoffs-missing": (REMARK, "case"),  # Standoffs missing
    "rails-missing": (NOTHING, "case"),  # Drive rails or brackets missing
    "trim-missing": (NOTHING, "case"),  # Blanks, feet, key or badge missing
    "panel-leads-unknown": (NOTHING, "case"),  # Panel leads not identified
    "scratched": (NOTHING, "case keyboard"),  # Scratches or marker
    "insulation-damaged": (NO, "power_supply cooler fan"),  # Insulation cut, melted or hard
    "plug-broken": (REMARK, "power_supply keyboard"),  # Plug broken or loose
    "wire-broken": (NOT_KNOWN, "power_supply cooler cable"),  # Broken wire
    "pinout-unmarked": (REMARK, "cable"),  # Pin 1 or pinout not marked
    "keys-dead": (NOTHING, "keyboard"),  # Keys dead or doubling
    "foam-decayed": (NOTHING, "keyboard"),  # Foam pads crumbled
    "membrane-cracked": (NOTHING, "keyboard"),  # Membrane cracked
    "caps-missing": (NOTHING, "keyboard"),  # Key caps missing
    "springs-rusted": (NOTHING, "keyboard"),  # Rusted springs or switches
    "rollers-dirty": (NOTHING, "pointing_device"),  # Dirty rollers
    "coat-sticky": (NOTHING, "pointing_device"),  # Rubber coat gone sticky
    "buttons-worn": (NOTHING, "pointing_device"),  # Buttons dead or doubling
    "protocol-unknown": (NOTHING, "keyboard pointing_device"),  # Keyboard or mouse protocol not known
    "tube-cracked": (NO, "monitor"),  # Picture tube cracked or neck damaged
    "tube-cataract": (REMARK, "monitor"),  # Fern-like bubbles under the front glass
    "burn-in": (NOTHING, "monitor"),  # Burnt-in picture
    "scan-rates-unknown": (NOT_KNOWN, "monitor"),  # Scan rates not known
    "picture-dim": (NOTHING, "monitor"),  # Dim even at full
    "picture-unsteady": (REMARK, "monitor"),  # Picture folds, jitters or collapses
    "squeals": (NO, "monitor"),  # Squeals, sparks or crackles
    "rig-doubtful": (NOTHING, "test_rig"),  # Rig not checked against known-good parts
}

# Where one kind of part differs: (finding, kind) -> weight.
FINDING_BY_KIND = {
    ("reported-dead", "power_supply"): NOT_KNOWN,
    ("works-badly", "power_supply"): NOT_KNOWN,
    ("reported-dead", "monitor"): NOT_KNOWN,
    ("works-badly", "monitor"): NOT_KNOWN,
    ("fan-seized", "video_card"): NOT_KNOWN,
    ("fan-seized", "fan"): NOT_KNOWN,
    ("fan-seized", "case"): REMARK,
    ("fan-missing", "case"): REMARK,
    ("insulation-damaged", "cooler"): NOT_KNOWN,
    ("insulation-damaged", "fan"): NOT_KNOWN,
    ("insulation-damaged", "keyboard"): REMARK,
    ("liquid-spilt", "case"): REMARK,
    ("liquid-spilt", "keyboard"): REMARK,
    ("wire-broken", "power_supply"): NO,
    ("wire-broken", "cooler"): NO,
    ("pins-bent", "processor"): NO,
    ("capacitors-out-of-limits", "power_supply"): NO,
}

# A finding in the restorer's own words: by how bad they called it.
OWN_WORDS = {"grave": NO, "plain": NOT_KNOWN, "slight": REMARK}


class Proof:
    """A test: which kinds it is for, what its failing or staying undecided means, and for how many days it is good."""

    def __init__(self, kinds, failed, undecided, days=None, figures=""):
        self.kinds = kinds.split()
        self.failed = failed
        self.undecided = undecided
        self.days = days
        self.figures = [f for f in figures.split("; ") if f]


PROOFS = {
    # Load test of the supply alone
    "load-test": Proof(
        "power_supply",
        NO, NOT_KNOWN, 365, figures="Warmest place [°C]",
    ),
    # Earth continuity and insulation
    "earth-continuity": Proof(
        "power_supply monitor",
        NO, NOT_KNOWN, 1095,
    ),
    # Rails to ground, unpowered
    "rails-to-ground": Proof(
        "mainboard processor_adapter voltage_module video_card sound_card network_card controller_card "
        "multi_io_card riser modem",
        NO, NOT_KNOWN,
    ),
    # Start with known-good parts
    "boot": Proof(
        "mainboard",
        NOT_KNOWN, REMARK, 730,
    ),
    # Ten cold starts
    "cold-starts": Proof(
        "mainboard flash_adapter",
        REMARK, NOTHING, 730, figures="Starts that failed []",
    ),
    # A card tried in every slot
    "every-slot": Proof(
        "mainboard riser",
        REMARK, NOTHING,
    ),
    # Settings kept unplugged for 48 hours
    "settings-kept": Proof(
        "mainboard clock_module",
        NOTHING, NOTHING, 730,
    ),
    # Clock module runs on a board
    "clock-runs": Proof(
        "clock_module",
        NOTHING, NOTHING, 365,
    ),
    # Read twice, the same both times
    "firmware-read": Proof(
        "firmware_chip",
        NOTHING, NOTHING, 1825,
    ),
    # One hour under full load
    "processor-run": Proof(
        "processor coprocessor processor_adapter",
        NOT_KNOWN, REMARK, 1825, figures="Warmest place [°C]",
    ),
    # Output voltage measured under load
    "voltage-right": Proof(
        "voltage_module",
        NO, NOT_KNOWN, 730, figures="Output [V]; Load [A]",
    ),
    # Fan starts at once and runs an hour
    "fan-run": Proof(
        "fan cooler",
        NO, NOT_KNOWN, 365, figures="Speed [1/min]; Noise at one metre [dB(A)]",
    ),
    # Memory test overnight
    "memory-test": Proof(
        "memory_module",
        NOTHING, NOTHING, 1095, figures="Full passes []; Errors []",
    ),
    # Cache in use without errors
    "cache-test": Proof(
        "cache_module",
        NOTHING, NOTHING, 1095, figures="Errors []",
    ),
    # Steady picture in every mode
    "picture": Proof(
        "video_card",
        REMARK, NOTHING, 1095, figures="Warmest place [°C]",
    ),
    # Playback of every voice
    "sound-playback": Proof(
        "sound_card",
        NOTHING, NOTHING, 1095,
    ),
    # Large copy both ways
    "network-copy": Proof(
        "network_card",
        NOTHING, NOTHING, 1095,
    ),
    # Copy and compare for an hour
    "controller-copy": Proof(
        "controller_card multi_io_card",
        NOTHING, NOTHING, 1095, figures="Differences []",
    ),
    # Connects and transfers
    "modem-call": Proof(
        "modem",
        NOTHING, NOTHING, 1095,
    ),
    # A known-good card works in it
    "riser-carries": Proof(
        "riser",
        NOT_KNOWN, REMARK, 1825,
    ),
    # Full surface read
    "surface-read": Proof(
        "hard_disk",
        NOTHING, NOTHING, 365, figures="Unreadable sectors []; Bad sectors mapped []; Warmest place [°C]; Noise at one metre [dB(A)]",
    ),
    # Copy and compare
    "flash-copy": Proof(
        "flash_adapter",
        NOTHING, NOTHING, 365, figures="Differences []",
    ),
    # Reads inner and outer edge
    "disc-read": Proof(
        "optical_drive",
        NOTHING, NOTHING, 730,
    ),
    # Twenty tray cycles
    "tray-cycles": Proof(
        "optical_drive",
        NOTHING, NOTHING, 365, figures="Times it stuck []",
    ),
    # Disks exchanged with another drive
    "disk-exchange": Proof(
        "floppy_drive",
        NOTHING, NOTHING, 365,
    ),
    # Tape written and read back
    "tape-exchange": Proof(
        "tape_drive",
        NOTHING, NOTHING, 365,
    ),
    # Read from end to end
    "media-read": Proof(
        "media",
        NOTHING, NOTHING, 1095,
    ),
    # Tried in place
    "fit-check": Proof(
        "case retention",
        NOT_KNOWN, NOTHING,
    ),
    # Every wire beeped through
    "continuity": Proof(
        "cable",
        NOT_KNOWN, NOTHING,
    ),
    # Every key
    "key-test": Proof(
        "keyboard",
        NOTHING, NOTHING, 730,
    ),
    # Both axes and every button
    "pointer-test": Proof(
        "pointing_device",
        NOTHING, NOTHING, 730,
    ),
    # One warm hour beside a reference screen
    "monitor-run": Proof(
        "monitor",
        NOT_KNOWN, REMARK, 365,
    ),
    # Rig checked against known-good parts
    "rig-check": Proof(
        "test_rig",
        NOTHING, NOTHING, 365,
    ),
    # Look-over before the first start
    "look-over": Proof(
        "",
        NO, NOT_KNOWN,
    ),
    # Half an hour after standing
    "settles": Proof(
        "",
        NOT_KNOWN, REMARK, 365,
    ),
    # Eight hours of work without a fault
    "soak-run": Proof(
        "",
        REMARK, NOTHING, 730, figures="Hangs and errors []; Warmest place [°C]",
    ),
}

# Work by rule: what must be done before power, and what changes something electrical when it is done.
HOLDS_POWER_AND_TOUCHES = """
wash-board clear-burn mend-board mend-tracks turn-chip recap turn-capacitor recap-small replace-tantalum
find-short cut-leaking-cell cut-lithium-thionyl clear-lithium-thionyl neutralise rinse-and-dry mend-eaten-tracks set-voltage mend-anchor replace-parts
replace-suppression recap-supply clear-supply replace-supply-fan set-selector restore-earth replace-cord
cover-switch renew-plugs mend-leads trace-mains-fault renew-monitor-mains recap-monitor clear-monitor
mend-high-voltage straighten-pins clear-glue clear-glue-mains mend-leads-mains mend-inside-mains
replace-cracked-board replace-inlet wash-out-spill-mains
""".split()

ONLY_HOLDS_POWER = """
look-under measure-rails judge-rails send-off-lithium-thionyl read-voltage look-up-pinout label-slot-voltage find-cooler renew-clip
remove-stray-standoff leave-tube retire-clicker retire-burnt-chip wash-out-spill replace-fan discharge-supply
discharge-monitor judge-dropped-disk wash-leak-off-disk
""".split()

ONLY_TOUCHES = """
lay-pads mend-joints press-chips replace-socket replace-pins replace-port-fuse trace-fault recap-weak
measure-capacitors mend-cell-holder fit-clock-supply renew-lithium-thionyl renew-clock-module remove-pack cut-cell trace-picture-fault
clean-jacks mend-picture measure-mains-capacitors wash-spill service-fan clean-sockets clear-contacts
stop-rust-mains patch-rust-mains whiten-mains mend-clips-mains
""".split()

NEITHER = """
dust-off wipe-film trace-wires clean-contacts brighten-shells note-settings copy-firmware cover-window
rewrite-firmware identify bench-start find-bracket straighten-bracket label-minus-five find-leads find-driver
set-termination clear-nest fit-standoffs find-rails mend-clips stop-rust patch-rust whiten clean-marks find-trim
trace-panel-leads support-board photograph fit-coin-cell record-label image-disk ask-owner free-heads free-arm
watch-bearing map-bad-sectors fit-to-firmware fix-removable clear-tar replace-belt regrease replace-gear
free-tray clean-lens find-reading-fault clean-heads judge-heads mend-eject align-drive judge-drop clean-mould
copy-off-medium mend-cataract find-scan-rates mark-pin-one mend-keys renew-foam mend-membrane derust-springs
find-caps scrape-rollers strip-coat mend-buttons find-protocol check-rig free-cooler renew-paste try-die
look-up-support true-cooler match-mechanism find-retention fit-cooler-support fit-clips renew-fasteners
mend-retention sort-memory dump-eprom photograph-outside wipe-film-outside
""".split()

WORKS = set(HOLDS_POWER_AND_TOUCHES + ONLY_HOLDS_POWER + ONLY_TOUCHES + NEITHER)
HOLDS_POWER = set(HOLDS_POWER_AND_TOUCHES + ONLY_HOLDS_POWER)
TOUCHES = set(HOLDS_POWER_AND_TOUCHES + ONLY_TOUCHES)

# Connector -> (family, what else may be plugged into it, volts on it).
CONNECTORS = {
    "dip-40-processor": ("processor", "", (5,)),
    "dip-40-coprocessor": ("processor", "", (5,)),
    "pga-68": ("processor", "", (5,)),
    "plcc-68": ("processor", "", (5,)),
    "pga-132": ("processor", "", (5,)),
    "pga-68-coprocessor": ("processor", "", (5,)),
    "plcc-68-coprocessor": ("processor", "", (5,)),
    "pga-121-coprocessor": ("processor", "pga-68-coprocessor", (5,)),
    "socket-1": ("processor", "", (5,)),
    "socket-2": ("processor", "socket-1", (5,)),
    "socket-3": ("processor", "socket-1 socket-2", (3.3, 5)),
    "socket-4": ("processor", "", (5,)),
    "socket-5": ("processor", "", (3.3, 3.5)),
    "socket-6": ("processor", "", (3.3,)),
    "socket-7": ("processor", "socket-5", (2.0, 3.5)),
    "super-7": ("processor", "socket-5 socket-7", (2.1, 3.5)),
    "socket-8": ("processor", "", (3.1, 3.3)),
    "slot-1": ("processor", "", (1.3, 3.5)),
    "slot-2": ("processor", "", ()),
    "slot-a": ("processor", "", (1.3, 2.05)),
    "socket-370": ("processor", "", (1.8, 2.1)),
    "socket-370-fcpga": ("processor", "socket-370", (1.3, 2.05)),
    "socket-370-fcpga2": ("processor", "socket-370-fcpga", (1.05, 1.825)),
    "socket-a": ("processor", "", (1.0, 2.05)),
    "socket-423": ("processor", "", ()),
    "socket-478": ("processor", "", ()),
    "socket-754": ("processor", "", ()),
    "socket-939": ("processor", "", ()),
    "socket-775": ("processor", "", ()),
    "voltage-module-socket-7": ("processor", "", ()),
    "voltage-module-socket-8": ("processor", "", ()),
    "isa-8": ("expansion", "", (5,)),
    "isa-16": ("expansion", "isa-8", (5,)),
    "eisa": ("expansion", "isa-8 isa-16", (5,)),
    "mca-16": ("expansion", "", (5,)),
    "mca-32": ("expansion", "mca-16", (5,)),
    "vlb": ("expansion", "isa-8 isa-16", (5,)),
    "pci-5v": ("expansion", "pci-universal", (5,)),
    "pci-3.3v": ("expansion", "pci-universal", (3.3,)),
    "pci-universal": ("expansion", "", (3.3, 5)),
    "pci-5v-64": ("expansion", "pci-5v pci-universal", (5,)),
    "pci-3.3v-64": ("expansion", "pci-3.3v pci-universal", (3.3,)),
    "agp-3.3v": ("expansion", "agp-universal agp-3.0-universal", (3.3,)),
    "agp-1.5v": ("expansion", "agp-universal agp-3.0-universal-1.5v agp-3.0-universal", (1.5,)),
    "agp-universal": ("expansion", "agp-3.3v agp-1.5v agp-3.0-universal-1.5v agp-3.0-universal", (1.5, 3.3)),
    "agp-3.0": ("expansion", "agp-3.0-universal-1.5v agp-3.0-universal", (0.8,)),
    "agp-3.0-universal-1.5v": ("expansion", "agp-1.5v agp-3.0 agp-universal agp-3.0-universal", (0.8, 1.5)),
    "agp-3.0-universal": ("expansion", "agp-3.3v agp-1.5v agp-universal agp-3.0 agp-3.0-universal-1.5v", (0.8, 1.5, 3.3)),
    "pcie-1": ("expansion", "", (3.3,)),
    "pcie-16": ("expansion", "pcie-1", (3.3,)),
    "amr": ("expansion", "", ()),
    "cnr": ("expansion", "", ()),
    "pc-card-16": ("expansion", "", (3.3, 5)),
    "cardbus": ("expansion", "pc-card-16", (3.3,)),
    "isa-16-or-pci": ("expansion", "isa-8 isa-16 pci-5v pci-universal", ()),
    "pci-or-amr": ("expansion", "pci-5v pci-universal amr", ()),
    "pci-or-cnr": ("expansion", "pci-5v pci-universal cnr", ()),
    "wavetable-26": ("expansion", "", ()),
    "riser-nlx": ("expansion", "", ()),
    "dip-16-memory": ("memory", "", (5,)),
    "dip-18-memory": ("memory", "", (5,)),
    "sipp-30": ("memory", "", (5,)),
    "simm-30": ("memory", "", (5,)),
    "simm-72": ("memory", "", (5,)),
    "dimm-168-edo": ("memory", "", (3.3, 5)),
    "dimm-168-sdram": ("memory", "", (3.3,)),
    "dimm-168-registered": ("memory", "", (3.3,)),
    "dimm-184-ddr": ("memory", "", (2.5,)),
    "dimm-240-ddr2": ("memory", "", (1.8,)),
    "rimm-184": ("memory", "", (2.5,)),
    "sodimm-72": ("memory", "", (3.3, 5)),
    "sodimm-144": ("memory", "", (3.3, 5)),
    "cache-dip-28": ("memory", "", (5,)),
    "cache-160": ("memory", "", (3.3, 5)),
    "firmware-dip-28": ("memory", "", (5,)),
    "firmware-dip-32": ("memory", "", (5,)),
    "firmware-plcc-32": ("memory", "", (3.3, 5)),
    "clock-dip-24": ("memory", "", (5,)),
    "xt": ("outline", "", ()),
    "at": ("outline", "baby-at xt", ()),
    "baby-at": ("outline", "xt", ()),
    "lpx": ("outline", "", ()),
    "nlx": ("outline", "", ()),
    "atx": ("outline", "mini-atx micro-atx flex-atx", ()),
    "mini-atx": ("outline", "flex-atx", ()),
    "micro-atx": ("outline", "flex-atx", ()),
    "flex-atx": ("outline", "", ()),
    "bay-5.25-full": ("mounting", "bay-5.25", ()),
    "bay-5.25": ("mounting", "", ()),
    "bay-3.5": ("mounting", "bay-3.5-hidden", ()),
    "bay-3.5-hidden": ("mounting", "", ()),
    "bay-2.5": ("mounting", "", ()),
    "supply-at": ("mounting", "", ()),
    "supply-small": ("mounting", "supply-atx", ()),
    "supply-atx": ("mounting", "supply-small", ()),
    "supply-sfx": ("mounting", "", ()),
    "retention-slot-1": ("mounting", "", ()),
    "retention-slot-1-support": ("mounting", "", ()),
    "retention-slot-a": ("mounting", "", ()),
    "cooler-socket-7": ("mounting", "cooler-socket-370 cooler-socket-a", ()),
    "cooler-socket-370": ("mounting", "cooler-socket-7 cooler-socket-a", ()),
    "cooler-socket-a": ("mounting", "cooler-socket-7 cooler-socket-370", ()),
    "cooler-socket-478": ("mounting", "", ()),
    "at-p8p9": ("board-power", "", (5, 12)),
    "atx-20": ("board-power", "", (3.3, 5, 12)),
    "atx-24": ("board-power", "atx-20", (3.3, 5, 12)),
    "atx12v-4": ("board-power", "", (12,)),
    "atx-aux-6": ("board-power", "", (3.3, 5)),
    "at-3.3v-6": ("board-power", "", (3.3,)),
    "drive-4pin": ("drive-power", "", (5, 12)),
    "drive-4pin-small": ("drive-power", "", (5, 12)),
    "sata-power-15": ("drive-power", "", (3.3, 5, 12)),
    "fan-2": ("drive-power", "", (12,)),
    "fan-3": ("drive-power", "fan-2", (12,)),
    "fan-4": ("drive-power", "fan-2 fan-3", (12,)),
    "ide-40": ("disk", "", (5,)),
    "ide-44": ("disk", "", (5,)),
    "ide-40-8bit": ("disk", "", (5,)),
    "st506": ("disk", "", (5,)),
    "esdi": ("disk", "", (5,)),
    "scsi-50": ("disk", "", (5,)),
    "scsi-68": ("disk", "", (5,)),
    "scsi-80": ("disk", "", (5, 12)),
    "sata-7": ("disk", "", ()),
    "cd-panel-40": ("disk", "", ()),
    "cf-50": ("disk", "", (3.3, 5)),
    "floppy-34": ("floppy", "", (5,)),
    "floppy-34-edge": ("floppy", "", (5,)),
    "vga-15": ("video", "", ()),
    "mda-9": ("video", "", ()),
    "cga-9": ("video", "", ()),
    "ega-9": ("video", "cga-9", ()),
    "composite-rca": ("video", "", ()),
    "s-video-4": ("video", "", ()),
    "dvi-d": ("video", "", ()),
    "dvi-i": ("video", "dvi-d", ()),
    "vga-feature-26": ("video", "", ()),
    "vga-loop": ("video", "", ()),
    "keyboard-xt-din": ("input", "", (5,)),
    "keyboard-at-din": ("input", "", (5,)),
    "keyboard-mini-din": ("input", "", (5,)),
    "mouse-mini-din": ("input", "", (5,)),
    "mouse-bus-9": ("input", "", (5,)),
    "serial-9": ("port", "", ()),
    "serial-25": ("port", "", ()),
    "parallel-25": ("port", "", ()),
    "usb-a": ("port", "", (5,)),
    "ieee-1394": ("port", "", ()),
    "game-15": ("port", "", (5,)),
    "audio-3.5": ("port", "", ()),
    "cd-audio-4": ("port", "", ()),
    "ethernet-8p8c": ("port", "", ()),
    "ethernet-bnc": ("port", "", ()),
    "ethernet-aui": ("port", "", ()),
    "modem-6p2c": ("port", "", ()),
    "mains-inlet": ("port", "", ()),
    "mains-outlet": ("port", "", ()),
}

# A need that nothing meets, by the connector's family. Families not named here say nothing about power.
UNMET = {
    "processor": NO,
    "expansion": NO,
    "memory": NO,
    "board-power": NO,
    "drive-power": NOT_KNOWN,
    "disk": REMARK,
    "floppy": REMARK,
    "video": REMARK,
    "input": REMARK,
}
# Mountings that hold a cooler: without them it does not sit on its chip.
COOLER_MOUNTINGS = "cooler-socket-7 cooler-socket-370 cooler-socket-a cooler-socket-478".split()

# Whether a processor of that socket always wants a cooler, never, or only some of them.
ALWAYS_COOLED = """socket-4 socket-5 socket-7 super-7 socket-8 slot-1 slot-2 slot-a socket-370 socket-370-fcpga
socket-370-fcpga2 socket-a socket-423 socket-478 socket-754 socket-939 socket-775""".split()
SOMETIMES_COOLED = "socket-1 socket-2 socket-3 socket-6".split()

# Kinds that carry no current from the supply: media and the like, and a monitor, which has its own mains.
CARRIES_NOTHING = "media case retention cable monitor".split()
