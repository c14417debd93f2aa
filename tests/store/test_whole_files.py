"""Settings and reports: whole or not at all."""

import json
import os
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from co2vent.errors import StoreError
from co2vent.store import whole_file
from co2vent.store.settings import load_settings, save_settings, settings_folder
from co2vent.store.whole_file import atomic_write


def test_a_file_is_replaced_whole(tmp_path: Path) -> None:
    path = tmp_path / "report.pdf"
    atomic_write(path, b"old")
    atomic_write(path, b"new")
    assert path.read_bytes() == b"new"
    assert [each.name for each in tmp_path.iterdir()] == ["report.pdf"]


@pytest.mark.parametrize("step", ["fsync", "replace"])
def test_after_a_failure_the_old_content_stands_and_nothing_is_left_over(
    step: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "report.pdf"
    atomic_write(path, b"old")

    def fail(*args: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(*((os, "fsync") if step == "fsync" else (Path, "replace")), fail)
    with pytest.raises(StoreError, match="no space left on device; choose another folder"):
        atomic_write(path, b"new")
    assert path.read_bytes() == b"old"
    assert [each.name for each in tmp_path.iterdir()] == ["report.pdf"]


def test_a_folder_that_is_not_there_is_refused(tmp_path: Path) -> None:
    with pytest.raises(StoreError, match="no such file or directory"):
        atomic_write(tmp_path / "missing" / "report.pdf", b"new")


def test_a_name_that_cannot_be_is_refused(tmp_path: Path) -> None:
    for name in ("a\0b", "x" * 300):
        with pytest.raises(StoreError):
            atomic_write(tmp_path / name, b"new")


def test_permissions_of_the_old_file_are_kept(tmp_path: Path) -> None:
    path = tmp_path / "job.json"
    atomic_write(path, b"old")
    path.chmod(0o640)
    atomic_write(path, b"new")
    assert path.stat().st_mode & 0o777 == 0o640


def test_settings_come_back(tmp_path: Path) -> None:
    path = tmp_path / "co2vent" / "settings.json"
    assert load_settings(path) == {}
    save_settings({"unit": "psig", "size": [1024, 600]}, path)
    assert load_settings(path) == {"unit": "psig", "size": [1024, 600]}


def test_broken_settings_fall_back_to_the_ones_before(tmp_path: Path) -> None:
    path = tmp_path / "settings.json"
    save_settings({"n": 1}, path)
    save_settings({"n": 2}, path)
    whole = path.read_bytes()
    for cut in range(len(whole) - 2):
        path.write_bytes(whole[:cut])
        assert load_settings(path) == {"n": 1}
    save_settings({"n": 3}, path)  # the broken file must not have replaced the spare
    path.write_bytes(b"")
    assert load_settings(path) == {"n": 1}


@given(st.binary(max_size=200))
def test_any_bytes_are_settings_or_none(
    tmp_path_factory: pytest.TempPathFactory, data: bytes
) -> None:
    path = tmp_path_factory.getbasetemp() / "any.json"
    path.write_bytes(data)
    found = load_settings(path)
    assert found == {} or found == json.loads(data)


def test_deep_nesting_is_no_settings(tmp_path: Path) -> None:
    path = tmp_path / "settings.json"
    path.write_text('{"a":' * 50_000 + "1" + "}" * 50_000)
    assert load_settings(path) == {}


def test_the_folder_follows_the_systems_rules(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.delenv("CO2VENT_CONFIG_DIR", raising=False)
    monkeypatch.setenv("XDG_CONFIG_HOME", str(tmp_path))
    assert settings_folder() == tmp_path / "co2vent"
    # XDG base directory specification: a relative path is to be ignored
    monkeypatch.setenv("XDG_CONFIG_HOME", "relative")
    assert settings_folder() == Path.home() / ".config" / "co2vent"
    monkeypatch.setattr("sys.platform", "win32")
    monkeypatch.setenv("APPDATA", str(tmp_path / "Roaming"))
    assert settings_folder() == tmp_path / "Roaming" / "co2vent"
    monkeypatch.setenv("CO2VENT_CONFIG_DIR", str(tmp_path / "own"))
    assert settings_folder() == tmp_path / "own"


def test_a_folder_that_cannot_be_opened_does_not_stop_the_writing(tmp_path: Path) -> None:
    whole_file.sync_folder(tmp_path / "missing")
