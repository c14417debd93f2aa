"""The serial ports of this machine, and which adapter is which when the names have moved."""

from dataclasses import dataclass
from typing import Any


@dataclass(frozen=True, slots=True)
class Port:
    """A serial port for the person to choose from."""

    device: str
    description: str
    maker: str


@dataclass(frozen=True, slots=True)
class UsbIdentity:
    """What stays the same when an adapter is plugged in again under another name."""

    vendor_id: int
    product_id: int
    serial_number: str | None
    interface: str | None  # tells the ports of an adapter with several apart


def list_ports() -> list[Port]:
    """Return the serial ports present, by name."""
    return sorted(
        (
            Port(port.device, port.description or "", port.manufacturer or "")
            for port in _comports()
        ),
        key=lambda port: port.device,
    )


def identity_of(device: str) -> UsbIdentity | None:
    """Return the USB identity behind `device`; `None` for what is no USB adapter."""
    for port in _comports():
        if port.device == device:
            return _identity(port)
    return None


def device_with(identity: UsbIdentity) -> str | None:
    """Return the name that the adapter has now.

    `None` where it is not plugged in, or where two that cannot be told apart are.
    """
    found = [port.device for port in _comports() if _identity(port) == identity]
    return found[0] if len(found) == 1 else None


def _identity(port: Any) -> UsbIdentity | None:
    vendor_id, product_id = getattr(port, "vid", None), getattr(port, "pid", None)
    if vendor_id is None or product_id is None:
        return None
    return UsbIdentity(
        vendor_id,
        product_id,
        getattr(port, "serial_number", None),
        getattr(port, "interface", None),
    )


def _comports() -> list[Any]:
    from serial.tools import list_ports as system_ports

    return list(system_ports.comports())
