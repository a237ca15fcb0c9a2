# SPDX-License-Identifier: GPL-3.0-or-later
"""What the package checks share: the command line, a scratch folder, a person's log in it, and running others."""

import hashlib
import os
import pathlib
import shutil
import subprocess
import sys
import tempfile
import unittest

ROOT, BUILD, PROGRAM = (pathlib.Path(each) for each in sys.argv[1:4])
INSTALL = ROOT / "app/install"
ID = "org.strandbench.Strandbench"
FILES = {  # what an installation puts there, below its prefix
    "bin/strandbench",
    f"share/applications/{ID}.desktop",
    f"share/icons/hicolor/scalable/apps/{ID}.svg",
    f"share/metainfo/{ID}.metainfo.xml",
    "share/man/man1/strandbench.1.gz",
    "share/doc/strandbench/copyright",
    "share/doc/strandbench/changelog.gz",
    "lib/systemd/user/strandbench-kiosk.service",
}
LOG = pathlib.Path("home/mender/.local/share/strandbench/bench.sqlite")


def run(*words, **more):
    """Runs to the end and gives what came back, both streams as text; a program that is not there says so."""
    if not shutil.which(words[0]):
        raise FileNotFoundError(f"{words[0]} is not there: see tests/packages.txt")
    surroundings = {**os.environ, "LC_ALL": "C.UTF-8", **more.pop("env", {})}
    words = [str(each) for each in words]
    return subprocess.run(words, capture_output=True, encoding="utf-8", env=surroundings, **more)


def files_below(folder):
    """Every file below a folder, by its name from there."""
    return {path.relative_to(folder).as_posix() for path in folder.rglob("*") if path.is_file() or path.is_symlink()}


def sha256(path):
    return hashlib.sha256(path.read_bytes()).hexdigest()


class Scratch(unittest.TestCase):
    """A scratch folder that stands for a machine's root."""

    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.machine = pathlib.Path(folder.name)

    def ran(self, *words, **more):
        """What a run that ended well wrote."""
        done = run(*words, **more)
        self.assertEqual(done.returncode, 0, done.stdout + done.stderr)
        return done.stdout + done.stderr

    def keep_a_log(self):
        """A log of an earlier year, where a bench keeps it; its hash."""
        log = self.machine / LOG
        log.parent.mkdir(parents=True)
        stored = sorted((ROOT / "tests/core/repairlog/stored").glob("*.db"))
        shutil.copyfile(stored[-1], log)
        return sha256(log)


def main():
    unittest.main(argv=sys.argv[:1], verbosity=2)
