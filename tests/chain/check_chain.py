#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Checks the chain of a log without the program, from the byte layout in core/repairlog/chain.h alone.

check_chain.py LOG [--expect HEAD]    HEAD: 64 hexadecimal digits, as printed on a day sheet

Ends with 0 when the chain holds, with 1 and a line that says where it breaks, with 2 when it cannot be read.
"""

import hashlib
import pathlib
import sqlite3
import struct
import sys

FIELDS = ("prev_hash", "origin", "seq", "repair", "kind", "kind_version", "utc_ms", "boottime_ms", "boot_id",
          "utc_offset_s", "person", "payload")


class Broken(Exception):
    pass


def encoded(value):
    """One field: its length in 4 bytes, then its bytes."""
    if isinstance(value, int):
        value = struct.pack(">q", value)
    elif isinstance(value, str):
        value = value.encode("utf-8")
    elif not isinstance(value, bytes):
        raise Broken(f"a field is {value!r}")
    return struct.pack(">I", len(value)) + value


def hash_of(fields):
    return hashlib.sha256(b"".join(encoded(each) for each in fields)).digest()


def check_events(log, expected):
    """The heads as {origin: (count, hash)}."""
    heads, met = {}, expected in (None, bytes(32))
    for *fields, held in log.execute(f"SELECT {', '.join(FIELDS)}, hash FROM event ORDER BY origin, seq"):
        previous, origin, seq = fields[:3]
        count, head = heads.get(origin, (0, bytes(32)))
        where = f"origin {origin}, seq {seq}"
        if seq != count + 1:
            raise Broken(f"{where}: seq {count + 1} is not there")
        if previous != head:
            raise Broken(f"{where}: it does not follow on the hash before it")
        if held != hash_of(fields):
            raise Broken(f"{where}: its hash is not that of what it holds")
        heads[origin] = (seq, held)
        met = met or held == expected
    if not met:
        raise Broken(f"no event has the hash {expected.hex()}")
    return heads


def check_blobs(log):
    """How many blobs there are."""
    blobs = set()
    for held, content in log.execute("SELECT hash, bytes FROM blob"):
        if hashlib.sha256(content).digest() != held:
            raise Broken(f"blob {held.hex()}: its bytes have another hash")
        blobs.add(held)
    events = set(log.execute("SELECT origin, seq FROM event"))
    for origin, seq, held in log.execute("SELECT origin, seq, hash FROM event_blob"):
        if held not in blobs or (origin, seq) not in events:
            raise Broken(f"origin {origin}, seq {seq}: it or its blob {held.hex()} is not there")
    return len(blobs)


def main(path, option="--expect", head=None):
    if option != "--expect":
        raise ValueError(option)
    expected = None if head is None else bytes.fromhex(head)
    if expected is not None and len(expected) != 32:
        raise ValueError(head)
    # Beside a program that writes, through its WAL; of a closed log a still picture, which leaves nothing beside it.
    how = "mode=ro" if pathlib.Path(path + "-wal").exists() else "mode=ro&immutable=1"
    log = sqlite3.connect(f"{pathlib.Path(path).resolve().as_uri()}?{how}", uri=True)
    log.execute("BEGIN")  # one picture for all that is read
    heads, blobs = check_events(log, expected), check_blobs(log)
    for origin, (count, newest) in sorted(heads.items()):
        print(f"origin {origin}: {count} events, head {newest.hex()}")
    print(f"{sum(count for count, _ in heads.values())} events, {blobs} blobs: the chain holds")


if __name__ == "__main__":
    try:
        main(*sys.argv[1:])
    except Broken as broken:
        sys.exit(print(f"BROKEN: {broken}") or 1)
    except (OSError, TypeError, ValueError, sqlite3.Error) as reason:
        sys.exit(print(f"{reason}\n{__doc__}", file=sys.stderr) or 2)
