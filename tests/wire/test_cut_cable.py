"""A network cable that is pulled says nothing to either end; it is found out all the same."""

import os
import shutil
import subprocess
import sys
import time
from collections.abc import Iterator
from typing import Any

import pytest

from co2vent.wire.link import Back, Link, Lost
from co2vent.wire.tcp import TcpSource

SERVER = """
import socket, threading, time
server = socket.create_server(("10.203.77.2", 4001))
def pour(client):
    try:
        client.sendall(b"elapsed_s,pressure_bar_g\\n")
        n = 0
        while True:
            client.sendall(b"%d.0,19.0\\n" % n)
            n += 1
            time.sleep(0.1)
    except OSError:
        pass
print("ready", flush=True)
while True:
    client, _ = server.accept()
    threading.Thread(target=pour, args=(client,), daemon=True).start()
"""


def ip(*words: str) -> bool:
    return subprocess.run(["ip", *words], capture_output=True, check=False).returncode == 0


@pytest.fixture
def far_machine() -> Iterator[str]:
    """A network of its own at the other end of a cable."""
    name = f"gauge{os.getpid()}"
    near, far = f"n{os.getpid()}", f"f{os.getpid()}"
    made = (
        shutil.which("ip") is not None
        and os.geteuid() == 0
        and ip("netns", "add", name)
        and ip("link", "add", near, "type", "veth", "peer", "name", far, "netns", name)
        and ip("addr", "add", "10.203.77.1/30", "dev", near)
        and ip("link", "set", near, "up")
        and ip("-n", name, "addr", "add", "10.203.77.2/30", "dev", far)
        and ip("-n", name, "link", "set", far, "up")
    )
    if not made:
        ip("netns", "del", name)
        pytest.skip("a network of its own needs the right to make one")
    with subprocess.Popen(
        ["ip", "netns", "exec", name, sys.executable, "-c", SERVER], stdout=subprocess.PIPE
    ) as server:
        assert server.stdout is not None
        server.stdout.readline()
        yield f"{name} {far}"
        server.kill()
    ip("netns", "del", name)


@pytest.mark.slow
def test_a_pulled_network_cable_is_noticed_and_the_gauge_comes_back(
    far_machine: str, gather: Any, text_of: Any
) -> None:
    name, cable = far_machine.split()
    link = Link(TcpSource("10.203.77.2", 4001))
    link.open()
    gather(link, text_of)
    assert ip("-n", name, "link", "set", cable, "down")
    pulled_s = time.monotonic()
    gather(link, lambda seen: any(isinstance(a, Lost) for a in seen), 12.0)
    print(f"noticed after {time.monotonic() - pulled_s:.1f} s")
    assert time.monotonic() - pulled_s < 8.0
    assert ip("-n", name, "link", "set", cable, "up")
    gather(link, lambda seen: any(isinstance(a, Back) for a in seen), 12.0)
    assert b"19.0" in text_of(gather(link, lambda seen: b"19.0" in text_of(seen)))
    link.close()
