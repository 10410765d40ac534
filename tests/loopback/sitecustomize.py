"""No socket leaves this machine: Python runs this by itself where the folder is on PYTHONPATH; the suite imports it.

Audit hooks see every socket call, whoever makes it, and cannot be taken off again (Python's table of audit events).
"""

import ipaddress
import sys
from typing import Any

WATCHED = frozenset({"socket.connect", "socket.sendto", "socket.sendmsg", "socket.getaddrinfo", "socket.bind"})


class LeavesTheMachine(RuntimeError):
    pass


def is_local(host: object) -> bool:
    if isinstance(host, bytes):
        host = host.decode("ascii", "replace")
    if host in ("localhost", None):
        return True
    try:
        return ipaddress.ip_address(str(host).split("%")[0]).is_loopback
    except ValueError:
        return False


def watch(event: str, arguments: tuple[Any, ...]) -> None:
    if event not in WATCHED:
        return
    address = arguments[0] if event == "socket.getaddrinfo" else arguments[1]
    host = address[0] if isinstance(address, tuple) else address
    if event != "socket.getaddrinfo" and not isinstance(address, tuple):
        return  # a path: a socket of this machine by nature
    if not is_local(host):
        raise LeavesTheMachine(f"{event} to {host!r}")


sys.addaudithook(watch)
