"""Runs loamstead-cli for the tests: <test>.py PROGRAM SOURCE_FOLDER."""
import fractions
import functools
import json
import pathlib
import subprocess
import sys
import tempfile
import unittest

PROGRAM, SOURCE = sys.argv[1], pathlib.Path(sys.argv[2])
EXAMPLE = SOURCE / "examples" / "first-setup.loamstead.json"
DATE = ["--date", "2026-11-25"]


class Result:
    def __init__(self, done):
        self.status = done.returncode
        self.bytes = done.stdout
        self.out = done.stdout.decode("utf-8")
        self.err = done.stderr.decode("utf-8")


def run(*words, stdin=None):
    words = [str(word) for word in words]
    return Result(subprocess.run([PROGRAM, *words], input=stdin, capture_output=True, timeout=300))


@functools.lru_cache(maxsize=None)
def run_once(*words):
    """For results that several tests look at."""
    return run(*words)


def cents(text):
    """Exact hundredths, for json.loads(parse_float=...): money is compared and added up without rounding."""
    return fractions.Fraction(text) * 100


def example_plan():
    return json.loads(EXAMPLE.read_text(encoding="utf-8"))


class ProgramTest(unittest.TestCase):
    def setUp(self):
        self.folder_ = tempfile.TemporaryDirectory()
        self.folder = pathlib.Path(self.folder_.name)
        self.addCleanup(self.folder_.cleanup)

    def file(self, name, content):
        path = self.folder / name
        path.write_bytes(content if isinstance(content, bytes) else json.dumps(content).encode("utf-8"))
        return path

    def done(self, result):
        self.assertEqual(result.status, 0, result.err)
        return result

    def refused(self, result, status, *phrases):
        self.assertEqual(result.status, status, result.err)
        self.assertEqual(result.out, "")
        for phrase in phrases:
            self.assertIn(phrase, result.err)


def main():
    unittest.main(argv=[sys.argv[0]])
