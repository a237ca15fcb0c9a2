# SPDX-License-Identifier: GPL-3.0-or-later
"""Builds a test program with one file of the tree changed, beside a finished build, of which nothing is written over.

The changed source is compiled with that build's own command and linked before the libraries, so that the linker takes
it in the place of the library's own. A changed table goes through rcc first, as the build's does.
"""

import json
import pathlib
import re
import shlex
import subprocess


class DoesNotCompile(Exception):
    pass


def run(command, folder):
    done = subprocess.run(command, cwd=folder, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)
    if done.returncode != 0:
        raise DoesNotCompile(done.stdout[-2000:])


class Builder:
    def __init__(self, root, build, programs):
        self.root, self.build = pathlib.Path(root), pathlib.Path(build)
        listed = json.loads((self.build / "compile_commands.json").read_text(encoding="utf-8"))
        self.compiles = {each["file"]: shlex.split(each["command"]) for each in listed}
        lines = subprocess.run(["ninja", "-t", "commands", *programs], cwd=self.build, check=True,
                               stdout=subprocess.PIPE, text=True).stdout.splitlines()
        self.links = {name: self.link_among(lines, name) for name in programs}
        self.rcc = [line.split(" && ")[-1] for line in lines if re.search(r"/rcc --output \S+ ", line)]

    @staticmethod
    def link_among(lines, name):
        for line in lines:
            if re.search(rf" -o \S*/{name} ", line):
                return shlex.split(next(part for part in line.split(" && ") if f"/{name} " in part))
        raise SystemExit(f"{name}: the build has no command that links it")

    def program(self, name):
        link = self.links[name]
        return self.build / link[link.index("-o") + 1]

    def compiled(self, name, source, folder):
        """The object of the tree's file <name> with <source> as its text, and the object that it stands for or None."""
        if name.endswith(".json"):
            return self.compiled_table(name, source, folder)
        changed = folder / pathlib.Path(name).name
        changed.write_text(source, encoding="utf-8")
        return self.compile(str(self.root / name), changed, folder), None

    def compiled_table(self, name, source, folder):
        changed = folder / pathlib.Path(name).name
        changed.write_text(source, encoding="utf-8")
        for line in self.rcc:
            command = shlex.split(line)
            listing = next(word for word in command if word.endswith(".qrc"))
            text = (self.build / listing).read_text(encoding="utf-8")
            if f">{self.root / name}<" not in text:
                continue
            (folder / "changed.qrc").write_text(text.replace(f">{self.root / name}<", f">{changed}<"), encoding="utf-8")
            at = command.index("--output") + 1
            made, stands_for = folder / "changed.cpp", command[at]
            command[at], command[command.index(listing)] = str(made), str(folder / "changed.qrc")
            run(command, folder)
            object_file = self.compiles[stands_for][self.compiles[stands_for].index("-o") + 1]
            return self.compile(stands_for, made, folder), object_file
        raise SystemExit(f"{name}: the build makes no resource of it")

    def compile(self, as_source, changed, folder):
        """Compiles <changed> as the build compiles <as_source>; what only warns now is no error."""
        command = list(self.compiles[as_source])
        made = folder / (changed.name + ".o")
        command[command.index("-o") + 1] = str(made)
        command[command.index("-c") + 1] = str(changed)
        for option in ("-MF", "-MT"):
            if option in command:
                command[command.index(option) + 1] = str(made) + ".d"
        run([*command, "-w"], self.build)
        return made

    def linked(self, name, object_file, stands_for, folder):
        """The program <name> with that object in it."""
        command = [word.replace("/./", "/") for word in self.links[name]]
        made = folder / name
        at = command.index("-o") + 1
        command[at] = str(made)
        if stands_for is None:
            command.insert(at + 1, str(object_file))
        elif stands_for in command:
            command[command.index(stands_for)] = str(object_file)
        else:
            raise SystemExit(f"{name}: {stands_for} is not in it")
        run(command, self.build)
        return made
