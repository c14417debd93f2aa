"""Register maps: every key and type against pymodbus's own server, through `record`."""

import struct
import subprocess
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from tests.contract.command import refused, run
from tests.wire.conftest import ModbusDevice

Start = Callable[..., subprocess.Popen[str]]


def words(code: str, value: float, order: str = "big") -> list[int]:
    """Registers of a 32-bit value; Modbus sends each register big-endian, the order is open."""
    pair = list(struct.unpack(">HH", struct.pack(code, value)))
    return pair if order == "big" else pair[::-1]


REGISTERS = [
    *words(">f", 19.25),  # 0
    *words(">f", 18.75, "little"),  # 2
    -205 & 0xFFFF,  # 4: int16
    40_500,  # 5: uint16
    *words(">i", -12_340),  # 6
    *words(">I", 3_000_000_000, "little"),  # 8
    32_767,  # 10: what many devices send for "no value"
    *words(">f", float("nan")),  # 11
    65_100,  # 13: above the limit of a channel
    *words(">i", -70_000, "little"),  # 14
    *words(">I", 1_925_000),  # 16
]


@pytest.fixture(scope="module")
def device() -> Iterator[ModbusDevice]:
    made = ModbusDevice(REGISTERS)
    yield made
    made.stop()


def channel(column: str, register: int, kind: str, **keys: object) -> str:
    lines = [f'column = "{column}"', f"register = {register}", f'type = "{kind}"']
    lines += [f"{key} = {value!r}".replace("'", '"') for key, value in keys.items()]
    if "table" not in keys:
        lines.append('table = "holding"')
    return "[[channel]]\n" + "\n".join(lines) + "\n"


# map -> the cells that it must give
MAPS: dict[str, tuple[list[str], dict[str, str]]] = {
    "types": (
        [
            channel("pressure_bar_g", 0, "float32", word_order="big"),
            channel("pressure_2_bar_g", 2, "float32", word_order="little"),
            channel("line_temperature_degC", 4, "int16", scale=0.1),
            channel("upper_temperature_degC", 5, "uint16", scale=0.001, offset=-50.0),
            channel("ambient_temperature_degC", 6, "int32", word_order="big", scale=0.001),
            channel("room_co2_ppm", 8, "uint32", word_order="little", scale=1e-6),
        ],
        {
            "pressure_bar_g": "19.25", "pressure_2_bar_g": "18.75",
            "line_temperature_degC": "-20.5", "upper_temperature_degC": "-9.5",
            "ambient_temperature_degC": "-12.34", "room_co2_ppm": "3000",
        },
    ),
    "no_reading": (
        [
            channel("pressure_psia", 16, "uint32", word_order="big", scale=0.0001, table="input"),
            channel("line_temperature_degC", 10, "int16", scale=0.1, invalid=[32767, -1]),
            channel("upper_temperature_degC", 11, "float32", word_order="big"),
            channel("ambient_temperature_degC", 13, "uint16", valid_min=0, valid_max=65000),
            channel("room_co2_ppm", 14, "int32", word_order="little", valid_min=0),
        ],
        {
            "pressure_psia": "192.5", "line_temperature_degC": "", "upper_temperature_degC": "",
            "ambient_temperature_degC": "", "room_co2_ppm": "",
        },
    ),
}  # fmt: skip
NEVER_A_PRESSURE = {
    "invalid": channel("pressure_bar_g", 10, "int16", invalid=[32767]),
    "nan": channel("pressure_bar_g", 11, "float32", word_order="big"),
    "above": channel("pressure_bar_g", 13, "uint16", scale=0.001, valid_max=65000),
    "below": channel("pressure_bar_g", 4, "int16", scale=0.001, valid_min=0),
}


def rows_of(path: Path) -> list[dict[str, str]]:
    """The rows of readings in a recording."""
    lines = [line for line in path.read_text().splitlines() if not line.startswith("#")]
    names = lines[0].split(",")
    return [dict(zip(names, line.split(","), strict=True)) for line in lines[1:]]


def test_each_type_word_order_scale_and_limit_gives_its_value_or_none(
    device: ModbusDevice, start: Start, tmp_path: Path
) -> None:
    maps = {name: "".join(channels) for name, (channels, _) in MAPS.items()} | NEVER_A_PRESSURE
    recorders = {}
    for name, text in maps.items():
        (tmp_path / f"{name}.toml").write_text(text)
        source = f"modbus-tcp://127.0.0.1:{device.port}?unit=1&map={name}.toml&period_s=0.1"
        recorders[name] = start("record", "--source", source, "--log", f"{name}.csv", "--for", 1.5)
    for name, recorder in recorders.items():
        out, err = recorder.communicate(timeout=30)
        assert "Traceback" not in err, err
        assert recorder.returncode == 0, (name, err)
        if name in NEVER_A_PRESSURE:
            log = tmp_path / f"{name}.csv"
            for row in rows_of(log) if log.exists() and log.read_text() else []:
                assert not row["pressure_bar_g"][:1].isdigit(), row
            assert " vent: " not in out
    for name, (_, expected) in MAPS.items():
        seen = rows_of(tmp_path / f"{name}.csv")
        assert len(seen) >= 3, name
        stamps = [float(row["elapsed_s"]) for row in seen]
        assert stamps == sorted(set(stamps))  # stamped on arrival, each once
        for row in seen:
            # temperatures are recorded to 0.01 degC
            for column, value in expected.items():
                if value:
                    assert float(row[column]) == pytest.approx(float(value), abs=1e-4), column
                else:
                    assert not row[column][:1].isdigit(), column


REFUSED = {
    "word order": channel("pressure_bar_g", 0, "float32"),
    "type": channel("pressure_bar_g", 0, "float64", word_order="big"),
    "unit": channel("pressure", 0, "int16"),
    "gauge or absolute": channel("pressure_bar", 0, "int16"),
}


def test_a_map_whose_meaning_is_not_certain_is_refused(
    device: ModbusDevice, tmp_path: Path
) -> None:
    for name, text in REFUSED.items():
        (tmp_path / "map.toml").write_text(text)
        source = f"modbus-tcp://127.0.0.1:{device.port}?unit=1&map=map.toml"
        done = run("record", "--source", source, "--log", "x.csv", "--for", 2, cwd=tmp_path)
        assert "map.toml" in refused(done), name
