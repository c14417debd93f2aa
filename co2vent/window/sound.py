"""Sound by pulse count: three pulses for caution, ten for danger. Never the only channel.

The tone is made here and played by what the system has. Whether anything is heard cannot be known;
whether a player exists and ends well can, and NO SOUND is shown when not.
"""

import io
import math
import shutil
import subprocess
import sys
import tempfile
import wave
from array import array
from pathlib import Path
from typing import Final

from co2vent.guidance.events import Severity

PULSES: Final = {Severity.CAUTION: 3, Severity.DANGER: 10}
TONE_HZ: Final = 950.0  # with its third harmonic inside 500-2500 Hz (ISO 7731, from memory)
PULSE_S: Final = 0.15
GAP_S: Final = 0.15
EDGE_S: Final = 0.01
RATE_HZ: Final = 22_050
REPEAT_S: Final = 12.0  # an alarm that nobody acknowledged sounds again after this
PLAYERS: Final = (["pw-play"], ["paplay"], ["aplay", "-q"], ["afplay"])


def pulses_wav(count: int) -> bytes:
    """Return a WAV file of `count` pulses."""
    samples = array("h")
    for _ in range(count):
        for at in range(int(PULSE_S * RATE_HZ)):
            seconds = at / RATE_HZ
            edge = min(1.0, seconds / EDGE_S, (PULSE_S - seconds) / EDGE_S)
            tone = math.sin(math.tau * TONE_HZ * seconds)
            tone += 0.35 * math.sin(math.tau * 2 * TONE_HZ * seconds)
            samples.append(int(23_000 * edge * tone / 1.35))
        samples.extend([0] * int(GAP_S * RATE_HZ))
    if sys.byteorder == "big":
        samples.byteswap()
    buffer = io.BytesIO()
    with wave.open(buffer, "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(RATE_HZ)
        file.writeframes(samples.tobytes())
    return buffer.getvalue()


class Sounder:
    """Plays pulses without waiting; `works` tells whether the last try ended well."""

    def __init__(self, players: tuple[list[str], ...] = PLAYERS) -> None:
        self._player = next((p for p in players if shutil.which(p[0])), None)
        self._windows = sys.platform == "win32"
        self._folder: tempfile.TemporaryDirectory[str] | None = None
        self._playing: subprocess.Popen[bytes] | None = None
        self.works = self._windows or self._player is not None

    def play(self, severity: Severity) -> None:
        """Sound the pulses of `severity`; calm has none."""
        count = PULSES.get(severity)
        if count is None or not (self._windows or self._player):
            return
        path = self._file(count)
        if self._windows:
            self._play_windows(path)
            return
        assert self._player is not None
        self.check()
        if self._playing is not None:
            return  # still sounding
        try:
            self._playing = subprocess.Popen(
                [*self._player, str(path)],
                stdin=subprocess.DEVNULL,
                stdout=subprocess.DEVNULL,
                stderr=subprocess.DEVNULL,
            )
        except OSError:
            self.works = False

    def check(self) -> bool:
        """Look how the last sound ended; return whether sound works as far as is known."""
        if self._playing is not None and self._playing.poll() is not None:
            self.works = self._playing.returncode == 0
            self._playing = None
        return self.works

    def close(self) -> None:
        """Stop sounding and remove the files."""
        if self._playing is not None:
            self._playing.kill()
            self._playing.wait()
            self._playing = None
        if self._folder is not None:
            self._folder.cleanup()
            self._folder = None

    def _file(self, count: int) -> Path:
        if self._folder is None:
            self._folder = tempfile.TemporaryDirectory(prefix="co2vent-sound-")
        path = Path(self._folder.name) / f"{count}.wav"
        if not path.exists():
            path.write_bytes(pulses_wav(count))
        return path

    def _play_windows(self, path: Path) -> None:
        if sys.platform == "win32":
            import winsound

            try:
                winsound.PlaySound(str(path), winsound.SND_FILENAME | winsound.SND_ASYNC)
            except RuntimeError:
                self.works = False
