# SPDX-License-Identifier: GPL-3.0-or-later
"""Every source is as clang-format lays it out. To repair: clang-format -i FILE."""

import concurrent.futures
import os
import subprocess

import house


def differs(clang_format, path):
    done = subprocess.run([clang_format, "--dry-run", "-Werror", str(path)], capture_output=True, text=True)
    return done.returncode != 0


def problems(root, clang_format):
    sources = [(path, name) for path, name in house.files(root) if path.suffix in house.SOURCES]
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        for (_, name), bad in zip(sources, pool.map(lambda each: differs(clang_format, each[0]), sources)):
            if bad:
                yield f"{name}: not laid out by .clang-format"


if __name__ == "__main__":
    house.main(problems)
