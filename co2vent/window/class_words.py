"""Words of the class: what can be predicted, what was really inside, the score sheet. Pure."""

from html import escape

from co2vent.inference.outcome import Charge
from co2vent.section_model.simulation import Truth
from co2vent.sentence import Sentence
from co2vent.window import text
from co2vent.window.class_run import ClassRun, Prediction
from co2vent.window.plan_words import said_in
from co2vent.window.sentences import spoken
from co2vent.window.shown import latest_hold
from co2vent.window.text import UnitChoice
from co2vent.window.words import charge_words, translate

ANSWERS: tuple[Charge | None, ...] = (
    Charge.VAPOR_ONLY,
    Charge.TWO_PHASE,
    Charge.SOLID_PRESENT,
    Charge.SUBCOOLED_LIQUID,
    None,
)


def answer_words(charge: Charge | None) -> str:
    """Return a prediction in words."""
    if charge is None:
        return translate("Class", "cannot be told yet")
    return charge_words(charge)


def prediction_words(prediction: Prediction) -> str:
    """Return what was said, and when."""
    return translate("Class", "at {time}: {answer}").format(
        time=text.duration(prediction.at_s), answer=answer_words(prediction.charge)
    )


def truth_words(truth: Truth, units: UnitChoice, ambient_pa: float) -> str:
    """Return what was really inside, in a few lines."""
    pounds = units.pressure.startswith("psi")
    lines = [
        translate("Class", "Really inside: {pressure}").format(
            pressure=text.both(units, truth.pressure_pa, ambient_pa)
        ),
        translate("Class", "Liquid {liquid}, dry ice {ice}, vapour {vapour}").format(
            liquid=text.mass(truth.liquid_kg, pounds=pounds),
            ice=text.mass(truth.solid_kg, pounds=pounds),
            vapour=text.mass(truth.vapor_kg, pounds=pounds),
        ),
        translate("Class", "Gas {gas}, dry metal {dry}, wet metal {wet}").format(
            gas=text.temperature(truth.gas_k, units.temperature),
            dry=text.temperature(truth.dry_metal_k, units.temperature),
            wet=text.temperature(
                min(pocket.metal_k for pocket in truth.pockets) if truth.pockets else None,
                units.temperature,
            ),
        ),
    ]
    if truth.leak_by_kg_per_s > 0.0:
        lines.append(
            translate("Class", "Leak-by {flow}").format(
                flow=text.mass(truth.leak_by_kg_per_s * 3600.0, pounds=True) + "/h"
                if pounds
                else text.number(truth.leak_by_kg_per_s * 1e3, 2) + " g/s"
            )
        )
    if truth.hose_snow_kg > 0.0:
        snow = text.mass(truth.hose_snow_kg, pounds=pounds)
        lines.append(translate("Class", "Dry ice in the vent hose: {mass}").format(mass=snow))
    bound_kg = sum(pocket.bound_kg for pocket in truth.pockets)
    if bound_kg > 0.0:
        bound = text.mass(bound_kg, pounds=pounds)
        lines.append(translate("Class", "CO2 in oil and desiccant: {mass}").format(mass=bound))
    return "\n".join(lines)


def said_words(run: ClassRun, units: UnitChoice) -> str:
    """Return what the gauge showed, what the program said and what the class said."""
    view = run.view
    lines = []
    if view.latest is not None:
        shown = text.both(units, view.latest.pressure_pa, view.setup.ambient_pressure_pa)
        lines.append(translate("Class", "The gauge showed {pressure}.").format(pressure=shown))
    hold = latest_hold(view)
    state = charge_words(hold.charge if hold is not None else Charge.UNDETERMINED)
    lines.append(
        translate("Class", "The program said: {state}. {reason}").format(
            state=state, reason=spoken(view.prompt.reason)
        )
    )
    if run.predictions:
        said = "; ".join(prediction_words(prediction) for prediction in run.predictions)
        lines.append(translate("Class", "The class said: {said}.").format(said=said))
    else:
        lines.append(translate("Class", "The class did not commit itself."))
    return "\n".join(lines)


def teaching_words(run: ClassRun) -> str:
    """Return what to take away from the exercise; empty for a random section."""
    exercise = run.task.exercise
    if exercise is None:
        return ""
    return "\n".join(
        (
            translate("Class", "Expected: {words}").format(words=spoken(exercise.expected)),
            translate("Class", "A novice says: {words}").format(words=spoken(exercise.wrong)),
            translate("Class", "What decides: {words}").format(words=spoken(exercise.second_test)),
            translate("Class", "Talk about: {words}").format(words=spoken(exercise.debrief)),
        )
    )


def change_words(name: str, value: object) -> str:
    """Return a changed variable of the scenario in plain words."""
    return f"{variable_words(name)} = {value}"


def variable_words(name: str) -> str:
    """Return a variable of the scenario, such as `charge.solid_kg`, in plain words."""
    return spoken(Sentence(name.partition(".")[2].replace("_", " ")))


def sheet_html(run: ClassRun, units: UnitChoice) -> str:
    """Return score sheet and handout as HTML; SIMULATED PRACTICE stands on top and at the end."""
    mark = translate("Class", "SIMULATED PRACTICE: not a job, nothing was vented")
    parts = [f"<h3>{escape(mark)}</h3>", f"<h1>{escape(run.task.title)}</h1>"]
    exercise = run.task.exercise
    if exercise is not None:
        parts.append(f"<p>{escape(spoken(exercise.story))}</p>")
        parts.append(f"<p><b>{escape(spoken(exercise.look_for))}</b></p>")
    if run.task.changes:
        changes = ", ".join(change_words(name, value) for name, value in run.task.changes.items())
        changed = translate("Class", "Changed:")
        parts.append(f"<p>{escape(changed)} {escape(changes)}</p>")
    blocks = [
        "\n".join(said_in(line, units) for line in run.score().lines()),
        truth_words(run.truth(), units, run.scenario.ambient_pa),
        said_words(run, units),
        teaching_words(run),
    ]
    parts.extend(
        "<p>" + "<br/>".join(escape(line) for line in block.splitlines()) + "</p>"
        for block in blocks
        if block
    )
    parts.append(f"<h3>{escape(mark)}</h3>")
    return "\n".join(parts)
