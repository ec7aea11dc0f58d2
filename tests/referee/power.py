"""Holds the built program against an independent referee on one question: may power be applied?

    power.py PROGRAM [--seeds N] [--first K] [--list]

Random workshops (40 machines each), named mutations of sound machines, and hand-written expectations are imported into new
logbooks; what the program answers is compared with what the referee, the mutation or the expectation asks for. Ends with 1
when the program is looser anywhere, or stricter than is bearable.
"""

import argparse
import json
import re
import subprocess
import sys
import tempfile
from collections import Counter, defaultdict
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

from power_rules import expectations as hand_written
from power_rules import mutations as worsened
from power_rules.judge import Referee
from power_rules.workshops import TODAY, Shop, workshop

LEVELS = ["yes", "told", "not_known", "no"]  # from the plain yes to the no; "told" is a yes with a reason
THREADS = 2
CHUNK = 36
YES_SHARE_LEAST, AGREEMENT_LEAST = 1 / 3, 0.95


def level(verdict, reasons):
    """Which of the four levels an answer is."""
    return "told" if verdict == "yes" and reasons else verdict


def weaker(one, other):
    """Whether one answer keeps the power less off than another."""
    return LEVELS.index(one) < LEVELS.index(other)


class Refused(Exception):
    """The program did not take a document."""


class Logbook:
    """A new logbook of the program with one document imported."""

    def __init__(self, program, folder, name, document):
        self.program, self.path = program, str(folder / f"{name}.logbook")
        book = folder / f"{name}.json"
        book.write_text(json.dumps(document), encoding="utf-8")
        self.run("new", self.path)
        self.run("import", self.path, str(book))

    def run(self, *words):
        """Runs the program and returns what it printed."""
        done = subprocess.run([self.program, *words], capture_output=True, text=True, encoding="utf-8", timeout=300)
        if done.returncode != 0:
            raise Refused(f"{words[0]}: {done.stderr.strip()[:400]}")
        return done.stdout

    @staticmethod
    def power(answer):
        """(level, [(weight, words)]) of an answer of the program, or None where it gives no verdict."""
        if answer is None:
            return None
        reasons = [(r["weight"], r["say"]) for r in answer["reasons"]]
        return level(answer["verdict"], reasons), reasons

    def machines(self):
        """Machine name -> answer."""
        told = json.loads(self.run("readiness", self.path, "--json", "--on", TODAY))
        return {m["machine"]: self.power(m["power"]) for m in told["machines"]}

    def part(self, tag):
        """The answer for a part alone."""
        return self.power(json.loads(self.run("part", self.path, tag, "--json", "--on", TODAY))["power"])


# ---------------------------------------------------------------- random workshops


def run_workshop(program, folder, seed):
    """Compares one random workshop: rows of (subject, facts, referee's level and reasons, program's answer)."""
    document, facts = workshop(seed)
    referee = Referee(document, TODAY)
    rows = []
    try:
        book = Logbook(program, folder, f"workshop-{seed}", document)
        answers = book.machines()
    except Refused as why:
        return seed, [], str(why)
    for machine in document["machine"]:
        verdict, reasons = referee.machine(machine["id"])
        rows.append((machine["name"], facts[machine["name"]], level(verdict, reasons), reasons, answers[machine["name"]]))
    supplies = [p for p in document["part"] if p["kind"] == "power_supply"]
    for supply in sorted(supplies, key=lambda p: referee.part(p["id"])[0])[:1]:
        verdict, reasons = referee.part(supply["id"])
        rows.append((f"supply {supply['tag']} alone", [], level(verdict, reasons), reasons, book.part(supply["tag"])))
    boards = [p for p in document["part"] if p["kind"] in ("mainboard", "video_card", "sound_card")]
    for board in sorted(boards, key=lambda p: referee.part(p["id"])[0])[:1]:
        verdict, reasons = referee.part(board["id"])
        answer = book.part(board["tag"])
        if answer:  # the program need not answer for a part on the bench
            rows.append((f"part {board['tag']} alone", [], level(verdict, reasons), reasons, answer))
    return seed, rows, ""


