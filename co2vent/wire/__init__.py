"""Bytes from gauges: serial, sockets, Modbus, files that grow."""
