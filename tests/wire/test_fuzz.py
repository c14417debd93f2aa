"""Whatever comes: a source, a map, a frame is understood or refused, never a crash."""

import socket
import struct
import threading
from collections.abc import Iterator

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from co2vent.errors import Co2ventError, RefusedInputError
from co2vent.wire import modbus
from co2vent.wire.modbus import ModbusSource
from co2vent.wire.parse import KINDS, parse_source
from co2vent.wire.polled import parse_dialogue

SCHEMES = [*KINDS, "", "/dev/tty", "COM", "loop://", "rfc2217://", "spy://"]


@given(
    st.sampled_from(SCHEMES), st.text(max_size=40), st.text(alphabet="abmnptu=&?%1.", max_size=20)
)
@settings(max_examples=300)
def test_any_source_text_is_a_source_or_refused(scheme: str, body: str, query: str) -> None:
    try:
        source = parse_source(f"{scheme}{body}?{query}")
    except RefusedInputError as error:
        message = str(error)
    else:
        message = source.label
    assert isinstance(message, str)


@given(st.text(max_size=120))
def test_any_text_is_a_dialogue_or_refused(text: str) -> None:
    with pytest.raises(RefusedInputError):
        parse_dialogue(text, "meter.toml")


class Liar:
    """A TCP server that answers each Modbus request with whatever it is given."""

    def __init__(self) -> None:
        self.answers: list[bytes] = []
        self._server = socket.create_server(("127.0.0.1", 0))
        self.port = self._server.getsockname()[1]
        threading.Thread(target=self._serve, daemon=True).start()

    def _serve(self) -> None:
        while True:
            try:
                client, _ = self._server.accept()
            except OSError:
                return
            threading.Thread(target=self._answer, args=(client,), daemon=True).start()

    def _answer(self, client: socket.socket) -> None:
        with client:
            while True:
                try:
                    request = client.recv(300)
                    if not request:
                        return
                    client.sendall(request[:2] + self.answers.pop() if self.answers else b"")
                except OSError:
                    return

    def close(self) -> None:
        self._server.close()


@pytest.fixture(scope="module")
def liar() -> Iterator[Liar]:
    made = Liar()
    yield made
    made.close()


# what follows the transaction number in the right answer: protocol, length, unit, function, bytes
RIGHT = b"\0\0" + struct.pack(">H", 7) + bytes([1, 3, 4]) + struct.pack(">f", 19.25)


@st.composite
def wrong_frames(draw: st.DrawFn) -> bytes:
    frame = bytearray(RIGHT)
    for _ in range(draw(st.integers(0, 3))):
        # not in the value: a changed value in a valid frame is a value
        frame[draw(st.integers(0, 6))] = draw(st.integers(0, 255))
    frame = frame[: draw(st.integers(0, len(frame)))]
    return bytes(frame) + draw(st.binary(max_size=20))


@given(st.lists(wrong_frames() | st.binary(max_size=260), min_size=1, max_size=4))
@settings(max_examples=60, deadline=None)
def test_no_modbus_frame_is_a_crash(
    liar: Liar, tmp_path_factory: pytest.TempPathFactory, answers: list[bytes]
) -> None:
    path = tmp_path_factory.getbasetemp() / "frames.toml"
    path.write_text(
        '[[channel]]\ncolumn = "pressure_bar_g"\ntable = "holding"\nregister = 0\n'
        'type = "float32"\nword_order = "big"\n'
    )
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(modbus, "REPLY_TIMEOUT_S", 0.01)
        source = ModbusSource(tcp=("127.0.0.1", liar.port), map_path=path, period_s=0.02)
        source.open()
        liar.answers[:] = answers
        source.read(0.1)  # the header
        for _ in answers:
            try:
                row = source.read(0.1)
            except Co2ventError:
                break
            assert row.endswith(b"\n")
        source.close()