def same_words(say):
    """A reason without the tags and figures that differ from machine to machine."""
    return re.sub(r"\s+", " ", re.sub(r"[\w-]*\d[\w.-]*", "#", say)).strip()


def compare_workshops(results, show_all):
    """Prints how the random workshops went; returns the counts for the last line and whether all is well."""
    referee, program, agreed = Counter(), Counter(), 0
    looser, softer, stricter, more_told, refused = [], [], defaultdict(list), 0, []
    machines = 0
    for seed, rows, why in results:
        if why:
            refused.append(f"workshop {seed}: {why}")
        for subject, facts, right, reasons, answer in rows:
            machines += not subject.endswith(" alone")
            got = answer[0] if answer else "not_known"
            referee[right] += 1
            program[got] += 1
            agreed += right in ("yes", "told") and got in ("yes", "told")
            if weaker(got, right):
                if (got, right) == ("not_known", "no"):
                    softer.append((subject, facts, right, reasons, answer))
                else:
                    looser.append((subject, facts, right, reasons, answer))
            elif weaker(right, got):
                more_told += (right, got) == ("yes", "told")
                worst = max((LEVELS.index(got_level(w)) for w, _ in answer[1]), default=0) if answer else 0
                for words in {same_words(say) for w, say in (answer[1] if answer else []) if LEVELS.index(got_level(w)) == worst}:
                    stricter[(right, got, words)].append(subject)
    yes = referee["yes"] + referee["told"]
    share = agreed / yes if yes else 0.0
    print(f"{'':12}{'yes':>8}{'told':>8}{'not known':>11}{'no':>8}")
    for who, counts in (("referee", referee), ("program", program)):
        print(f"{who:12}{counts['yes']:8}{counts['told']:8}{counts['not_known']:11}{counts['no']:8}")
    print(f"agreed on the yes: {agreed} of {yes}; a remark more than the referee's: {more_told}")
    print_answers("LOOSER", looser, None if show_all else 25)
    print_answers("softer (not known where the referee says no)", softer, None if show_all else 5)
    print(f"\nstricter, by the program's reason: {len(stricter)}")
    for (right, got, words), subjects in sorted(stricter.items(), key=lambda item: -len(item[1]))[: None if show_all else 30]:
        print(f"  {len(subjects):4} {right} -> {got}: {words}   (such as {subjects[0]})")
    for line in refused:
        print("REFUSED", line)
    total = sum(referee.values())
    well = not looser and not refused and yes >= total * YES_SHARE_LEAST and share >= AGREEMENT_LEAST
    return machines, yes, share, len(looser), well


def got_level(weight):
    """The level that a reason's weight makes."""
    return {"holds": "no", "remark": "told"}.get(weight, "not_known")


def print_answers(title, rows, most):
    """Prints single answers that differ, with both sides' reasons."""
    print(f"\n{title}: {len(rows)}")
    for subject, facts, right, reasons, answer in rows[:most]:
        print(f"  {subject}: referee {right}, program {answer[0] if answer else 'gives no verdict'}   facts {' '.join(facts)}")
        for weight, tag, say in reasons:
            if weight != "remark" or right == "told":
                print(f"      referee  {weight}: {tag or ''} {say}")
        for weight, say in (answer[1] if answer else [])[:4]:
            print(f"      program  {weight}: {say}")


# ---------------------------------------------------------------- mutations and expectations


def in_chunks(program, folder, word, items, build, ask):
    """Runs items together, and apart where the program refuses them together: [(item, its answers or why it was refused)]."""

    def run(name, chunk):
        shop = Shop(name, prefix=f"{name}-")
        rows = build(shop, chunk)
        try:
            return ask(Logbook(program, folder, name, shop.document()), rows)
        except Refused as why:
            if len(chunk) == 1:
                return [(rows[0], str(why))]
        half = len(chunk) // 2
        return run(name + "a", chunk[:half]) + run(name + "b", chunk[half:])

    pieces = [items[i : i + CHUNK] for i in range(0, len(items), CHUNK)]
    return [(run, f"{word}{number}", piece) for number, piece in enumerate(pieces)]


