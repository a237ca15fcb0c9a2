# SPDX-License-Identifier: GPL-3.0-or-later
"""clang-tidy over every source of core, app and translations; takes minutes."""

import json
import os
import pathlib
import re
import subprocess
import tempfile

import house


def without_precompiled(build, folder):
    """Writes the build's commands into folder, without the headers that g++ precompiled: clang cannot read them."""
    commands = json.loads(pathlib.Path(build, "compile_commands.json").read_text(encoding="utf-8"))
    for command in commands:
        command["command"] = re.sub(r" -Winvalid-pch| -include \S*/cmake_pch\.hxx", "", command["command"])
    pathlib.Path(folder, "compile_commands.json").write_text(json.dumps(commands), encoding="utf-8")


def problems(root, run_clang_tidy, build):
    with tempfile.TemporaryDirectory() as folder:
        without_precompiled(build, folder)
        yield from reports(root, run_clang_tidy, folder)


def reports(root, run_clang_tidy, build):
    where = "^" + re.escape(os.path.realpath(root)) + r"/(core|app|translations)/.*\.cpp$"
    command = [run_clang_tidy, "-quiet", "-p", build, "-j", str(os.cpu_count()),
               # flags of g++ that clang has not
               "-extra-arg=-Wno-unknown-warning-option", where]
    done = subprocess.run(command, cwd=root, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
    if "clang-tidy" not in done.stdout:
        yield f"run-clang-tidy looked at no file: {done.stderr.strip()[-500:]}"
    found = [line for line in done.stdout.splitlines() if re.search(r": (warning|error): ", line)]
    yield from dict.fromkeys(found)  # a header's report comes once for each source that includes it
    if done.returncode != 0 and not found:
        yield f"run-clang-tidy ended with {done.returncode}: {done.stderr.strip()[-500:]}"


if __name__ == "__main__":
    house.main(problems)
