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

LONGEST = 20.0  # s; a test that takes longer is not asked
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
    """Groups of tests that pass a place, in the order in which they are asked: (program, rows)."""
    near = {'reference': 'study', 'claims': 'study'}.get(place.folder, place.folder)
    groups = []
    for name, (program, rows) in tests.items():
        reaching = [row for row in rows if place.number & 0xffff in row['reached']]
        for slow in (False, True):
            part = [row for row in reaching if (row['seconds'] > 1.0) == slow]
            if part:
                seconds = sum(row['seconds'] for row in part)
                groups.append(((slow, name != near, name != 'handbook', seconds), name, program, part))
    return [group[1:] for group in sorted(groups, key=lambda group: group[0])]


def outcome(copy, tests, place, budget):
    """(test that sees the fault or '', tests that pass it, seconds)."""
    reaching = spent = 0
    began = time.time()
    for name, program, rows in batches(tests, place):
        reaching += len(rows)
        rows = sorted(rows, key=lambda row: row['seconds'])
        seconds = sum(row['seconds'] for row in rows)
        while rows and spent + seconds > budget:
            seconds -= rows.pop()['seconds']
        if not rows:
            continue
        status, text, used = run(copy, program, [row['test'] for row in rows], TOO_LONG * seconds + TOO_LONG,
                                 LW_FAULT=f'{place.number:08x}')
        spent += used
        if status is None:
            return f'{name} (does not end)', reaching, time.time() - began
        if status != 0:
            failed = re.findall(r'\[  FAILED  \] ([\w/.]+)', text)
            return f'{name} {failed[0] if failed else "(ends early)"}', reaching, time.time() - began
    return '', reaching, time.time() - began
