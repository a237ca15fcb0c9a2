# SPDX-License-Identifier: GPL-3.0-or-later
"""Plants one fault at a time and tells which tests catch it; see tests/mutation/run --help."""

import argparse
import concurrent.futures
import json
import os
import pathlib
import random
import re
import resource
import shutil
import signal
import subprocess
import sys
import tempfile
import threading

import builder
import plant

HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parent.parent
SURROUNDINGS = {"QT_QPA_PLATFORM": "offscreen", "LC_ALL": "C.UTF-8", "TZ": "UTC"}
MOST_MEMORY = 4 << 30  # a fault may ask for memory without end
MOST_WAITING = 900  # by the clock, for a fault that sleeps; one that works without end is stopped by the processor's
said = threading.Lock()


def limited(seconds):
    """What a child process does before it becomes the program: of the processor it has so many seconds, and no more."""
    resource.setrlimit(resource.RLIMIT_CPU, (seconds, seconds + 1))
    resource.setrlimit(resource.RLIMIT_AS, (MOST_MEMORY, MOST_MEMORY))
    resource.setrlimit(resource.RLIMIT_CORE, (0, 0))


def ends_badly(program, only, seconds, folder):
    """What tells that these tests of the program fail, or an empty text when all pass."""
    surroundings = dict(os.environ, TMPDIR=str(folder), **SURROUNDINGS)
    try:
        done = subprocess.run([program, f"--gtest_filter={only}", "--gtest_fail_fast"], cwd=folder, env=surroundings,
                              stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=subprocess.STDOUT,
                              timeout=MOST_WAITING, preexec_fn=lambda: limited(seconds))
    except subprocess.TimeoutExpired:
        return "does not end"
    if done.returncode == 0:
        return ""
    if done.returncode == -signal.SIGXCPU:
        return "does not end"
    text = done.stdout.decode(errors="replace")
    failed = re.search(r"^\[  FAILED  \] ([^\s,(]+)", text, re.M)
    started = re.findall(r"^\[ RUN      \] (\S+)", text, re.M)
    return failed.group(1) if failed else f"{started[-1] if started else 'start'} ends with {done.returncode}"


def sampled(faults, count, seed):
    """At most <count> of them: each kind of each file in its turn, so that none is left out for being rare."""
    heaps = {}
    for each in faults:
        heaps.setdefault((each.file, each.kind), []).append(each)
    chance = random.Random(seed)
    for heap in heaps.values():
        chance.shuffle(heap)
    turns = list(heaps.values())
    chance.shuffle(turns)
    taken = []
    while len(taken) < min(count, len(faults)):
        for heap in turns:
            if heap and len(taken) < count:
                taken.append(heap.pop())
    return [each for each in faults if each in set(taken)]


class Area:
    def __init__(self, name, listed, bench):
        self.name, self.bench, self.tests = name, bench, listed["tests"]
        self.files = {file: (ROOT / file).read_text(encoding="utf-8") for file in listed["files"]}
        self.faults = plant.faults_of(self.files)
        self.allowed = []

    def check_that_all_pass(self, scratch):
        """The tests as built, and each with one file compiled anew but unchanged: a fault must be what fails."""
        file, text = next(iter(self.files.items()))
        for program, only in self.tests:
            before = resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime
            for made in (self.bench.program(program), None):
                with tempfile.TemporaryDirectory(dir=scratch) as folder:
                    folder = pathlib.Path(folder)
                    made = made or self.bench.linked(program, *self.bench.compiled(file, text, folder), folder)
                    if told := ends_badly(made, only, 1200, folder):
                        raise SystemExit(f"{self.name}: {program} fails with nothing planted: {told}")
            self.allowed.append(int(10 + 3 * (resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime - before)))

    def judge(self, fault, scratch):
        """What catches the fault: '' for nothing, None when it does not compile."""
        with tempfile.TemporaryDirectory(dir=scratch) as folder:
            folder = pathlib.Path(folder)
            try:
                changed = self.bench.compiled(fault.file, fault.applied_to(self.files[fault.file]), folder)
                for (program, only), seconds in zip(self.tests, self.allowed):
                    made = folder / program
                    made = made if made.exists() else self.bench.linked(program, *changed, folder)
                    if told := ends_badly(made, only, seconds, folder):
                        return told
            except builder.DoesNotCompile:
                return None
        return ""


