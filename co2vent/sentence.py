"""A sentence that can be said in another language: plain English text that knows how it was made.

The core speaks English only. A `Sentence` is the finished text, a `str` in every respect: files,
logs and reports write it as it is. Besides, it keeps its template, a fixed text with named fields,
and the values of the fields, so that a screen can look the template up in its catalogue and fill in
the values again.
"""

from collections.abc import Sequence
from functools import reduce
from typing import SupportsIndex


class Sentence(str):
    """The text of `template` with `values` filled in; values may be sentences themselves.

    The template must be a literal where the sentence is made: a test collects them from there and
    asks for each in every shipped language. A value is text, as it stands in the English sentence.
    """

    __slots__ = ("template", "values")
    template: str
    values: dict[str, str]

    def __new__(cls, template: str, /, **values: str) -> "Sentence":
        """Fill `values` into `template`, each in its `{name}`."""
        sentence = super().__new__(cls, template.format_map(values) if values else template)
        sentence.template = template
        sentence.values = values
        return sentence

    def __reduce_ex__(self, _protocol: SupportsIndex) -> tuple[object, tuple[str, dict[str, str]]]:
        # a str would be built again from its text alone
        return _again, (self.template, self.values)


def _again(template: str, values: dict[str, str]) -> Sentence:
    return Sentence(template, **values)


class Figure(str):
    """A number with its unit, as text, that remembers what was measured.

    Files, logs and reports write it as it is, in the units of the source. A screen whose person
    reads other units can say it in those.
    """

    __slots__ = ("ambient_pa", "kind", "si")
    # "pressure", "difference", "slope", "change", "loss", "temperature", "kelvin", "warming"
    kind: str
    si: float  # Pa (absolute), Pa, Pa/s, Pa, Pa/s, K, K (both differences)
    ambient_pa: float  # what a gauge pressure is measured from

    def __new__(cls, text: str, kind: str, si: float, ambient_pa: float = 0.0) -> "Figure":
        """Give `text` what it says: its kind and value."""
        figure = super().__new__(cls, text)
        figure.kind = kind
        figure.si = si
        figure.ambient_pa = ambient_pa
        return figure

    def __reduce_ex__(
        self, _protocol: SupportsIndex
    ) -> tuple[object, tuple[str, str, float, float]]:
        # a str would be built again from its text alone
        return Figure, (str(self), self.kind, self.si, self.ambient_pa)


def joined(first: str, second: str) -> str:
    """Return two sentences as one, a space between; the first alone where there is no second."""
    if not second:
        return first
    return Sentence("{first} {second}", first=first, second=second)


def listed(parts: Sequence[str]) -> str:
    """Return the parts as one text, semicolons between."""
    return reduce(lambda before, part: Sentence("{a}; {b}", a=before, b=part), parts)


def comma_listed(parts: Sequence[str]) -> str:
    """Return the parts as one text, commas between."""
    return reduce(lambda before, part: Sentence("{a}, {b}", a=before, b=part), parts)
