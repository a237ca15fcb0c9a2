# SPDX-License-Identifier: GPL-3.0-or-later
"""`cmake --install` puts there what it should, the program runs from there, and `uninstall` takes that away alone."""

import shutil

from surroundings import BUILD, FILES, LOG, ROOT, Scratch, files_below, main, sha256


class Installed(Scratch):
    def setUp(self):
        super().setUp()
        self.log = self.keep_a_log()
        # By the component: the manifest of a person who has installed for real stays as it was.
        self.ran("cmake", "--install", BUILD, "--component", "strandbench", "--prefix", "/usr",
                 env={"DESTDIR": str(self.machine)})
        self.manifest = self.machine.parent / (self.machine.name + ".manifest")
        self.addCleanup(self.manifest.unlink)
        shutil.move(BUILD / "install_manifest_strandbench.txt", self.manifest)

    def uninstall(self):
        return self.ran("cmake", f"-DMANIFEST={self.manifest}", "-P", ROOT / "app/install/uninstall.cmake",
                        env={"DESTDIR": str(self.machine)})

    def test_what_is_put_there(self):
        self.assertEqual(files_below(self.machine / "usr"), FILES)

    def test_the_program_runs_from_there(self):
        program = self.machine / "usr/bin/strandbench"
        self.assertRegex(self.ran(program, "--version"), r"^strandbench \d")
        self.ran(program, "mix", "--puddle-mm", "100")  # reads a sheet that it carries
        self.assertIn("Aufruf:", self.ran(program, "--help", "--lang", "de"))  # and its catalogues

    def test_what_was_put_there_is_taken_away_and_the_log_stays(self):
        self.uninstall()
        self.assertEqual(files_below(self.machine), {LOG.as_posix()})
        self.assertEqual(sha256(self.machine / LOG), self.log)

    def test_a_file_of_somebody_else_beside_ours_stays(self):
        other = self.machine / "usr/bin/scale"
        other.write_text("another program")
        self.uninstall()
        self.assertEqual(files_below(self.machine / "usr"), {"bin/scale"})


if __name__ == "__main__":
    main()
