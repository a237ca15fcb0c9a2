# SPDX-License-Identifier: GPL-3.0-or-later
"""cppcheck over every source of core and app, as the build compiles it but without the headers of others, of which it
knows the functions by its own descriptions. A suppression stands above its line in the source, with its reason."""

import json
import os
import pathlib
import re
import subprocess
import tempfile

import house

COMMAND = ["--enable=warning,performance,portability", "--std=c++20", "--library=qt,boost,posix,gnu", "--inline-suppr",
           "--quiet", "--template={file}:{line}: {severity}: {message} [{id}]"]
# What is not looked for anywhere, and why. All else stands above its line in the source.
LEFT_OUT = {
    "CastIntegerToAddressAtReturn": "no compiler of C++ lets it pass; without Qt's headers it is seen where none is",
    "noCopyConstructor": "clang-tidy asks for it (cppcoreguidelines-special-member-functions), and knows Qt's parents",
    "noOperatorEq": "as noCopyConstructor",
}
OF_OTHERS = re.compile(r" -isystem \S+| -Winvalid-pch| -include \S+")


def commands_of_ours(root, build):
    """The build's commands for what stands in core and app, without the folders of others' headers."""
    commands = json.loads(pathlib.Path(build, "compile_commands.json").read_text(encoding="utf-8"))
    where = tuple(f"{os.path.realpath(root)}/{folder}/" for folder in ("core", "app"))
    for each in commands:
        if each["file"].startswith(where):
            yield {**each, "command": OF_OTHERS.sub("", each["command"])}


def problems(root, cppcheck, build):
    commands = list(commands_of_ours(root, build))
    if not commands:
        yield f"{build}: compiles nothing of core and app"
        return
    with tempfile.TemporaryDirectory() as folder:
        listed = pathlib.Path(folder, "compile_commands.json")
        listed.write_text(json.dumps(commands), encoding="utf-8")
        left_out = [f"--suppress={each}" for each in LEFT_OUT]
        done = subprocess.run([cppcheck, *COMMAND, *left_out, f"--project={listed}", f"-j{os.cpu_count()}"], cwd=root,
                              stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)
    found = list(dict.fromkeys(done.stdout.splitlines()))  # a header's report comes once for each source
    yield from (line.removeprefix(os.path.realpath(root) + "/") for line in found)
    if done.returncode != 0 and not found:
        yield f"cppcheck ended with {done.returncode}"


if __name__ == "__main__":
    house.main(problems)
