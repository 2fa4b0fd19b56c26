#!/usr/bin/env python3
"""The plan's schema, read by python3-jsonschema, and the loader accept and refuse the same files.

Usage: schema_parity.py <plan_check> <plan.schema.json> <folder with contract.json and every-member.json>
Makes many single mutations of two good plans. What jsonschema refuses, the loader must refuse; what only the loader
refuses must be a problem that no schema can state. Ends with 77 where python3-jsonschema is not installed.
"""
import copy
import json
import pathlib
import subprocess
import sys

SKIPPED = 77
try:
    import jsonschema
except ImportError:
    print("skipped: python3-jsonschema is not installed (Debian package python3-jsonschema)")
    sys.exit(SKIPPED)

# Codes of core/plan/problem_codes.hpp: the plan's meaning. Every other code is one of form and needs agreement, but for
# "not-plain-decimal": how a number is spelled (exponent, over 12 decimals) is nothing that a schema sees.
OF_MEANING = {
    "not-plain-decimal",
    "duplicate-id", "unknown-reference", "feeding-cycle", "two-panels", "needed-here", "not-for-control", "distances-fall",
    "outside-box", "bed-fills-box", "no-day-or-night", "unknown-currency",
}
LEAST_MUTATIONS = 1000


def places(node, path=()):
    """Every value of the document with its path."""
    yield path, node
    if isinstance(node, dict):
        for key, value in node.items():
            yield from places(value, path + (key,))
    elif isinstance(node, list):
        for index, value in enumerate(node):
            yield from places(value, path + (index,))


def parent_of(document, path):
    for step in path[:-1]:
        document = document[step]
    return document


def replaced(document, path, value):
    if not path:
        return value
    changed = copy.deepcopy(document)
    parent_of(changed, path)[path[-1]] = value
    return changed


def is_free(path):
    """True within a member that belongs to somebody else; coordinates are called x_m but are ours."""
    return any(isinstance(step, str) and step.startswith("x_") and step != "x_m" for step in path)


def substitutes(value):
    """Values of another type, out of bounds, or ill-formed."""
    if isinstance(value, bool):
        return [None, 0, "true"]
    if isinstance(value, (int, float)):
        return [None, True, str(value), [value], -1e9, 1e9, 1e308, -0.001, 0, value + 0.25, float(int(value))]
    if isinstance(value, str):
        return [None, 7, [value], "", "?", value + " ", value + "\n", "\t", "x" * 300, value.upper(), "24:00", "é"]
    if isinstance(value, list):
        return [None, {}, "", value + [7], value + [None], value + [[]], (value or [{}]) * 1001]
    return [None, [], "", 1]


def mutations(document):
    for path, value in places(document):
        if is_free(path):
            continue
        for substitute in substitutes(value):
            yield "/".join(map(str, path)) + f" = {str(substitute)[:40]!r}", replaced(document, path, substitute)
        if isinstance(value, dict):
            for key in value:
                if not is_free((key,)):
                    yield f"{path} without {key}", replaced(document, path, {k: v for k, v in value.items() if k != key})
            yield f"{path} with an unknown key", replaced(document, path, {**value, "surprise": 1})
            yield f"{path} with a foreign key", replaced(document, path, {**value, "x_new": [None, {"a": 1}]})
            yield f"{path} with a key in capitals", replaced(document, path, {**value, "X_new": 1})


def is_older(document):
    version = document.get("version") if isinstance(document, dict) else None
    return version == 0 and not isinstance(version, bool)


def loader_verdicts(plan_check, documents):
    lines = "".join(json.dumps(document) + "\n" for document in documents)
    run = subprocess.run([plan_check], input=lines, capture_output=True, text=True, check=True)
    verdicts = run.stdout.splitlines()
    assert len(verdicts) == len(documents), (len(verdicts), len(documents))
    return verdicts


def disagreement(name, schema_accepts, verdict):
    codes = {problem.split("@")[0] for problem in verdict.split()} - {"ok"}
    if not schema_accepts and not codes:
        return f"{name}: the schema refuses it, the loader does not"
    if schema_accepts and codes - OF_MEANING:
        return f"{name}: the schema accepts it, the loader says {verdict}"
    return None


def main() -> int:
    plan_check, schema_path, data = sys.argv[1], pathlib.Path(sys.argv[2]), pathlib.Path(sys.argv[3])
    schema_text = schema_path.read_text(encoding="utf-8")
    if schema_text != subprocess.run([plan_check, "schema"], capture_output=True, text=True, check=True).stdout:
        print(f"{schema_path.name} is not what the program prints as its schema")
        return 1
    schema = json.loads(schema_text)
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)

    cases = []
    for name in ("contract.json", "every-member.json"):
        document = json.loads((data / name).read_text(encoding="utf-8"))
        cases.append((name, document))
        cases += [(f"{name}: {what}", changed) for what, changed in mutations(document)]
    # An older version is read too, though the schema describes only the current one.
    cases = [case for case in cases if not is_older(case[1])]
    verdicts = loader_verdicts(plan_check, [document for _, document in cases])
    accepted = [validator.is_valid(document) for _, document in cases]
    found = [disagreement(name, fine, verdict) for (name, _), fine, verdict in zip(cases, accepted, verdicts)]
    found = [text for text in found if text]
    for text in found[:40]:
        print(text)
    print(f"{len(cases)} files, of which the schema accepts {sum(accepted)} and the loader {verdicts.count('ok')}; "
          f"{len(found)} disagreements")
    enough = len(cases) >= LEAST_MUTATIONS and sum(accepted) > 100 and verdicts[0] == "ok"
    return 0 if enough and not found else 1


if __name__ == "__main__":
    sys.exit(main())
