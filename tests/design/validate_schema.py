"""Judge FOLDER/good/*.json and FOLDER/bad/*.json by a schema; exit 0 when every verdict fits."""

import json
import pathlib
import sys

import jsonschema

schema = json.loads(pathlib.Path(sys.argv[1]).read_text())
folder = pathlib.Path(sys.argv[2])
jsonschema.Draft202012Validator.check_schema(schema)
validator = jsonschema.Draft202012Validator(schema)

wrong = 0
for file in sorted(folder.glob("good/*.json")):
    for error in validator.iter_errors(json.loads(file.read_text())):
        wrong += 1
        print(f"{file.name}: /{'/'.join(map(str, error.absolute_path))}: {error.message[:300]}")
bad = sorted(folder.glob("bad/*.json"))
for file in bad:
    if validator.is_valid(json.loads(file.read_text())):
        wrong += 1
        print(f"{file.name}: accepted, though it is wrong")
if not bad:
    wrong += 1
    print("no bad designs to judge")
sys.exit(1 if wrong else 0)
