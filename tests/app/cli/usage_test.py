"""Help, versions and wrong usage. The exit statuses are those that the command line promises."""
import re
import subprocess
import unittest

from program import DATE, EXAMPLE, PROGRAM, ProgramTest, main, run


class Usage(ProgramTest):
    def test_help_names_exactly_the_commands_that_exist(self):
        text = self.done(run("--help")).out
        named = re.findall(r"^  ([a-z]+) [A-Z]", text, re.M)
        self.assertEqual(named, ["assess", "shop", "compare", "suggest", "prices", "sheet", "calendar", "batch",
                                 "schema"])

    def test_each_command_has_help_that_names_its_options(self):
        for command, option in [("assess", "--strict"), ("shop", "--csv"), ("sheet", "--paper"), ("calendar", "--start"), ("batch", "--slice"),
                                ("schema", "--help")]:
            text = self.done(run(command, "--help")).out
            self.assertIn(f"Usage: loamstead-cli {command}", text)
            self.assertIn(option, text)

    def test_help_fits_a_terminal(self):
        for words in [[], ["assess"], ["shop"], ["prices"], ["sheet"], ["calendar"], ["batch"], ["schema"]]:
            for line in self.done(run(*words, "--help")).out.splitlines():
                self.assertLessEqual(len(line), 80, line)

    def test_version(self):
        self.assertRegex(self.done(run("--version")).out, r"^loamstead-cli \d+\.\d+\.\d+\n$")

    def test_no_command_is_wrong_usage(self):
        self.refused(run(), 2, "A command is missing.")

    def test_an_unknown_command_is_wrong_usage_and_the_nearest_is_named(self):
        self.refused(run("asess", EXAMPLE), 2, "“asess” is not a command.", "Did you mean “assess”?")
        self.refused(run("calender", "--help"), 2, "“calender” is not a command.", "Did you mean “calendar”?")

    def test_an_unknown_option_is_wrong_usage_and_the_nearest_is_named(self):
        self.refused(run("assess", EXAMPLE, "--jsno"), 2, "“--jsno”", "Did you mean “--json”?")

    def test_options_are_checked_before_any_file_is_read(self):
        self.refused(run("assess", "none.json", "--units", "imperial"), 2, "“imperial”", "metric, us")
        self.refused(run("assess", "none.json", "--date"), 2, "--date needs a value")
        self.refused(run("assess", "none.json", "--date", "2026-02-30"), 2, "“2026-02-30” is not a date")
        self.refused(run("assess", "none.json", "--date", "25.11.2026"), 2, "not a date")
        self.refused(run("assess", "none.json", "--json=yes"), 2, "takes no value")
        self.refused(run("assess", "none.json", "--json", "--json"), 2, "given twice")

    def test_the_number_of_plans_is_checked(self):
        self.refused(run("assess"), 2, "needs PLAN")
        self.refused(run("assess", EXAMPLE, "other.json"), 2, "takes one PLAN", "other.json")
        self.refused(run("shop", "-", "-"), 2, "only once")
        self.refused(run("assess", "-", "--prices", "-"), 2, "only once")

    def test_a_missing_file_is_file_trouble(self):
        self.refused(run("assess", self.folder / "none.json"), 4, "none.json", "does not exist")
        self.refused(run("assess", self.folder), 4, "is a folder")

    def test_a_result_that_can_not_be_written_is_file_trouble(self):
        with open("/dev/full", "wb") as full:
            done = subprocess.run([PROGRAM, "schema", "plan"], stdout=full, stderr=subprocess.PIPE, timeout=60)
        self.assertEqual(done.returncode, 4)
        self.assertIn("standard output", done.stderr.decode())

    def test_a_file_whose_name_begins_with_a_dash_can_be_named(self):
        self.refused(run("assess", *DATE, "--", "--no-such-file"), 4, "--no-such-file")


if __name__ == "__main__":
    main()
