"""Where a fault may stand in a line of the core, and how the sound and the faulty text stand there together."""
import hashlib
import os
import re

NUMBER = re.compile(r'(?<![\w.])(\d+\.\d+)(?![\w.])')
CONSTANT = re.compile(r'^\s*(?:static |inline )?constexpr double (\w+) = [^;{}]+;\s*$')
OBJECT = re.compile(r'(?<![\w.>:)\]])([A-Za-z_]\w*(?:(?:\.|->|::)\w+|\[\w*\]|\(\))*?)(\.|::)(inlet|exhaust)\b(?!\()')


class Place:
    """One fault: its line and the text of that line with it (shown), and with both (built)."""

    def __init__(self, path, line, text, kind, shown, built, number):
        self.path, self.line, self.text, self.kind = path, line, text, kind
        self.shown, self.built, self.number = shown, built, number
        self.folder = path.split('/')[1]
        self.constant = None  # a fault of a named constant stands wherever the file uses it

    def key(self):
        """What names the fault whatever stands around it."""
        return f'{self.path}|{self.text.strip()}|{self.shown.strip()}'

    def as_row(self):
        return {'fault': f'{self.number:08x}', 'path': self.path, 'line': self.line + 1, 'kind': self.kind,
                'was': self.text.strip(), 'now': self.shown.strip()}


def with_text(code, match, text):
    return code[:match.start()] + text + code[match.end():]


def variants(code):
    """(kind, faulty code, function from the number of the fault to the code that holds both)."""
    found = []

    def add(kind, match, faulty, both):
        found.append((kind, with_text(code, match, faulty), lambda n, m=match: with_text(code, m, both(n))))

    for m in re.finditer(r'(?<=[\w)\]]) ([+-]) (?=[\w(])', code):
        sign = m.group(1)
        add('sign', m, ' - ' if sign == '+' else ' + ', lambda n, s=sign: f' {s} seeded::Scaled({n}, -1.0) * ')
        ends = re.match(r'[\w.>-]+(?:\([^()]*\))?(?=;|\))', code[m.end():])
        if ends:
            whole = re.compile(re.escape(m.group(0) + ends.group(0))).search(code, m.start())
            found.append(('missing term', with_text(code, whole, ''),
                          lambda n, m=m, s=sign: with_text(code, m, f' {s} seeded::Scaled({n}, 0.0) * ')))
    for m in re.finditer(r'(?:(?<=return )|(?<== )|(?<=[(])|(?<=, ))-(?=[A-Za-z_(])', code):
        add('sign', m, '', lambda n: f'-seeded::Scaled({n}, -1.0) * ')
    for m in re.finditer(r'(?<=[\w)\]]) ([*/]) (?=[\w(])', code):
        operator = m.group(1)
        add('factor', m, ' / ' if operator == '*' else ' * ',
            lambda n, o=operator: f' {o} seeded::Either({n}) {o} ')
    for m in NUMBER.finditer(code):
        if float(m.group(1)) != 0.0:
            value = m.group(1)
            faulty = repr(round(float(value) * 1.1, 12))
            add('factor', m, faulty, lambda n, v=value, f=faulty: f'seeded::either({n}, {v}, {f})')
    for m in re.finditer(r'\[([01])\]', code):
        value = int(m.group(1))
        add('index', m, f'[{1 - value}]', lambda n, v=value: f'[seeded::either<std::size_t>({n}, {v}, {1 - v})]')
    for m in OBJECT.finditer(code):
        thing, dot, side = m.groups()
        other = 'exhaust' if side == 'inlet' else 'inlet'
        add('wrong side', m, thing + dot + other,
            lambda n, t=thing, d=dot, s=side, o=other: f'(seeded::on({n}) ? {t}{d}{o} : {t}{d}{s})')
    for m in re.finditer(r'std::(min|max)\(', code):
        least = m.group(1) == 'min'
        add('bound', m, 'std::max(' if least else 'std::min(',
            lambda n, l=least: f'seeded::{"least" if l else "most"}({n}, ')
    for m in re.finditer(r'std::(sin|cos)\(', code):
        sine = m.group(1) == 'sin'
        add('function', m, 'std::cos(' if sine else 'std::sin(',
            lambda n, s=sine: f'seeded::{"sine" if s else "cosine"}({n}, ')
    for m in re.finditer(r'(?<=[\w)\]]) ([<>]=?) (?=[\w(-])', code):
        sign = m.group(1)
        add('comparison', m, f' {sign.translate(str.maketrans("<>", "><"))} ',
            lambda n, s=sign: f' {s} seeded::Either({n}) {s} ')
    return found


