"""Walks through the sample workshop in a real window, by accessible names, mouse and keyboard."""
import subprocess
import sys
import time

import pyatspi

program, logbook = sys.argv[1:3]
window = subprocess.Popen([program, logbook], stdout=sys.stderr)


def nodes():
    """Every accessible node on show."""
    desktop = pyatspi.Registry.getDesktop(0)
    for index in range(desktop.childCount):
        app = desktop.getChildAtIndex(index)
        try:
            if app is None or app.get_process_id() != window.pid:
                continue
        except Exception:
            continue
        stack = [app]
        while stack:
            node = stack.pop()
            try:
                children = [node.getChildAtIndex(i) for i in range(node.childCount)]
                name = node.name or ""
            except Exception:
                continue  # the node went away while we looked
            yield name, node
            stack.extend(child for child in children if child is not None)


def wait_for(part, seconds=60, exact=False):
    """The first node whose name holds `part` (or is it, when `exact`); fails when there is none in time."""
    deadline = time.monotonic() + seconds
    while time.monotonic() < deadline:
        if window.poll() is not None:
            sys.exit(f"the program ended with {window.returncode} while waiting for {part!r}")
        for name, node in nodes():
            if name == part if exact else part in name:
                return node
        time.sleep(0.1)
    shown = sorted({name for name, _ in nodes() if name})
    sys.exit(f"nothing on show is called {part!r}; on show: {shown[:120]}")


def xdo(*words):
    subprocess.run(["xdotool", *words], check=True)
    time.sleep(0.3)


def click(part, exact=True):
    extents = wait_for(part, exact=exact).queryComponent().getExtents(pyatspi.DESKTOP_COORDS)
    x, y = extents.x + extents.width // 2, extents.y + extents.height // 2
    xdo("mousemove", str(x), str(y), "click", "1")


def fill(field, text):
    click(field)
    xdo("key", "ctrl+a")
    xdo("type", "--delay", "20", "--", text)


def log_a_board():
    """Two markings, a survey with a leaked cell, a group of capacitors."""
    click("Intake")
    fill("Tag", "4711")
    xdo("key", "Return")
    xdo("type", "--delay", "20", "mainb")
    click("Step Markings", exact=False)
    fill("Marking 1 as printed", "2396")
    click("Another marking")
    fill("Marking 2 as printed", "9621")
    wait_for("1996")
    click("Step Survey", exact=False)
    click("What feeds the clock and settings? Not looked at")
    click("What feeds the clock and settings? Leaking cell")
    # The margin tells at once what this calls for.
    wait_for("Cut the leaking cell out")
    click("Step Capacitors", exact=False)
    fill("Capacitors in plain words", "six of 1000 uF 6.3 V 8 mm near the processor, bulged")
    wait_for("Understood: 6 positions")
    xdo("key", "Return")
    xdo("key", "ctrl+Return")
    wait_for("Undo: Log part 4711")


def find_its_work():
    click("Bench")
    fill("Search the outstanding work", "4711")
    wait_for("Cut the leaking cell out, 4711")


def put_it_in_a_machine():
    click("Machines")
    click("New machine…")
    fill("Name", "The trial machine")
    click("Start the machine")
    wait_for("Change the brief…", exact=True)
    # Down to the roles.
    for _ in range(4):
        xdo("mousemove", "800", "500", "click", "5")
    click("Choose for Mainboard…")
    click("4711  ", exact=False)
    wait_for("Undo: Plan 4711 for The trial machine")
    wait_for("Do not apply power", exact=True)
    wait_for("even before it is stored: cut the leaking cell out")


def recap_it():
    """One press for the bulged ones, then their kit from draft to received."""
    click("4711  Mainboard")
    click("Go to: Capacitors")
    click("The capacitor desk: every position, recaps, tables")
    click("Recap the bad ones (6)")
    wait_for("Line: 6 × 1000 µF")
    for press, then in [
        ("Freeze it", "The kit is: Frozen"),
        ("It is ordered", "The kit is: Ordered"),
        ("It has come", "The kit is: Received"),
    ]:
        click(press)
        wait_for(then)


def cpu_seconds():
    with open(f"/proc/{window.pid}/stat") as stat:
        fields = stat.read().rsplit(")", 1)[1].split()
    return int(fields[11]) + int(fields[12])


try:
    for desk in ["Shelf", "Bench", "Machines", "Intake"]:
        click(desk)
    log_a_board()
    find_its_work()
    put_it_in_a_machine()
    recap_it()
    print("logged a board, found its work, put it in a machine that may now not be switched on, got its kit")
    time.sleep(3)
    before = cpu_seconds()
    time.sleep(3)
    used = cpu_seconds() - before
    assert used <= 3, f"an idle window used {used} hundredths of a second in three seconds"
    print(f"idle window: {used} hundredths of a processor second in three seconds")
    print("2 passed, 0 failed")
finally:
    window.terminate()
    window.wait(10)
