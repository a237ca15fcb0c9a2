# SPDX-License-Identifier: GPL-3.0-or-later
"""The Debian package: what is in it, on what it depends, the same bytes twice, and that removing it leaves the log."""

import os
import pathlib
import re
import tempfile
import unittest

from surroundings import BUILD, FILES, LOG, PROGRAM, ROOT, Scratch, files_below, main, run, sha256

# Of the group [run] of tests/packages.txt, what only demo/run needs.
NOT_OF_THE_PROGRAM = {"x11-utils"}


def pack(folder):
    """The package, made in a folder with another date of today than the commit's."""
    done = run("cpack", "--config", BUILD / "CPackConfig.cmake", "-B", folder, cwd=BUILD)
    if done.returncode:
        raise RuntimeError(done.stdout + done.stderr)
    (package,) = pathlib.Path(folder).glob("*.deb")
    return package


def setUpModule():
    global PACKAGE
    folder = tempfile.TemporaryDirectory()
    unittest.addModuleCleanup(folder.cleanup)
    PACKAGE = pack(folder.name)


def packages_to_run():
    text = (ROOT / "tests/packages.txt").read_text(encoding="utf-8")
    group = re.search(r"^\[run\]\n(.*?)^\[", text, re.MULTILINE | re.DOTALL).group(1)
    return set(re.findall(r"^[a-z0-9][\w.+-]*$", group, re.MULTILINE)) - NOT_OF_THE_PROGRAM


class Deb(Scratch):
    def field(self, name):
        return self.ran("dpkg-deb", "--field", PACKAGE, name).strip()

    def packages_in(self, *fields):
        return {each.split()[0] for field in fields for each in self.field(field).split(", ") if each}

    def dpkg(self, *words):
        # fakeroot: nothing of this reaches the machine's own packages, and nobody needs to be root.
        return self.ran("fakeroot", "dpkg", f"--root={self.machine}", f"--log={self.machine}/dpkg.log",
                        "--force-depends", "--force-not-root", "--force-bad-path", *words)

    def test_it_holds_what_an_installation_puts_there(self):
        self.ran("dpkg-deb", "--extract", PACKAGE, self.machine)
        self.assertEqual(files_below(self.machine), {f"usr/{each}" for each in FILES})
        self.assertRegex(self.ran(self.machine / "usr/bin/strandbench", "--version"), r"^strandbench \d")

    def test_nothing_of_it_is_run_when_it_is_installed_or_removed(self):
        self.ran("dpkg-deb", "--control", PACKAGE, self.machine / "control")
        self.assertEqual(files_below(self.machine / "control"), {"control", "md5sums"})

    def test_it_asks_for_what_the_program_needs(self):
        asked = self.packages_in("Depends", "Recommends")
        self.assertEqual(packages_to_run() - asked, set())
        self.assertLessEqual({"libqt6core6", "libqt6widgets6", "libqt6charts6", "libsodium23"}, asked)

    def test_each_library_that_the_program_is_linked_to_belongs_to_a_package_that_it_asks_for(self):
        asked = {each.split()[0] for each in self.field("Depends").split(", ")}
        linked = re.findall(r"NEEDED\s+(\S+)", self.ran("objdump", "--private-headers", PROGRAM))
        self.assertTrue(linked)
        for library in linked:
            owners = set(re.findall(r"^([^:\s]+)(?::\w+)?: ", self.ran("dpkg-query", "--search", f"*/{library}"), re.M))
            self.assertTrue(owners & asked, f"{library} of {owners}")

    def test_no_path_of_the_machine_that_built_it_is_in_its_texts(self):
        self.ran("dpkg-deb", "--extract", PACKAGE, self.machine)
        self.ran("dpkg-deb", "--control", PACKAGE, self.machine / "control")
        for name in files_below(self.machine) - {"usr/bin/strandbench"}:
            self.assertNotIn(os.fsencode(ROOT), (self.machine / name).read_bytes(), name)

    def test_packed_again_it_is_the_same_to_the_byte(self):
        again = pack(self.machine)
        self.assertEqual(sha256(again), sha256(PACKAGE))

    def test_removed_and_purged_it_leaves_the_log(self):
        log = self.keep_a_log()
        for folder in ("info", "updates"):
            (self.machine / "var/lib/dpkg" / folder).mkdir(parents=True)
        (self.machine / "var/lib/dpkg/status").touch()
        self.dpkg("--install", PACKAGE)
        self.assertTrue((self.machine / "usr/bin/strandbench").exists())
        self.dpkg("--remove", "strandbench")
        self.dpkg("--purge", "strandbench")
        self.assertEqual(files_below(self.machine / "usr") if (self.machine / "usr").exists() else set(), set())
        self.assertEqual(sha256(self.machine / LOG), log)


if __name__ == "__main__":
    main()
