"""Checks the referee, the mutations, the expectations and the random workshops against each other, without the program."""

import sys
from collections import Counter

from power_rules import expectations as hand_written
from power_rules import mutations as worsened
from power_rules import workshops
from power import level, weaker
from power_rules.judge import Referee
from power_rules.workshops import ANY, NEUTRAL, TODAY, Shop, workshop


def main():
    """Prints every disagreement; ends with 1 when there is one."""
    wrong = []
    shop = Shop("mutations", prefix="m-")
    rows = worsened.build(shop)
    document = shop.document()
    referee, keys = Referee(document, TODAY), {m["name"]: m["id"] for m in document["machine"]}
    for fact, owed, before, after in rows:
        if referee.machine(keys[before]) != ("yes", []):
            wrong.append(f"mutation {fact}: not a plain yes before: {referee.machine(keys[before])}")
        got = level(*referee.machine(keys[after]))
        if got == "yes" or weaker(got, "told" if owed == "remark" else owed):
            wrong.append(f"mutation {fact}: owed {owed}, the referee says {got}")

    shop = Shop("expectations", prefix="e-")
    expectations = hand_written.build(shop)
    document = shop.document()
    referee = Referee(document, TODAY)
    keys = {m["name"]: m["id"] for m in document["machine"]} | {p["tag"]: p["id"] for p in document["part"]}
    for sentence, right, kind, name in expectations:
        got = level(*(referee.machine if kind == "machine" else referee.part)(keys[name]))
        if got not in right and not (got == "told" and "yes" in right):
            wrong.append(f"expectation {sentence}: right {right}, the referee says {got}")

    answers, met = Counter(), Counter()
    for seed in range(1, 21):
        document, facts = workshop(seed)
        referee = Referee(document, TODAY)
        for machine in document["machine"]:
            answer = referee.machine(machine["id"])
            chosen = facts[machine["name"]]
            answers[level(*answer)] += 1
            met.update(chosen)
            if all(getattr(workshops, fact) in NEUTRAL for fact in chosen) and answer != ("yes", []):
                wrong.append(f"{machine['name']} with {chosen}: {answer}")
    wrong += [f"fact {fact.__name__} never occurs" for fact in NEUTRAL + ANY if not met[fact.__name__]]
    yes = answers["yes"] + answers["told"]
    if yes < 0.4 * sum(answers.values()):
        wrong.append(f"only {yes} of {sum(answers.values())} machines are a yes")
    for line in wrong:
        print(line)
    print(f"{len(rows)} mutations, {len(expectations)} expectations, {dict(answers)}, {len(wrong)} wrong")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
