"""A sentence is plain text to everything but a screen that speaks another language."""

import copy
import json
import pickle
from dataclasses import dataclass, replace

import pytest

from co2vent.sentence import Sentence, joined

INNER = Sentence("the lowest metal is {drive} above saturation", drive="12 K")
WHOLE = joined(Sentence("Not known: {why}.", why=INNER), Sentence("Keep {holding}"))
TEXT = "Not known: the lowest metal is 12 K above saturation. Keep {holding}"


def test_a_sentence_equals_sorts_and_hashes_as_its_text() -> None:
    assert WHOLE == TEXT
    assert hash(WHOLE) == hash(TEXT)
    assert {TEXT: 1}[WHOLE] == 1
    assert json.dumps({"reason": WHOLE}) == json.dumps({"reason": TEXT})
    assert f"{WHOLE}" == TEXT
    assert type(WHOLE + "") is str


@pytest.mark.parametrize(
    "again",
    [copy.copy, copy.deepcopy]
    + [lambda s, p=p: pickle.loads(pickle.dumps(s, p)) for p in range(pickle.HIGHEST_PROTOCOL + 1)],
)
def test_a_copy_still_knows_how_it_was_made(again) -> None:
    found = again(WHOLE)
    assert found == TEXT
    assert found.template == "{first} {second}"
    assert found.values["first"].values["why"].template == INNER.template
    assert found.values["second"].values == {}


def test_it_lives_in_frozen_records() -> None:
    @dataclass(frozen=True, slots=True)
    class Said:
        reason: str
        at_s: float = 0.0

    later = replace(Said(INNER), at_s=1.0)
    assert later == Said(str(INNER), 1.0)
    assert isinstance(later.reason, Sentence)


def test_a_field_without_value_is_refused_at_once() -> None:
    with pytest.raises(KeyError):
        Sentence("{here} and {there}", here="5 bar")
