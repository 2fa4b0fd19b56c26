"""schema: the published schemas are what the program prints."""
import json
import unittest

from program import SOURCE, ProgramTest, main, run

KINDS = ["plan", "prices", "species", "rules", "materials", "devices", "assumptions"]


class Schema(ProgramTest):
    def test_each_kind_is_a_json_schema_object(self):
        for kind in KINDS:
            schema = json.loads(self.done(run("schema", kind)).out)
            self.assertEqual(schema["$schema"], "https://json-schema.org/draft/2020-12/schema", kind)
            self.assertIn("format", schema["properties"], kind)

    def test_the_committed_copies_are_the_same(self):
        for kind in KINDS:
            path = SOURCE / "resources" / "schema" / f"{kind}.schema.json"
            self.assertEqual(run("schema", kind).out, path.read_text(encoding="utf-8"), kind)

    def test_an_unknown_kind_is_wrong_usage(self):
        self.refused(run("schema", "plans"), 2, "Did you mean “plan”?")
        self.refused(run("schema"), 2, "needs KIND")


if __name__ == "__main__":
    main()
