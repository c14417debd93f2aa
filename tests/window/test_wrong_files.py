"""A file that is no log is refused in words for the window, with the file's name."""

import pytest

from co2vent.errors import Co2ventError
from co2vent.readings.log_file import read_log
from co2vent.window.main_window import MainWindow
from co2vent.window.wrong_file import why_not

NO_TIME = "pressure_bar_g\n5.2\n5.3\n"
NO_UNIT = "elapsed_s,pressure\n1,5.2\n2,5.3\n"

WRONG = {
    "empty.csv": (b"", "is empty"),
    "blank.csv": (b"\n \n\n", "is empty"),
    "picture.csv": (bytes(range(256)) * 8, "holds no text"),
    "letter.csv": (b"Dear colleague,\nthe pump is dry.\n" * 200, "no column is known as the pres"),
    "no-time.csv": (NO_TIME.encode(), "no column is known as the time"),
    "no-unit.csv": (NO_UNIT.encode(), "has no unit"),
    "header.csv": (b"elapsed_s,pressure_bar_g\n", "no readings"),
}


@pytest.mark.parametrize("name", WRONG)
def test_a_wrong_file_is_named_and_no_option_of_a_command(tmp_path, name) -> None:
    data, expected = WRONG[name]
    path = tmp_path / name
    path.write_bytes(data)
    with pytest.raises(Co2ventError) as caught:
        read_log(path)
    words = why_not(path, caught.value)
    assert words.startswith(name)
    assert expected in words
    assert "--" not in words
    assert str(tmp_path) not in words


def test_a_missing_file_is_said_without_numbers_of_the_system(
    qtbot, look, tmp_path, monkeypatch
) -> None:
    window = MainWindow(look)
    qtbot.addWidget(window)
    said: list[str] = []
    monkeypatch.setattr(window, "complain", said.append)
    window.open_log(tmp_path / "gone.csv")
    window.open_log(tmp_path)
    assert said[0] == "gone.csv can't be opened: there is no such file."
    assert said[1].startswith(f"{tmp_path.name} can't be opened")
    assert not any("Errno" in words for words in said)


def test_a_large_wrong_file_is_refused_in_the_same_words(
    qtbot, look, tmp_path, monkeypatch
) -> None:
    monkeypatch.setattr("co2vent.window.main_window.LARGE_BYTES", 1000)
    path = tmp_path / "large.csv"
    path.write_bytes(bytes(range(256)) * 200)
    window = MainWindow(look)
    qtbot.addWidget(window)
    window.show()
    said: list[str] = []
    monkeypatch.setattr(window, "complain", said.append)
    window.open_log(path)
    qtbot.waitUntil(lambda: bool(said), timeout=10_000)
    assert said[0].startswith("large.csv is not a readings log")
