# SPDX-License-Identifier: GPL-3.0-or-later
"""Desktop entry, icon, catalogue entry, manual page, kiosk unit: held against the tools that others read them with."""

import configparser
import re
import xml.etree.ElementTree

from surroundings import ID, INSTALL, PROGRAM, Scratch, main


class Files(Scratch):
    def test_the_desktop_entry(self):
        entry = INSTALL / f"{ID}.desktop"
        self.assertEqual(self.ran("desktop-file-validate", entry), "")
        read = configparser.RawConfigParser()
        read.read(entry, encoding="utf-8")
        self.assertEqual((read["Desktop Entry"]["Exec"], read["Desktop Entry"]["Icon"]), (PROGRAM.name, ID))

    def test_the_entry_for_software_catalogues(self):
        entry = INSTALL / f"{ID}.metainfo.xml"
        self.ran("appstreamcli", "validate", "--no-net", entry)
        told = xml.etree.ElementTree.parse(entry).getroot()
        self.assertEqual(told.findtext("id"), ID)
        self.assertEqual(told.findtext("launchable"), f"{ID}.desktop")
        self.assertEqual(told.findtext("icon"), ID)
        self.assertEqual(told.findtext("project_license"), "GPL-3.0-or-later")

    def test_the_icon_is_square_and_needs_nothing_else(self):
        icon = xml.etree.ElementTree.parse(INSTALL / f"{ID}.svg").getroot()
        self.assertEqual(icon.get("width"), icon.get("height"))
        for each in icon.iter():
            self.assertNotIn("href", "".join(each.attrib))

    def test_a_window_bears_the_name_of_the_desktop_entry(self):
        self.assertIn(ID.encode("utf-16-le"), PROGRAM.read_bytes())

    def test_the_manual_page_is_laid_out_without_a_warning(self):
        page = INSTALL / "strandbench.1"
        text = self.ran("man", "--warnings", "--encoding=UTF-8", "--local-file", page, env={"MANWIDTH": "100"})
        self.assertNotIn("warning", text)
        self.assertIn("strandbench supervise", text)

    def test_the_kiosk_unit(self):
        # The program is looked up where systemd looks; here it lies elsewhere.
        unit = (INSTALL / "strandbench-kiosk.service").read_text(encoding="utf-8")
        there, put = re.subn(r"^ExecStart=strandbench$", f"ExecStart={PROGRAM}", unit, flags=re.MULTILINE)
        self.assertEqual(put, 1)
        self.assertRegex(unit, r"(?m)^Restart=on-failure$")
        copy = self.machine / "strandbench-kiosk.service"
        copy.write_text(there, encoding="utf-8")
        runtime = self.machine / "runtime"
        runtime.mkdir(mode=0o700)
        said = self.ran("systemd-analyze", "verify", "--user", "--man=no", copy,
                        env={"XDG_RUNTIME_DIR": str(runtime), "HOME": str(self.machine)})
        self.assertNotIn(copy.name, said)  # a line of the unit that systemd passes over


if __name__ == "__main__":
    main()
