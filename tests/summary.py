#!/usr/bin/env python3
# tests/summary.py: adds up the test logs of several runs, names what failed, and ends with the counts.
# SPDX-License-Identifier: GPL-3.0-or-later
"""Usage: summary.py LABEL=LOG.json...

A log is what `meson test --logbase` writes: one JSON object per test executable. The cases inside an
executable are counted from what cmocka and unittest print. An executable that died or ran out of time
counts as one failed case on top of those that it reported. Exit status 1 when something failed, when a
log is missing, or when a run has no test."""
import json
import os
import re
import sys

CMOCKA_PASSED = re.compile(r"^\[  PASSED  \] (\d+) test\(s\)\.", re.M)
CMOCKA_FAILED = re.compile(r"^\[  FAILED  \] (?:[\w-]+: )?(\d+) test\(s\)", re.M)
CMOCKA_CASE = re.compile(r"^\[  FAILED  \] (?:[\w-]+: )?(?!\d+ test)(\S+)$", re.M)
UNITTEST_RAN = re.compile(r"^Ran (\d+) tests? in", re.M)
UNITTEST_BAD = re.compile(r"^FAILED \((.*)\)$", re.M)
UNITTEST_CASE = re.compile(r"^(?:FAIL|ERROR): (\S+)", re.M)
SLOW_COUNT = 5


def count_cases(text):
    """Cases (passed, failed) that an executable reported."""
    passed = sum(map(int, CMOCKA_PASSED.findall(text)))
    failed = sum(map(int, CMOCKA_FAILED.findall(text)))
    ran = sum(map(int, UNITTEST_RAN.findall(text)))
    bad = 0
    for counts in UNITTEST_BAD.findall(text):
        numbers = dict(re.findall(r"(failures|errors)=(\d+)", counts))
        bad += sum(map(int, numbers.values()))
    return passed + max(ran - bad, 0), failed + bad


def failed_cases(text):
    return sorted(set(CMOCKA_CASE.findall(text)) | set(UNITTEST_CASE.findall(text)))


def short_name(test):
    """"geom-path" for "hutchwright:core / geom-path"."""
    return test["name"].split(" / ")[-1]


def read_log(path):
    with open(path, encoding="utf-8") as log:
        return [json.loads(line) for line in log if line.strip()]


def sum_up(label, tests):
    """Prints one run and returns its (passed, failed)."""
    passed = failed = 0
    bad = []
    for test in tests:
        text = (test.get("stdout") or "") + "\n" + (test.get("stderr") or "")
        if test["result"] == "SKIP":
            continue
        case_passed, case_failed = count_cases(text)
        if test["result"] not in ("OK", "EXPECTEDFAIL"):
            case_failed = max(case_failed, 1)
            names = ", ".join(failed_cases(text)) or "no case reported"
            bad.append(f"  {test['result']:8} {short_name(test)}: {names}")
        elif case_passed + case_failed == 0:
            case_passed = 1
        passed += case_passed
        failed += case_failed
    seconds = sum(test.get("duration", 0) for test in tests)
    print(f"{label}: {len(tests)} executables, {passed} passed, {failed} failed, {seconds:.0f} s")
    for line in bad:
        print(line)
    return passed, failed


def main(arguments):
    passed = failed = 0
    slowest = []
    print()
    for argument in arguments:
        label, path = argument.split("=", 1)
        tests = read_log(path) if os.path.exists(path) else []
        if not tests:
            print(f"{label}: no test ran ({path})")
            failed += 1
            continue
        run_passed, run_failed = sum_up(label, tests)
        passed += run_passed
        failed += run_failed
        slowest += [(test.get("duration", 0), label, short_name(test)) for test in tests]
    print("slowest:")
    for seconds, label, name in sorted(slowest, reverse=True)[:SLOW_COUNT]:
        print(f"  {seconds:6.1f} s  {label}: {name}")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
