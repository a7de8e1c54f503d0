# SPDX-License-Identifier: BSL-1.0
"""Compares what two builds of a program print: same_results.py OURS THEIRS TOLERANCE [--words-may-differ SHARE]

Both files hold JSON, a document or one a line. Everything but numbers is equal; numbers differ by TOLERANCE of the larger
at most. A number inside a sentence is rounded to what is shown, so where the last digit of a number changes, a sentence
may: with --words-may-differ up to SHARE of the texts may have other digits, the words around them not.
"""
import json
import re
import sys

DIGITS = re.compile(r'\d[\d.,  ]*(?:e[-+]?\d+)?')


def documents(path):
    text = open(path, encoding='utf-8').read()
    try:
        return [json.loads(text)]
    except json.JSONDecodeError:
        return [json.loads(line) for line in text.splitlines()]


class Comparison:
    def __init__(self, tolerance):
        self.tolerance = tolerance
        self.numbers = self.texts = self.other_digits = 0
        self.worst = 0.0
        self.faults = []

    def hold(self, ours, theirs, where):
        number = (int, float)
        if isinstance(ours, number) and isinstance(theirs, number) and not isinstance(ours, bool):
            self.numbers += 1
            size = max(abs(ours), abs(theirs))
            off = abs(ours - theirs) / size if size > 0 else 0.0
            if off > self.tolerance and size > 1e-14:  # a difference that should be nothing is dust
                self.faults.append(f'{where}: {ours!r} against {theirs!r}')
            elif size > 1e-14:
                self.worst = max(self.worst, off)
        elif isinstance(ours, dict) and isinstance(theirs, dict) and list(ours) == list(theirs):
            for key in ours:
                self.hold(ours[key], theirs[key], f'{where}.{key}')
        elif isinstance(ours, list) and isinstance(theirs, list) and len(ours) == len(theirs):
            for i, (a, b) in enumerate(zip(ours, theirs)):
                self.hold(a, b, f'{where}[{i}]')
        elif isinstance(ours, str) and isinstance(theirs, str):
            self.texts += 1
            if ours != theirs:
                self.other_digits += 1
                if DIGITS.sub('#', ours) != DIGITS.sub('#', theirs):
                    self.faults.append(f'{where}: {ours[:200]!r} against {theirs[:200]!r}')
        elif ours != theirs or type(ours) is not type(theirs):
            self.faults.append(f'{where}: {str(ours)[:200]} against {str(theirs)[:200]}')


def main():
    ours, theirs, tolerance = documents(sys.argv[1]), documents(sys.argv[2]), float(sys.argv[3])
    share = float(sys.argv[5]) if sys.argv[4:5] == ['--words-may-differ'] else 0.0
    all_of_it = Comparison(tolerance)
    all_of_it.hold(ours, theirs, '')
    if all_of_it.numbers < 300:
        all_of_it.faults.append(f'only {all_of_it.numbers} numbers were compared')
    if all_of_it.other_digits > share * all_of_it.texts:
        all_of_it.faults.append(f'{all_of_it.other_digits} of {all_of_it.texts} texts have other digits')
    for fault in all_of_it.faults[:20]:
        print('FAILED', fault)
    print(f'{all_of_it.numbers} numbers within {all_of_it.worst:.1e}, {all_of_it.texts} texts'
          + (f', {all_of_it.other_digits} of them with another last digit' if all_of_it.other_digits else ''))
    sys.exit(1 if all_of_it.faults else 0)


main()
