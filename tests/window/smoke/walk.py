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


def wait_for(part, seconds=30):
    """The first node whose name holds `part`; fails when there is none in time."""
    deadline = time.monotonic() + seconds
    while time.monotonic() < deadline:
        if window.poll() is not None:
            sys.exit(f"the program ended with {window.returncode} while waiting for {part!r}")
        for name, node in nodes():
            if part in name:
                return node
        time.sleep(0.1)
    shown = sorted({name for name, _ in nodes() if name})
    sys.exit(f"nothing on show is called {part!r}; on show: {shown[:80]}")


def click(part):
    extents = wait_for(part).queryComponent().getExtents(pyatspi.DESKTOP_COORDS)
    x, y = extents.x + extents.width // 2, extents.y + extents.height // 2
    subprocess.run(["xdotool", "mousemove", str(x), str(y), "click", "1"], check=True)
    time.sleep(0.3)


def cpu_seconds():
    with open(f"/proc/{window.pid}/stat") as stat:
        fields = stat.read().rsplit(")", 1)[1].split()
    return int(fields[11]) + int(fields[12])


try:
    for desk in ["Shelf", "Bench", "Machines", "Intake"]:
        click(desk)
        wait_for(desk)
    print("walked through the desks")
    time.sleep(2)
    before = cpu_seconds()
    time.sleep(3)
    used = cpu_seconds() - before
    assert used <= 3, f"an idle window used {used} hundredths of a second in three seconds"
    print(f"idle window: {used} hundredths of a processor second in three seconds")
    print("2 passed, 0 failed")
finally:
    window.terminate()
    window.wait(10)
