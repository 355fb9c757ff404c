"""Runs tests of the copy: once each to see which places they pass and how long they take, then against a fault."""
import concurrent.futures
import json
import os
import re
import resource
import signal
import subprocess
import tempfile
import threading
import time

LONGEST = 12.0  # s of the processor; a test that takes longer is not asked
# These judge the sources, which are not those of the copy, or take minutes.
NOT_ASKED = {'layout', 'terms', 'extremes', 'random_designs', 'ordinary_engines', 'many_ordinary_engines', 'many_solves'}
MOST_MEMORY = 4 << 30  # bytes
TOO_LONG = 10.0  # times as long as without the fault, and as many seconds more: does not end


def programs_below(build):
    found = {}
    for base, _, names in os.walk(os.path.join(build, 'tests')):
        for name in names:
            path = os.path.join(base, name)
            if name.startswith('test_') and os.access(path, os.X_OK) and '.' not in name:
                found[name[len('test_'):]] = path
    return found


def names_of_tests(copy, program):
    listed = subprocess.run([program, '--gtest_list_tests'], cwd=copy, stdout=subprocess.PIPE, text=True).stdout
    suite, names = '', []
    for line in listed.split('\n'):
        name = line.partition('#')[0].rstrip()
        if name and not name.startswith(' '):
            suite = name
        elif name and suite and 'DISABLED_' not in suite + name:
            names.append(suite + name.strip())
    return names


def run(copy, program, names, seconds, **environment):
    """Status, output and seconds of the processor of tests of one program; no status where the time ran out."""

    def limits():
        resource.setrlimit(resource.RLIMIT_CPU, (int(seconds) + 1, int(seconds) + 2))
        resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
        resource.setrlimit(resource.RLIMIT_AS, (MOST_MEMORY, MOST_MEMORY))

    with tempfile.TemporaryFile('w+', errors='replace') as said:
        process = subprocess.Popen(
            [program, '--gtest_filter=' + ':'.join(names), '--gtest_fail_fast', '--gtest_brief=1'], cwd=copy, stdout=said,
            stderr=subprocess.STDOUT, preexec_fn=limits, env={**os.environ, **environment})
        late = threading.Timer(120.0 + 60.0 * seconds, process.kill)  # one that waits for ever uses no time
        late.start()
        _, status, usage = os.wait4(process.pid, 0)
        late.cancel()
        process.returncode = os.waitstatus_to_exitcode(status)
        said.seek(0)
        ended = process.returncode not in (-signal.SIGXCPU, -signal.SIGKILL)
        return process.returncode if ended else None, said.read(), usage.ru_utime + usage.ru_stime


def measure(copy, program, test):
    """How one test runs without a fault."""
    with tempfile.NamedTemporaryFile('r') as reached:
        status, _, seconds = run(copy, program, [test], LONGEST, LW_REACHED=reached.name)
        return {'test': test, 'passes': status == 0, 'seconds': seconds,
                'reached': sorted({int(line, 16) for line in reached.read().split()})}


def measured(copy, build, cache, jobs):
    """Every test of every program; measured again only where the program is another."""
    known = json.load(open(cache, encoding='utf8')) if os.path.exists(cache) else {}
    tests, failing = {}, []
    for name, program in sorted(programs_below(build).items()):
        if name in NOT_ASKED:
            continue
        stamp = os.stat(program).st_mtime_ns
        if known.get(name, {}).get('stamp') != stamp:
            with concurrent.futures.ThreadPoolExecutor(jobs) as pool:
                rows = list(pool.map(lambda test, p=program: measure(copy, p, test), names_of_tests(copy, program)))
            known[name] = {'stamp': stamp, 'rows': rows}
            json.dump(known, open(cache, 'w', encoding='utf8'))
        rows = known[name]['rows']
        failing += [name + ' ' + row['test'] for row in rows if not row['passes']]
        tests[name] = (program, [{**row, 'reached': set(row['reached'])} for row in rows if row['passes']])
        print(f'{name}: {len(tests[name][1])} tests, {sum(row["seconds"] for row in rows):.0f} s', flush=True)
    for name in failing:
        print(f'not asked, fails or takes too long without a fault: {name}', flush=True)
    return tests


def batches(tests, place):
    """Groups of tests that pass a place, in the order in which they are asked: (program, rows). The first groups are
    short, so that a fault that does not end is known by then."""
    near = {'reference': 'study', 'claims': 'study'}.get(place.folder, place.folder)
    groups = []
    for name, (program, rows) in tests.items():
        reaching = sorted((row for row in rows if place.number & 0xffff in row['reached']), key=lambda row: row['seconds'])
        for slow in (False, True):
            part, share, most = [], 0, 0.5
            for row in [row for row in reaching if (row['seconds'] > 1.0) == slow] + [None]:
                if part and (row is None or sum(r['seconds'] for r in part) + row['seconds'] > most):
                    groups.append(((slow, name != near, name != 'handbook', share, part[0]['seconds']), name, program, part))
                    part, share, most = [], share + 1, 4.0 * most
                if row:
                    part.append(row)
    return [group[1:] for group in sorted(groups, key=lambda group: group[0])]


class Trial:
    """One fault against the tests that pass it, a few at a time."""

    def __init__(self, copy, tests, place):
        self.copy, self.place = copy, place
        self.left = batches(tests, place)
        self.reaching = sum(len(rows) for _, _, rows in self.left)
        self.caught_by, self.spent, self.seconds = '', 0.0, 0.0

    def ask(self, budget):
        """Goes on until a test fails, none is left or the next ones exceed the budget (seconds of the processor)."""
        began = time.time()
        while self.left and not self.caught_by:
            name, program, rows = self.left[0]
            seconds = sum(row['seconds'] for row in rows)
            if self.spent + seconds > budget:
                break
            self.left.pop(0)
            status, text, used = run(self.copy, program, [row['test'] for row in rows], TOO_LONG * seconds + TOO_LONG,
                                     LW_FAULT=f'{self.place.number:08x}')
            self.spent += used
            if status is None:
                self.caught_by = f'{name} (does not end)'
            elif status != 0:
                failed = re.findall(r'\[  FAILED  \] ([\w/.]+)', text)
                self.caught_by = f'{name} {failed[0] if failed else "(ends early)"}'
        self.seconds += time.time() - began