def tell(number, of, area, fault, verdict, how):
    line = f"{number:4}/{of} {area.name:9} {verdict:9} {fault.file}:{fault.line_number} {fault.kind}"
    if verdict == "caught":
        line += f", by {how}"
    elif verdict == "SURVIVED":
        line += f"\n       was     {fault.line}\n       became  {fault.becomes}"
    with said:
        print(line, flush=True)


def work(areas, faults, equivalents, jobs, scratch):
    """Judges each (area, fault) and gives the entries of the report."""
    report = []

    def one(number, area, fault):
        if fault.key() in equivalents:
            verdict, how = "same", ""
        else:
            how = area.judge(fault, scratch)
            verdict = "no build" if how is None else "caught" if how else "SURVIVED"
        tell(number, len(faults), area, fault, verdict, how)
        report.append({"area": area.name, "verdict": verdict, "by": how or "", "kind": fault.kind, "file": fault.file,
                       "number": fault.line_number, "line": fault.line, "becomes": fault.becomes})

    with concurrent.futures.ThreadPoolExecutor(jobs) as pool:
        for done in [pool.submit(one, number, *each) for number, each in enumerate(faults, 1)]:
            done.result()
    return report


def sums(areas, report):
    print(f"\n{'area':9} {'possible':>8} {'planted':>8} {'no build':>8} {'same':>8} {'caught':>8} {'survived':>8}")
    for area in areas:
        of = [each["verdict"] for each in report if each["area"] == area.name]
        counts = [len(area.faults), len(of), *(of.count(each) for each in ("no build", "same", "caught", "SURVIVED"))]
        print(f"{area.name:9} " + " ".join(f"{each:8}" for each in counts))


def chosen(areas, options, earlier):
    for area in areas:
        if options.again:
            keys = {(each["file"], each["line"], each["becomes"]) for each in earlier
                    if each["verdict"] == "SURVIVED" and each["area"] == area.name}
            yield from ((area, each) for each in area.faults if each.key() in keys)
        elif options.all:
            yield from ((area, each) for each in area.faults)
        else:
            yield from ((area, each) for each in sampled(area.faults, options.count, options.seed))


def main():
    options = asked()
    listed = json.loads((HERE / "areas.json").read_text(encoding="utf-8"))
    names = options.only or list(listed)
    if unknown := set(names) - set(listed):
        raise SystemExit(f"--only {', '.join(sorted(unknown))}: one of {', '.join(listed)} is asked for")
    bench = builder.Builder(ROOT, options.build, sorted({test for name in names for test, _ in listed[name]["tests"]}))
    areas = [Area(name, listed[name], bench) for name in names]
    told = pathlib.Path(options.report)
    earlier = json.loads(told.read_text(encoding="utf-8")) if told.exists() else []
    equivalents = {(each["file"], each["line"], each["becomes"])
                   for each in json.loads((HERE / "equivalents.json").read_text(encoding="utf-8"))["equivalents"]}
    scratch = tempfile.mkdtemp(dir=os.environ.get("TMPDIR"))
    try:
        for area in areas:
            area.check_that_all_pass(scratch)
        report = work(areas, list(chosen(areas, options, earlier)), equivalents, options.jobs, scratch)
    finally:
        shutil.rmtree(scratch)
    sums(areas, report)
    told.write_text(json.dumps(report, indent=1, ensure_ascii=False), encoding="utf-8")
    survived = sum(each["verdict"] == "SURVIVED" for each in report)
    caught = sum(each["verdict"] == "caught" for each in report)
    print(f"{caught} caught, {survived} survived" + (f"; see {told}" if survived else ""))
    sys.exit(1 if survived or not caught else 0)


def asked():
    parser = argparse.ArgumentParser(prog="tests/mutation/run", description=__doc__)
    parser.add_argument("--build", required=True, help="a finished release build with ninja (run makes one)")
    parser.add_argument("--report", required=True, help="where the list of all faults and verdicts is written")
    parser.add_argument("--only", action="append", metavar="AREA", help="this area alone; may be given again")
    parser.add_argument("--count", type=int, default=45, help="faults an area, drawn from all (default %(default)s)")
    parser.add_argument("--seed", type=int, default=1, help="of the drawing (default %(default)s)")
    parser.add_argument("--all", action="store_true", help="every fault: hours")
    parser.add_argument("--again", action="store_true", help="those alone that survived in the last report")
    parser.add_argument("--jobs", type=int, default=os.cpu_count(), help="at a time (default %(default)s)")
    return parser.parse_args()


if __name__ == "__main__":
    main()
