"""Whether the translations are whole: lupdate finds no text in the sources that a translation lacks, none is marked
unfinished, and each keeps what is filled in, its line breaks and its shortcut.
Usage: translations.py LUPDATE SOURCE_FOLDER. Ends with 77 where lupdate is not there."""
import collections
import os
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree


def filled_in(text):
    return collections.Counter(re.findall(r"%\d|%n|\{[^}]*\}|\n|</?[a-z0-9]+>", text))


def shortcuts(text):
    return len(re.findall(r"&\w", text.replace("&&", "")))


def complaints(path):
    for context in ElementTree.parse(path).getroot().findall("context"):
        for message in context.findall("message"):
            source = message.find("source").text
            translation = message.find("translation")
            forms = [form.text or "" for form in translation.findall("numerusform")] or [translation.text or ""]
            where = f"{os.path.basename(path)}, {context.find('name').text}: “{source}”"
            if translation.get("type") or not all(forms):
                yield f"{where} is not translated"
                continue
            for form in forms:
                if filled_in(form) != filled_in(source):
                    yield f"{where}: what is filled in differs in “{form}”"
                if shortcuts(form) != shortcuts(source):
                    yield f"{where}: the shortcut differs in “{form}”"
                if source.endswith(" ") != form.endswith(" ") or source.startswith(" ") != form.startswith(" "):
                    yield f"{where}: the blanks at its ends differ in “{form}”"


def main():
    lupdate, root = sys.argv[1:3]
    if not os.path.exists(lupdate):
        print("lupdate is not there: left out")
        return 77
    here = os.path.join(root, "resources", "translations")
    # The command line's own messages are English.
    folders = sorted(f"app/{name}" for name in os.listdir(os.path.join(root, "app"))
                     if name != "cli" and os.path.isdir(os.path.join(root, "app", name)))
    found = []
    with tempfile.TemporaryDirectory() as scratch:
        for name in sorted(os.listdir(here)):
            copy = os.path.join(scratch, name)
            shutil.copy(os.path.join(here, name), copy)
            subprocess.run([lupdate, "-silent", "-I", ".", "-no-obsolete", "-locations", "none", *folders, "-ts", copy],
                           cwd=root, check=True, capture_output=True)
            found += list(complaints(copy))
    for line in found[:60]:
        print(line)
    print(f"{len(found)} complaints")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
