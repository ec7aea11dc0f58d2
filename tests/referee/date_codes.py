"""Referee for date codes: the built program against isoweek and python-dateutil (PyPI).

Usage: date_codes.py PROGRAM. Every week of 1976 to 2012 as YYWW and WWYY in one go each, weeks that do not exist, and
seeded random days in the forms of ISO 8601. Prints how many values agreed; exits with 1 at the first that does not.
"""

import datetime
import json
import random
import subprocess
import sys
from importlib.metadata import version

from dateutil.parser import isoparse
from isoweek import Week

WEEK = datetime.timedelta(days=7)
DAYS = 200


def ours(program, text):
    command = [program, "read", "date-code", text, "--from", "1960", "--to", "2040", "--json"]
    answer = subprocess.run(command, capture_output=True, text=True)
    if answer.returncode not in (0, 1):
        sys.exit(f"{text}: exit code {answer.returncode}: {answer.stderr}")
    readings = json.loads(answer.stdout)["readings"] if answer.returncode == 0 else []
    return [(one["scheme"], one["first"], one["last"]) for one in readings]


def span(week):
    """A week as the program keeps it: a makers' week may be a week off on both sides."""
    return str(week.monday() - WEEK), str(week.sunday() + WEEK)


def weeks(program):
    agreed = 0
    for year in range(1976, 2013):
        for number in range(1, 54):
            exists = number <= Week.last_week_of_year(year).week
            expected = span(Week(year, number)) if exists else None
            for text, scheme in ((f"{year % 100:02}{number:02}", "year_week"), (f"{number:02}{year % 100:02}", "week_year")):
                found = [(first, last) for name, first, last in ours(program, text) if name == scheme]
                # Two digits may also be a year of the 1960s or after 2012; only the year in hand is compared.
                found = [one for one in found if one[0][:4] in (str(year - 1), str(year))]
                if found != ([expected] if exists else []):
                    sys.exit(f"{text} as {scheme}: {found}, isoweek has {expected}")
                agreed += 1
    return agreed


def days(program):
    agreed = 0
    chance = random.Random(8601)
    first = datetime.date(1961, 1, 1).toordinal()
    for _ in range(DAYS):
        day = datetime.date.fromordinal(first + chance.randrange(70 * 365))
        year, week, weekday = day.isocalendar()
        texts = {
            f"{day:%Y-%m-%d}": "written_day",
            f"{day:%Y%m%d}": "written_day",
            f"{year}-W{week:02}-{weekday}": "written_day",
            f"{year}W{week:02}{weekday}": "written_day",
            f"{day:%Y-%j}": "year_ordinal",
            f"{day:%Y%j}": "year_ordinal",
        }
        for text, scheme in texts.items():
            expected = str(isoparse(text).date())
            if (scheme, expected, expected) not in ours(program, text):
                sys.exit(f"{text}: {ours(program, text)}, python-dateutil has {expected}")
            agreed += 1
    return agreed


def main():
    program = sys.argv[1]
    print(f"date codes: {weeks(program)} week codes agree with isoweek {version('isoweek')}")
    print(f"date codes: {days(program)} days agree with python-dateutil {version('python-dateutil')}")


main()