def code_lines(text):
    """(number, code, comment) of the lines that compute something when the program runs."""
    depth_of_constant = None
    depth = 0
    for number, line in enumerate(text.split('\n')):
        code, mark, comment = line.partition('//')
        stripped = code.strip()
        before = depth
        depth += code.count('{') + code.count('(') - code.count('}') - code.count(')')
        if depth_of_constant is not None:
            if depth <= depth_of_constant and stripped.endswith((';', '}')):
                depth_of_constant = None
            continue
        if 'constexpr' in code:
            if not stripped.endswith(';') or depth > before:
                depth_of_constant = before
            yield number, code, None  # named constants only
            continue
        if not stripped or stripped.startswith(('#', '*', 'assert', 'static_assert', 'template', 'case ', 'using')):
            continue
        if '"' in code or "'" in code or 'LW_TEXT' in code or 'assert(' in code or 'reserve' in code:
            continue
        yield number, code, mark + comment


def uses_of(name, text, declared):
    """Lines that use a constant; None where the compiler needs its value."""
    used = []
    for number, line in enumerate(text.split('\n')):
        if number != declared and re.search(rf'\b{name}\b', line.partition('//')[0]):
            if 'constexpr' in line or re.search(rf'[&<,]\s*{name}\b\s*>|"', line):
                return None
            used.append(number)
    return used


def number_of(seed, path, text, kind, shown):
    name = f'{seed}|{path}|{text.strip()}|{kind}|{shown.strip()}'
    return int(hashlib.sha1(name.encode()).hexdigest()[:8], 16) or 1


def places_in(path, text, seed):
    """All faults of a file. Their order and choice hang on what the lines say, not on where they stand."""
    found = []
    for number, code, comment in code_lines(text):
        if comment is None:
            constant = CONSTANT.match(code)
            if constant and uses_of(constant.group(1), text, number):
                shown = code.rstrip().rstrip(';') + ' * 1.1;'
                place = Place(path, number, code, 'factor', shown, code,
                              number_of(seed, path, code, 'constant', shown))
                place.constant = constant.group(1)
                found.append(place)
            continue
        for kind, shown, built in variants(code):
            n = number_of(seed, path, code, kind, shown)
            found.append(Place(path, number, code + comment, kind, shown + comment, built(f'0x{n:08x}U') + comment, n))
    return found


def with_faults(text, places):
    """The text of a file that holds all its faults."""
    lines = text.split('\n')
    for place in places:
        if place.constant is None:
            lines[place.line] = place.built
    for place in places:
        if place.constant is not None:
            use = f'(seeded::either(0x{place.number:08x}U, 1.0, 1.1) * {place.constant})'
            for number in uses_of(place.constant, text, place.line):
                code, mark, comment = lines[number].partition('//')
                lines[number] = re.sub(rf'(?<![\w.]){place.constant}\b', use, code) + mark + comment
    return '#include "tests/faults/fault.h"\n#line 1\n' + '\n'.join(lines)


def all_places(root, folders, seed, left_out):
    """The faults of each folder, best first by their numbers, which the seed decides."""
    found = {}
    for folder in folders:
        places = []
        for base, _, names in sorted(os.walk(os.path.join(root, 'core', folder))):
            for name in sorted(names):
                path = os.path.relpath(os.path.join(base, name), root)
                if name.endswith('.cpp') and not any(part in path for part in left_out):
                    places += places_in(path, open(os.path.join(root, path), encoding='utf8').read(), seed)
        found[folder] = sorted(places, key=lambda p: p.number)
    return found


def chosen(places, count, refused, most_a_file):
    """The first `count` that were not refused: one a line, and no two with the same low bits."""
    taken, lines, files, bits = [], set(), {}, set()
    for place in places:
        if len(taken) == count:
            break
        if place.key() in refused or (place.path, place.line) in lines or place.number & 0xffff in bits \
                or files.get(place.path, 0) == most_a_file:
            continue
        taken.append(place)
        lines.add((place.path, place.line))
        bits.add(place.number & 0xffff)
        files[place.path] = files.get(place.path, 0) + 1
    return taken