def ask_mutations(book, rows):
    """The program's answers before and after each mutation."""
    answers = book.machines()
    return [(row, (answers[row[2]], answers[row[3]])) for row in rows]


def ask_expectations(book, rows):
    """The program's answer for each subject."""
    answers = book.machines()
    return [(row, answers[row[3]] if row[2] == "machine" else book.part(row[3])) for row in rows]


def compare_mutations(results):
    """Prints the table of mutations; returns how many kept the plain yes or came out weaker than what is owed."""
    kept = 0
    print(f"\n{'mutation':82}{'before':11}{'after':11}owed")
    for (fact, owed, _, _), got in results:
        owed = "told" if owed == "remark" else owed
        if isinstance(got, str):
            print(f"{fact[:80]:82}{'':11}{'refused':11}{owed}   {got[:90]}")
            continue
        before, after = (answer[0] if answer else "none" for answer in got)
        mark = ""
        if after == "yes":
            mark = "   KEEPS THE PLAIN YES"
        elif after != "none" and weaker(after, owed):
            mark = "   softer" if (after, owed) == ("not_known", "no") else "   WEAKER"
        kept += mark.strip().isupper()
        if before not in ("yes", "told"):
            mark += f"   (not sound before: {'; '.join(say for _, say in (got[0] or ('', []))[1])[:120]})"
        print(f"{fact[:80]:82}{before:11}{after:11}{owed}{mark}")
    return kept


def compare_expectations(results, show_all):
    """Prints the expectations that were missed; returns how many."""
    missed = 0
    print()
    for (sentence, right, kind, _), got in results:
        if isinstance(got, str):
            answer, reasons, met = "refused", [("", got)], not {"yes", "told"} & set(right)
        else:
            answer, reasons = got or ("no verdict", [])
            met = answer in right or (answer == "told" and "yes" in right)
        missed += not met
        if not met or show_all:
            say = "; ".join(f"{w}: {s}" for w, s in reasons)[:240]
            print(f"{'expectation met   ' if met else 'EXPECTATION MISSED'} {sentence} ({kind}): right {' or '.join(right)}, got {answer} [{say}]")
    return missed


def main():
    """Runs everything and tells how it went."""
    words = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    words.add_argument("program", help="the built program")
    words.add_argument("--seeds", type=int, default=20, help="how many random workshops of 40 machines")
    words.add_argument("--first", type=int, default=1, help="the first of the seeds")
    words.add_argument("--list", action="store_true", help="list every difference and every expectation")
    asked = words.parse_args()

    with tempfile.TemporaryDirectory(prefix="power-") as place, ThreadPoolExecutor(THREADS) as pool:
        folder, program = Path(place), str(Path(asked.program).resolve())
        seeds = range(asked.first, asked.first + asked.seeds)
        mutated = in_chunks(program, folder, "m", worsened.MUTATIONS, worsened.build, ask_mutations)
        expected = in_chunks(program, folder, "e", hand_written.EXPECTATIONS, hand_written.build, ask_expectations)
        waiting_m = [pool.submit(*task) for task in mutated]
        waiting_e = [pool.submit(*task) for task in expected]
        waiting_w = [pool.submit(run_workshop, program, folder, seed) for seed in seeds]
        mutations = [row for task in waiting_m for row in task.result()]
        expectations = [row for task in waiting_e for row in task.result()]
        workshops = [task.result() for task in waiting_w]

    machines, yes, share, looser, well = compare_workshops(workshops, asked.list)
    kept = compare_mutations(mutations)
    missed = compare_expectations(expectations, asked.list)
    print(
        f"\npower: {machines} machines, {yes} yes, {share:.1%} agreed, {looser} looser, "
        f"{len(mutations)} mutations ({kept} too weak), {len(expectations)} expectations ({missed} missed)"
    )
    return 0 if well and not kept and not missed else 1


if __name__ == "__main__":
    sys.exit(main())
