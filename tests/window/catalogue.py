"""What the catalogues must hold: the window's own texts and the core's fixed English ones.

    python -m tests.window.catalogue     # bring every .ts up to date and make the .qm again

The core marks nothing for the translators; its texts are collected from where they stand.
"""

import ast
import re
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from importlib.resources import files
from pathlib import Path

from co2vent.guidance.procedure_text import default_procedure_text, read_procedure
from co2vent.practice.exercises import exercises

PACKAGE = Path(str(files("co2vent")))
WINDOW = PACKAGE / "window"
FIELD = re.compile(r"\{\w+\}")


def sentence_calls() -> Iterator[tuple[Path, ast.Call]]:
    """Yield every place where a sentence is made."""
    for path in sorted(PACKAGE.rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "Sentence":
                yield path, node


def sentence_templates() -> dict[str, Path]:
    """Return the template of every sentence of the core, and the file it stands in."""
    found = {}
    for path, call in sentence_calls():
        text = call.args[0].value if isinstance(call.args[0], ast.Constant) else None
        if isinstance(text, str) and any(map(str.isalpha, FIELD.sub("", text))):
            found[text] = path
    return found


def core_texts() -> dict[str, set[str]]:
    """Return the core's texts by their context in the catalogue."""
    return {"Core": set(sentence_templates()), "Steps": step_texts(), "Exercises": exercise_texts()}


def step_texts() -> set[str]:
    """Return the texts of the shipped job that the screen shows (not the sources)."""
    procedure = read_procedure(default_procedure_text())
    found = {procedure.title}
    for step in procedure.steps:
        found |= {step.title, *step.do, *step.cautions, *step.goes_wrong}
        found |= {item.text for item in (*step.confirmations, *step.entries)}
        found |= {gate.on_timeout for gate in step.gates}
    return {str(text) for text in found}


def exercise_texts() -> set[str]:
    """Return the texts of the class's exercises, and the names of what can be changed in them."""
    found = set()
    for one in exercises():
        found |= {one.title, one.story, one.look_for, one.expected, one.wrong, one.debrief}
        found |= {one.second_test}
        found |= {name.partition(".")[2].replace("_", " ") for name in one.change}
    return {str(text) for text in found}


def tool(name: str) -> str | None:
    """Return the path of a Qt tool beside this Python."""
    return shutil.which(f"pyside6-{name}", path=str(Path(sys.executable).parent))


def update() -> None:
    """Add what is new to each catalogue, unfinished, and compile what is finished."""
    update_with, compile_with = tool("lupdate"), tool("lrelease")
    assert update_with is not None
    assert compile_with is not None
    with tempfile.TemporaryDirectory() as folder:
        core = Path(folder) / "core.py"
        marked = [
            f"QT_TRANSLATE_NOOP({context!r}, {text!r})\n"
            for context, texts in core_texts().items()
            for text in sorted(texts)
        ]
        core.write_text("".join(marked), encoding="utf-8")
        sources = [*sorted(map(str, WINDOW.glob("*.py"))), str(core)]
        for catalogue in sorted(WINDOW.glob("*.ts")):
            command = [update_with, "-no-obsolete", "-locations", "none", *sources]
            subprocess.run([*command, "-ts", str(catalogue)], check=True)
            subprocess.run([compile_with, str(catalogue)], check=True)


if __name__ == "__main__":
    update()
